package gylebook.science;

/// The bitterness that dry hops bring: oxidised alpha acid that dissolves in cold beer.
///
/// Dry hops take iso-alpha acid out of the beer as well ({@link DryHopBitterness}), and bitterness
/// units then no longer follow the taste.
public final class Humulinone {
  private static final double MG_PER_G = 1000;

  /// What hops and pellets were found to hold.
  public static final Validity RANGE =
      new Validity(
          "humulinones as a share",
          0.002,
          0.005,
          "hops and pellets were found to hold 0.2 to 0.5 %");

  private Humulinone() {}

  /// The bitterness as iso-alpha acid that tastes as bitter.
  ///
  /// `B = rate * share * 0.65...0.70`, all of it dissolved
  @Source(key = "maye2015", at = "abstracts", trust = Trust.READ)
  @Source(key = "extreme-dry-hopping2017", at = "the most that was found", trust = Trust.READ)
  @Reckoned(
      name = "dry-hop-bitterness",
      says = "The bitterness of dry hops, as the iso-alpha acid that tastes as bitter.",
      equation = "B = rate share bitterness",
      range = "humulinones 0.2 to 0.5 %; up to 48 mg/L of them were found in beer")
  public static double isoEquivalentMgPerL(
      @Span(
              least = 0,
              most = 23,
              beyond =
                  "no more than 48 mg/L of humulinones were found in a beer, from 23 g/L of hops")
          double dryHopGPerL,
      @Usually(0.003) double humulinoneFrac,
      @Usually(0.675) double bitternessRatio) {
    Require.notBelow0("dry hops in g/L", dryHopGPerL);
    Require.within("humulinones as a share", humulinoneFrac, 0, 0.05);
    Require.within("bitterness beside iso-alpha acid", bitternessRatio, 0, 1);
    return dryHopGPerL * MG_PER_G * humulinoneFrac * bitternessRatio;
  }
}
