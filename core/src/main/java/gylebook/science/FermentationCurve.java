package gylebook.science;

/// How the extract falls while beer ferments: a logistic over thermal time.
///
/// The four- and five-parameter logistic fits the fall of industrial fermentations best (Speers
/// 2003, Reid 2021). Counting time in warmth makes it hold for any temperature history: the clock
/// runs faster by Q10 for each 10 K. The priors are an engineer's, not measurements.
public final class FermentationCurve {
  /// Where the clock's dependence on temperature has any basis: 10 to 14 C in print, the rest
  /// habit.
  public static final Validity RANGE =
      new Validity(
          "ferment temperature in C",
          8,
          26,
          "yeast stalls or suffers there, and the curve knows nothing of it");

  /// Middle of what is expected before any reading, at 20 C.
  public static final double RATE_PER_HR = 0.10;

  /// Thermal time at which half is fermented, before any reading.
  public static final double MIDPOINT_NUMBER = 3.2;

  /// The four-parameter form.
  public static final double SKEW_NUMBER = 1;

  /// How much faster the clock runs for 10 K, before any reading.
  public static final double Q10_FACTOR = 2.2;

  static final double LEAST_SKEW_NUMBER = 0.05;
  static final double MOST_SKEW_NUMBER = 20;
  static final double MOST_MIDPOINT_NUMBER = 50;
  private static final double CLOCK_C = 20;
  private static final double CLOCK_K = 10;

  private FermentationCurve() {}

  /// Rate of the thermal clock at a temperature.
  ///
  /// `B = B20 Q10^((T - 20)/10)`
  ///
  /// - Valid: 8 to 26 C; goes on with a caution; refused outside -2 to 45 C.
  /// - Source: of this project. B20 0.10 per hour (8 in 10: 0.064 to 0.157), Q10 2.2: priors.
  @Reckoned(
      name = "ferment-rate",
      says = "How fast the clock of fermentation runs at a temperature.",
      equation = "B = B20 Q10^((T - 20)/10)",
      range = "8 to 26 C; a prior, to be corrected by readings")
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  public static double ratePerHr(
      double fermentC,
      @Usually(RATE_PER_HR) double rateAt20PerHr,
      @Usually(Q10_FACTOR) double tenKelvinFactor) {
    Require.within("ferment temperature in C", fermentC, -2, 45);
    Require.above0("rate at 20 C per hour", rateAt20PerHr);
    Require.within("factor for 10 K", tenKelvinFactor, 1, 6);
    return rateAt20PerHr * Math.pow(tenKelvinFactor, (fermentC - CLOCK_C) / CLOCK_K);
  }

