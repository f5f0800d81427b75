package gylebook.science;

/// A belief in one number meets one reading: each counts by the inverse square of its doubt.
///
/// Both are taken as normal and independent. A reading that shares its error with the belief (the
/// same thermometer once more) counts for less than this says.
public final class ScalarKalman {
  private ScalarKalman() {}

  /// A belief after a reading.
  ///
  /// @param meanC middle of the new belief
  /// @param doubtK its standard deviation
  /// @param gainFrac share of the difference that was followed
  /// @param surpriseRatio how many of its own standard deviations the reading was off
  public record Updated(double meanC, double doubtK, double gainFrac, double surpriseRatio) {}

  /// `K = P/(P + R)`, `x' = x + K (y - x)`, `P' = (1 - K) P`.
  @Source(key = "kalman-1960", at = "scalar form", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "belief-after-reading",
      says = "What to believe of a temperature after one more reading?",
      equation = "K = P / (P + R), x' = x + K (y - x), P' = (1 - K) P; P, R squared doubts",
      range = "independent normal errors; doubts above 0, refused otherwise")
  public static Updated updated(
      double beliefC, double beliefDoubtK, double readC, double readDoubtK) {
    double p = Math.pow(Require.above0("doubt of the belief", beliefDoubtK), 2);
    double r = Math.pow(Require.above0("doubt of the reading", readDoubtK), 2);
    double missK =
        Require.within("reading", readC, -273.15, 2000)
            - Require.within("belief", beliefC, -273.15, 2000);
    double gainFrac = p / (p + r);
    return new Updated(
        beliefC + gainFrac * missK,
        Math.sqrt((1 - gainFrac) * p),
        gainFrac,
        missK / Math.sqrt(p + r));
  }

  /// Doubt just before each reading of something that wanders, once it has settled.
  ///
  /// The scalar Riccati equation `P = P R/(P + R) + q` solved: `P = (q + sqrt(q^2 + 4 q R))/2`.
  @Source(key = "kalman-1960", at = "steady state of the scalar form", trust = Trust.COMPUTED)
  @Reckoned(
      name = "steady-doubt",
      says = "How well is something known that wanders between regular readings?",
      equation = "P = (q + sqrt(q^2 + 4 q R)) / 2; q, R squared doubts of a step and a reading",
      range = "a random walk, before each reading; doubts above 0, refused otherwise")
  public static double steadyDoubtK(double stepDoubtK, double readDoubtK) {
    double q = Math.pow(Require.above0("doubt of a step", stepDoubtK), 2);
    double r = Math.pow(Require.above0("doubt of the reading", readDoubtK), 2);
    return Math.sqrt((q + Math.sqrt(q * q + 4 * q * r)) / 2);
  }
}
