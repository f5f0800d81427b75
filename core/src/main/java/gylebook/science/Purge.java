package gylebook.science;

/// Oxygen in package and headspace, and what purging leaves.
///
/// Aim below 50 micrograms a litre in the package (two breweries' pages). Pushing sanitiser out
/// with gas beats any number of purges.
public final class Purge {
  private static final double OXYGEN_G_PER_MOL = 31.9988;
  private static final double UG_PER_MG = 1000;
  private static final double MG_PER_G = 1000;
  private static final double PPM_NUMBER = 1e6;

  private Purge() {}

  /// Oxygen left in a headspace after it was filled with gas and vented so often.
  ///
  /// `x = x0 (p_air/(p_air + p_gauge))^n`
  ///
  /// - Valid: gas and air mix fully each time; pure carbon dioxide. Read the vessel's marking
  ///   before pressure goes on, ventilate; follow your local code.
  /// - Source: dilution.
  @Reckoned(
      name = "purge-oxygen",
      says = "How much oxygen is left in a headspace after some purges.",
      equation = "x = x0 (p_air/(p_air + p_gauge))^n",
      range = "well mixed, pure gas; read the vessel's marking; ventilate the room")
  @Source(key = "mass-balance", at = "dilution", trust = Trust.COMPUTED)
  public static double leftPpm(
      int purgeCount,
      double gaugeKpa,
      @Usually(101.325) double airKpa,
      @Usually(0.20946) double oxygenFrac) {
    Require.within("number of purges", purgeCount, 0, 1000);
    Require.notBelow0("gauge pressure in kPa", gaugeKpa);
    Require.within("air pressure in kPa", airKpa, 50, 110);
    Require.within("share of oxygen at the start", oxygenFrac, 0, 1);
    return PPM_NUMBER * oxygenFrac * Math.pow(airKpa / (airKpa + gaugeKpa), purgeCount);
  }

  /// Oxygen in a litre of air.
  ///
  /// `m = M x p/(R T)`
  ///
  /// - Valid: -20 to 60 C, ideal gas; refused outside.
  /// - Source: the gas law; composition of air from handbooks.
  @Reckoned(
      name = "oxygen-in-air",
      says = "How much oxygen a litre of air holds.",
      equation = "m = 31.9988 x p/(R T)",
      range = "-20 to 60 C; refused outside")
  @Source(key = "air-composition", trust = Trust.READ)
  public static double airMgPerL(@Usually(20) double airC, @Usually(101.325) double airKpa) {
    Require.within("air temperature in C", airC, -20, 60);
    Require.within("air pressure in kPa", airKpa, 50, 110);
    double moles = airKpa / (CarbonDioxide.GAS_J_PER_MOL_K * (airC + CarbonDioxide.ZERO_KELVIN));
    return 0.20946 * moles * OXYGEN_G_PER_MOL * MG_PER_G;
  }

  /// Air that carries a package's oxygen: how little is enough to spoil it.
  ///
  /// `V = c V_beer / m_air`
  ///
  /// - Valid: at 20 C and one atmosphere.
  /// - Source: as above.
  @Reckoned(
      name = "oxygen-as-air",
      says = "How much air carries the oxygen that a package may pick up.",
      equation = "V = c V_beer / (278.6 mg/L)",
      range = "air at 20 C and one atmosphere")
  @Source(key = "air-composition", trust = Trust.READ)
  public static double pickedUpMl(double beerL, @Usually(50) double oxygenUgPerL) {
    Require.notBelow0("beer in L", beerL);
    Require.notBelow0("oxygen in ug/L", oxygenUgPerL);
    double oxygen = beerL * oxygenUgPerL / UG_PER_MG;
    return oxygen / airMgPerL(20, CarbonDioxide.SEA_LEVEL_KPA) * 1000;
  }
}
