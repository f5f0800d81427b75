package gylebook.rig;

/// The heating element and the mains behind it.
///
/// @param plateW power on its plate
/// @param plateV voltage its plate gives that power for
/// @param mainsV voltage at the kettle under load
/// @param topM height of its highest bare part above the floor
/// @param coverM wort wanted above that part
/// @param breakerA rating of the circuit's breaker
public record Element(
    Parameter plateW,
    Parameter plateV,
    Parameter mainsV,
    Parameter topM,
    Parameter coverM,
    Parameter breakerA) {}
