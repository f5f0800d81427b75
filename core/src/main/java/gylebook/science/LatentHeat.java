package gylebook.science;

/// Heat that turns boiling water into steam.
public final class LatentHeat {
  private LatentHeat() {}

  /// Latent heat of water at a temperature, water and steam saturated.
  ///
  /// `r = h_steam(T, p) - h_water(T, p)`, with p the saturation pressure of T
  ///
  /// - Valid: 0 to 200 C; outside it refuses.
  /// - Source: IAPWS-IF97, regions 1, 2 and 4.
  @Reckoned(
      name = "latent-heat",
      says = "The heat that evaporates a kilogram of water at a temperature.",
      equation = "r = h_steam(T, psat) - h_water(T, psat)",
      range = "0 to 200 C; refused outside")
  @Source(key = "iapws-if97", at = "tables 2, 10 and 11", trust = Trust.SECOND_HAND)
  public static double latentJPerKg(double waterC) {
    Require.within("water in C", waterC, 0, 200);
    return evaporationJPerKg(waterC, Saturation.saturationKpa(waterC));
  }

  /// Latent heat of water that boils under this pressure.
  ///
  /// `r = h_steam(T, p) - h_water(T, p)`, with T the boiling point at p
  ///
  /// - Valid: 0.6113 to 1550 kPa; outside it refuses.
  /// - Source: IAPWS-IF97, regions 1, 2 and 4.
  @Reckoned(
      name = "latent-heat-of-the-boil",
      says = "The heat that boils away a kilogram of water under a pressure.",
      equation = "r = h_steam(Tsat, p) - h_water(Tsat, p)",
      range = "0.6113 to 1550 kPa; refused outside")
  @Source(key = "iapws-if97", at = "tables 2, 10 and 11", trust = Trust.SECOND_HAND)
  public static double boilJPerKg(@Usually(101.325) double pressureKpa) {
    Require.within("pressure in kPa", pressureKpa, 0.6113, 1550);
    return evaporationJPerKg(Saturation.boilingC(pressureKpa), pressureKpa);
  }

  private static double evaporationJPerKg(double waterC, double pressureKpa) {
    return SteamIf97.enthalpyJPerKg(waterC, pressureKpa)
        - LiquidIf97.enthalpyJPerKg(waterC, pressureKpa);
  }
}
