package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import org.junit.jupiter.api.Test;

/// Thin mashes, the offset of a malt, a warm refractometer, a boil under a lid, a starter in steps,
/// and what a controller does: each against something from outside.
class MashAndLoopTest {
  /// Rows 7 to 17 C and columns 10, 15, 20 % of table I of OIV-MA-AS2-02, as read.
  private static final double[][] READ_COLD = {
    {7, -0.74, -0.78, -0.82},
    {8, -0.69, -0.73, -0.76},
    {9, -0.64, -0.67, -0.71},
    {10, -0.59, -0.62, -0.65},
    {11, -0.54, -0.57, -0.59},
    {12, -0.49, -0.51, -0.53},
    {13, -0.43, -0.45, -0.47},
    {14, -0.38, -0.39, -0.40},
    {15, -0.32, -0.33, -0.34},
    {16, -0.26, -0.27, -0.28},
    {17, -0.20, -0.20, -0.21},
  };

  @Test
  void aColdRefractometerReadsTooStrongAsTheTableHasIt() {
    for (double[] row : READ_COLD) {
      for (int column = 0; column < 3; column++) {
        double shown = 10 + 5 * column;
        assertThat(RefractometerWarmth.read(shown, row[0]).correctionPlato())
            .as(shown + " at " + row[0])
            .isCloseTo(row[column + 1], within(0.006));
      }
    }
  }

  /// +0.38 at 25 C and +0.79 at 30 C for 10 %: the same table, from memory.
  @Test
  void aWarmRefractometerReadsTooWeakAsTheTableIsRemembered() {
    assertThat(RefractometerWarmth.read(10, 25).correctionPlato()).isCloseTo(0.38, within(0.025));
    assertThat(RefractometerWarmth.read(10, 30).correctionPlato()).isCloseTo(0.79, within(0.03));
    assertThat(RefractometerWarmth.read(12, 20).truePlato()).isEqualTo(12);
  }

  /// The prism's error hardly depends on strength, the spindle's a little, and they are not the
  /// same.
  @Test
  void aPrismIsNotCorrectedLikeASpindle() {
    double prism = RefractometerWarmth.read(12, 30).correctionPlato();
    assertThat(prism - RefractometerWarmth.read(6, 30).correctionPlato()).isBetween(-0.02, 0.02);
    assertThat(prism).isGreaterThan(Hydrometer.correctionPlato(12, 30, 20, 25e-6) + 0.05);
  }

  /// Muller 1991: a thin mash acts like a hotter one. Where the enzyme's death goes with the
  /// liquor, the shift must be the warmth that kills it as many times faster.
  @Test
  void aThinMashActsHotterByTheWarmthThatKillsTheEnzymeAsFast() {
    Cases.each(
        200,
        random -> {
          double mashC = 60 + 15 * random.nextDouble();
          double liquor = 2 + 6 * random.nextDouble();
          MashThickness.Shift shift = MashThickness.shift(mashC, liquor);
          double faster =
              BetaAmylase.labileDecayPerSec(mashC + shift.mostK())
                  / BetaAmylase.labileDecayPerSec(mashC);
          assertThat(faster).isCloseTo(liquor / 3, within(1e-6));
          assertThat(Math.abs(shift.middleK())).isBetween(0.0, Math.abs(shift.mostK()));
          assertThat(Math.signum(shift.mostK())).isEqualTo(Math.signum(liquor - 3));
          assertThat((shift.mostLimitFrac() - shift.middleLimitFrac()) * (liquor - 3))
              .isGreaterThanOrEqualTo(0);
        });
  }

