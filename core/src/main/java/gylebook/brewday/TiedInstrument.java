package gylebook.brewday;

import java.time.Instant;

/// An instrument the house listens to.
///
/// @param seq the entry that tied it
/// @param at when that was
/// @param name what the brewer calls it
/// @param place where it sits, in the brewer's words
/// @param document how it is reached and what it measures; the faces read it, not this room
public record TiedInstrument(long seq, Instant at, String name, String place, String document) {}
