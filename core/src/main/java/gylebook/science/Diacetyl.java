package gylebook.science;

import org.hipparchus.analysis.UnivariateFunction;

/// Diacetyl after fermentation: its precursor splits slowly, the yeast removes what appears.
///
/// Only to advise how long to rest: the verdict is a warm forced test (a closed sample at 60 to 70
/// C for 10 to 20 min, cooled and smelt beside a cold one). At least 48 h at 18 C or more after a
/// tenth of the extract is left, and again after dry hopping. The rates are weak priors from
/// memory.
public final class Diacetyl {
  /// Noticeable in lager from about here (0.1 to 0.2 mg/L; in ale 0.1 to 0.4; fine palates find
  /// 0.014 to 0.061).
  static final double THRESHOLD_MG_PER_L = 0.1;

  private static final double PER_PRECURSOR_RATIO = 0.652;
  private static final double UPTAKE_PER_SPLIT_RATIO = 15;
  private static final double WARM_C = 20;
  private static final double LEAK_MG_PER_L_PLATO = 0.10;
  private static final double LONGEST_HR = 2000;
  private static final double STEP_HR = 0.1;

  private Diacetyl() {}

  /// Diacetyl left after a rest.
  ///
  /// `VDK = V0 e^(-k2 t) + f k1 A0 (e^(-k1 t) - e^(-k2 t))/(k2 - k1)`
  ///
  /// - Valid: no more precursor is made, yeast in suspension; refused below 0.
  /// - Source: the two steps are Krogerus and Gibson's (2013); the rates from memory, at 20 C and
  ///   pH 4.3.
  ///
  /// @param precursorMgPerL alpha-acetolactate at the start of the rest
  /// @param diketoneMgPerL diacetyl at the start
  @Reckoned(
      name = "diacetyl-after-rest",
      says = "The diacetyl left after a rest; to advise its length only.",
      equation = "VDK = V0 e^(-k2 t) + 0.652 k1 A0 (e^(-k1 t) - e^(-k2 t))/(k2 - k1)",
      range = "weak priors at 20 C; the warm forced test decides")
  @Source(key = "krogerus2013", at = "the slow step", trust = Trust.READ)
  @Source(key = "diacetyl-rates", trust = Trust.MEMORY)
  public static double leftMgPerL(
      @Usually(0.5) double precursorMgPerL,
      @Usually(0.2) double diketoneMgPerL,
      double restHr,
      @Usually(0.02) double splitPerHr,
      @Usually(0.3) double uptakePerHr,
      @Usually(PER_PRECURSOR_RATIO) double massRatio) {
    Require.notBelow0("precursor in mg/L", precursorMgPerL);
    Require.notBelow0("diacetyl in mg/L", diketoneMgPerL);
    Require.notBelow0("rest in h", restHr);
    Require.notBelow0("splitting per h", splitPerHr);
    Require.notBelow0("uptake per h", uptakePerHr);
    Require.within("diacetyl per precursor", massRatio, 0, 1);
    double faster = (uptakePerHr - splitPerHr) * restHr;
    // Written so that equal rates, and any order of them, keep their digits.
    double slow = Math.exp(-Math.min(uptakePerHr, splitPerHr) * restHr);
    double size = Math.abs(faster);
    double spread = size < 1e-9 ? 1 : -Math.expm1(-size) / size;
    return diketoneMgPerL * Math.exp(-uptakePerHr * restHr)
        + massRatio * splitPerHr * precursorMgPerL * restHr * spread * slow;
  }

  /// What a fermenting beer holds.
  ///
  /// @param extractPlato apparent extract at that time
  /// @param precursorMgPerL alpha-acetolactate
  /// @param diketoneMgPerL diacetyl
  /// @param forcedMgPerL diacetyl that a warm forced test would bring out: all the precursor split,
  ///   no yeast to take it up
  public record Course(
      double extractPlato, double precursorMgPerL, double diketoneMgPerL, double forcedMgPerL) {}

