package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/// What must hold for any beer.
class ColdLawsTest {
  private static final FermentationFit.Brew SURE = FermentationFit.Brew.of(12, 0);

  @Test
  void strengthByVolumeAndByMassAreThereAndBack() {
    Cases.each(
        300,
        random -> {
          double share = random.nextDouble();
          assertThat(EthanolWater.massFrac(EthanolWater.volumeFrac(share)))
              .isCloseTo(share, within(1e-10));
        });
  }

  @Test
  void alcoholSolvesBothLawsAtOnce() {
    Cases.each(
        300,
        random -> {
          double original = random.nextDouble(5, 22);
          double apparent = original * random.nextDouble(0.1, 0.99);
          Alcohol.Strength beer = Alcohol.fromExtracts(original, apparent);
          assertThat(Balling.originalPlato(beer.byMassFrac(), beer.realExtractPlato()))
              .isCloseTo(original, within(1e-8));
          assertThat(Tabarie.apparentPlato(beer.byMassFrac(), beer.realExtractPlato()))
              .isCloseTo(apparent, within(1e-7));
        });
  }

  @Test
  void theFurtherABeerFermentsTheMoreAlcoholAndTheLessExtract() {
    Cases.each(
        200,
        random -> {
          double original = random.nextDouble(6, 24);
          double wet = original * random.nextDouble(0.3, 0.9);
          Alcohol.Strength early = Alcohol.fromExtracts(original, wet);
          Alcohol.Strength late = Alcohol.fromExtracts(original, wet - 0.5);
          assertThat(late.byMassFrac()).isGreaterThan(early.byMassFrac());
          assertThat(late.byVolumeFrac()).isGreaterThan(early.byVolumeFrac());
          assertThat(late.realExtractPlato()).isLessThan(early.realExtractPlato());
          assertThat(early.realExtractPlato()).isBetween(wet, original);
        });
  }

