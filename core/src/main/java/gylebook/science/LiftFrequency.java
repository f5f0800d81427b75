package gylebook.science;

/// Lifting limits in United States units and for repeated lifts (revised equation of NIOSH).
///
/// The method leaves out hot, unstable and slippery loads: for a dripping bag the true margin is
/// smaller. Use a hoist above seven tenths of the limit; follow your local code.
public final class LiftFrequency {
  private static final double[] LIFTS_PER_MIN = {0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8};

  /// Up to 1 h, to 2 h, to 8 h.
  private static final double[][] FACTORS = {
    {1.00, 0.97, 0.94, 0.91, 0.88, 0.84, 0.80, 0.75, 0.70, 0.60},
    {0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.60, 0.50, 0.42, 0.35},
    {0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18}
  };

  private static final double LOAD_LB = 51;
  private static final double LEAST_INCH = 10;

  private LiftFrequency() {}

  /// Factor for repeated lifts.
  ///
  /// A table, straight lines between its rows
  ///
  /// - Valid: 0 to 8 lifts a minute and to 8 hours; refused beyond: the manual's table goes on.
  /// - Source: NIOSH 94-110, table 5, as several public codes of it have it alike.
  @Reckoned(
      name = "lift-frequency-factor",
      says = "By what factor repeated lifting lowers the lifting limit.",
      equation = "a table by lifts a minute and hours, straight lines between",
      range = "0 to 8 lifts a minute, to 1, 2 or 8 hours; refused beyond; follow your local code")
  @Source(key = "niosh-1994", at = "table 5", trust = Trust.SECOND_HAND)
  public static double frequencyFactor(double liftsPerMin, @Usually(1) double heldHr) {
    Require.within("lifts a minute", liftsPerMin, 0, LIFTS_PER_MIN[LIFTS_PER_MIN.length - 1]);
    Require.within("hours of lifting", heldHr, 0, 8);
    double[] row = FACTORS[heldHr <= 1 ? 0 : heldHr <= 2 ? 1 : 2];
    if (liftsPerMin <= LIFTS_PER_MIN[0]) {
      return row[0];
    }
    int i = 1;
    while (LIFTS_PER_MIN[i] < liftsPerMin) {
      i++;
    }
    double along = (liftsPerMin - LIFTS_PER_MIN[i - 1]) / (LIFTS_PER_MIN[i] - LIFTS_PER_MIN[i - 1]);
    return row[i - 1] + along * (row[i] - row[i - 1]);
  }

  /// Lifting limit by the formulas in inches.
  ///
  /// `51 lb (10/H)(1 - 0.0075 |V - 30|)(0.82 + 1.8/D)(1 - 0.0032 A) FM CM`
  ///
  /// - Valid: reach to 25 in, heights to 70 in, travel to 70 in, twist to 135 degrees; 0 beyond.
  ///   Reach and travel count as at least 10 in. It differs from the metric form by some parts in a
  ///   hundred.
  /// - Source: NIOSH 94-110, second-hand.
  @Reckoned(
      name = "lift-limit-inches",
      says = "How much one person may lift there, by the formulas in inches and pounds.",
      equation = "51 lb (10/H)(1 - 0.0075 |V - 30|)(0.82 + 1.8/D)(1 - 0.0032 A) FM CM",
      range = "reach to 25 in, heights to 70 in, twist to 135 degrees; 0 beyond: do not lift")
  @Source(key = "niosh-1994", at = "recommended weight limit", trust = Trust.SECOND_HAND)
  public static double limitLb(
      double reachInch,
      double heightInch,
      double travelInch,
      @Usually(0) double twistDegreeNumber,
      @Usually(1) double frequencyFactor,
      @Usually(0.90) double couplingFactor) {
    Require.notBelow0("reach in in", reachInch);
    Require.notBelow0("height of the hands in in", heightInch);
    Require.notBelow0("travel in in", travelInch);
    Require.within("twist", twistDegreeNumber, 0, 180);
    if (reachInch > 25 || heightInch > 70 || travelInch > 70 || twistDegreeNumber > 135) {
      return 0;
    }
    return multipliedLb(
        LOAD_LB,
        LEAST_INCH / Math.max(LEAST_INCH, reachInch),
        1 - 0.0075 * Math.abs(heightInch - 30),
        0.82 + 1.8 / Math.max(LEAST_INCH, travelInch),
        1 - 0.0032 * twistDegreeNumber,
        frequencyFactor,
        couplingFactor);
  }

  /// Lifting limit from multipliers that were looked up.
  ///
  /// `LC HM VM DM AM FM CM`
  ///
  /// - Valid: multipliers from 0 to 1; refused outside.
  /// - Source: as above.
  @Reckoned(
      name = "lift-limit-from-multipliers",
      says = "How much one person may lift, from multipliers that were looked up.",
      equation = "LC HM VM DM AM FM CM",
      range = "multipliers from 0 to 1; refused outside; follow your local code")
  @Source(key = "niosh-1994", at = "recommended weight limit", trust = Trust.SECOND_HAND)
  public static double multipliedLb(
      @Usually(LOAD_LB) double constantLb,
      double reachFactor,
      double heightFactor,
      double travelFactor,
      double twistFactor,
      double frequencyFactor,
      double couplingFactor) {
    double limit = Require.notBelow0("load constant in lb", constantLb);
    double[] factors = {
      reachFactor, heightFactor, travelFactor, twistFactor, frequencyFactor, couplingFactor
    };
    for (double factor : factors) {
      limit *= Require.within("multiplier", factor, 0, 1);
    }
    return limit;
  }
}
