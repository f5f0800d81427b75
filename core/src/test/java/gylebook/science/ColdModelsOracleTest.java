package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Integrated;
import org.junit.jupiter.api.Test;

/// The two published fermentation models and the plain rule that solves them, against the adaptive
/// integrator of order eight in Hipparchus.
class ColdModelsOracleTest {
  private static final double[] TANK = {1.92, 0.08, 2, 130, 0, 0, 0};
  private static final double[] SUGARS = {100, 220, 40, 180, 0};

  @Test
  void thePlainRuleFollowsTheAdaptiveOneInTheLatentYeastModel() {
    for (double fermentC : new double[] {10, 12, 16, 20, 24}) {
      double[] oracle = adaptive(DeAndresToro1998.slope(fermentC, 130), TANK, 100);
      DeAndresToro1998.Tank tank = DeAndresToro1998.tank(fermentC, 100, 130, 1.92, 0.08, 2);
      assertThat(tank.activeGPerL()).isCloseTo(oracle[1], within(1e-5));
      assertThat(tank.sugarGPerL()).isCloseTo(oracle[3], within(1e-4));
      assertThat(tank.ethanolGPerL()).isCloseTo(oracle[4], within(1e-4));
    }
  }

  @Test
  void thePlainRuleFollowsTheAdaptiveOneInTheThreeSugarModel() {
    for (double fermentC : new double[] {8, 12, 16, 20}) {
      double[] oracle = adaptive(GeeRamirez1988.slope(fermentC), SUGARS, 60);
      GeeRamirez1988.Tank tank = GeeRamirez1988.tank(fermentC, 60, 100, 220, 40, 180);
      assertThat(tank.maltoseMolPerM3()).isCloseTo(oracle[1], within(1e-3));
      assertThat(tank.ethanolMolPerM3()).isCloseTo(oracle[4], within(1e-3));
    }
  }

  /// The sheet of constants in circulation: at 20 C most of the sugar stays and the alcohol is more
  /// than 0.51 of the sugar that went (Gay-Lussac's limit). No forecast there, so a caution.
  @Test
  void theLatentYeastModelBreaksDownAboveSixteenDegreesAndSaysSo() {
    DeAndresToro1998.Tank warm = DeAndresToro1998.tank(20, 160, 130, 1.92, 0.08, 2);
    assertThat(warm.sugarGPerL()).isGreaterThan(80);
    assertThat(warm.ethanolGPerL()).isGreaterThan(0.511 * (130 - warm.sugarGPerL()));
    assertThat(DeAndresToro1998.RANGE.caution(16)).isEmpty();
    assertThat(DeAndresToro1998.RANGE.caution(20)).isPresent();
    DeAndresToro1998.Tank cool = DeAndresToro1998.tank(12, 160, 130, 1.92, 0.08, 2);
    assertThat(cool.sugarGPerL()).isLessThan(0.1);
    assertThat(cool.ethanolGPerL()).isLessThan(0.511 * 130);
  }

  /// Constants of the priors: the logistic fitted to the model at 12 C and 14 C has its middle at
  /// 60.7 and 50.2 h; here the model itself is half-way near there.
  @Test
  void theLogisticsPriorTimesAgreeWithTheLagerModelWhereItHolds() {
    assertThat(FermentationCurve.timeHr(0.5, 12, 0.10, 3.2, 1, 2.2)).isBetween(50.0, 72.0);
    DeAndresToro1998.Tank half = DeAndresToro1998.tank(12, 60.7, 130, 1.92, 0.08, 2);
    assertThat(half.sugarGPerL()).isBetween(0.4 * 130, 0.6 * 130);
  }

  private static double[] adaptive(FixedStep.Slope slope, double[] start, double hours) {
    return Integrated.after(hours, 10, start, (_, y) -> slope.at(y));
  }
}
