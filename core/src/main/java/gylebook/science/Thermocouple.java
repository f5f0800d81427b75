package gylebook.science;

/// Thermocouples of types K and T against a reference junction at 0 C (ITS-90).
public final class Thermocouple {
  private static final double[] K = {
    -0.176004136860e-01, 0.389212049750e-01, 0.185587700320e-04, -0.994575928740e-07,
    0.318409457190e-09, -0.560728448890e-12, 0.560750590590e-15, -0.320207200030e-18,
    0.971511471520e-22, -0.121047212750e-25
  };
  private static final double K_BUMP_MV = 0.1185976;
  private static final double K_WIDTH_PER_K2 = -0.1183432e-03;
  private static final double K_CENTRE_C = 126.9686;
  private static final double[] K_INVERSE = {
    0,
    2.508355e1,
    7.860106e-2,
    -2.503131e-1,
    8.315270e-2,
    -1.228034e-2,
    9.804036e-4,
    -4.413030e-5,
    1.057734e-6,
    -1.052755e-8
  };
  private static final double[] T = {
    0,
    0.387481063640e-01,
    0.332922278800e-04,
    0.206182434040e-06,
    -0.218822568460e-08,
    0.109968809280e-10,
    -0.308157587720e-13,
    0.454791352900e-16,
    -0.275129016730e-19
  };

  private Thermocouple() {}

  /// Voltage of type K: `sum c_i t^i + a0 exp(a1 (t - a2)^2)` mV. Refused outside 0 to 1372 C.
  @Source(key = "nist-srd60", at = "type K, 0 to 1372 C", trust = Trust.READ)
  @Reckoned(
      name = "thermocouple-k-voltage",
      says = "What voltage does a type K thermocouple give (reference at 0 C)?",
      equation = "E = sum c_i t^i + a0 exp(a1 (t - a2)^2)",
      range = "0 to 1372 C; refused outside")
  public static double kTypeMv(double junctionC) {
    Require.within("junction temperature", junctionC, 0, 1372);
    double off = junctionC - K_CENTRE_C;
    double t = junctionC;
    double e = polynomialNumber(K, t);
    return e + K_BUMP_MV * Math.exp(K_WIDTH_PER_K2 * off * off);
  }

  /// Temperature of type K at a voltage: the reference function solved backwards.
  @Source(key = "nist-srd60", at = "type K, 0 to 1372 C, inverted", trust = Trust.READ)
  @Reckoned(
      name = "thermocouple-k-temperature",
      says = "What temperature does a type K thermocouple's voltage mean (reference at 0 C)?",
      equation = "E(t) = sum c_i t^i + a0 exp(a1 (t - a2)^2), solved for t",
      range = "0 to 1372 C, that is 0 to 54.886 mV; refused outside")
  public static double kTypeC(double junctionMv) {
    Require.within("voltage", junctionMv, -1e-6, kTypeMv(1372));
    double low = 0;
    double high = 1372;
    while (high - low > 1e-9) {
      double middle = (low + high) / 2;
      if (kTypeMv(middle) < junctionMv) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /// The published inverse polynomial of type K, for comparison; within -0.05 to 0.04 K.
  @Source(key = "nist-srd60", at = "type K inverse, 0 to 500 C", trust = Trust.READ)
  @Reckoned(
      name = "thermocouple-k-inverse-polynomial",
      says = "What does the published inverse polynomial of type K give?",
      equation = "t = sum d_i E^i",
      range = "0 to 20.644 mV (0 to 500 C) within 0.05 K; refused outside")
  public static double kPolynomialC(double junctionMv) {
    double e = Require.within("voltage", junctionMv, -1e-6, 20.645);
    double t = polynomialNumber(K_INVERSE, e);
    return t;
  }

  /// Voltage of type T: `sum c_i t^i` mV. Refused outside 0 to 400 C.
  @Source(key = "nist-srd60", at = "type T, 0 to 400 C", trust = Trust.READ)
  @Reckoned(
      name = "thermocouple-t-voltage",
      says = "What voltage does a type T thermocouple give (reference at 0 C)?",
      equation = "E = sum c_i t^i",
      range = "0 to 400 C; refused outside")
  public static double tTypeMv(double junctionC) {
    double t = Require.within("junction temperature", junctionC, 0, 400);
    double e = polynomialNumber(T, t);
    return e;
  }

  /// Temperature of type T at a voltage: the reference function solved backwards.
  @Source(key = "nist-srd60", at = "type T, 0 to 400 C, inverted", trust = Trust.READ)
  @Reckoned(
      name = "thermocouple-t-temperature",
      says = "What temperature does a type T thermocouple's voltage mean (reference at 0 C)?",
      equation = "E(t) = sum c_i t^i, solved for t",
      range = "0 to 400 C, that is 0 to 20.872 mV; refused outside")
  public static double tTypeC(double junctionMv) {
    Require.within("voltage", junctionMv, 0, tTypeMv(400));
    double low = 0;
    double high = 400;
    while (high - low > 1e-9) {
      double middle = (low + high) / 2;
      if (tTypeMv(middle) < junctionMv) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /// Limit of error of type K, class 2: the larger of 2.5 K and 0.75 %.
  @Source(key = "iec-60584", at = "class 2", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "thermocouple-k-class-2",
      says = "How far off may a type K thermocouple of class 2 be?",
      equation = "limit = max(2.5, 0.0075 |t|)",
      range = "-40 to 1200 C; refused outside")
  public static double kClass2K(double junctionC) {
    Require.within("junction temperature", junctionC, -40, 1200);
    return Math.max(2.5, 0.0075 * Math.abs(junctionC));
  }

  /// Limit of error of type T, class 2: the larger of 1 K and 0.75 %.
  @Source(key = "iec-60584", at = "class 2", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "thermocouple-t-class-2",
      says = "How far off may a type T thermocouple of class 2 be?",
      equation = "limit = max(1, 0.0075 |t|)",
      range = "-40 to 350 C; refused outside")
  public static double tClass2K(double junctionC) {
    Require.within("junction temperature", junctionC, -40, 350);
    return Math.max(1.0, 0.0075 * Math.abs(junctionC));
  }

  private static double polynomialNumber(double[] termsNumber, double atNumber) {
    double sum = 0;
    for (int i = termsNumber.length - 1; i >= 0; i--) {
      sum = sum * atNumber + termsNumber[i];
    }
    return sum;
  }
}
