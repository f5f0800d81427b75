package gylebook.telling;

import gylebook.telling.Blank.Unfit;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// When something is wanted: an hour, a day of the week, a date, or a day and an hour.
///
/// Nothing is taken as said that was not: a recipe is read on other days too, so `tomorrow` and a
/// date without its year are asked back, and so is `05/12`, which is a day in May to some.
///
/// @param date the date, where one is said
/// @param weekday the day of the week, where no date is said
/// @param hour the hour, where one is said
public record Appointment(
    Optional<LocalDate> date, Optional<DayOfWeek> weekday, Optional<LocalTime> hour) {
  private static final int MOST_CHARACTERS = 60;
  private static final int HOURS_TO_NOON = 12;
  private static final int LEAST_LETTERS = 3;

  /// Any Monday: a day of the week is reckoned from it and only its name is said.
  private static final LocalDate A_MONDAY = LocalDate.of(2024, 1, 1);

  private static final Pattern HOUR =
      Pattern.compile("(?:^|[ t])(\\d{1,2})(?:[:.h](\\d{2}))? ?(am|pm|h)?$");
  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
  private static final Pattern DAY_MONTH =
      Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)?\\.? ([a-z]{3,9})\\.?(?: (\\d{4}))?");
  private static final Pattern MONTH_DAY =
      Pattern.compile("([a-z]{3,9})\\.? (\\d{1,2})(?:st|nd|rd|th)?(?: (\\d{4}))?");
  private static final Pattern SLASHED = Pattern.compile("\\d{1,4}([/.])\\d{1,2}(\\1\\d{0,4})?");
  private static final Pattern FLOATING =
      Pattern.compile("(?:today|tonight|tomorrow|next|this)(?: .*)?");
  private static final List<String> MONTHS =
      List.of(
          "january",
          "february",
          "march",
          "april",
          "may",
          "june",
          "july",
          "august",
          "september",
          "october",
          "november",
          "december");
  private static final String MAYBE = "Say 18:00, Saturday 18:00, or 2026-12-05 18:00.";

  /// Reads one.
  ///
  /// @return it, or what is unclear about it
  public static Filled<Appointment> read(String typed) {
    return Filling.filled(typed, () -> of(typed));
  }

  /// Reads the end of a day's work, which needs an hour.
  public static Filled<Appointment> readHour(String typed) {
    return Filling.filled(typed, () -> withHour(typed));
  }

  static Appointment withHour(String typed) {
    Appointment found = of(typed);
    if (found.hour().isEmpty()) {
      throw new Unfit(
          "'" + typed.strip() + "' names a day and no hour.",
          "Say the hour as well: " + typed.strip() + " 18:00.");
    }
    return found;
  }

  static Appointment withDay(String typed) {
    Appointment found = of(typed);
    if (found.date().isEmpty() && found.weekday().isEmpty()) {
      throw new Unfit(
          "'" + typed.strip() + "' names an hour and no day.",
          "Say the day as well: Saturday " + typed.strip() + ", or 2026-12-05.");
    }
    return found;
  }

  static Appointment of(String typed) {
    String said = normal(typed);
    if (said.isEmpty() || typed.length() > MOST_CHARACTERS) {
      throw new Unfit("This is no day or hour.", MAYBE);
    }
    if (FLOATING.matcher(said).matches()) {
      throw new Unfit(
          "'" + typed.strip() + "' is another day whenever it is read.",
          "Name the day: Saturday 18:00, or 2026-12-05 18:00.");
    }
    Optional<Appointment> day = day(said, Optional.empty());
    if (day.isPresent()) {
      return day.get();
    }
    Matcher hour = HOUR.matcher(said.replaceFirst("(^| )noon$", "$112:00"));
    if (hour.find()) {
      LocalTime time = hour(hour);
      String before = hour.replaceFirst("").replaceFirst(" at$", "").strip();
      return before.isEmpty()
          ? new Appointment(Optional.empty(), Optional.empty(), Optional.of(time))
          : day(before, Optional.of(time)).orElseThrow(() -> unclear(typed));
    }
    throw unclear(typed);
  }

  private static String normal(String typed) {
    return typed
        .strip()
        .toLowerCase(Locale.ROOT)
        .replace(',', ' ')
        .replace("a.m.", "am")
        .replace("p.m.", "pm")
        .replace("o'clock", "")
        .replaceAll("\\s+", " ")
        .strip()
        .replaceFirst("^(?:by|on|for|at|the|done by|ready by) ", "");
  }

  private static Unfit unclear(String typed) {
    return new Unfit("'" + typed.strip() + "' is no day or hour that can be read.", MAYBE);
  }

  private static LocalTime hour(Matcher said) {
    int hours = Integer.parseInt(said.group(1));
    int minutes = said.group(2) == null ? 0 : Integer.parseInt(said.group(2));
    String half = said.group(3) == null ? "" : said.group(3);
    boolean halved = half.equals("am") || half.equals("pm");
    if (hours > (halved ? HOURS_TO_NOON : 23) || (halved && hours == 0) || minutes > 59) {
      throw new Unfit("There is no hour '" + said.group().strip() + "'.", MAYBE);
    }
    int ofHalf = hours % HOURS_TO_NOON + (half.equals("pm") ? HOURS_TO_NOON : 0);
    return LocalTime.of(halved ? ofHalf : hours, minutes);
  }

  private static Optional<Appointment> day(String said, Optional<LocalTime> hour) {
    String[] parts = said.split(" ", 2);
    Optional<DayOfWeek> weekday = weekday(parts[0]);
    String rest = weekday.isEmpty() ? said : parts.length > 1 ? parts[1] : "";
    if (weekday.isPresent() && rest.isEmpty()) {
      return Optional.of(new Appointment(Optional.empty(), weekday, hour));
    }
    Optional<LocalDate> date = date(rest);
    if (date.isPresent() && weekday.filter(day -> day != date.get().getDayOfWeek()).isPresent()) {
      throw new Unfit(
          date.get() + " is a " + name(date.get().getDayOfWeek()) + ".",
          "Say the date alone, or another date.");
    }
    return date.map(found -> new Appointment(date, Optional.empty(), hour));
  }

  private static Optional<DayOfWeek> weekday(String word) {
    String letters = word.replaceFirst("\\.$", "");
    for (DayOfWeek day : DayOfWeek.values()) {
      if (letters.length() >= LEAST_LETTERS
          && day.name().toLowerCase(Locale.ROOT).startsWith(letters)) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  private static Optional<LocalDate> date(String said) {
    Matcher iso = ISO.matcher(said);
    if (iso.matches()) {
      return Optional.of(date(iso.group(1), iso.group(2), iso.group(3)));
    }
    Matcher dayFirst = DAY_MONTH.matcher(said);
    if (dayFirst.matches() && month(dayFirst.group(2)) > 0) {
      return Optional.of(named(dayFirst.group(3), dayFirst.group(2), dayFirst.group(1)));
    }
    Matcher monthFirst = MONTH_DAY.matcher(said);
    if (monthFirst.matches() && month(monthFirst.group(1)) > 0) {
      return Optional.of(named(monthFirst.group(3), monthFirst.group(1), monthFirst.group(2)));
    }
    Matcher slashed = SLASHED.matcher(said);
    if (slashed.matches() && (slashed.group(1).equals("/") || slashed.group(2) != null)) {
      throw new Unfit("'" + said + "' can be two days.", "Write it like 2026-12-05.");
    }
    return Optional.empty();
  }

  private static LocalDate named(String year, String month, String day) {
    if (year == null) {
      throw new Unfit("'" + day + " " + month + "' has no year.", "Say 5 December 2026.");
    }
    return date(year, Integer.toString(month(month)), day);
  }

  private static LocalDate date(String year, String month, String day) {
    try {
      return LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day));
    } catch (DateTimeException _) {
      throw new Unfit("There is no day " + year + "-" + month + "-" + day + ".", MAYBE);
    }
  }

  private static int month(String word) {
    for (int i = 0; i < MONTHS.size(); i++) {
      if (MONTHS.get(i).startsWith(word)) {
        return i + 1;
      }
    }
    return 0;
  }

  private static String name(DayOfWeek day) {
    return day.name().charAt(0) + day.name().substring(1).toLowerCase(Locale.ROOT);
  }

  /// The same in words: `Saturday 18:00`, `2026-12-05 18:00`, `18:00`.
  public String words() {
    String day = date.map(LocalDate::toString).or(() -> weekday.map(Appointment::name)).orElse("");
    return (day + " " + hour.map(LocalTime::toString).orElse("")).strip();
  }

  /// So much earlier, to the minute and never later; an hour alone says how many days before.
  ///
  /// @throws IllegalStateException where no hour is said
  String begin(double beforeSec) {
    LocalTime end = hour.orElseThrow(() -> new IllegalStateException("no hour"));
    LocalDate day =
        date.orElseGet(
            () -> weekday.map(TemporalAdjusters::nextOrSame).map(A_MONDAY::with).orElse(A_MONDAY));
    LocalDateTime begin = day.atTime(end).minusMinutes((long) Math.ceil(beforeSec / 60));
    LocalTime time = begin.toLocalTime();
    if (date.isPresent()) {
      return begin.toLocalDate().equals(day) ? time.toString() : begin.toLocalDate() + " " + time;
    }
    if (begin.toLocalDate().equals(day)) {
      return time.toString();
    }
    return weekday.isPresent() ? name(begin.getDayOfWeek()) + " " + time : time + " the day before";
  }

  /// So many days earlier, as a day; empty where no day is said.
  Optional<String> daysBefore(long days) {
    return date.map(day -> day.minusDays(days).toString())
        .or(() -> weekday.map(day -> name(day.minus(days))));
  }
}
