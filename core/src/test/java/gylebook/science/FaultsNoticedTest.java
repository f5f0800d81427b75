package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// What faults made on purpose showed to be tested nowhere in this room. Expected values worked by
/// hand from the definitions, or from the source that is named.
class FaultsNoticedTest {
  /// By one transfer unit: with equal streams half passes in counterflow, (1 - e^-2)/2 along one
  /// another, and 1 - 1/e from a stirred kettle, whatever the streams.
  @Test
  void oneTransferUnitEachWay() {
    assertThat(Chiller.effectivenessFrac(Chiller.Passing.COUNTERFLOW, 1, 1))
        .isCloseTo(0.5, within(1e-12));
    assertThat(Chiller.effectivenessFrac(Chiller.Passing.PARALLEL, 1, 1))
        .isCloseTo((1 - Math.exp(-2)) / 2, within(1e-12));
    assertThat(Chiller.effectivenessFrac(Chiller.Passing.MIXED_KETTLE, 1, 1))
        .isCloseTo(1 - Math.exp(-1), within(1e-12));
  }

  /// Equal streams of 0.1 kg/s of water: 60 K x 418.4 W/K pass by a difference of 20 K throughout.
  @Test
  void equalStreamsHaveOneDifferenceThroughout() {
    Chiller.Learnt learnt = Chiller.learnt(0.1, 90, 30, 0.1, 10, 70, 4184);
    assertThat(learnt.uaWPerK()).isCloseTo(418.4 * 3, within(1e-6));
    assertThat(learnt.heatW()).isCloseTo(418.4 * 60, within(1e-6));
    assertThat(learnt.balanceFrac()).isCloseTo(0, within(1e-12));
  }

  /// Ten metres of 10 mm: 0.314159 m2, 340 to 455 W/(m2 K) of it, twice to three times that
  /// stirred.
  @Test
  void aCoilPassesByItsOutside() {
    Chiller.Coil coil = Chiller.coil(10, 0.01);
    assertThat(coil.areaM2()).isCloseTo(0.314159, within(1e-6));
    assertThat(coil.stillLeastWPerK()).isCloseTo(106.814, within(1e-3));
    assertThat(coil.stillMostWPerK()).isCloseTo(142.942, within(1e-3));
    assertThat(coil.stirredLeastWPerK()).isCloseTo(213.628, within(1e-3));
    assertThat(coil.stirredMostWPerK()).isCloseTo(428.827, within(1e-3));
  }

