package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.science.ChiSquareGate;
import gylebook.science.RateLearning;
import gylebook.science.ScalarKalman;
import gylebook.testing.Cases;
import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/// The filters against the table (section G of rig.csv: computed there by another program, each row
/// with its source), and against the Kalman filter by matrices.
public class FilterReferenceTest {
  @TestFactory
  Stream<DynamicTest> everyRowOfTheFiltersIsAnswered() {
    return checks()
        .tests(
            ReferenceRows.of("rig.csv").stream().filter(row -> row.id().charAt(0) == 'G').toList());
  }

  /// What answers these rows.
  public static Checks checks() {
    return new Checks()
        .kind("G02", row -> updated(row, row.number("x"), row.number("y")).meanC())
        .kind("G03", row -> Math.pow(updated(row, 0, 0).doubtK(), 2))
        .kind("G05", row -> correlationOfStateAndBias())
        .kind("G07", FilterReferenceTest::analysisVariance)
        .kind("G08", row -> Particles.effectiveCount(numbers(row.inputs())))
        .words("G09", FilterReferenceTest::resampled)
        .kind("G11", FilterReferenceTest::slope)
        .kind("G12", row -> learnt(row).meanNumber())
        .kind("G14", row -> learnt(row).halfWidthNumber(0.9))
        .kind(
            "G16",
            row ->
                ChiSquareGate.meanLimitNumber(0.975, (int) row.number("N"), (int) row.number("m")))
        .kind("G17", row -> ChiSquareGate.gateNumber(0.997, (int) row.number("m")))
        .kind("G18", row -> ChiSquareGate.huberFrac(4, row.number("c")))
        .kind(
            "G20",
            row ->
                Math.pow(
                    ScalarKalman.steadyDoubtK(
                        Math.sqrt(row.number("q")), Math.sqrt(row.number("r"))),
                    2));
  }

  private static ScalarKalman.Updated updated(ReferenceRow row, double beliefC, double readC) {
    return ScalarKalman.updated(
        beliefC, Math.sqrt(row.number("P")), readC, Math.sqrt(row.number("R")));
  }