  /// Diacetyl and its precursor while a beer ferments at one temperature.
  ///
  /// `dA/dt = y (-dP/dt) - k1 A`, `dV/dt = 0.652 k1 A - k2 s V`; P by the middle of the
  /// fermentation's priors
  ///
  /// - Valid: 8 to 26 C with a caution beyond; refused outside 0 to 30 C and above 2000 h. How much
  ///   a strain leaks differs several times over (y 0.10 mg/L a degree, a weak prior): learn it
  ///   from a forced test or compare two ways to ferment, no more. A beer off its yeast has s near
  ///   0.
  /// - Source: the two steps are Krogerus and Gibson's (2013); the rates from memory; solved by the
  ///   classical Runge-Kutta rule in steps of 0.1 h.
  ///
  /// @param leakFactor how much more than usual the strain leaks
  /// @param suspendedFrac yeast in suspension, as a share of that at the end of a fermentation
  @Reckoned(
      name = "diacetyl-in-ferment",
      says = "The diacetyl and its precursor while a beer ferments, and what a forced test shows.",
      equation = "dA/dt = 0.10 (-dP/dt) - k1 A; dV/dt = 0.652 k1 A - k2 s V",
      range = "8 to 26 C, weak priors; strains differ several times; the forced test decides")
  @Source(key = "krogerus2013", at = "the slow step", trust = Trust.READ)
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "diacetyl-rates", trust = Trust.MEMORY)
  public static Course course(
      double originalPlato,
      double finalPlato,
      @Span(least = 8, most = 26, beyond = "the priors of a fermentation end there") @Usually(20)
          double fermentC,
      double heldHr,
      @Usually(1) double leakFactor,
      @Usually(1) double suspendedFrac) {
    Require.within("original extract in P", originalPlato, 0, 40);
    Require.within("final extract in P", finalPlato, -10, originalPlato);
    Require.within("time in h", heldHr, 0, LONGEST_HR);
    Require.within("factor of the strain", leakFactor, 0, 20);
    Require.within("share of yeast in suspension", suspendedFrac, 0, 2);
    double split = splitPerHr(fermentC);
    double uptake = UPTAKE_PER_SPLIT_RATIO * split * suspendedFrac;
    double clock =
        FermentationCurve.ratePerHr(
            fermentC, FermentationCurve.RATE_PER_HR, FermentationCurve.Q10_FACTOR);
    double fermentable = originalPlato - finalPlato;
    double leaked = LEAK_MG_PER_L_PLATO * leakFactor * fermentable * clock;
    double[] end =
        FixedStep.after(
            new double[] {0, 0, 0},
            heldHr,
            STEP_HR,
            x -> {
              double w = leftFrac(x[0]);
              return new double[] {
                clock,
                leaked * w * (1 - w) - split * x[1],
                PER_PRECURSOR_RATIO * split * x[1] - uptake * x[2]
              };
            });
    return new Course(
        finalPlato + fermentable * leftFrac(end[0]),
        end[1],
        end[2],
        end[2] + PER_PRECURSOR_RATIO * end[1]);
  }

  private static double leftFrac(double thermalNumber) {
    return FermentationCurve.leftFrac(
        thermalNumber, FermentationCurve.MIDPOINT_NUMBER, FermentationCurve.SKEW_NUMBER);
  }

  /// Rate at which the precursor splits.
  ///
  /// `k1 = 0.02 * 3^((T - 20)/10)` per hour
  ///
  /// - Valid: about pH 4.3, 0 to 30 C; refused outside.
  /// - Source: from memory.
  @Reckoned(
      name = "diacetyl-precursor-rate",
      says = "How fast the precursor of diacetyl splits at a temperature.",
      equation = "k1 = 0.02 3^((T - 20)/10) per hour",
      range = "0 to 30 C near pH 4.3; a weak prior; refused outside")
  @Source(key = "diacetyl-rates", trust = Trust.MEMORY)
  public static double splitPerHr(double beerC) {
    Require.within("beer temperature in C", beerC, 0, 30);
    return 0.02 * Math.pow(3, (beerC - WARM_C) / 10);
  }

  /// Rest after which the diacetyl stays below the threshold.
  ///
  /// - Valid: 0 to 30 C; both rates grow by 3 for 10 K. Refused outside.
  /// - Source: as above, solved for the time.
  @Reckoned(
      name = "diacetyl-rest",
      says = "How long to rest until diacetyl is below its threshold; the forced test decides.",
      equation = "VDK(t) = threshold, solved for the last t",
      range = "0 to 30 C, weak priors; never below 48 h by habit")
  @Source(key = "krogerus2013", at = "the slow step", trust = Trust.READ)
  @Source(key = "diacetyl-rates", trust = Trust.MEMORY)
  public static double restHr(
      @Usually(18) double beerC,
      @Usually(0.5) double precursorMgPerL,
      @Usually(0.2) double diketoneMgPerL,
      @Usually(THRESHOLD_MG_PER_L) double wantedMgPerL) {
    Require.within("precursor in mg/L", precursorMgPerL, 0, 100);
    Require.within("diacetyl in mg/L", diketoneMgPerL, 0, 100);
    Require.within("wanted diacetyl in mg/L", wantedMgPerL, 1e-6, 10);
    double split = splitPerHr(beerC);
    double uptake = UPTAKE_PER_SPLIT_RATIO * split;
    double made = PER_PRECURSOR_RATIO * split * precursorMgPerL / (uptake - split);
    // It may rise first: the last time of being above the threshold lies behind the peak.
    double steep = made > 0 ? (made - diketoneMgPerL) * uptake / (made * split) : 0;
    double peak = steep > 1 ? Math.log(steep) / (uptake - split) : 0;
    UnivariateFunction excess =
        t ->
            leftMgPerL(precursorMgPerL, diketoneMgPerL, t, split, uptake, PER_PRECURSOR_RATIO)
                - wantedMgPerL;
    return excess.value(peak) <= 0 ? 0 : Root.between(peak, 40 / split, excess);
  }
}
