package gylebook.recipe;

import gylebook.units.Entered;
import java.util.Optional;

/// One rest of the mash.
///
/// @param name in the brewer's words; may be empty
/// @param targetC wanted in the grain
/// @param holdSec how long
/// @param rampSec how long the mash takes to heat up to it; absent: as fast as the element can. The
///   first rest is struck, not heated to; what stands there is kept and not used
public record Rest(String name, Entered targetC, Entered holdSec, Optional<Entered> rampSec) {
  /// A rest that is reached as fast as the element can.
  public Rest(String name, Entered targetC, Entered holdSec) {
    this(name, targetC, holdSec, Optional.empty());
  }
}
