package gylebook.rig;

import gylebook.units.AnyUnit;

/// One number of the rig with its doubt and its origin; the unit stands in the name of the field
/// that holds it.
///
/// @param value the middle of what we believe (the median, when positive for ever)
/// @param doubt one standard deviation: in the value's unit, or of its logarithm
/// @param spread the shape of the doubt
/// @param origin how it came to be known
/// @param basis where the value or its doubt comes from, in words; empty when the origin says all
/// @param asTyped what the brewer typed, unit and all; empty when nobody typed it
@AnyUnit("one type serves every quantity; the field that holds it names the unit")
public record Parameter(
    double value, double doubt, Spread spread, Origin origin, String basis, String asTyped) {

  /// Refuses what is not a number, and a positive-for-ever value that is not positive.
  public Parameter {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("A rig's number is " + value + "; it must be finite.");
    }
    if (!(doubt >= 0) || Double.isInfinite(doubt)) {
      throw new IllegalArgumentException("A doubt is " + doubt + "; it must not be below 0.");
    }
    if (spread == Spread.LOG_NORMAL && !(value > 0)) {
      throw new IllegalArgumentException(
          "A number that stays positive is " + value + "; it must be above 0.");
    }
  }

  /// An assumption around a value, symmetric.
  public static Parameter assumed(double value, double doubt, String basis) {
    return new Parameter(value, doubt, Spread.NORMAL, Origin.ASSUMED, basis, "");
  }

  /// An assumption that stays positive; the doubt is of the logarithm (0.1 is about 10 %).
  public static Parameter assumedPositive(double value, double doubt, String basis) {
    return new Parameter(value, doubt, Spread.LOG_NORMAL, Origin.ASSUMED, basis, "");
  }

  /// A measurement, symmetric.
  public static Parameter measured(double value, double doubt, String basis) {
    return new Parameter(value, doubt, Spread.NORMAL, Origin.MEASURED, basis, "");
  }

  /// A figure of the maker that stays positive.
  public static Parameter plate(double value, double doubt, String basis) {
    return new Parameter(value, doubt, Spread.LOG_NORMAL, Origin.MAKERS_PLATE, basis, "");
  }

  /// A number without doubt, for tests and reference cases.
  public static Parameter exact(double value) {
    return new Parameter(value, 0, Spread.NORMAL, Origin.MEASURED, "", "");
  }

  /// The value at `z` standard deviations from the middle.
  public double at(double z) {
    return spread == Spread.LOG_NORMAL ? value * Math.exp(doubt * z) : value + doubt * z;
  }

  /// The same number as the brewer typed it.
  public Parameter typedAs(double newValue, double newDoubt, Origin newOrigin, String typed) {
    return new Parameter(newValue, newDoubt, spread, newOrigin, "", typed);
  }

  /// The doubt in the unit of the value, for either shape.
  public double doubtInUnit() {
    return spread == Spread.LOG_NORMAL ? value * doubt : doubt;
  }
}