  /// Share of the fermentable extract that is left after so much thermal time.
  ///
  /// `w = (1 + s exp(tau - tau_m))^(-1/s)`; s = 1 is the four-parameter form
  ///
  /// - Valid: any; refused for a skew outside 0.05 to 20.
  /// - Source: Speers 2003, Reid 2021.
  @Reckoned(
      name = "ferment-share-left",
      says = "The share of fermentable extract that is left after so much thermal time.",
      equation = "w = (1 + s exp(tau - tau_m))^(-1/s)",
      range = "thermal time in units of the rate; skew 0.05 to 20, refused outside")
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "reid2021", at = "introduction", trust = Trust.READ)
  public static double leftFrac(
      double thermalNumber,
      @Usually(MIDPOINT_NUMBER) double midpointNumber,
      @Usually(SKEW_NUMBER) double skewNumber) {
    double s = Require.within("skew", skewNumber, LEAST_SKEW_NUMBER, MOST_SKEW_NUMBER);
    Require.notBelow0("thermal time", thermalNumber);
    Require.within("midpoint", midpointNumber, 0, MOST_MIDPOINT_NUMBER);
    return Math.pow(1 + s * Math.exp(thermalNumber - midpointNumber), -1 / s);
  }

  /// Share of the fermentable extract that is left so much thermal time after pitching, where
  /// nothing is fermented yet.
  ///
  /// `w = (1 + s (exp(tau) - 1) exp(-tau_m))^(-1/s)`: what has fermented grows by the logistic law
  /// from nothing, so w(0) = 1. {@link #leftFrac} begins up to 4 % of the fall below, which matters
  /// to a reading of the first day: taken for slowness it spoils the forecast of the rest. After
  /// the middle the two are one.
  ///
  /// - Valid: as above.
  /// - Source: of this project, from the form of Speers 2003.
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  static double fromPitchFrac(double thermalNumber, double midpointNumber, double skewNumber) {
    double s = Require.within("skew", skewNumber, LEAST_SKEW_NUMBER, MOST_SKEW_NUMBER);
    double tau = Require.notBelow0("thermal time", thermalNumber);
    Require.within("midpoint", midpointNumber, 0, MOST_MIDPOINT_NUMBER);
    return Math.pow(1 - s * Math.expm1(-tau) * Math.exp(tau - midpointNumber), -1 / s);
  }

  /// Apparent extract after some hours at one temperature.
  ///
  /// `P = P_end + (P0 - P_end) w(B t)`
  ///
  /// - Valid: as above; refused where the end is above the start. At time 0 it is within 4 % of the
  ///   fall below P0 (the curve has no sharp start).
  /// - Source: as above; thermal time is of this project.
  ///
  /// @param rateAt20PerHr rate of the clock at 20 C; at other temperatures Q10 is 2.2
  @Reckoned(
      name = "ferment-extract",
      says = "The apparent extract after some hours at one temperature.",
      equation = "P = P_end + (P0 - P_end)(1 + s exp(B t - tau_m))^(-1/s)",
      range = "8 to 26 C, Q10 2.2; a prior, to be corrected by readings")
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "reid2021", at = "introduction", trust = Trust.READ)
  public static double extractPlato(
      double originalPlato,
      double finalPlato,
      @Usually(20) double fermentC,
      double heldHr,
      @Usually(RATE_PER_HR) double rateAt20PerHr,
      @Usually(MIDPOINT_NUMBER) double midpointNumber,
      @Usually(SKEW_NUMBER) double skewNumber) {
    double clock = ratePerHr(fermentC, rateAt20PerHr, Q10_FACTOR);
    return leftPlato(
        originalPlato,
        finalPlato,
        leftFrac(clock * Require.notBelow0("time in h", heldHr), midpointNumber, skewNumber));
  }

  /// Apparent extract in a ferment that is held, warmed steadily and held again, by the priors.
  ///
  /// - Valid: as above.
  /// - Source: as above.
  ///
  /// @param firstC held until `firstHr`
  /// @param laterC reached at `laterHr` and held after
  @Reckoned(
      name = "ferment-extract-warmed",
      says = "The apparent extract of a ferment that is held, warmed steadily and held again.",
      equation = "tau = integral of B20 Q10^((T - 20)/10) dt, over hold, ramp and hold",
      range = "8 to 26 C; the middle of the priors, to be corrected by readings")
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "reid2021", at = "introduction", trust = Trust.READ)
  public static double warmedPlato(
      double originalPlato,
      double finalPlato,
      double firstC,
      double firstHr,
      double laterC,
      double laterHr,
      double heldHr) {
    double[] atHr = {0, firstHr, laterHr};
    double[] fermentC = {firstC, firstC, laterC};
    double tau = thermalNumber(atHr, fermentC, heldHr, RATE_PER_HR, Q10_FACTOR);
    return leftPlato(originalPlato, finalPlato, leftFrac(tau, MIDPOINT_NUMBER, SKEW_NUMBER));
  }

  /// Thermal time of a temperature history: straight lines between the points, held at the ends.
  ///
  /// `tau = integral of B dt`, in closed form on each line
  ///
  /// - Valid: points in order of time, the first at 0 or later; refused otherwise.
  /// - Source: of this project.
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  public static double thermalNumber(
      double[] atHr,
      double[] fermentC,
      double heldHr,
      double rateAt20PerHr,
      double tenKelvinFactor) {
    if (atHr.length == 0 || atHr.length != fermentC.length) {
      throw new IllegalArgumentException(
          "there are " + atHr.length + " times and " + fermentC.length + " temperatures.");
    }
    Require.notBelow0("first time in h", atHr[0]);
    Require.notBelow0("time in h", heldHr);
    double tau = Math.min(atHr[0], heldHr) * ratePerHr(fermentC[0], rateAt20PerHr, tenKelvinFactor);
    double perK = Math.log(tenKelvinFactor) / CLOCK_K;
    for (int i = 1; i < atHr.length; i++) {
      double span = Require.notBelow0("hours between points", atHr[i] - atHr[i - 1]);
      double lasts = Math.clamp(heldHr - atHr[i - 1], 0, span);
      double rise = span == 0 ? 0 : (fermentC[i] - fermentC[i - 1]) * lasts / span;
      double x = rise * perK;
      double from = ratePerHr(fermentC[i - 1], rateAt20PerHr, tenKelvinFactor);
      tau += lasts * from * (Math.abs(x) < 1e-9 ? 1 : Math.expm1(x) / x);
    }
    double rest = Math.max(0, heldHr - atHr[atHr.length - 1]);
    return tau + rest * ratePerHr(fermentC[atHr.length - 1], rateAt20PerHr, tenKelvinFactor);
  }

  /// Hours until only a share of the fermentable extract is left, at one temperature.
  ///
  /// `t = (tau_m + ln((w^-s - 1)/s))/B`
  ///
  /// - Valid: a share between 0 and 1; 0 where the curve starts below it already.
  /// - Source: as above, solved for the time.
  @Reckoned(
      name = "ferment-time",
      says = "How many hours a ferment takes until only a share of its extract is left.",
      equation = "t = (tau_m + ln((w^-s - 1)/s))/B",
      range = "8 to 26 C; a prior, to be corrected by readings; never package by it")
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "reid2021", at = "introduction", trust = Trust.READ)
  public static double timeHr(
      @Usually(0.02) double leftFrac,
      @Usually(20) double fermentC,
      @Usually(RATE_PER_HR) double rateAt20PerHr,
      @Usually(MIDPOINT_NUMBER) double midpointNumber,
      @Usually(SKEW_NUMBER) double skewNumber,
      @Usually(Q10_FACTOR) double tenKelvinFactor) {
    Require.within("share left", leftFrac, 1e-9, 1 - 1e-9);
    double s = Require.within("skew", skewNumber, LEAST_SKEW_NUMBER, MOST_SKEW_NUMBER);
    Require.within("midpoint", midpointNumber, 0, MOST_MIDPOINT_NUMBER);
    double tau = midpointNumber + Math.log((Math.pow(leftFrac, -s) - 1) / s);
    return Math.max(0, tau / ratePerHr(fermentC, rateAt20PerHr, tenKelvinFactor));
  }

  /// Thermal time of the middle for a pitching rate.
  ///
  /// `tau_m = 3.2 - 0.8 ln(r/1e6)`, the shift not beyond 0.7 either way
  ///
  /// - Valid: r in living cells per mL and degree Plato; refused outside 0.1 to 10 million. Growing
  ///   by shares, twice the cells start one doubling sooner: an argument, and a weak one.
  /// - Source: of this project.
  ///
  /// @param rateCountPerMl living cells per mL of wort for each degree Plato
  @Reckoned(
      name = "ferment-midpoint",
      says = "When half is fermented, in thermal time, by how much yeast was pitched.",
      equation = "tau_m = 3.2 - 0.8 ln(r/1e6), the shift not beyond 0.7",
      range = "0.4 to 2.4 million cells a mL and degree, held beyond; a weak prior")
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  public static double midpointNumber(
      @Span(least = 0.42e6, most = 2.4e6, beyond = "the shift is held there") @Usually(1e6)
          double rateCountPerMl) {
    Require.within("cells per mL and degree Plato", rateCountPerMl, 1e5, 1e7);
    return MIDPOINT_NUMBER - Math.clamp(0.8 * Math.log(rateCountPerMl / 1e6), -0.7, 0.7);
  }

  private static double leftPlato(double originalPlato, double finalPlato, double leftFrac) {
    Require.within("original extract in P", originalPlato, 0, 40);
    Require.within("final extract in P", finalPlato, -10, originalPlato);
    double fallen = (originalPlato - finalPlato) * leftFrac;
    return finalPlato + fallen;
  }
}
