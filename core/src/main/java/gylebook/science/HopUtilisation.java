package gylebook.science;

/// How much of the alpha acid of a boil addition is counted as bitterness: Tinseth's equation.
///
/// A fit to whole cones in one home brewery that has become a convention. It holds losses as well
/// as chemistry, says nothing about hops added below the boil, and reads a stronger wort as less
/// bitter. Show it beside {@link HopIsomerisation}: the spread between the two is real doubt. First
/// wort hops are counted by their time in the boil; nothing is added for them.
public final class HopUtilisation {
  /// Worts of the table.
  public static final Validity RANGE =
      new Validity(
          "gravity of the boil in SG", 1.030, 1.110, "the table of the fit ends before that");

  private static final double MG_PER_G = 1000;

  private HopUtilisation() {}

  /// The share of the alpha acid that ends up as bitterness.
  ///
  /// `U = 1.65 * 0.000125^(SG - 1) * (1 - exp(-0.04 t))/4.15`, SG the mean of the boil
  ///
  /// - Valid: at the boil, SG 1.030 to 1.110; answered from 0.990 to 1.200.
  @Source(key = "tinseth", at = "equation and table", trust = Trust.MEMORY)
  @Reckoned(
      name = "hop-utilisation",
      says = "The share of the alpha acid of a boil addition counted as bitterness.",
      equation = "U = 1.65 0.000125^(SG - 1) (1 - exp(-0.04 t))/4.15",
      range = "at the boil only; SG 1.030 to 1.110, mean of the boil")
  public static double tinsethFrac(double wortSg, @Usually(60) double boiledMin) {
    Require.within("gravity of the boil in SG", wortSg, 0.990, 1.200);
    Require.notBelow0("time in the boil in min", boiledMin);
    double bigness = 1.65 * Math.pow(0.000125, wortSg - 1);
    return bigness * -Math.expm1(-0.04 * boiledMin) / 4.15;
  }

  /// Bitterness of one addition, as mg of iso-alpha acid in a litre by the same convention.
  @Source(key = "tinseth", at = "equation and table", trust = Trust.MEMORY)
  @Reckoned(
      name = "bitterness-of-addition",
      says = "The bitterness that one boil addition brings.",
      equation = "B = U m alpha/V",
      range = "at the boil only; SG 1.030 to 1.110; volume cold")
  public static double tinsethMgPerL(
      double hopG,
      double alphaFrac,
      double wortL,
      @Usually(60) double boiledMin,
      @Usually(1.050) double wortSg) {
    Require.notBelow0("hops in g", hopG);
    Require.within("alpha acid as a share", alphaFrac, 0, 1);
    Require.above0("wort in L", wortL);
    return tinsethFrac(wortSg, boiledMin) * hopG * alphaFrac * MG_PER_G / wortL;
  }

  /// Iso-alpha acid that one boil addition leaves in the glass, by the measured rates.
  ///
  /// `B = m alpha/V * iso(T, t) * (1 - kettle loss)(1 - fermentation loss)`
  ///
  /// - Valid: 90 to 130 C; extrapolated below. The losses are a brewery's own: a third in all is
  ///   the usual start, and a quarter more or less is common. Says nothing of other bitter matter.
  /// - Source: the rates of [HopIsomerisation]; the losses of `iso-alpha-kettle-to-glass`.
  @Source(key = "malowicki2005", at = "abstract", trust = Trust.READ)
  @Source(key = "justus2018", at = "abstract: mean loss in the cellar", trust = Trust.READ)
  @Source(key = "brewers-practice", at = "kettle and trub", trust = Trust.MEMORY)
  @Reckoned(
      name = "iso-alpha-of-addition",
      says = "The iso-alpha acid in the glass from one hop addition, by the measured rates.",
      equation = "B = m alpha/V iso(T, t) (1 - kettle loss)(1 - fermentation loss)",
      range = "90 to 130 C, extrapolated below; volume cold; losses are a brewery's own")
  public static double isoAlphaMgPerL(
      double hopG,
      double alphaFrac,
      double wortL,
      @Usually(60) double heldMin,
      @Span(
              least = 90,
              most = 130,
              beyond = "the rates were measured there only; a cooler stand is extrapolated")
          @Usually(100)
          double wortC,
      @Usually(0.10) double kettleLossFrac,
      @Usually(0.25) double fermentationLossFrac) {
    Require.notBelow0("hops in g", hopG);
    Require.within("alpha acid as a share", alphaFrac, 0, 1);
    Require.above0("wort in L", wortL);
    double formed = HopIsomerisation.isoFrac(wortC, heldMin);
    double kept = kettleToGlassFrac(kettleLossFrac, fermentationLossFrac);
    return formed * kept * hopG * alphaFrac * MG_PER_G / wortL;
  }

  /// What of the iso-alpha acid formed in the kettle reaches the glass.
  ///
  /// `(1 - kettle loss)(1 - fermentation loss)`. Justus 2018 lost a third of the bitterness in the
  /// cellar of a 50 barrel brewery. A brewer's own two factors are learnt.
  @Source(key = "justus2018", at = "abstract: mean loss in the cellar", trust = Trust.READ)
  @Source(key = "brewers-practice", at = "kettle and trub", trust = Trust.MEMORY)
  @Reckoned(
      name = "iso-alpha-kettle-to-glass",
      says = "The share of the iso-alpha acid formed that reaches the glass.",
      equation = "(1 - kettle loss)(1 - fermentation loss)",
      range = "kettle loss 0.05 to 0.15, fermentation loss 0.20 to 0.34")
  public static double kettleToGlassFrac(
      @Span(least = 0.05, most = 0.15, beyond = "kettle and trub were found to keep 0.05 to 0.15")
          @Usually(0.10)
          double kettleLossFrac,
      @Span(least = 0.2, most = 0.34, beyond = "fermentations were found to lose 0.20 to 0.34")
          @Usually(0.25)
          double fermentationLossFrac) {
    Require.within("kettle loss as a share", kettleLossFrac, 0, 1);
    Require.within("fermentation loss as a share", fermentationLossFrac, 0, 1);
    return (1 - kettleLossFrac) * (1 - fermentationLossFrac);
  }
}
