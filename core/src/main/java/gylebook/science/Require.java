package gylebook.science;

import gylebook.units.AnyUnit;

/// Guards of the science room. Written as `!(x > 0)`, so that NaN is refused as well.
@AnyUnit("guards any quantity; the caller names it with its unit")
public final class Require {
  private Require() {}

  /// Refuses what is not a finite number above zero.
  public static double above0(String what, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw refusal(what, value, "above 0");
    }
    return value;
  }

  /// Refuses what is negative, infinite or not a number.
  public static double notBelow0(String what, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw refusal(what, value, "at least 0");
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

  /// Refuses what is no temperature of a brewery: below absolute zero or above 1000 C.
  public static double temperatureC(String what, double valueC) {
    return within(what, valueC, -273.15, 1000);
  }

  /// Refuses what is infinite or not a number.
  public static double finite(String what, double value) {
    if (!Double.isFinite(value)) {
      throw refusal(what, value, "finite");
    }
    return value;
  }

  /// The number in a part of a text that holds several; a decimal comma is one too.
  ///
  /// @param written how the whole text is written, told to whoever wrote something else
  public static double number(String text, String written) {
    try {
      return Double.parseDouble(text.replace(',', '.'));
    } catch (NumberFormatException odd) {
      throw new IllegalArgumentException(
          "'" + text + "' is no number; write " + written + ".", odd);
    }
  }

  private static IllegalArgumentException refusal(String what, double value, String limit) {
    String must = value == Double.POSITIVE_INFINITY ? "finite" : limit;
    return new IllegalArgumentException(what + " is " + value + "; it must be " + must + ".");
  }
}
