package gylebook.recipe;

import gylebook.units.Entered;

/// One rest of the mash.
///
/// @param name in the brewer's words; may be empty
/// @param targetC wanted in the grain
/// @param holdSec how long
public record Rest(String name, Entered targetC, Entered holdSec) {}
