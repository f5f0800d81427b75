package gylebook.units;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/// How people write units: every spelling that is understood, in small letters without degree
/// signs.
final class UnitText {
  /// Other spellings of a symbol; a bare gallon is the US one.
  private static final Map<String, List<String>> SPELLINGS =
      Map.ofEntries(
          Map.entry("kg", List.of("kgs", "kilo", "kilos", "kilogram", "kilograms")),
          Map.entry("g", List.of("gr", "gm", "gram", "grams", "gramme", "grammes")),
          Map.entry("lb", List.of("lbs", "pound", "pounds", "#")),
          Map.entry("oz", List.of("ozs", "ounce", "ounces")),
          Map.entry("L", List.of("lt", "ltr", "litre", "litres", "liter", "liters")),
          Map.entry("mL", List.of("millilitre", "millilitres", "milliliter", "milliliters", "cc")),
          Map.entry("hL", List.of("hectolitre", "hectolitres")),
          Map.entry(
              "US gal",
              List.of(
                  "gal",
                  "gals",
                  "gallon",
                  "gallons",
                  "us gallon",
                  "us gallons",
                  "gal us",
                  "gal (us)")),
          Map.entry("US qt", List.of("qt", "qts", "quart", "quarts", "us quart", "us quarts")),
          Map.entry("US pt", List.of("pt", "pts", "pint", "pints", "us pint", "us pints")),
          Map.entry("US cup", List.of("cup", "cups", "us cups")),
          Map.entry("US fl oz", List.of("fl oz", "floz", "fluid ounce", "fluid ounces")),
          Map.entry("US tbsp", List.of("tbsp", "tablespoon", "tablespoons")),
          Map.entry("US tsp", List.of("tsp", "teaspoon", "teaspoons")),
          Map.entry("US bbl", List.of("bbl", "barrel", "barrels")),
          Map.entry(
              "imp gal",
              List.of(
                  "igal",
                  "uk gal",
                  "imp gallon",
                  "imp gallons",
                  "imperial gallon",
                  "imperial gallons",
                  "gal imp",
                  "gal (imp)")),
          Map.entry("imp qt", List.of("iqt", "uk qt", "imperial quart", "imperial quarts")),
          Map.entry(
              "imp pt", List.of("ipt", "uk pt", "uk pint", "imperial pint", "imperial pints")),
          Map.entry(
              "imp fl oz",
              List.of("ifloz", "uk fl oz", "imperial fluid ounce", "imperial fluid ounces")),
          Map.entry("imp bbl", List.of("ibbl", "uk bbl")),
          Map.entry("L/min", List.of("lpm", "litres/minute", "l/m")),
          Map.entry("L/s", List.of("l/sec", "litres/second")),
          Map.entry("L/h", List.of("l/hr", "lph", "litres/hour")),
          Map.entry("US gal/min", List.of("gpm", "gal/min", "us gpm")),
          Map.entry("US gal/h", List.of("gph", "gal/h", "gal/hr", "us gph")),
          Map.entry("°C", List.of("celsius", "centigrade", "deg c")),
          Map.entry("°F", List.of("fahrenheit", "deg f")),
          Map.entry("K", List.of("kelvin")),
          Map.entry("s", List.of("sec", "secs", "second", "seconds")),
          Map.entry("min", List.of("m", "mins", "minute", "minutes")),
          Map.entry("h", List.of("hr", "hrs", "hour", "hours")),
          Map.entry("d", List.of("day", "days")),
          Map.entry("wk", List.of("week", "weeks", "wks")),
          Map.entry("mo", List.of("month", "months", "mos")),
          Map.entry("yr", List.of("year", "years", "yrs")),
          Map.entry("°P", List.of("plato")),
          Map.entry("SG", List.of("s.g", "og", "fg")),
          Map.entry("points", List.of("point", "pts", "pt", "gu")),
          Map.entry("°Bx", List.of("brix", "bx")),
          Map.entry("°L", List.of("lovibond", "lovi", "lov")),
          Map.entry("IBU", List.of("ibus", "bu", "ebu")),
          Map.entry("°Lintner", List.of("lintner")),
          Map.entry("°WK", List.of("windisch-kolbach")),
          Map.entry("vol", List.of("vols", "volumes", "volumes co2", "vol co2")),
          Map.entry("psi", List.of("lbf/in2", "psig")),
          Map.entry("µg/L", List.of("ug/l", "mcg/l")),
          Map.entry("mbar", List.of("millibar")),
          Map.entry("mmHg", List.of("mm hg", "torr")),
          Map.entry("inHg", List.of("in hg", "inches hg", "inches of mercury")),
          Map.entry("W", List.of("watt", "watts")),
          Map.entry("kW", List.of("kilowatt", "kilowatts")),
          Map.entry("m", List.of("metre", "metres", "meter", "meters")),
          Map.entry("in", List.of("inch", "inches", "\"", "″")),
          Map.entry("ft", List.of("foot", "feet", "'", "′")),
          Map.entry("V", List.of("volt", "volts")),
          Map.entry("A", List.of("amp", "amps", "ampere", "amperes")),
          Map.entry("Ω", List.of("ohm", "ohms")),
          Map.entry("µS/cm", List.of("us", "microsiemens")),
          Map.entry("mS/cm", List.of("ms", "millisiemens")),
          Map.entry("%", List.of("percent", "per cent", "pct")),
          Map.entry("J/(kg K)", List.of("j/kg/k", "j/kgk")),
          Map.entry("mPa s", List.of("mpa-s", "mpas")),
          Map.entry("US qt/lb", List.of("qt/lb")),
          Map.entry("US gal/lb", List.of("gal/lb")),
          Map.entry("US gal/oz", List.of("gal/oz")),
          Map.entry("US fl oz/oz", List.of("floz/oz", "fl oz/oz")));

