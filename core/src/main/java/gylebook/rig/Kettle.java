package gylebook.rig;

/// The vessel: its size, its steel and what it loses to the room.
///
/// @param diameterM inside diameter
/// @param heightM inside height from floor to rim
/// @param steelKg mass of the vessel
/// @param steelJPerKgK specific heat of its metal
/// @param wallWPerM2K loss of the wall to the room, convection and radiation together
/// @param wortToWallWPerK conductance between wort and wall
/// @param lidOnWPerM2K loss of the covered surface, without steam
/// @param lidOffWPerM2K loss of the open surface, without steam
/// @param lidLeakFrac share of the open surface's steam that leaves past the lid
/// @param evaporationFactor this kettle's evaporation against the formula for quiet air
/// @param deadL left in the kettle when it has run off
/// @param headroomM wanted between wort and rim
public record Kettle(
    Parameter diameterM,
    Parameter heightM,
    Parameter steelKg,
    Parameter steelJPerKgK,
    Parameter wallWPerM2K,
    Parameter wortToWallWPerK,
    Parameter lidOnWPerM2K,
    Parameter lidOffWPerM2K,
    Parameter lidLeakFrac,
    Parameter evaporationFactor,
    Parameter deadL,
    Parameter headroomM) {

  private static final double L_PER_M3 = 1000;

  /// Area of the liquid's surface.
  public double surfaceM2() {
    double d = diameterM.value();
    return Math.PI * d * d / 4;
  }

  /// What the vessel holds to the rim.
  public double brimL() {
    double innerM = heightM.value();
    return surfaceM2() * innerM * L_PER_M3;
  }
}
