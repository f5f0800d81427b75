package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/// What must hold for any input: there and back, rising or falling, kept masses, refused nonsense.
/// Balances and definitions; no source is needed.
class WortLawsTest {
  private static final int CASES = 300;

  @Test
  void everyConversionComesBack() {
    Cases.each(
        CASES,
        random -> {
          double w = random.nextDouble(-0.05, 0.7);
          double wortC = random.nextDouble(-5, 110);
          double density = WortDensity.wortKgPerL(w, wortC);
          assertThat(WortDensity.extractFrac(density, wortC)).isCloseTo(w, within(1e-10));
          double plato = random.nextDouble(-4, 33);
          assertThat(PlatoScale.extractPlato(PlatoScale.gravitySg(plato)))
              .isCloseTo(plato, within(1e-9));
          double brix = random.nextDouble(0, 40);
          double brixSg = NbsC440Scale.gravitySg(Math.max(brix, 0.01));
          assertThat(NbsC440Scale.extractPlato(Math.max(brixSg, 1)))
              .isCloseTo(Math.max(brix, 0.01), within(1e-9));
          double pressure = random.nextDouble(1, 20_000);
          assertThat(Saturation.saturationKpa(Saturation.boilingC(pressure)))
              .isCloseTo(pressure, within(pressure * 1e-7));
          double altitude = random.nextDouble(-490, 10_900);
          assertThat(Atmosphere.altitudeM(Atmosphere.stationKpa(altitude)))
              .isCloseTo(altitude, within(1e-6));
        });
  }

  @Test
  void hydrometerAndItsReadingAreInverse() {
    Cases.each(
        CASES,
        random -> {
          double w = random.nextDouble(0, 0.3);
          double sampleC = random.nextDouble(0, 100);
          double shown = Hydrometer.indicatedSg(w, sampleC, 20, 25e-6);
          assertThat(Hydrometer.corrected(shown, sampleC, 20, 25e-6).extractPlato())
              .isCloseTo(100 * w, within(1e-7));
        });
  }

  @Test
  void strikeAndMashTemperatureAreInverse() {
    Cases.each(
        CASES,
        random -> {
          double liquor = random.nextDouble(5, 60);
          double malt = liquor / random.nextDouble(2.5, 8);
          double mash = random.nextDouble(40, 78);
          double vessel = random.nextDouble(0, 10_000);
          double wetting = random.nextDouble(0, 39_000);
          double loss = random.nextDouble(0, 500_000);
          double strike = Strike.strikeC(liquor, malt, 15, mash, vessel, wetting, loss);
          assertThat(Strike.mashC(liquor, strike, malt, 15, vessel, wetting, loss))
              .isCloseTo(mash, within(1e-9));
        });
  }

  @Test
  void firstWortAndConversionAreInverse() {
    Cases.each(
        CASES,
        random -> {
          double thickness = random.nextDouble(2, 8);
          double conversion = random.nextDouble(0.3, 1);
          double plato = FirstWort.firstWortPlato(thickness, 0.04, 0.8, conversion);
          assertThat(FirstWort.conversionFrac(plato, thickness, 0.04, 0.8))
              .isCloseTo(conversion, within(1e-12));
        });
  }

  @Test
  void whatRisesRisesAllTheWay() {
    rises("saturation", 0, 370, Saturation::saturationKpa);
    rises("boiling point", 0.7, 22_000, Saturation::boilingC);
    rises("Plato", 0.98, 1.15, PlatoScale::extractPlato);
    rises("Brix", 1, 1.178, NbsC440Scale::extractPlato);
    rises("short Plato", 0.98, 1.08, ShortPlatoScale::extractPlato);
    rises("one-constant Plato", 0.98, 1.08, ShortPlatoScale::oneConstantPlato);
    rises("boiling rise", 0, 0.6, w -> BoilingRise.riseK(w, 101.325));
    rises("malt heat", 0, 0.2, MaltHeat::maltJPerKgK);
    rises("density by strength", -0.05, 0.7, w -> WortDensity.wortKgPerL(w, 66));
    rises("depth", 0, 5, m -> BoilingRise.depthRiseK(m, 0.12, 101.325));
    rises("held water", 0, 0.95, x -> Absorption.waterKgPerKg(x, 0.04, 0.8, 0.95));
  }

  @Test
  void whatFallsFallsAllTheWay() {
    rises("latent heat", 0, 200, t -> -LatentHeat.latentJPerKg(t));
    rises("air pressure", -500, 11_000, m -> -Atmosphere.stationKpa(m));
    rises("water density", 4.5, 110, t -> -WaterDensity.waterKgPerL(t));
    rises("wetting heat", 0, 0.2, m -> -MaltHeat.wettingJPerKg(m));
    rises("first wort", 1, 20, r -> -FirstWort.firstWortPlato(r, 0.04, 0.8, 1));
    rises("lauter", 0, 1.5, a -> -Lauter.runnings(6, 30, 0, a, 0.04, 0.8, 1).lauterFrac());
  }

  @Test
  void rinseKeepsTheExtract() {
    Cases.each(
        CASES,
        random -> {
          double malt = random.nextDouble(2, 10);
          double liquor = malt * random.nextDouble(2.5, 7);
          double rinse = random.nextDouble(0, 10);
          double held = random.nextDouble(0.4, 1.2);
          Lauter.Runnings run = Lauter.runnings(malt, liquor, rinse, held, 0.04, 0.8, 0.95);
          double extract = 0.95 * PotentialExtract.extractKg(malt, 0.04, 0.8);
          double total = liquor + 0.04 * malt + extract;
          double ranOff = run.blendPlato() / 100 * (total - held * malt + rinse);
          double stayed = run.secondPlato() / 100 * held * malt;
          assertThat(ranOff + stayed).isCloseTo(extract, within(1e-9));
          assertThat(ranOff / extract).isCloseTo(run.lauterFrac(), within(1e-12));
        });
  }

