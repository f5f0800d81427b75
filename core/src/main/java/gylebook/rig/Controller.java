package gylebook.rig;

/// What drives the element: proportional plus integral, or a duty set by hand.
///
/// @param gainFracPerK duty per kelvin of error
/// @param integralSec integral time
/// @param trackingSec how fast the integral follows a clamped duty
public record Controller(Parameter gainFracPerK, Parameter integralSec, Parameter trackingSec) {}
