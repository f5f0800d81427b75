package gylebook.estimate;

import gylebook.science.Require;
import gylebook.science.Source;
import gylebook.science.Trust;
import gylebook.units.AnyUnit;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// A line fitted point by point, older points fading: `dT/dt` on duty and excess over the room.
@AnyUnit("coefficients of any units")
final class RecursiveLeastSquares {
  private final double forgetting;
  private RealVector coefficients;
  private RealMatrix spread;

  /// @param terms how many coefficients
  /// @param priorSpread2 variance of each before the first point, large when nothing is known
  /// @param forgetting 1 keeps all points alike; 0.99 forgets a hundred points back
  RecursiveLeastSquares(int terms, double priorSpread2, double forgetting) {
    this.forgetting = Require.within("forgetting", forgetting, 0.5, 1);
    this.coefficients = new ArrayRealVector(terms);
    this.spread =
        MatrixUtils.createRealIdentityMatrix(terms)
            .scalarMultiply(Require.above0("prior variance", priorSpread2));
  }

  /// `g = P phi/(l + phi' P phi)`, `theta += g (y - phi' theta)`, `P = (P - g phi' P)/l`.
  @Source(key = "astrom-wittenmark-1995", at = "recursive least squares", trust = Trust.SECOND_HAND)
  void take(double[] regressors, double seen) {
    RealVector phi = new ArrayRealVector(regressors);
    RealVector p = spread.operate(phi);
    RealVector gain = p.mapDivide(forgetting + phi.dotProduct(p));
    coefficients = coefficients.add(gain.mapMultiply(seen - phi.dotProduct(coefficients)));
    spread = spread.subtract(gain.outerProduct(p)).scalarMultiply(1 / forgetting);
  }

  double coefficient(int term) {
    return coefficients.getEntry(term);
  }
}