  @Test
  void chillersThatCannotBeAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Chiller.transferNumber(1, 0.5))
        .withMessageContaining("one less effectiveness");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Chiller.immersionSec(20, 20, 95, 0.1, 10, 400, 4000))
        .withMessageContaining("start above target");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Chiller.leastWaterRatio(95, 10, 20, 1.03, 4000))
        .withMessageContaining("target above water");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Chiller.leastWaterRatio(20, 95, 10, 1.03, 4000))
        .withMessageContaining("start above target");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ChillerFilms.outlets(0.1, 20, 0.1, 80, 1e-3, 1e-3, 4000))
        .withMessageContaining("wort above water");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> HoseHeat.wallMKPerW(0.012, 0.012, 0.23))
        .withMessageContaining("outside over bore");
  }

  /// A film of water at 20 C is what films are scaled by; at 60 C it conducts 0.65290 for 0.59751
  /// W/(m K) (Ramires 1995) at 0.4660 for 1.0016 mPa s (IAPWS): 1.09271^0.6 x 2.1493^0.4 = 1.4322.
  @Test
  void aWarmFilmPassesMore() {
    assertThat(ChillerFilms.warmthFactor(20)).isCloseTo(1, within(1e-12));
    assertThat(ChillerFilms.warmthFactor(60)).isCloseTo(1.4322, within(2e-3));
    assertThat(ChillerFilms.uaWPerK(1, 20, 1, 60, 1e-9, 1e-3)).isCloseTo(1432.2, within(2.0));
  }

  /// A700 0.02 against 0.039 x 0.5; a tube whose bed takes 0.02 m of the 0.05 m that all would
  /// need; 0.75 % of 200, 350 and 1000 C, or else 1 and 2.5 K.
  @Test
  void sharesAndLimitsOfOneLine() {
    assertThat(Colour.hazeRatio(0.02, 0.5)).isCloseTo(1.025641, within(1e-6));
    assertThat(Overflow.bypassFrac(0.05, 0.02)).isCloseTo(0.6, within(1e-12));
    assertThat(Overflow.bypassFrac(0.02, 0.05)).isZero();
    assertThat(Thermocouple.tClass2K(100)).isEqualTo(1);
    assertThat(Thermocouple.tClass2K(200)).isCloseTo(1.5, within(1e-12));
    assertThat(Thermocouple.tClass2K(350)).isCloseTo(2.625, within(1e-12));
    assertThat(Thermocouple.kClass2K(1000)).isCloseTo(7.5, within(1e-12));
    assertThat(Thermocouple.kClass2K(-40)).isEqualTo(2.5);
  }

  /// Binomial of ten and nine tenths: 1 - 0.9^10 - 0.9^9 lie at eight or below, 45 x 0.01 x 0.9^8 +
  /// 0.9^9 + 0.9^10 at eight or above. Counts 8, 12, 10 about ten: 0.4 + 0.4.
  @Test
  void whatHeldAndHowUnevenly() {
    ForecastScore.Held held = ForecastScore.held(8, 10, 0.9);
    assertThat(held.heldFrac()).isEqualTo(0.8);
    assertThat(held.fewerFrac()).isCloseTo(0.263901, within(1e-6));
    assertThat(held.moreFrac()).isCloseTo(0.929809, within(1e-6));
    assertThat(ForecastScore.held(0, 10, 0.9).moreFrac()).isEqualTo(1);
    assertThat(ForecastScore.unevenNumber(new double[] {8, 12, 10})).isCloseTo(0.8, within(1e-12));
  }

  /// A kettle that one hour at full power lifts by a fifth of a kelvin is never where it shall be:
  /// all three hours are told.
  @Test
  void aKettleThatNeverArrivesTakesTheWholeTrial() {
    ControlLoop.Trial trial = ControlLoop.trial(0.1, 1000, 5e-5, 20, 10, 0.05, 40);
    assertThat(trial.settledSec()).isEqualTo(10_800);
    assertThat(trial.nearSec()).isEqualTo(10_800);
  }

  /// Half an hour of heating from 80 to 100 C and half an hour of boiling, the two laws of
  /// Malowicki and Shellhammer stepped by halves in another program: 0.393803.
  @Test
  void firstWortHopsWorkWhileItHeats() {
    assertThat(HopIsomerisation.firstWortIsoFrac(80, 30, 100, 30))
        .isCloseTo(0.393803, within(2e-5));
  }

  /// Precursor splits as fast as the gas leaves, a fiftieth a minute: after fifty, 1/e of it is
  /// gas.
  @Test
  void equalRatesHaveTheirLimit() {
    DimethylSulfide.Left left = DimethylSulfide.afterBoil(100, 0, Math.log(2) / 0.02, 0.02, 50);
    assertThat(left.freeMgPerL()).isCloseTo(100 / Math.E, within(1e-6));
    assertThat(left.precursorMgPerL()).isCloseTo(100 / Math.E, within(1e-6));
  }

  /// A spindle below nought is a beer fermented nearly dry: of 12 P, 0.18 x 12 - 0.82 x 2 = 0.53
  /// are left at -2 P (Balling's share, good to a fifth beyond its worts); -4 P no such beer can
  /// be.
  @Test
  void aBeerMayBeLighterThanWater() {
    assertThat(Alcohol.fromExtracts(12, -2).realExtractPlato()).isCloseTo(0.53, within(0.2));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Alcohol.fromExtracts(12, -4))
        .withMessageContaining("cannot ferment below");
    assertThatIllegalArgumentException().isThrownBy(() -> AlcoholShortcut.movingShare(12, 13));
  }

  /// Sixty per cent of sugar: x = 0.073173, activity 0.926827 x e^-0.027939 = 0.90129; at 112.42
  /// kPa water boils at 102.90 C (between 102.29 at 110 and 104.78 at 120 kPa in steam tables),
  /// 2.93 K above 99.97.
  @Test
  void thickSyrupBoilsThreeKelvinHigher() {
    assertThat(BoilingRise.riseK(0.6, 101.325)).isCloseTo(2.93, within(0.02));
  }

  /// 30 C against 20 C at half humidity: 4.2470 - 1.1697 kPa are 0.90874 inches of mercury, a tenth
  /// of that in lb/(h ft2), half of it where the activity is a half.
  @Test
  void aQuietPoolLosesHalfOfWhatABusyOneDoes() {
    assertThat(Evaporation.poolKgPerM2Sec(30, 20, 0.5, 0.5)).isCloseTo(6.162e-5, within(2e-8));
  }

  /// A hundred kilojoules that get lost cost 100 000/(20 x 4184 + 2500) = 1.160 K of strike heat.
  @Test
  void whatGetsLostIsPutIntoTheLiquor() {
    double without = Strike.moistMaltStrikeC(20, 5, 20, 66, 2500, 0.04, 0);
    double with = Strike.moistMaltStrikeC(20, 5, 20, 66, 2500, 0.04, 100_000);
    assertThat(with - without).isCloseTo(1.160, within(0.003));
  }

  /// One millimole a litre of calcium is two of charge: alkalinity of 50 mg/L is one, the other is
  /// chloride. Sodium bicarbonate of 2 mmol/L conducts 2 x (50.1 + 44.5) less a twentieth (ions'
  /// conductances from memory): its sodium is found by charge.
  @Test
  void whatTheAnalysisLeavesOutIsFoundByCharge() {
    assertThat(TapWater.analysed(40.078, 0, 0, 0, 50.04, 7.5).chlorideMmolPerKg())
        .isCloseTo(1.0, within(0.02));
    assertThat(TapWater.analysed(0, 0, 0, 0, 100.09, 8.2).conductanceUsPerCm())
        .isCloseTo(189 * 0.96, within(6.0));
  }

  /// 66.0, 66.2 and 66.4 by a tenth each: chi-square 4 + 0 + 4 of two free, its root 2. Series 1 2
  /// 3 and 2 1 3 go together by a half.
  @Test
  void scattersOfThree() {
    assertThat(Thermometers.ofThree(66.0, 0.1, 66.2, 0.1, 66.4, 0.1).birgeRatio())
        .isCloseTo(2, within(1e-9));
    assertThat(Doubt.correlation(new double[] {1, 2, 3}, new double[] {2, 1, 3}))
        .isCloseTo(0.5, within(1e-12));
    assertThat(Doubt.ofMean(1, 2, 3)).isCloseTo(1 / Math.sqrt(3), within(1e-12));
  }

  /// Two of nine degrees are left; a leak of a twentieth lets out a twentieth of what an open
  /// kettle under the same film gives.
  @Test
  void partsOfAWhole() {
    assertThat(FermentationState.state(12, 3, 6, 5, 48, 20).leftFrac())
        .isCloseTo(2.0 / 9, within(1e-12));
    HoldingPower.Holding open = HoldingPower.openW(66, 0.42, 20, 0.5, 101.325, 6.5, 3.68);
    HoldingPower.Holding lid = HoldingPower.lidW(66, 0.42, 20, 0.5, 101.325, 0.05, 3.68);
    assertThat(lid.evaporationKgPerSec()).isCloseTo(open.evaporationKgPerSec() / 20, within(1e-12));
    assertThat(lid.evaporationW()).isCloseTo(open.evaporationW() / 20, within(1e-9));
  }

  /// Rates by hand: 0.0075 a day at 4 C are 0.0075 e^0.69 at 10 C; hops that lose 35 % in 180 days
  /// at 20 C lose as in 90 over 360 days at 5 C when half as much air reaches them; a skew of 2 has
  /// 3^-1.5 where a logistic has 2^-2.
  @Test
  void ratesWorkedByHand() {
    assertThat(YeastAge.packagedFrac(1, 10, 30)).isCloseTo(0.63853, within(1e-5));
    assertThat(HopAge.leftFrac(0.35, 180, 20, 5, 360, 0.5)).isCloseTo(0.806226, within(1e-6));
    double straight = FermentationHeat.peakW(20, 9, 0.03, 1, 0.805);
    assertThat(FermentationHeat.peakW(20, 9, 0.03, 2, 0.805) / straight)
        .isCloseTo(4 * Math.pow(3, -1.5), within(1e-9));
    Cutaia2009.Coefficients at12 = Cutaia2009.coefficients(12);
    assertThat(at12.apparentDropRatio()).isCloseTo(0.41484, within(1e-9));
    assertThat(at12.realDropRatio()).isCloseTo(0.51528, within(1e-9));
    assertThat(at12.differenceRatio()).isCloseTo(2.1508, within(1e-9));
    assertThat(at12.attenuationRatio()).isCloseTo(0.824344, within(1e-9));
  }

  /// No other single rest of an hour gives more, whichever of 55 to 80 C is tried.
  @Test
  void theBestRestIsTheBest() {
    double bestC = Attenuation.bestMashC(60);
    double best = Gelatinisation.convertedFrac(bestC, 60) * Attenuation.limitFrac(bestC);
    for (double mashC = 55; mashC <= 80; mashC += 0.25) {
      assertThat(Gelatinisation.convertedFrac(mashC, 60) * Attenuation.limitFrac(mashC))
          .isLessThanOrEqualTo(best + 1e-9);
    }
  }

  @Test
  void refusalsSayWhatIsWrong() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Require.above0("mass", Double.POSITIVE_INFINITY))
        .withMessageContaining("finite");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Starter.yieldCountPerMl(1e8, 5e7, 7))
        .withMessageContaining("cells per mL grown");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Boil.concentrated(10, 10, 9.5))
        .withMessageContaining("water boiled off");
  }

  /// Steam tables have 4184 J/(kg K) for water at 20 C; wort of no extract is water.
  @Test
  void waterHoldsItsHeat() {
    assertThat(WaterHeat.waterJPerKgK(20)).isCloseTo(4184, within(2.0));
    assertThat(WortHeat.wortJPerKgK(0, 20)).isCloseTo(4184, within(4.0));
  }

  /// Thirty times quiet at 2.1 m and thirty times a rattle at 1.9: it wants about 2, and one time
  /// in twenty it rattles 0.3 ln 19 = 0.88 m above that.
  @Test
  void aPumpThatIsKnownWellIsQuietAboveItsNeed() {
    PumpNeed.Need need = PumpNeed.need("2.1:quiet 1.9:rattled ".repeat(30).strip());
    assertThat(need.needM()).isCloseTo(2.0, within(0.1));
    assertThat(need.quietM() - need.needM()).isCloseTo(0.3 * Math.log(19), within(0.05));
  }

  /// Limits that are met count as met: two readings of the same gravity two days apart, the ends of
  /// a range, a chip that read 80 C before it read the 85 C of its power-up. One degree beyond what
  /// the chip can read at all is a fault.
  @Test
  void aLimitThatIsMetIsMet() {
    assertThat(FermentationState.state(12, 3, 3.2, 3.2, 48, 20).steady()).isTrue();
    assertThat(FermentationState.state(12, 3, 3.2, 3.2, 47.9, 20).steady()).isFalse();
    Validity range = new Validity("a number", 1, 2, "nothing");
    assertThat(range.holds(1)).isTrue();
    assertThat(range.holds(2)).isTrue();
    assertThat(ChipThermometer.isFault(85, 80)).isFalse();
    assertThat(ChipThermometer.isFault(85, 79.9)).isTrue();
    assertThat(ChipThermometer.isFault(-56, 20)).isTrue();
    assertThat(ChipThermometer.isFault(126, 120)).isTrue();
    assertThat(ChipThermometer.isFault(125, 120)).isFalse();
  }

  /// What is shown and what is put right add up, 0.38 for 10 P at 25 C by the table of oenology; a
  /// mole of alcohol in a cubic metre is 5.837e-5 of its volume.
  @Test
  void whatIsAddedAndWhatIsMultiplied() {
    RefractometerWarmth.Read read = RefractometerWarmth.read(10, 25);
    assertThat(read.correctionPlato()).isCloseTo(0.38, within(0.02));
    assertThat(read.truePlato()).isCloseTo(10 + read.correctionPlato(), within(1e-12));
    GeeRamirez1988.Tank tank = GeeRamirez1988.tank(12, 100, 100, 220, 40, 180);
    assertThat(tank.alcoholFrac()).isCloseTo(5.837e-5 * tank.ethanolMolPerM3(), within(1e-12));
  }

  /// By hand: 20 kg falling by 10 P give 20 x 0.0805 x 0.46286 = 0.74520 kg; a mole of 44.0095 g
  /// takes 8.314463 x 293.15/101.325 = 24.0555 L (ideal gas), so 407.33 L, of which a tenth of a
  /// quarter goes in the busiest hour; 5000 parts in a million of 81.465 m3 are as much.
  @Test
  void theFermentsGasAndItsRoom() {
    RoomGas.GivenOff given = RoomGas.givenOff(20, 10, 0.1, 20, 101.325);
    assertThat(given.gasKg()).isCloseTo(0.74520, within(1e-5));
    assertThat(given.gasL()).isCloseTo(407.33, within(0.03));
    assertThat(given.peakLPerHr()).isCloseTo(10.183, within(1e-3));
    assertThat(RoomGas.closedRoomM3(0.7452046, 5000, 20, 101.325)).isCloseTo(81.465, within(0.006));
    assertThat(RoomGas.closedRoomM3(0.7452046, 10_000, 20, 101.325)).isCloseTo(40.73, within(0.01));
  }
}
