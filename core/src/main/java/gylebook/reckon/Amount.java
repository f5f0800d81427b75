package gylebook.reckon;

import gylebook.units.AnyUnit;

/// One number of a reckoning: its name, the unrounded value in the unit its name in the code ends
/// in, that unit, and the same written for its reader.
@AnyUnit("the number of any input or result, with its unit beside it")
public record Amount(String name, double value, String unit, String shown) {}
