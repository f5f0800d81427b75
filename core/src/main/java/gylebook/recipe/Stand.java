package gylebook.recipe;

import gylebook.units.Entered;

/// The wort stands hot after the boil, for hops.
///
/// @param targetC cooled to this first; at or above the boil: it stands as it is
/// @param holdSec how long
public record Stand(Entered targetC, Entered holdSec) {}
