package gylebook.science;

/// Strength of the first wort: before any sparge it tells how much of the malt dissolved.
public final class FirstWort {
  private static final double PERCENT_NUMBER = 100;

  private FirstWort() {}

  /// Strength of the first wort.
  ///
  /// `P = 100 E / (R + M + E)`, `E = k (1 - M) f`, R kg of liquor per kg of malt, k the conversion
  ///
  /// - Valid: R from 0.5 to 50, shares from 0 to 1; outside it refuses.
  /// - Source: a balance.
  @Reckoned(
      name = "first-wort",
      says = "How strong the first wort of a mash is.",
      equation = "P = 100 E / (R + M + E), E = k (1 - M) f",
      range = "0.5 to 50 kg liquor per kg malt; refused outside")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  public static double firstWortPlato(
      double thicknessKgPerKg,
      @Usually(0.04) double moistureFrac,
      @Usually(0.80) double fineDryFrac,
      @Usually(1) double conversionFrac) {
    Require.within("thickness in kg/kg", thicknessKgPerKg, 0.5, 50);
    double dissolved =
        PotentialExtract.extractKg(1, moistureFrac, fineDryFrac)
            * Require.within("conversion as a share", conversionFrac, 0, 1);
    return PERCENT_NUMBER * dissolved / (thicknessKgPerKg + moistureFrac + dissolved);
  }

  /// Part of the malt's extract that dissolved, from the strength of the first wort.
  ///
  /// `k = P (R + M) / ((100 - P) (1 - M) f)`
  ///
  /// - Valid: as above. It may come out a little above 1 when a reading is off: it is not clipped.
  /// - Source: the same balance, solved for the conversion.
  @Reckoned(
      name = "conversion",
      says = "What part of the malt's extract dissolved, from the strength of the first wort.",
      equation = "k = P (R + M) / ((100 - P) (1 - M) f)",
      range =
          "0.5 to 50 kg liquor per kg malt, 0 to 60 P; refused outside; above 1 is a bad reading")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  public static double conversionFrac(
      double firstWortPlato,
      double thicknessKgPerKg,
      @Usually(0.04) double moistureFrac,
      @Usually(0.80) double fineDryFrac) {
    double p = Require.within("first wort in P", firstWortPlato, 0, 60);
    Require.within("thickness in kg/kg", thicknessKgPerKg, 0.5, 50);
    double potential = PotentialExtract.extractKg(1, moistureFrac, fineDryFrac);
    return p
        * (thicknessKgPerKg + moistureFrac)
        / ((PERCENT_NUMBER - p) * Require.above0("extract of the malt", potential));
  }
}
