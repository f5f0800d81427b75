package gylebook.science;

/// What malt could give at the most, from its analysis.
public final class PotentialExtract {
  private static final double PERCENT_NUMBER = 100;
  private static final double CONGRESS_NUMBER = 800;

  private PotentialExtract() {}

  /// Extract that malt would give if all of it dissolved.
  ///
  /// `E = m (1 - M) f`, M the moisture, f the fine-grind extract of the dry malt
  ///
  /// - Valid: shares from 0 to 1; outside it refuses. A malt sheet's extract "as is" already holds
  ///   the moisture.
  /// - Source: a balance.
  @Reckoned(
      name = "potential-extract",
      says = "How much extract malt could give at the most.",
      equation = "E = m (1 - M) f",
      range = "shares from 0 to 1; refused outside")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  public static double extractKg(
      double maltKg, @Usually(0.04) double moistureFrac, @Usually(0.80) double fineDryFrac) {
    return Require.notBelow0("malt in kg", maltKg)
        * (1 - Require.within("moisture as a share", moistureFrac, 0, 1))
        * Require.within("fine dry as a share", fineDryFrac, 0, 1);
  }

  /// Extract of the malt as it is, from the wort of a Congress mash.
  ///
  /// `E = P (800 + M) / (100 - P)`, E and M in per cent
  ///
  /// - Valid: 0 to 20 P, moisture 0 to 0.2; outside it refuses.
  /// - Source: the Congress method, from memory.
  @Reckoned(
      name = "congress-extract",
      says = "The extract of malt as it is, from the strength of its Congress wort.",
      equation = "E = P (800 + M) / (100 - P), in per cent",
      range = "0 to 20 P, 0 to 20 % moisture; refused outside")
  @Source(key = "congress-mash", trust = Trust.MEMORY)
  public static double asIsFrac(double wortPlato, double moistureFrac) {
    double p = Require.within("wort in P", wortPlato, 0, 20);
    Require.within("moisture as a share", moistureFrac, 0, 0.2);
    return p
        * (CONGRESS_NUMBER + PERCENT_NUMBER * moistureFrac)
        / (PERCENT_NUMBER - p)
        / PERCENT_NUMBER;
  }

  /// Extract of the dry malt, from the wort of a Congress mash.
  ///
  /// `E = P (800 + M) / (100 - P) / (1 - M/100)`
  ///
  /// - Valid: as above.
  /// - Source: as above.
  @Reckoned(
      name = "congress-extract-dry",
      says = "The extract of the dry malt, from the strength of its Congress wort.",
      equation = "E = P (800 + M) / (100 - P) / (1 - M/100), in per cent",
      range = "0 to 20 P, 0 to 20 % moisture; refused outside")
  @Source(key = "congress-mash", trust = Trust.MEMORY)
  public static double dryFrac(double wortPlato, double moistureFrac) {
    return asIsFrac(wortPlato, moistureFrac) / (1 - moistureFrac);
  }
}
