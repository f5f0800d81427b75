package gylebook.science;

/// Specific heat of wort, taken as a sugar solution.
public final class WortHeat {
  private WortHeat() {}

  /// Specific heat of a pure sugar solution; see the function with a purity.
  public static double wortJPerKgK(double extractFrac, double wortC) {
    return wortJPerKgK(extractFrac, wortC, 1);
  }

  /// Specific heat of wort.
  ///
  /// `cp = 4184 - 2971 B + 460 B Q + 7.5 B t`, B strength, Q the share of sugar in the extract
  ///
  /// - Valid: 0 to 100 C; carried on to -5 and 110 C and to strengths of -0.05 to 0.7; outside it
  ///   refuses. At B = 0 it holds 4184 at every temperature; water's own swings by 0.8 %.
  /// - Source: Llano 2005 after Bubnik and others, read in a copy of it.
  @Reckoned(
      name = "wort-heat-capacity",
      says = "The heat that warms a kilogram of wort by one kelvin.",
      equation = "cp = 4184 - 2971 B + 460 B Q + 7.5 B t",
      range = "0 to 100 C; carried on to -5 to 110 C and -5 to 70 % extract; else refused")
  @Source(key = "llano-2005", trust = Trust.SECOND_HAND)
  @Source(key = "bubnik-1995", trust = Trust.SECOND_HAND)
  public static double wortJPerKgK(
      double extractFrac,
      @Span(least = 0, most = 100, beyond = "the published fit ends there; it is carried on")
          double wortC,
      @Usually(1) double purityFrac) {
    Require.within(
        "extract as a share", extractFrac, WortDensity.LEAST_FRAC, WortDensity.MOST_FRAC);
    Require.within("wort in C", wortC, WaterDensity.LEAST_C, WaterDensity.MOST_C);
    Require.within("purity as a share", purityFrac, 0, 1);
    return 4184 + extractFrac * (-2971 + 460 * purityFrac + 7.5 * wortC);
  }
}
