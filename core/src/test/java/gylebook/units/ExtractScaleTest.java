package gylebook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import gylebook.testing.Checks;
import gylebook.testing.ReferenceRows;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ExtractScaleTest {
  @TestFactory
  Stream<DynamicTest> agreesWithTheRowsOfTheAsbcCubic() {
    return new Checks()
        .kind(
            "Plato from SG, ASBC cubic",
            row -> ExtractScale.platoFromSg(row.number("SG 20/20 (in air)")))
        .kind("SG from Plato", row -> ExtractScale.sgFromPlato(row.number("extract")))
        .tests(
            ReferenceRows.of("hot-side.csv").stream()
                .filter(row -> row.id().startsWith("PL-ASBC-1") || row.id().startsWith("PL-INV-"))
                .toList());
  }

  @Test
  void waterHasNoExtract() {
    assertThat(ExtractScale.platoFromSg(1)).isCloseTo(0, within(1e-12));
    assertThat(ExtractScale.sgFromPlato(0)).isCloseTo(1, within(1e-12));
  }

  @Test
  void theFadeNearWaterStaysWithinWhatTheFitIsWorth() {
    assertThat(ExtractScale.platoFromSg(1.0025)).isCloseTo(0.643, within(0.004));
    assertThat(ExtractScale.platoFromSg(1.005 - 1e-12))
        .isCloseTo(ExtractScale.platoFromSg(1.005 + 1e-12), within(1e-8));
  }

  @Test
  void goesThereAndBack() {
    Cases.each(
        500,
        random -> {
          double wortPlato = -6 + random.nextDouble() * 50;
          double back = ExtractScale.platoFromSg(ExtractScale.sgFromPlato(wortPlato));
          assertThat(back).isCloseTo(wortPlato, within(1e-10));
        });
  }

  @Test
  void aHeavierWortIsStronger() {
    Cases.each(
        500,
        random -> {
          double wortSg = 0.97 + random.nextDouble() * 0.2;
          double heavierSg = wortSg + 1e-7 + random.nextDouble() * 1e-3;
          assertThat(ExtractScale.platoFromSg(heavierSg))
              .isGreaterThan(ExtractScale.platoFromSg(wortSg));
        });
  }

  @Test
  void whatIsNoGravityIsRefused() {
    assertThatThrownBy(() -> ExtractScale.platoFromSg(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("wortSg");
    assertThatThrownBy(() -> ExtractScale.sgFromPlato(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("wortPlato");
  }
}
