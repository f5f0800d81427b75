package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Printed values of hops and of phosphate that the reference rows leave out.
class HopTableTest {
  /// Malowicki and Shellhammer 2005: rates and yields from their constants, worked apart.
  @ParameterizedTest
  @CsvSource({
    "90, 5.206e-3, 1.183e-3, 0.0504, 0.1420, 0.2585, 0.3534",
    "95, 8.112e-3, 1.924e-3, 0.0772, 0.2097, 0.3623, 0.4708",
    "98, 1.0525e-2, 2.559e-3, 0.0986, 0.2601, 0.4305, 0.5370",
    "100, 1.2490e-2, 3.087e-3, 0.1156, 0.2976, 0.4759, 0.5745"
  })
  void isoAlphaFormsAsPrinted(
      double wortC, double k1, double k2, double ten, double thirty, double sixty, double ninety) {
    assertThat(60 * HopIsomerisation.formationPerSec(wortC)).isCloseTo(k1, within(5e-4 * k1));
    assertThat(60 * HopIsomerisation.lossPerSec(wortC)).isCloseTo(k2, within(5e-4 * k2));
    double[] yields = {ten, thirty, sixty, ninety};
    double[] minutes = {10, 30, 60, 90};
    for (int i = 0; i < yields.length; i++) {
      assertThat(HopIsomerisation.isoFrac(wortC, minutes[i]))
          .as("%s min", minutes[i])
          .isCloseTo(yields[i], within(1e-4));
    }
  }

  /// At 1609 m the wort boils at 94.6 C and isomerises 0.63 times as fast as by the sea; a boil of
  /// 90 min at 100 C destroys 24.3 % of dosed iso-alpha acid, where Kappler and others found over
  /// 20.
  @Test
  void theMountainsSlowTheHopsAndALongBoilDestroys() {
    double sea = HopIsomerisation.formationPerSec(Saturation.boilingC(101.325));
    double high =
        HopIsomerisation.formationPerSec(
            Saturation.boilingC(Atmosphere.stationKpa(101.325, 1609.34)));
    assertThat(high / sea).isCloseTo(0.63, within(0.005));
    assertThat(HopIsomerisation.isoLostFrac(100, 90)).isCloseTo(0.243, within(0.0005));
  }

  /// Tinseth's equation, from memory: an hour at five gravities, and times at 1.050.
  @ParameterizedTest
  @CsvSource({
    "1.030, 60, 0.2761", "1.040, 60, 0.2524", "1.050, 60, 0.2307", "1.060, 60, 0.2108",
    "1.070, 60, 0.1927", "1.050, 5, 0.0460", "1.050, 10, 0.0836", "1.050, 15, 0.1145",
    "1.050, 30, 0.1773", "1.050, 90, 0.2467"
  })
  void theConventionIsAsRemembered(double wortSg, double boiledMin, double expected) {
    assertThat(HopUtilisation.tinsethFrac(wortSg, boiledMin)).isCloseTo(expected, within(6e-5));
  }

  /// 5 g/L of hops with 0.30 % are 15 mg/L of humulinones, 9.8 to 10.5 mg/L as bitter (65 to 70 %,
  /// Maye 2015).
  @Test
  void humulinonesAreSixtyFiveToSeventyPerCentAsBitter() {
    assertThat(Humulinone.isoEquivalentMgPerL(5, 0.003, 0.65)).isCloseTo(9.8, within(0.051));
    assertThat(Humulinone.isoEquivalentMgPerL(5, 0.003, 0.70)).isCloseTo(10.5, within(1e-9));
  }

  /// The printed slopes of the storage index at 0.31: 10.3 % by the usual 110, and by the crops
  /// with the least and the greatest slope (Nickerson and Likens 1979).
  @Test
  void theStorageIndexAsPrinted() {
    assertThat(HopStorage.lostFrac(0.31, 1.10)).isCloseTo(0.103, within(0.0005));
    assertThat(HopStorage.lostFrac(0.31, 1.018)).isCloseTo(0.095, within(0.0005));
    assertThat(HopStorage.lostFrac(0.31, 1.146)).isCloseTo(0.107, within(0.0005));
  }

  /// phreeqc.dat (read): sums of the steps of phosphoric acid, its heats, and the pairs of calcium
  /// with HPO4 and H2PO4 at 25 C; heats in kcal/mol but the first, -10.1 kJ/mol.
  @Test
  void phosphateKeepsTheConstantsOfTheDatabase() {
    assertThat(Species.H3PO4.log(25)).isCloseTo(21.721, within(1e-9));
    assertThat(Species.H2PO4.log(25)).isCloseTo(19.553, within(1e-9));
    assertThat(Species.HPO4.log(25)).isCloseTo(12.346, within(1e-9));
    assertThat(Species.CAHPO4.log(25) - Species.HPO4.log(25)).isCloseTo(2.739, within(1e-9));
    assertThat(Species.CAH2PO4.log(25) - Species.H2PO4.log(25)).isCloseTo(1.408, within(1e-9));
    assertThat(heatKj(Species.H3PO4)).isCloseTo(-10.1, within(0.01));
    assertThat(heatKj(Species.H2PO4)).isCloseTo(-4.520 * 4.184, within(0.01));
    assertThat(heatKj(Species.HPO4)).isCloseTo(-3.530 * 4.184, within(0.01));
  }

  /// From the constants at 25 and 75 C, `dH = R ln 10 (log K2 - log K1)/(1/T1 - 1/T2)`.
  private static double heatKj(Species species) {
    double risen = species.log(75) - species.log(25);
    return 8.314462618e-3 * Math.log(10) * risen / (1 / 298.15 - 1 / 348.15);
  }
}
