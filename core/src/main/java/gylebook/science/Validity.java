package gylebook.science;

import gylebook.units.AnyUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/// The range in which a model was fitted or measured, and what it means to leave it.
///
/// A function that still answers outside its range has one of these beside it, so that whoever uses
/// the number can pass the caution on; it is never swallowed.
///
/// @param what the quantity in words, with its unit: `wort temperature in C`
/// @param least the lower end
/// @param most the upper end
/// @param outside what the function does beyond the ends
@AnyUnit("the range of any quantity; its words name the unit")
public record Validity(String what, double least, double most, String outside) {

  /// Whether a value lies inside.
  public boolean holds(double value) {
    return value >= least && value <= most;
  }

  /// A sentence for the brewer when a value lies outside, otherwise nothing.
  public Optional<String> caution(double value) {
    if (holds(value)) {
      return Optional.empty();
    }
    return Optional.of(
        what
            + " is "
            + figure(value)
            + ", outside "
            + figure(least)
            + " to "
            + figure(most)
            + ": "
            + outside
            + ".");
  }

  /// Six digits tell any value from the end that it passed; nobody reads more.
  private static String figure(double value) {
    if (!Double.isFinite(value)) {
      return String.valueOf(value);
    }
    BigDecimal six = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
    double size = Math.abs(value);
    boolean plain = value == 0 || (size >= 1e-4 && size < 1e9);
    return plain ? six.toPlainString() : six.toString();
  }
}
