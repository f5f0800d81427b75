package gylebook.brewday;

import java.time.Instant;

/// A paper as it was written down: a recipe or a rig.
///
/// @param seq the entry that holds it
/// @param at when
/// @param document the paper
/// @param because what was changed, in words
public record Kept(long seq, Instant at, String document, String because) {}
