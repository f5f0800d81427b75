package gylebook.estimate;

import gylebook.science.Source;
import gylebook.science.Trust;
import gylebook.simulate.Luck;
import gylebook.units.AnyUnit;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/// Corrects an ensemble by several readings at once, each member by readings with luck of its own:
/// the ensemble Kalman filter with perturbed readings.
///
/// The belief of the day uses the serial [SquareRootFilter], which needs no luck; this one is what
/// it is held against in tests. Its trap: the readings' luck is a sample as well, so with few
/// members mean and spread scatter about what the Kalman filter leaves, and the square-root filters
/// do not.
@AnyUnit("rows of every quantity")
final class PerturbedReadings {
  private PerturbedReadings() {}

  /// `K = A Y' (Y Y' + (N-1) R)^-1`, `x_j + K (y + e_j - H x_j)`, e_j of variance R.
  ///
  /// The luck is taken as it falls: its mean is not made 0 nor its spread R.
  ///
  /// @param rows the state, a row a quantity
  /// @param observing one row a reading: its weights on the state's rows
  /// @param read what was read
  /// @param noise2 the readings' variances
  /// @param seed the same luck from the same seed
  @Source(key = "evensen-1994", at = "analysis with perturbed readings", trust = Trust.SECOND_HAND)
  static double[][] corrected(
      double[][] rows, double[][] observing, double[] read, double[] noise2, long seed) {
    int members = rows[0].length;
    RealMatrix state = new Array2DRowRealMatrix(rows);
    RealMatrix expected = new Array2DRowRealMatrix(observing).multiply(state);
    RealMatrix anomalies = anomalies(state);
    RealMatrix seen = anomalies(expected);
    RealMatrix both = seen.multiply(seen.transpose());
    for (int k = 0; k < noise2.length; k++) {
      both.addToEntry(k, k, (members - 1) * noise2[k]);
    }
    RealMatrix gain =
        anomalies
            .multiply(seen.transpose())
            .multiply(new LUDecomposition(both).getSolver().getInverse());
    RealMatrix miss = expected.scalarMultiply(-1);
    for (int k = 0; k < noise2.length; k++) {
      for (int j = 0; j < members; j++) {
        double luck = Math.sqrt(noise2[k]) * Luck.z(seed, "reading " + k, j);
        miss.addToEntry(k, j, read[k] + luck);
      }
    }
    return state.add(gain.multiply(miss)).getData();
  }

  private static RealMatrix anomalies(RealMatrix rows) {
    RealMatrix off = rows.copy();
    for (int i = 0; i < off.getRowDimension(); i++) {
      double mean = SquareRootFilter.mean(rows.getRow(i));
      for (int j = 0; j < off.getColumnDimension(); j++) {
        off.addToEntry(i, j, -mean);
      }
    }
    return off;
  }
}
