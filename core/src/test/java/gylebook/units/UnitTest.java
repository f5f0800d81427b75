package gylebook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class UnitTest {
  private static final List<ReferenceRow> ROWS = ReferenceRows.of("units.csv");

  private static Unit unitOf(ReferenceRow row) {
    String symbol = row.text("symbol");
    return Unit.known(Quantity.valueOf(row.detail()), symbol.equals("none") ? "" : symbol);
  }

  @TestFactory
  Stream<DynamicTest> eachUnitAgreesWithItsSource() {
    return new Checks()
        .kind("inside value of an amount", row -> unitOf(row).toInside(row.number("value")))
        .tests(ROWS);
  }

  @Test
  void everyUnitHasExactlyOneRowAndTheReverse() {
    Set<Unit> sourced = ROWS.stream().map(UnitTest::unitOf).collect(Collectors.toSet());
    assertThat(sourced).containsExactlyInAnyOrderElementsOf(Unit.all());
    assertThat(ROWS).hasSize(Unit.all().size());
    assertThat(ROWS).allMatch(row -> !row.source().isBlank() && !row.provenance().isBlank());
  }

  @Test
  void whatGoesInsideComesBack() {
    for (Unit unit : Unit.all()) {
      Quantity quantity = unit.quantity();
      Cases.each(
          40,
          random -> {
            double least = Math.max(quantity.least(), -8);
            double inside = least + random.nextDouble() * (Math.min(quantity.most(), 60) - least);
            double back = unit.toInside(unit.fromInside(inside));
            assertThat(back).as(unit.symbol()).isCloseTo(inside, within(1e-9));
          });
    }
  }

  @Test
  void aLargerAmountHasALargerNumber() {
    for (Unit unit : Unit.all()) {
      Cases.each(
          20,
          random -> {
            double low = random.nextDouble() * 20;
            double high = low + 1e-4 + random.nextDouble();
            assertThat(unit.fromInside(high)).as(unit.symbol()).isGreaterThan(unit.fromInside(low));
          });
    }
  }

  @Test
  void eachQuantityHasExactlyOneInsideUnit() {
    for (Quantity quantity : Quantity.values()) {
      assertThat(quantity.units()).as(quantity.words()).isNotEmpty().doesNotHaveDuplicates();
      assertThat(quantity.units().stream().filter(Unit::isInside)).hasSize(1);
      assertThat(quantity.inside().toInside(7.25)).isEqualTo(7.25);
    }
  }

  @Test
  void theGallonsAreAlwaysLabelled() {
    assertThat(Unit.all())
        .filteredOn(unit -> unit.spoken().contains("gallon"))
        .isNotEmpty()
        .allMatch(unit -> unit.symbol().startsWith("US ") || unit.symbol().startsWith("imp "));
  }

  @Test
  void aSymbolNobodyKnowsIsRefusedByName() {
    assertThatThrownBy(() -> Unit.known(Quantity.MASS, "stone"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("stone");
  }

  @Test
  void paleMaltColourJoinsItsTwoLines() {
    Unit lovibond = Unit.known(Quantity.COLOUR, "°L");
    assertThat(lovibond.toInside(0)).isZero();
    assertThat(lovibond.toInside(2 - 1e-9)).isCloseTo(lovibond.toInside(2), within(1e-8));
  }
}
