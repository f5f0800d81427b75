package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.junit.jupiter.api.Test;

/// The three parts that find doses, each alone: least squares with nothing below nought, the steps
/// of a scale, and the wish.
class LeastSquaresOfDosesTest {
  private static double[] solved(double[][] slopes, double... wanted) {
    return NonNegative.solved(new Array2DRowRealMatrix(slopes), new ArrayRealVector(wanted));
  }

  /// The two examples in the manual of a numerical library's routine for this problem (scipy's
  /// `nnls`): (1.5, 1), and nothing at all with a residue of the root of 3.
  @Test
  void theExamplesOfALibraryComeOut() {
    double[][] slopes = {{1, 0}, {1, 0}, {0, 1}};
    assertThat(solved(slopes, 2, 1, 1)).containsExactly(new double[] {1.5, 1}, within(1e-12));
    assertThat(solved(slopes, -1, -1, -1)).containsExactly(0, 0);
  }

  /// What came in first goes out again: the first column leads downhill most steeply, and the two
  /// others together make it needless. By the same library: (0, 0.5, 1.25).
  @Test
  void aColumnThatOthersMakeNeedlessGoesOutAgain() {
    double[][] slopes = {{1, 1, 0}, {1, 0, 1}, {0.2, 0, 0}};
    assertThat(solved(slopes, 0.5, 1.25, -0.4))
        .containsExactly(new double[] {0, 0.5, 1.25}, within(1e-12));
  }

  @Test
  void anEmptyColumnAndASecondPacketTakeNothing() {
    assertThat(solved(new double[][] {{0, 2}, {0, 1}}, 4, 2))
        .containsExactly(new double[] {0, 2}, within(1e-12));
    double[] twice = solved(new double[][] {{3, 3}, {1, 1}}, 6, 2);
    assertThat(twice[0] + twice[1]).isCloseTo(2, within(1e-12));
    assertThat(Math.min(twice[0], twice[1])).isZero();
    double[] wide = solved(new double[][] {{1, 2, 4}}, 8);
    assertThat(wide[0] + 2 * wide[1] + 4 * wide[2]).isCloseTo(8, within(1e-12));
  }

  /// Karush, Kuhn and Tucker: an answer is the least if, and only if, it is nowhere below nought,
  /// flat along every column in use and uphill along every other. Columns that lean on one another,
  /// of scales a million apart.
  @Test
  void noStepFromTheAnswerLeadsDownhill() {
    int[] left = {0};
    Cases.each(
        300,
        random -> {
          int rows = 3 + random.nextInt(6);
          int columns = 1 + random.nextInt(rows);
          double[][] slopes = new double[rows][columns];
          double[] wanted = new double[rows];
          for (int i = 0; i < rows; i++) {
            wanted[i] = 20 * random.nextDouble() - 6;
            double common = random.nextDouble();
            for (int j = 0; j < columns; j++) {
              slopes[i][j] = common + 0.6 * random.nextDouble() - 0.2;
            }
          }
          double[] scales = new double[columns];
          for (int j = 0; j < columns; j++) {
            scales[j] = Math.pow(10, random.nextInt(7) - 3);
            for (int i = 0; i < rows; i++) {
              slopes[i][j] *= scales[j];
            }
          }
          double[] found = solved(slopes, wanted);
          for (int j = 0; j < columns; j++) {
            assertThat(found[j]).isNotNegative();
            double uphill = uphill(slopes, wanted, found, j) / scales[j];
            if (found[j] > 0) {
              assertThat(uphill).isCloseTo(0, within(1e-7));
            } else {
              assertThat(uphill).isGreaterThan(-1e-7);
              left[0]++;
            }
          }
        });
    assertThat(left[0]).isGreaterThan(100);
  }

  private static double uphill(double[][] slopes, double[] wanted, double[] found, int column) {
    double uphill = 0;
    for (int i = 0; i < wanted.length; i++) {
      double off = -wanted[i];
      for (int j = 0; j < found.length; j++) {
        off += slopes[i][j] * found[j];
      }
      uphill += off * slopes[i][column];
    }
    return uphill;
  }

  /// A valley that lies aslant: rounding lands on its side, one dose alone leads up, two together
  /// lead on. Least at (7, 3) with nothing nearer.
  @Test
  void stepsGoDownAValleyThatLiesAslant() {
    double[] least =
        WholeSteps.near(
            new double[] {2, 8},
            List.of(0, 1),
            x -> 100 * Math.pow(x[0] + x[1] - 10, 2) + Math.pow(x[0] - x[1] - 4, 2));
    assertThat(least).containsExactly(7, 3);
    double[] other =
        WholeSteps.near(
            new double[] {2, 8},
            List.of(0, 1),
            x -> 100 * Math.pow(x[0] - x[1] + 6, 2) + Math.pow(x[0] + x[1] - 20, 2));
    assertThat(other).containsExactly(7, 13);
  }

