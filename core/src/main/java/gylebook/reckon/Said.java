package gylebook.reckon;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// What people write in an amount that is no unit of the table: `180 billion`, `1.7 K/min`.
///
/// A word or a unit that is passed over changes a number a thousandfold, so these are read.
final class Said {
  /// Units behind a number beyond the table's: by the second, and by the joule, in other sizes.
  static final Set<String> UNITS =
      Set.of(
          "mm/s",
          "K/min",
          "C/min",
          "K/h",
          "C/h",
          "kJ/K",
          "kJ/kg",
          "kJ/(kg K)",
          "kg/m3",
          "kohm",
          "kΩ",
          Ions.CARBONATE,
          Ions.GERMAN,
          Ions.FRENCH);

  private static final Map<String, Integer> POWERS =
      Map.of("thousand", 3, "million", 6, "billion", 9, "thousand million", 9);
  private static final Pattern COUNTED =
      Pattern.compile(
          "(?i)(\\d+(?:[.,]\\d+)?) ?(thousand million|thousand|million|billion)\\b"
              + "( in (?=\\d))?");

  /// Two pairs or more, as a fit takes them: `24:9.1 48:4.7`. One alone is a time of day.
  private static final Pattern READINGS =
      Pattern.compile("(?<!\\S)\\d+(?:[.,]\\d+)?:\\S+(?:\\s+\\d+(?:[.,]\\d+)?:\\S+)+(?!\\S)");

  /// A course whose unit is said once: `from 100 to 20 C`.
  private static final Pattern COURSE =
      Pattern.compile(
          "(?i)(?<![\\w.,])([-+]?\\d+(?:[.,]\\d+)?) to ([-+]?\\d+(?:[.,]\\d+)?) ?"
              + "(°?[CF]|K|°?P|litres?|liters?|L|kg|min|h|bar|psi|kPa)(?![\\w/])");

  /// The symbol of an element that reads like milligrams.
  private static final Pattern MAGNESIUM =
      Pattern.compile("\\bMg(?=[ =:]*\\d)|(?<=[A-Za-z] )mg(?= ?\\d)");

  /// `100 ppm as CaCO3`, `100 mg/L CaCO3`: what it stands for belongs to the number. Of a salt that
  /// is given it would be the salt.
  private static final Pattern AS_CARBONATE =
      Pattern.compile(
          "(?i)(?<![\\w.,])(\\d+(?:[.,]\\d+)?) ?(?:(?:ppm|mg/L)? ?as|ppm|mg/L)"
              + " (?:CaCO3|calcium carbonate)\\b");

  private static final Pattern OF_SALT = Pattern.compile("(?i)\\b(salts?|chalk|molar|dose)\\b");

  /// Three sides of a room.
  private static final Pattern ROOM =
      Pattern.compile(
          "(?i)(\\d+(?:[.,]\\d+)?) ?(?:m )?(?:x|×|by) ?(\\d+(?:[.,]\\d+)?) ?(?:m )?(?:x|×|by) ?"
              + "(\\d+(?:[.,]\\d+)?) ?(m|ft)\\b");

  /// Words for how long, for hardness, and a percent sign that the next word is stuck to.
  private static final List<Way> WORDS =
      List.of(
          new Way("(\\d+(?:[.,]\\d+)?) gravity points?", "$1 points"),
          new Way("alfa", "alpha"),
          new Way("alk(?= ?\\d)", "alkalinity"),
          new Way("o2", "oxygen"),
          new Way("pt 100(?=\\D)", "pt100"),
          new Way("half a year", "6 months"),
          new Way("half an hour", "30 min"),
          new Way("an hour and a half", "90 min"),
          new Way("(?:an|one) hour", "60 min"),
          new Way("two hours", "120 min"),
          new Way("(?:a|one) (day|week|month|year)", "1 $1"),
          new Way("(\\d+(?:[.,]\\d+)?) german degrees?", "$1 dH"),
          new Way("(\\d+(?:[.,]\\d+)?) french degrees?", "$1 fH"),
          new Way("(\\d+(?:[.,]\\d+)?) ?%(\\p{L}+)", "$1 % $2"));

  private static final Pattern HEX = Pattern.compile("\\b0[xX]([0-9a-fA-F]{1,8})\\b");
  private static final Pattern AMOUNT = Pattern.compile("([+-]?[0-9.,e]+) ?(\\S.*)");

  /// A unit, the one that is wanted, and by how much the number grows.
  private record Step(String from, String wanted, String factor) {}

  /// A way of speaking, and how it is read.
  private record Way(Pattern said, String read) {
    Way(String said, String read) {
      this(Pattern.compile("(?i)(?<![\\w.,])" + said + "\\b"), read);
    }
  }

