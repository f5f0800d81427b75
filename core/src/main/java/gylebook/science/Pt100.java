package gylebook.science;

/// The platinum thermometer of 100 ohm at the ice point (Callendar and Van Dusen).
public final class Pt100 {
  private static final double A = 3.9083e-3;
  private static final double B = -5.775e-7;
  private static final double C = -4.183e-12;
  private static final double ICE_OHM = 100;
  private static final double LEAST_C = -200;
  private static final double MOST_C = 850;

  private Pt100() {}

  /// Resistance at a temperature.
  ///
  /// `R = 100 (1 + A t + B t^2)` ohm, below 0 C with `+ C (t - 100) t^3`. Refused outside -200 to
  /// 850 C, the range of the standard.
  @Source(key = "iec-60751", at = "reference function", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "pt100-resistance",
      says = "What resistance has a Pt100 at a temperature?",
      equation = "R = 100 (1 + A t + B t^2 [+ C (t - 100) t^3 below 0 C])",
      range = "-200 to 850 C; refused outside")
  public static double resistanceOhm(double probeC) {
    Require.within("probe temperature", probeC, LEAST_C, MOST_C);
    double ratio = 1 + probeC * (A + B * probeC);
    if (probeC < 0) {
      ratio += C * (probeC - 100) * probeC * probeC * probeC;
    }
    return ICE_OHM * ratio;
  }

  /// Temperature at a resistance: the same read backwards.
  ///
  /// At 0 C and above `t = (-A + sqrt(A^2 - 4B(1 - R/100))) / (2B)`; below by Newton's steps.
  @Source(key = "iec-60751", at = "reference function", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "pt100-temperature",
      says = "What temperature does a Pt100's resistance mean?",
      equation = "t = (-A + sqrt(A^2 - 4 B (1 - R/100))) / (2 B), below 0 C by iteration",
      range = "-200 to 850 C, that is 18.52 to 390.48 ohm; refused outside")
  public static double temperatureC(double probeOhm) {
    Require.within("probe resistance", probeOhm, resistanceOhm(LEAST_C), resistanceOhm(MOST_C));
    double temperature = (-A + Math.sqrt(A * A - 4 * B * (1 - probeOhm / ICE_OHM))) / (2 * B);
    if (probeOhm >= ICE_OHM) {
      return temperature;
    }
    for (int step = 0; step < 8; step++) {
      double t = Math.max(LEAST_C, temperature);
      double slope = ICE_OHM * (A + 2 * B * t + C * t * t * (4 * t - 300));
      temperature = t - (resistanceOhm(t) - probeOhm) / slope;
    }
    return temperature;
  }

  /// Limit of error of class AA: `0.1 + 0.0017 |t|` K.
  @Source(key = "iec-60751", at = "tolerance classes", trust = Trust.READ)
  @Reckoned(
      name = "pt100-class-aa",
      says = "How far off may a Pt100 of class AA be?",
      equation = "limit = 0.1 + 0.0017 |t|",
      range = "-50 to 250 C; refused outside -200 to 850 C")
  public static double aaLimitK(
      @Span(least = -50, most = 250, beyond = "class AA is defined there only") double probeC) {
    return limitK(0.1, 0.0017, probeC);
  }

  /// Limit of error of class A: `0.15 + 0.002 |t|` K.
  @Source(key = "iec-60751", at = "tolerance classes", trust = Trust.READ)
  @Reckoned(
      name = "pt100-class-a",
      says = "How far off may a Pt100 of class A be?",
      equation = "limit = 0.15 + 0.002 |t|",
      range = "-100 to 450 C; refused outside -200 to 850 C")
  public static double aLimitK(
      @Span(least = -100, most = 450, beyond = "class A is defined there only") double probeC) {
    return limitK(0.15, 0.002, probeC);
  }

  /// Limit of error of class B: `0.3 + 0.005 |t|` K.
  @Source(key = "iec-60751", at = "tolerance classes", trust = Trust.READ)
  @Reckoned(
      name = "pt100-class-b",
      says = "How far off may a Pt100 of class B be?",
      equation = "limit = 0.3 + 0.005 |t|",
      range = "-196 to 600 C; refused outside -200 to 850 C")
  public static double bLimitK(
      @Span(least = -196, most = 600, beyond = "class B is defined there only") double probeC) {
    return limitK(0.3, 0.005, probeC);
  }

  /// Limit of error of class C: `0.6 + 0.01 |t|` K.
  @Source(key = "iec-60751", at = "tolerance classes", trust = Trust.READ)
  @Reckoned(
      name = "pt100-class-c",
      says = "How far off may a Pt100 of class C be?",
      equation = "limit = 0.6 + 0.01 |t|",
      range = "-196 to 600 C; refused outside -200 to 850 C")
  public static double cLimitK(
      @Span(least = -196, most = 600, beyond = "class C is defined there only") double probeC) {
    return limitK(0.6, 0.01, probeC);
  }

  private static double limitK(double atZeroK, double shareFrac, double probeC) {
    return atZeroK + shareFrac * Math.abs(Require.within("probe temperature", probeC, -200, 850));
  }
}
