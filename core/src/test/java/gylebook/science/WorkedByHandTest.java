package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import org.junit.jupiter.api.Test;

/// Short functions that are offered as single calculations, each against a published value or one
/// that was worked with pencil and paper from the definition that stands beside it.
class WorkedByHandTest {
  /// NBS Circular 440 has 12.3870 and 19.3311 for these gravities; the short form is its author's.
  @Test
  void theShortFormOfTheSugarTableStaysNearIt() {
    assertThat(NbsC440Scale.shortPlato(1.05))
        .isCloseTo(12.3870, within(0.003))
        .isCloseTo(12.385165, within(1e-5));
    assertThat(NbsC440Scale.shortPlato(1.08))
        .isCloseTo(19.3311, within(0.003))
        .isCloseTo(19.329611, within(1e-5));
  }

  /// The Oxford Companion's rule for 3.9448 % of alcohol, 4.3529 % of extract, 1.00976 and 12 US
  /// oz: 6.9 x 3.9448 + 4 x 4.2529 = 44.231 kcal a 100 g, 158.6 kcal a glass.
  @Test
  void aGlassHasTheEnergyOfItsAlcoholAndExtract() {
    FoodEnergy.Energy glass = FoodEnergy.energy(0.039448, 4.3529, 1.00976, 0.001, 355);
    assertThat(glass.glassKcal()).isCloseTo(158.6, within(0.05));
    assertThat(glass.glassKj()).isCloseTo(158.6 * 4.184, within(0.3));
    assertThat(glass.beerKjPerKg()).isCloseTo(442.31 * 4.184, within(0.1));
    assertThat(glass.beerKjPerL()).isCloseTo(442.31 * 4.184 * 1.00976, within(0.1));
  }

  /// A typical pale wort ferments 65 to 68 % really and 80 to 83 % apparently.
  @Test
  void sugarsGiveTheLimitOfAttenuation() {
    double limit = Attenuation.apparentFrac(10, 45, 13, 100);
    assertThat(limit).isCloseTo(0.68 / 0.8192, within(1e-12));
    assertThat(limit).isCloseTo(0.83, within(0.005));
  }

