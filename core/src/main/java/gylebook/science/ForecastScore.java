package gylebook.science;

import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.special.Erf;

/// How good a forecast with a doubt was, once one knows. Lower is better; the score has the unit of
/// what was forecast, and for a forecast without doubt it is the plain error.
public final class ForecastScore {
  private static final double SELDOM_FRAC = 0.025;

  private ForecastScore() {}

  /// Continuous ranked probability score of a normal forecast.
  ///
  /// `s (z (2 Phi(z) - 1) + 2 phi(z) - 1/sqrt(pi))`, z = (seen - mean)/s
  ///
  /// - Valid: a spread above 0; refused otherwise.
  /// - Source: Gneiting and Raftery 2007, as an open library's description prints it.
  @Reckoned(
      name = "score-of-normal-forecast",
      says = "How good a normal forecast was: its ranked probability score.",
      equation = "s (z (2 Phi(z) - 1) + 2 phi(z) - 1/sqrt(pi)), z = (seen - mean)/s",
      range = "a spread above 0, refused otherwise; in the unit of the forecast")
  @Source(key = "gneiting2007", at = "CRPS of the normal", trust = Trust.SECOND_HAND)
  public static double normalNumber(double meanNumber, double spreadNumber, double seenNumber) {
    Require.above0("spread", spreadNumber);
    double z = finiteNumber("seen less mean", seenNumber - meanNumber) / spreadNumber;
    double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    return spreadNumber * (z * (2 * belowFrac(z) - 1) + 2 * density - 1 / Math.sqrt(Math.PI));
  }

  /// The same score of a forecast given as samples.
  ///
  /// `mean |x - seen| - sum |x_i - x_j| / (2 M^2)`
  ///
  /// - Valid: one sample or more.
  /// - Source: as above.
  @Source(key = "gneiting2007", at = "CRPS of an ensemble", trust = Trust.SECOND_HAND)
  public static double membersNumber(double[] membersNumber, double seenNumber) {
    int m = membersNumber.length;
    Require.above0("number of samples", m);
    return missNumber(membersNumber, seenNumber) - spreadNumber(membersNumber) / (2.0 * m * m);
  }

  /// The same without the penalty for few samples.
  ///
  /// `mean |x - seen| - sum |x_i - x_j| / (2 M (M - 1))`
  ///
  /// - Valid: two samples or more; it may come out a little below 0.
  /// - Source: as above.
  @Source(key = "gneiting2007", at = "fair form", trust = Trust.SECOND_HAND)
  public static double fairNumber(double[] membersNumber, double seenNumber) {
    int m = membersNumber.length;
    Require.above0("number of samples less one", m - 1.0);
    return missNumber(membersNumber, seenNumber)
        - spreadNumber(membersNumber) / (2.0 * m * (m - 1));
  }

  /// Score of a range: its width, and a penalty where the truth was outside.
  ///
  /// `(u - l) + (2/a) (l - y)+ + (2/a) (y - u)+`, a the share left out
  ///
  /// - Valid: an upper end not below the lower, a share between 0 and 1; refused otherwise.
  /// - Source: as above.
  @Reckoned(
      name = "score-of-range",
      says = "How good a forecast range was: its width and what it missed by.",
      equation = "(u - l) + (2/a) (l - y)+ + (2/a) (y - u)+",
      range = "ends in order, a left-out share above 0 and below 1; refused otherwise")
  @Source(key = "gneiting2007", at = "interval score", trust = Trust.SECOND_HAND)
  public static double rangeNumber(
      double leastNumber, double mostNumber, double seenNumber, @Usually(0.1) double leftOutFrac) {
    Require.notBelow0("width of the range", mostNumber - leastNumber);
    Require.within("left-out share", leftOutFrac, 1e-9, 1 - 1e-9);
    finiteNumber("seen", seenNumber);
    double missed = Math.max(0, leastNumber - seenNumber) + Math.max(0, seenNumber - mostNumber);
    return mostNumber - leastNumber + 2 / leftOutFrac * missed;
  }

  /// Pinball loss of a forecast quantile.
  ///
  /// `max(q (y - x), (q - 1)(y - x))`
  ///
  /// - Valid: a share from 0 to 1; refused otherwise.
  /// - Source: as above.
  @Reckoned(
      name = "score-of-quantile",
      says = "How good a forecast quantile was: its pinball loss.",
      equation = "max(q (y - x), (q - 1)(y - x))",
      range = "a share from 0 to 1; refused otherwise")
  @Source(key = "gneiting2007", at = "quantile score", trust = Trust.SECOND_HAND)
  public static double quantileNumber(
      @Usually(0.9) double belowFrac, double forecastNumber, double seenNumber) {
    Require.within("share below", belowFrac, 0, 1);
    double above = finiteNumber("seen less forecast", seenNumber - forecastNumber);
    return Math.max(belowFrac * above, (belowFrac - 1) * above);
  }

