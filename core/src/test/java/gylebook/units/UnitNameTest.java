package gylebook.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitNameTest {
  private static UnitName name(String javaName) {
    return UnitName.of(javaName).orElseThrow(() -> new AssertionError(javaName + " has no unit"));
  }

  @ParameterizedTest
  @CsvSource({
    "wortC, wort, °C, TEMPERATURE",
    "wortMaxC, wort max, °C, TEMPERATURE",
    "wortMinC, wort min, °C, TEMPERATURE",
    "stepSec, step, s, TIME",
    "boilMin, boil, min, TIME",
    "pressureKpa, pressure, kPa, PRESSURE",
    "flowLPerSec, flow, L/s, FLOW",
    "permeabilityM2, permeability, m², AREA",
    "wortSg, wort, SG, GRAVITY",
    "maltKg, malt, kg, MASS",
    "hopsG, hops, g, SMALL_MASS",
    "ironMgPerL, iron, mg/L, CONCENTRATION",
    "heatJPerKgK, heat, J/(kg K), SPECIFIC_HEAT",
    "CP_WATER_J_PER_KG_K, cp water, J/(kg K), SPECIFIC_HEAT",
    "viscosityPaSec, viscosity, Pa s, VISCOSITY",
    "densityKgPerM3, density, kg/m³, DENSITY",
    "driftK, drift, K, TEMPERATURE_DIFFERENCE",
    "roomKelvin, room, K, TEMPERATURE",
    "steamKgPerSec, steam, kg/s, MASS_FLOW"
  })
  void readsStemSymbolAndQuantity(String javaName, String stem, String symbol, Quantity quantity) {
    UnitName read = name(javaName);
    assertThat(read.words()).isEqualTo(stem);
    assertThat(read.symbol()).isEqualTo(symbol);
    assertThat(read.unit()).map(Unit::quantity).hasValue(quantity);
    assertThat(read.unit()).map(Unit::symbol).hasValue(symbol);
  }

  @Test
  void aNameMayBeginWithItsUnit() {
    assertThat(name("molPerL").exponents()).isEqualTo(Map.of("Mol", 1, "L", -1));
    assertThat(name("molPerL").stem()).isEmpty();
    assertThat(name("turnsPerSec").exponents()).isEqualTo(Map.of("Sec", -1));
  }

  @Test
  void spellsWattsAsJoulesPerSecond() {
    assertThat(name("lossWPerK").exponents()).isEqualTo(Map.of("J", 1, "Sec", -1, "K", -1));
    assertThat(name("lossWPerK").symbol()).isEqualTo("W/K");
    assertThat(name("lossWPerK").unit()).isEmpty();
    assertThat(name("heatWSec").exponents()).isEqualTo(Map.of("J", 1));
  }

  @Test
  void countsPowersAndWhatIsBelowThePer() {
    assertThat(name("filmWPerM2K").exponents())
        .isEqualTo(Map.of("J", 1, "Sec", -1, "M", -2, "K", -1));
    assertThat(name("expansionPerK").exponents()).isEqualTo(Map.of("K", -1));
    assertThat(name("expansionPerK").symbol()).isEqualTo("1/K");
    assertThat(name("RADIATION_W_PER_M2_K4").exponents()).containsEntry("K", -4);
    assertThat(name("areaM2").exponents()).isEqualTo(Map.of("M", 2));
  }

  @ParameterizedTest
  @CsvSource({
    "shareFrac, SHARE",
    "ratio, NUMBER",
    "rayleighNumber, NUMBER",
    "safetyFactor, NUMBER"
  })
  void bareWordsHaveNoDimension(String javaName, Quantity quantity) {
    UnitName read = name(javaName);
    assertThat(read.exponents()).isEmpty();
    assertThat(read.symbol()).isEmpty();
    assertThat(read.unit()).map(Unit::quantity).hasValue(quantity);
  }

  @Test
  void aFunctionIsInTheUnitBeforeFrom() {
    assertThat(name("platoFromSg").symbol()).isEqualTo("°P");
    assertThat(name("sgFromPlato").symbol()).isEqualTo("SG");
    assertThat(name("densityKgPerLFromPlato").symbol()).isEqualTo("kg/L");
    assertThat(name("lossFromLidW").symbol()).isEqualTo("W");
  }

  @Test
  void aScaleIsNeverMultiplied() {
    assertThat(name("vitaminGC").exponents()).isEqualTo(Map.of("C", 1));
    assertThat(name("vitaminGC").stem()).isEqualTo(List.of("vitamin", "g"));
  }

  @Test
  void belowAPerAScaleIsItsStep() {
    assertThat(name("bufferMeqPerKgPh").symbol()).isEqualTo("meq/(kg pH)");
    assertThat(name("bufferMeqPerKgPh").stem()).isEqualTo(List.of("buffer"));
    assertThat(name("bufferMeqPerKgPh").exponents())
        .isEqualTo(Map.of("Meq", 1, "Kg", -1, "Ph", -1));
    assertThat(name("bufferMeqPerKgPh").unit()).isEmpty();
    assertThat(name("BUFFER_MEQ_PER_KG_PH").symbol()).isEqualTo("meq/(kg pH)");
    assertThat(name("saltingPerPlato").symbol()).isEqualTo("1/°P");
    // What stands between is no unit, so the scale is alone; a bare word never divides.
    assertThat(name("litresPerBatchC").symbol()).isEqualTo("°C");
    assertThat(name("steamKgPerSecFactor").symbol()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "wort",
        "x",
        "c",
        "m",
        "min",
        "max",
        "flowLPerSecPerK",
        "",
        "Per",
        "perhaps",
        "MAX"
      })
  void aNameWithoutAUnitHasNone(String javaName) {
    assertThat(UnitName.of(javaName)).isEmpty();
  }

  @Test
  void everyWordIsFoundBySpelling() {
    for (UnitWord word : UnitWord.values()) {
      assertThat(UnitWord.of(word.spelling())).hasValue(word);
      assertThat(name("thing" + word.spelling()).symbol()).isEqualTo(word.symbol());
    }
  }
}
