package gylebook.science;

/// A thermistor whose resistance falls with temperature (Steinhart and Hart).
public final class Ntc {
  private Ntc() {}

  /// Temperature at a resistance: `1/T = a + b ln R + c (ln R)^3`, kelvin and ohm.
  ///
  /// The usual values are widely used ones for 10 kohm (many public codes); the maker's sheet has
  /// the right ones. Refused where they give no temperature above -270 C.
  @Source(key = "steinhart-hart-1968", at = "three-term equation", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "thermistor-temperature",
      says = "What temperature does a thermistor's resistance mean?",
      equation = "1/T = a + b ln R + c (ln R)^3, kelvin and ohm",
      range = "the range its coefficients were fitted for; refused where T is not above 3 K")
  public static double temperatureC(
      double thermistorOhm,
      @Usually(1.129148e-3) double aPerK,
      @Usually(2.34125e-4) double bPerK,
      @Usually(8.76741e-8) double cPerK) {
    double log = Math.log(Require.above0("resistance", thermistorOhm));
    double inverse = aPerK + log * (bPerK + cPerK * log * log);
    if (!(inverse > 0 && inverse < 1.0 / 3)) {
      throw new IllegalArgumentException(
          "1/T is " + inverse + " per kelvin; these coefficients give no temperature here.");
    }
    return 1 / inverse - Air.ZERO_C_KELVIN;
  }

  /// Resistance at a temperature: the same read backwards, by the cubic's one real root.
  @Source(
      key = "steinhart-hart-1968",
      at = "three-term equation, inverted",
      trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "thermistor-resistance",
      says = "What resistance has a thermistor at a temperature?",
      equation = "c y^3 + b y + a - 1/T = 0, R = exp(y)",
      range = "the range its coefficients were fitted for; b and c above 0, refused otherwise")
  public static double resistanceOhm(
      double thermistorC,
      @Usually(1.129148e-3) double aPerK,
      @Usually(2.34125e-4) double bPerK,
      @Usually(8.76741e-8) double cPerK) {
    Require.within("a", aPerK, -0.01, 0.01);
    double half = (1 / Air.kelvin(thermistorC) - aPerK) / (2 * Require.above0("c", cPerK));
    double third = Require.above0("b", bPerK) / (3 * cPerK);
    double root = Math.sqrt(third * third * third + half * half);
    return Math.exp(Math.cbrt(root + half) - Math.cbrt(root - half));
  }
}