  /// Where the truth fell in a normal forecast: even between 0 and 1 when forecasts are honest.
  ///
  /// `Phi((seen - mean)/s)`
  ///
  /// - Valid: a spread above 0; refused otherwise.
  /// - Source: a definition.
  @Reckoned(
      name = "place-in-forecast",
      says = "Where in a normal forecast the truth fell, from 0 to 1.",
      equation = "Phi((seen - mean)/s)",
      range = "a spread above 0; refused otherwise")
  @Source(key = "gneiting2007", at = "probability integral transform", trust = Trust.SECOND_HAND)
  public static double placeFrac(double meanNumber, double spreadNumber, double seenNumber) {
    Require.above0("spread", spreadNumber);
    return belowFrac(finiteNumber("seen less mean", seenNumber - meanNumber) / spreadNumber);
  }

  /// How much better a forecast did than a plainer one.
  ///
  /// `1 - score/plain`
  ///
  /// - Valid: scores of the same things in the same unit; 1 is perfect, 0 no better, below 0 worse.
  ///   Refused where the plainer one was perfect.
  /// - Source: a definition.
  ///
  /// @param scoreNumber mean score of the forecasts
  /// @param plainNumber mean score of the plainer ones: the last gyle's number, or the prior
  @Reckoned(
      name = "skill-of-forecast",
      says = "How much better forecasts did than plainer ones, by their mean scores.",
      equation = "1 - score/plain",
      range = "scores of the same things; 1 perfect, 0 no better, below 0 worse")
  @Source(key = "gneiting2007", at = "skill", trust = Trust.SECOND_HAND)
  public static double skillRatio(double scoreNumber, double plainNumber) {
    Require.notBelow0("score", scoreNumber);
    Require.within("plainer score", plainNumber, 1e-9, Double.MAX_VALUE);
    return 1 - scoreNumber / plainNumber;
  }

  /// Whether so many held ranges are what honest ones hold.
  ///
  /// @param heldFrac share that held
  /// @param fewerFrac chance that honest ranges hold so few or fewer
  /// @param moreFrac chance that honest ranges hold so many or more
  /// @param honest neither chance is below 2.5 %
  public record Held(double heldFrac, double fewerFrac, double moreFrac, boolean honest) {}

  /// How many forecast ranges held, and whether that many is like honest ranges.
  ///
  /// `P(X <= k)` and `P(X >= k)` of a binomial of n and the share claimed
  ///
  /// - Valid: ranges that hold or miss independently of each other: one of each gyle, not ten of
  ///   one. Few of them tell little. Refused where more held than there were.
  /// - Source: the binomial distribution.
  ///
  /// @param claimedFrac share that the ranges were said to hold
  @Reckoned(
      name = "ranges-held",
      says = "Whether as many forecast ranges held as honest ones would.",
      equation = "P(X <= k), P(X >= k), X binomial of n and the share claimed",
      range = "independent ranges, one of each gyle; below 2.5 % the claim was not honest")
  @Source(key = "gneiting2007", at = "coverage", trust = Trust.SECOND_HAND)
  public static Held held(int heldCount, int rangesCount, @Usually(0.9) double claimedFrac) {
    Require.within("number of ranges", rangesCount, 1, 1_000_000);
    Require.within("ranges that held", heldCount, 0, rangesCount);
    Require.within("share claimed", claimedFrac, 0, 1);
    BinomialDistribution honest = new BinomialDistribution(rangesCount, claimedFrac);
    double fewer = honest.cumulativeProbability(heldCount);
    double more = 1 - (heldCount == 0 ? 0 : honest.cumulativeProbability(heldCount - 1));
    return new Held(
        (double) heldCount / rangesCount, fewer, more, fewer >= SELDOM_FRAC && more >= SELDOM_FRAC);
  }

  /// How uneven a histogram of ranks is; compare it with a chi-square of one bin less.
  ///
  /// `sum (o - e)^2/e`
  ///
  /// - Valid: two bins or more and some counts.
  /// - Source: Pearson's statistic.
  @Source(key = "gneiting2007", at = "rank histogram", trust = Trust.SECOND_HAND)
  public static double unevenNumber(double[] seenCount) {
    double sum = 0;
    for (double count : seenCount) {
      sum += Require.notBelow0("count", count);
    }
    double expected = Require.above0("counts together", sum) / seenCount.length;
    double uneven = 0;
    for (double count : seenCount) {
      uneven += (count - expected) * (count - expected) / expected;
    }
    return uneven;
  }

  private static double missNumber(double[] membersNumber, double seenNumber) {
    double sum = 0;
    for (double member : membersNumber) {
      sum += Math.abs(finiteNumber("sample less seen", member - seenNumber));
    }
    return sum / membersNumber.length;
  }

  private static double spreadNumber(double[] membersNumber) {
    double sum = 0;
    for (double one : membersNumber) {
      for (double other : membersNumber) {
        sum += Math.abs(one - other);
      }
    }
    return sum;
  }

  private static double belowFrac(double standardNumber) {
    return Erf.erfc(-standardNumber / Math.sqrt(2)) / 2;
  }

  private static double finiteNumber(String what, double valueNumber) {
    return Require.within(what, valueNumber, -Double.MAX_VALUE, Double.MAX_VALUE);
  }
}
