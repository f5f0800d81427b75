package gylebook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingUnitsTest {
  @ParameterizedTest
  @CsvSource({
    "TEMPERATURE, 66.2, 66.2 °C, 151.2 °F, 66.2 °C",
    "VOLUME, 19, 19.0 L, 5.02 US gal, 4.18 imp gal",
    "VOLUME, 0.0123, 0.012 L, 0.0032 US gal, 0.0027 imp gal",
    "GRAVITY, 12.8559, 1.052, 1.052, 1.052",
    "MASS, 4.5, 4.50 kg, 9.92 lb, 9.92 lb",
    "SMALL_MASS, 28.35, 28.4 g, 1.00 oz, 1.00 oz",
    "COLOUR, 19.685, 20 EBC, 10.0 SRM, 20 EBC",
    "TIME, 5400, 90 min, 90 min, 90 min",
    "TIME, 45, 45 s, 45 s, 45 s",
    "TIME, 21600, 6.0 h, 6.0 h, 6.0 h",
    "TIME, 1209600, 14.0 d, 14.0 d, 14.0 d",
    "LENGTH, 0.35, 35.0 cm, 13.78 in, 13.78 in",
    "LENGTH, 1219.2, 1219.20 m, 4000.0 ft, 4000.0 ft",
    "SHARE, 0.756, 75.6 %, 75.6 %, 75.6 %",
    "PRESSURE, 101.325, 101.3 kPa, 14.7 psi, 14.7 psi",
    "TEMPERATURE, -0.01, 0.0 °C, 32.0 °F, 0.0 °C",
    "AREA, 1e-10, 1e-6 cm², 1.55e-7 in², 1.55e-7 in²"
  })
  void writesAnAmountAsItsReaderLikesIt(
      Quantity quantity, double inside, String metric, String us, String imperial) {
    assertThat(ReadingUnits.METRIC.shown(quantity, inside)).isEqualTo(metric);
    assertThat(ReadingUnits.US.shown(quantity, inside)).isEqualTo(us);
    assertThat(ReadingUnits.IMPERIAL.shown(quantity, inside)).isEqualTo(imperial);
  }

  @Test
  void eachQuantityCanBeSwitched() {
    ReadingUnits mixed =
        ReadingUnits.METRIC
            .with(Unit.known(Quantity.GRAVITY, "°P"))
            .with(Unit.known(Quantity.VOLUME, "US gal"));
    assertThat(mixed.shown(Quantity.GRAVITY, 12.86)).isEqualTo("12.9 °P");
    assertThat(mixed.shown(Quantity.VOLUME, 3.785411784)).isEqualTo("1.00 US gal");
    assertThat(mixed.shown(Quantity.MASS, 1)).isEqualTo("1.00 kg");
    for (Unit unit : Unit.all()) {
      assertThat(ReadingUnits.US.with(unit).unit(unit.quantity())).isEqualTo(unit);
    }
  }

  @Test
  void anEnteredAmountIsShownInTheReadersUnit() {
    Entered strikeC = Entered.of(151, Unit.known(Quantity.TEMPERATURE, "°F"));
    assertThat(strikeC.asTyped()).isEqualTo("151.0 °F");
    assertThat(ReadingUnits.METRIC.shown(strikeC)).isEqualTo("66.1 °C");
  }

  @Test
  void aSetWithoutEveryQuantityIsRefused() {
    assertThatThrownBy(() -> new ReadingUnits(Map.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
