package gylebook.units;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/// How people write units: every spelling that is understood, in small letters without degree
/// signs.
final class UnitText {
  /// Other spellings of a symbol; a bare gallon is the US one.
  private static final Map<String, List<String>> SPELLINGS =
      Map.ofEntries(
          Map.entry(
              "kg",
              List.of(
                  "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes")),
          Map.entry("g", List.of("gr", "gm", "gram", "grams", "gramme", "grammes")),
          Map.entry("lb", List.of("lbs", "pound", "pounds", "#")),
          Map.entry("oz", List.of("ozs", "ounce", "ounces")),
          Map.entry(
              "L",
              List.of("lt", "lts", "ltr", "ltrs", "litre", "litres", "liter", "liters", "dm3")),
          Map.entry(
              "mL",
              List.of(
                  "mls", "millilitre", "millilitres", "milliliter", "milliliters", "cc", "cm3")),
          Map.entry("hL", List.of("hectolitre", "hectolitres")),
          Map.entry(
              "L/min",
              List.of(
                  "lpm",
                  "l/m",
                  "l/minute",
                  "litres/min",
                  "liters/min",
                  "litres/minute",
                  "liters/minute")),
          Map.entry("L/s", List.of("l/sec", "l/second", "litres/second", "liters/second")),
          Map.entry("L/h", List.of("l/hr", "l/hour", "lph", "litres/hour", "liters/hour")),
          Map.entry("°C", List.of("celsius", "centigrade")),
          Map.entry("°F", List.of("fahrenheit")),
          Map.entry("K", List.of("kelvin")),
          Map.entry("s", List.of("sec", "secs", "second", "seconds")),
          Map.entry("min", List.of("m", "mins", "minute", "minutes")),
          Map.entry("h", List.of("hr", "hrs", "hour", "hours")),
          Map.entry("d", List.of("day", "days")),
          Map.entry("wk", List.of("week", "weeks", "wks")),
          Map.entry("mo", List.of("month", "months", "mos")),
          Map.entry("yr", List.of("year", "years", "yrs")),
          Map.entry("°P", List.of("plato")),
          Map.entry("SG", List.of("og", "fg", "specific gravity")),
          Map.entry("points", List.of("point", "pts", "pt", "gu")),
          Map.entry("°Bx", List.of("brix", "bx")),
          Map.entry("°L", List.of("lovibond", "lovi", "lov")),
          Map.entry("IBU", List.of("ibus", "bu", "ebu")),
          Map.entry("°Lintner", List.of("lintner")),
          Map.entry("°WK", List.of("windisch-kolbach")),
          Map.entry(
              "vol",
              List.of("vols", "volumes", "volumes co2", "volumes of co2", "vol co2", "vols co2")),
          Map.entry(
              "psi", List.of("lbf/in2", "lb/in2", "lbs/in2", "lb/sq in", "lbs/sq in", "psig")),
          Map.entry("µg/L", List.of("ug/l", "mcg/l")),
          Map.entry("bar", List.of("bars")),
          Map.entry("mbar", List.of("mb", "millibar", "millibars")),
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
          Map.entry("US qt/lb", List.of("qt/lb", "qts/lb", "quarts/lb", "quarts/pound")),
          Map.entry("US gal/lb", List.of("gal/lb", "gals/lb", "gallons/lb", "gallons/pound")),
          Map.entry("US gal/oz", List.of("gal/oz")),
          Map.entry("US fl oz/oz", List.of("floz/oz", "fl oz/oz")));

  /// What the US and the imperial household call their measures alike.
  private static final Map<String, List<String>> ALIKE =
      Map.ofEntries(
          Map.entry("gal", List.of("gals", "gallon", "gallons")),
          Map.entry("qt", List.of("qts", "quart", "quarts")),
          Map.entry("pt", List.of("pts", "pint", "pints")),
          Map.entry("cup", List.of("cups")),
          Map.entry("fl oz", List.of("fl ozs", "floz", "fluid ounce", "fluid ounces")),
          Map.entry("tbsp", List.of("tbsps", "tbs", "tablespoon", "tablespoons")),
          Map.entry("tsp", List.of("tsps", "teaspoon", "teaspoons")),
          Map.entry("bbl", List.of("bbls", "barrel", "barrels")),
          Map.entry(
              "gal/min", List.of("gals/min", "gallons/min", "gallons/minute", "gal/minute", "gpm")),
          Map.entry("gal/h", List.of("gals/h", "gallons/h", "gallons/hour", "gal/hr", "gph")));

