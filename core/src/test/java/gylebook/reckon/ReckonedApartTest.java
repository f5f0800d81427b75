package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.ReferenceRows;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/// Equations carried out a second time, by a short program in another language that was written
/// from the printed equations alone, at values that are nobody's usual ones.
///
/// This guards the arithmetic of the code; whether an equation is right, the published values say.
class ReckonedApartTest {
  private static final double CLOSE_RATIO = 2e-6;

  @Test
  void theArithmeticIsTheEquations() {
    List<String> faults = new ArrayList<>();
    List<List<String>> rows = ReferenceRows.cells("reckoned-apart.csv");
    assertThat(rows).hasSizeGreaterThan(150);
    for (List<String> row : rows) {
      double expected = Double.parseDouble(row.get(3));
      double found = reckoned(row.get(0), row.get(1), row.get(2));
      if (!(Math.abs(found - expected) <= CLOSE_RATIO * Math.abs(expected))) {
        faults.add(row + " but found " + found);
      }
    }
    assertThat(faults).isEmpty();
  }

  private static double reckoned(String name, String inputs, String result) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (String each : inputs.split(" ", -1)) {
      int at = each.indexOf('=');
      typed.put(each.substring(0, at), each.substring(at + 1));
    }
    if (!(Reckoner.find(name) instanceof Search.Hit(Calculation calculation))) {
      throw new AssertionError("no calculation " + name);
    }
    if (!(calculation.reckon(typed, ReadingUnits.METRIC) instanceof Reckoning.Answer answer)) {
      throw new AssertionError(name + ": " + calculation.reckon(typed, ReadingUnits.METRIC));
    }
    return answer.results().stream()
        .filter(each -> each.name().equals(result))
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " gives " + answer.results()))
        .value();
  }

  @Test
  void aRestAnswersTheQuestionItWasAsked() {
    for (String beer : List.of("8", "14", "20")) {
      double restHr = reckoned("diacetyl-rest", "beer=" + beer + " wanted=0.08", "rest");
      double splitPerHr = reckoned("diacetyl-precursor-rate", "beer=" + beer, "split");
      double left =
          reckoned(
              "diacetyl-after-rest",
              "rest=" + restHr + " split=" + splitPerHr + " uptake=" + 15 * splitPerHr,
              "left");
      assertThat(left).isCloseTo(0.08, within(1e-6));
    }
    // It is low already, and stays so.
    assertThat(reckoned("diacetyl-rest", "precursor=0.01 diketone=0.01 wanted=0.1", "rest"))
        .isZero();
    // It rises first: the rest ends behind the peak.
    double restHr = reckoned("diacetyl-rest", "precursor=5 diketone=0 wanted=0.1", "rest");
    assertThat(restHr).isGreaterThan(reckoned("diacetyl-rest", "precursor=2 diketone=0", "rest"));
  }
}
