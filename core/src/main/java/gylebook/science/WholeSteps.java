package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/// Doses on the steps of a scale, near the doses that would be best without one: good ones to begin
/// a [StepSearch] with, and often the best.
@AnyUnit("steps of any scale, and whatever regret is counted in")
final class WholeSteps {
  private static final int MOST_WALKS = 2000;
  private static final int MOST_TURNED = 8;
  private static final double LEAST_GAIN = 1e-9;

  private final List<Integer> house;
  private final ToDoubleFunction<double[]> regret;
  private double[] best;
  private double least;

  private WholeSteps(double[] start, List<Integer> house, ToDoubleFunction<double[]> regret) {
    this.house = house;
    this.regret = regret;
    this.best = start;
    this.least = regret.applyAsDouble(start);
  }

  /// Turns each dose down or up, all ways, then goes one step up or down, one up and another up or
  /// down, or leaves one out, while it helps.
  ///
  /// @param relaxed steps as they would be without a scale
  /// @param house those of them that may be changed
  /// @param regret how bad doses are; the smaller the better
  static double[] near(double[] relaxed, List<Integer> house, ToDoubleFunction<double[]> regret) {
    double[] rounded = Arrays.stream(relaxed).map(Math::rint).toArray();
    WholeSteps steps = new WholeSteps(rounded, house, regret);
    corners(relaxed).forEach(steps::take);
    boolean nearer = true;
    for (int walk = 0; walk < MOST_WALKS && nearer; walk++) {
      nearer = false;
      for (double[] tried : steps.neighbours()) {
        nearer |= steps.take(tried);
      }
    }
    return steps.best;
  }

  private boolean take(double[] tried) {
    double found = regret.applyAsDouble(tried);
    boolean nearer = found < least - LEAST_GAIN;
    if (nearer) {
      best = tried;
      least = found;
    }
    return nearer;
  }

  private static List<double[]> corners(double[] relaxed) {
    List<double[]> found = new ArrayList<>();
    found.add(Arrays.stream(relaxed).map(Math::floor).toArray());
    int turned = 0;
    for (int i = 0; i < relaxed.length && turned < MOST_TURNED; i++) {
      if (relaxed[i] > 0) {
        turned++;
        for (double[] corner : List.copyOf(found)) {
          double[] other = corner.clone();
          other[i] += 1;
          found.add(other);
        }
      }
    }
    return found;
  }

  private List<double[]> neighbours() {
    List<double[]> found = new ArrayList<>();
    for (int i : house) {
      for (int up : new int[] {-1, 1}) {
        for (int j : house) {
          for (int other : new int[] {-1, 1}) {
            double[] moved = best.clone();
            moved[i] += up;
            moved[j] += i == j ? 0 : other;
            found.add(moved);
          }
        }
      }
      double[] none = best.clone();
      none[i] = 0;
      found.add(none);
    }
    found.removeIf(tried -> Arrays.stream(tried).anyMatch(count -> count < 0));
    return found;
  }
}