  private static final List<String> US = List.of("us ", "us");
  private static final List<String> IMPERIAL =
      List.of("imp ", "imp", "imperial ", "uk ", "uk", "i");
  private static final List<String> US_BEHIND = List.of(" us", " (us)");
  private static final List<String> IMPERIAL_BEHIND =
      List.of(" imp", " (imp)", " imperial", " (imperial)", " uk", " (uk)");
  private static final String NUMBER_ENDS = "(?<=[\\d½¼¾⅓⅔⅛⅜⅝⅞])";
  private static final String NUMBER_BEGINS = "(?=[\\d½¼¾⅓⅔⅛⅜⅝⅞])";
  private static final String DEGREES_OF =
      "(?=(?:c|f|p|k|l|celsius|centigrade|fahrenheit|kelvin|plato|brix|bx|lovibond|lintner)"
          + "(?![a-z]))";

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

  /// The imperial unit that is spelled alike, where a spelling is one that the two gallons share.
  static Optional<Unit> imperialAlike(Found found) {
    String symbol = found.unit().symbol();
    return symbol.startsWith("US ") && !found.spelling().contains("us")
        ? Unit.of(found.unit().quantity(), "imp " + symbol.substring(3))
        : Optional.empty();
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
        .replaceAll("(?<=[a-z])\\.(?=[a-z( ]|$)", "")
        // 1 lb.4 oz and 1 lb, 4 oz: no number begins there
        .replaceAll("(?<=[a-z])(?:\\.|, ?)" + NUMBER_BEGINS, " ")
        .replaceAll(NUMBER_ENDS + " ?deg(?:s|rees?)? ?" + DEGREES_OF, " ")
        // 68oC, 68 o C and a raised nought for the degree sign
        .replaceAll(NUMBER_ENDS + "(?:o ?(?=[cfp](?![a-z]))| o ?(?=c(?![a-z])))", " ")
        .replaceAll("⁰(?= ?[cfp](?![a-z])|$)", "")
        .strip();
  }

  private static String letter(int c) {
    return switch (c) {
      case '−', '–', '‒', '﹣', '－', '‐', '‑', '-' -> "-";
      case '°', 'º', '˚', '∘' -> "";
      case '℃' -> "c";
      case '℉' -> "f";
      case 'ℓ' -> "l";
      // seen by nobody, and copied along: soft hyphen, marks of width and of direction
      case '\u00ad', '\u200b', '\u200e', '\u2060', '\ufeff' -> "";
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
      spelledAlike(unit.symbol()).forEach(s -> words.putIfAbsent(s, unit));
    }
    Map<String, Unit> longestFirst = new LinkedHashMap<>();
    words.entrySet().stream()
        .sorted(
            Comparator.comparingInt((Map.Entry<String, Unit> e) -> -e.getKey().length())
                .thenComparing(Map.Entry::getKey))
        .forEach(e -> longestFirst.put(e.getKey(), e.getValue()));
    return longestFirst;
  }

  /// The spellings of a US or an imperial measure; a bare one is the US one.
  private static List<String> spelledAlike(String symbol) {
    boolean us = symbol.startsWith("US ");
    String name = symbol.replaceFirst("^(US|imp) ", "");
    List<String> alike = ALIKE.get(name);
    if (alike == null || name.equals(symbol)) {
      return List.of();
    }
    List<String> spellings = new ArrayList<>();
    Stream.concat(Stream.of(name), alike.stream())
        .forEach(
            word -> {
              if (us) {
                spellings.add(word);
              }
              (us ? US : IMPERIAL).forEach(before -> spellings.add(before + word));
              if (!word.contains("/")) {
                (us ? US_BEHIND : IMPERIAL_BEHIND).forEach(end -> spellings.add(word + end));
              }
            });
    return spellings;
  }
}
