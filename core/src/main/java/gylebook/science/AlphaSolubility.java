package gylebook.science;

/// Alpha acid that does not dissolve does not isomerise: why twice the hops are not twice as
/// bitter.
///
/// Malowicki found about 90 mg/L dissolved at pH 5.2, in a buffer. Accounts of wort differ: a hop
/// house says 40 mg/L at pH 5.0, one brewer's fit to his own beers 240 mg/L at the boil and more
/// beyond. Two things are assumed here: what is not yet dissolved waits and dissolves as the
/// dissolved is used up, and nothing of it is lost meanwhile. The far end is the plain rate of
/// {@link HopIsomerisation}, for which everything is dissolved from the start; the truth of a large
/// addition lies between.
public final class AlphaSolubility {
  private static final double MG_PER_G = 1000;

  /// What one brewer found to dissolve at the boil.
  private static final double SOLUBLE_AT_BOIL_MG_PER_L = 240;

  private AlphaSolubility() {}

  /// Iso-alpha acid in the glass from a large addition, by three accounts of what dissolves.
  ///
  /// @param leastMgPerL if 90 mg/L of alpha acid dissolve at a time
  /// @param middleMgPerL if 240 mg/L do
  /// @param mostMgPerL if all of it dissolves at once
  /// @param undissolvedMin for how long a part lies undissolved, by the first account
  public record Left(
      double leastMgPerL, double middleMgPerL, double mostMgPerL, double undissolvedMin) {}

  /// Iso-alpha acid in the glass from an addition of which only a part is dissolved at a time.
  ///
  /// `d(alpha)/dt = -k1 min(alpha, s)`, `d(iso)/dt = k1 min(alpha, s) - k2 iso`, s the soluble
  /// part, 90 or 240 mg/L; while more than s is there, `iso = k1 s/k2 (1 - exp(-k2 t))`
  ///
  /// - Valid: one addition at one temperature from 90 to 130 C; hops that went in before take their
  ///   share of what dissolves, so ask for all of them together. The soluble part was measured at
  ///   pH 5.2 and is taken as the same at every temperature; less dissolves in sourer and cooler
  ///   wort.
  @Source(key = "malowicki2005", at = "abstracts: rates; about 90 mg/L soluble", trust = Trust.READ)
  @Source(key = "hvg-boil", at = "40 mg/L at pH 5.0", trust = Trust.READ)
  @Source(key = "hosom-solubility", at = "abstract: 240 mg/L at the boil", trust = Trust.READ)
  @Source(key = "justus2018", at = "abstract: mean loss in the cellar", trust = Trust.READ)
  @Source(key = "brewers-practice", at = "kettle and trub", trust = Trust.MEMORY)
  @Reckoned(
      name = "iso-alpha-of-large-addition",
      says = "The iso-alpha acid in the glass when more alpha acid goes in than dissolves.",
      equation = "d(alpha)/dt = -k1 min(alpha, s), d(iso)/dt = k1 min(alpha, s) - k2 iso",
      range = "90 to 130 C, extrapolated below; soluble 90 or 240 mg/L or all, by three accounts")
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
      @Usually(0.10) double kettleLossFrac,
      @Usually(0.25) double fermentationLossFrac) {
    Require.notBelow0("time in min", heldMin);
    double most =
        HopUtilisation.isoAlphaMgPerL(
            hopG, alphaFrac, wortL, heldMin, wortC, kettleLossFrac, fermentationLossFrac);
    double given = hopG * alphaFrac * MG_PER_G / wortL;
    double kept = HopUtilisation.kettleToGlassFrac(kettleLossFrac, fermentationLossFrac);
    double soluble = HopIsomerisation.SOLUBLE_MG_PER_L;
    return new Left(
        kept * formedMgPerL(given, soluble, wortC, heldMin),
        kept * formedMgPerL(given, SOLUBLE_AT_BOIL_MG_PER_L, wortC, heldMin),
        most,
        waitingMin(given, soluble, wortC));
  }

  private static double formedMgPerL(
      double givenMgPerL, double solubleMgPerL, double wortC, double heldMin) {
    double lossPerMin = HopIsomerisation.lossPerSec(wortC) * Minutes.SEC_PER_MIN;
    double steadyMin = Math.min(heldMin, waitingMin(givenMgPerL, solubleMgPerL, wortC));
    double restMin = heldMin - steadyMin;
    double steadyFrac = formationPerMin(wortC) / lossPerMin * -Math.expm1(-lossPerMin * steadyMin);
    double dissolvedMgPerL = Math.min(givenMgPerL, solubleMgPerL);
    return solubleMgPerL * steadyFrac * Math.exp(-lossPerMin * restMin)
        + dissolvedMgPerL * HopIsomerisation.isoFrac(wortC, restMin);
  }

  private static double waitingMin(double givenMgPerL, double solubleMgPerL, double wortC) {
    return Math.max(0, givenMgPerL / solubleMgPerL - 1) / formationPerMin(wortC);
  }

  private static double formationPerMin(double wortC) {
    return HopIsomerisation.formationPerSec(wortC) * Minutes.SEC_PER_MIN;
  }
}
