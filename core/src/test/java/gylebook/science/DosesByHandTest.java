package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/// The bowl, its bounds and the search under it on wishes so small that pencil and paper do; every
/// expected number is worked in the words beside it.
class DosesByHandTest {
  private static final double NONE = Double.NaN;
  private static final double NUISANCE = 1e-4;

  /// A search that writes down what it looked at.
  private static final class Watched {
    private final StepSearch.Bowl bowl;
    private final ToDoubleFunction<double[]> more;
    private final List<List<Double>> seen = new ArrayList<>();

    /// The regret is the bowl, a nuisance for each dose, and so much more.
    Watched(StepSearch.Bowl bowl, ToDoubleFunction<double[]> more) {
      this.bowl = bowl;
      this.more = more;
    }

    double[] nearest(double... start) {
      return StepSearch.nearest(bowl, start, this::regret);
    }

    private double regret(double[] counts) {
      seen.add(Arrays.stream(counts).boxed().toList());
      long doses = Arrays.stream(counts).filter(count -> count > 0).count();
      return bowl.at(counts) + NUISANCE * doses + more.applyAsDouble(counts);
    }
  }

  private static StepSearch.Bowl bowl(
      double centre, double slope, double column, double mostCount) {
    return new StepSearch.Bowl(
        0,
        new double[] {centre},
        new double[] {slope},
        new double[][] {{column}},
        new double[] {mostCount});
  }

  private static double[] nearest(StepSearch.Bowl bowl, double... start) {
    return new Watched(bowl, _ -> 0).nearest(start);
  }

  /// The first falls by 1 a step and bends by 0.04: -5 + 0.04 * 25 = -4 at its most. The second
  /// lies right at 3. All that is below nought comes from the first, which is tried last.
  @Test
  void whatAnotherThingCanStillGainIsNotForgotten() {
    StepSearch.Bowl two =
        new StepSearch.Bowl(
            0,
            new double[] {0, 3},
            new double[] {-1, 0},
            new double[][] {{0.2, 0}, {0, 0.1}},
            new double[] {5, 10});
    assertThat(two.at(new double[] {5, 3})).isCloseTo(-4, within(1e-12));
    assertThat(nearest(two, 0, 3)).containsExactly(5, 3);
  }

  /// (x - 2) + 0.04 (x - 2)^2 is -1.84 at nothing and -0.96 at one step.
  @Test
  void aSlopeIsCountedFromTheCentre() {
    assertThat(nearest(bowl(2, 1, 0.2, 5), 1)).containsExactly(0);
  }

  /// The bowl is lower by 0.00005 with nothing than with one step, and there is one thing less to
  /// weigh: 0.00015 in all, more than what the search leaves open. 1 - 2 c = 0.00005 / 1e-4.
  @Test
  void ofTwoWaysTheOneWithNothingToWeigh() {
    StepSearch.Bowl flat = bowl(0.25, 0, 0.01, 5);
    assertThat(flat.at(new double[] {1}) - flat.at(new double[] {0}))
        .isCloseTo(0.00005, within(1e-12));
    assertThat(nearest(flat, 1)).containsExactly(0);
  }

  /// Three and four steps lie equally far from 3.5, so after one of them the other is not looked
  /// at.
  @Test
  void whatIsNoBetterIsNotLookedAt() {
    Watched watched = new Watched(bowl(3.5, 0, 1, 10), _ -> 0);
    watched.nearest(0);
    assertThat(watched.seen).hasSize(2);
  }

  /// From 3.6 outwards: 4 (0.4 away), 3 (0.6), then 5 (1.4), which the 3 has made needless. From
  /// 3.4: 3, 4, and 2 is needless.
  @Test
  void theNearestStepsAreLookedAtFirst() {
    Watched above = new Watched(bowl(3.6, 0, 1, 10), counts -> counts[0] == 4 ? 100 : 0);
    assertThat(above.nearest(0)).containsExactly(3);
    assertThat(above.seen).containsExactly(List.of(0.0), List.of(4.0), List.of(3.0));
    Watched below = new Watched(bowl(3.4, 0, 1, 10), counts -> counts[0] == 3 ? 100 : 0);
    assertThat(below.nearest(0)).containsExactly(4);
    assertThat(below.seen).containsExactly(List.of(0.0), List.of(3.0), List.of(4.0));
  }

