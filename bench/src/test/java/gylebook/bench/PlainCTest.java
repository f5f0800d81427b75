package gylebook.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import gylebook.simulate.BrewDay;
import gylebook.simulate.DayScript;
import gylebook.simulate.DemoDays;
import gylebook.simulate.Simulator;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The yardstick in C is the same scheme: it takes the same steps to the same numbers.
class PlainCTest {
  @BeforeAll
  static void gccIsThere() {
    boolean hasGcc = PlainC.hasGcc();
    if ("true".equals(System.getenv("CI"))) {
      assertThat(hasGcc).as("CI needs gcc: apt-get install gcc libc6-dev").isTrue();
    }
    assumeTrue(hasGcc, "SKIPPED: no gcc here, so the plain C of the simulator is not compared");
  }

  private static List<DemoDays.Ready> days() {
    List<DemoDays.Ready> days = new ArrayList<>();
    for (BrewDay day : List.of(DemoDays.household(), DemoDays.flat(), DemoDays.ramped())) {
      for (int number = -1; number < 20; number++) {
        days.add(DemoDays.ready(day, 20, number));
      }
    }
    return days;
  }

  /// The last bits differ where the two languages' exponentials and powers do.
  @Test
  void plainCGivesTheNumbersOfJava(@TempDir Path folder) {
    List<DemoDays.Ready> days = days();
    List<double[]> ends = PlainC.built(Path.of("src/main/c"), folder, days).ends();
    assertThat(ends).hasSameSizeAs(days);
    for (int i = 0; i < days.size(); i++) {
      double[] java = DayScript.ran(days.get(i), new Simulator());
      double[] c = ends.get(i);
      assertThat(c).as("day " + i).hasSameSizeAs(java);
      assertThat(c[0]).as("steps of day " + i).isCloseTo(java[0], within(0.0));
      for (int n = 1; n < java.length; n++) {
        if (java[n] == 0) {
          assertThat(c[n]).as("day " + i + ", number " + n).isCloseTo(0, within(1e-12));
        } else {
          assertThat(c[n])
              .as("day " + i + ", number " + n)
              .isCloseTo(java[n], Percentage.withPercentage(1e-7));
        }
      }
    }
  }
}
