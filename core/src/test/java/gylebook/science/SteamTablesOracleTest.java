package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import org.junit.jupiter.api.Test;

/// Our steam equations against a library that implements the same release (IAPWS R7-97(2012)).
///
/// The coefficients of regions 1 and 2 were read in that library, so agreement with it proves the
/// equations around them; the release's own verification values, written here from memory, and the
/// values of a second library in `reference/hot-side.csv` stand beside it.
class SteamTablesOracleTest {
  private static final double ZERO_KELVIN = 273.15;
  private final IF97 oracle = new IF97(IF97.UnitSystem.SI);

  @Test
  void saturationPressureAgreesOverTheWholeLiquidRange() throws OutOfRangeException {
    for (double waterC = 0.01; waterC < 373; waterC += 1.7) {
      double expectedKpa = oracle.saturationPressureT(waterC + ZERO_KELVIN) / 1000;
      assertThat(Saturation.saturationKpa(waterC))
          .as("%s C", waterC)
          .isCloseTo(expectedKpa, within(expectedKpa * 1e-12));
    }
  }

  @Test
  void boilingPointAgreesFromVacuumToPressureCooker() throws OutOfRangeException {
    for (double pressureKpa = 0.7; pressureKpa < 20_000; pressureKpa *= 1.07) {
      assertThat(Saturation.boilingC(pressureKpa))
          .as("%s kPa", pressureKpa)
          .isCloseTo(oracle.saturationTemperatureP(pressureKpa * 1000) - ZERO_KELVIN, within(1e-9));
    }
  }

  @Test
  void latentHeatAgreesFromFreezingToTwoHundredDegrees() throws OutOfRangeException {
    for (double waterC = 0.01; waterC < 200; waterC += 0.9) {
      double kelvin = waterC + ZERO_KELVIN;
      double expected =
          oracle.specificEnthalpySaturatedVapourT(kelvin)
              - oracle.specificEnthalpySaturatedLiquidT(kelvin);
      assertThat(LatentHeat.latentJPerKg(waterC))
          .as("%s C", waterC)
          .isCloseTo(expected, within(0.01));
      assertThat(LatentHeat.boilJPerKg(Saturation.saturationKpa(waterC)))
          .as("%s C by pressure", waterC)
          .isCloseTo(expected, within(0.01));
    }
  }

  @Test
  void densityOfTheSteamTablesAgreesOverAGrid() throws OutOfRangeException {
    for (double pressureKpa = 110; pressureKpa <= 1000; pressureKpa += 89) {
      for (double waterC = 0.5; waterC < 100; waterC += 3.3) {
        assertThat(WaterDensity.tableKgPerL(waterC, pressureKpa))
            .as("%s C, %s kPa", waterC, pressureKpa)
            .isCloseTo(
                oracle.densityPT(pressureKpa * 1000, waterC + ZERO_KELVIN) / 1000, within(1e-12));
      }
    }
  }

  @Test
  void heatCapacityAgreesOverAGrid() throws OutOfRangeException {
    for (double pressureKpa = 110; pressureKpa <= 1000; pressureKpa += 89) {
      for (double waterC = 0.5; waterC < 100; waterC += 3.3) {
        assertThat(WaterHeat.waterJPerKgK(waterC, pressureKpa))
            .as("%s C, %s kPa", waterC, pressureKpa)
            .isCloseTo(
                oracle.isobaricHeatCapacityPT(pressureKpa * 1000, waterC + ZERO_KELVIN),
                within(1e-6));
      }
    }
  }

  /// IAPWS-IF97, table 5: v, h and cp of region 1 at 300 K and 3 MPa, as public codes quote it.
  @Test
  void liquidGivesTheVerificationValuesOfTheRelease() {
    assertThat(1 / LiquidIf97.densityKgPerM3(300 - ZERO_KELVIN, 3000))
        .isCloseTo(0.100215168e-2, within(1e-11));
    assertThat(LiquidIf97.enthalpyJPerKg(300 - ZERO_KELVIN, 3000))
        .isCloseTo(115_331.273, within(1e-3));
    assertThat(LiquidIf97.heatJPerKgK(300 - ZERO_KELVIN, 3000)).isCloseTo(4173.01218, within(1e-5));
  }

  /// IAPWS-IF97, table 15: h of region 2 at 300 K and 0.0035 MPa, as public codes quote it.
  @Test
  void steamGivesTheVerificationValueOfTheRelease() {
    assertThat(SteamIf97.enthalpyJPerKg(300 - ZERO_KELVIN, 3.5))
        .isCloseTo(2_549_911.45, within(1e-2));
  }

  /// IAPWS-IF97, tables 35 and 36.
  @Test
  void saturationGivesTheVerificationValuesOfTheRelease() {
    assertThat(Saturation.saturationKpa(300 - ZERO_KELVIN)).isCloseTo(3.53658941, within(1e-8));
    assertThat(Saturation.saturationKpa(500 - ZERO_KELVIN)).isCloseTo(2638.89776, within(1e-5));
    assertThat(Saturation.saturationKpa(600 - ZERO_KELVIN)).isCloseTo(12344.3146, within(1e-4));
    assertThat(Saturation.boilingC(100)).isCloseTo(372.755919 - ZERO_KELVIN, within(1e-6));
    assertThat(Saturation.boilingC(1000)).isCloseTo(453.035632 - ZERO_KELVIN, within(1e-6));
    assertThat(Saturation.boilingC(10_000)).isCloseTo(584.149488 - ZERO_KELVIN, within(1e-6));
  }

  @Test
  void theTwoDensitiesOfWaterDifferByLessThanTheyClaim() {
    for (double waterC = 0; waterC <= 110; waterC += 1) {
      double mostKgPerL = waterC <= 100 ? 25e-6 : 50e-6;
      double pressureKpa = Math.max(101.325, Saturation.saturationKpa(waterC));
      assertThat(WaterDensity.waterKgPerL(waterC))
          .as("%s C", waterC)
          .isCloseTo(WaterDensity.tableKgPerL(waterC, pressureKpa), within(mostKgPerL));
    }
  }
}