  private static final Map<Quantity, Map<String, Unit>> WORDS = new EnumMap<>(Quantity.class);

  static {
    for (Quantity quantity : Quantity.values()) {
      WORDS.put(quantity, words(quantity));
    }
  }

  private UnitText() {}

  /// A unit and the place where its spelling ends.
  record Found(Unit unit, int end, String spelling) {}

  /// The unit that begins at a place in normalised text; the longest spelling wins.
  static Optional<Found> at(String text, int start, Quantity quantity) {
    for (Map.Entry<String, Unit> word : of(quantity).entrySet()) {
      String spelling = word.getKey();
      int end = start + spelling.length();
      if (text.startsWith(spelling, start) && ends(text, end, spelling)) {
        return Optional.of(new Found(word.getValue(), end, spelling));
      }
    }
    return Optional.empty();
  }

  /// The unit of any quantity that is spelled exactly so; for a helpful refusal.
  static Optional<Unit> anywhere(String spelling) {
    return WORDS.values().stream()
        .flatMap(words -> Optional.ofNullable(words.get(spelling)).stream())
        .findFirst();
  }

  /// The unit of one quantity that is spelled exactly so.
  static Optional<Unit> anywhere(String spelling, Quantity quantity) {
    return Optional.ofNullable(of(quantity).get(spelling));
  }

  /// Whether a spelling is one that the two gallons share.
  static boolean sharedByGallons(Found found) {
    String symbol = found.unit().symbol();
    return symbol.startsWith("US ")
        && !found.spelling().contains("us")
        && Unit.of(found.unit().quantity(), "imp " + symbol.substring(3)).isPresent();
  }

  /// Small letters, plain spaces, no degree signs, one way to write minus, powers and slashes.
  static String normal(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (Character.digit(c, 10) >= 0) {
                plain.append(Character.digit(c, 10));
              } else if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
                plain.append(' ');
              } else {
                plain.append(letter(c));
              }
            });
    return plain
        .toString()
        .toLowerCase(Locale.ROOT)
        .replaceAll(" +", " ")
        .replaceAll("(?<=[a-z]) per (?=[a-z])", "/")
        .replaceAll("(?<=[a-z]) ?/ ?(?=[a-z(])", "/")
        .replaceAll("(?<=[a-z])\\.(?= |$)", "")
        .strip();
  }

  private static String letter(int c) {
    return switch (c) {
      case '−', '–', '‒', '﹣', '-' -> "-";
      case '°', 'º', '˚' -> "";
      case '²' -> "2";
      case '³' -> "3";
      case 'µ', 'μ' -> "u";
      case '·', '⋅' -> " ";
      case '⁄', '∕' -> "/";
      case '’' -> "'";
      case '”' -> "\"";
      default -> Character.toString(c);
    };
  }

  private static boolean ends(String text, int end, String spelling) {
    if (end == text.length() || !Character.isLetter(spelling.charAt(spelling.length() - 1))) {
      return true;
    }
    char next = text.charAt(end);
    return !Character.isLetter(next) && next != '/' && next != '(';
  }

  private static Map<String, Unit> of(Quantity quantity) {
    return WORDS.getOrDefault(quantity, Map.of());
  }

  private static Map<String, Unit> words(Quantity quantity) {
    Map<String, Unit> words = new LinkedHashMap<>();
    for (Unit unit : quantity.units()) {
      if (!unit.symbol().isEmpty()) {
        words.put(normal(unit.symbol()), unit);
      }
    }
    for (Unit unit : quantity.units()) {
      SPELLINGS.getOrDefault(unit.symbol(), List.of()).forEach(s -> words.putIfAbsent(s, unit));
    }
    Map<String, Unit> longestFirst = new LinkedHashMap<>();
    words.entrySet().stream()
        .sorted(
            Comparator.comparingInt((Map.Entry<String, Unit> e) -> -e.getKey().length())
                .thenComparing(Map.Entry::getKey))
        .forEach(e -> longestFirst.put(e.getKey(), e.getValue()));
    return longestFirst;
  }
}
