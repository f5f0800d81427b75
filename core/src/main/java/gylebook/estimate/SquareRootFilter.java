package gylebook.estimate;

import gylebook.science.Source;
import gylebook.science.Trust;
import gylebook.units.AnyUnit;

/// Corrects an ensemble by one scalar reading at a time: no matrices, no random numbers.
///
/// Each row is one quantity over all members. The mean moves by the gain times the miss; each
/// member's distance from the mean shrinks so that the spread is what the Kalman filter would
/// leave. Chance correlations of a small ensemble are damped.
@AnyUnit("rows of every quantity")
final class SquareRootFilter {
  private SquareRootFilter() {}

  /// What a reading met.
  ///
  /// @param miss reading less what was expected
  /// @param spread2 variance of what was expected
  /// @param noise2 variance of the reading
  record Met(double miss, double spread2, double noise2) {
    /// The miss in its own doubts.
    double surpriseRatio() {
      return miss / Math.sqrt(spread2 + noise2);
    }

    /// Logarithm of the reading's likelihood, without the constant.
    double logLikelihood() {
      double s = spread2 + noise2;
      return -0.5 * (miss * miss / s + Math.log(s));
    }
  }

  /// What a reading would meet.
  static Met met(double[] expected, double read, double noise2) {
    double mean = mean(expected);
    return new Met(read - mean, variance(expected, mean), noise2);
  }

  /// `K = cov(z, y)/(s + r)`, mean by `K d`, members by `-alpha K y'`, `alpha = 1/(1 + sqrt(r/(s +
  /// r)))`.
  @Source(key = "whitaker-hamill-2002", at = "serial square root", trust = Trust.SECOND_HAND)
  static void correct(Iterable<double[]> rows, double[] expected, Met met, boolean damped) {
    int members = expected.length;
    double mean = mean(expected);
    double s = met.spread2();
    if (!(s > 0)) {
      return;
    }
    double total = s + met.noise2();
    double alpha = 1 / (1 + Math.sqrt(met.noise2() / total));
    double[] off = new double[members];
    for (int j = 0; j < members; j++) {
      off[j] = expected[j] - mean;
    }
    for (double[] row : rows) {
      correct(row, off, met, alpha, damped);
    }
  }

  private static void correct(double[] row, double[] off, Met met, double alpha, boolean damped) {
    int members = off.length;
    double mean = mean(row);
    double cross = 0;
    double own = 0;
    for (int j = 0; j < members; j++) {
      double z = row[j] - mean;
      cross += z * off[j];
      own += z * z;
    }
    cross /= members - 1;
    own /= members - 1;
    if (!(own > 0)) {
      return;
    }
    double gain = cross / (met.spread2() + met.noise2());
    if (damped) {
      gain *= dampedRatio(cross * cross / (own * met.spread2()), members);
    }
    for (int j = 0; j < members; j++) {
      row[j] += gain * (met.miss() - alpha * off[j]);
    }
  }

  /// `max(0, 1 - (1 - rho^2)/((N - 2) rho^2))`: what chance alone would show counts for nothing.
  static double dampedRatio(double squaredCorrelation, int members) {
    if (!(squaredCorrelation > 0)) {
      return 0;
    }
    double rho2 = Math.min(1, squaredCorrelation);
    return Math.max(0, 1 - (1 - rho2) / ((members - 2) * rho2));
  }

  static double mean(double[] column) {
    double sum = 0;
    for (double each : column) {
      sum += each;
    }
    return sum / column.length;
  }

  static double variance(double[] column, double mean) {
    double sum = 0;
    for (double each : column) {
      sum += (each - mean) * (each - mean);
    }
    return sum / (column.length - 1);
  }

  static double covariance(double[] a, double[] b) {
    double meanA = mean(a);
    double meanB = mean(b);
    double sum = 0;
    for (int j = 0; j < a.length; j++) {
      sum += (a[j] - meanA) * (b[j] - meanB);
    }
    return sum / (a.length - 1);
  }
}
