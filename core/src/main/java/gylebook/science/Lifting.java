package gylebook.science;

/// The recommended limit for lifting with two arms (revised equation of NIOSH).
///
/// A bag of grain at arm's length over a kettle is the brewer's worst lift: far below the 23 kg of
/// the ideal one. Use a hoist; the limit presumes a healthy adult, a firm stand and both hands.
public final class Lifting {
  private static final double LOAD_KG = 23;

  private Lifting() {}

  /// Mass that most healthy adults may lift there.
  ///
  /// `23 kg x HM x VM x DM x AM x FM x CM` with `HM = 0.25/H`, `VM = 1 - 0.3 |V - 0.75|`, `DM =
  /// 0.82 + 0.045/D`, `AM = 1 - 0.0032 A` (degrees). H and D count as at least 0.25 m. 0 where the
  /// equation allows no lift: reach over 0.63 m, height over 1.75 m, travel over 1.75 m, twist over
  /// 135 degrees. FM is 1 for a single lift; CM is 1 for good handles, 0.95 fair, 0.90 poor grip (a
  /// bag).
  @Source(key = "niosh-1994", at = "recommended weight limit", trust = Trust.SECOND_HAND)
  @Source(key = "ccohs-lifting", at = "assessing page", trust = Trust.READ)
  @Reckoned(
      name = "lift-limit",
      says = "How much may one person lift there?",
      equation = "23 kg (0.25/H) (1 - 0.3 |V - 0.75|) (0.82 + 0.045/D) (1 - 0.0032 A) FM CM",
      range = "reach to 0.63 m, heights to 1.75 m, twist to 135 degrees; 0 beyond: do not lift")
  public static double limitKg(
      @Usually(0.40) double reachM,
      @Usually(0.90) double heightM,
      @Usually(0.60) double travelM,
      @Usually(0) double twistDegreeNumber,
      @Usually(1) double frequencyFactor,
      @Usually(0.90) double couplingFactor) {
    Require.notBelow0("reach", reachM);
    Require.notBelow0("height of the hands", heightM);
    Require.notBelow0("travel", travelM);
    Require.within("twist", twistDegreeNumber, 0, 180);
    Require.within("frequency factor", frequencyFactor, 0, 1);
    Require.within("coupling factor", couplingFactor, 0, 1);
    if (reachM > 0.63 || heightM > 1.75 || travelM > 1.75 || twistDegreeNumber > 135) {
      return 0;
    }
    return LOAD_KG
        * (0.25 / Math.max(0.25, reachM))
        * (1 - 0.3 * Math.abs(heightM - 0.75))
        * (0.82 + 0.045 / Math.max(0.25, travelM))
        * (1 - 0.0032 * twistDegreeNumber)
        * frequencyFactor
        * couplingFactor;
  }

  /// Load over limit; above 1 the lift wants a hoist or a second person. Refused for a limit of 0.
  @Source(key = "niosh-1994", at = "lifting index", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "lift-index",
      says = "How does a load compare with the lifting limit?",
      equation = "index = load / limit",
      range = "a limit above 0; refused otherwise: there is no safe load there")
  public static double indexRatio(double loadKg, double limitKg) {
    return Require.notBelow0("load", loadKg) / Require.above0("limit", limitKg);
  }

  /// Load over limit for a lift that is described; above 1 it wants a hoist or a second person.
  ///
  /// Refused where no load is safe: beyond 0.63 m of reach, 1.75 m of height, 135 degrees of twist.
  /// The method leaves out hot, wet and swinging loads: use a hoist from 0.7 on.
  @Source(key = "niosh-1994", at = "lifting index", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "lift-load",
      says = "How does a load compare with the limit of the lift it needs?",
      equation = "index = load/(23 kg HM VM DM AM FM CM)",
      range =
          "as the limit; hot, wet or swinging loads are worse; hoist from 0.7; local code rules")
  public static double loadIndexRatio(
      double loadKg,
      @Usually(0.40) double reachM,
      @Usually(0.90) double heightM,
      @Usually(0.60) double travelM,
      @Usually(0) double twistDegreeNumber,
      @Usually(1) double frequencyFactor,
      @Usually(0.90) double couplingFactor) {
    return indexRatio(
        loadKg,
        limitKg(reachM, heightM, travelM, twistDegreeNumber, frequencyFactor, couplingFactor));
  }
}
