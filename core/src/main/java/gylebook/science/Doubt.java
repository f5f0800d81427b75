package gylebook.science;

import gylebook.units.AnyUnit;

/// Standard uncertainties by the Guide (GUM): where they come from and how they add.
@AnyUnit("a doubt has the unit of what it doubts")
public final class Doubt {
  private Doubt() {}

  /// From limits within which everything is equally likely: `u = a / sqrt(3)`.
  @Source(key = "gum", at = "4.3.7", trust = Trust.READ)
  @Reckoned(
      name = "doubt-from-limits",
      says = "What standard uncertainty do limits of plus or minus mean?",
      equation = "u = a / sqrt(3)",
      range = "a limit of 0 or more; refused otherwise")
  public static double fromLimitsK(double limitK) {
    return Require.notBelow0("limit", limitK) / Math.sqrt(3);
  }

  /// From the last digit shown: `u = d / sqrt(12)`.
  @Source(key = "gum", at = "F.2.2.1", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "doubt-from-resolution",
      says = "What standard uncertainty does the last digit shown mean?",
      equation = "u = d / sqrt(12)",
      range = "a digit of 0 or more; refused otherwise")
  public static double fromResolutionK(@Usually(0.1) double digitK) {
    return Require.notBelow0("resolution", digitK) / Math.sqrt(12);
  }

  /// From an expanded uncertainty of a certificate: `u = U / k`.
  @Source(key = "gum", at = "4.3.3", trust = Trust.COMPUTED)
  @Reckoned(
      name = "doubt-from-certificate",
      says = "What standard uncertainty does a certificate's expanded uncertainty mean?",
      equation = "u = U / k",
      range = "a coverage factor above 0; refused otherwise")
  public static double fromExpandedK(double expandedK, @Usually(2) double coverageFactor) {
    return Require.notBelow0("expanded uncertainty", expandedK)
        / Require.above0("coverage factor", coverageFactor);
  }

  /// Several independent doubts of one reading together: the root of the sum of squares.
  @Source(key = "gum", at = "5.1.2", trust = Trust.READ)
  @Reckoned(
      name = "doubt-combined",
      says = "What do several independent doubts of one reading make together?",
      equation = "u = sqrt(u1^2 + u2^2 + ...)",
      range = "independent doubts of 0 or more; refused otherwise")
  public static double combinedK(
      double firstK,
      double secondK,
      @Usually(0) double thirdK,
      @Usually(0) double fourthK,
      @Usually(0) double fifthK,
      @Usually(0) double sixthK) {
    double squares = 0;
    for (double each : new double[] {firstK, secondK, thirdK, fourthK, fifthK, sixthK}) {
      squares += Math.pow(Require.notBelow0("doubt", each), 2);
    }
    return Math.sqrt(squares);
  }

  /// Doubt of a result whose inputs are correlated.
  ///
  /// `u^2 = sum_ij c_i c_j u_i u_j r_ij`. Refused where the lists differ in length or the sum is
  /// negative, which no true correlation matrix gives.
  @Source(key = "gum", at = "equation 16", trust = Trust.READ)
  public static double correlated(double[] slopes, double[] doubts, double[][] correlations) {
    if (slopes.length != doubts.length || slopes.length != correlations.length) {
      throw new IllegalArgumentException(
          "there are "
              + slopes.length
              + " slopes, "
              + doubts.length
              + " doubts and "
              + correlations.length
              + " rows of correlations; they must be equally many.");
    }
    double square = 0;
    for (int i = 0; i < slopes.length; i++) {
      for (int j = 0; j < slopes.length; j++) {
        square += slopes[i] * slopes[j] * doubts[i] * doubts[j] * correlations[i][j];
      }
    }
    return Math.sqrt(Require.notBelow0("sum of squares", square));
  }

  /// Mean of repeated readings.
  @Source(key = "gum", at = "4.2.1", trust = Trust.READ)
  public static double mean(double... readings) {
    double sum = 0;
    for (double each : readings) {
      sum += each;
    }
    return sum / Require.above0("number of readings", readings.length);
  }

  /// Standard uncertainty of the mean of repeated readings: `s / sqrt(n)`, at least two of them.
  @Source(key = "gum", at = "4.2.3", trust = Trust.READ)
  public static double ofMean(double... readings) {
    return Math.sqrt(scatter(readings, readings) / readings.length);
  }

  /// Correlation of two series of simultaneous readings.
  @Source(key = "gum", at = "5.2.3 and C.3.6", trust = Trust.READ)
  public static double correlation(double[] first, double[] second) {
    return scatter(first, second) / Math.sqrt(scatter(first, first) * scatter(second, second));
  }

  private static double scatter(double[] first, double[] second) {
    if (first.length != second.length || first.length < 2) {
      throw new IllegalArgumentException(
          "there are "
              + first.length
              + " and "
              + second.length
              + " readings; at least two of each, and equally many, are needed.");
    }
    double firstMean = mean(first);
    double secondMean = mean(second);
    double sum = 0;
    for (int i = 0; i < first.length; i++) {
      sum += (first[i] - firstMean) * (second[i] - secondMean);
    }
    return sum / (first.length - 1);
  }
}
