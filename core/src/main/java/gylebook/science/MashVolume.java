package gylebook.science;

/// Room that a mash takes up, and the liquor of its first wort.
public final class MashVolume {
  private static final double PERCENT_NUMBER = 100;

  private MashVolume() {}

  /// Volume of a mash.
  ///
  /// `V = W + d m`, d the room a kilogram of malt takes up
  ///
  /// - Valid: d from 0.65 to 0.80 L/kg, usually 0.70; 0 to 2 accepted, outside it refuses.
  /// - Source: a brewing-school text.
  @Reckoned(
      name = "mash-volume",
      says = "How much room a mash takes up.",
      equation = "V = W + d m",
      range = "d usually 0.65 to 0.80 L/kg; 0 to 2 accepted")
  @Source(key = "metzger", trust = Trust.READ)
  public static double mashL(
      double liquorL,
      double maltKg,
      @Span(least = 0.65, most = 0.8, beyond = "malt was found to take 0.65 to 0.80 L/kg")
          @Usually(0.70)
          double displacementLPerKg) {
    Require.within("displacement in L/kg", displacementLPerKg, 0, 2);
    return Require.notBelow0("liquor in L", liquorL)
        + Require.notBelow0("malt in kg", maltKg) * displacementLPerKg;
  }

  /// Liquor that gives a first wort of a wanted strength, as German brewing texts reckon it.
  ///
  /// `H = A (100 - P) m / (100 P)`, A the extract in per cent of the malt
  ///
  /// - Valid: first wort of 1 to 40 P; typical are 14 to 17, strong beers 17 to 22. Malt moisture
  ///   is left out. Outside it refuses.
  /// - Source: German brewing texts.
  @Reckoned(
      name = "main-liquor",
      says = "How much liquor gives a first wort of a wanted strength, malt moisture left out.",
      equation = "H = A (100 - P) m / (100 P)",
      range = "first wort 1 to 40 P; refused outside")
  @Source(key = "german-brewing-texts", trust = Trust.READ)
  public static double mainLiquorL(
      double maltKg, @Usually(0.75) double extractFrac, double firstWortPlato) {
    Require.within("extract as a share", extractFrac, 0, 1);
    double p = Require.within("first wort in P", firstWortPlato, 1, 40);
    return Require.notBelow0("malt in kg", maltKg) * extractFrac * (PERCENT_NUMBER - p) / p;
  }

  /// Room that dry grist takes up, in a bag or a bin.
  ///
  /// `V = m/rho`
  ///
  /// - Valid: crushed malt of 0.50 to 0.55 kg/L; 0.2 to 1 accepted, outside it refuses.
  /// - Source: from memory.
  @Reckoned(
      name = "grist-volume",
      says = "How much room dry grist takes up.",
      equation = "V = m/rho",
      range = "crushed malt 0.50 to 0.55 kg/L, from memory; 0.2 to 1 accepted")
  @Source(key = "practice", at = "bulk density of grist", trust = Trust.MEMORY)
  public static double gristL(double maltKg, @Usually(0.52) double bulkKgPerL) {
    Require.within("bulk density in kg/L", bulkKgPerL, 0.2, 1);
    return Require.notBelow0("malt in kg", maltKg) / bulkKgPerL;
  }
}
