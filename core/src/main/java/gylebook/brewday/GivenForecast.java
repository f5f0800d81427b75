package gylebook.brewday;

import gylebook.estimate.Held;
import gylebook.plan.Band;
import gylebook.plan.Forecast;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.simulate.Ahead;
import gylebook.simulate.DayLog;
import gylebook.simulate.Engine;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/// A forecast as it was given at one moment: when each point that lay ahead was to come, and the
/// warmth, litres and strengths that a brewer can see there.
///
/// As text it is a line each, words apart by one space. The numbers are those of the day, not to be
/// computed again: another engine would give others.
///
/// @param engine revision of the model that gave it
/// @param atSec since the day began; below 0 for what was forecast before the day
/// @param foreseen the numbers
@AnyUnit("each number's key names its unit")
public record GivenForecast(String engine, double atSec, List<Foreseen> foreseen) {
  /// Before the day.
  public static final double BEFORE_SEC = -1;

  private static final String BOIL = "boilReached";
  private static final int MOST_LINES = 1000;
  private static final int LINE_WORDS = 6;
  private static final MathContext DIGITS = new MathContext(6);
  // Half the width of the range that holds nine in ten of a normal spread, in standard deviations.
  private static final double NINE_IN_TEN = 1.6448536269514722;

  private static final List<Outcome> OUT =
      List.of(
          Outcome.FIRST_WORT,
          Outcome.PRE_BOIL_STRENGTH,
          Outcome.CAST,
          Outcome.FERMENTER,
          Outcome.STRENGTH,
          Outcome.BITTERNESS,
          Outcome.COLOUR,
          Outcome.ALCOHOL);

  /// Copies the list.
  public GivenForecast {
    foreseen = List.copyOf(foreseen);
  }

  /// What is looked at where a point comes, beside its time.
  private static SortedMap<String, DayLog.Column> looks(String point) {
    SortedMap<String, DayLog.Column> looks = new TreeMap<>();
    if (point.equals("settled") || point.equals("rest.0")) {
      looks.put("grainC", DayLog.Column.GRAIN_C);
    }
    if (point.startsWith("stood.") || point.equals("knockOut")) {
      looks.put("wortC", DayLog.Column.WORT_C);
    }
    if (List.of(DayOrder.BAG_OUT, BOIL, DayOrder.FLAME_OUT).contains(point)) {
      looks.put("hotL", DayLog.Column.HOT_L);
    }
    if (point.equals(DayOrder.FLAME_OUT)) {
      looks.put("wortPlato", DayLog.Column.WORT_PLATO);
    }
    return looks;
  }

  /// What a plan forecasts. It has ranges alone: the doubt is that of a normal spread so wide.
  public static GivenForecast of(Plan plan) {
    Forecast forecast = plan.forecast();
    List<Foreseen> all = new ArrayList<>();
    for (Milestone milestone : forecast.milestones()) {
      all.add(new Foreseen(milestone.key(), Foreseen.AT, held(milestone.atSec())));
      looks(milestone.key())
          .forEach(
              (key, column) ->
                  all.add(new Foreseen(milestone.key(), key, held(band(milestone, column)))));
    }
    for (Outcome outcome : OUT) {
      forecast
          .figure(outcome.key())
          .ifPresent(
              figure -> all.add(new Foreseen(Foreseen.DAY, figure.key(), held(figure.band()))));
    }
    return new GivenForecast(forecast.engine(), BEFORE_SEC, finite(all));
  }

  private static Band band(Milestone milestone, DayLog.Column column) {
    return switch (column) {
      case WORT_C -> milestone.wortC();
      case GRAIN_C -> milestone.grainC();
      case HOT_L -> milestone.hotL();
      case WORT_PLATO -> milestone.wortPlato();
      default -> throw new IllegalArgumentException("A plan's points have no " + column + ".");
    };
  }

  private static Held held(Band band) {
    return new Held(band.middle(), band.giveOrTake() / NINE_IN_TEN, band.low(), band.high());
  }

