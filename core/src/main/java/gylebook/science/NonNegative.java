package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// Least squares with no unknown below nought, by the active set of Lawson and Hanson.
///
/// `min |A x - b|, x >= 0`: columns come in one by one, the one that would help most first; what
/// then falls below nought goes out again. It ends where every column left out would only hurt,
/// which is the best there is.
@AnyUnit("rows and columns in any unit")
final class NonNegative {
  private static final double NOTHING = 1e-10;

  private final RealMatrix columns;
  private final RealVector wanted;
  private final double[] norms;
  private final boolean[] used;
  private final boolean[] spoilt;
  private double[] x;

  private NonNegative(RealMatrix slopes, RealVector wanted) {
    int n = slopes.getColumnDimension();
    this.columns = slopes.copy();
    this.wanted = wanted;
    this.norms = new double[n];
    this.used = new boolean[n];
    this.spoilt = new boolean[n];
    this.x = new double[n];
    for (int j = 0; j < n; j++) {
      // Columns of one length: a fine scale and a coarse one are told apart no worse.
      norms[j] = slopes.getColumnVector(j).getNorm();
      spoilt[j] = !(norms[j] > 0);
      columns.setColumnVector(j, slopes.getColumnVector(j).mapDivide(spoilt[j] ? 1 : norms[j]));
    }
  }

  static double[] solved(RealMatrix slopes, RealVector wanted) {
    NonNegative solver = new NonNegative(slopes, wanted);
    for (int next = solver.mostHelpful(); next >= 0; next = solver.mostHelpful()) {
      solver.take(next);
    }
    return IntStream.range(0, solver.x.length)
        .mapToDouble(j -> solver.used[j] ? solver.x[j] / solver.norms[j] : 0)
        .toArray();
  }

  /// The column that leads downhill most steeply; -1 when none does.
  private int mostHelpful() {
    double[] downhill = columns.preMultiply(wanted.subtract(columns.operate(vector()))).toArray();
    double least = NOTHING * (1 + wanted.getNorm());
    return IntStream.range(0, x.length)
        .filter(j -> !used[j] && !spoilt[j] && downhill[j] > least)
        .boxed()
        .max((i, j) -> Double.compare(downhill[i], downhill[j]))
        .orElse(-1);
  }

  private RealVector vector() {
    return new ArrayRealVector(x);
  }

  private void take(int next) {
    used[next] = true;
    double[] solved = free();
    if (solved.length == 0 || !(solved[next] > 0)) {
      // A second packet of the same salt, or a column that rounding alone brought in.
      used[next] = false;
      spoilt[next] = true;
      return;
    }
    while (negative(solved)) {
      goTowards(solved);
      solved = free();
    }
    x = solved;
  }

  private boolean negative(double[] solved) {
    return IntStream.range(0, solved.length).anyMatch(j -> used[j] && solved[j] < 0);
  }

  /// As far as the first that reaches nought, which goes out.
  private void goTowards(double[] solved) {
    double share = 1;
    for (int j = 0; j < x.length; j++) {
      if (used[j] && solved[j] < 0) {
        share = Math.min(share, x[j] / (x[j] - solved[j]));
      }
    }
    for (int j = 0; j < x.length; j++) {
      x[j] += used[j] ? share * (solved[j] - x[j]) : 0;
      if (used[j] && solved[j] < 0 && x[j] <= NOTHING) {
        used[j] = false;
        x[j] = 0;
      }
    }
  }

  /// Least squares on the columns in use; empty when they do not stand on their own.
  private double[] free() {
    int[] in = IntStream.range(0, x.length).filter(j -> used[j]).toArray();
    double[] solved = new double[x.length];
    if (in.length == 0) {
      return solved;
    }
    int[] all = IntStream.range(0, columns.getRowDimension()).toArray();
    if (in.length > all.length) {
      return new double[0];
    }
    QRDecomposition parted = new QRDecomposition(columns.getSubMatrix(all, in), NOTHING);
    if (!parted.getSolver().isNonSingular()) {
      return new double[0];
    }
    double[] found = parted.getSolver().solve(wanted).toArray();
    for (int i = 0; i < in.length; i++) {
      solved[in[i]] = found[i];
    }
    return solved;
  }
}
