package gylebook.rig;

/// How this brewer works: the times and habits that the plan has to allow for.
///
/// @param doughInSec pouring in the malt and stirring
/// @param settleSec waiting with the pump off after that
/// @param drainSec letting the bag drip
/// @param squeeze whether the bag is pressed
/// @param mashFrac share of the malt's extract that the crush lets go
/// @param mixingLPerSec exchange between bed and kettle by stirring, without a pump
/// @param fermenterL what the fermenter holds to the brim
/// @param fermenterLossL left behind on the yeast
/// @param kegL what the keg (or the bottles together) holds
/// @param liftReachM how far from the body the bag is lifted
/// @param hoist whether there is a hoist
public record Working(
    Parameter doughInSec,
    Parameter settleSec,
    Parameter drainSec,
    boolean squeeze,
    Parameter mashFrac,
    Parameter mixingLPerSec,
    Parameter fermenterL,
    Parameter fermenterLossL,
    Parameter kegL,
    Parameter liftReachM,
    boolean hoist) {}
