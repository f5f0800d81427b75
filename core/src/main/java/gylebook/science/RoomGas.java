package gylebook.science;

/// Carbon dioxide in a closed room. It lies low and gives no warning: ventilate, hang an alarm at
/// knee height, and do not go in after somebody who fell.
public final class RoomGas {
  private static final double PERCENT_NUMBER = 100;
  private static final double PPM_NUMBER = 1e6;
  private static final double G_PER_KG = 1000;
  private static final double L_PER_M3 = 1000;

  private RoomGas() {}

  /// Limits of exposure.
  ///
  /// @param averagePpm over eight hours (OSHA, 29 CFR 1910.1000 table Z-1)
  /// @param averageMgPerM3 the same by mass
  /// @param shortPpm for a short time (NIOSH)
  /// @param dangerPpm immediately dangerous to life or health (NIOSH 1994)
  public record Limits(
      double averagePpm, double averageMgPerM3, double shortPpm, double dangerPpm) {}

  /// Official limits of the United States; follow your local code.
  ///
  /// The 10 000 ppm average that some pages give is from a rule of 1989 that a court vacated.
  ///
  /// - Valid: in the United States; other countries have their own.
  /// - Source: OSHA 29 CFR 1910.1000 table Z-1; NIOSH 1976 and 1994. Second-hand and from memory.
  @Reckoned(
      name = "carbon-dioxide-limits",
      says = "The official limits of carbon dioxide in air; follow your local code.",
      equation = "5000 ppm over 8 h; 30 000 ppm for a short time; 40 000 ppm at once dangerous",
      range = "United States; follow your local code")
  @Source(key = "osha-z1", at = "29 CFR 1910.1000 table Z-1", trust = Trust.SECOND_HAND)
  @Source(key = "niosh-co2", at = "recommended limits, IDLH", trust = Trust.MEMORY)
  public static Limits limits() {
    return new Limits(5000, 9000, 30_000, 40_000);
  }

  /// Carbon dioxide in a closed room from a whole fermentation.
  ///
  /// `x = m dRE 0.46286 R T/(M p V)`
  ///
  /// - Valid: no air changes, evenly mixed: it lies lower and thicker by the floor. Refused for a
  ///   room below 0.1 m3.
  /// - Source: Balling; ideal gas.
  @Reckoned(
      name = "room-gas-from-fermentation",
      says = "The carbon dioxide that a fermentation leaves in a closed room.",
      equation = "x = m dRE 0.46286 R T/(M p V)",
      range = "no air changes, evenly mixed; worse by the floor; ventilate, follow your local code")
  @Source(key = "balling", at = "gas and yeast", trust = Trust.MEMORY)
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  public static double fermentedPpm(
      double wortKg,
      double realDropPlato,
      double roomM3,
      @Usually(20) double roomC,
      @Usually(101.325) double airKpa) {
    Require.notBelow0("wort in kg", wortKg);
    Require.within("drop of real extract in P", realDropPlato, 0, 40);
    double gas = wortKg * (realDropPlato / PERCENT_NUMBER) * Balling.GAS_PER_EXTRACT_RATIO;
    return releasedPpm(gas, roomM3, roomC, airKpa);
  }

  /// Carbon dioxide in a closed room into which a cylinder empties.
  ///
  /// `x = m R T/(M p V)`
  ///
  /// - Valid: as above. 2.27 kg (5 lb) in 30 m3 is above the danger limit.
  /// - Source: ideal gas.
  @Reckoned(
      name = "room-gas-from-cylinder",
      says = "The carbon dioxide that a leaking cylinder leaves in a closed room.",
      equation = "x = m R T/(M p V)",
      range = "no air changes, evenly mixed; worse by the floor; ventilate, follow your local code")
  @Source(key = "mass-balance", at = "ideal gas", trust = Trust.COMPUTED)
  public static double releasedPpm(
      double gasKg, double roomM3, @Usually(20) double roomC, @Usually(101.325) double airKpa) {
    Require.notBelow0("gas in kg", gasKg);
    double litres = Require.within("room in m3", roomM3, 0.1, 1e6) * L_PER_M3;
    Require.within("room temperature in C", roomC, -20, 60);
    Require.within("air pressure in kPa", airKpa, 50, 110);
    double moles = gasKg * G_PER_KG / CarbonDioxide.G_PER_MOL;
    double kelvin = roomC + CarbonDioxide.ZERO_KELVIN;
    return PPM_NUMBER * moles * CarbonDioxide.GAS_J_PER_MOL_K * kelvin / airKpa / litres;
  }
}