  @Test
  void moreSmallRinsesBeatOneLarge() {
    double once = Lauter.rinsedFrac(33, 5, 6, 1, 1);
    double twice = Lauter.rinsedFrac(33, 5, 3, 2, 1);
    assertThat(twice).isGreaterThan(once);
    assertThat(Lauter.rinsedFrac(33, 5, 6, 1, 0.5)).isLessThan(once);
    assertThat(Lauter.rinsedFrac(33, 5, 6, 0, 1)).isCloseTo(1 - 5.0 / 33, within(1e-12));
  }

  @Test
  void dilutionKeepsTheExtractAndTheMass() {
    Cases.each(
        CASES,
        random -> {
          double wort = random.nextDouble(5, 60);
          double plato = random.nextDouble(5, 25);
          double wanted = random.nextDouble(3, 25);
          double water = Dilution.waterKg(wort, plato, wanted);
          Dilution.Diluted diluted = Dilution.diluted(wort, plato, water);
          assertThat(diluted.extractPlato()).isCloseTo(wanted, within(1e-9));
          double before = wort * WortDensity.wortKgPerL(plato / 100, 20);
          double after = diluted.wortL() * WortDensity.wortKgPerL(wanted / 100, 20);
          assertThat(after - before).isCloseTo(water, within(1e-9));
        });
  }

  @Test
  void shrinkageComesBack() {
    Cases.each(
        CASES,
        random -> {
          double w = random.nextDouble(0, 0.25);
          double hotC = random.nextDouble(40, 102);
          double hot = Shrinkage.hotL(20, w, hotC, 20);
          assertThat(hot).isGreaterThan(20);
          assertThat(Shrinkage.coldL(hot, w, hotC, 20)).isCloseTo(20, within(1e-12));
        });
  }

  @Test
  void strikeFromMoistureAgreesWithItsPartsAtFourPerCent() {
    assertThat(Strike.moistMaltStrikeC(30, 6, 20, 66.667, 4000, 0.04, 0))
        .isCloseTo(
            Strike.strikeC(30, 6, 20, 66.667, 4000, MaltHeat.wettingJPerKg(0.04), 0),
            within(1e-12));
  }

  @Test
  void reportReducedToSeaLevelGivesTheStationPressure() {
    assertThat(Atmosphere.stationKpa(101.325, 640)).isCloseTo(93.87, within(0.01));
    assertThat(Atmosphere.stationKpa(103.0, 0)).isCloseTo(103.0, within(1e-12));
  }

  @Test
  void whatIsNotANumberIsRefused() {
    List<DoubleUnaryOperator> functions =
        List.of(
            WaterDensity::waterKgPerL,
            t -> WaterDensity.tableKgPerL(t, 101.325),
            t -> WortDensity.wortKgPerL(0.1, t),
            w -> WortDensity.wortKgPerL(w, 20),
            d -> WortDensity.extractFrac(d, 20),
            Saturation::saturationKpa,
            Saturation::boilingC,
            LatentHeat::latentJPerKg,
            LatentHeat::boilJPerKg,
            w -> BoilingRise.riseK(w, 100),
            Atmosphere::stationKpa,
            Atmosphere::altitudeM,
            WaterHeat::waterJPerKgK,
            t -> WortHeat.wortJPerKgK(0.1, t),
            MaltHeat::maltJPerKgK,
            MaltHeat::wettingJPerKg,
            PlatoScale::extractPlato,
            PlatoScale::gravitySg,
            NbsC440Scale::extractPlato,
            NbsC440Scale::gravitySg,
            ShortPlatoScale::extractPlato,
            l -> ExtractMass.extractKg(l, 1.05),
            m -> PotentialExtract.extractKg(m, 0.04, 0.8),
            t -> Strike.strikeC(30, 6, 20, t, 0, 0, 0),
            q -> Strike.strikeC(30, 6, 20, 66, 0, 0, q),
            t -> Strike.mashC(30, t, 6, 20, 0, 0, 0),
            s -> Hydrometer.corrected(s, 30, 20, 25e-6).gravitySg(),
            x -> Absorption.waterKgPerKg(x, 0.04, 0.8, 1),
            r -> FirstWort.firstWortPlato(r, 0.04, 0.8, 1),
            a -> Lauter.runnings(6, 30, 0, a, 0.04, 0.8, 1).lauterFrac(),
            s -> Lauter.runnings(6, 30, s, 0.8, 0.04, 0.8, 1).lauterFrac(),
            l -> Shrinkage.hotL(l, 0.1, 100, 20),
            k -> Dilution.diluted(20, 12, k).wortL());
    for (int i = 0; i < functions.size(); i++) {
      DoubleUnaryOperator function = functions.get(i);
      assertThatThrownBy(() -> function.applyAsDouble(Double.NaN))
          .as("function %s", i)
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> function.applyAsDouble(Double.POSITIVE_INFINITY))
          .as("function %s", i)
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  private static void rises(String what, double least, double most, DoubleUnaryOperator function) {
    double step = (most - least) / 400;
    for (int i = 1; i <= 400; i++) {
      double x = Math.min(least + i * step, most);
      assertThat(function.applyAsDouble(x))
          .as("%s at %s", what, x)
          .isGreaterThan(function.applyAsDouble(least + (i - 1) * step));
    }
  }
}
