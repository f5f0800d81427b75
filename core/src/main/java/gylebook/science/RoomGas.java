package gylebook.science;

/// Carbon dioxide in a closed room. It lies low and gives no warning: ventilate, hang an alarm at
/// knee height, and do not go in after somebody who fell.
public final class RoomGas {
  private static final double PERCENT_NUMBER = 100;
  private static final double WHOLE_PPM = 1e6;
  private static final double G_PER_KG = 1000;
  private static final double L_PER_M3 = 1000;
  private static final double REAL_PER_APPARENT_RATIO = 0.805;
  private static final double STEEPEST_NUMBER = 4;

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
  /// The 10 000 ppm average that some pages give is from a rule of 1989 that is not in force.
  ///
  /// - Valid: in the United States; other countries have their own.
  /// - Source: OSHA 29 CFR 1910.1000 table Z-1 as NIOSH quotes it; NIOSH Pocket Guide.
  @Reckoned(
      name = "carbon-dioxide-limits",
      says = "The official limits of carbon dioxide in air; follow your local code.",
      equation = "5000 ppm over 8 h; 30 000 ppm for a short time; 40 000 ppm at once dangerous",
      range = "United States; follow your local code")
  @Source(key = "osha-z1", at = "29 CFR 1910.1000 table Z-1", trust = Trust.SECOND_HAND)
  @Source(key = "niosh-co2", at = "recommended limits, IDLH", trust = Trust.READ)
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
  @Source(key = "balling", at = "gas and yeast", trust = Trust.SECOND_HAND)
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
    double roomL = Require.within("room in m3", roomM3, 0.1, 1e6) * L_PER_M3;
    return WHOLE_PPM * gasL(gasKg, roomC, airKpa) / roomL;
  }

  /// An ideal gas.
  private static double gasL(double gasKg, double roomC, double airKpa) {
    Require.notBelow0("gas in kg", gasKg);
    Require.within("room temperature in C", roomC, -20, 60);
    Require.within("air pressure in kPa", airKpa, 50, 110);
    double moles = gasKg * G_PER_KG / CarbonDioxide.G_PER_MOL;
    double kelvin = roomC + CarbonDioxide.ZERO_KELVIN;
    return moles * CarbonDioxide.GAS_J_PER_MOL_K * kelvin / airKpa;
  }

  /// What a fermentation gives off.
  ///
  /// @param gasKg carbon dioxide in all
  /// @param gasL the same by volume, at room temperature
  /// @param peakLPerHr in an hour at its busiest
  public record GivenOff(double gasKg, double gasL, double peakLPerHr) {}

  /// Carbon dioxide that a fermentation gives off, in all and at its busiest.
  ///
  /// `m = wort 0.805 dP 0.46286`; at the middle of the logistic a quarter of its rate each hour
  ///
  /// - Valid: logistic fermentations of skew 1; all gas is counted, also what the beer keeps (a
  ///   litre in each litre). Refused for a drop outside 0 to 40 P.
  /// - Source: Balling; the slope 0.805 from alcohol, real and apparent extract solved together;
  ///   Speers 2003; ideal gas.
  ///
  /// @param apparentDropPlato original less final extract, as a spindle shows them
  /// @param ratePerHr rate of the curve's clock at the temperature of the ferment
  @Reckoned(
      name = "room-gas-given-off",
      says = "The carbon dioxide that a fermentation gives off, in all and in its busiest hour.",
      equation = "m = wort 0.805 dP 0.46286; V = m R T/(M p); busiest: V B/4",
      range = "logistic fermentations, rate a prior; ventilate, follow your local code")
  @Source(key = "balling", at = "gas and yeast", trust = Trust.SECOND_HAND)
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "mass-balance", at = "ideal gas", trust = Trust.COMPUTED)
  public static GivenOff givenOff(
      double wortKg,
      double apparentDropPlato,
      @Usually(FermentationCurve.RATE_PER_HR) double ratePerHr,
      @Usually(20) double roomC,
      @Usually(101.325) double airKpa) {
    Require.notBelow0("wort in kg", wortKg);
    Require.within("drop of the extract in P", apparentDropPlato, 0, 40);
    double gasPerWort =
        REAL_PER_APPARENT_RATIO
            * (apparentDropPlato / PERCENT_NUMBER)
            * Balling.GAS_PER_EXTRACT_RATIO;
    double gas = wortKg * gasPerWort;
    double litres = gasL(gas, roomC, airKpa);
    double peakLPerHr = litres * Require.notBelow0("rate per h", ratePerHr) / STEEPEST_NUMBER;
    return new GivenOff(gas, litres, peakLPerHr);
  }

  /// The closed room in which a gas just reaches a limit.
  ///
  /// `V = m R T/(M p x)`
  ///
  /// - Valid: no air changes, evenly mixed, on top of what air holds: by the floor it is worse. A
  ///   room that large is no proof of safety. Refused for a limit outside 1 to 1 000 000 ppm.
  /// - Source: ideal gas; the usual limit is OSHA's average over eight hours.
  @Reckoned(
      name = "room-for-gas",
      says = "How large a closed room must be to stay below a limit of carbon dioxide.",
      equation = "V = m R T/(M p x)",
      range = "no air changes, evenly mixed; worse by the floor; ventilate, follow your local code")
  @Source(key = "osha-z1", at = "29 CFR 1910.1000 table Z-1", trust = Trust.SECOND_HAND)
  @Source(key = "mass-balance", at = "ideal gas", trust = Trust.COMPUTED)
  public static double closedRoomM3(
      double gasKg,
      @Usually(5000) double limitPpm,
      @Usually(20) double roomC,
      @Usually(101.325) double airKpa) {
    Require.within("limit in ppm", limitPpm, 1, WHOLE_PPM);
    double gasM3 = gasL(gasKg, roomC, airKpa) / L_PER_M3;
    return gasM3 * (WHOLE_PPM / limitPpm);
  }
}
