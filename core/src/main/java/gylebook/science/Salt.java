package gylebook.science;

import java.util.Arrays;

/// The salts a brewer weighs into the liquor, with their water of crystallisation.
public enum Salt {
  /// Gypsum.
  GYPSUM("CaSO4.2H2O", Ion.CALCIUM, 1, Ion.SULFATE, 1, 0),
  /// Calcium chloride without water; takes water up in the bag.
  CALCIUM_CHLORIDE("CaCl2", Ion.CALCIUM, 1, Ion.CHLORIDE, 2, 0),
  /// Calcium chloride as flakes.
  CALCIUM_CHLORIDE_DIHYDRATE("CaCl2.2H2O", Ion.CALCIUM, 1, Ion.CHLORIDE, 2, 0),
  /// Epsom salt.
  EPSOM("MgSO4.7H2O", Ion.MAGNESIUM, 1, Ion.SULFATE, 1, 0),
  /// Magnesium chloride.
  MAGNESIUM_CHLORIDE("MgCl2.6H2O", Ion.MAGNESIUM, 1, Ion.CHLORIDE, 2, 0),
  /// Table salt.
  TABLE_SALT("NaCl", Ion.SODIUM, 1, Ion.CHLORIDE, 1, 0),
  /// Sodium bicarbonate.
  SODA("NaHCO3", Ion.SODIUM, 1, Ion.BICARBONATE, 1, 1),
  /// Chalk; in the mash it delivers less than it holds.
  CHALK("CaCO3", Ion.CALCIUM, 1, Ion.NONE, 0, 2),
  /// Slaked lime; in the mash it delivers less than it holds.
  LIME("Ca(OH)2", Ion.CALCIUM, 1, Ion.NONE, 0, 2);

  private enum Ion {
    CALCIUM("Ca"),
    MAGNESIUM("Mg"),
    SODIUM("Na"),
    CHLORIDE("Cl"),
    SULFATE("SO4"),
    BICARBONATE("HCO3"),
    NONE("");

    private final String formula;

    Ion(String formula) {
      this.formula = formula;
    }
  }

  private static final double MG_PER_G = 1000;

  private final String formula;
  private final Ion cation;
  private final int cationCount;
  private final Ion anion;
  private final int anionCount;
  private final int alkalinityCount;

  Salt(String formula, Ion cation, int cations, Ion anion, int anions, int alkalinityCount) {
    this.formula = formula;
    this.cation = cation;
    this.cationCount = cations;
    this.anion = anion;
    this.anionCount = anions;
    this.alkalinityCount = alkalinityCount;
  }

  /// Its formula, `CaCl2.2H2O`.
  public String formula() {
    return formula;
  }

  /// The salt of a formula.
  public static Salt of(String formula) {
    return Arrays.stream(values())
        .filter(salt -> salt.formula.equals(formula.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "salt is '"
                        + formula
                        + "'; known are "
                        + String.join(", ", Arrays.stream(values()).map(Salt::formula).toList())
                        + "."));
  }

  /// What a dose of salt brings into the liquor.
  ///
  /// @param alkalinityMeqPerL alkalinity with the full strength of the formula
  public record Ions(
      double calciumMgPerL,
      double magnesiumMgPerL,
      double sodiumMgPerL,
      double chlorideMgPerL,
      double sulfateMgPerL,
      double bicarbonateMgPerL,
      double alkalinityMeqPerL) {}

  /// What a dose of a salt brings, by its formula.
  @Source(key = "iupac-weights", at = "abridged table", trust = Trust.COMPUTED)
  @Reckoned(
      name = "salt-ions",
      says = "The ions that a dose of a brewing salt brings, by its formula.",
      equation = "ion = dose n M(ion)/M(salt)",
      range = "all of it dissolved; chalk and lime deliver less in the mash")
  public static Ions ions(String saltFormula, @Usually(1) double doseGPerL) {
    return of(saltFormula).ionsOf(doseGPerL);
  }

  /// The same for a salt known by name.
  public Ions ionsOf(double doseGPerL) {
    double dose = molPerL(doseGPerL);
    return new Ions(
        ionMgPerL(Ion.CALCIUM, dose),
        ionMgPerL(Ion.MAGNESIUM, dose),
        ionMgPerL(Ion.SODIUM, dose),
        ionMgPerL(Ion.CHLORIDE, dose),
        ionMgPerL(Ion.SULFATE, dose),
        ionMgPerL(Ion.BICARBONATE, dose),
        dose * alkalinityCount * MG_PER_G);
  }

  double molPerL(double doseGPerL) {
    return Require.notBelow0("dose in g/L", doseGPerL) / AtomicWeights.molarGPerMol(formula);
  }

  private double ionMgPerL(Ion ion, double doseMolPerL) {
    int count = ion == cation ? cationCount : ion == anion ? anionCount : 0;
    return count == 0
        ? 0
        : doseMolPerL * count * AtomicWeights.molarGPerMol(ion.formula) * MG_PER_G;
  }
}
