package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// Mistakes that are copied about, each shown to be a mistake and shown not to be ours.
class WortTrapsTest {
  /// Kell 1975 with the denominator as a much-copied web text of Jones and Harris 1992 prints it is
  /// 0.07 kg/m3 too low at 4 C, where water weighs 999.97 kg/m3.
  @Test
  void swappedDigitsInKellsDenominatorAreNotOurs() {
    assertThat(kell1975(4, 16.879850e-3)).isCloseTo(999.972, within(0.001));
    assertThat(kell1975(4, 16.897850e-3)).isCloseTo(999.905, within(0.001));
    for (double waterC = 4; waterC <= 100; waterC += 4) {
      double ours = 1000 * WaterDensity.waterKgPerL(waterC);
      // The two temperature scales differ by up to 0.026 K, which is 0.02 kg/m3 near boiling.
      assertThat(ours).isCloseTo(kell1975(waterC, 16.879850e-3), within(0.03));
      assertThat(Math.abs(ours - kell1975(waterC, 16.897850e-3))).isGreaterThan(0.05);
    }
  }

  private static double kell1975(double waterC, double below) {
    double t = waterC;
    double above =
        999.83952
            + 16.945176 * t
            - 7.9870401e-3 * t * t
            - 46.170461e-6 * Math.pow(t, 3)
            + 105.56302e-9 * Math.pow(t, 4)
            - 280.54253e-12 * Math.pow(t, 5);
    return above / (1 + below * t);
  }

  /// Water boils at 99.974 C at the standard pressure (IAPWS-IF97); three constants of an Antoine
  /// equation (from memory) make it 0.02 to 0.06 K too hot from 70 to 101 kPa.
  @Test
  void threeConstantsBoilWaterTooHot() {
    assertThat(Saturation.boilingC(101.325)).isCloseTo(99.974, within(0.0005));
    for (double pressureKpa = 70; pressureKpa <= 101.325; pressureKpa += 1) {
      double mercuryMm = pressureKpa * 760 / 101.325;
      double antoineC = 1730.63 / (8.07131 - Math.log10(mercuryMm)) - 233.426;
      assertThat(antoineC - Saturation.boilingC(pressureKpa))
          .as("%s kPa", pressureKpa)
          .isBetween(0.02, 0.065);
    }
  }

  /// The cubic as printed leaves -0.003 P at SG 1; water has no extract.
  @Test
  void waterHasNoExtract() {
    assertThat(135.997 - 630.272 + 1111.14 - 616.868).isCloseTo(-0.003, within(1e-9));
    assertThat(PlatoScale.extractPlato(1)).isCloseTo(0, within(1e-9));
    assertThat(PlatoScale.gravitySg(0)).isCloseTo(1, within(1e-9));
  }

  /// Pauls and Whites print 2.3 and 1.5 C beside 3.5 and 3 F at 3 and 4 % moisture.
  @Test
  void misprintedCelsiusColumnOfTheWettingTableIsNotUsed() {
    assertThat(MaltHeat.wettingRiseK(0.03, 2.68)).isCloseTo(3.5 / 1.8, within(1e-9));
    assertThat(MaltHeat.wettingRiseK(0.04, 2.68)).isCloseTo(3.0 / 1.8, within(1e-9));
    assertThat(Math.abs(MaltHeat.wettingRiseK(0.03, 2.68) - 2.3)).isGreaterThan(0.3);
    assertThat(Math.abs(MaltHeat.wettingRiseK(0.04, 2.68) - 1.5)).isGreaterThan(0.1);
  }

  /// The heat of the table at its own thickness, in kJ/kg (computed from the read table).
  @Test
  void wettingHeatFollowsFromTheRiseOfTheTable() {
    double[][] expected = {
      {0, 39.1}, {0.01, 35.6}, {0.02, 28.5}, {0.03, 25.1}, {0.04, 21.5}, {0.06, 18.0}, {0.08, 14.4}
    };
    for (double[] row : expected) {
      assertThat(MaltHeat.wettingJPerKg(row[0]) / 1000)
          .as("moisture %s", row[0])
          .isCloseTo(row[1], within(0.11));
    }
  }

  /// 30 kg of water, 6 kg of malt, 8 kg of steel: malt and water alone ask for 1.1 K too much.
  @Test
  void strikeFromMaltAndWaterAloneIsTooHot() {
    double naiveC = Strike.strikeC(30, 6, 20, 66.667, 0, 0, 0);
    double wholeC = Strike.strikeC(30, 6, 20, 66.667, 4000, 21_500, 0);
    assertThat(naiveC).isCloseTo(70.401, within(0.005));
    assertThat(naiveC - wholeC).isCloseTo(1.11, within(0.01));
  }

  /// A 20 C hydrometer under-reads by about 0.015 at 60 C and 0.019 at 67 C (floating body).
  @Test
  void hydrometerInHotWortReadsTooLow() {
    assertThat(Hydrometer.corrected(1.040, 60, 20, 25e-6).gravitySg() - 1.040)
        .isCloseTo(0.0156, within(0.0005));
    assertThat(Hydrometer.corrected(1.030, 66.667, 20, 25e-6).gravitySg() - 1.030)
        .isCloseTo(0.0190, within(0.0005));
  }

  /// The scale of the Society and ICUMSA's density differ by 0.011 P from 5 to 20 P, no less.
  @Test
  void twoScalesOfExtractDisagreeAboutTheSecondDigit() {
    assertThat(SpecificGravity.largestGapPlato(0.05, 0.20, 0.0012)).isBetween(0.010, 0.012);
  }
}
