package gylebook.science;

import gylebook.units.ExtractScale;

/// Strength of wort as brewers say it: Plato from specific gravity, and back.
public final class PlatoScale {
  private PlatoScale() {}

  /// Extract from specific gravity.
  ///
  /// `P = 135.997 S^3 - 630.272 S^2 + 1111.14 S - 616.868`
  ///
  /// - Valid: SG 1.000 to 1.083, the table it was fitted to (0.0006 P root mean square, worst
  ///   0.0038 at 1.000); carried on to 0.98 and 1.15; outside it refuses. The 0.003 P that the fit
  ///   leaves at SG 1 are faded out within 0.005 of it.
  /// - Source: the cubic of the American Society of Brewing Chemists. It and the density of sugar
  ///   solutions agree within 0.012 P from 5 to 20 P: the honest floor of a Plato.
  @Reckoned(
      name = "plato",
      says = "How strong wort is in Plato from its specific gravity 20/20.",
      equation = "P = 135.997 S^3 - 630.272 S^2 + 1111.14 S - 616.868",
      range = "SG 1.000 to 1.083; carried on from 0.98 to 1.15; refused outside")
  @Source(key = "asbc-tables", trust = Trust.READ)
  public static double extractPlato(
      @Span(
              least = 1,
              most = 1.083,
              beyond = "the table of the scale ends there; its cubic goes on")
          double gravitySg) {
    double extract =
        ExtractScale.platoFromSg(Require.within("gravity as a gravity", gravitySg, 0.98, 1.15));
    return extract;
  }

  /// Specific gravity from extract: the cubic solved backwards.
  ///
  /// `P(S) = P`, solved for S
  ///
  /// - Valid: 0 to 20 P; carried on from -5 to 34 P; outside it refuses.
  /// - Source: as above.
  @Reckoned(
      name = "gravity",
      says = "The specific gravity 20/20 of wort from its strength in Plato.",
      equation = "135.997 S^3 - 630.272 S^2 + 1111.14 S - 616.868 = P, solved for S",
      range = "0 to 20 P; carried on from -5 to 34 P; refused outside")
  @Source(key = "asbc-tables", trust = Trust.READ)
  public static double gravitySg(
      @Span(least = 0, most = 20, beyond = "the table of the scale ends there; its cubic goes on")
          double extractPlato) {
    double gravity = ExtractScale.sgFromPlato(Require.within("extract in P", extractPlato, -5, 34));
    return gravity;
  }
}
