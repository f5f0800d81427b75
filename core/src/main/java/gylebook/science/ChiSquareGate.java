package gylebook.science;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/// How much surprise is too much: limits of squared misses counted in their own doubts.
public final class ChiSquareGate {
  private static final int MOST_FREEDOM = 1_000_000;

  private ChiSquareGate() {}

  /// Limit of `d^T S^-1 d` for `freedom` numbers at once, passed by this share when all is honest.
  @Source(key = "bar-shalom-2001", at = "validation gate", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "surprise-gate",
      says = "How large may a squared surprise be before the reading is doubted?",
      equation = "P(chi2(n) < gate) = share",
      range = "normal errors; shares between 0 and 1, 1 to 1 000 000 numbers; refused otherwise")
  public static double gateNumber(@Usually(0.997) double shareFrac, @Usually(1) int freedomCount) {
    Require.within("numbers read at once", freedomCount, 1, MOST_FREEDOM);
    if (!(shareFrac > 0 && shareFrac < 1)) {
      throw new IllegalArgumentException("share is " + shareFrac + "; it must lie inside 0 and 1.");
    }
    return new ChiSquaredDistribution(freedomCount).inverseCumulativeProbability(shareFrac);
  }

  /// Where the mean of many squared surprises must lie at least or at most: NIS and NEES.
  @Source(key = "bar-shalom-2001", at = "consistency tests", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "surprise-mean-limit",
      says = "Where may the mean of many squared surprises lie at this share?",
      equation = "limit = chi2(share, N n) / N",
      range = "N independent surprises of n numbers each")
  public static double meanLimitNumber(
      @Usually(0.975) double shareFrac, int surprisesCount, @Usually(1) int freedomCount) {
    Require.within("surprises", surprisesCount, 1, MOST_FREEDOM);
    Require.within("numbers read at once", freedomCount, 1, MOST_FREEDOM);
    Require.within("all numbers", (double) surprisesCount * freedomCount, 1, MOST_FREEDOM);
    return gateNumber(shareFrac, surprisesCount * freedomCount) / surprisesCount;
  }

  /// Weight of a surprise after Huber: 1 up to `c`, then `c/|z|`.
  @Source(key = "huber-1964", at = "weight of the proposal", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "huber-weight",
      says = "How much should an improbable reading still count?",
      equation = "w = min(1, c / |z|)",
      range = "z the miss in its own doubts; c above 0, 1.345 is usual")
  public static double huberFrac(double surpriseRatio, @Usually(1.345) double kneeRatio) {
    Require.above0("knee", kneeRatio);
    double z = Math.abs(Require.within("surprise", surpriseRatio, -1e9, 1e9));
    return z <= kneeRatio ? 1 : kneeRatio / z;
  }
}