  /// A salt by the name in the shop; calcium chloride is sold with two waters.
  private record Salted(String name, String is) {}

  private static final List<Salted> SALTS =
      List.of(
          new Salted("gypsum", "CaSO4.2H2O"),
          new Salted("calcium chloride", "CaCl2.2H2O"),
          new Salted("epsom", "MgSO4.7H2O"),
          new Salted("magnesium chloride", "MgCl2.6H2O"),
          new Salted("baking soda", "NaHCO3"),
          new Salted("table salt", "NaCl"),
          new Salted("chalk", "CaCO3"),
          new Salted("lime", "Ca(OH)2"));

  private static final List<Step> STEPS =
      List.of(
          new Step("K/min", "K/s", "0.0166666666667"),
          new Step("C/min", "K/s", "0.0166666666667"),
          new Step("K/h", "K/s", "0.000277777777778"),
          new Step("C/h", "K/s", "0.000277777777778"),
          new Step("K/s", "K/min", "60"),
          new Step("mm/s", "m/s", "0.001"),
          new Step("kohm", "Ω", "1000"),
          new Step("kΩ", "Ω", "1000"),
          new Step("kJ/K", "J/K", "1000"),
          new Step("kJ/kg", "J/kg", "1000"),
          new Step("kJ/(kg K)", "J/(kg K)", "1000"));

  private Said() {}

  /// The line with numbers in place of number words, and nothing that reads as another unit.
  static String plain(String line) {
    String counted = COUNTED.matcher(line).replaceAll(Said::counted);
    String named = MAGNESIUM.matcher(counted).replaceAll("magnesium");
    if (!OF_SALT.matcher(named).find()) {
      named = AS_CARBONATE.matcher(named).replaceAll("$1 " + Ions.CARBONATE);
    }
    named = ROOM.matcher(named).replaceAll(Said::room);
    for (Way way : WORDS) {
      named = way.said().matcher(named).replaceAll(way.read());
    }
    named = COURSE.matcher(named).replaceAll("$1 $3 to $2 $3");
    return HEX.matcher(named).replaceAll(hex -> String.valueOf(Long.parseLong(hex.group(1), 16)));
  }

  private static String room(MatchResult sides) {
    BigDecimal each = new BigDecimal(1);
    for (int side : new int[] {1, 2, 3}) {
      each = each.multiply(new BigDecimal(sides.group(side).replace(',', '.')));
    }
    return each.stripTrailingZeros().toPlainString() + " " + sides.group(4) + "³";
  }

  /// Readings and remarks, each at its hour or height, where a line holds a list of them.
  static Optional<String> readings(String line) {
    return READINGS.matcher(line).results().findFirst().map(MatchResult::group);
  }

  /// The line without them.
  static String withoutReadings(String line) {
    return readings(line).map(list -> line.replace(list, " ")).orElse(line);
  }

  private static String counted(MatchResult found) {
    int power = POWERS.getOrDefault(found.group(2).toLowerCase(Locale.ROOT), 0);
    return found.group(1) + "e" + power + (found.group(3) == null ? "" : " ");
  }

  /// The formula of a brewing salt that is named in a line.
  static Optional<String> formula(String line) {
    String small = line.toLowerCase(Locale.ROOT);
    return SALTS.stream().filter(salt -> small.contains(salt.name())).findFirst().map(Salted::is);
  }

  /// Whether a word is the formula of such a salt, with or without its water.
  static boolean isFormula(String word) {
    return SALTS.stream()
        .map(Salted::is)
        .anyMatch(
            each ->
                each.equalsIgnoreCase(word)
                    || each.replaceFirst("\\..*", "").equalsIgnoreCase(word));
  }

  /// An amount in the wanted unit, where it was typed in one of its sizes.
  static Optional<String> inUnit(String typed, String wanted) {
    Matcher amount = AMOUNT.matcher(typed.strip().replace("°", ""));
    if (!amount.matches()) {
      return Optional.empty();
    }
    String unit = amount.group(2).strip();
    return STEPS.stream()
        .filter(step -> step.from().equalsIgnoreCase(unit) && step.wanted().equals(wanted))
        .findFirst()
        .flatMap(step -> times(amount.group(1), step))
        .map(number -> number + " " + wanted);
  }

  private static Optional<String> times(String number, Step step) {
    try {
      BigDecimal value = new BigDecimal(number.replace(',', '.'));
      return Optional.of(
          value.multiply(new BigDecimal(step.factor())).round(new MathContext(9)).toPlainString());
    } catch (NumberFormatException odd) {
      return Optional.empty();
    }
  }
}
