package gylebook.estimate;

import gylebook.science.Source;
import gylebook.science.Trust;
import gylebook.units.AnyUnit;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// Corrects an ensemble by several readings at once: the ensemble transform Kalman filter.
///
/// The belief of the day uses the serial [SquareRootFilter]; this one, with matrices by a library,
/// is what it is held against, and [PerturbedReadings] what both are.
@AnyUnit("rows of every quantity")
final class EnsembleTransform {
  private EnsembleTransform() {}

  /// `Pt = [(N-1) I + Y' R^-1 Y]^-1`, `w = Pt Y' R^-1 (y - Hx)`, `W = [(N-1) Pt]^(1/2)`, `x + A (w
  /// + W)`.
  ///
  /// @param rows the state, a row a quantity
  /// @param observing one row a reading: its weights on the state's rows
  /// @param read what was read
  /// @param noise2 the readings' variances
  @Source(key = "hunt-2007", at = "section 2.3", trust = Trust.SECOND_HAND)
  static double[][] corrected(
      double[][] rows, double[][] observing, double[] read, double[] noise2) {
    int members = rows[0].length;
    double[] means = new double[rows.length];
    RealMatrix anomalies = new Array2DRowRealMatrix(rows.length, members);
    for (int i = 0; i < rows.length; i++) {
      means[i] = SquareRootFilter.mean(rows[i]);
      for (int j = 0; j < members; j++) {
        anomalies.setEntry(i, j, rows[i][j] - means[i]);
      }
    }
    RealMatrix observes = new Array2DRowRealMatrix(observing);
    RealMatrix seen = observes.multiply(anomalies);
    RealVector miss =
        new ArrayRealVector(read).subtract(observes.operate(new ArrayRealVector(means)));
    RealMatrix weighed = seen.transpose();
    for (int k = 0; k < noise2.length; k++) {
      weighed.setColumnVector(k, weighed.getColumnVector(k).mapDivide(noise2[k]));
    }
    RealMatrix inverse =
        weighed
            .multiply(seen)
            .add(MatrixUtils.createRealIdentityMatrix(members).scalarMultiply(members - 1.0));
    EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(inverse);
    RealVector shift = eigen.getSolver().solve(weighed.operate(miss));
    RealMatrix spread = power(eigen, -0.5).scalarMultiply(Math.sqrt(members - 1.0));
    double[][] after = new double[rows.length][members];
    RealMatrix moved = anomalies.multiply(spread);
    RealVector meanShift = anomalies.operate(shift);
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < members; j++) {
        after[i][j] = means[i] + meanShift.getEntry(i) + moved.getEntry(i, j);
      }
    }
    return after;
  }

  private static RealMatrix power(EigenDecompositionSymmetric eigen, double exponent) {
    double[] values = eigen.getEigenvalues();
    for (int i = 0; i < values.length; i++) {
      values[i] = Math.pow(values[i], exponent);
    }
    return eigen
        .getV()
        .multiply(MatrixUtils.createRealDiagonalMatrix(values))
        .multiply(eigen.getVT());
  }
}
