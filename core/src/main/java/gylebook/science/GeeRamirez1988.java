package gylebook.science;

/// A published model of lager yeast that eats glucose, maltose and maltotriose in turn. An
/// illustration: no lag, one strain, and no limit but the sugars given.
public final class GeeRamirez1988 {
  private static final double STEP_HR = 0.005;
  private static final double ZERO_KELVIN = 273.15;
  private static final double GAS_KCAL_PER_MOL_K = 1.987e-3;
  private static final double LONGEST_HR = 1000;

  /// Alcohol by volume for each mol of alcohol in a cubic metre.
  private static final double VOLUME_M3_PER_MOL = 5.837e-5;

  private GeeRamirez1988() {}

  /// What stands in the tank.
  ///
  /// @param glucoseMolPerM3 glucose
  /// @param maltoseMolPerM3 maltose
  /// @param maltotrioseMolPerM3 maltotriose
  /// @param yeastMolPerM3 yeast
  /// @param ethanolMolPerM3 alcohol
  /// @param alcoholFrac alcohol by volume
  public record Tank(
      double glucoseMolPerM3,
      double maltoseMolPerM3,
      double maltotrioseMolPerM3,
      double yeastMolPerM3,
      double ethanolMolPerM3,
      double alcoholFrac) {}

  /// The tank after some hours at one temperature.
  ///
  /// `dG/dt = -mu1 X`, `dM/dt = -mu2 X`, `dN/dt = -mu3 X`, `dX/dt = (0.134 mu1 + 0.268 mu2 + 0.402
  /// mu3) X`, `dE/dt = (1.92 mu1 + 3.84 mu2 + 5.76 mu3) X`
  ///
  /// - Valid: 8 to 20 C, the strain was not measured elsewhere; refused outside 5 to 20 C (warmer
  ///   the equations grow too stiff for the plain rule used) and above 1000 h.
  /// - Source: Engasser 1981, Gee and Ramirez 1988 and 1994, Ramirez and Maciejowski 2007;
  ///   second-hand. Solved by the classical Runge-Kutta rule in steps of 0.005 h.
  @Reckoned(
      name = "lager-model-three-sugars",
      says = "A published lager model that eats three sugars in turn; an illustration.",
      equation = "dG = -mu1 X; dM = -mu2 X; dN = -mu3 X; dE = (1.92 mu1 + 3.84 mu2 + 5.76 mu3) X",
      range = "8 to 20 C, refused outside 5 to 20 C; one lager strain, no lag; no forecast")
  @Source(key = "ramirez2007", trust = Trust.SECOND_HAND)
  public static Tank tank(
      @Span(least = 8, most = 20, beyond = "the lager model was fitted there only") @Usually(12)
          double fermentC,
      double heldHr,
      @Usually(100) double glucoseMolPerM3,
      @Usually(220) double maltoseMolPerM3,
      @Usually(40) double maltotrioseMolPerM3,
      @Usually(180) double yeastMolPerM3) {
    Require.within("ferment temperature in C", fermentC, 5, 20);
    Require.within("time in h", heldHr, 0, LONGEST_HR);
    double[] end =
        FixedStep.after(
            startMolPerM3(glucoseMolPerM3, maltoseMolPerM3, maltotrioseMolPerM3, yeastMolPerM3),
            heldHr,
            STEP_HR,
            slope(fermentC));
    return new Tank(end[0], end[1], end[2], end[3], end[4], VOLUME_M3_PER_MOL * end[4]);
  }

  /// Hours until the model's beer has so much alcohol.
  ///
  /// - Valid, Source: as above; refused where the sugars do not give so much.
  @Reckoned(
      name = "lager-model-time",
      says = "How long the three-sugar lager model takes to a strength; an illustration.",
      equation = "5.837e-5 E(t) = strength, solved for t",
      range = "8 to 20 C, refused outside 5 to 20 C; one lager strain, no lag; no forecast")
  @Source(key = "ramirez2007", trust = Trust.SECOND_HAND)
  public static double timeHr(
      @Span(least = 8, most = 20, beyond = "the lager model was fitted there only") @Usually(12)
          double fermentC,
      @Usually(0.05) double alcoholFrac,
      @Usually(100) double glucoseMolPerM3,
      @Usually(220) double maltoseMolPerM3,
      @Usually(40) double maltotrioseMolPerM3,
      @Usually(180) double yeastMolPerM3) {
    Require.within("ferment temperature in C", fermentC, 5, 20);
    Require.within("alcohol by volume as a share", alcoholFrac, 0, 0.2);
    double wanted = alcoholFrac / VOLUME_M3_PER_MOL;
    FixedStep.Slope slope = slope(fermentC);
    double[] here =
        startMolPerM3(glucoseMolPerM3, maltoseMolPerM3, maltotrioseMolPerM3, yeastMolPerM3);
    for (int hour = 0; hour < LONGEST_HR; hour++) {
      double[] next = FixedStep.after(here, 1, STEP_HR, slope);
      if (next[4] >= wanted) {
        double[] from = here;
        return hour + Root.between(0, 1, h -> FixedStep.after(from, h, STEP_HR, slope)[4] - wanted);
      }
      here = next;
    }
    throw new IllegalArgumentException(
        "the sugars give "
            + here[4] * VOLUME_M3_PER_MOL
            + " alcohol by volume at most; wanted is "
            + alcoholFrac
            + ".");
  }

  private static double[] startMolPerM3(
      double glucoseMolPerM3,
      double maltoseMolPerM3,
      double maltotrioseMolPerM3,
      double yeastMolPerM3) {
    return new double[] {
      Require.notBelow0("glucose in mol/m3", glucoseMolPerM3),
      Require.notBelow0("maltose in mol/m3", maltoseMolPerM3),
      Require.notBelow0("maltotriose in mol/m3", maltotrioseMolPerM3),
      Require.above0("yeast in mol/m3", yeastMolPerM3),
      0
    };
  }

  /// The model's slopes: glucose, maltose, maltotriose, yeast, alcohol.
  static FixedStep.Slope slope(double fermentC) {
    double rt = GAS_KCAL_PER_MOL_K * (fermentC + ZERO_KELVIN);
    double glucoseTop = Math.exp(35.77 - 22.6 / rt);
    double maltoseTop = Math.exp(16.4 - 11.3 / rt);
    double trioseTop = Math.exp(10.59 - 7.16 / rt);
    double glucoseHalf = Math.exp(-121.3 + 68.6 / rt);
    double maltoseHalf = Math.exp(-19.15 + 14.4 / rt);
    double trioseHalf = Math.exp(-26.78 + 19.9 / rt);
    double glucoseCurb = Math.exp(23.33 - 10.2 / rt);
    double maltoseCurb = Math.exp(55.61 - 26.3 / rt);
    return state -> {
      double[] x = {Math.max(0, state[0]), Math.max(0, state[1]), Math.max(0, state[2]), state[3]};
      double curbed = glucoseCurb / (glucoseCurb + x[0]);
      double glucose = glucoseTop * x[0] / (glucoseHalf + x[0]) * x[3];
      double maltose = maltoseTop * x[1] / (maltoseHalf + x[1]) * curbed * x[3];
      double triose =
          trioseTop
              * x[2]
              / (trioseHalf + x[2])
              * curbed
              * maltoseCurb
              / (maltoseCurb + x[1])
              * x[3];
      return new double[] {
        -glucose,
        -maltose,
        -triose,
        0.134 * glucose + 0.268 * maltose + 0.402 * triose,
        1.92 * glucose + 3.84 * maltose + 5.76 * triose
      };
    };
  }
}
