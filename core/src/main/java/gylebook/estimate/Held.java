package gylebook.estimate;

import gylebook.units.AnyUnit;
import java.util.Arrays;

/// What is held of one quantity: middle, spread, and the range that holds nine in ten.
///
/// @param mean middle
/// @param doubt standard deviation
/// @param low one in twenty lies below
/// @param high one in twenty lies above
@AnyUnit("any quantity; who asks knows the unit")
public record Held(double mean, double doubt, double low, double high) {
  private static final double LOW_FRAC = 0.05;

  /// Half the range that holds nine in ten of a normal spread, in standard deviations.
  public static final double NINE_IN_TEN = 1.6448536269514722;

  /// From a column of twins.
  public static Held of(double[] column) {
    double[] sorted = column.clone();
    Arrays.sort(sorted);
    double mean = SquareRootFilter.mean(column);
    double spread = column.length > 1 ? SquareRootFilter.variance(column, mean) : 0;
    return new Held(
        mean, Math.sqrt(spread), quantile(sorted, LOW_FRAC), quantile(sorted, 1 - LOW_FRAC));
  }

  /// From middle and spread alone, as a normal distribution has it.
  public static Held normal(double mean, double doubt) {
    return new Held(mean, doubt, mean - NINE_IN_TEN * doubt, mean + NINE_IN_TEN * doubt);
  }

  static double quantile(double[] sorted, double shareFrac) {
    double place = shareFrac * (sorted.length + 1) - 1;
    int below = Math.clamp((int) Math.floor(place), 0, sorted.length - 1);
    int above = Math.min(below + 1, sorted.length - 1);
    double part = Math.clamp(place - below, 0, 1);
    return sorted[below] + part * (sorted[above] - sorted[below]);
  }

  /// Whether a value lies in the range.
  public boolean holds(double value) {
    return value >= low && value <= high;
  }
}
