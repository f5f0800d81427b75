package gylebook.science;

/// What leaves the grain: draining, squeezing, rinsing.
public final class Lauter {
  private static final double PERCENT_NUMBER = 100;

  private Lauter() {}

  /// What ran off.
  ///
  /// @param lauterFrac extract run off as a part of that dissolved
  /// @param firstPlato strength of the first wort
  /// @param secondPlato strength of the liquid in the grain after the rinse was mixed in
  /// @param blendPlato strength of everything run off
  public record Runnings(
      double lauterFrac, double firstPlato, double secondPlato, double blendPlato) {}

  /// Lauter efficiency and strengths, without a sparge or with one batch of rinse.
  ///
  /// `eta = 1 - (a m/Wt) (a m/(a m + S))`, `Wt = W + m M + E`, `E = k m (1 - M) f`
  ///
  /// - Valid: the grain holds less than there is, rinse fully mixed; outside it refuses. Rinse
  ///   water that is poured over a hanging bag mixes by 0.3 to 0.8 (a guess): give that part of it.
  ///   Squeezing brings wort of the same strength: it changes eta, not the strength.
  /// - Source: a balance; a is the wort held per kg of malt, drained or squeezed, learned per rig.
  @Reckoned(
      name = "lauter",
      says = "What part of the dissolved extract runs off, and how strong it is.",
      equation = "eta = 1 - (a m/Wt) (a m/(a m + S)), Wt = W + m M + E, E = k m (1 - M) f",
      range = "grain holds less than there is, rinse fully mixed; refused outside")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  public static Runnings runnings(
      double maltKg,
      double liquorKg,
      @Usually(0) double rinseKg,
      double heldKgPerKg,
      @Usually(0.04) double moistureFrac,
      @Usually(0.80) double fineDryFrac,
      @Usually(1) double conversionFrac) {
    Require.above0("malt in kg", maltKg);
    double extract =
        PotentialExtract.extractKg(maltKg, moistureFrac, fineDryFrac)
            * Require.within("conversion as a share", conversionFrac, 0, 1);
    double total = Require.above0("liquor in kg", liquorKg) + maltKg * moistureFrac + extract;
    double held = maltKg * Require.notBelow0("held in kg/kg", heldKgPerKg);
    double lauter = rinsedFrac(total, held, rinseKg, 1, 1);
    double first = PERCENT_NUMBER * extract / total;
    double second = held > 0 ? first * held / (held + rinseKg) : 0;
    double blend = PERCENT_NUMBER * lauter * extract / (total - held + rinseKg);
    return new Runnings(lauter, first, second, blend);
  }

  /// Lauter efficiency with several equal batches of rinse that mix only in part.
  ///
  /// `eta = 1 - (a/Wt) (a/(a + c S))^n`, a the wort held, c the part of a batch that mixes
  ///
  /// - Valid: the grain holds less than there is, whole batches; outside it refuses.
  /// - Source: a balance.
  @Reckoned(
      name = "rinse",
      says = "What part of the extract runs off when the grain is rinsed several times.",
      equation = "eta = 1 - (a/Wt) (a/(a + c S))^n",
      range = "grain holds less than there is, 0 to 50 batches; refused outside")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  public static double rinsedFrac(
      double wortKg,
      double heldKg,
      double batchKg,
      @Usually(1) double batchCount,
      @Usually(1) double mixingFrac) {
    Require.above0("wort in kg", wortKg);
    Require.within("held in kg", heldKg, 0, wortKg);
    Require.notBelow0("batch in kg", batchKg);
    Require.within("batch", batchCount, 0, 50);
    if (batchCount != Math.rint(batchCount)) {
      throw new IllegalArgumentException(
          "batchCount is " + batchCount + "; it must be a whole number.");
    }
    if (heldKg == 0) {
      return 1;
    }
    double mixed = Require.within("mixing as a share", mixingFrac, 0, 1) * batchKg;
    return 1 - heldKg / wortKg * Math.pow(heldKg / (heldKg + mixed), batchCount);
  }
}
