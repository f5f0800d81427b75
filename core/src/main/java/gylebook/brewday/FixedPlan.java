package gylebook.brewday;

import java.time.Instant;

/// A plan of the day, pinned so that it can be computed again.
///
/// @param seq the entry that holds it
/// @param at when it was fixed
/// @param recipe document of its recipe
/// @param rig document of its rig
/// @param engine revision of the model that made it
/// @param seed of the draws
/// @param days how many days were simulated
/// @param report what it said, as the brewer read it
public record FixedPlan(
    long seq,
    Instant at,
    String recipe,
    String rig,
    String engine,
    long seed,
    int days,
    String report) {}