  @Test
  void wortHasNoAlcoholAndNoBeerIsDrierThanNothingLeft() {
    assertThat(Alcohol.fromExtracts(12, 12).byVolumeFrac()).isZero();
    assertThat(Alcohol.fromExtracts(12, 12.3).byMassFrac()).isZero();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Alcohol.fromExtracts(12, -5))
        .withMessageContaining("cannot ferment below");
  }

  @Test
  void theShortcutIsBiasedAndTheLawsTogetherAgreeWithTheRegression() {
    for (double original = 10; original <= 18; original += 2) {
      double apparent = original / 4.8;
      double solved = Alcohol.fromExtracts(original, apparent).realExtractPlato();
      double shortcut = AlcoholShortcut.fixedShare(original, apparent).realExtractPlato();
      double fitted = Cutaia2009.strength(original, apparent).realExtractPlato();
      assertThat(solved - shortcut).as("%s P", original).isBetween(0.09, 0.24);
      assertThat(solved).isCloseTo(fitted, within(0.035));
    }
  }

  /// A copy in circulation ends one coefficient with 933 for 993; the wrong digit moves the density
  /// of strong mixtures at the cold end less than the tables' last digit, so only the check values
  /// and the digits themselves can tell.
  @Test
  void theCheckValuesOfTheAlcoholTablesHold() {
    assertThat(EthanolWater.densityKgPerM3(0, 20)).isCloseTo(998.20123, within(1e-5));
    assertThat(EthanolWater.densityKgPerM3(0.4, 20)).isCloseTo(935.1450, within(1e-4));
    assertThat(Math.abs(EthanolWater.densityKgPerM3(0.4, 20) - 935.2151)).isGreaterThan(0.05);
    assertThat(EthanolWater.mixtureSg(1, 20, 20)).isCloseTo(0.790661, within(1e-6));
    assertThat(EthanolWater.mixtureSg(1, 140.0 / 9, 140.0 / 9)).isCloseTo(0.793818, within(2e-6));
  }

  @Test
  void fermentationProductsWeighWhatWentIn() {
    Cases.each(
        100,
        random -> {
          double extract = random.nextDouble(0, 50);
          Balling.Products out = Balling.products(extract);
          assertThat(out.alcoholKg() + out.gasKg() + out.yeastKg())
              .isCloseTo(extract, within(1e-9 + 1e-12 * extract));
        });
  }

  @Test
  void theRefractometerFindsTheBeerThatBentTheLight() {
    Cases.each(
        200,
        random -> {
          double original = random.nextDouble(8, 20);
          Alcohol.Strength beer =
              Alcohol.fromExtracts(original, original * random.nextDouble(0.15, 0.9));
          double light = (beer.realExtractPlato() + 42 * beer.byMassFrac()) * 1.03;
          BeerRefractometer.Meaning meaning =
              BeerRefractometer.meaning(original, light, 1.03, 0.42);
          assertThat(meaning.alcoholByMassFrac()).isCloseTo(beer.byMassFrac(), within(1e-7));
          assertThat(meaning.alcoholByVolumeFrac()).isCloseTo(beer.byVolumeFrac(), within(1e-7));
        });
  }

  /// Eight points low half-way, by its own author's warning (Bx 12 and 9: 1.0212 against 1.029).
  @Test
  void theRefractometerLineIsCautionedHalfWay() {
    RefractometerRegression.Line half = RefractometerRegression.line(12, 9);
    assertThat(half.finalSg()).isCloseTo(1.0212, within(1e-4));
    assertThat(RefractometerRegression.RANGE.caution(half.attenuationFrac())).isPresent();
    RefractometerRegression.Line end = RefractometerRegression.line(12, 5.5);
    assertThat(RefractometerRegression.RANGE.caution(end.attenuationFrac())).isEmpty();
  }

  @Test
  void fermentingOnlyGoesDownAndFasterWhenWarm() {
    Cases.each(
        300,
        random -> {
          double skew = random.nextDouble(0.3, 3);
          double ferment = random.nextDouble(9, 24);
          double hours = random.nextDouble(0, 150);
          double here = at(ferment, hours, skew);
          assertThat(at(ferment, hours + 1, skew)).isLessThan(here);
          assertThat(at(ferment + 1, hours + 1, skew)).isLessThan(at(ferment, hours + 1, skew));
          assertThat(here).isBetween(2.5, 12.0);
        });
  }

  private static double at(double ferment, double hours, double skew) {
    return FermentationCurve.extractPlato(12, 2.5, ferment, hours, 0.1, 3.2, skew);
  }

  @Test
  void theTimeToAShareIsTheCurveReadBackwards() {
    Cases.each(
        300,
        random -> {
          double skew = random.nextDouble(0.3, 3);
          double left = random.nextDouble(0.001, 0.8);
          double ferment = random.nextDouble(9, 24);
          double hours = FermentationCurve.timeHr(left, ferment, 0.1, 3.2, skew, 2.2);
          double tau = hours * FermentationCurve.ratePerHr(ferment, 0.1, 2.2);
          if (hours > 0) {
            assertThat(FermentationCurve.leftFrac(tau, 3.2, skew)).isCloseTo(left, within(1e-9));
          }
        });
  }

  /// The worked profile and the prior's timeline of the reference sheet, computed there by another
  /// program.
  @Test
  void theWorkedProfileAndTimelineHold() {
    assertThat(FermentationCurve.warmedPlato(12, 2.5, 18, 48, 21, 72, 60))
        .isCloseTo(3.6447, within(1e-4));
    assertThat(FermentationCurve.warmedPlato(12, 2.5, 18, 48, 21, 72, 96))
        .isCloseTo(2.5284, within(1e-4));
    double[] left = {0.5, 0.1, 0.05, 0.02};
    double[] hours = {32.0, 54.0, 61.4, 70.9};
    for (int i = 0; i < left.length; i++) {
      assertThat(FermentationCurve.timeHr(left[i], 20, 0.1, 3.2, 1, 2.2))
          .isCloseTo(hours[i], within(0.06));
    }
  }

  @Test
  void thermalTimeIsTheIntegralOfItsRate() {
    Cases.each(
        60,
        random -> {
          double[] hours = {random.nextDouble(5), 20 + random.nextDouble(10), 60, 60, 90};
          double[] warm = new double[hours.length];
          for (int i = 0; i < warm.length; i++) {
            warm[i] = random.nextDouble(10, 24);
          }
          double end = random.nextDouble(0, 120);
          assertThat(FermentationCurve.thermalNumber(hours, warm, end, 0.1, 2.2))
              .isCloseTo(summed(hours, warm, end), within(0.02));
        });
  }

  private static double summed(double[] hours, double[] warm, double end) {
    double sum = 0;
    int steps = 20_000;
    for (int n = 0; n < steps; n++) {
      double t = end * (n + 0.5) / steps;
      int i = 0;
      while (i < hours.length && hours[i] <= t) {
        i++;
      }
      double here =
          i == 0
              ? warm[0]
              : i == hours.length
                  ? warm[i - 1]
                  : warm[i - 1]
                      + (warm[i] - warm[i - 1]) * (t - hours[i - 1]) / (hours[i] - hours[i - 1]);
      sum += FermentationCurve.ratePerHr(here, 0.1, 2.2) * end / steps;
    }
    return sum;
  }

  @Test
  void moreReadingsOfOneTrueCurveLeaveLessDoubtAndFindItsEnd() {
    Cases.each(
        40,
        random -> {
          double truth = random.nextDouble(0.70, 0.84);
          List<FermentationReading> few = readings(random, truth, 2);
          List<FermentationReading> many = readings(random, truth, 8);
          FermentationFit.Fitted early = FermentationFit.fitted(SURE, few);
          FermentationFit.Fitted late = FermentationFit.fitted(SURE, many);
          assertThat(late.attenuationDoubtFrac()).isLessThan(early.attenuationDoubtFrac());
          assertThat(late.attenuationFrac()).isCloseTo(truth, within(0.02));
        });
  }

  private static List<FermentationReading> readings(
      RandomGenerator random, double attenuation, int count) {
    double rate = 0.1 * Math.exp(0.2 * random.nextGaussian());
    return java.util.stream.IntStream.rangeClosed(1, count)
        .mapToObj(
            i ->
                new FermentationReading(
                    14.0 * i,
                    FermentationCurve.extractPlato(
                        12, 12 * (1 - attenuation), 20, 14.0 * i, rate, 3.2, 1)))
        .toList();
  }

  @Test
  void withoutReadingsTheFitIsItsPrior() {
    FermentationFit.Fitted prior = FermentationFit.fitted(SURE, List.of());
    assertThat(prior.attenuationFrac()).isCloseTo(0.77, within(1e-9));
    assertThat(prior.attenuationDoubtFrac()).isCloseTo(0.04, within(1e-9));
  }

  private static FermentationFit.Fitted fitted(String readings) {
    return FermentationFit.fitted(12, 20, readings, 0.2, 0.15, 0.77, 0.04);
  }

  @Test
  void readingsThatAreNoneAreNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> fitted("24:9.1:thermometer"))
        .withMessageContaining("thermometer");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> fitted("1:11 ".repeat(301)))
        .withMessageContaining("301");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> fitted("24=9.1"))
        .withMessageContaining("24=9.1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> fitted("24:much"))
        .withMessageContaining("much");
  }

  @Test
  void yeastDiesFasterWhenWarmAndDaysAddUp() {
    Cases.each(
        200,
        random -> {
          double stored = random.nextDouble(1, 24);
          double days = random.nextDouble(0, 60);
          double once = YeastAge.storedFrac(0.96, stored, days);
          double twice =
              YeastAge.storedFrac(YeastAge.storedFrac(0.96, stored, days / 2), stored, days / 2);
          assertThat(once).isCloseTo(twice, within(1e-12));
          assertThat(YeastAge.storedFrac(0.96, stored + 1, days + 1)).isLessThan(once);
        });
    // McCaig and Bendiak 1985: 7 % lost in six days at 1 C, at most 68 % at 25 C.
    assertThat(YeastAge.storedFrac(1, 1, 6)).isCloseTo(0.93, within(0.002));
    assertThat(YeastAge.storedFrac(1, 25, 6)).isCloseTo(0.32, within(0.01));
  }

  @Test
  void aStarterStopsAtItsDensestAndNeverLosesCells() {
    assertThat(Starter.grownCount(100e9, 1, 7, 7.4e6)).isCloseTo(151.8e9, within(1e6));
    assertThat(Starter.grownCount(100e9, 1, 12, 20e6)).isCloseTo(250e9, within(1.0));
    assertThat(Starter.grownCount(400e9, 1, 12, 20e6)).isCloseTo(400e9, within(1.0));
  }

  @Test
  void diacetylRestIsTheLastTimeAboveTheThreshold() {
    Cases.each(
        200,
        random -> {
          double precursor = random.nextDouble(0, 1);
          double diketone = random.nextDouble(0, 0.5);
          double beer = random.nextDouble(8, 24);
          double rest = Diacetyl.restHr(beer, precursor, diketone, 0.1);
          double split = Diacetyl.splitPerHr(beer);
          for (double later : new double[] {0.01, 5, 50}) {
            assertThat(
                    Diacetyl.leftMgPerL(
                        precursor, diketone, rest + later, split, 15 * split, 0.652))
                .isLessThanOrEqualTo(0.1);
          }
          if (rest > 0) {
            assertThat(Diacetyl.leftMgPerL(precursor, diketone, rest, split, 15 * split, 0.652))
                .isCloseTo(0.1, within(1e-9));
          }
        });
  }

  @Test
  void whatIsNoNumberIsRefused() {
    double nan = Double.NaN;
    List<Runnable> asked =
        List.of(
            () -> Alcohol.fromExtracts(nan, 2),
            () -> Alcohol.fromExtracts(12, nan),
            () -> EthanolWater.densityKgPerM3(nan, 20),
            () -> Tabarie.beerSg(nan, 4),
            () -> Balling.originalPlato(0.04, nan),
            () -> Balling.products(nan),
            () -> FoodEnergy.energy(0.04, 4, nan, 0.001, 355),
            () -> Pitching.cellsCount(nan, 12, 1e6),
            () -> YeastAge.storedFrac(1, nan, 3),
            () -> Oxygen.waterMgPerL(nan, 101),
            () -> FermentationCurve.ratePerHr(nan, 0.1, 2.2),
            () -> FermentationHeat.heatJ(20, nan, 6e5),
            () -> Diacetyl.leftMgPerL(0.5, 0.2, nan, 0.02, 0.3, 0.652),
            () -> DeAndresToro1998.tank(nan, 1, 130, 1.92, 0.08, 2),
            () -> GeeRamirez1988.tank(12, nan, 100, 220, 40, 180));
    for (Runnable each : asked) {
      assertThatIllegalArgumentException().isThrownBy(each::run).withMessageContaining("NaN");
    }
  }

  /// The CRC Handbook's indices: 4 % of ethanol 1.3354, sucrose 1.3388, 1.3403 and 1.3418 at 4, 5
  /// and 6 %, water 1.3330. A beer of 12 P with 4 % of alcohol, its increments added.
  @Test
  void alcoholBendsLightAsTheHandbookSays() {
    double real = 12 - 4 * (2.0665 - 0.010665 * 12);
    double index = 1.3388 + (real - 4) * (1.3403 - 1.3388) + 1.3354 - 1.3330;
    double brix = 5 + (index - 1.3403) / (1.3418 - 1.3403);
    assertThat(BeerRefractometer.meaning(12, brix, 1, 0.42).alcoholByMassFrac())
        .isCloseTo(0.04, within(0.001));
  }

  /// `q = 0.22 + 0.001 OE` is the straight line 0.820 - 0.00066 OE that Cutaia and others quote.
  @Test
  void theMovingShareIsTheOneThatIsQuoted() {
    for (double original : new double[] {10, 12, 14, 18}) {
      double real = AlcoholShortcut.movingShare(original, 3).realExtractPlato();
      assertThat((original - real) / (original - 3))
          .isCloseTo(0.820 - 0.00066 * original, within(0.001));
    }
  }
}
