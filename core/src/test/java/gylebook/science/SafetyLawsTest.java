package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import org.junit.jupiter.api.Test;

/// Dry hops, gas, heat, loads, chemicals, heat doses and age: what must hold, and the traps.
class SafetyLawsTest {
  private static final double SEA_KPA = 101.325;

  /// Kirkpatrick and Shellhammer 2018: 2 P of creep were 4.75 volumes and 1.3 % of alcohol.
  @Test
  void hopCreepMakesTheGasAndAlcoholThatWereMeasured() {
    DryHop.Creep made = DryHop.creep(2, 1.01);
    assertThat(made.gasVol()).isCloseTo(4.75, within(0.05));
    assertThat(100 * made.alcoholByVolumeFrac()).isCloseTo(1.3, within(0.1));
    assertThat(made.gasGPerL()).isCloseTo(9.35, within(0.02));
    assertThat(SealedPackage.outlook(2.4, 2, 20, SEA_KPA).fit()).isFalse();
  }

  /// A supplier's trial of 2019: 2 % at 2.5 g/L and 14 % at 20 g/L; 8 and 7 L/kg.
  @Test
  void dryHopsKeepWhatTheTrialFound() {
    assertThat(DryHop.lossFrac(2.5, 8)).isCloseTo(0.02, within(1e-12));
    assertThat(DryHop.lossFrac(20, 7)).isCloseTo(0.14, within(1e-12));
    assertThat(DryHop.lossFrac(0, 7.5)).isZero();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DryHop.lossFrac(100, 12))
        .withMessageContaining("share of the beer lost");
  }

  /// Hauser and others 2019: spent hops keep 77 and 52 % of the alpha acid, a third dissolves.
  @Test
  void dryHopsGiveOffPartOfWhatTheyBring() {
    DryHop.Extracted gone = DryHop.extracted(3.86, 0.12);
    assertThat(gone.solidsGPerL()).isCloseTo(1.287, within(1e-3));
    assertThat(gone.leastAlphaMgPerL()).isCloseTo(3860 * 0.12 * (1 - 0.77), within(1e-9));
    assertThat(gone.mostAlphaMgPerL()).isCloseTo(3860 * 0.12 * (1 - 0.52), within(1e-9));
    assertThat(gone.leastOilFrac()).isCloseTo(1 - 0.51, within(1e-12));
    assertThat(gone.mostOilFrac()).isCloseTo(1 - 0.33, within(1e-12));
  }

  @Test
  void purgesDiluteAndNeverFinish() {
    double psi = 6.894757293168361;
    int[] purges = {1, 5, 10, 13};
    double[] ppm = {68_900, 805, 3.1, 0.11};
    for (int i = 0; i < ppm.length; i++) {
      assertThat(Purge.leftPpm(purges[i], 30 * psi, 14.7 * psi, 0.209))
          .isCloseTo(ppm[i], within(0.02 * ppm[i]));
    }
    assertThat(Purge.leftPpm(3, 0, SEA_KPA, 0.2)).isCloseTo(200_000, within(1e-6));
    assertThat(Purge.airMgPerL(20, SEA_KPA)).isCloseTo(278.6, within(0.2));
    assertThat(Purge.pickedUpMl(20, 50)).isCloseTo(3.6, within(0.03));
  }

  /// A 5 lb cylinder in 30 m3 passes the danger limit; a batch passes the day's average.
  @Test
  void aClosedRoomFillsBeyondTheLimits() {
    RoomGas.Limits limits = RoomGas.limits();
    double cylinder = RoomGas.releasedPpm(2.268, 30, 20, SEA_KPA);
    assertThat(cylinder).isCloseTo(41_300, within(150.0)).isGreaterThan(limits.dangerPpm());
    double batch = RoomGas.fermentedPpm(20.967, 7.65, 30, 20, SEA_KPA);
    assertThat(batch).isBetween(13_300.0, 13_900.0).isGreaterThan(limits.averagePpm());
    assertThat(limits.averagePpm()).as("not the vacated rule's 10 000").isEqualTo(5000);
    assertThat(limits.averageMgPerM3()).isEqualTo(9000);
    assertThat(limits.shortPpm()).isEqualTo(30_000);
    assertThat(RoomGas.releasedPpm(2.268, 60, 20, SEA_KPA)).isCloseTo(cylinder / 2, within(1e-6));
  }

  @Test
  void hotterLiquidBurnsSoonerAllTheWay() {
    for (double hot = 1; hot < 130; hot += 0.25) {
      assertThat(Scald.thirdDegreeSec(hot)).isLessThan(Scald.thirdDegreeSec(hot - 0.25));
      assertThat(Scald.burnSec(hot)).isLessThan(Scald.burnSec(hot - 0.25));
    }
    assertThat(Scald.thirdDegreeSec((145 - 32) / 1.8)).isCloseTo(3.5, within(0.05));
    assertThat(Scald.thirdDegreeSec(100)).isLessThan(0.01);
  }

  /// Henriques' integral, by hand: 4.5 h at 44 C, 98 s at 51 C, 0.19 s at 60 C of the skin itself.
  @Test
  void skinItselfIsDestroyedSoonerThanWaterOfItsTemperatureDoes() {
    assertThat(Scald.deepSkinSec(44) / 3600).isCloseTo(4.5, within(0.05));
    assertThat(Scald.deepSkinSec(51)).isCloseTo(98, within(1.0));
    assertThat(Scald.deepSkinSec(60)).isCloseTo(0.19, within(0.01));
    assertThat(Scald.deepSkinSec(60)).isLessThan(Scald.thirdDegreeSec(60));
  }

  /// The trade's three breakers, by the rule of four fifths.
  @Test
  void breakersCarryFourFifthsForHours() {
    assertThat(Breaker.continuousW(20, 120)).isCloseTo(1920, within(1e-9));
    assertThat(Breaker.continuousW(30, 240)).isCloseTo(5760, within(1e-9));
    Breaker.Size size = Breaker.size(5500, 240);
    assertThat(size.loadA()).isCloseTo(22.92, within(0.005));
    assertThat(size.leastA()).isCloseTo(28.65, within(0.005));
    assertThat(size.breakerA()).isEqualTo(30);
    assertThat(Breaker.size(1920, 120).breakerA()).isEqualTo(20);
    assertThat(Breaker.size(1921, 120).breakerA()).isEqualTo(25);
    assertThat(Breaker.size(100, 120).breakerA()).isEqualTo(15);
    assertThat(Breaker.groundFault().leastMa()).isEqualTo(4);
    assertThat(Breaker.groundFault().elsewhereMa()).isEqualTo(30);
    refused(() -> Breaker.size(12_000, 240));
  }

  @Test
  void drainsAreTemperedOnlyWhereTheyMustBe() {
    assertThat(Drain.coldRatio(55, 60, 15)).isZero();
    assertThat(Drain.coldRatio(100, 60, 25)).isCloseTo(1.143, within(5e-4));
    refused(() -> Drain.coldRatio(100, 40, 40));
    Cases.each(
        200,
        random -> {
          double hot = random.nextDouble(61, 100);
          double cold = random.nextDouble(2, 30);
          double ratio = Drain.coldRatio(hot, 60, cold);
          assertThat((hot + ratio * cold) / (1 + ratio)).isCloseTo(60, within(1e-9));
        });
  }

  @Test
  void sanitiserIsMixedByStrength() {
    assertThat(Sanitiser.doseMlPerL(0.0175, 12.5)).isCloseTo(0.714, within(5e-4));
    assertThat(Sanitiser.doseMlPerL(0.05, 0)).isZero();
    refused(() -> Sanitiser.doseMlPerL(0.0001, 200));
    refused(() -> Sanitiser.doseMlPerL(0, 1));
  }

  /// Corners that the published table prints (NIOSH 94-110, table 5, as public codes of it have
  /// them).
  @Test
  void repeatedLiftsLowerTheLimit() {
    double[] often = {0.2, 1, 5, 8};
    double[][] printed = {{1.00, .94, .80, .60}, {.95, .88, .60, .35}, {.85, .75, .35, .18}};
    double[] hours = {1, 2, 8};
    for (int h = 0; h < hours.length; h++) {
      for (int i = 0; i < often.length; i++) {
        assertThat(LiftFrequency.frequencyFactor(often[i], hours[h]))
            .isCloseTo(printed[h][i], within(1e-12));
      }
    }
    assertThat(LiftFrequency.frequencyFactor(2, 1)).isCloseTo(0.91, within(1e-12));
    assertThat(LiftFrequency.frequencyFactor(3, 1)).isCloseTo(0.88, within(1e-12));
    Cases.each(
        200,
        random -> {
          double lifts = random.nextDouble(0, 7.9);
          double held = random.nextDouble(0, 8);
          double here = LiftFrequency.frequencyFactor(lifts, held);
          assertThat(LiftFrequency.frequencyFactor(lifts + 0.1, held)).isLessThanOrEqualTo(here);
          assertThat(LiftFrequency.frequencyFactor(lifts + 1e-9, held))
              .isCloseTo(here, within(1e-8));
          assertThat(LiftFrequency.frequencyFactor(lifts, 8)).isLessThanOrEqualTo(here);
        });
    refused(() -> LiftFrequency.frequencyFactor(8.1, 1));
    refused(() -> LiftFrequency.frequencyFactor(1, 8.1));
  }

  /// A wet bag of 9 kg pulled at arm's length with a twist is above the limit.
  @Test
  void theBagOfGrainIsTheWorstLift() {
    double limit = Lifting.limitKg(0.50, 0.90, 0.60, 45, 1, 0.90);
    assertThat(limit).isCloseTo(7.57, within(0.01));
    assertThat(Lifting.indexRatio(9, limit)).isCloseTo(1.19, within(0.01));
    assertThat(LiftFrequency.limitLb(25, 70, 70, 135, 1, 1)).isPositive();
    assertThat(Lifting.limitKg(0.63, 1.75, 1.75, 135, 1, 1)).isPositive();
    assertThat(Lifting.limitKg(0.25, 1.75, 0.25, 0, 1, 1)).isCloseTo(23 * 0.7, within(1e-9));
    assertThat(LiftFrequency.limitLb(26, 30, 10, 0, 1, 1)).isZero();
    assertThat(LiftFrequency.limitLb(10, 71, 10, 0, 1, 1)).isZero();
    assertThat(LiftFrequency.limitLb(10, 30, 71, 0, 1, 1)).isZero();
    assertThat(LiftFrequency.limitLb(10, 30, 10, 136, 1, 1)).isZero();
    assertThat(LiftFrequency.limitLb(10, 30, 10, 0, 1, 1)).isCloseTo(51, within(1e-9));
    assertThat(LiftFrequency.limitLb(4, 30, 5, 0, 1, 1)).isCloseTo(51, within(1e-9));
    assertThat(LiftFrequency.limitLb(20, 40, 20, 90, 0.5, 0.9))
        .isCloseTo(51 * 0.5 * 0.925 * 0.91 * 0.712 * 0.5 * 0.9, within(1e-9));
  }

  @Test
  void heatDosesAddUpWhateverTheHistory() {
    Cases.each(
        200,
        random -> {
          double start = random.nextDouble(20, 60);
          double peak = start + random.nextDouble(0, 25);
          double rate = random.nextDouble(0.5, 10);
          double half = (peak - start) / rate;
          double[] minutes = {0, half, 2 * half};
          double[] hot = {start, peak, start};
          double ramp = Pasteurisation.rampNumber(start, peak, rate);
          assertThat(Pasteurisation.historyNumber(minutes, hot))
              .isCloseTo(ramp, within(1e-9 * (1 + ramp)));
          double held = random.nextDouble(0, 30);
          assertThat(
                  Pasteurisation.historyNumber(
                      new double[] {0, held / 3, held}, new double[] {peak, peak, peak}))
              .isCloseTo(
                  Pasteurisation.doseNumber(peak, held),
                  within(1e-9 * (1 + Pasteurisation.doseNumber(peak, held))));
        });
  }

  /// 1 at 60 C for a minute; 27.51 at 70 C; 757 a minute at 80 C; 28.7 at 72.22 C for 30 s, where a
  /// paper of 1978 prints 26.5.
  @Test
  void heatDosesOfTheHandbooks() {
    assertThat(Pasteurisation.doseNumber(60, 1)).isCloseTo(1, within(1e-12));
    assertThat(Pasteurisation.doseNumber(70, 1)).isCloseTo(27.51, within(0.01));
    assertThat(Pasteurisation.doseNumber(80, 1)).isCloseTo(757, within(0.5));
    assertThat(Pasteurisation.doseNumber(72.222, 0.5)).isCloseTo(28.7, within(0.05));
    assertThat(Pasteurisation.killSec(80, 8, 5, 7)).isCloseTo(3.3, within(0.05));
    assertThat(Pasteurisation.RANGE.caution(90)).isPresent();
    refused(() -> Pasteurisation.historyNumber(new double[] {0, 5, 4}, new double[] {60, 60, 60}));
    refused(() -> Pasteurisation.historyNumber(new double[] {0, 5}, new double[] {60}));
    refused(() -> Pasteurisation.historyNumber(new double[] {0, 5}, new double[] {60, 120}));
    refused(() -> Pasteurisation.historyNumber(new double[] {0, 5}, new double[] {120, 60}));
  }

  /// World Brewing Congress 2012: 14.2, 30.0 and 59.1 times as fast at 40, 50 and 60 C; an energy
  /// of 61 to 63 kJ/mol says the same.
  @Test
  void warmthAgesBeerAsMeasured() {
    assertThat(BeerAge.tenKelvinFactor(30.0, 59.1, 10)).isCloseTo(1.97, within(0.001));
    assertThat(Arrhenius.speedRatio(50, 40, 62_500)).isCloseTo(2.11, within(0.02));
    assertThat(BeerAge.equivalentDay(10, 4, 4, 2.5)).isCloseTo(10, within(1e-12));
    assertThat(BeerAge.RANGE.caution(45)).isPresent();
    Cases.each(
        200,
        random -> {
          double stored = random.nextDouble(0, 40);
          double other = random.nextDouble(0, 40);
          double factor = random.nextDouble(2, 3);
          double there = BeerAge.equivalentDay(30, stored, other, factor);
          assertThat(BeerAge.equivalentDay(there, other, stored, factor))
              .isCloseTo(30, within(1e-9));
          assertThat(BeerAge.equivalentDay(30, stored + 1, other, factor)).isGreaterThan(there);
        });
  }

  @Test
  void whatIsNoNumberIsRefused() {
    for (double odd : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1e9}) {
      refused(() -> DryHop.lossFrac(odd, 7.5));
      refused(() -> DryHop.lossFrac(5, odd));
      refused(() -> DryHop.creep(odd, 1.01));
      refused(() -> DryHop.creep(1, odd));
      refused(() -> DryHop.extracted(odd, 0.1));
      refused(() -> DryHop.extracted(5, odd));
      refused(() -> Purge.leftPpm(3, odd, SEA_KPA, 0.2));
      refused(() -> Purge.leftPpm(3, 200, odd, 0.2));
      refused(() -> Purge.leftPpm(3, 200, SEA_KPA, odd));
      refused(() -> Purge.airMgPerL(odd, SEA_KPA));
      refused(() -> Purge.airMgPerL(20, odd));
      refused(() -> Purge.pickedUpMl(odd, 50));
      refused(() -> Purge.pickedUpMl(20, odd));
      refused(() -> RoomGas.releasedPpm(odd, 30, 20, SEA_KPA));
      refused(() -> RoomGas.releasedPpm(1, odd, 20, SEA_KPA));
      refused(() -> RoomGas.releasedPpm(1, 30, odd, SEA_KPA));
      refused(() -> RoomGas.releasedPpm(1, 30, 20, odd));
      refused(() -> RoomGas.fermentedPpm(odd, 8, 30, 20, SEA_KPA));
      refused(() -> RoomGas.fermentedPpm(20, odd, 30, 20, SEA_KPA));
      refused(() -> Scald.thirdDegreeSec(odd));
      refused(() -> Scald.burnSec(odd));
      refused(() -> Scald.deepSkinSec(odd));
      refused(() -> Breaker.size(odd, 240));
      refused(() -> Breaker.continuousW(odd, 240));
      refused(() -> Breaker.continuousW(20, odd));
      refused(() -> Drain.coldRatio(odd, 60, 15));
      refused(() -> Drain.coldRatio(90, odd, 15));
      refused(() -> Drain.coldRatio(90, 60, odd));
      refused(() -> Sanitiser.doseMlPerL(odd, 100));
      refused(() -> Sanitiser.doseMlPerL(0.05, odd));
      refused(() -> LiftFrequency.frequencyFactor(odd, 1));
      refused(() -> LiftFrequency.limitLb(odd, 30, 10, 0, 1, 1));
      refused(() -> LiftFrequency.limitLb(10, odd, 10, 0, 1, 1));
      refused(() -> LiftFrequency.limitLb(10, 30, odd, 0, 1, 1));
      refused(() -> LiftFrequency.limitLb(10, 30, 10, odd, 1, 1));
      refused(() -> LiftFrequency.limitLb(10, 30, 10, 0, odd, 1));
      refused(() -> LiftFrequency.limitLb(10, 30, 10, 0, 1, odd));
      refused(() -> Pasteurisation.doseNumber(odd, 1));
      refused(() -> Pasteurisation.doseNumber(60, odd));
      refused(() -> Pasteurisation.rampNumber(20, odd, 5));
      refused(() -> Pasteurisation.rampNumber(odd, 70, 5));
      refused(() -> Pasteurisation.rampNumber(20, 70, odd));
      refused(() -> Pasteurisation.killSec(odd, 8, 5, 7));
      refused(() -> Pasteurisation.killSec(80, odd, 5, 7));
      refused(() -> Pasteurisation.killSec(80, 8, odd, 7));
      refused(() -> Pasteurisation.killSec(80, 8, 5, odd));
      refused(() -> Pasteurisation.halfLifeMin(odd));
      refused(() -> Pasteurisation.tenfoldK(odd));
      refused(() -> BeerAge.tenKelvinFactor(odd, 2, 10));
      refused(() -> BeerAge.tenKelvinFactor(1, odd, 10));
      refused(() -> BeerAge.tenKelvinFactor(1, 2, odd));
      refused(() -> BeerAge.equivalentDay(odd, 20, 4, 2.5));
      refused(() -> BeerAge.equivalentDay(10, odd, 4, 2.5));
      refused(() -> BeerAge.equivalentDay(10, 20, odd, 2.5));
      refused(() -> BeerAge.equivalentDay(10, 20, 4, odd));
    }
  }

  private static void refused(Runnable asked) {
    assertThatIllegalArgumentException().isThrownBy(asked::run);
  }
}
