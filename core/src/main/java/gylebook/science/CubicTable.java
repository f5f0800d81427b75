package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.function.DoubleUnaryOperator;

/// A smooth function of one variable, looked up instead of computed: cubic pieces between evenly
/// spaced knots that agree with the function in value and slope.
///
/// The simulator asks for some rates many million times; a look-up costs a few nanoseconds. The
/// error falls with the fourth power of the knots' distance. Outside the knots the function itself
/// is asked.
@AnyUnit("any function of one variable")
final class CubicTable {
  private final DoubleUnaryOperator exact;
  private final double first;
  private final double last;
  private final double step;
  private final double[] values;
  private final double[] slopes;

  CubicTable(double first, double last, int pieces, DoubleUnaryOperator exact) {
    this.exact = exact;
    this.first = first;
    this.last = last;
    this.step = (last - first) / pieces;
    this.values = new double[pieces + 1];
    this.slopes = new double[pieces + 1];
    double h = step / 20;
    for (int i = 0; i <= pieces; i++) {
      double x = first + i * step;
      values[i] = exact.applyAsDouble(x);
      // Fourth-order central difference; the function must be defined a little beyond the ends.
      slopes[i] =
          step
              * (8 * (exact.applyAsDouble(x + h) - exact.applyAsDouble(x - h))
                  - (exact.applyAsDouble(x + 2 * h) - exact.applyAsDouble(x - 2 * h)))
              / (12 * h);
    }
  }

  double at(double x) {
    if (!(x >= first && x < last)) {
      return exact.applyAsDouble(x);
    }
    double place = (x - first) / step;
    int i = (int) place;
    double u = place - i;
    double rise = values[i + 1] - values[i];
    double a = slopes[i] - rise;
    double b = rise - slopes[i + 1];
    return values[i] + u * (rise + (1 - u) * (a * (1 - u) + b * u));
  }
}
