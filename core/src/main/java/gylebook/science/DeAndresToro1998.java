package gylebook.science;

/// A published model of lager fermentation with living, waking and dead yeast. An illustration, not
/// a forecast.
///
/// The constants in circulation must not be used above about 16 C: at 20 C they leave 84 of 130 g/L
/// of sugar and make more alcohol than sugar can give. The paper's own table was not seen. Copies
/// differ in the sugar term and the ester term; this is the one with `k_s + S` and `Y mu_x X`.
public final class DeAndresToro1998 {
  /// Where the model behaves with these constants.
  public static final Validity RANGE =
      new Validity(
          "ferment temperature in C",
          8,
          16,
          "the circulated constants of this model break down above 16 C (at 20 C they leave two"
              + " thirds of the sugar): no forecast");

  private static final double MOST_YEAST_G_PER_L = 1000;
  private static final double STEP_HR = 0.02;
  private static final double ZERO_KELVIN = 273.15;

  private DeAndresToro1998() {}

  /// What stands in the tank.
  ///
  /// @param latentGPerL yeast that has not woken
  /// @param activeGPerL yeast at work
  /// @param deadGPerL dead yeast in suspension
  /// @param sugarGPerL fermentable sugar
  /// @param ethanolGPerL alcohol
  /// @param esterPpm ethyl acetate
  /// @param diacetylPpm diacetyl
  public record Tank(
      double latentGPerL,
      double activeGPerL,
      double deadGPerL,
      double sugarGPerL,
      double ethanolGPerL,
      double esterPpm,
      double diacetylPpm) {}

  /// The tank after some hours at one temperature.
  ///
  /// `dS/dt = -mu_s X_A`, `dE/dt = (1 - E/(0.5 S0)) mu_e X_A`, `dX_A/dt = (mu_x - mu_DT) X_A + mu_L
  /// X_L`, and so on for dead and waking yeast, ester and diacetyl
  ///
  /// - Valid: 8 to 16 C with a caution beyond; refused outside 0 to 30 C and above 1000 h.
  /// - Source: de Andres-Toro and others 1998; equations and constants second-hand. Solved by the
  ///   classical Runge-Kutta rule in steps of 0.02 h.
  @Reckoned(
      name = "lager-model-latent-yeast",
      says = "A published lager model with waking and dying yeast; an illustration, no forecast.",
      equation = "dS = -mu_s X_A; dE = f mu_e X_A; dX_A = (mu_x - mu_DT) X_A + mu_L X_L; ...",
      range = "8 to 16 C; breaks down above 16 C")
  @Source(key = "deandrestoro1998", trust = Trust.SECOND_HAND)
  public static Tank tank(
      @Usually(12) double fermentC,
      double heldHr,
      @Usually(130) double sugarGPerL,
      @Usually(1.92) double latentGPerL,
      @Usually(0.08) double activeGPerL,
      @Usually(2) double deadGPerL) {
    Require.within("ferment temperature in C", fermentC, 0, 30);
    Require.within("time in h", heldHr, 0, 1000);
    Require.above0("sugar in g/L", sugarGPerL);
    Require.within("latent yeast in g/L", latentGPerL, 0, MOST_YEAST_G_PER_L);
    Require.within("active yeast in g/L", activeGPerL, 0, MOST_YEAST_G_PER_L);
    Require.within("dead yeast in g/L", deadGPerL, 0, MOST_YEAST_G_PER_L);
    double[] start = {latentGPerL, activeGPerL, deadGPerL, sugarGPerL, 0, 0, 0};
    double[] end = FixedStep.after(start, heldHr, STEP_HR, slope(fermentC, sugarGPerL));
    return new Tank(end[0], end[1], end[2], end[3], end[4], end[5], end[6]);
  }

  /// The model's slopes, in the order of the tank's numbers.
  static FixedStep.Slope slope(double fermentC, double sugarGPerL) {
    double t = fermentC + ZERO_KELVIN;
    double half = 0.5 * sugarGPerL;
    double grow = Math.exp(108.31 - 31934.09 / t);
    double ester = Math.exp(89.92 - 26589 / t);
    double eat = Math.exp(-41.92 + 11654.64 / t);
    double wake = Math.exp(30.72 - 9501.54 / t);
    double die = Math.exp(130.16 - 38313 / t);
    double settle = Math.exp(33.82 - 10033.28 / t);
    double brew = Math.exp(3.27 - 1267.24 / t);
    double hunger = Math.exp(-119.63 + 34203.95 / t);
    return x -> {
      double sugar = Math.max(0, x[3]);
      double alcohol = x[4];
      double active = x[1];
      double growing = grow * sugar / (half + alcohol);
      double eating = sugar / (hunger + sugar) * active;
      return new double[] {
        -wake * x[0],
        (growing - die) * active + wake * x[0],
        die * active - settle * half / (half + alcohol) * x[2],
        -eat * eating,
        (1 - alcohol / half) * brew * eating,
        ester * growing * active,
        0.000127672 * sugar * active - 0.00113864 * x[6] * alcohol
      };
    };
  }
}