  /// The sheet of the enzyme's two lives: half as long in thin mashes as at 2.5 L/kg, which is 1.6
  /// K; one kelvin near 66 C costs 2 points of attenuation, as the measured curve has it.
  @Test
  void twiceTheLiquorIsAtMostAboutOneAndAHalfKelvin() {
    MashThickness.Shift shift = MashThickness.shift(66, 6);
    assertThat(shift.leastK()).isZero();
    assertThat(shift.mostK()).isBetween(1.4, 1.8);
    assertThat(shift.mostLimitFrac()).isEqualTo(Attenuation.limitFrac(66));
    assertThat(shift.mostLimitFrac() - shift.leastLimitFrac()).isBetween(0.02, 0.045);
    assertThat(shift.middleLimitFrac()).isBetween(shift.leastLimitFrac(), shift.mostLimitFrac());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MashThickness.shift(66, 0))
        .withMessageContaining("0.5");
  }

  /// Two tests after a prior are the mean of three numbers, weighted by the inverse squares of
  /// their doubts (any book of statistics), worked by hand here.
  @Test
  void twoForcedFermentsAreTheWeightedMeanOfBothAndTheCurve() {
    double curve = Fermentability.afterRestFrac(66.7, 60);
    MaltOffset.Learnt first = MaltOffset.learnt(66.7, curve + 0.02, 60, 0.01, 0, 0.03);
    MaltOffset.Learnt second =
        MaltOffset.learnt(66.7, curve + 0.04, 60, 0.01, first.offsetRatio(), first.doubtFrac());
    assertThat(first.curveFrac()).isEqualTo(curve);
    assertThat(second.offsetRatio()).isCloseTo(600 / 21_111.111, within(1e-9));
    assertThat(second.doubtFrac()).isCloseTo(1 / Math.sqrt(21_111.111), within(1e-9));
    assertThat(second.nextFrac()).isCloseTo(curve + second.offsetRatio(), within(1e-12));
    assertThat(second.nextDoubtFrac())
        .isCloseTo(Math.hypot(second.doubtFrac(), 0.01), within(1e-12));
  }

  @Test
  void offsetsAreRefusedWhereNothingCouldBeLearnt() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MaltOffset.learnt(66, 0.78, 60, 0, 0, 0.03))
        .withMessageContaining("doubt of the test");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MaltOffset.learnt(66, 1.2, 60, 0.01, 0, 0.03))
        .withMessageContaining("1.2");
    assertThat(MaltOffset.learnt(62, 1, 600, 1e-6, 0.3, 0.3).nextFrac()).isCloseTo(1, within(1e-6));
  }

  /// From 1000 ug/L an hour's boil at 35 min half-life leaves 305 and 38 ug/L (Wilson & Booer); a
  /// closed lid keeps all of it, and a stand at 94 C adds what splits in it: the half-life doubles
  /// every 6 K.
  @Test
  void aLidKeepsTheSulfideInAndAHotStandMakesMore() {
    double halfLife = DimethylSulfide.halfLifeMin(100, 5.35);
    DimethylSulfide.Stood open = DimethylSulfide.afterStand(1, 60, 0.17, 1, 0, 90, 100);
    double left = Math.pow(0.5, 60 / halfLife);
    assertThat(open.precursorMgPerL()).isCloseTo(left, within(1e-9));
    assertThat(open.boiledFreeMgPerL()).isBetween(0.03, 0.045);
    assertThat(open.stoodFreeMgPerL()).isEqualTo(open.boiledFreeMgPerL());
    DimethylSulfide.Stood shut = DimethylSulfide.afterStand(1, 60, 0.17, 0, 0, 90, 100);
    assertThat(shut.boiledFreeMgPerL()).isCloseTo(1 - left, within(1e-9));
    DimethylSulfide.Stood stood = DimethylSulfide.afterStand(1, 60, 0.17, 1, 2 * halfLife, 94, 100);
    assertThat(stood.stoodFreeMgPerL() - open.stoodFreeMgPerL()).isCloseTo(left / 2, within(1e-9));
    assertThat(stood.precursorMgPerL()).isCloseTo(left / 2, within(1e-9));
  }

  /// White & Zainasheff's growth of 7.4 million per mL and degree, applied twice.
  @Test
  void aStarterInStepsGrowsInBoth() {
    Starter.Stepped stepped = Starter.stepped(50e9, 1, 3, 7, 7.4e6);
    assertThat(stepped.firstCount()).isCloseTo(50e9 + 51.8e9, within(1e3));
    assertThat(stepped.secondCount()).isCloseTo(101.8e9 + 155.4e9, within(1e3));
    assertThat(stepped.singleCount()).isCloseTo(50e9 + 155.4e9, within(1e3));
    Starter.Stepped full = Starter.stepped(200e9, 1, 2, 10, 14e6);
    assertThat(full.firstCount()).isEqualTo(250e9);
    assertThat(full.secondCount()).isEqualTo(500e9);
  }

  /// Skogestad 2003 gives his settings for an integrating process (closed loop as fast as the
  /// delay) a gain margin of 2.96 and room for 1.59 delays more (table 1, from memory).
  @Test
  void publishedSettingsHaveThePublishedMargins() {
    for (double delay : new double[] {5, 30, 120}) {
      ControllerTuning.Settings calm = ControllerTuning.kettleSettings(0.027, delay, delay);
      ControlLoop.Margins margins =
          ControlLoop.margins(calm.gainPerK(), calm.integralSec(), 0.027, delay);
      assertThat(margins.gainRatio()).isCloseTo(2.96, within(0.01));
      assertThat(margins.delaySec()).isCloseTo(1.59 * delay, within(0.01 * delay));
      assertThat(margins.steady()).isTrue();
    }
  }

  /// Without an integral part the limit is `Kc k' theta = pi/2`, and where the gain is 1 the loop
  /// stands `pi/2 - Kc k' theta` before it: every book of control has it.
  @Test
  void withoutAnIntegralTheLimitIsAQuarterTurn() {
    ControlLoop.Margins margins = ControlLoop.margins(0.5, 1e9, 0.02, 40);
    assertThat(margins.gainRatio()).isCloseTo(Math.PI / 2 / 0.4, within(1e-5));
    assertThat(margins.delaySec()).isCloseTo((Math.PI / 2 - 0.4) / 0.01, within(1e-3));
    assertThat(ControlLoop.margins(0.5, 30, 0.02, 40).gainRatio()).isZero();
    assertThat(ControlLoop.margins(0.5, 30, 0.02, 40).steady()).isFalse();
    ControlLoop.Margins bold = ControlLoop.margins(3, 300, 0.027, 40);
    assertThat(bold.gainRatio()).isLessThan(1);
    assertThat(bold.delaySec()).isNegative();
    assertThat(bold.steady()).isFalse();
  }

  /// The limit comes from angles, the trial from seconds: they must agree on who swings.
  @Test
  void whoIsBeyondTheMarginSwingsAndWhoIsWithinComesToRest() {
    Cases.each(
        40,
        random -> {
          double rate = 0.2 + 0.3 * random.nextDouble();
          double delay = 20 + random.nextInt(60);
          double integral = delay * (4 + 20 * random.nextDouble());
          double one = ControlLoop.margins(0.01, integral, rate, delay).gainRatio() * 0.01;
          // A probe without lag; half a second of the steps themselves counts as delay.
          ControlLoop.Trial calm = ControlLoop.trial(0.8 * one, integral, rate, delay, 0, 0.5, 0.5);
          ControlLoop.Trial wild =
              ControlLoop.trial(1.15 * one, integral, rate, delay, 0, 0.5, 0.5);
          assertThat(calm.swingK()).isLessThan(0.05);
          assertThat(calm.steady()).isTrue();
          assertThat(wild.swingK()).isGreaterThan(calm.swingK() + 0.1);
        });
  }

  /// The reference kettle: rate 0.027 K/s, delay 20 s, lag 10 s. At full duty 5 K take three
  /// minutes and the delay; calm settings arrive and stay, bold ones with the probe far off never
  /// come to rest.
  @Test
  void calmSettingsArriveAndBoldOnesShootOver() {
    ControlLoop.Trial calm = ControlLoop.trial(0.3, 320, 0.027, 20, 10, 0.05, 5);
    assertThat(calm.steady()).isTrue();
    assertThat(calm.nearSec()).isBetween(4.8 / 0.027, 3 * 4.8 / 0.027);
    assertThat(calm.settledSec()).isBetween(calm.nearSec(), 3600.0);
    assertThat(calm.overK()).isBetween(0.2, 1.5);
    ControlLoop.Trial bold = ControlLoop.trial(2.5, 320, 0.027, 80, 10, 0.05, 5);
    assertThat(bold.overK()).isGreaterThan(calm.overK() + 0.5);
    assertThat(bold.steady()).isFalse();
    assertThat(bold.settledSec()).isGreaterThan(9000);
  }

  /// Another program's reference brew (gain 0.30, 320 s, 5500 W, six minutes open) gave 372 kJ with
  /// the probe in the suction and 1.8 MJ, 15.3 K too hot, with it in the return: 118 kJ/K.
  @Test
  void whoeverStopsThePumpInAutomaticHeatsBlindly() {
    ControlLoop.PumpOff suction = ControlLoop.pumpOff(0.3, 320, 5500, 118_000, 6, 1.38, 240);
    assertThat(suction.heatJ()).isBetween(0.5 * 372e3, 372e3);
    assertThat(suction.hottestK()).isBetween(1.0, 2.6);
    ControlLoop.PumpOff hose = ControlLoop.pumpOff(0.3, 320, 5500, 118_000, 6, 46, 600);
    assertThat(hose.heatJ()).isCloseTo(1.8e6, within(0.08e6));
    assertThat(hose.hottestK()).isCloseTo(15.3, within(1.0));
    assertThat(hose.deafK()).isCloseTo(46 * (1 - Math.exp(-0.6)), within(0.1));
    ControlLoop.PumpOff none = ControlLoop.pumpOff(0.3, 320, 5500, 118_000, 0, 46, 600);
    assertThat(none.heatJ()).isZero();
    assertThat(none.hottestK()).isZero();
  }
}
