package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import gylebook.testing.Integrated;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Enzymes and hops over time, against measured points and against Hipparchus' adaptive integrator.
final class MashKineticsTest {
  private interface Course {
    double at(double sec);
  }

  /// Fermentability and the labile beta-amylase over any course of temperature.
  private static double fermentability(Course course, double sec) {
    return mashed(new double[] {0, 1 - BetaAmylase.STABLE_SHARE_FRAC}, course, sec)[0];
  }

  private static double[] mashed(double[] start, Course course, double sec) {
    Integrated.Rates law =
        (t, y) -> {
          double mashC = course.at(t);
          double beta = BetaAmylase.STABLE_SHARE_FRAC + y[1];
          return new double[] {
            Fermentability.approachPerSec(mashC) * beta * (Fermentability.CEILING_FRAC - y[0]),
            -BetaAmylase.labileDecayPerSec(mashC) * y[1]
          };
        };
    return Integrated.after(sec, 60, start, law);
  }

  /// J. Chandrasekhar's four points, quoted by E. Wray 2014; the fit is off by 0.4 at most.
  @ParameterizedTest
  @CsvSource({"65, 82", "70, 70", "75, 50", "80, 30"})
  void anHourAtOneTemperatureGivesTheMeasuredAttenuation(double mashC, double percent) {
    assertThat(100 * fermentability(_ -> mashC, 3600)).isCloseTo(percent, within(0.5));
    assertThat(fermentability(_ -> mashC, 3600))
        .isCloseTo(Attenuation.limitFrac(mashC), within(1e-8));
  }

  @Test
  void twoRestsLieBetweenTheirTemperaturesAndAgreeWithTheIntegrator() {
    double stepped = Fermentability.afterTwoRestsFrac(62, 30, 72, 30);
    // The two halves by the integrator, so that no step straddles the jump.
    double cool = Fermentability.afterRestFrac(62, 60);
    double hot = Fermentability.afterRestFrac(72, 60);
    assertThat(stepped).isBetween(hot, cool);
    double[] fresh = {0, 1 - BetaAmylase.STABLE_SHARE_FRAC};
    double[] between = mashed(fresh, _ -> 62, 1800);
    assertThat(mashed(between, _ -> 72, 1800)[0]).isCloseTo(stepped, within(1e-8));
  }

  @Test
  void moreTimeGivesMoreAttenuationAndMoreHeatLessEnzyme() {
    Cases.each(
        200,
        random -> {
          double mashC = random.nextDouble(50, 85);
          double heldMin = random.nextDouble(1, 120);
          double longer = heldMin + random.nextDouble(0.5, 60);
          assertThat(Fermentability.afterRestFrac(mashC, longer))
              .isGreaterThan(Fermentability.afterRestFrac(mashC, heldMin))
              .isLessThan(Fermentability.CEILING_FRAC);
          assertThat(BetaAmylase.leftFrac(mashC + 1, heldMin))
              .isLessThanOrEqualTo(BetaAmylase.leftFrac(mashC, heldMin));
          assertThat(Attenuation.limitFrac(mashC + 1))
              .isLessThanOrEqualTo(Attenuation.limitFrac(mashC));
          assertThat(Gelatinisation.ratePerSec(mashC + 1))
              .isGreaterThanOrEqualTo(Gelatinisation.ratePerSec(mashC) * (1 - 1e-9));
        });
  }

  /// The look-up is the closed law: an hour gives the curve at every temperature, edge and ends
  /// too.
  @Test
  void theTabledRateIsTheClosedLaw() {
    Cases.each(
        300,
        random -> {
          double mashC = random.nextDouble(20, 99);
          assertThat(Fermentability.afterRestFrac(mashC, 60))
              .isCloseTo(Attenuation.limitFrac(mashC), within(1e-8));
        });
    for (double mashC : new double[] {1, 61.99999, 62, 62.00001, 99.9, 100}) {
      assertThat(Fermentability.afterRestFrac(mashC, 60))
          .isCloseTo(Attenuation.limitFrac(mashC), within(1e-8));
    }
  }

  /// Rittenauer et al. 2021, ten minutes at the middle of each range they name.
  @Test
  void starchOpensAsTheCalibrationPointsSay() {
    assertThat(Gelatinisation.convertedFrac(62.95, 10)).isCloseTo(0.975, within(0.002));
    assertThat(Gelatinisation.convertedFrac(58.65, 10)).isCloseTo(0.617, within(0.002));
    assertThat(Gelatinisation.convertedFrac(55.8, 10)).isLessThan(0.025);
    assertThat(Gelatinisation.convertedFrac(54.5, 10)).isLessThan(0.002);
    assertThat(Gelatinisation.ratePerSec(57)).isLessThan(0.05 * Gelatinisation.CEILING_PER_SEC);
    assertThat(Gelatinisation.ratePerSec(62.5))
        .isGreaterThan(0.95 * Gelatinisation.CEILING_PER_SEC);
  }

