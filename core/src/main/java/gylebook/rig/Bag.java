package gylebook.rig;

/// The bag (or basket) and the bed of malt in it.
///
/// @param diameterM width of the bed
/// @param floorM height of its bottom above the kettle's floor
/// @param permeabilityM2 how easily wort runs through the bed
/// @param drainedKgPerKg wort kept by a kilogram of malt after draining
/// @param squeezedKgPerKg wort kept by a kilogram of malt after squeezing
/// @param wallWPerK heat that crosses the cloth without flow
/// @param bedKgPerKg wort that stays among a kilogram of malt while the bag hangs in the wort
/// @param crestM how far the head on the bed may rise above rest before it spills to the outside
/// @param displacementLPerKg room that a kilogram of malt takes in the mash
public record Bag(
    Parameter diameterM,
    Parameter floorM,
    Parameter permeabilityM2,
    Parameter drainedKgPerKg,
    Parameter squeezedKgPerKg,
    Parameter wallWPerK,
    Parameter bedKgPerKg,
    Parameter crestM,
    Parameter displacementLPerKg) {}
