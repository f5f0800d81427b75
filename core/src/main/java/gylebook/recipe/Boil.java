package gylebook.recipe;

import gylebook.units.Entered;
import java.util.Optional;

/// The boil as wanted.
///
/// @param holdSec from the first rolling boil to flame-out
/// @param evaporationLPerSec water to drive off, measured at 20 C; absent: the rig's usual rolling
///   boil
/// @param dutyFrac duty set by hand; absent: whatever gives the evaporation
/// @param lid whether it boils under the lid
public record Boil(
    Entered holdSec, Optional<Entered> evaporationLPerSec, Optional<Entered> dutyFrac, Lid lid) {
  /// An open boil.
  public Boil(Entered holdSec, Optional<Entered> evaporationLPerSec, Optional<Entered> dutyFrac) {
    this(holdSec, evaporationLPerSec, dutyFrac, Lid.OFF);
  }

  /// Where the lid is.
  public enum Lid {
    OFF("off"),
    ON("on");

    private final String words;

    Lid(String words) {
      this.words = words;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }
  }
}