  /// What is none of the house's stays as it is; nothing goes below nought; one step at a time.
  @Test
  void onlyWhatIsInTheHouseIsTurned() {
    double[] found =
        WholeSteps.near(
            new double[] {0, 3, 0},
            List.of(1),
            x -> Math.abs(x[0] - 5) + Math.abs(x[1] - 6) + Math.abs(x[2] - 1));
    assertThat(found).containsExactly(0, 6, 0);
    double[] down = WholeSteps.near(new double[] {4}, List.of(0), x -> x[0]);
    assertThat(down).containsExactly(0);
    double[] high = WholeSteps.near(new double[] {1.4}, List.of(0), x -> Math.abs(x[0] - 2));
    assertThat(high).containsExactly(2);
  }

  /// A hill between 5 and 0: no step leads over it, to leave out does.
  @Test
  void leavingOutIsTried() {
    double[] found =
        WholeSteps.near(
            new double[] {5, 2},
            List.of(0, 1),
            x -> (x[0] == 0 ? 0 : 10 + Math.abs(x[0] - 5)) + Math.abs(x[1] - 2));
    assertThat(found).containsExactly(0, 2);
  }

  /// Corners of the unrounded doses, up and down each: the least of the four is at (3, 8), where
  /// neither rounding nor a single step leads.
  @Test
  void everyCornerIsTried() {
    double[] found =
        WholeSteps.near(
            new double[] {2.1, 7.2},
            List.of(),
            x -> x[0] == 3 && x[1] == 8 ? 0 : 1 + Math.abs(x[0] - 2) + Math.abs(x[1] - 7));
    assertThat(found).containsExactly(3, 8);
  }

  private static LiquorLevels levels(double... column) {
    return new LiquorLevels(
        column[0], column[1], column[2], column[3], column[4], column[5], column[6]);
  }

  private static LiquorLevels nowhere(int at, double wanted) {
    double[] column = new double[7];
    Arrays.fill(column, Double.NaN);
    column[at] = wanted;
    return levels(column);
  }

  private static LiquorLevels held(double[] bare, double[][] perStep, double[] counts) {
    double[] column = bare.clone();
    for (int i = 0; i < counts.length; i++) {
      for (int k = 0; k < column.length; k++) {
        column[k] += counts[i] * perStep[i][k];
      }
    }
    return levels(column);
  }

  /// By hand: 60 mg/L wanted of the first ion, 8 a step with 2 of the third. Twelve tens of the
  /// third are no harm below its usual end: 60/8 is 7.5, and 8 steps bring 64 and 16, (0.4)^2 +
  /// (16/300)^2 = 0.1628; 7 steps bring 56 and 14, (0.4)^2 + (14/300)^2 = 0.1622, and are less.
  @Test
  void ofTwoRoundingsTheLessSpoilingOneIsTaken() {
    double[][] perStep = {{8, 0, 2, 0, 0, 0, 0}};
    double[] counts =
        LiquorDoses.stepCounts(nowhere(0, 60), 1, steps -> held(new double[7], perStep, steps));
    assertThat(counts).containsExactly(7);
  }

  /// Sodium may rise to 100 mg/L unasked, and each mg/L beyond costs as much as ten of a wanted ion
  /// off: chloride 300 by a salt with 0.65 of sodium to 1. By hand: minimise ((300 - c)/10)^2 +
  /// (0.65 c/300 + 0.65 c - 100)^2 over c: with 10 mg/L a step it is 225.1 after 15 steps, 214.9
  /// after 16 and 287.1 after 17.
  @Test
  void anIonNobodyAskedForEndsNearItsUsualEnd() {
    double[][] perStep = {{0, 0, 6.5, 10, 0, 0, 0}};
    double[] counts =
        LiquorDoses.stepCounts(nowhere(3, 300), 1, steps -> held(new double[7], perStep, steps));
    assertThat(counts).containsExactly(16);
    // Where the tap is over that end already, what it has is no spoiling: a step is 29^2 + 6.52^2 =
    // 883.5 against 30^2 without, and two are 28^2 + 13.04^2 = 954.
    double[] salty = {0, 0, 130, 0, 0, 0, 0};
    double[] more =
        LiquorDoses.stepCounts(nowhere(3, 300), 1, steps -> held(salty, perStep, steps));
    assertThat(more).containsExactly(1);
  }

