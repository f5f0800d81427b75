package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.reckon.Samples.Sample;
import gylebook.science.Validity;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// What holds for every function of the science that is offered, found by looking at all of them.
class GuardsOfScienceTest {
  private static List<Sample> samples = List.of();

  @BeforeAll
  static void sample() {
    samples = Samples.all();
    assertThat(samples).hasSameSizeAs(Reckoner.all());
  }

  private static boolean isNumber(Sample sample, int at) {
    return sample.function().getParameterTypes()[at] == double.class;
  }

  /// Empty when the function refused with words, else what it did.
  private static List<String> unrefused(Sample sample, int at, double value) {
    String where = sample.name() + " " + sample.function().getParameters()[at].getName();
    try {
      return List.of(where + "=" + value + " gave " + Arrays.toString(sample.with(at, value)));
    } catch (InvocationTargetException thrown) {
      return wordless(where + "=" + value, thrown);
    }
  }

  /// Empty when a refusal is one sentence that names a number and a limit.
  private static List<String> wordless(String where, InvocationTargetException thrown) {
    Throwable cause = thrown.getCause();
    String said = cause == null ? "" : String.valueOf(cause.getMessage());
    boolean refusal = cause instanceof IllegalArgumentException && said.length() > 10;
    return refusal && said.endsWith(".") ? List.of() : List.of(where + " threw " + cause);
  }

  @Test
  void whatIsNoFiniteNumberIsRefusedWithASentence() {
    List<String> faults = new ArrayList<>();
    for (Sample sample : samples) {
      for (int at = 0; at < sample.arguments().size(); at++) {
        if (isNumber(sample, at)) {
          faults.addAll(unrefused(sample, at, Double.NaN));
          faults.addAll(unrefused(sample, at, Double.POSITIVE_INFINITY));
          faults.addAll(unrefused(sample, at, Double.NEGATIVE_INFINITY));
        }
      }
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void farOutsideItAnswersWithANumberOrRefusesWithASentence() {
    List<String> faults = new ArrayList<>();
    for (Sample sample : samples) {
      for (int at = 0; at < sample.arguments().size(); at++) {
        if (!isNumber(sample, at)) {
          continue;
        }
        for (double value : new double[] {0, -1, 1e-9, 1e3, -1e3, 1e9, -1e9}) {
          String where = sample.name() + " " + sample.function().getParameters()[at].getName();
          try {
            double[] numbers = sample.with(at, value);
            if (!Arrays.stream(numbers).allMatch(Double::isFinite)) {
              faults.add(where + "=" + value + " gave " + Arrays.toString(numbers));
            }
          } catch (InvocationTargetException thrown) {
            faults.addAll(wordless(where + "=" + value, thrown));
          }
        }
      }
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void nothingJumpsAtTheEdgesOfARange() throws IllegalAccessException {
    List<String> faults = new ArrayList<>();
    int edges = 0;
    for (Sample sample : samples) {
      Calculation calculation = known(sample.name());
      for (Field field : sample.function().getDeclaringClass().getFields()) {
        if (!Modifier.isStatic(field.getModifiers()) || field.getType() != Validity.class) {
          continue;
        }
        Validity range = (Validity) field.get(null);
        for (int at = 0; at < sample.arguments().size(); at++) {
          boolean speaks =
              range.what().endsWith(" in " + calculation.inputs().get(at).unit().replace("°", ""));
          if (isNumber(sample, at) && speaks) {
            edges += 2;
            double step = 1e-7 * Math.max(1, range.most() - range.least());
            faults.addAll(jump(sample, at, range.least(), step));
            faults.addAll(jump(sample, at, range.most(), step));
          }
        }
      }
    }
    assertThat(edges).isGreaterThan(60);
    assertThat(faults).isEmpty();
  }

  private static Calculation known(String name) {
    return ((Search.Hit) Reckoner.find(name)).calculation();
  }

  private static List<String> jump(Sample sample, int at, double edge, double step) {
    try {
      double[] below = sample.with(at, edge - step);
      double[] above = sample.with(at, edge + step);
      for (int i = 0; i < below.length; i++) {
        double size = Math.max(Math.abs(below[i]), 1e-12);
        if (Math.abs(above[i] - below[i]) > 1e-3 * size) {
          String where = sample.name() + " at " + edge;
          return List.of(where + " jumps from " + below[i] + " to " + above[i]);
        }
      }
      return List.of();
    } catch (InvocationTargetException refused) {
      return wordless(sample.name() + " at " + edge, refused);
    }
  }
}
