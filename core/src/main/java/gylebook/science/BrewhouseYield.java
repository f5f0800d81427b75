package gylebook.science;

/// The chain from the malt's extract to the fermenter. Only its first two links are chemistry and
/// lautering; the rest are volumes left behind.
public final class BrewhouseYield {
  private BrewhouseYield() {}

  /// The yields.
  ///
  /// @param mashFrac extract in the kettle as a part of the malt's potential
  /// @param brewhouseFrac extract in the fermenter as a part of the malt's potential
  public record Yields(double mashFrac, double brewhouseFrac) {}

  /// Yields from the links of the chain.
  ///
  /// `mash = conversion x lauter`, `brewhouse = mash x transfer`
  ///
  /// - Valid: each link from 0 to 1; outside it refuses.
  /// - Source: a definition.
  @Reckoned(
      name = "brewhouse-yield",
      says = "What part of the malt's extract reaches the kettle and the fermenter.",
      equation = "mash = conversion x lauter, brewhouse = mash x transfer",
      range = "each link from 0 to 1; refused outside")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  public static Yields yields(
      double conversionFrac, double lauterFrac, @Usually(1) double transferFrac) {
    double mash =
        Require.within("conversion as a share", conversionFrac, 0, 1)
            * Require.within("lauter as a share", lauterFrac, 0, 1);
    return new Yields(mash, mash * Require.within("transfer as a share", transferFrac, 0, 1));
  }

  /// Brewhouse yield from what lies in the fermenter.
  ///
  /// `yield = E_fermenter / E_potential`
  ///
  /// - Valid: volumes at 20 C; as `extract-mass`.
  /// - Source: a definition.
  @Reckoned(
      name = "measured-yield",
      says = "What part of the malt's extract is in a measured volume of wort at 20 C.",
      equation = "yield = V rho(w, 20) w / E_potential",
      range = "SG 1.000 to 1.083; carried on to 1.15; refused outside")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  @Source(key = "asbc-tables", trust = Trust.READ)
  public static double measuredFrac(
      double wortL,
      @Span(
              least = 1,
              most = 1.083,
              beyond = "the table of the scale ends there; its cubic goes on")
          double gravitySg,
      double potentialKg) {
    return ExtractMass.extractKg(wortL, gravitySg) / Require.above0("potential in kg", potentialKg);
  }
}
