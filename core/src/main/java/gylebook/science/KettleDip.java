package gylebook.science;

/// What stands how high in a round kettle: the dip stick, both ways.
public final class KettleDip {
  private static final double L_PER_M3 = 1000;
  private static final double LEAST_M = 0.02;
  private static final double MOST_M = 5;

  private KettleDip() {}

  /// Level above the floor at which a volume stands.
  ///
  /// `h = V / (pi d^2/4)`
  ///
  /// - Valid: an upright round kettle with a flat floor. What stands in it is part of the volume:
  ///   grain, a coil, an element under the surface. Of a dished floor the first litres are missing.
  /// - Source: an upright cylinder.
  @Reckoned(
      name = "kettle-level",
      says = "How high a volume stands in a round kettle.",
      equation = "h = V / (pi d^2/4)",
      range = "upright walls, a flat floor, 2 cm to 5 m across; refused outside")
  @Source(key = "geometry", at = "upright cylinder", trust = Trust.COMPUTED)
  public static double levelM(double volumeL, double diameterM) {
    return Require.notBelow0("volume in L", volumeL) / L_PER_M3 / crossM2(diameterM);
  }

  /// Volume up to a level above the floor.
  ///
  /// `V = h pi d^2/4`
  ///
  /// - Valid: as above.
  /// - Source: an upright cylinder.
  @Reckoned(
      name = "kettle-volume",
      says = "What volume a dip stick in a round kettle stands for.",
      equation = "V = h pi d^2/4",
      range = "upright walls, a flat floor, 2 cm to 5 m across; refused outside")
  @Source(key = "geometry", at = "upright cylinder", trust = Trust.COMPUTED)
  public static double volumeL(double dipM, double diameterM) {
    return Require.notBelow0("dip in m", dipM) * L_PER_M3 * crossM2(diameterM);
  }

  private static double crossM2(double diameterM) {
    return Math.PI / 4 * Math.pow(Require.within("diameter in m", diameterM, LEAST_M, MOST_M), 2);
  }
}
