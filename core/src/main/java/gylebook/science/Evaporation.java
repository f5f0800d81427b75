package gylebook.science;

/// Water that leaves an open hot surface below the boil, and the heat it takes along.
///
/// Shah's analogy of heat and mass transfer: air made light by vapour and warmth rises and carries
/// the vapour off. A review of eleven formulas on eleven data sets found it best, with a mean
/// deviation of 18 %: give its factor a doubt of 0.3 and let the rig learn it. A rim above the
/// surface and foam lower it, a fan raises it.
public final class Evaporation {
  private static final double VAPOUR_TO_AIR_MASS_RATIO = 0.62198;
  private static final double SEC_PER_HR = 3600;
  private static final double SHAH_NUMBER = 35.0 / 3600; // per hour in the paper

  private Evaporation() {}

  /// Water lost per area and time from an open, quiet surface into quiet air.
  ///
  /// `E = 35 rho_s (rho_r - rho_s)^(1/3) (W_s - W_r)` kg/(h m2). Refused at or above the boiling
  /// point. Where the room's air is the lighter, or the damper, it answers 0: the formula knows no
  /// condensation.
  @Source(key = "shah-2014", at = "natural convection, quiet pool", trust = Trust.SECOND_HAND)
  @Source(key = "shah-2002", at = "comparison of eleven formulas", trust = Trust.READ)
  @Reckoned(
      name = "evaporation-open",
      says = "How much water leaves an open hot surface below the boil, per area and time?",
      equation = "E = 35 rho_s (rho_r - rho_s)^(1/3) (W_s - W_r) in kg/(h m2)",
      range = "water from freezing to just below its boiling point, quiet air; refused above")
  public static double openKgPerM2Sec(
      double waterC,
      @Usually(20) double roomC,
      @Usually(0.5) double humidityFrac,
      @Usually(101.325) double pressureKpa) {
    Require.within("humidity", humidityFrac, 0, 1);
    Require.within("air pressure in kPa", pressureKpa, 1, 1000);
    return openKgPerM2Sec(
        Saturation.saturationKpa(waterC),
        waterC,
        humidityFrac * Saturation.saturationKpa(roomC),
        roomC,
        pressureKpa);
  }

  /// The same with both vapour pressures at hand, for the simulator's inner loop.
  @Source(key = "shah-2014", at = "natural convection, quiet pool", trust = Trust.SECOND_HAND)
  public static double openKgPerM2Sec(
      double saturationKpa, double waterC, double roomVapourKpa, double roomC, double pressureKpa) {
    double atSurface = pressureKpa - saturationKpa;
    double inRoom = pressureKpa - roomVapourKpa;
    if (!(atSurface > 0 && inRoom > 0)) {
      throw new IllegalArgumentException(
          "vapour at the surface is "
              + saturationKpa
              + " kPa and in the room "
              + roomVapourKpa
              + " kPa; both must stay below the air pressure of "
              + pressureKpa
              + " kPa.");
    }
    double surfaceAir = 1000 * atSurface / (Air.GAS_J_PER_KG_K * (waterC + Air.ZERO_C_KELVIN));
    double roomAir = 1000 * inRoom / (Air.GAS_J_PER_KG_K * (roomC + Air.ZERO_C_KELVIN));
    double drive = saturationKpa / atSurface - roomVapourKpa / inRoom;
    // Air that is not lighter than the room's does not rise, and drier air does not wet the water.
    if (roomAir <= surfaceAir || drive <= 0) {
      return 0;
    }
    return SHAH_NUMBER
        * surfaceAir
        * Math.cbrt(roomAir - surfaceAir)
        * VAPOUR_TO_AIR_MASS_RATIO
        * drive;
  }

