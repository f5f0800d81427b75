package gylebook.science;

import gylebook.units.AnyUnit;

/// The classical Runge-Kutta rule of fourth order with a fixed step, for the two published models
/// that need a solver when asked. The tests hold it against an adaptive solver of order eight.
@AnyUnit("moves a state of any units")
final class FixedStep {
  private FixedStep() {}

  /// How fast a state changes; the models do not depend on the clock.
  @FunctionalInterface
  interface Slope {
    double[] at(double[] state);
  }

  /// The state after a span, in equal steps no longer than asked.
  static double[] after(double[] start, double span, double longest, Slope slope) {
    int steps = (int) Math.max(1, Math.ceil(span / longest));
    double[] state = start.clone();
    for (int i = 0; i < steps; i++) {
      state = step(state, span / steps, slope);
    }
    return state;
  }

  private static double[] step(double[] state, double h, Slope slope) {
    double[] first = slope.at(state);
    double[] second = slope.at(moved(state, first, h / 2));
    double[] third = slope.at(moved(state, second, h / 2));
    double[] fourth = slope.at(moved(state, third, h));
    double[] next = state.clone();
    for (int i = 0; i < next.length; i++) {
      next[i] += h / 6 * (first[i] + 2 * second[i] + 2 * third[i] + fourth[i]);
    }
    return next;
  }

  private static double[] moved(double[] state, double[] slope, double h) {
    double[] moved = state.clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] += h * slope[i];
    }
    return moved;
  }
}
