package gylebook.science;

/// What a millilitre of a brewing acid takes away of alkalinity, down to a pH.
///
/// Concentrated acid burns skin and eyes: goggles and gloves, acid into water, and the supplier's
/// safety sheet before use.
public final class Acid {
  private static final double G_PER_KG = 1000;
  private static final double ML_PER_L = 1000;
  private static final double MEQ_PER_MOL = 1000;
  private static final double LACTIC_G_PER_MOL = AtomicWeights.molarGPerMol("C3H6O3");
  private static final double PHOSPHORIC_G_PER_MOL = AtomicWeights.molarGPerMol("H3PO4");
  private static final double HYDROCHLORIC_G_PER_MOL = AtomicWeights.molarGPerMol("HCl");
  private static final double SULFURIC_G_PER_MOL = AtomicWeights.molarGPerMol("H2SO4");

  private Acid() {}

  /// Lactic acid.
  @Source(key = "llnl-organics", at = "lactate", trust = Trust.READ)
  @Source(key = "acid-densities", trust = Trust.READ)
  @Reckoned(
      name = "lactic-acid-strength",
      says = "The acid that a millilitre of lactic acid delivers down to a pH.",
      equation = "w rho/M 1/(1 + 10^(pK - pH))",
      range = "25 C, dilute in the mash; pK 3.863")
  public static double lacticMeqPerMl(
      @Usually(0.88) double acidFrac,
      @Usually(1.206) double acidKgPerL,
      @Usually(5.4) double targetPh) {
    double ph = targetPh(targetPh);
    double pk = Dissociation.lacticPkNumber();
    double charge = 1 / (1 + Math.pow(10, pk - ph));
    return chargedMeqPerMl(acidFrac, acidKgPerL, LACTIC_G_PER_MOL, charge);
  }

  /// Phosphoric acid.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Source(key = "acid-densities", trust = Trust.READ)
  @Reckoned(
      name = "phosphoric-acid-strength",
      says = "The acid that a millilitre of phosphoric acid delivers down to a pH.",
      equation = "w rho/M (mean charge at the pH)",
      range = "25 C, dilute in the mash; pK 2.168, 7.207, 12.346")
  public static double phosphoricMeqPerMl(
      @Usually(0.10) double acidFrac,
      @Usually(1.053) double acidKgPerL,
      @Usually(5.4) double targetPh) {
    Dissociation.Phosphoric pk = Dissociation.phosphoric(25);
    double ph = targetPh(targetPh);
    double pk1 = pk.firstNumber();
    double pk2 = pk.secondNumber();
    double pk3 = pk.thirdNumber();
    double one = Math.pow(10, ph - pk1);
    double two = one * Math.pow(10, ph - pk2);
    double three = two * Math.pow(10, ph - pk3);
    double charge = (one + 2 * two + 3 * three) / (1 + one + two + three);
    return chargedMeqPerMl(acidFrac, acidKgPerL, PHOSPHORIC_G_PER_MOL, charge);
  }

  /// Hydrochloric acid, wholly dissociated.
  @Source(key = "acid-densities", trust = Trust.READ)
  @Reckoned(
      name = "hydrochloric-acid-strength",
      says = "The acid that a millilitre of hydrochloric acid delivers.",
      equation = "w rho/M",
      range = "any pH of a mash")
  public static double hydrochloricMeqPerMl(
      @Usually(0.37) double acidFrac, @Usually(1.18) double acidKgPerL) {
    return chargedMeqPerMl(acidFrac, acidKgPerL, HYDROCHLORIC_G_PER_MOL, 1);
  }

  /// Sulfuric acid: its first hydrogen ion wholly, its second by its pK.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Source(key = "acid-densities", trust = Trust.READ)
  @Reckoned(
      name = "sulfuric-acid-strength",
      says = "The acid that a millilitre of sulfuric acid delivers down to a pH.",
      equation = "w rho/M (1 + 1/(1 + 10^(pK - pH)))",
      range = "25 C, dilute in the mash; pK 1.988")
  public static double sulfuricMeqPerMl(
      @Usually(0.96) double acidFrac,
      @Usually(1.84) double acidKgPerL,
      @Usually(5.4) double targetPh) {
    double ph = targetPh(targetPh);
    double pk = Dissociation.hydrogenSulfatePkNumber(25);
    double charge = 1 + 1 / (1 + Math.pow(10, pk - ph));
    return chargedMeqPerMl(acidFrac, acidKgPerL, SULFURIC_G_PER_MOL, charge);
  }

  private static double targetPh(double targetPh) {
    return Require.within("target pH", targetPh, 2, 10);
  }

  private static double chargedMeqPerMl(
      double acidFrac, double acidKgPerL, double acidGPerMol, double chargeNumber) {
    Require.within("strength as a share", acidFrac, 0, 1);
    Require.within("density in kg/L", acidKgPerL, 0.9, 2);
    double molPerL = acidFrac * acidKgPerL * G_PER_KG / acidGPerMol;
    double meqPerL = molPerL * chargeNumber * MEQ_PER_MOL;
    return meqPerL / ML_PER_L;
  }
}