  /// Heat that evaporation takes from an open hot surface, per area.
  @Source(key = "shah-2014", at = "natural convection, quiet pool", trust = Trust.SECOND_HAND)
  @Source(key = "open-tank-table", at = "still air, the table to compare with", trust = Trust.READ)
  @Reckoned(
      name = "evaporation-heat",
      says = "How much heat does evaporation take from an open hot surface, per area?",
      equation = "q = E h_fg",
      range = "water from freezing to just below its boiling point, quiet air; refused above")
  public static double openHeatWPerM2(
      double waterC,
      @Usually(20) double roomC,
      @Usually(0.5) double humidityFrac,
      @Usually(101.325) double pressureKpa) {
    return openKgPerM2Sec(waterC, roomC, humidityFrac, pressureKpa) * latentJPerKg(waterC);
  }

  /// A third opinion, made for swimming pools: `m = 0.1 AF (p_w - p_room)` in lb/(h ft2) and inHg.
  ///
  /// About 15 % below Shah at mash temperature. Refused for a damper room than the water's vapour.
  @Source(key = "pool-reference", at = "indoor swimming pool", trust = Trust.READ)
  @Reckoned(
      name = "evaporation-pool-form",
      says = "How much water leaves by the swimming pool formula (a second opinion)?",
      equation = "m = 0.1 AF (p_w - p_room), lb/(h ft2), inHg",
      range = "made for pools near 30 C; an extrapolation at mash temperature")
  public static double poolKgPerM2Sec(
      @Span(
              least = 15,
              most = 45,
              beyond = "it was made for pools; at mash temperature it is an extrapolation")
          double waterC,
      @Usually(20) double roomC,
      @Usually(0.5) double humidityFrac,
      @Usually(1) double activityFactor) {
    Require.within("water temperature in C", waterC, 0, 100);
    Require.within("room temperature in C", roomC, 0, 100);
    Require.within("humidity", humidityFrac, 0, 1);
    Require.notBelow0("activity factor", activityFactor);
    double inchOfMercuryKpa = 3.386389;
    double poundPerSquareFoot = 0.45359237 / 0.09290304;
    double drive =
        Saturation.saturationKpa(waterC) - humidityFrac * Saturation.saturationKpa(roomC);
    return Math.max(0, 0.1 * activityFactor * drive / inchOfMercuryKpa)
        * poundPerSquareFoot
        / SEC_PER_HR;
  }

  /// Heat that turns a kilogram of water into steam: `2501.0 - 2.277 T - 0.00168 T^2` kJ/kg.
  ///
  /// A fit within 2 kJ/kg of steam tables from 20 to 100 C. Refused outside 0 to 130 C.
  @Source(key = "steam-tables", at = "fit to the heat of vaporisation", trust = Trust.MEMORY)
  @Reckoned(
      name = "latent-heat-fit",
      says = "How much heat does evaporating a kilogram of water take?",
      equation = "h = 2501.0 - 2.277 T - 0.00168 T^2 in kJ/kg",
      range = "20 to 100 C within 2 kJ/kg; refused outside 0 to 130 C")
  public static double latentJPerKg(
      @Span(least = 20, most = 100, beyond = "the fit was held against steam tables there only")
          double waterC) {
    Require.within("water temperature", waterC, 0, 130);
    return 1000 * (2501.0 - 2.277 * waterC - 0.00168 * waterC * waterC);
  }

  /// Steam driven off in a boil by what the element gives beyond the losses.
  ///
  /// `m = (u P - losses) / h_fg` with the fit at the boiling point. 0 when the losses take it all.
  @Source(key = "energy-balance", at = "heat of a boiling kettle", trust = Trust.COMPUTED)
  @Reckoned(
      name = "boil-off",
      says = "How much water boils off at a duty?",
      equation = "m = (u P - losses) / h_fg",
      range = "a boiling kettle; 0 when the losses take all the power")
  public static double boilOffKgPerSec(
      @Usually(0.6) double dutyFrac,
      double powerW,
      @Usually(300) double lossesW,
      @Usually(100) double boilC) {
    Require.within("duty", dutyFrac, 0, 1);
    Require.notBelow0("power", powerW);
    Require.notBelow0("losses", lossesW);
    return Math.max(0, dutyFrac * powerW - lossesW) / latentJPerKg(boilC);
  }
}
