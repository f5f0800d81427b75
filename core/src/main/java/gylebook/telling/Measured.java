package gylebook.telling;

import gylebook.rig.Origin;
import gylebook.rig.Parameter;
import gylebook.rig.Spread;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import java.util.Locale;

/// A number of the rig as somebody measured it: "28.5 L give or take 0.5 L".
@AnyUnit("numbers of every quantity; the name beside each says its unit")
final class Measured {
  /// Doubt that a measuring without a give-or-take is thought to leave of an assumption's: our
  /// judgement. The page shows it, so that it can be put right.
  private static final double LEFT_RATIO = 1.0 / 3;

  private static final double PER_CENT = 100;

  private Measured() {}

  /// The parameter after somebody typed a value over it.
  static Parameter again(String text, String name, Parameter before, ReadingUnits units) {
    String[] parts = split(text);
    double value = Amounts.number(parts[0], name, units);
    double doubt =
        parts.length == 1 ? unsaid(before) : doubt(parts[1], name, value, before.spread(), units);
    return before.typedAs(value, doubt, Origin.MEASURED, text.strip());
  }

  /// A number nobody had given before.
  static Parameter first(String text, String name, ReadingUnits units) {
    String[] parts = split(text);
    double value = Amounts.number(parts[0], name, units);
    double doubt = parts.length == 1 ? 0 : doubt(parts[1], name, value, Spread.NORMAL, units);
    return new Parameter(value, doubt, Spread.NORMAL, Origin.MEASURED, "", text.strip());
  }

  private static double unsaid(Parameter before) {
    return before.origin() == Origin.ASSUMED || before.origin() == Origin.MAKERS_PLATE
        ? before.doubt() * LEFT_RATIO
        : before.doubt();
  }

  private static String[] split(String text) {
    return text.replace("\u00b1", " give or take ")
        .replace("+/-", " give or take ")
        .split("give or take", 2);
  }

  private static double doubt(
      String text, String name, double value, Spread spread, ReadingUnits units) {
    String bare = text.strip();
    boolean share = bare.endsWith("%") && !name.endsWith("Frac");
    double inUnit;
    if (share) {
      double percent = Amounts.number(bare.substring(0, bare.length() - 1), "ratio", units);
      inUnit = Math.abs(value) * percent / PER_CENT;
    } else {
      inUnit = difference(bare, name, units);
    }
    if (!(inUnit >= 0)) {
      throw new Unfit("A give-or-take cannot be below 0.", "Type how far off it may be.");
    }
    return spread == Spread.LOG_NORMAL ? inUnit / Math.abs(value) : inUnit;
  }

  /// A difference: for temperatures a step of the scale, not a point on it.
  private static double difference(String text, String name, ReadingUnits units) {
    if (!name.endsWith("C")) {
      return Amounts.number(text, name, units);
    }
    return Amounts.number(text, name.substring(0, name.length() - 1) + "K", units);
  }

  /// What stands behind a parameter's value: where it is from and how far off it may be.
  static String behind(String name, Parameter parameter, ReadingUnits units) {
    String from =
        switch (parameter.origin()) {
          case ASSUMED -> "assumed";
          case MEASURED -> "measured";
          case LEARNT -> "learnt";
          case MAKERS_PLATE -> "maker's plate";
        };
    if (parameter.doubt() == 0) {
      return " (" + from + ")";
    }
    String doubt =
        parameter.spread() == Spread.LOG_NORMAL
            ? String.format(Locale.ROOT, "%.2g %%", PER_CENT * parameter.doubt())
            : Amounts.shown(doubtName(name), parameter.doubt(), units);
    return " (" + from + ", give or take " + doubt + ")";
  }

  private static String doubtName(String name) {
    return name.endsWith("C") ? name.substring(0, name.length() - 1) + "K" : name;
  }
}
