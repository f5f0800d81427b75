package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/// Doses on the steps of a scale, near the doses that would be best without one.
@AnyUnit("steps of any scale, and whatever regret is counted in")
public final class WholeSteps {
  private static final int MOST_WALKS = 2000;
  private static final double LEAST_GAIN = 1e-9;

  private WholeSteps() {}

  /// Rounds, then goes one step up or down, one up and another down, or leaves one out, while it
  /// helps.
  ///
  /// @param relaxed steps as they would be without a scale
  /// @param regret how bad doses are; the smaller the better
  public static double[] near(double[] relaxed, ToDoubleFunction<double[]> regret) {
    double[] best = Arrays.stream(relaxed).map(Math::rint).toArray();
    double least = regret.applyAsDouble(best);
    boolean nearer = true;
    for (int walk = 0; walk < MOST_WALKS && nearer; walk++) {
      nearer = false;
      for (double[] tried : neighbours(best)) {
        double found = regret.applyAsDouble(tried);
        if (found < least - LEAST_GAIN) {
          best = tried;
          least = found;
          nearer = true;
        }
      }
    }
    return best;
  }

  private static List<double[]> neighbours(double[] at) {
    List<double[]> found = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      for (int j = 0; j < at.length; j++) {
        double[] swapped = at.clone();
        swapped[i] += 1;
        swapped[j] -= i == j ? 0 : 1;
        found.add(swapped);
      }
      double[] less = at.clone();
      less[i] -= 1;
      found.add(less);
      double[] none = at.clone();
      none[i] = 0;
      found.add(none);
    }
    found.removeIf(tried -> Arrays.stream(tried).anyMatch(count -> count < 0));
    return found;
  }
}