  /// What a day under way forecasts.
  ///
  /// @param points points of the day that lie ahead
  static GivenForecast of(Ahead ahead, double atSec, List<String> points) {
    List<Foreseen> all = new ArrayList<>();
    for (String point : points) {
      all.add(held(ahead, point, Foreseen.AT, DayLog.Column.AT_SEC));
      looks(point).forEach((key, column) -> all.add(held(ahead, point, key, column)));
    }
    for (Outcome outcome : OUT) {
      if (liesAhead(outcome, points)) {
        all.add(new Foreseen(Foreseen.DAY, outcome.key(), Held.of(ahead.outcome(outcome))));
      }
    }
    return new GivenForecast(Engine.REVISION, atSec, finite(all));
  }

  /// The strengths of the mash and before the boil are past when these are over.
  private static boolean liesAhead(Outcome outcome, List<String> points) {
    return switch (outcome) {
      case FIRST_WORT -> points.contains("mashDone");
      case PRE_BOIL_STRENGTH -> points.contains(BOIL);
      default -> true;
    };
  }

  private static Foreseen held(Ahead ahead, String point, String key, DayLog.Column column) {
    return new Foreseen(point, key, Held.of(ahead.milestone(point, column)));
  }

  private static List<Foreseen> finite(List<Foreseen> all) {
    Predicate<Held> finite =
        held ->
            Double.isFinite(held.mean() + held.doubt())
                && Double.isFinite(held.low() + held.high());
    return all.stream().filter(one -> finite.test(one.held())).toList();
  }

  /// Whether it was given before the day.
  public boolean beforeTheDay() {
    return atSec < 0;
  }

  /// One number of it.
  public Optional<Held> held(String point, String key) {
    return foreseen.stream().filter(one -> one.isOf(point, key)).map(Foreseen::held).findFirst();
  }

  /// The text that is kept; six digits are more than any instrument here can tell apart.
  public String text() {
    StringBuilder text = new StringBuilder("engine ").append(engine);
    text.append("\nat ").append(number(atSec));
    for (Foreseen one : foreseen) {
      Held held = one.held();
      text.append('\n')
          .append(one.point())
          .append(' ')
          .append(one.key())
          .append(' ')
          .append(number(held.mean()))
          .append(' ')
          .append(number(held.doubt()))
          .append(' ')
          .append(number(held.low()))
          .append(' ')
          .append(number(held.high()));
    }
    return text.toString();
  }

  private static String number(double value) {
    return value == 0
        ? "0"
        : new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
  }

  /// Reads what was kept.
  ///
  /// @return empty when it is no such text
  public static Optional<GivenForecast> read(String text) {
    List<String> lines = text.lines().toList();
    boolean begins =
        lines.size() >= 2
            && lines.size() <= MOST_LINES
            && lines.getFirst().matches("engine \\S+")
            && lines.get(1).matches("at \\S+");
    if (!begins) {
      return Optional.empty();
    }
    try {
      List<Foreseen> all = new ArrayList<>();
      for (String line : lines.subList(2, lines.size())) {
        all.add(foreseen(line.split(" ", -1)));
      }
      return Optional.of(
          new GivenForecast(
              lines.getFirst().substring("engine ".length()),
              number(lines.get(1).substring("at ".length())),
              all));
    } catch (IllegalArgumentException _) {
      // No number, or a line that is too short.
      return Optional.empty();
    }
  }

  private static Foreseen foreseen(String[] words) {
    if (words.length != LINE_WORDS || words[0].isEmpty() || words[1].isEmpty()) {
      throw new IllegalArgumentException("A line has " + words.length + " words.");
    }
    Held held = new Held(number(words[2]), number(words[3]), number(words[4]), number(words[5]));
    if (held.doubt() < 0 || held.low() > held.high()) {
      throw new IllegalArgumentException("That is no range: " + held);
    }
    return new Foreseen(words[0], words[1], held);
  }

  private static double number(String word) {
    double number = Double.parseDouble(word);
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("That is no number: " + word);
    }
    return number;
  }
}
