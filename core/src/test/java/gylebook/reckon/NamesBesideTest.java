package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BinaryOperator;
import org.junit.jupiter.api.Test;

/// A line that names each amount, on one side throughout, is never understood otherwise, in
/// whatever order (seeds 1 and 2, with `-Plong` to 8): a calcium that is taken for a magnesium
/// answers another question.
class NamesBesideTest {
  private static final int ORDERS = Boolean.getBoolean("long") ? 8 : 2;

  @Test
  void theNameInFrontDecides() {
    allAsMeant((name, amount) -> name + " " + amount);
  }

  @Test
  void theNameBehindDecides() {
    allAsMeant((name, amount) -> amount + " " + name);
  }

  private static void allAsMeant(BinaryOperator<String> written) {
    List<String> faults = new ArrayList<>();
    int asked = 0;
    for (Calculation calculation : Reckoner.all()) {
      List<Input> needed =
          new ArrayList<>(
              calculation.inputs().stream().filter(i -> i.usual().isEmpty() && !i.text()).toList());
      long kinds = needed.stream().map(Input::unit).distinct().count();
      if (needed.size() > 6 || kinds == needed.size()) {
        continue;
      }
      for (int seed = 1; seed <= ORDERS; seed++) {
        Collections.shuffle(needed, new Random(seed));
        otherwise(calculation, needed, written, faults);
        asked++;
      }
    }
    assertThat(asked).isGreaterThan(80 * ORDERS);
    assertThat(String.join("\n", faults)).isEmpty();
  }

  private static void otherwise(
      Calculation calculation,
      List<Input> needed,
      BinaryOperator<String> written,
      List<String> faults) {
    Map<String, String> meant = new HashMap<>();
    StringBuilder line = new StringBuilder(calculation.name());
    for (Input input : needed) {
      boolean bare = List.of("", "pH", "in").contains(input.unit());
      String amount = (meant.size() + 2) + (bare ? "" : " " + input.unit());
      meant.put(input.key(), amount);
      line.append(' ').append(written.apply(input.words(), amount));
    }
    if (Question.read(line.toString(), ReadingUnits.METRIC) instanceof Asked.Meant found) {
      for (Taken taken : found.taken()) {
        if (!meant.getOrDefault(taken.input().key(), "nothing").equals(taken.typed())) {
          faults.add(line + " => " + found.typed());
          return;
        }
      }
    }
  }
}
