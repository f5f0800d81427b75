package gylebook.science;

/// How bitter a beer is after dry hops, which bring humulinones and take out iso-alpha acid.
public final class DryHopBitterness {
  /// Of what 23 g/L of pellets with 0.23 % held, 48 mg/L came into the beer: taken as the least, of
  /// the heaviest dose that we know of.
  private static final double LEAST_DISSOLVED_FRAC = 0.90;

  private static final double LEAST_BITTER_RATIO = 0.65;
  private static final double MOST_BITTER_RATIO = 0.70;

  /// A beer with no more than this was found to lose very little.
  private static final double STAYS_MG_PER_L = 20;

  /// The smallest dose of the trials, a pound in a US barrel; below it the loss goes in proportion.
  private static final double TAKES_ALL_G_PER_L = 3.87;

  private DryHopBitterness() {}

  /// Bitterness of a beer after dry hops, as the iso-alpha acid that tastes as bitter.
  ///
  /// @param leastMgPerL if all above 20 mg/L is taken out and the humulinones bring their least
  /// @param mostMgPerL if nothing is taken out and they bring their most
  /// @param breakEvenLossFrac the share of its iso-alpha acid that must go for the beer to stay as
  ///   bitter as it was; 1 where no loss could undo the gain
  public record After(double leastMgPerL, double mostMgPerL, double breakEvenLossFrac) {}

  /// Bitterness after dry hops: what they bring less what they take out, least and most.
  ///
  /// `least = iso - max(0, iso - 20) min(1, rate/3.87) + 0.90 x 0.65 h`, `most = iso + 0.70 h`, `h
  /// = rate share`
  ///
  /// That dry hops take out iso-alpha acid is certain (Oladokun and others 2017; most of 15 beers
  /// of Parkin and Shellhammer 2017); how much nobody whom we could read says in a table. Read:
  /// beers of 20 mg/L or less lose very little; one of 42 mg/L lost most with the first 7.7 g/L, a
  /// little with each that followed; what humulinones bring seems to make up for it (Mitter 2016).
  /// The least takes out all above 20 mg/L, from the smallest dose of those trials on: **our
  /// reading of these sentences, not a fit**.
  ///
  /// - Valid: pellets, up to 8 g/L, three days at 16 C. Alpha acid that dissolves, a tenth as
  ///   bitter, adds up to 3 mg/L at extreme doses; polyphenols taste bitter too. Both left out.
  @Source(key = "maye2015", at = "abstracts", trust = Trust.READ)
  @Source(key = "extreme-dry-hopping2017", at = "a beer of 42 mg/L", trust = Trust.READ)
  @Source(key = "low-bitter-dry-hopping", at = "beers of 20 mg/L or less", trust = Trust.READ)
  @Source(key = "mitter2016", at = "abstract", trust = Trust.READ)
  @Source(key = "parkin2017", at = "abstract", trust = Trust.READ)
  @Source(key = "oladokun2017", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "bitterness-after-dry-hops",
      says = "How bitter a beer is after dry hops, which bring and take: least and most.",
      equation = "least = iso - max(0, iso - 20) min(1, rate/3.87) + 0.585 h, most = iso + 0.70 h",
      range = "humulinones 0.2 to 0.5 %, to 8 g/L; what is taken out is a guess between two ends")
  public static After after(
      double isoMgPerL,
      @Span(
              least = 0,
              most = 8,
              beyond = "heavier doses take out a little more still, so the least may be lower")
          double dryHopGPerL,
      @Span(least = 0.002, most = 0.005, beyond = "hops and pellets were found to hold no other")
          @Usually(0.003)
          double humulinoneFrac) {
    Require.within("iso-alpha acid in mg/L", isoMgPerL, 0, 200);
    double most = Humulinone.isoEquivalentMgPerL(dryHopGPerL, humulinoneFrac, MOST_BITTER_RATIO);
    double least =
        LEAST_DISSOLVED_FRAC
            * Humulinone.isoEquivalentMgPerL(dryHopGPerL, humulinoneFrac, LEAST_BITTER_RATIO);
    double above = Math.max(0, isoMgPerL - STAYS_MG_PER_L);
    double taken = above * Math.min(1, dryHopGPerL / TAKES_ALL_G_PER_L);
    double middle = (least + most) / 2;
    double even = middle < isoMgPerL ? middle / isoMgPerL : 1;
    return new After(isoMgPerL - taken + least, isoMgPerL + most, even);
  }
}
