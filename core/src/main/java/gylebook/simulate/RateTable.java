package gylebook.simulate;

import gylebook.units.AnyUnit;
import java.util.function.DoubleUnaryOperator;

/// A function of temperature looked up between tabulated points.
///
/// The inner loop asks for the same Arrhenius rates millions of times. Between points 0.1 K apart a
/// straight line is within 1e-4 of any of them, costs a few nanoseconds, and gives the same bits on
/// every machine, which `Math.exp` does not promise.
@AnyUnit("tabulates rates, factors and losses alike")
final class RateTable {
  private static final double LEAST_C = 0;
  private static final double MOST_C = 110;

  private final double perStep;
  private final double[] values;

  RateTable(double stepK, DoubleUnaryOperator function) {
    this.perStep = 1 / stepK;
    int count = (int) Math.round((MOST_C - LEAST_C) * perStep) + 1;
    this.values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = function.applyAsDouble(Math.min(MOST_C, LEAST_C + i * stepK));
    }
  }

  double at(double wortC) {
    double place = (wortC - LEAST_C) * perStep;
    int i = Math.max(0, Math.min((int) place, values.length - 2));
    double low = values[i];
    return low + (place - i) * (values[i + 1] - low);
  }

  double slopePerK(double wortC) {
    int i = Math.max(0, Math.min((int) ((wortC - LEAST_C) * perStep), values.length - 2));
    return (values[i + 1] - values[i]) * perStep;
  }
}