  /// 98 to 78 C in 40 min: the one integrator checks the other.
  @Test
  void coolingHopsAgreeWithTheAdaptiveIntegrator() {
    Integrated.Rates law =
        (t, y) -> {
          double wortC = 98 - 20 * t / 2400;
          double formed = HopIsomerisation.formationPerSec(wortC) * y[0];
          return new double[] {-formed, formed - HopIsomerisation.lossPerSec(wortC) * y[1]};
        };
    double iso = Integrated.after(2400, 60, new double[] {1, 0}, law)[1];
    assertThat(HopIsomerisation.evenCoolingIsoFrac(98, 78, 40)).isCloseTo(iso, within(1e-6));
    // Reference sheet value of another two integrators.
    assertThat(HopIsomerisation.freeCoolingIsoFrac(98, 25, 120, 30))
        .isCloseTo(0.1479, within(0.0001));
  }

  @Test
  void freeSulfideInTheBoilAgreesWithTheAdaptiveIntegrator() {
    Integrated.Rates law =
        (t, y) -> {
          double split = DimethylSulfide.precursorPerSec(98, 5.3) * y[0];
          return new double[] {-split, split - DimethylSulfide.strippingPerSec(0.1) * y[1]};
        };
    double[] end = Integrated.after(4500, 60, new double[] {0.8, 0.1}, law);
    DimethylSulfide.Left left =
        DimethylSulfide.afterBoil(
            0.8,
            0.1,
            DimethylSulfide.halfLifeMin(98, 5.3),
            60 * DimethylSulfide.strippingPerSec(0.1),
            75);
    assertThat(left.precursorMgPerL()).isCloseTo(end[0], within(1e-9));
    assertThat(left.freeMgPerL()).isCloseTo(end[1], within(1e-9));
  }

  /// The sheet's figure: at 94.6 C, the boil at 1609 m, the rate is about 0.63 of that at sea
  /// level.
  @Test
  void hopsIsomeriseSlowerInTheMountains() {
    double ratio =
        HopIsomerisation.formationPerSec(Saturation.boilingC(83.432))
            / HopIsomerisation.formationPerSec(Saturation.boilingC(101.325));
    assertThat(ratio).isCloseTo(0.63, within(0.01));
  }

  @Test
  void modelsOutsideTheirRangeSaySo() {
    assertThat(HopIsomerisation.RANGE.caution(85).orElseThrow()).contains("extrapolated", "85");
    assertThat(HopIsomerisation.RANGE.caution(98)).isEmpty();
    assertThat(HopIsomerisation.RANGE.caution(Double.NaN)).isPresent();
    assertThat(Attenuation.RANGE.caution(55)).isPresent();
    assertThat(Attenuation.limitFrac(55)).isEqualTo(Attenuation.limitFrac(62));
    assertThat(Colour.RANGE.caution(60)).isPresent();
  }

  /// No bonus: hops in the first wort are a boil addition and nothing more.
  @Test
  void firstWortHopsGetNoBonus() {
    double boiledFrac = HopUtilisation.tinsethFrac(1.050, 60);
    assertThat(HopUtilisation.tinsethMgPerL(28, 0.10, 20, 60, 1.050))
        .isCloseTo(28 * 0.10 * 1000 / 20 * boiledFrac, within(1e-9));
    assertThat(HopIsomerisation.isoFrac(98, 75)).isLessThan(1.2 * HopIsomerisation.isoFrac(98, 60));
  }

  @Test
  void coloursGoThereAndBack() {
    Cases.each(
        100,
        random -> {
          double srm = random.nextDouble(0, 80);
          assertThat(Colour.beerSrm(Colour.beerEbc(srm))).isCloseTo(srm, within(1e-9));
          double lovibond = random.nextDouble(0.5, 600);
          assertThat(Colour.maltLovibond(Colour.maltEbc(lovibond)))
              .isCloseTo(lovibond, within(1e-9));
        });
  }

  @Test
  void notANumberIsRefused() {
    assertThatThrownBy(() -> Fermentability.approachPerSec(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Gelatinisation.ratePerSec(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> HopIsomerisation.isoFrac(Double.NaN, 10))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> HopIsomerisation.isoFrac(98, -1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> DimethylSulfide.precursorPerSec(98, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> HopAge.leftFrac(0.3, 180, 20, 4, Double.NaN, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
