package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/// What the search for doses rests on: the bowl lies nowhere above the regret and touches it at the
/// best doses without steps; under a bowl the search finds what going through all steps finds.
class BowlUnderTheRegretTest {
  private static final double[] USUAL_END = {200, 30, 100, 250, 400};

  /// Wishes that push ions which nobody asked for past their usual ends, and others.
  private static double[] wish(RandomGenerator luck) {
    double[] wanted = new double[7];
    Arrays.setAll(
        wanted, k -> k < 6 && luck.nextInt(2) == 0 ? 500 * luck.nextDouble() : Double.NaN);
    wanted[luck.nextInt(5)] = 100 + 400 * luck.nextDouble();
    wanted[6] = luck.nextInt(2) == 0 ? 5.2 + 0.3 * luck.nextDouble() : Double.NaN;
    return wanted;
  }

  private static double[][] house(RandomGenerator luck) {
    double[][] perStep = new double[4][7];
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 5; k++) {
        perStep[i][k] = luck.nextInt(3) == 0 ? 15 * luck.nextDouble() : 0;
      }
      perStep[i][luck.nextInt(5)] += 4 + 8 * luck.nextDouble();
      perStep[i][6] = -0.01 * luck.nextDouble();
    }
    perStep[3][5] = -8 - 10 * luck.nextDouble();
    perStep[3][6] = -0.02 - 0.03 * luck.nextDouble();
    return perStep;
  }

  private static LiquorLevels levels(double[] c) {
    return new LiquorLevels(c[0], c[1], c[2], c[3], c[4], c[5], c[6]);
  }

  private static double[] got(double[] bare, double[][] perStep, double[] counts) {
    double[] got = bare.clone();
    for (int i = 0; i < counts.length; i++) {
      for (int k = 0; k < 7; k++) {
        got[k] += counts[i] * perStep[i][k];
      }
    }
    return got;
  }

  private static double regret(double[] bare, double[] wanted, double[] got) {
    double sum = 0;
    for (int k = 0; k < 6; k++) {
      boolean asked = !Double.isNaN(wanted[k]);
      boolean free = k == 5 && !asked && !Double.isNaN(wanted[6]);
      double off = asked ? (got[k] - wanted[k]) / 10 : free ? 0 : (got[k] - bare[k]) / 300;
      double over = asked || k == 5 ? 0 : Math.max(0, got[k] - Math.max(bare[k], USUAL_END[k]));
      sum += (off + over) * (off + over);
    }
    return Double.isNaN(wanted[6]) ? sum : sum + Math.pow((got[6] - wanted[6]) / 0.03, 2);
  }

  @Test
  void theBowlLiesNowhereAboveTheRegretAndTouchesItAtItsCentre() {
    int[] over = {0};
    int[] atEnd = {0};
    Cases.each(
        300,
        luck -> {
          double[] wanted = wish(luck);
          double[][] perStep = house(luck);
          double[] bare = {20, 5, 10, 15, 25, 2000, 5.8};
          LiquorRegret regret = new LiquorRegret(levels(wanted), levels(bare));
          DoseLine line =
              DoseLine.at(
                  new double[4],
                  List.of(0, 1, 2, 3),
                  regret,
                  counts -> levels(got(bare, perStep, counts)));
          double[] best = line.relaxed();
          double least = regret(bare, wanted, got(bare, perStep, best));
          StepSearch.Bowl bowl = line.bowl(least + 10);
          assertThat(bowl.floor()).isCloseTo(least, within(2e-3 + 1e-6 * least));
          assertThat(bowl.at(best)).isCloseTo(bowl.floor(), within(1e-9));
          for (int i = 0; i < 4; i++) {
            // Flat along what is in use, uphill along what is not.
            double[] more = best.clone();
            more[i] += 1e-4;
            double uphill = (bowl.at(more) - bowl.floor()) / 1e-4;
            assertThat(uphill).isGreaterThan(-1e-2);
            if (best[i] > 0) {
              assertThat(uphill).isLessThan(0.05);
            }
          }
          for (int tried = 0; tried < 60; tried++) {
            double far = tried < 20 ? 0.5 : tried < 40 ? 5 : 40;
            double[] counts =
                IntStream.range(0, 4)
                    .mapToDouble(i -> Math.max(0, best[i] + far * (2 * luck.nextDouble() - 1)))
                    .toArray();
            double here = regret(bare, wanted, got(bare, perStep, counts));
            boolean inside = IntStream.range(0, 4).allMatch(i -> counts[i] <= bowl.most(i));
            if (inside) {
              assertThat(bowl.at(counts)).isLessThan(here + 1e-3 + 1e-6 * here);
            } else if (IntStream.range(0, 4).anyMatch(i -> counts[i] > bowl.most(i) + 1)) {
              assertThat(here).isGreaterThan(least + 10 - 1e-6);
            }
          }
          double[] there = got(bare, perStep, best);
          for (int k = 0; k < 5; k++) {
            double past = Double.isNaN(wanted[k]) ? there[k] - USUAL_END[k] : -1;
            over[0] += past > 0.01 ? 1 : 0;
            atEnd[0] += Math.abs(past) < 0.01 ? 1 : 0;
          }
        });
    assertThat(over[0]).isGreaterThan(20);
    assertThat(atEnd[0]).isGreaterThan(5);
  }

  /// Random bowls of three things, one of which may hang on the others; the regret is the bowl and
  /// a nuisance for each dose. All steps up to 12 are gone through.
  @Test
  void underABowlTheSearchFindsTheBestOfAllSteps() {
    int[] better = {0};
    Cases.each(
        200,
        luck -> {
          double[][] columns = new double[3][3];
          double[] slopes = new double[3];
          double[] centre = new double[3];
          for (int i = 0; i < 3; i++) {
            boolean out = luck.nextInt(4) == 0;
            centre[i] = out ? 0 : 12 * luck.nextDouble();
            slopes[i] = out ? luck.nextDouble() : 0;
            for (int k = 0; k < 3; k++) {
              columns[i][k] = 2 * luck.nextDouble() - 1;
            }
          }
          if (luck.nextInt(3) == 0) {
            Arrays.setAll(columns[2], k -> columns[0][k] - columns[1][k]);
          }
          StepSearch.Bowl bowl =
              new StepSearch.Bowl(0.5, centre, slopes, columns, new double[] {12, 12, 12});
          double[] start = Arrays.stream(centre).map(Math::rint).toArray();
          double[] found = StepSearch.nearest(bowl, start, x -> regret(bowl, x));
          double least = Double.POSITIVE_INFINITY;
          for (int at = 0; at < 13 * 13 * 13; at++) {
            double[] tried = {at % 13, Math.floor(at / 13.0) % 13, Math.floor(at / 169.0)};
            least = Math.min(least, regret(bowl, tried));
          }
          assertThat(regret(bowl, found)).isBetween(least - 1e-9, least + 1.01e-4);
          better[0] += regret(bowl, start) > least + 0.1 ? 1 : 0;
        });
    assertThat(better[0]).isGreaterThan(50);
  }

  private static double regret(StepSearch.Bowl bowl, double[] counts) {
    return bowl.at(counts) + 1e-4 * Arrays.stream(counts).filter(count -> count > 0).count();
  }
}
