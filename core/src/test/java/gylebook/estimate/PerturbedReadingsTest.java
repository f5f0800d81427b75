package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.simulate.Luck;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/// A temperature of 66 give or take 2 and a bias of 0 give or take 0.5; their sum is read as 65
/// give or take 1. By Kalman: the sum's variance is 4.25 with 1 of noise, so the temperature moves
/// by -4/5.25 to 65.2381 and its variance falls to 4 - 16/5.25 = 0.95238; the bias by -0.25/5.25;
/// both go together by -4 x 0.25/5.25 = -0.19048.
class PerturbedReadingsTest {
  private static final double[][] OBSERVING = {{1, 1}};
  private static final double[] READ = {65};
  private static final double[] NOISE2 = {1};
  private static final double KALMAN_C = 66 - 4 / 5.25;
  private static final double KALMAN2 = 4 - 16 / 5.25;

  private static double[][] drawn(int members, long seed) {
    double[][] rows = new double[2][members];
    Arrays.setAll(rows[0], j -> 66 + 2 * Luck.z(seed, "wort", j));
    Arrays.setAll(rows[1], j -> 0.5 * Luck.z(seed, "bias", j));
    return rows;
  }

  private static double[][] perturbed(double[][] rows, long seed) {
    return PerturbedReadings.corrected(rows, OBSERVING, READ, NOISE2, seed);
  }

  private static double[][] transformed(double[][] rows) {
    return EnsembleTransform.corrected(rows, OBSERVING, READ, NOISE2);
  }

  private static double[][] serial(double[][] rows) {
    double[] sum = new double[rows[0].length];
    Arrays.setAll(sum, j -> rows[0][j] + rows[1][j]);
    double[][] after = {rows[0].clone(), rows[1].clone()};
    SquareRootFilter.correct(
        List.of(after), sum, SquareRootFilter.met(sum, READ[0], NOISE2[0]), false);
    return after;
  }

  /// Of 40 000 members a mean is known to a two-hundredth of its spread of 0.98, a variance to a
  /// hundred-and-fortieth; four of each.
  @Test
  void manyMembersAreTheKalmanFilter() {
    double[][] after = perturbed(drawn(40_000, 7), 11);
    assertThat(SquareRootFilter.mean(after[0])).isCloseTo(KALMAN_C, within(0.04));
    assertThat(SquareRootFilter.mean(after[1])).isCloseTo(-0.25 / 5.25, within(0.012));
    assertThat(SquareRootFilter.covariance(after[0], after[0])).isCloseTo(KALMAN2, within(0.04));
    assertThat(SquareRootFilter.covariance(after[0], after[1])).isCloseTo(-1 / 5.25, within(0.02));
  }

  /// Two readings at once: of the sum, and of the temperature alone as 67 give or take 0.5.
  /// Kalman's information form by hand: A = [[1/4 + 1 + 4, 1], [1, 4 + 1]] has the determinant
  /// 25.25; P = [[5, -1], [-1, 5.25]]/25.25; the mean is P [16.5 + 65 + 268, 65] = (1682.5,
  /// -8.25)/25.25.
  @Test
  void twoReadingsAtOnceAreTheKalmanFilterToo() {
    double[][] after =
        PerturbedReadings.corrected(
            drawn(40_000, 3),
            new double[][] {{1, 1}, {1, 0}},
            new double[] {65, 67},
            new double[] {1, 0.25},
            5);
    assertThat(SquareRootFilter.mean(after[0])).isCloseTo(1682.5 / 25.25, within(0.02));
    assertThat(SquareRootFilter.mean(after[1])).isCloseTo(-8.25 / 25.25, within(0.02));
    assertThat(SquareRootFilter.covariance(after[0], after[0])).isCloseTo(5 / 25.25, within(0.01));
    assertThat(SquareRootFilter.covariance(after[1], after[1]))
        .isCloseTo(5.25 / 25.25, within(0.01));
  }

  @Test
  void theSameSeedIsTheSameLuck() {
    double[][] rows = drawn(12, 1);
    assertThat(perturbed(rows, 4)).isDeepEqualTo(perturbed(rows, 4));
    assertThat(perturbed(rows, 4)[0]).isNotEqualTo(perturbed(rows, 5)[0]);
    assertThat(rows).isDeepEqualTo(drawn(12, 1));
  }

  /// The trap, over 300 small ensembles: against the Kalman filter with the same sample covariance
  /// the two filters without luck are off by nothing, the one with luck by a share of the spread.
  /// In the middle it is right.
  @Test
  void withFewMembersTheReadingsLuckIsAddedAndTheFiltersWithoutLuckHaveNone() {
    double luckOff2 = 0;
    double meanOff = 0;
    double varianceRatio = 0;
    int days = 300;
    for (long seed = 0; seed < days; seed++) {
      double[][] rows = drawn(10, seed);
      double[] sum = new double[10];
      Arrays.setAll(sum, j -> rows[0][j] + rows[1][j]);
      double mean = SquareRootFilter.mean(rows[0]);
      double cross = SquareRootFilter.covariance(rows[0], sum);
      double total = SquareRootFilter.covariance(sum, sum) + 1;
      double kalmanC = mean + cross / total * (65 - SquareRootFilter.mean(sum));
      double kalman2 = SquareRootFilter.covariance(rows[0], rows[0]) - cross * cross / total;
      for (double[][] sure : List.of(transformed(rows), serial(rows))) {
        assertThat(SquareRootFilter.mean(sure[0])).isCloseTo(kalmanC, within(1e-9));
        assertThat(SquareRootFilter.covariance(sure[0], sure[0])).isCloseTo(kalman2, within(1e-9));
      }
      double[][] lucky = perturbed(rows, seed + 1000);
      double off = SquareRootFilter.mean(lucky[0]) - kalmanC;
      meanOff += off / days;
      luckOff2 += off * off / days;
      varianceRatio += SquareRootFilter.covariance(lucky[0], lucky[0]) / kalman2 / days;
    }
    // The mean of ten lucks of 1 K has a doubt of 0.32 K, of which the gain of about 0.76 passes
    // on.
    assertThat(Math.sqrt(luckOff2)).isBetween(0.15, 0.32);
    assertThat(meanOff).isCloseTo(0, within(0.06));
    assertThat(varianceRatio).isBetween(0.85, 1.15);
  }
}
