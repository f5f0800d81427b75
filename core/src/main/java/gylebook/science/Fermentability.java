package gylebook.science;

/// How the fermentability of a wort grows in the mash, minute by minute, over any temperatures.
///
/// The measured curve of {@link Attenuation} is for an hour at one temperature. Here the hour is
/// opened up: beta-amylase brings the fermentability towards a ceiling while the heat kills it,
///
/// `d(phi)/dt = k(T) b(t) (ceiling - phi)`, `phi(0) = 0`,
///
/// with `b` the share of {@link BetaAmylase} left. At constant temperature this has a closed
/// solution, `phi = ceiling (1 - exp(-k B))` with `B` the integral of `b`. So `k(T)` is **defined**
/// as the rate for which an hour gives the measured curve exactly:
///
/// `k(T) = -ln(1 - A(T)/ceiling)/B(T, 3600 s)`.
///
/// It holds in one number everything besides beta-amylase: alpha-amylase, limit dextrinase, what is
/// opened of the starch. That is why it rises to about 70 C and falls above, and why it bends at
/// the edge of the curve, 62 C. That a stepped mash adds up this way is our assumption.
public final class Fermentability {
  /// What fermentability tends to in a long mash: the asymptote of the fitted curve. Not measured.
  public static final double CEILING_FRAC = Attenuation.ASYMPTOTE_FRAC;

  private static final double HOUR_SEC = 3600;

  /// The temperatures for which the rate rests on measured points.
  public static final Validity RANGE = Attenuation.RANGE;

  // Two tables: the law bends at the edge of the attenuation curve.
  private static final CubicTable COOL =
      new CubicTable(1, Attenuation.EDGE_C, 610, t -> closedPerSec(t, Attenuation.limitFrac(0)));
  private static final CubicTable WARM =
      new CubicTable(Attenuation.EDGE_C, 100, 760, t -> closedPerSec(t, Attenuation.curveFrac(t)));
  private static final double EDGE_C = Attenuation.EDGE_C;

  private Fermentability() {}

  /// The rate at which full beta-amylase activity would close the gap to the ceiling.
  ///
  /// - Valid: 62 to 80 C (65 to 80 C measured); answers from 0 to 110 C.
  @Source(key = "wray2014", at = "four points of J. Chandrasekhar", trust = Trust.READ)
  @Source(key = "muller1991", at = "fig. 1, 65 C, 2.5 L/kg", trust = Trust.SECOND_HAND)
  @Source(key = "brandam2003", at = "activation energy", trust = Trust.MEMORY)
  @Reckoned(
      name = "fermentability-rate",
      says = "How fast the mash closes the gap to the highest fermentability.",
      equation = "k = -ln(1 - A(T)/0.93367)/B(T, 1 h)",
      range = "62 to 80 C; follows from the measured hour")
  public static double approachPerSec(double mashC) {
    Require.within("mash temperature in C", mashC, 0, 110);
    return mashC < EDGE_C ? COOL.at(mashC) : WARM.at(mashC);
  }

  private static double closedPerSec(double mashC, double limitFrac) {
    double work = BetaAmylase.fullActivitySec(mashC, HOUR_SEC, 1 - BetaAmylase.STABLE_SHARE_FRAC);
    return -Math.log1p(-limitFrac / CEILING_FRAC) / work;
  }

  /// Apparent attenuation limit after a rest of any length at one temperature.
  @Source(key = "wray2014", at = "four points of J. Chandrasekhar", trust = Trust.READ)
  @Source(key = "muller1991", at = "fig. 1, 65 C, 2.5 L/kg", trust = Trust.SECOND_HAND)
  @Source(key = "brandam2003", at = "activation energy", trust = Trust.MEMORY)
  @Reckoned(
      name = "attenuation-after-rest",
      says = "How far a wort can attenuate after a rest of some length at one temperature.",
      equation = "phi = 0.93367 (1 - exp(-k(T) B(T, t)))",
      range = "62 to 80 C; measured for 60 min, other times by the model")
  public static double afterRestFrac(double mashC, @Usually(60) double heldMin) {
    return afterTwoRestsFrac(mashC, heldMin, mashC, 0);
  }

  /// Apparent attenuation limit after two rests, one after the other without a ramp.
  @Source(key = "wray2014", at = "four points of J. Chandrasekhar", trust = Trust.READ)
  @Source(key = "muller1991", at = "fig. 1, 65 C, 2.5 L/kg", trust = Trust.SECOND_HAND)
  @Source(key = "brandam2003", at = "activation energy", trust = Trust.MEMORY)
  @Reckoned(
      name = "attenuation-after-two-rests",
      says = "How far a wort can attenuate after two rests in a row.",
      equation = "phi = 0.93367 (1 - exp(-k1 B1 - k2 B2))",
      range = "62 to 80 C; the time between the rests is left out")
  public static double afterTwoRestsFrac(
      double firstC, double firstMin, double secondC, double secondMin) {
    double firstSec = Require.notBelow0("first rest in min", firstMin) * Minutes.SEC_PER_MIN;
    double secondSec = Require.notBelow0("second rest in min", secondMin) * Minutes.SEC_PER_MIN;
    double labile = 1 - BetaAmylase.STABLE_SHARE_FRAC;
    double left = labile * Math.exp(-BetaAmylase.labileDecayPerSec(firstC) * firstSec);
    double first = approachPerSec(firstC) * BetaAmylase.fullActivitySec(firstC, firstSec, labile);
    double second = approachPerSec(secondC) * BetaAmylase.fullActivitySec(secondC, secondSec, left);
    return CEILING_FRAC * -Math.expm1(-first - second);
  }
}
