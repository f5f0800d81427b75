package gylebook.science;

import gylebook.units.AnyUnit;
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
        what + " is " + value + ", outside " + least + " to " + most + ": " + outside + ".");
  }
}
