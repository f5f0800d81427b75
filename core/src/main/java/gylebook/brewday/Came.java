package gylebook.brewday;

import gylebook.units.AnyUnit;

/// What came of one number of a day, as it was seen: ticked off or read.
///
/// @param seq the note that says so
/// @param by what it was seen with
/// @param value what was there
/// @param doubt how sure that is, as a standard deviation
@AnyUnit("in the unit of what was foreseen")
public record Came(long seq, String by, double value, double doubt) {}
