package gylebook.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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
    Liquor.Ions filtered = TEST_WATER.filteredTo(22);
    assertThat(filtered.conductanceUsPerCm()).isCloseTo(22, within(0.01));
    // Ions in thin water carry a few per cent more each (Kohlrausch), so less than 22/449 passes.
    assertThat(filtered.calciumMgPerL() / 50).isBetween(0.040, 22.0 / 449);
    assertThat(filtered.sodiumMgPerL() / 20)
        .isCloseTo(filtered.calciumMgPerL() / 50, within(1e-12));
  }

  @Test
  void aMeterThatReadsMoreThanTheTapIsRefused() {
    assertThatThrownBy(() -> TEST_WATER.filteredTo(600))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("600");
  }
}
