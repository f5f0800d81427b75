package gylebook.science;

/// Specific heat of water.
public final class WaterHeat {
  private static final double STANDARD_KPA = 101.325;

  private WaterHeat() {}

  /// Specific heat of water at the standard pressure; see the function with a pressure.
  public static double waterJPerKgK(double waterC) {
    return waterJPerKgK(waterC, STANDARD_KPA);
  }

  /// Specific heat of liquid water at constant pressure.
  ///
  /// `cp = -R tau^2 d2gamma/dtau2`, the Gibbs energy of region 1
  ///
  /// - Valid: 0 to 150 C and 50 to 1000 kPa, liquid (or a little past boiling); outside it refuses.
  /// - Source: IAPWS-IF97, equation 7 and table 2.
  @Reckoned(
      name = "water-heat-capacity",
      says = "The heat that warms a kilogram of water by one kelvin.",
      equation = "cp = -R tau^2 d2gamma/dtau2",
      range = "0 to 150 C, 50 to 1000 kPa, liquid; refused outside")
  @Source(key = "iapws-if97", at = "equation 7, tables 2 and 3", trust = Trust.SECOND_HAND)
  public static double waterJPerKgK(double waterC, @Usually(STANDARD_KPA) double pressureKpa) {
    Require.within("water in C", waterC, 0, 150);
    Require.within("pressure in kPa", pressureKpa, 50, 1000);
    return LiquidIf97.heatJPerKgK(waterC, pressureKpa);
  }
}
