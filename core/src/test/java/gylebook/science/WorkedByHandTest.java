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

  /// Lactic acid 88 %: 0.88 x 1.206/90.078 = 11.782 mol/L, 97.18 % of it dissociated at pH 5.4.
  /// Phosphoric acid at 5.4: (10^3.232 + 2 x 10^(3.232 - 1.807) + ...)/(1 + ...) = 1.015 charges.
  /// Sulfuric acid 96 % of 1.835: 17.963 mol/L, two charges but for 10^(1.988 - 5.4).
  @Test
  void acidsDeliverByTheirPk() {
    assertThat(Acid.lacticMeqPerMl(0.88, 1.206, 5.4)).isCloseTo(11.45, within(0.005));
    assertThat(Acid.lacticMeqPerMl(0.88, 1.206, 5.2)).isCloseTo(11.26, within(0.01));
    // At its own pK an acid is half dissociated.
    assertThat(Acid.lacticMeqPerMl(0.88, 1.206, 3.863)).isCloseTo(5.891, within(0.002));
    assertThat(Acid.phosphoricMeqPerMl(0.85, 1.685, 5.4)).isCloseTo(14.83, within(0.02));
    // Between its second and third pK, 7.207 and 12.346, it has two charges at 9.78: 2.0 x 14.616.
    assertThat(Acid.phosphoricMeqPerMl(0.85, 1.685, 9.7765)).isCloseTo(2 * 14.616, within(0.02));
    assertThat(Acid.phosphoricMeqPerMl(0.85, 1.685, 7.207)).isCloseTo(1.5 * 14.616, within(0.02));
    assertThat(Acid.phosphoricMeqPerMl(0.85, 1.685, 2.168)).isCloseTo(0.5 * 14.616, within(0.02));
    // At 10, the last it is asked for, 10^(10 - 12.346) of the third has gone: 2.00288 charges.
    assertThat(Acid.phosphoricMeqPerMl(0.85, 1.685, 10)).isCloseTo(2.00288 * 14.616, within(0.002));
    assertThat(Acid.sulfuricMeqPerMl(0.96, 1.84, 5.4)).isCloseTo(36.0, within(0.05));
    // At 2, near its second pK of 1.988: 1 + 1/(1 + 10^-0.012) = 1.507 charges of 18.010 mol/L.
    assertThat(Acid.sulfuricMeqPerMl(0.96, 1.84, 2)).isCloseTo(1.5069 * 18.010, within(0.02));
  }

  /// IEC 60751 prints 18.52, 60.26, 80.31, 96.09 and 390.48 ohm for -200, -100, -50, -10 and 850 C.
  @Test
  void aPt100IsReadBackwardsInTheCold() {
    assertThat(Pt100.temperatureC(60.2558)).isCloseTo(-100, within(0.001));
    assertThat(Pt100.temperatureC(80.31)).isCloseTo(-50, within(0.015));
    assertThat(Pt100.temperatureC(96.09)).isCloseTo(-10, within(0.015));
    assertThat(Pt100.temperatureC(18.53)).isCloseTo(-200, within(0.03));
    assertThat(Pt100.temperatureC(390.48)).isCloseTo(850, within(0.02));
    Cases.each(
        200,
        random -> {
          double probeC = -199 + 199 * random.nextDouble();
          assertThat(Pt100.temperatureC(Pt100.resistanceOhm(probeC)))
              .isCloseTo(probeC, within(1e-9));
        });
    assertThat(Pt100.aLimitK(66)).isCloseTo(0.282, within(1e-12));
    assertThat(Pt100.aLimitK(-50)).isCloseTo(0.25, within(1e-12));
    assertThat(Pt100.cLimitK(100)).isCloseTo(1.6, within(1e-12));
  }

  /// The sheet of a hand-held thermometer: 0.5 K of limit is 0.289, a digit of 0.1 is 0.029; with
  /// 0.10, 0.10 and 0.173 it makes 0.37 K, and 0.74 K from a certificate is 0.37 K.
  @Test
  void aThermometersDoubtsAddInSquares() {
    assertThat(Doubt.fromResolutionK(0.1)).isCloseTo(0.0288675, within(1e-7));
    assertThat(Doubt.fromExpandedK(0.74, 2)).isCloseTo(0.37, within(1e-12));
    assertThat(Doubt.fromExpandedK(0.9, 3)).isCloseTo(0.3, within(1e-12));
    assertThat(Doubt.combinedK(0.289, 0.029, 0.10, 0.10, 0.173, 0)).isCloseTo(0.3664, within(1e-4));
    assertThat(Doubt.combinedK(3, 4, 0, 0, 0, 12)).isCloseTo(13, within(1e-12));
    // Two readings are the fewest: 1 and 3 scatter by the root of 2, their mean by 1.
    assertThat(Doubt.ofMean(1, 3)).isCloseTo(1, within(1e-12));
    assertThatIllegalArgumentException().isThrownBy(() -> Doubt.ofMean(1));
    // Far from nought the means matter: 101, 102, 104 against 11, 13, 12.
    assertThat(Doubt.correlation(new double[] {101, 102, 104}, new double[] {11, 13, 12}))
        .isCloseTo(0.3273268, within(1e-6));
  }

  /// 45 K of which 0.211 reach the tip.
  @Test
  void aStemDrawsTheTipTowardsTheHead() {
    assertThat(StemConduction.tipC(66, 21, 0.211)).isCloseTo(66 - 9.495, within(1e-9));
    // m = sqrt(100/(16 x 0.0005)) = 111.8 1/m; 1/cosh(111.8 x 0.02) = 0.2113.
    assertThat(StemConduction.tubeFrac(0.006, 0.0005, 0.02, 100, 16))
        .isCloseTo(0.2113, within(1e-4));
    // A wall of half the diameter is the most there is.
    assertThat(StemConduction.tubeFrac(0.006, 0.003, 0.02, 100, 16)).isBetween(0.5, 0.7);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StemConduction.tubeFrac(0.006, 0.0031, 0.02, 100, 16))
        .withMessageContaining("wall");
  }

  /// Remembered half-lives of alpha-amylase: 72 min at 65 C, 22 at 70 C.
  @Test
  void rememberedAmylaseHalves() {
    assertThat(Brandam2003.alphaLeftFrac(65, 72)).isCloseTo(0.5, within(0.005));
    assertThat(Brandam2003.alphaLeftFrac(70, 22)).isCloseTo(0.5, within(0.01));
    assertThat(Brandam2003.alphaLeftFrac(65, 0)).isEqualTo(1);
  }

  /// Van 't Hoff by hand for phosphoric acid: log K = 19.553 + 4520 x 4.184/(8.314463 ln 10) x
  /// (1/298.15 - 1/339.82), with the minus of a heat set free: 19.147 at 66.67 C; 21.721 falls by
  /// 10100/(8.314463 ln 10) x 0.00041128 = 0.217 to 21.504, 12.346 by 0.317 to 12.029.
  @Test
  void constantsMoveWithTheirHeat() {
    Equilibrium second = Equilibrium.at25(19.553, -4.520);
    assertThat(second.log(25)).isCloseTo(19.553, within(1e-9));
    assertThat(second.log(66.67)).isCloseTo(19.147, within(0.001));
    assertThat(Equilibrium.at25(21.721, -10.1 / 4.184).log(66.67)).isCloseTo(21.504, within(0.001));
    assertThat(Equilibrium.at25(12.346, -3.530).log(66.67)).isCloseTo(12.029, within(0.001));
  }

  /// The lager model's dead yeast and ester as well, by the LSODA routine of a numerical library
  /// with the equations written out once more: at 12 C, and from another start.
  @Test
  void theLagerModelsYeastAndEsterAreThoseOfAnotherSolver() {
    DeAndresToro1998.Tank tank = DeAndresToro1998.tank(12, 48, 130, 1.92, 0.08, 2);
    assertThat(tank.latentGPerL()).isCloseTo(0.0545556922, within(1e-7));
    assertThat(tank.deadGPerL()).isCloseTo(0.333095736, within(1e-6));
    assertThat(tank.esterPpm()).isCloseTo(0.154805224, within(1e-6));
    DeAndresToro1998.Tank warmer = DeAndresToro1998.tank(14, 72, 130, 1.92, 0.08, 2);
    assertThat(warmer.deadGPerL()).isCloseTo(1.31373546, within(1e-5));
    assertThat(warmer.esterPpm()).isCloseTo(1.25482007, within(1e-5));
    DeAndresToro1998.Tank other = DeAndresToro1998.tank(12, 72, 110, 1, 0.5, 4);
    assertThat(other.deadGPerL()).isCloseTo(0.357953706, within(1e-6));
    assertThat(other.sugarGPerL()).isCloseTo(41.9453807, within(1e-5));
    assertThat(other.ethanolGPerL()).isCloseTo(36.5226143, within(1e-5));
    assertThat(other.esterPpm()).isCloseTo(0.188002707, within(1e-6));
  }

  /// A kettle 36 cm across has a floor of pi 0.36^2/4 = 0.1017876 m2: 25 L stand 24.561 cm high,
  /// and 30 cm are 30.536 L.
  @Test
  void aDipStickIsReadBothWays() {
    assertThat(KettleDip.levelM(25, 0.36)).isCloseTo(0.24561, within(1e-5));
    assertThat(KettleDip.volumeL(0.3, 0.36)).isCloseTo(30.536, within(1e-3));
    assertThat(KettleDip.levelM(0, 0.36)).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> KettleDip.levelM(-1, 0.36));
    assertThatIllegalArgumentException().isThrownBy(() -> KettleDip.volumeL(-0.1, 0.36));
    assertThatIllegalArgumentException().isThrownBy(() -> KettleDip.volumeL(0.1, 0.01));
    assertThatIllegalArgumentException().isThrownBy(() -> KettleDip.levelM(1, 6));
  }

  /// Drawn out evenly by hand: at 80 C the shift is 58/44 of that at 66 C, 0.3 (0.2 to 0.35); at 15
  /// C it is 7/44 of it the other way.
  @Test
  void anAcidityReadHotIsBroughtToTheRoomAlongAStraightLine() {
    MashPh.ReadHot hot = MashPh.readHot(5.2, 80);
    assertThat(hot.coldPh()).isCloseTo(5.595455, within(1e-6));
    assertThat(hot.leastPh()).isCloseTo(5.463636, within(1e-6));
    assertThat(hot.mostPh()).isCloseTo(5.661364, within(1e-6));
    MashPh.ReadHot cool = MashPh.readHot(5.2, 15);
    assertThat(cool.coldPh()).isCloseTo(5.152273, within(1e-6));
    assertThat(cool.leastPh()).isCloseTo(5.144318, within(1e-6));
    assertThat(cool.mostPh()).isCloseTo(5.168182, within(1e-6));
  }

  /// 2 kg, 0.3 below their own pH: -0.6 (40 - 0.3 (-5 - 0.3 x 2)) = -0.6 x 41.68.
  @Test
  void aMaltsBufferBendsAndTwists() {
    MashPh.Malt malt = new MashPh.Malt(2, 5.7, 40, -5, 2);
    assertThat(malt.heldMeq(5.4)).isCloseTo(-25.008, within(1e-9));
    assertThat(malt.heldMeq(5.7)).isZero();
  }

  /// 12.5 P that stand at 2.5 have lost four fifths; a starter of White and Zainasheff's grew from
  /// 100 to 152 million in a millilitre over 7 P, 7.43 million a degree; what was there before
  /// stays.
  @Test
  void whatAFermentHasEatenAndGrown() {
    assertThat(DegreeOfFermentation.apparentFrac(12.5, 2.5)).isCloseTo(0.8, within(1e-12));
    assertThat(Starter.yieldCountPerMl(100e6, 152e6, 7)).isCloseTo(7.428571e6, within(1.0));
    double fromNone = Starter.byMassCount(0, 2, 5, 20e9);
    assertThat(fromNone).isPositive();
    assertThat(Starter.byMassCount(50e9, 2, 5, 20e9)).isCloseTo(fromNone + 50e9, within(1.0));
  }

  /// Counts of 10, 20 and 30 where 20 each are expected: (100 + 0 + 100)/20.
  @Test
  void howUnevenCountsAre() {
    assertThat(ForecastScore.unevenNumber(new double[] {10, 20, 30})).isCloseTo(10, within(1e-12));
    assertThat(ForecastScore.unevenNumber(new double[] {7, 7})).isZero();
  }

  /// 30 g of 8 % in 20 L are 120 mg/L of alpha acid; 0.9 x 0.75 of what is formed is kept.
  @Test
  void whatOfAnAdditionIsInTheGlass() {
    double formedFrac = HopIsomerisation.isoFrac(100, 60);
    assertThat(HopUtilisation.isoAlphaMgPerL(30, 0.08, 20, 60, 100, 0.1, 0.25))
        .isCloseTo(120 * 0.9 * 0.75 * formedFrac, within(1e-9));
  }
}
