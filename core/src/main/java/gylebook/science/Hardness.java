package gylebook.science;

/// Hardness and alkalinity in the units that water reports are written in.
///
/// A water's hardness is its calcium and magnesium, its alkalinity the acid it takes up; both are
/// told as if they were calcium carbonate, in German degrees, or in equivalents.
public final class Hardness {
  private static final double CARBONATE_MG_PER_MEQ = 50.04;
  private static final double GERMAN_MG_PER_L = 17.848;
  private static final double FRENCH_MG_PER_L = 10;
  private static final double CALCIUM_MG_PER_MEQ = 40.078 / 2;
  private static final double MAGNESIUM_MG_PER_MEQ = 24.305 / 2;
  private static final double BICARBONATE_MG_PER_MEQ = 61.017;

  private Hardness() {}

  /// One amount in all the units in use.
  ///
  /// @param equivalentMeqPerL equivalents
  /// @param carbonateMgPerL as calcium carbonate
  /// @param germanDegreeNumber German degrees of hardness
  /// @param frenchDegreeNumber French degrees
  /// @param bicarbonateMgPerL as bicarbonate, where it is alkalinity
  public record Amount(
      double equivalentMeqPerL,
      double carbonateMgPerL,
      double germanDegreeNumber,
      double frenchDegreeNumber,
      double bicarbonateMgPerL) {}

  /// Hardness of a water from its calcium and magnesium.
  ///
  /// `hardness = Ca/20.04 + Mg/12.15` in meq/L
  ///
  /// - Valid: any analysis to 5000 mg/L; refused outside. The bicarbonate is what would go with it
  ///   if all of it were temporary hardness.
  /// - Source: definitions, with atomic weights.
  @Source(key = "iupac-weights", at = "definition of the degrees", trust = Trust.COMPUTED)
  @Reckoned(
      name = "water-hardness",
      says = "How hard a water is, from its calcium and magnesium.",
      equation = "hardness = Ca/20.04 + Mg/12.15 meq/L; 1 German degree = 17.848 mg/L CaCO3",
      range = "0 to 5000 mg/L of each; refused outside")
  public static Amount hardness(double calciumMgPerL, double magnesiumMgPerL) {
    Require.within("calcium in mg/L", calciumMgPerL, 0, 5000);
    Require.within("magnesium in mg/L", magnesiumMgPerL, 0, 5000);
    return amount(calciumMgPerL / CALCIUM_MG_PER_MEQ + magnesiumMgPerL / MAGNESIUM_MG_PER_MEQ);
  }

  /// Alkalinity as calcium carbonate, in the other units.
  ///
  /// `meq/L = (mg/L CaCO3)/50.04`
  ///
  /// - Valid: 0 to 5000 mg/L; refused outside. Above pH 9 part of it is no bicarbonate.
  /// - Source: definitions.
  @Source(key = "iupac-weights", at = "definition of the degrees", trust = Trust.COMPUTED)
  @Reckoned(
      name = "alkalinity",
      says = "An alkalinity given as calcium carbonate, in the other units in use.",
      equation = "meq/L = (mg/L CaCO3)/50.04; 1 German degree = 17.848, 1 French = 10 mg/L CaCO3",
      range = "0 to 5000 mg/L; refused outside")
  public static Amount alkalinity(double carbonateMgPerL) {
    Require.within("alkalinity in mg/L", carbonateMgPerL, 0, 5000);
    return amount(carbonateMgPerL / CARBONATE_MG_PER_MEQ);
  }

  /// Alkalinity or hardness given in German degrees, in the other units.
  ///
  /// `1 degree = 17.848 mg/L CaCO3 = 0.3567 meq/L`
  ///
  /// - Valid: 0 to 280 degrees; refused outside.
  /// - Source: definition: 10 mg/L of calcium oxide.
  @Source(key = "iupac-weights", at = "definition of the degrees", trust = Trust.COMPUTED)
  @Reckoned(
      name = "alkalinity-from-degrees",
      says = "An alkalinity or hardness in German degrees, in the other units in use.",
      equation = "1 German degree = 17.848 mg/L CaCO3 = 0.3567 meq/L",
      range = "0 to 280 degrees; refused outside")
  public static Amount fromDegrees(double germanDegreeNumber) {
    Require.within("German degrees", germanDegreeNumber, 0, 280);
    return amount(germanDegreeNumber * GERMAN_MG_PER_L / CARBONATE_MG_PER_MEQ);
  }

  private static Amount amount(double meqPerL) {
    double carbonate = meqPerL * CARBONATE_MG_PER_MEQ;
    return new Amount(
        meqPerL,
        carbonate,
        carbonate / GERMAN_MG_PER_L,
        carbonate / FRENCH_MG_PER_L,
        meqPerL * BICARBONATE_MG_PER_MEQ);
  }
}
