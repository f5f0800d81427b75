package gylebook.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LiquorTest {
  // 100 mg/L of alkalinity as calcium carbonate is 1.998 meq/L, 121.9 mg/L as bicarbonate.
  private static final Liquor.Ions TEST_WATER = new Liquor.Ions(50, 10, 20, 17, 80, 121.93);

  @Test
  void theTestWaterConductsAsTheUsgsSpeciationHasIt() {
    // USGS PHREEQC with phreeqc.dat: 449 µS/cm at pH 7.8; here pH 7, a little less bicarbonate.
    assertThat(TEST_WATER.conductanceUsPerCm()).isCloseTo(449, within(12.0));
  }

  @Test
  void filteredWaterConductsWhatTheMeterReadsAndIsNotEmpty() {
    Liquor.Ions filtered = TEST_WATER.asMetered(22);
    assertThat(filtered.conductanceUsPerCm()).isCloseTo(22, within(0.01));
    // Ions in thin water carry a few per cent more each (Kohlrausch), so less than 22/449 passes.
    assertThat(filtered.calciumMgPerL() / 50).isBetween(0.040, 22.0 / 449);
    assertThat(filtered.sodiumMgPerL() / 20)
        .isCloseTo(filtered.calciumMgPerL() / 50, within(1e-12));
  }

  @Test
  void aTapThatHasMoreInItThanItsReportIsScaledUp() {
    Liquor.Ions today = TEST_WATER.asMetered(600);
    assertThat(today.conductanceUsPerCm()).isCloseTo(600, within(0.5));
    assertThat(today.calciumMgPerL() / 50).isGreaterThan(600.0 / 449);
  }

  @Test
  void aWaterOfWhichNothingIsKnownTakesTheSharesOfAMiddlingTap() {
    Liquor.Ions unknown = new Liquor.Ions(0, 0, 0, 0, 0, 0);
    Liquor.Ions found = unknown.asMetered(449);
    assertThat(found.conductanceUsPerCm()).isCloseTo(449, within(0.5));
    // Standard Methods for the Examination of Water and Wastewater, 2510, from memory: what is
    // dissolved in a natural water is 0.55 to 0.9 mg/L for each µS/cm.
    double allMgPerL =
        found.calciumMgPerL()
            + found.magnesiumMgPerL()
            + found.sodiumMgPerL()
            + found.chlorideMgPerL()
            + found.sulphateMgPerL()
            + found.bicarbonateMgPerL();
    assertThat(allMgPerL / 449).isBetween(0.55, 0.9);
    assertThat(unknown.asMetered(0)).isEqualTo(unknown);
  }

  @Test
  void aMeterThatReadsSeaWaterIsRefused() {
    Entered sea = Entered.of(50, Unit.known(Quantity.CONDUCTIVITY, "mS/cm"));
    assertThatThrownBy(() -> new Liquor("bay", TEST_WATER, List.of(), Optional.of(sea)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("50000 µS/cm");
  }

  @Test
  void theMeterLeavesTheAnalysisAsItStands() {
    Entered read = Entered.of(22, Unit.known(Quantity.CONDUCTIVITY, "µS/cm"));
    Liquor liquor = new Liquor("filtered", TEST_WATER, List.of(), Optional.of(read));
    assertThat(liquor.ions()).isEqualTo(TEST_WATER);
    assertThat(liquor.source()).isEqualTo(TEST_WATER.asMetered(22));
  }
}