  /// With 13 of the second the first has (0.5 a - 3)^2 + a: least where 0.5 a - 3 = -1, at 4: 5. It
  /// is 5.25 at 3 and 5, 9 at 0, 9 at 8. All else is forbidden.
  @Test
  void theBottomOfAParabolaThatSlopesIsFound() {
    StepSearch.Bowl two =
        new StepSearch.Bowl(
            0,
            new double[] {0, 3},
            new double[] {1, 0},
            new double[][] {{0.5, 0}, {-0.3, 0.1}},
            new double[] {20, 20});
    assertThat(two.at(new double[] {4, 13})).isCloseTo(6, within(1e-12));
    Watched watched = new Watched(two, counts -> counts[1] == 13 ? 0 : 100);
    assertThat(watched.nearest(3, 13)).containsExactly(4, 13);
  }

  /// A thing that moves nothing but the slope: none of it where it does harm, all where it helps.
  @Test
  void whatHangsOnTheOthersIsTriedFromTheRightEnd() {
    assertThat(nearest(bowl(0, 1, 0, 10), 1)).containsExactly(0);
    assertThat(nearest(bowl(0, -1, 0, 10), 9)).containsExactly(10);
  }

  /// A thousand steps each of three things that move nothing: a thousand million ways, none better
  /// than the start. The search gives up and keeps what it has.
  @Test
  void aHardWishKeepsNobodyWaiting() {
    StepSearch.Bowl flat =
        new StepSearch.Bowl(
            0, new double[3], new double[3], new double[3][1], new double[] {1000, 1000, 1000});
    int[] looks = {0};
    double[] found =
        StepSearch.nearest(
            flat,
            new double[] {7, 7, 7},
            _ -> {
              looks[0]++;
              return 1;
            });
    assertThat(found).containsExactly(7, 7, 7);
    assertThat(looks[0]).isBetween(200_000, 300_001);
  }

  private static LiquorLevels levels(double... c) {
    return new LiquorLevels(c[0], c[1], c[2], c[3], c[4], c[5], c[6]);
  }

  private static Function<double[], LiquorLevels> straight(double[] bare, double[]... perStep) {
    return counts -> {
      double[] got = bare.clone();
      for (int i = 0; i < counts.length; i++) {
        for (int row = 0; row < got.length; row++) {
          got[row] += counts[i] * perStep[i][row];
        }
      }
      got[LiquorLevels.BICARBONATE] = Math.max(0, got[LiquorLevels.BICARBONATE]);
      return levels(got);
    };
  }

  private static DoseLine line(LiquorLevels wanted, double[] bare, double[]... perStep) {
    List<Integer> house = perStep.length == 1 ? List.of(0) : List.of(0, 1);
    return DoseLine.at(
        new double[perStep.length],
        house,
        new LiquorRegret(wanted, levels(bare)),
        straight(bare, perStep));
  }

  private static final LiquorLevels SULFATE_170 = levels(NONE, NONE, NONE, NONE, 170, NONE, NONE);
  private static final LiquorLevels SULFATE_290 = levels(NONE, NONE, NONE, NONE, 290, NONE, NONE);
  private static final double[] GYPSUM = {10, 0, 0, 0, 24, 0, 0};

  /// The tap has more calcium than liquors usually end with, so every step is over the end at once:
  /// the regret of n steps is one parabola, (2.4 n - 12)^2 + (10 n/300 + 10 n)^2, and so is the
  /// bowl.
  @Test
  void overAnEndThatTheTapIsAtTheBowlIsTheRegret() {
    DoseLine line = line(SULFATE_170, new double[] {210, 0, 0, 0, 50, 0, 5.8}, GYPSUM);
    // 2.4 * 12 / (2.4^2 + 10.0333^2)
    assertThat(line.relaxed()[0]).isCloseTo(0.270606, within(1e-6));
    StepSearch.Bowl bowl = line.bowl(1000);
    // at 0: 144; at 2: 7.2^2 + 20.06667^2; at 5: 50.16667^2
    assertThat(bowl.at(new double[] {0})).isCloseTo(144, within(1e-6));
    assertThat(bowl.at(new double[] {2})).isCloseTo(454.511111, within(1e-5));
    assertThat(bowl.at(new double[] {5})).isCloseTo(2516.694444, within(1e-5));
  }

