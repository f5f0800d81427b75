package gylebook.science;

import gylebook.units.AnyUnit;

/// Guards of the science room. Written as `!(x > 0)`, so that NaN is refused as well.
@AnyUnit("guards any quantity; the caller names it with its unit")
public final class Require {
  private Require() {}

  /// Refuses what is not a finite number above zero.
  public static double above0(String what, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " is " + value + "; it must be above 0.");
    }
    return value;
  }

  /// Refuses what is negative, infinite or not a number.
  public static double notBelow0(String what, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " is " + value + "; it must not be below 0.");
    }
    return value;
  }

  /// Refuses what lies outside a closed range, or is not a number.
  public static double within(String what, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          what + " is " + value + "; it must lie between " + least + " and " + most + ".");
    }
    return value;
  }
}
