package gylebook.science;

/// Alpha acid that does not dissolve does not isomerise: why twice the hops are not twice as
/// bitter.
///
/// Malowicki found about 90 mg/L dissolved at pH 5.2, in a buffer. Accounts of wort differ: a hop
/// house says 40 mg/L at pH 5.0, one brewer's fit to his own beers 240 mg/L at the boil and more
/// beyond. Two things are assumed here: what is not yet dissolved waits and dissolves as the
/// dissolved is used up, and nothing of it is lost meanwhile. The other end is the plain rate of
/// {@link HopIsomerisation}, for which everything is dissolved from the start; the truth of a large
/// addition lies between.
public final class AlphaSolubility {
  private static final double MG_PER_G = 1000;

  private AlphaSolubility() {}

  /// What a large addition leaves.
  ///
  /// @param isoAlphaMgPerL iso-alpha acid in the glass if no more dissolves at a time
  /// @param allDissolvedMgPerL the same if all of it dissolves at once
  /// @param undissolvedMin for how long a part of it lies undissolved
  public record Left(double isoAlphaMgPerL, double allDissolvedMgPerL, double undissolvedMin) {}

  /// Iso-alpha acid in the glass from an addition of which only a part is dissolved at a time.
  ///
  /// `d(alpha)/dt = -k1 min(alpha, s)`, `d(iso)/dt = k1 min(alpha, s) - k2 iso`, s the soluble
  /// part; while more than s is there, `iso = k1 s/k2 (1 - exp(-k2 t))`
  ///
  /// - Valid: one addition at one temperature from 90 to 130 C; hops that went in before take their
  ///   share of what dissolves, so ask for all of them together. The soluble part was measured at
  ///   pH 5.2 and is taken as the same at every temperature; less dissolves in sourer and cooler
  ///   wort. Refused for a soluble part of 0 or above 2000 mg/L.
  @Source(key = "malowicki2005", at = "abstracts: rates; about 90 mg/L soluble", trust = Trust.READ)
  @Source(key = "hvg-boil", at = "40 mg/L at pH 5.0", trust = Trust.READ)
  @Source(key = "hosom-solubility", at = "abstract: 240 mg/L at the boil", trust = Trust.READ)
  @Source(key = "justus2018", at = "abstract: mean loss in the cellar", trust = Trust.READ)
  @Source(key = "brewers-practice", at = "kettle and trub", trust = Trust.MEMORY)
  @Reckoned(
      name = "iso-alpha-of-large-addition",
      says = "The iso-alpha acid in the glass when more alpha acid goes in than dissolves.",
      equation = "d(alpha)/dt = -k1 min(alpha, s), d(iso)/dt = k1 min(alpha, s) - k2 iso",
      range = "90 to 130 C, extrapolated below; soluble 40 to 240 mg/L by the account")
  public static Left left(
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
      @Span(
              least = 40,
              most = 240,
              beyond = "no account has so little or so much of alpha acid dissolved")
          @Usually(HopIsomerisation.SOLUBLE_MG_PER_L)
          double solubleMgPerL,
      @Usually(0.10) double kettleLossFrac,
      @Usually(0.25) double fermentationLossFrac) {
    Require.notBelow0("time in min", heldMin);
    Require.within("soluble alpha acid in mg/L", solubleMgPerL, 0, 2000);
    double soluble = Require.above0("soluble alpha acid in mg/L", solubleMgPerL);
    double allDissolved =
        HopUtilisation.isoAlphaMgPerL(
            hopG, alphaFrac, wortL, heldMin, wortC, kettleLossFrac, fermentationLossFrac);
    double given = hopG * alphaFrac * MG_PER_G / wortL;
    if (given <= soluble) {
      return new Left(allDissolved, allDissolved, 0);
    }
    double k1 = HopIsomerisation.formationPerSec(wortC) * Minutes.SEC_PER_MIN;
    double k2 = HopIsomerisation.lossPerSec(wortC) * Minutes.SEC_PER_MIN;
    double undissolvedMin = (given - soluble) / (k1 * soluble);
    double steadyMin = Math.min(heldMin, undissolvedMin);
    double restMin = heldMin - steadyMin;
    double steady = k1 * soluble / k2 * -Math.expm1(-k2 * steadyMin);
    double formed =
        steady * Math.exp(-k2 * restMin) + soluble * HopIsomerisation.isoFrac(wortC, restMin);
    double kept = HopUtilisation.kettleToGlassFrac(kettleLossFrac, fermentationLossFrac);
    return new Left(formed * kept, allDissolved, undissolvedMin);
  }
}
