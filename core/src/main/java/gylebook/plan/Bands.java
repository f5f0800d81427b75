package gylebook.plan;

import gylebook.units.AnyUnit;
import java.util.Arrays;
import java.util.function.DoublePredicate;

/// Quantiles and shares of variance of ensemble columns.
@AnyUnit("columns of any quantity")
final class Bands {
  private static final double LOW_FRAC = 0.05;
  private static final double HIGH_FRAC = 0.95;

  private Bands() {}

  /// The band of a column; days without a value are left out.
  static Band of(double[] column) {
    return sorted(Arrays.stream(column).filter(Double::isFinite).toArray());
  }

  /// The band of a column without gaps, which is put in order.
  static Band sorted(double[] sorted) {
    Arrays.sort(sorted);
    if (sorted.length == 0) {
      return new Band(Double.NaN, Double.NaN, Double.NaN);
    }
    return new Band(at(sorted, LOW_FRAC), at(sorted, 0.5), at(sorted, HIGH_FRAC));
  }

  /// A quantile on a straight line between the neighbours.
  static double at(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int i = (int) place;
    int next = Math.min(i + 1, sorted.length - 1);
    return sorted[i] + (place - i) * (sorted[next] - sorted[i]);
  }

  /// The share of the days of which something holds.
  static double shareFrac(double[] column, DoublePredicate holds) {
    return (double) Arrays.stream(column).filter(holds).count() / column.length;
  }

  static double mean(double[] column) {
    double sum = 0;
    for (double value : column) {
      sum += value;
    }
    return sum / column.length;
  }

  /// Covariance of a column with draws, whose own variance is 1; the column's variance comes along.
  static double[] slopeAndShare(double[] column, double mean, double[] draws) {
    double drawMean = mean(draws);
    double together = 0;
    double drawSquares = 0;
    double squares = 0;
    for (int i = 0; i < column.length; i++) {
      double off = column[i] - mean;
      double drawOff = draws[i] - drawMean;
      together += off * drawOff;
      drawSquares += drawOff * drawOff;
      squares += off * off;
    }
    if (!(drawSquares > 0) || !(squares > 0)) {
      return new double[] {0, 0};
    }
    return new double[] {together / drawSquares, together * together / (drawSquares * squares)};
  }
}
