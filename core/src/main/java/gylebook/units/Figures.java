package gylebook.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/// Writes numbers with the digits that help a reader.
@AnyUnit("writes numbers of any unit")
final class Figures {
  private static final int DIGITS_LEAST = 2;
  private static final double SMALL = 1e-4;
  private static final double LARGE = 1e7;

  private Figures() {}

  /// A number as people read it: the unit's decimals, but never so few that only zeros are left.
  static String shown(Unit unit, double value) {
    if (!Double.isFinite(value)) {
      return "no number";
    }
    if (!unit.quantity().countsFromNothing() || value == 0) {
      return fixed(value, unit.decimals());
    }
    double size = Math.abs(value);
    if (size < SMALL || size >= LARGE) {
      return plain(value);
    }
    BigDecimal two =
        new BigDecimal(size).round(new MathContext(DIGITS_LEAST, RoundingMode.HALF_UP));
    int firstDigit = two.precision() - two.scale() - 1;
    return fixed(value, Math.max(unit.decimals(), DIGITS_LEAST - 1 - firstDigit));
  }

  /// Four digits for a number whose unit is none of the table's.
  static String plain(double value) {
    double size = Math.abs(value);
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(4, RoundingMode.HALF_UP));
    if (value == 0) {
      return "0";
    }
    return size < SMALL || size >= LARGE
        ? scientific(rounded)
        : rounded.stripTrailingZeros().toPlainString();
  }

  private static String scientific(BigDecimal rounded) {
    int power = rounded.precision() - rounded.scale() - 1;
    return rounded.movePointLeft(power).stripTrailingZeros().toPlainString() + "e" + power;
  }

  private static String fixed(double value, int decimals) {
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }
}
