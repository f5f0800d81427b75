package gylebook.science;

/// Liquid that stays behind: in the grain, in the hops, in the trub.
public final class Absorption {
  private static final double HOPS_LEAST_KG_PER_L = 0.007;
  private static final double HOPS_MOST_KG_PER_L = 0.014;
  private static final double TRUB_LEAST_KG_PER_L = 0.0021;
  private static final double TRUB_MOST_KG_PER_L = 0.0028;

  private Absorption() {}

  /// Water held by spent grain per kilogram of malt.
  ///
  /// `a = (1 - M) (1 - k f) x / (1 - x)`, x the moisture of the spent grain, k the conversion
  ///
  /// - Valid: x from 0 to 0.95, other shares from 0 to 1; outside it refuses. Read: about 0.65 in a
  ///   mash filter, 0.75 in a lauter tun, 0.80 and more in a combined vessel. Bags, by practice:
  ///   drained 0.9 to 1.0, squeezed by hand 0.5 to 0.65, pressed hard about 0.4 kg/kg.
  /// - Source: a balance with the moistures of Farber and others.
  @Reckoned(
      name = "spent-grain-water",
      says = "How much water the spent grain of a kilogram of malt holds back.",
      equation = "a = (1 - M) (1 - k f) x / (1 - x)",
      range = "spent-grain moisture 0 to 95 %; refused outside")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  @Source(key = "farber-2019", at = "moistures", trust = Trust.SECOND_HAND)
  public static double waterKgPerKg(
      double spentMoistureFrac,
      @Usually(0.04) double moistureFrac,
      @Usually(0.80) double fineDryFrac,
      @Usually(0.95) double conversionFrac) {
    double x = Require.within("spent moisture as a share", spentMoistureFrac, 0, 0.95);
    Require.within("moisture as a share", moistureFrac, 0, 1);
    Require.within("fine dry as a share", fineDryFrac, 0, 1);
    Require.within("conversion as a share", conversionFrac, 0, 1);
    return (1 - moistureFrac) * (1 - conversionFrac * fineDryFrac) * x / (1 - x);
  }

  /// Wort held by spent grain, from the water held: what is held is as strong as what runs off.
  ///
  /// `wort = water / (1 - w)`
  ///
  /// - Valid: 0 to 0.6 extract; outside it refuses.
  /// - Source: a balance.
  @Reckoned(
      name = "spent-grain-wort",
      says = "How much wort the grain holds back when it holds this much water.",
      equation = "wort = water / (1 - w)",
      range = "0 to 60 % extract; refused outside")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  public static double wortKgPerKg(double heldWaterKgPerKg, double extractFrac) {
    return Require.notBelow0("held water in kg/kg", heldWaterKgPerKg)
        / (1 - Require.within("extract as a share", extractFrac, 0, 0.6));
  }

  /// Wort that hops soak up.
  ///
  /// `V = h m`
  ///
  /// - Valid: pellets 5 to 10 L/kg, whole cones 10 to 15; 0 to 30 accepted, outside it refuses.
  /// - Source: common practice; one brewer's log says 10 L/kg.
  @Reckoned(
      name = "hop-absorption",
      says = "How much wort hops soak up.",
      equation = "V = h m",
      range = "pellets 5 to 10 L/kg, whole cones 10 to 15; 0 to 30 accepted")
  @Source(key = "brewers-practice", trust = Trust.PRACTICE)
  public static double hopsL(
      double hopsKg,
      @Span(
              least = 5,
              most = 15,
              beyond = "pellets hold 5 to 10 L/kg and whole cones 10 to 15, by practice")
          @Usually(7.5)
          double heldLPerKg) {
    return Require.notBelow0("hops in kg", hopsKg)
        * Require.within("held in L/kg", heldLPerKg, 0, 30);
  }

  /// Wort left behind in the break.
  ///
  /// `V = b m`, m the malt
  ///
  /// - Valid: 0.2 L for each kg of malt, 0.4 with kettle finings; 0 to 2 accepted, outside it
  ///   refuses.
  /// - Source: common practice after one brewer's log.
  @Reckoned(
      name = "break-loss",
      says = "How much wort stays behind in the break.",
      equation = "V = b m",
      range = "0.2 L per kg malt, 0.4 with finings; 0 to 2 accepted")
  @Source(key = "brewers-practice", trust = Trust.PRACTICE)
  public static double breakL(
      double maltKg,
      @Span(
              least = 0.2,
              most = 0.4,
              beyond = "break was found to hold 0.2 to 0.4 L a kilogram of malt")
          @Usually(0.2)
          double heldLPerKg) {
    return Require.notBelow0("malt in kg", maltKg)
        * Require.within("held in L/kg", heldLPerKg, 0, 2);
  }

  /// What stays in the kettle after the boil, by mass, wet.
  ///
  /// @param hopsLeastKg spent whole hops, at least
  /// @param hopsMostKg at most
  /// @param trubLeastKg hot trub, at least
  /// @param trubMostKg at most
  public record Left(
      double hopsLeastKg, double hopsMostKg, double trubLeastKg, double trubMostKg) {}

  /// Spent hops and trub that a boil of a volume leaves.
  ///
  /// `0.7 to 1.4 kg of hops and 0.21 to 0.28 kg of trub per hectolitre`
  ///
  /// - Valid: ordinary beers with whole hops; strongly hopped ones leave more. Measure your own.
  /// - Source: a supplier's text.
  @Reckoned(
      name = "kettle-residue",
      says = "How much spent hops and trub a boil leaves in the kettle.",
      equation = "0.007 to 0.014 kg hops and 0.0021 to 0.0028 kg trub per litre, wet",
      range = "ordinary beers with whole hops; strongly hopped ones leave more")
  @Source(key = "finings-supplier", at = "spent hops and trub", trust = Trust.READ)
  public static Left residue(double wortL) {
    Require.notBelow0("wort in L", wortL);
    return new Left(
        HOPS_LEAST_KG_PER_L * wortL,
        HOPS_MOST_KG_PER_L * wortL,
        TRUB_LEAST_KG_PER_L * wortL,
        TRUB_MOST_KG_PER_L * wortL);
  }
}