  /// The numbers of a text before its first semicolon.
  private static double[] numbers(String text) {
    Matcher found = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?").matcher(text.split(";", -1)[0]);
    List<Double> all = new ArrayList<>();
    while (found.find()) {
      all.add(Double.parseDouble(found.group()));
    }
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /// Eight members with exactly the row's variances 4 and 0.25 and no correlation; the square-root
  /// filter without damping must leave what the Kalman filter leaves.
  private static double correlationOfStateAndBias() {
    double[] state = {1, -1, 1, -1, 1, -1, 1, -1};
    double[] bias = {1, 1, -1, -1, 1, 1, -1, -1};
    double[] sum = new double[8];
    for (int j = 0; j < 8; j++) {
      state[j] = 66 + 2 * state[j] * Math.sqrt(7.0 / 8);
      bias[j] = 0.5 * bias[j] * Math.sqrt(7.0 / 8);
      sum[j] = state[j] + bias[j];
    }
    SquareRootFilter.Met met = SquareRootFilter.met(sum, 65, 0.04);
    SquareRootFilter.correct(List.of(state, bias), sum, met, false);
    double vx = SquareRootFilter.covariance(state, state);
    double vb = SquareRootFilter.covariance(bias, bias);
    return SquareRootFilter.covariance(state, bias) / Math.sqrt(vx * vb);
  }

  private static double analysisVariance(ReferenceRow row) {
    double[] a = {-1.5, -0.5, 0.5, 1.5};
    double[] b = {0.2, -0.4, 0.5, -0.3};
    assertThat(row.inputs()).contains("[-1.5,-0.5,0.5,1.5]", "[0.2,-0.4,0.5,-0.3]", "(66, 0.1)");
    double[][] rows = new double[2][4];
    for (int j = 0; j < 4; j++) {
      rows[0][j] = 66 + a[j];
      rows[1][j] = 0.1 + b[j];
    }
    double[][] after =
        EnsembleTransform.corrected(
            rows,
            new double[][] {{1, 1}},
            new double[] {row.number("y")},
            new double[] {row.number("R")});
    return SquareRootFilter.covariance(after[0], after[0]);
  }

  private static String resampled(ReferenceRow row) {
    int[] chosen = Particles.resampled(numbers(row.inputs()), 0.08);
    return Arrays.stream(chosen).mapToObj(String::valueOf).collect(Collectors.joining(" "));
  }

  private static double slope(ReferenceRow row) {
    Matcher point = Pattern.compile("\\(([0-9.]+),([0-9.]+)\\)").matcher(row.inputs());
    RecursiveLeastSquares line = new RecursiveLeastSquares(2, 1e6, 1);
    while (point.find()) {
      double[] regressors = {1, Double.parseDouble(point.group(1))};
      line.take(regressors, Double.parseDouble(point.group(2)));
    }
    return line.coefficient(1);
  }

  private static RateLearning.Learnt learnt(ReferenceRow row) {
    assertThat(row.inputs()).contains("boil-off 4.6 4.9 4.4 4.7");
    return new RateLearning.Learnt(
            row.number("m0"), row.number("k0"), row.number("a0"), row.number("b0"))
        .after(4.6, 4.9, 4.4, 4.7);
  }

  /// The textbook formula by matrices, `P' = P - P H' (H P H' + R)^-1 H P`, as the other opinion.
  @Test
  void bothEnsembleFiltersLeaveWhatTheKalmanFilterWithTheSampleCovarianceLeaves() {
    Cases.each(
        40,
        random -> {
          double[][] rows = new double[3][12];
          for (double[] row : rows) {
            Arrays.setAll(row, j -> random.nextGaussian());
          }
          double[][] before = {rows[0].clone(), rows[1].clone(), rows[2].clone()};
          double[][] transformed =
              EnsembleTransform.corrected(
                  rows, new double[][] {{1, 0.5, 0}}, new double[] {0.7}, new double[] {0.3});
          double[] seen = new double[12];
          Arrays.setAll(seen, j -> rows[0][j] + 0.5 * rows[1][j]);
          SquareRootFilter.Met met = SquareRootFilter.met(seen, 0.7, 0.3);
          SquareRootFilter.correct(List.of(rows), seen, met, false);
          RealMatrix wanted = kalman(before);
          for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
              assertThat(SquareRootFilter.covariance(rows[i], rows[k]))
                  .isCloseTo(wanted.getEntry(i, k), within(1e-10));
              assertThat(SquareRootFilter.covariance(transformed[i], transformed[k]))
                  .isCloseTo(wanted.getEntry(i, k), within(1e-10));
            }
            assertThat(SquareRootFilter.mean(rows[i]))
                .isCloseTo(SquareRootFilter.mean(transformed[i]), within(1e-10));
          }
        });
  }

  private static RealMatrix kalman(double[][] rows) {
    RealMatrix p = new Array2DRowRealMatrix(3, 3);
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        p.setEntry(i, k, SquareRootFilter.covariance(rows[i], rows[k]));
      }
    }
    RealMatrix h = new Array2DRowRealMatrix(new double[][] {{1, 0.5, 0}});
    RealMatrix s = h.multiply(p).multiply(h.transpose());
    s.addToEntry(0, 0, 0.3);
    RealMatrix gain =
        p.multiply(h.transpose()).multiply(new LUDecomposition(s).getSolver().getInverse());
    return p.subtract(gain.multiply(h).multiply(p));
  }

  @Test
  void chanceCorrelationsOfASmallEnsembleCountForNothing() {
    assertThat(SquareRootFilter.dampedRatio(0.01, 50)).isZero();
    assertThat(SquareRootFilter.dampedRatio(1, 50)).isEqualTo(1);
    assertThat(SquareRootFilter.dampedRatio(0.25, 50)).isBetween(0.9, 1.0);
  }

  @Test
  void whatIsNoWeightAndNoDoubtIsRefused() {
    org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
        .isThrownBy(() -> Particles.effectiveCount(new double[] {0, 0}));
    org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
        .isThrownBy(() -> ScalarKalman.updated(66, Double.NaN, 65, 1));
    org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
        .isThrownBy(() -> ChiSquareGate.gateNumber(1, 1));
  }
}
