package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/// Scores of forecasts: the rows of section H of the rig's table, and what a fair score must do.
class ForecastScoreTest {
  @TestFactory
  Stream<DynamicTest> everyScoreOfTheTableIsAnswered() {
    return checks()
        .tests(
            ReferenceRows.of("rig.csv").stream().filter(row -> row.id().startsWith("H")).toList());
  }

  static Checks checks() {
    return new Checks()
        .kind("CRPS of a normal forecast", row -> normal(row, "N\\(([-0-9.]+),\\s*([-0-9.]+)"))
        .kind("CRPS of an ensemble", ForecastScoreTest::ensemble)
        .kind("probability integral transform", ForecastScoreTest::place)
        .kind(
            "calibration tests",
            row -> ForecastScore.unevenNumber(numbers(row.inputs().split(";", -1)[0])))
        .kind("interval and pinball scores", ForecastScoreTest::rangeOrQuantile);
  }

  private static double normal(ReferenceRow row, String pattern) {
    double[] parts = found(row, pattern);
    return ForecastScore.normalNumber(parts[0], parts[1], row.number("y"));
  }

  private static double place(ReferenceRow row) {
    double[] parts = found(row, "N\\(([-0-9.]+),\\s*([-0-9.]+)\\^2\\)");
    return ForecastScore.placeFrac(parts[0], parts[1], row.number("y"));
  }

  private static double ensemble(ReferenceRow row) {
    double[] members = numbers(row.inputs().split(";", -1)[0]);
    return row.detail().startsWith("fair")
        ? ForecastScore.fairNumber(members, row.number("y"))
        : ForecastScore.membersNumber(members, row.number("y"));
  }

  private static double rangeOrQuantile(ReferenceRow row) {
    if (row.detail().startsWith("pinball")) {
      return ForecastScore.quantileNumber(row.number("q"), row.number("forecast"), row.number("y"));
    }
    throw new AssertionError("which score? " + row);
  }

  private static double[] numbers(String text) {
    return Pattern.compile("-?[0-9]+(\\.[0-9]+)?")
        .matcher(text)
        .results()
        .mapToDouble(found -> Double.parseDouble(found.group()))
        .toArray();
  }

  private static double[] found(ReferenceRow row, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(row.inputs());
    if (!found.find()) {
      throw new AssertionError("no forecast in " + row);
    }
    return new double[] {Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))};
  }

  /// The definition, `int (F(x) - 1{x >= y})^2 dx`, summed in small steps.
  @Test
  void theScoreOfANormalForecastIsItsIntegral() {
    Cases.each(
        20,
        random -> {
          double mean = random.nextDouble(-3, 3);
          double spread = random.nextDouble(0.2, 2);
          double seen = random.nextDouble(-4, 4);
          double sum = 0;
          double step = 0.001;
          for (double x = -20; x < 20; x += step) {
            double over = ForecastScore.placeFrac(mean, spread, x) - (x >= seen ? 1 : 0);
            sum += step * over * over;
          }
          assertThat(ForecastScore.normalNumber(mean, spread, seen)).isCloseTo(sum, within(2e-3));
        });
  }

  @Test
  void manySamplesOfANormalScoreLikeTheNormal() {
    Cases.each(
        10,
        random -> {
          double[] members = new double[1500];
          Arrays.setAll(members, i -> 66 + 0.5 * random.nextGaussian());
          double normal = ForecastScore.normalNumber(66, 0.5, 65.4);
          assertThat(ForecastScore.membersNumber(members, 65.4)).isCloseTo(normal, within(0.04));
          assertThat(ForecastScore.fairNumber(members, 65.4)).isCloseTo(normal, within(0.04));
        });
  }

  /// Nobody gains by claiming less doubt, or more, than there is.
  @Test
  void theTrueSpreadScoresBestInTheLongRun() {
    Cases.each(
        5,
        random -> {
          double[] sums = new double[3];
          double[] claimed = {0.5, 1, 2};
          for (int n = 0; n < 4000; n++) {
            double seen = random.nextGaussian();
            for (int i = 0; i < claimed.length; i++) {
              sums[i] += ForecastScore.normalNumber(0, claimed[i], seen);
            }
          }
          assertThat(sums[1]).isLessThan(sums[0]).isLessThan(sums[2]);
        });
  }

  @Test
  void aForecastWithoutDoubtScoresItsError() {
    assertThat(ForecastScore.membersNumber(new double[] {64}, 65.5)).isEqualTo(1.5);
    // By hand: the mean miss is 0.75, the twelve differences sum to 16; 0.75 - 16/24.
    assertThat(ForecastScore.fairNumber(new double[] {64, 65, 65.5, 66.5}, 65.2))
        .isCloseTo(1.0 / 12, within(1e-12));
    assertThat(ForecastScore.normalNumber(64, 1e-9, 65.5)).isCloseTo(1.5, within(1e-6));
  }

  @Test
  void aRangePaysForItsWidthAndForItsMisses() {
    assertThat(ForecastScore.rangeNumber(64, 66, 65, 0.1)).isEqualTo(2);
    assertThat(ForecastScore.rangeNumber(64, 66, 66.5, 0.1)).isCloseTo(12, within(1e-12));
    assertThat(ForecastScore.rangeNumber(64, 66, 63, 0.2)).isCloseTo(12, within(1e-12));
    assertThat(ForecastScore.quantileNumber(0.9, 66, 65.5)).isCloseTo(0.05, within(1e-12));
    assertThat(ForecastScore.unevenNumber(new double[] {12, 12, 12})).isZero();
  }

  @Test
  void whatIsNoNumberIsRefused() {
    for (double odd : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      refused(() -> ForecastScore.normalNumber(odd, 1, 0));
      refused(() -> ForecastScore.normalNumber(0, odd, 0));
      refused(() -> ForecastScore.normalNumber(0, 1, odd));
      refused(() -> ForecastScore.placeFrac(0, odd, 1));
      refused(() -> ForecastScore.placeFrac(odd, 1, 1));
      refused(() -> ForecastScore.rangeNumber(1, odd, 2, 0.1));
      refused(() -> ForecastScore.rangeNumber(1, 2, odd, 0.1));
      refused(() -> ForecastScore.rangeNumber(1, 2, 3, odd));
      refused(() -> ForecastScore.quantileNumber(odd, 1, 2));
      refused(() -> ForecastScore.quantileNumber(0.5, odd, 2));
      refused(() -> ForecastScore.membersNumber(new double[] {1, odd}, 2));
      refused(() -> ForecastScore.unevenNumber(new double[] {1, odd}));
    }
    refused(() -> ForecastScore.normalNumber(0, 0, 0));
    refused(() -> ForecastScore.rangeNumber(2, 1, 1, 0.1));
    refused(() -> ForecastScore.membersNumber(new double[0], 1));
    refused(() -> ForecastScore.fairNumber(new double[] {1}, 1));
    refused(() -> ForecastScore.unevenNumber(new double[] {0, 0}));
  }

  private static void refused(Runnable asked) {
    assertThatIllegalArgumentException().isThrownBy(asked::run);
  }
}