  /// The tap has 150 mg/L of calcium, 50 under the end: (2.4 n - 24)^2 + (n/30 + [10 n - 50])^2 is
  /// least at n = (57.6 + 501.6667)/(5.76 + 100.6678) = 5.254894, which is h = 2.548938 over. A
  /// bowl that touches there may bend by c = 1/300^2 + (1 + 2/300) h (h + 100)/(h + 50)^2 =
  /// 0.0953013.
  @Test
  void overAnEndTheBowlBendsAsFarAsItMay() {
    DoseLine line = line(SULFATE_290, new double[] {150, 0, 0, 0, 50, 0, 5.8}, GYPSUM);
    assertThat(line.relaxed()[0]).isCloseTo(5.254894, within(1e-6));
    StepSearch.Bowl bowl = line.bowl(1000);
    double n = line.relaxed()[0];
    double least = Math.pow(2.4 * n - 24, 2) + Math.pow(n / 30 + 10 * n - 50, 2);
    for (double at : new double[] {0, 3, 8}) {
      double bent = least + (2.4 * 2.4 + 0.0953013 * 100) * (at - n) * (at - n);
      assertThat(bowl.at(new double[] {at})).isCloseTo(bent, within(1e-4));
    }
    // without a step the regret is 24^2
    assertThat(bowl.at(new double[] {0})).isLessThan(576);
  }

  /// A regret of 100 is a root of 10. Sulfate may be 100 mg/L off: (290 + 100 - 50)/24, 14 steps.
  /// Calcium may go 10 over its end: (200 + 10 - 150)/10, exactly 6 steps.
  @Test
  void noMoreStepsThanTheRegretAllowsAreOfInterest() {
    DoseLine line = line(SULFATE_290, new double[] {150, 0, 0, 0, 50, 0, 5.8}, GYPSUM);
    assertThat(line.bowl(100).most(0)).isEqualTo(6);
  }

  /// An acid takes 10 mg/L of alkalinity and 0.05 of pH, a soda brings 20 mg/L of it and 10 of
  /// sodium. A regret of 1 leaves the pH 0.03: (5.7 - 5.47)/0.05, so 4 of acid. They take 40 mg/L
  /// and alkalinity may be 10 off: (40 + 10)/20, so 2 of soda (sodium alone would allow 9).
  @Test
  void whatOneThingTakesLeavesRoomForAnother() {
    DoseLine line =
        line(
            levels(NONE, NONE, NONE, NONE, NONE, 100, 5.5),
            new double[] {0, 0, 10, 0, 0, 100, 5.7},
            new double[] {0, 0, 0, 0, 0, -10, -0.05},
            new double[] {0, 0, 10, 0, 0, 20, 0});
    StepSearch.Bowl bowl = line.bowl(1);
    assertThat(bowl.most(0)).isEqualTo(4);
    assertThat(bowl.most(1)).isEqualTo(2);
  }

  /// All the alkalinity is wanted and a pH that takes more acid than there is of it: no alkalinity
  /// is (100/10)^2 = 100, and more acid costs nothing from there on, so 18 steps with the pH right.
  /// Two steps are 16 + (0.32/0.03)^2 = 129.8, and both neighbours are worse: 132.4 and 136.
  @Test
  void anAcidAloneGoesOnWhereNoAlkalinityIsLeft() {
    double[] bare = {0, 0, 0, 0, 0, 100, 5.8};
    double[] acid = {0, 0, 0, 0, 0, -20, -0.02};
    double[] found =
        LiquorDoses.stepCounts(
            levels(NONE, NONE, NONE, NONE, NONE, 100, 5.44), 1, straight(bare, acid));
    assertThat(found).containsExactly(18);
  }
}
