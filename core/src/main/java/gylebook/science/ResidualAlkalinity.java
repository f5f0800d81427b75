package gylebook.science;

/// Alkalinity that calcium and magnesium do not undo: Kolbach's rule.
///
/// A measure of a liquor. **Not a way to the pH of a mash**: Kolbach's slope was found in cast wort
/// of about 12 P, and Barth & Zaman 2015 measured that it does not hold in the mash. For the mash
/// use {@link MashPh}.
public final class ResidualAlkalinity {
  private static final double CALCIUM_MG_PER_MEQ = 40.078 / 2;
  private static final double MAGNESIUM_MG_PER_MEQ = 24.305 / 2;
  private static final double BICARBONATE_MG_PER_MEQ = 61.017;
  private static final double CARBONATE_MG_PER_MEQ = 100.086 / 2;
  private static final double DEGREE_MEQ_PER_L = 0.3566;
  private static final double CALCIUM_DIVISOR_NUMBER = 3.5;
  private static final double MAGNESIUM_DIVISOR_NUMBER = 7;
  private static final double TEN_DEGREE_SHIFT_PH = 0.3;

  private ResidualAlkalinity() {}

  /// Residual alkalinity in the units in use.
  ///
  /// @param residualMeqPerL in equivalents
  /// @param asCalciumCarbonateMgPerL as a water report has it
  /// @param germanDegreeNumber German degrees of hardness
  public record Residual(
      double residualMeqPerL, double asCalciumCarbonateMgPerL, double germanDegreeNumber) {}

  /// Residual alkalinity from alkalinity and hardness, all in equivalents.
  ///
  /// `RA = alkalinity - Ca/3.5 - Mg/7`
  @Source(
      key = "kolbach1953",
      at = "divisors, as quoted in several places",
      trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "residual-alkalinity-from-equivalents",
      says = "Residual alkalinity of a liquor, from alkalinity and hardness in equivalents.",
      equation = "RA = alk - Ca/3.5 - Mg/7",
      range = "a measure of a liquor; not a way to the pH of a mash")
  public static double residualMeqPerL(
      double alkalinityMeqPerL, double calciumMeqPerL, double magnesiumMeqPerL) {
    Require.notBelow0("calcium in meq/L", calciumMeqPerL);
    Require.notBelow0("magnesium in meq/L", magnesiumMeqPerL);
    return Require.within("alkalinity in meq/L", alkalinityMeqPerL, -50, 50)
        - calciumMeqPerL / CALCIUM_DIVISOR_NUMBER
        - magnesiumMeqPerL / MAGNESIUM_DIVISOR_NUMBER;
  }

  /// Residual alkalinity from an analysis in mg/L.
  @Source(
      key = "kolbach1953",
      at = "divisors, as quoted in several places",
      trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "residual-alkalinity",
      says = "Residual alkalinity of a liquor, from its calcium, magnesium and bicarbonate.",
      equation = "RA = alk - Ca/3.5 - Mg/7 in equivalents",
      range = "a measure of a liquor; not a way to the pH of a mash")
  public static Residual residual(
      double calciumMgPerL, double magnesiumMgPerL, double bicarbonateMgPerL) {
    Require.notBelow0("bicarbonate in mg/L", bicarbonateMgPerL);
    double meqPerL =
        residualMeqPerL(
            bicarbonateMgPerL / BICARBONATE_MG_PER_MEQ,
            calciumMgPerL / CALCIUM_MG_PER_MEQ,
            magnesiumMgPerL / MAGNESIUM_MG_PER_MEQ);
    return new Residual(meqPerL, meqPerL * CARBONATE_MG_PER_MEQ, meqPerL / DEGREE_MEQ_PER_L);
  }

  /// How much residual alkalinity raises the pH of **cast wort** of about 12 P, by Kolbach's slope.
  ///
  /// 0.3 for ten German degrees. Not the mash: see the class.
  @Source(key = "kolbach1953", at = "0.3 pH per 10 degrees", trust = Trust.SECOND_HAND)
  @Source(key = "barth-zaman-2015", at = "abstract: not for the mash", trust = Trust.READ)
  @Reckoned(
      name = "cast-wort-ph-shift",
      says = "How much residual alkalinity raises the pH of cast wort; not of the mash.",
      equation = "shift = 0.3 RA/(10 dH)",
      range = "cast wort of about 12 P; does not hold for the mash")
  public static double castWortShiftPh(double residualMeqPerL) {
    Require.within("residual alkalinity in meq/L", residualMeqPerL, -50, 50);
    return TEN_DEGREE_SHIFT_PH * residualMeqPerL / (10 * DEGREE_MEQ_PER_L);
  }
}