  /// q = 0.232: RE = (2.784 + 2.5)/1.232 = 4.28896; 0.01 to 0.09 P below the laws solved together.
  @Test
  void theMovingShortcutIsALittleLow() {
    Alcohol.Strength shortcut = AlcoholShortcut.movingShare(12, 2.5);
    assertThat(shortcut.realExtractPlato()).isCloseTo(4.288961, within(1e-5));
    assertThat(100 * shortcut.byMassFrac()).isCloseTo(3.977797, within(1e-5));
    double laws = Alcohol.fromExtracts(12, 2.5).realExtractPlato();
    assertThat(laws - shortcut.realExtractPlato()).isBetween(0.01, 0.09);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AlcoholShortcut.movingShare(12, 13))
        .withMessageContaining("13");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AlcoholShortcut.fixedShare(12, 13))
        .withMessageContaining("13");
  }

  /// 46 kg from 18 to 69 C at 5500 W: 46 x 4186 x 51/5500 s, 29.8 min.
  @Test
  void heatingTakesMassTimesHeatTimesRiseOverPower() {
    assertThat(Mixing.heatingSec(46, 18, 69, 5500, 4186)).isCloseTo(1785.5, within(0.1));
  }

  /// 1 + 2 x 16.5e-6 x 80: a dip stick at 100 C understates by 0.26 %.
  @Test
  void aHotKettleHoldsMoreThanItsMarksSay() {
    assertThat(Shrinkage.dippedL(30, 100, 20, 16.5e-6)).isCloseTo(30.0792, within(1e-9));
  }

  @Test
  void whatTheKettleLeavesBehind() {
    assertThat(Absorption.hopsL(0.1, 8)).isCloseTo(0.8, within(1e-12));
    assertThat(Absorption.breakL(6, 0.2)).isCloseTo(1.2, within(1e-12));
    assertThat(Absorption.wortKgPerKg(0.9, 0.12)).isCloseTo(0.9 / 0.88, within(1e-12));
    // A hectolitre leaves 0.7 to 1.4 kg of spent hops and 0.21 to 0.28 kg of trub (a supplier).
    Absorption.Left left = Absorption.residue(100);
    assertThat(left.hopsLeastKg()).isCloseTo(0.7, within(1e-9));
    assertThat(left.hopsMostKg()).isCloseTo(1.4, within(1e-9));
    assertThat(left.trubLeastKg()).isCloseTo(0.21, within(1e-9));
    assertThat(left.trubMostKg()).isCloseTo(0.28, within(1e-9));
  }

  /// 20 L of 1.050 hold 2.597 kg of extract.
  @Test
  void yieldsAreProductsOfTheirLinks() {
    BrewhouseYield.Yields chain = BrewhouseYield.yields(0.95, 0.85, 0.9);
    assertThat(chain.mashFrac()).isCloseTo(0.8075, within(1e-12));
    assertThat(chain.brewhouseFrac()).isCloseTo(0.72675, within(1e-12));
    assertThat(BrewhouseYield.measuredFrac(20, 1.05, 3.5)).isCloseTo(2.597 / 3.5, within(0.001));
  }

  /// 240 V and 5500 W: 10.473 ohm; 5500 W in 4 L/min: 20 K; 68 kW/m2 over 1500: 45 K.
  @Test
  void theElementsOhmsItsStreamAndItsSheath() {
    assertThat(Element.resistanceOhm(5500, 240)).isCloseTo(10.473, within(0.001));
    assertThat(Element.streamRiseK(5500, 4 / 60.0, 0.98, 4186)).isCloseTo(20.11, within(0.01));
    assertThat(Element.superheatK(68_000, 1500)).isCloseTo(45.333, within(0.001));
  }

  /// 22.9 A through 8 m of 5.26 mm2 (10 AWG), there and back: 1.2 V.
  @Test
  void theCableDropsByItsTwoConductors() {
    assertThat(Circuit.cableDropV(22.9, 8, 5.26e-6)).isCloseTo(1.198, within(0.001));
  }

  @Test
  void calibrationsShiftAndDialsAreJudgedByTheirSpan() {
    assertThat(Calibration.shiftedC(66, 0.3)).isCloseTo(65.7, within(1e-12));
    assertThat(Calibration.dialLimitK(0, 120, 0.01)).isCloseTo(1.2, within(1e-12));
    assertThat(Calibration.dialLimitK(-20, 120, 0.01)).isCloseTo(1.4, within(1e-12));
    assertThat(HopStorage.indexRatio(0.62, 2)).isCloseTo(0.31, within(1e-12));
    assertThat(Starter.yieldCountPerMl(100e6, 152e6, 7)).isCloseTo(7.4e6, within(0.05e6));
  }

  /// A maker's 6 mm sheath shows nine tenths in 23.2 s: about 10 s of time constant.
  @Test
  void aProbesTimeConstantAndItsReading() {
    assertThat(SensorLag.lagSec(23.2, 0.9)).isCloseTo(10.076, within(0.001));
    assertThat(SensorLag.responseSec(10, 0.9)).isCloseTo(23.0259, within(0.0001));
    assertThat(SensorLag.responseSec(10, 0)).isZero();
    // One time constant from 20 towards 66 C: 66 - 46/e.
    assertThat(SensorLag.readingC(20, 66, 10, 10)).isCloseTo(49.0776, within(0.0001));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SensorLag.responseSec(10, 1))
        .withMessageContaining("below 1");
  }

  /// Churchill and Chu for a horizontal tube, Ra 1e6 and Pr 0.71, worked apart: 14.5372.
  @Test
  void theFilmOnATubeIsChurchillAndChus() {
    assertThat(WallHeat.tubeNusseltNumber(1e6 / 0.71, 0.71)).isCloseTo(14.53724, within(1e-4));
    assertThat(WallHeat.lossWPerK(0.62, 565, 6)).isCloseTo(3.681, within(0.001));
  }

  /// Over a small hot top the film goes with the length by -1/4, over a large one not at all.
  @Test
  void theFilmOnATopKnowsBothRegimes() {
    double small = WallHeat.topWPerM2K(0.1, 64, 20, 101.325);
    double twice = WallHeat.topWPerM2K(0.2, 64, 20, 101.325);
    assertThat(small / twice).isCloseTo(Math.pow(2, 0.25), within(1e-9));
    double large = WallHeat.topWPerM2K(0.8, 64, 20, 101.325);
    assertThat(WallHeat.topWPerM2K(1.6, 64, 20, 101.325)).isCloseTo(large, within(1e-9));
    assertThat(WallHeat.topWPerM2K(0.42, 64, 20, 101.325)).isBetween(5.0, 7.5);
  }

  /// Skogestad's example, reduced to two lags: 2 and 1.2, delay 0.77.
  @Test
  void theHalfRuleKeepsTwoLags() {
    double[] lags = {2, 1, 0.4, 0.2, 0.05, 0.05, 0.05};
    double[] zeros = {-0.3, 0.08};
    ControllerTuning.Reduced two = ControllerTuning.secondOrder(lags, zeros, 0);
    assertThat(two.lagSec()).isCloseTo(2, within(1e-12));
    assertThat(two.secondLagSec()).isCloseTo(1.2, within(1e-12));
    assertThat(two.delaySec()).isCloseTo(0.77, within(1e-12));
    ControllerTuning.Reduced one = ControllerTuning.secondOrder(new double[] {3}, new double[0], 1);
    assertThat(one.lagSec()).isEqualTo(3);
    assertThat(one.secondLagSec()).isZero();
    assertThat(one.delaySec()).isEqualTo(1);
    ControllerTuning.Reduced pair =
        ControllerTuning.secondOrder(new double[] {1, 3}, new double[0], 1);
    assertThat(pair.secondLagSec()).isEqualTo(1);
    assertThat(pair.delaySec()).isEqualTo(1);
    ControllerTuning.Reduced first =
        ControllerTuning.firstOrder(new double[] {3, 1}, new double[0], 1);
    assertThat(first.lagSec()).isEqualTo(3.5);
    assertThat(first.delaySec()).isEqualTo(1.5);
    assertThat(ControllerTuning.firstOrder(new double[] {3}, new double[0], 1).lagSec())
        .isEqualTo(3);
  }

  /// What a rest shall reach, it reaches and does not leave again; where it rises first, the time
  /// lies behind the peak. A rise of ten kelvin splits three times as fast.
  @Test
  void aDiacetylRestEndsWhereTheCurveLastCrosses() {
    assertThat(Diacetyl.splitPerHr(20)).isCloseTo(0.02, within(1e-12));
    assertThat(Diacetyl.splitPerHr(30)).isCloseTo(0.06, within(1e-12));
    assertThat(Diacetyl.splitPerHr(10)).isCloseTo(0.02 / 3, within(1e-12));
    Cases.each(
        120,
        random -> {
          double beerC = 8 + 16 * random.nextDouble();
          double precursor = 0.05 + 4 * random.nextDouble();
          double free = random.nextInt(3) == 0 ? 0 : 0.5 * random.nextDouble();
          double wanted = 0.02 + 0.2 * random.nextDouble();
          double rest = Diacetyl.restHr(beerC, precursor, free, wanted);
          double split = Diacetyl.splitPerHr(beerC);
          double most = 0;
          for (int i = 0; i <= 400; i++) {
            double later = rest + i * 0.25;
            double left = left(precursor, free, later, split);
            assertThat(left).isLessThanOrEqualTo(wanted + 1e-8);
          }
          for (int i = 0; i <= 2000; i++) {
            most = Math.max(most, left(precursor, free, i * 0.1, split));
          }
          if (rest > 0) {
            assertThat(left(precursor, free, rest, split)).isCloseTo(wanted, within(1e-8));
            assertThat(most).isGreaterThan(wanted - 1e-8);
          } else {
            assertThat(most).isLessThanOrEqualTo(wanted * 1.001);
          }
        });
  }

  private static double left(double precursor, double free, double hours, double split) {
    // 86.09/132.11 to three digits; uptake is fifteen times the split at any warmth: 0.3 and 0.02
    // an hour at 20 C.
    return Diacetyl.leftMgPerL(precursor, free, hours, split, 15 * split, 0.652);
  }

  /// Heat is neither made nor lost, and it passes by UA times the logarithmic mean difference: the
  /// definition, with UA at the mean warmth of each stream.
  @Test
  void aWarmChillersOutletsCloseItsBalances() {
    Cases.each(
        60,
        random -> {
          double wort = 0.03 + 0.1 * random.nextDouble();
          double water = 0.05 + 0.15 * random.nextDouble();
          double hot = 2e-4 * Math.exp(0.5 * random.nextGaussian());
          double cold = 2e-4 * Math.exp(0.5 * random.nextGaussian());
          Chiller.Outlets out = ChillerFilms.outlets(wort, 95, water, 12, hot, cold, 4000);
          double given = wort * 4000 * (95 - out.wortC());
          double taken = water * 4184 * (out.waterC() - 12);
          assertThat(taken).isCloseTo(given, within(1e-6 * given));
          double warmEnd = 95 - out.waterC();
          double coldEnd = out.wortC() - 12;
          double mean =
              Math.abs(warmEnd - coldEnd) < 1e-6
                  ? warmEnd
                  : (warmEnd - coldEnd) / Math.log(warmEnd / coldEnd);
          double ua =
              ChillerFilms.uaWPerK(
                  wort, (95 + out.wortC()) / 2, water, (12 + out.waterC()) / 2, hot, cold);
          assertThat(ua * mean).isCloseTo(given, within(1e-3 * given));
        });
  }
}
