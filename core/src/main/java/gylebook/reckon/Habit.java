package gylebook.reckon;

import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.Typed;
import gylebook.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// What nobody means by an amount, although it could be read so: a gravity is no air pressure, a
/// bore no rise, 66 C no doubt. Such a place is no place; then the line is asked back.
///
/// Rules of thumb of how people write, from no source.
@AnyUnit("weighs amounts of every unit")
final class Habit {
  private static final Pattern SPINDLE = Pattern.compile("(0[.,]9|1[.,][01])\\d\\d");
  private static final Pattern FRACTION = Pattern.compile("\\d+/\\d+");
  private static final Pattern MINUTES = Pattern.compile("(\\d+)[.,]?\\d* ?m");
  private static final Pattern MASH_PH = Pattern.compile("4[.,][5-9]\\d?|5[.,]\\d{1,2}|6[.,][0-2]");

  /// Units that nobody leaves out; a bare number is one of them only by its name.
  private static final Set<String> SPELT_OUT =
      Set.of(
          "1/K",
          "J/kg",
          "J/(kg K)",
          "J/K",
          "J",
          "m²",
          "Pa s",
          "W/(m K)",
          "W/(m² K)",
          "K/W",
          "W/K",
          "kg/L",
          "1/s");

  /// What nobody gives without saying what it is.
  private static final Set<String> BY_NAME =
      Set.of("ash", "twist", "frequency", "coupling", "leak", "emissivity", "activity", "metal");

  private static final Set<String> NARROW = Set.of("bore", "outer", "sheath", "grain", "port");
  private static final Set<String> WIDE =
      Set.of("rise", "length", "reach", "height", "travel", "line");
  private static final double NARROW_MOST_M = 0.15;
  private static final double HOUSE_MOST_M = 200;
  private static final double WIDE_LEAST_M = 0.02;
  private static final double APART_MOST_K = 20;
  private static final double MEQ_MOST = 12;
  private static final int MINUTES_MOST = 300;

  private Habit() {}

  /// Whether nobody means this amount by that input.
  static boolean never(Fit.Amounted amount, Input input, Named wanted, boolean named) {
    String nearest = amount.before().isEmpty() ? "" : amount.before().getFirst();
    boolean bare = amount.bare();
    String text = amount.text();
    return otherScale(amount, nearest, wanted)
        || (SPINDLE.matcher(text).matches() && !named && !takesGravity(wanted))
        || (bare && !named && input.usual().isPresent() && SPELT_OUT.contains(wanted.symbol()))
        || (!named
            && input.usual().isPresent()
            && BY_NAME.contains(stem(wanted).isEmpty() ? "" : stem(wanted).getFirst()))
        || (!named && last(wanted, "potential"))
        || (bare && !named && FRACTION.matcher(text).matches())
        || (wanted.symbol().equals("L/kg") && amount.says("thickness"))
        || (wanted.symbol().equals("K") && apart(amount, named))
        || (wanted.symbol().equals("meq/L") && bare && number(text) > MEQ_MOST)
        || (wanted.symbol().equals("min") && metres(text, nearest))
        || (last(wanted, "absolute") && !bare && !amount.says("absolute", "abs"))
        || (!named && outOfSize(text, wanted));
  }

  /// A number that reads like a specific gravity.
  static boolean spindle(String text) {
    return SPINDLE.matcher(text).matches();
  }

  /// A number that reads like the pH of a mash.
  static boolean mashPh(String text) {
    return MASH_PH.matcher(text).matches();
  }

  /// `pH 5.4` is no alkalinity, `5 % abv` no share by mass; a drop of what shows is no real one.
  private static boolean otherScale(Fit.Amounted amount, String nearest, Named wanted) {
    boolean acidity = amount.bare() && nearest.equals("ph");
    boolean malts = stem(wanted).contains("malt") && !amount.says("malt");
    boolean share = wanted.javaName().endsWith("Frac");
    return (acidity && (!wanted.symbol().equals("pH") || malts))
        || (share && amount.beside("abv") && stem(wanted).contains("mass"))
        || (share && amount.beside("abw") && stem(wanted).contains("volume"))
        || (share && stem(wanted).contains("mass") && unsaid(amount))
        || (amount.bare() && amount.beside("ibu") && !takesIbu(amount, wanted))
        || (amount.bare() && amount.beside("time") && !wanted.symbol().isEmpty())
        || (stem(wanted).contains("real") && amount.says("apparent"));
  }

  /// Nobody says `5 %` of alcohol and means by mass.
  private static boolean unsaid(Fit.Amounted amount) {
    return !amount.bare() && !amount.says("mass", "weight", "abw");
  }

  private static boolean takesIbu(Fit.Amounted amount, Named wanted) {
    return wanted.symbol().equals("mg/L") || spindle(amount.text());
  }

  private static boolean takesGravity(Named wanted) {
    boolean extract = wanted.javaName().endsWith("Frac") && last(wanted, "extract");
    return extract || Set.of("SG", "°P", "kg/L").contains(wanted.symbol());
  }

  /// How far two temperatures lie apart, or how sure one is, is never as much as a temperature.
  private static boolean apart(Fit.Amounted amount, boolean named) {
    String text = amount.text().strip().toUpperCase(Locale.ROOT);
    boolean scale = text.endsWith("C") || text.endsWith("F");
    double kelvin = Math.abs(number(text)) * (text.endsWith("F") ? 1 / 1.8 : 1);
    boolean doubt = !named || amount.says("doubt");
    return (scale || (amount.bare() && doubt)) && kelvin > APART_MOST_K;
  }

  /// `1500 m` are metres, `at 60 m` too.
  private static boolean metres(String text, String nearest) {
    Matcher minutes = MINUTES.matcher(text);
    return minutes.matches()
        && (minutes.group(1).length() > 4
            || Integer.parseInt(minutes.group(1)) > MINUTES_MOST
            || nearest.equals("at"));
  }

  /// A bore of two metres, a rise of 3/16 inch.
  private static boolean outOfSize(String text, Named wanted) {
    boolean narrow = NARROW.stream().anyMatch(word -> last(wanted, word));
    boolean wide = WIDE.stream().anyMatch(word -> last(wanted, word));
    if (!wanted.symbol().equals("m") || last(wanted, "altitude")) {
      return false;
    }
    OptionalDouble metres = inside(text, Unit.known(Quantity.LENGTH, "m"));
    double size = Math.abs(metres.orElse(0));
    return size > (narrow ? NARROW_MOST_M : HOUSE_MOST_M)
        || (wide && size > 0 && size < WIDE_LEAST_M);
  }

  private static OptionalDouble inside(String text, Unit usual) {
    return Typed.parse(text, usual) instanceof Typed.Read read
        ? OptionalDouble.of(read.entered().inside())
        : OptionalDouble.empty();
  }

  /// The number an amount begins with.
  private static double number(String text) {
    String digits = text.strip().replace(',', '.').replaceAll("[^0-9.eE+-].*$", "");
    try {
      return Double.parseDouble(digits);
    } catch (NumberFormatException odd) {
      return 0;
    }
  }

  private static List<String> stem(Named wanted) {
    return wanted.unitName().map(name -> name.stem()).orElse(List.of());
  }

  private static boolean last(Named wanted, String word) {
    List<String> stem = stem(wanted);
    return !stem.isEmpty() && stem.getLast().equals(word);
  }
}
