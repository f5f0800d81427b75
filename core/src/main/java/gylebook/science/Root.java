package gylebook.science;

import gylebook.units.AnyUnit;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/// Where a function that rises or falls throughout crosses zero.
@AnyUnit("solves for any quantity")
final class Root {
  private static final double RELATIVE = 1e-13;
  private static final double ABSOLUTE = 1e-12;
  private static final double VALUE = 1e-14;
  private static final int ORDER = 5;
  private static final int ROUNDS = 200;

  private Root() {}

  /// The crossing between two ends; both signs must stand at them.
  static double between(double least, double most, UnivariateFunction gap) {
    return new BracketingNthOrderBrentSolver(RELATIVE, ABSOLUTE, VALUE, ORDER)
        .solve(ROUNDS, gap, least, most);
  }
}
