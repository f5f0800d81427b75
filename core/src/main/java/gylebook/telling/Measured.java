package gylebook.telling;

import gylebook.rig.Origin;
import gylebook.rig.Parameter;
import gylebook.rig.Spread;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import gylebook.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/// A number of the rig as somebody measured it: "28.5 L give or take 0.5 L".
@AnyUnit("numbers of every quantity; the name beside each says its unit")
final class Measured {
  /// Doubt that a measuring without a give-or-take is thought to leave of an assumption's: our
  /// judgement. The page shows it, so that it can be put right.
  private static final double LEFT_RATIO = 1.0 / 3;

  private static final double PER_CENT = 100;

  private final String name;
  private final Optional<Unit> usual;
  private final ReadingUnits units;

  /// @param name of the component, which says its unit
  /// @param usual the unit of a bare number
  Measured(String name, Optional<Unit> usual, ReadingUnits units) {
    this.name = name;
    this.usual = usual;
    this.units = units;
  }

  /// The parameter after somebody typed a value over it.
  Parameter again(String text, Parameter before) {
    String[] parts = split(text);
    double value = Amounts.number(parts[0], name, usual);
    double doubt = parts.length == 1 ? unsaid(before) : doubt(parts[1], value, before.spread());
    return before.typedAs(value, doubt, Origin.MEASURED, text.strip());
  }

  /// A number nobody had given before.
  Parameter first(String text) {
    String[] parts = split(text);
    double value = Amounts.number(parts[0], name, usual);
    double doubt = parts.length == 1 ? 0 : doubt(parts[1], value, Spread.NORMAL);
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

  private double doubt(String text, double value, Spread spread) {
    String bare = text.strip();
    // A share of a share could mean both; it means what the sentence itself would say by it.
    boolean relative = spread == Spread.LOG_NORMAL || !name.endsWith("Frac");
    double inUnit;
    if (bare.endsWith("%") && relative) {
      double percent = Amounts.number(bare.substring(0, bare.length() - 1), "ratio", units);
      inUnit = Math.abs(value) * percent / PER_CENT;
    } else {
      inUnit = difference(bare);
    }
    if (!(inUnit >= 0)) {
      throw new Unfit("A give-or-take cannot be below 0.", "Type how far off it may be.");
    }
    if (spread == Spread.LOG_NORMAL && !(value > 0)) {
      throw new Unfit("This must be more than nothing.", "Type an amount above 0.");
    }
    return spread == Spread.LOG_NORMAL ? inUnit / value : inUnit;
  }

  /// A difference: for temperatures a step of the scale, not a point on it.
  private double difference(String text) {
    return name.endsWith("C")
        ? Amounts.number(text, doubtName(name), units)
        : Amounts.number(text, name, usual);
  }

  /// What stands behind a parameter's value: where it is from and how far off it may be.
  static String behind(String name, Parameter parameter, ReadingUnits units) {
    String from = parameter.origin().words();
    if (parameter.doubt() == 0) {
      return " (" + from + ")";
    }
    String doubt =
        parameter.spread() == Spread.LOG_NORMAL
            ? percent(parameter.doubt())
            : Amounts.shown(doubtName(name), parameter.doubt(), units);
    return " (" + from + ", give or take " + doubt + ")";
  }

  static String percent(double frac) {
    double percent = PER_CENT * frac;
    return new BigDecimal(percent)
            .round(new MathContext(2, RoundingMode.HALF_UP))
            .stripTrailingZeros()
            .toPlainString()
        + " %";
  }

  static String doubtName(String name) {
    return name.endsWith("C") ? name.substring(0, name.length() - 1) + "K" : name;
  }
}
