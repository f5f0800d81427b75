package gylebook.science;

import gylebook.units.AnyUnit;
import org.hipparchus.distribution.continuous.TDistribution;

/// What is learnt once a gyle and differs a little each time: boil-off, retained wort, yield.
///
/// Middle and scatter are both unknown; the belief is normal-inverse-gamma, conjugate to normal
/// data, so a few gyles already give an honest range for the next one.
@AnyUnit("learns a number of any unit; result and doubt have the unit of what went in")
public final class RateLearning {
  private static final double MOST = 1e9;

  private RateLearning() {}

  /// The belief: middle `m`, worth `k` data; scatter from `a` and `b`.
  ///
  /// @param meanNumber middle
  /// @param worthCount how many gyles the middle is worth
  /// @param shapeNumber half as many gyles as the scatter is worth
  /// @param scatterNumber sum of squares that goes with it, halved; the unit's square
  public record Learnt(
      double meanNumber, double worthCount, double shapeNumber, double scatterNumber) {
    /// Refuses a belief that is none.
    public Learnt {
      Require.within("mean", meanNumber, -MOST, MOST);
      Require.above0("worth of the mean", worthCount);
      Require.above0("shape of the scatter", shapeNumber);
      Require.above0("scatter", scatterNumber);
    }

    /// `k' = k + n`, `m' = (k m + n x)/k'`, `a' = a + n/2`, `b' = b + S/2 + k n (x - m)^2/(2 k')`.
    @Source(key = "murphy-2007", at = "normal-inverse-gamma", trust = Trust.SECOND_HAND)
    public Learnt after(double... seen) {
      if (seen.length == 0) {
        return this;
      }
      double sum = 0;
      for (double each : seen) {
        sum += Require.within("value seen", each, -MOST, MOST);
      }
      double n = seen.length;
      double mean = sum / n;
      double squares = 0;
      for (double each : seen) {
        squares += (each - mean) * (each - mean);
      }
      double k = worthCount + n;
      double off = mean - meanNumber;
      return new Learnt(
          (worthCount * meanNumber + sum) / k,
          k,
          shapeNumber + n / 2,
          scatterNumber + squares / 2 + worthCount * n * off * off / (2 * k));
    }

    /// Half the width of the range that holds the next value with this share.
    ///
    /// Student's t with `2a` degrees of freedom and scale `sqrt(b (k + 1)/(a k))`.
    @Source(key = "murphy-2007", at = "posterior predictive", trust = Trust.SECOND_HAND)
    public double halfWidthNumber(double shareFrac) {
      Require.within("share", shareFrac, 1e-6, 1 - 1e-6);
      double scale = Math.sqrt(scatterNumber * (worthCount + 1) / (shapeNumber * worthCount));
      return scale
          * new TDistribution(2 * shapeNumber).inverseCumulativeProbability(0.5 + shareFrac / 2);
    }
  }

  /// What to expect next and how far off it may be.
  ///
  /// @param meanNumber middle
  /// @param halfWidthNumber nine in ten lie so far on either side
  public record Expected(double meanNumber, double halfWidthNumber) {}

  /// One more gyle's value, and what it makes of the next.
  @Source(key = "murphy-2007", at = "normal-inverse-gamma", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "next-gyle",
      says = "What will the next gyle give, after one more was measured?",
      equation = "m' = (k m + x)/(k + 1); range from Student's t with 2a' degrees of freedom",
      range = "values scattered normally round a middle that stays; nine in ten lie in the range")
  public static Expected next(
      double meanNumber,
      @Usually(2) double worthCount,
      @Usually(3) double shapeNumber,
      double scatterNumber,
      double seenNumber) {
    Learnt learnt =
        new Learnt(meanNumber, worthCount, shapeNumber, scatterNumber).after(seenNumber);
    return new Expected(learnt.meanNumber(), learnt.halfWidthNumber(0.9));
  }
}