  /// A salt that brings the whole nearer by less than two mg/L of one ion is left out: 61.9 is
  /// wanted, 6 steps of 10 bring 60, and a step of 1.9 from another packet, which brings sodium as
  /// well, would bring it home. Where 3.5 are missing it is weighed.
  @Test
  void aSaltForTheLastMilligramIsNotWeighed() {
    double[][] perStep = {{10, 0, 0, 0, 0, 0, 0}, {1.9, 0, 3, 0, 0, 0, 0}};
    double[] near =
        LiquorDoses.stepCounts(nowhere(0, 61.9), 2, steps -> held(new double[7], perStep, steps));
    assertThat(near).containsExactly(6, 0);
    double[][] larger = {{10, 0, 0, 0, 0, 0, 0}, {3.5, 0, 10, 0, 0, 0, 0}};
    double[] far =
        LiquorDoses.stepCounts(nowhere(0, 63.5), 2, steps -> held(new double[7], larger, steps));
    assertThat(far).containsExactly(6, 1);
  }

  /// Alkalinity is free where a pH is wanted; where none is, it counts as any ion nobody asked for.
  @Test
  void alkalinityIsFreeWhereAPhIsWanted() {
    double[] bare = {0, 0, 0, 0, 0, 0, 5.3};
    double[][] perStep = {{0, 0, 0, 0, 0, 150, 0.02}};
    double[] ph = LiquorDoses.stepCounts(nowhere(6, 5.4), 1, steps -> held(bare, perStep, steps));
    assertThat(ph).containsExactly(5);
    double[] none = LiquorDoses.stepCounts(nowhere(0, 0), 1, steps -> held(bare, perStep, steps));
    assertThat(none).containsExactly(0);
  }

  /// A pH is worth its doubt: 0.03 off weighs as much as 10 mg/L. An acid that takes 0.03 a step
  /// and brings 10 mg/L of a wanted ion that is right already stops half way.
  @Test
  void aPhWeighsAgainstAnIon() {
    double[] bare = {0, 0, 0, 50, 0, 0, 5.7};
    double[][] perStep = {{0, 0, 0, 10, 0, 0, -0.03}};
    double[] wanted = {Double.NaN, Double.NaN, Double.NaN, 50, Double.NaN, Double.NaN, 5.4};
    double[] counts =
        LiquorDoses.stepCounts(levels(wanted), 1, steps -> held(bare, perStep, steps));
    assertThat(counts).containsExactly(5);
  }

  /// Against all doses there are of three made-up salts: none comes nearer by more than seven mg/L
  /// of one ion, and mostly none but for what it is worth to weigh one less.
  @Test
  void ofAllDosesNoneIsBetter() {
    int[] best = {0};
    Cases.each(
        24,
        random -> {
          double[] bare = {20, 5, 10, 15, 25, 60, Double.NaN};
          double[][] perStep = new double[3][7];
          for (double[] salt : perStep) {
            for (int k = 0; k < 5; k++) {
              salt[k] = random.nextInt(3) == 0 ? 12 * random.nextDouble() : 0;
            }
            salt[random.nextInt(5)] += 4 + 8 * random.nextDouble();
          }
          double[] wanted = wish(random);
          double[] counts =
              LiquorDoses.stepCounts(levels(wanted), 3, steps -> held(bare, perStep, steps));
          double least = Double.POSITIVE_INFINITY;
          for (int at = 0; at < 30 * 30 * 30; at++) {
            double[] tried = {at % 30, Math.floor(at / 30.0) % 30, Math.floor(at / 900.0)};
            least = Math.min(least, regret(bare, perStep, tried, wanted));
          }
          double ours = regret(bare, perStep, counts, wanted);
          assertThat(ours).isLessThan(least + 0.5);
          best[0] += ours < least + 2 * 0.0405 ? 1 : 0;
        });
    assertThat(best[0]).isGreaterThan(20);
  }

  private static double[] wish(RandomGenerator random) {
    return new double[] {
      40 + 80 * random.nextDouble(),
      Double.NaN,
      Double.NaN,
      20 + 90 * random.nextDouble(),
      30 + 120 * random.nextDouble(),
      Double.NaN,
      Double.NaN
    };
  }

  private static double regret(
      double[] bare, double[][] perStep, double[] counts, double[] wanted) {
    double[] usualEnd = {200, 30, 100, 250, 400};
    double sum = 0;
    for (int k = 0; k < 6; k++) {
      double got = bare[k];
      for (int i = 0; i < counts.length; i++) {
        got += counts[i] * perStep[i][k];
      }
      boolean asked = !Double.isNaN(wanted[k]);
      double off = asked ? (got - wanted[k]) / 10 : (got - bare[k]) / 300;
      double over = asked || k == 5 ? 0 : Math.max(0, got - usualEnd[k]);
      sum += Math.pow(off + over, 2);
    }
    return sum;
  }
}
