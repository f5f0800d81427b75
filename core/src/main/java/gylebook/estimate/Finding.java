package gylebook.estimate;

import gylebook.rig.Parameter;
import gylebook.units.AnyUnit;

/// One number of the rig, as a finished day leaves it.
///
/// @param path its place in the rig, as in the rig's file; the unit stands at its end
/// @param before what it was held to be when the day was planned
/// @param after what the next day may be planned with
/// @param leftRatio how much of the doubt the day left, before anything is forgotten again
/// @param seen whether the day said anything of it
@AnyUnit("a number of any unit; the end of the path names it")
public record Finding(
    String path, Parameter before, Parameter after, double leftRatio, boolean seen) {}
