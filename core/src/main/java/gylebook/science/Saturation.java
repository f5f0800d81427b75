package gylebook.science;

/// Where water boils: saturation pressure and boiling temperature, each from the other.
public final class Saturation {
  private static final double ZERO_KELVIN = 273.15;
  private static final double LEAST_KPA = 0.611212677;
  private static final double MOST_KPA = 22064;
  private static final double N1 = 0.11670521452767e4;
  private static final double N2 = -0.72421316703206e6;
  private static final double N3 = -0.17073846940092e2;
  private static final double N4 = 0.12020824702470e5;
  private static final double N5 = -0.32325550322333e7;
  private static final double N6 = 0.14915108613530e2;
  private static final double N7 = -0.48232657361591e4;
  private static final double N8 = 0.40511340542057e6;
  private static final double N9 = -0.23855557567849;
  private static final double N10 = 0.65017534844798e3;

  /// A millimetre of mercury.
  private static final double MERCURY_MM_KPA = 101.325 / 760;

  private Saturation() {}

  /// Pressure at which water of this temperature boils.
  ///
  /// `p = (2 C / (-B + sqrt(B^2 - 4 A C)))^4`
  ///
  /// A, B and C are quadratic in `T + n9/(T - n10)`.
  ///
  /// - Valid: 0 to 373.946 C (the critical point); outside it refuses.
  /// - Source: IAPWS-IF97, equation 30.
  @Reckoned(
      name = "saturation-pressure",
      says = "The pressure at which water of a temperature boils.",
      equation = "p = (2 C / (-B + sqrt(B^2 - 4 A C)))^4",
      range = "0 to 373.946 C; refused outside")
  @Source(key = "iapws-if97", at = "equation 30, tables 34 and 35", trust = Trust.READ)
  public static double saturationKpa(double waterC) {
    double kelvin = Require.within("water in C", waterC, 0, 373.946) + ZERO_KELVIN;
    double th = kelvin + N9 / (kelvin - N10);
    double a = th * (th + N1) + N2;
    double b = th * (N3 * th + N4) + N5;
    double c = th * (N6 * th + N7) + N8;
    double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
    return 1000 * root * root * root * root;
  }

  /// Temperature at which water boils under this pressure.
  ///
  /// `T = (n10 + D - sqrt((n10 + D)^2 - 4 (n9 + n10 D))) / 2`
  ///
  /// D is `2 G / (-F - sqrt(F^2 - 4 E G))`; E, F and G are quadratic in the fourth root of p.
  ///
  /// - Valid: 0.6113 to 22064 kPa; outside it refuses. At 101.325 kPa it gives 99.974 C, not 100.
  ///   Take the station pressure of the day: weather moves the boil by half a kelvin and more.
  /// - Source: IAPWS-IF97, equation 31.
  @Reckoned(
      name = "boiling-point",
      says = "The temperature at which water boils under a pressure.",
      equation = "T = (n10 + D - sqrt((n10 + D)^2 - 4 (n9 + n10 D))) / 2",
      range = "0.6113 to 22064 kPa; refused outside")
  @Source(key = "iapws-if97", at = "equation 31, table 36", trust = Trust.READ)
  public static double boilingC(@Usually(101.325) double pressureKpa) {
    Require.within("pressure in kPa", pressureKpa, LEAST_KPA, MOST_KPA);
    double beta = Math.sqrt(Math.sqrt(pressureKpa / 1000));
    double e = beta * (beta + N3) + N6;
    double f = beta * (N1 * beta + N4) + N7;
    double g = beta * (N2 * beta + N5) + N8;
    double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    double sum = N10 + d;
    return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2 - ZERO_KELVIN;
  }

  /// Pressure at which water boils, by the three-constant law of handbooks.
  ///
  /// `log10 p = 8.07131 - 1730.63/(233.426 + t)`, mmHg
  ///
  /// - Valid: 1 to 100 C; refused outside. Its boiling point is 0.02 K too high at sea level and
  ///   0.04 K at 1600 m: use {@link #saturationKpa} for a calibration.
  /// - Source: Antoine's law; its constants alike in several open codes.
  @Reckoned(
      name = "saturation-pressure-three-constants",
      says = "The pressure at which water boils, by the three-constant law of handbooks.",
      equation = "log10 p = 8.07131 - 1730.63/(233.426 + t), mmHg",
      range = "1 to 100 C, refused outside; its boiling point is 0.02 to 0.06 K too high")
  @Source(key = "steam-tables", at = "Antoine's law", trust = Trust.SECOND_HAND)
  public static double handbookKpa(double waterC) {
    Require.within("water in C", waterC, 1, 100);
    return Math.pow(10, 8.07131 - 1730.63 / (233.426 + waterC)) * MERCURY_MM_KPA;
  }

  /// How much the boiling point moves with the pressure.
  ///
  /// `dT/dp`, the slope of the saturation line
  ///
  /// - Valid: as the boiling point, 1 to 22 000 kPa. 0.277 K/kPa at sea level: weather of 3 kPa is
  ///   0.8 K.
  /// - Source: IAPWS-IF97, equation 31.
  @Reckoned(
      name = "boiling-point-slope",
      says = "How much the boiling point of water moves with the pressure.",
      equation = "dT/dp along the saturation line",
      range = "1 to 22000 kPa; refused outside")
  @Source(key = "iapws-if97", at = "equation 31, table 36", trust = Trust.READ)
  public static double boilingSlopeKPerKpa(@Usually(101.325) double pressureKpa) {
    double p = Require.within("pressure in kPa", pressureKpa, 1, 22_000);
    double step = 1e-4 * p;
    return (boilingC(p + step) - boilingC(p - step)) / (2 * step);
  }
}
