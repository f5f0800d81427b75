package gylebook.science;

import gylebook.science.Species.Master;
import java.util.EnumMap;
import java.util.Map;

/// Calcium and phosphate that fall out together as hydroxyapatite and leave acid behind: why
/// calcium in the liquor lowers the pH of a mash.
///
/// An index tells which way the reaction would go, not how far it gets: in a mash other phosphates
/// fall first, much of the malt's phosphate is bound as phytate, and crystals want more time than a
/// mash has. So nothing here says how much falls; {@link ResidualAlkalinity} does that by an old
/// rule.
public final class Apatite {
  private static final double CALCIUM_G_PER_MOL = 40.078;
  private static final double G_PER_MG = 1e-3;
  private static final double MOL_PER_MMOL = 1e-3;

  /// Rounds to find the sodium or chloride that balances the charges; three digits more a round.
  private static final int ROUND_COUNT = 20;

  private Apatite() {}

  /// Whether hydroxyapatite would fall or dissolve, and what acid its falling sets free.
  ///
  /// @param indexNumber logarithm of how often it is oversaturated; below 0 it dissolves
  /// @param acidPerCalciumRatio equivalents of acid left behind by an equivalent of calcium
  public record Index(double indexNumber, double acidPerCalciumRatio) {}

  /// The saturation index of hydroxyapatite in water with calcium and phosphate at a pH.
  ///
  /// `SI = 5 log a(Ca) + 3 log a(HPO4) + 4 pH - log K`; `log K = -3.421` at 25 C by its heat of
  /// -36.155 kcal/mol elsewhere
  ///
  /// The acid by the charges, not from the database: `5 Ca + 3 HPO4 + H2O` leaves 4 H, and each
  /// H2PO4, which is most of the phosphate at the pH of a mash, one more.
  ///
  /// - Valid: 0 to 100 C, to about 0.1 mol/kg, pH 4 to 9, refused outside; the heat of reaction is
  ///   taken as constant. The pH is that at the temperature; a hot mash reads about 0.3 lower than
  ///   its cooled sample. Phosphate beyond some 10 mmol/kg binds the calcium in pairs and raises
  ///   the index no more. Sodium or chloride make up the charges. Magnesium, sugar, protein and
  ///   phytate are left out; they bind calcium and phosphate, so the true index is lower.
  /// - Source: phreeqc.dat, read.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Reckoned(
      name = "apatite-index",
      says = "Whether calcium and phosphate would fall out as apatite, and what acid that frees.",
      equation = "SI = 5 log a(Ca) + 3 log a(HPO4) + 4 pH - log K",
      range = "0 to 100 C, pH 4 to 9, to about 0.1 mol/kg; a direction, no amount")
  public static Index index(
      @Usually(25) double waterC,
      double calciumMgPerL,
      double phosphateMmolPerKg,
      @Usually(5.4) double liquorPh) {
    Require.within("calcium in mg/L", calciumMgPerL, 1e-3, 2000);
    Require.within("phosphate in mmol/kg", phosphateMmolPerKg, 1e-3, 100);
    Require.within("pH", liquorPh, 4, 9);
    Map<Master, Double> totals = new EnumMap<>(Master.class);
    totals.put(Master.CALCIUM, calciumMgPerL * G_PER_MG / CALCIUM_G_PER_MOL);
    totals.put(Master.PHOSPHATE, phosphateMmolPerKg * MOL_PER_MMOL);
    Speciation.Solution solution = balanced(new Speciation(waterC), totals, liquorPh);
    double acid = solution.of(Species.H2PO4) + 2 * solution.of(Species.H3PO4);
    double free = acid - solution.of(Species.PO4);
    double phosphate =
        solution.of(Species.PO4)
            + solution.of(Species.HPO4)
            + solution.of(Species.H2PO4)
            + solution.of(Species.H3PO4);
    return new Index(solution.apatiteIndex(), (4 + 3 * free / phosphate) / 10);
  }

  private static Speciation.Solution balanced(
      Speciation speciation, Map<Master, Double> totals, double liquorPh) {
    double chloride = 0;
    Speciation.Solution solution = speciation.at(liquorPh, totals, Double.NaN);
    for (int round = 0; round < ROUND_COUNT; round++) {
      // What is missing of anions is chloride, what is missing of cations sodium; a little pairs.
      chloride += solution.charge();
      totals.put(Master.CHLORIDE, Math.max(chloride, 0));
      totals.put(Master.SODIUM, Math.max(-chloride, 0));
      solution = speciation.at(liquorPh, totals, Double.NaN);
    }
    return solution;
  }
}
