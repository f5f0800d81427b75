package gylebook.recipe;

import gylebook.units.Entered;
import java.util.Optional;

/// The boil as wanted.
///
/// @param holdSec from the first rolling boil to flame-out
/// @param evaporationLPerSec water to drive off, measured at 20 C; absent: the rig's usual rolling
///   boil
/// @param dutyFrac duty set by hand; absent: whatever gives the evaporation
public record Boil(
    Entered holdSec, Optional<Entered> evaporationLPerSec, Optional<Entered> dutyFrac) {}
