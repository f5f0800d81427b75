package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.reckon.Samples.Sample;
import gylebook.science.Span;
import gylebook.testing.Cases;
import gylebook.units.ReadingUnits;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// Every calculation with every input at the edges of where it holds, beyond them, and impossible.
///
/// Beyond a range there is an answer with a caution, or a refusal; what cannot be is refused in one
/// sentence with the value and the limit; never an exception, never a number that is none.
class EdgeCampaignTest {
  /// Spans as the ranges write them: `0 to 40 C`, `SG 1.000 to 1.083`, `0 to 8 % moisture`.
  private static final Pattern SPAN =
      Pattern.compile(
          "(pH |SG )?(-?\\d[\\d.]*(?:e-?\\d+)?) to (-?\\d[\\d.]*(?:e-?\\d+)?)"
              + "(?: (kg/kg|g/L|L/kg|kPa|SRM|vol|min|P|C|m|%)(?![\\w/])(?: (moisture|extract))?)?");

  private static final List<String> IMPOSSIBLE =
      List.of(
          "NaN",
          "nan",
          "Infinity",
          "-Infinity",
          "1e400",
          "",
          "   ",
          "x",
          "1 2",
          "--1",
          "1e",
          "5 parsecs");

  private static final List<Double> EXTREME =
      List.of(
          -1e300, -1e12, -273.2, -1.0, -1e-300, -0.0, 0.0, 1e-300, 1e-12, 1.4, 1e3, 1e12, 1e300);

  /// Spans that are no range of the input whose unit they have, and why.
  private static final Set<String> OTHERWISE =
      Set.of(
          // How far the shortcut is off, a span of its result.
          "alcohol-shortcut apparent",
          "alcohol-shortcut-moving apparent",
          // The limit of local codes, not the two waters.
          "drain-tempering cold",
          "drain-tempering hot",
          // Of the liquid that is made, not of the stock.
          "cleaner-dose stock-frac",
          // Of acids, which share the span of the stronger caustic.
          "cleaner-dose wanted",
          // Of the wort, not of the beer.
          "food-energy-from-gravities apparent",
          // Of the moisture of the grain, not of the other shares.
          "spent-grain-water conversion",
          "spent-grain-water moisture",
          "spent-grain-water fine-dry",
          // Of the mash, not of the malt in distilled water.
          "mash-acid malt-ph",
          "mash-ph malt-ph",
          "mash-ph-gas-kept malt-ph",
          // Of the wort, not of the temperature at which two laws meet.
          "iso-alpha-lost-by-ph effect-from",
          // The first of two kinds of hops; both together are cautioned.
          "hop-absorption held");

  private static List<Sample> samples = List.of();

  @BeforeAll
  static void sample() {
    samples = Samples.all();
  }

  private static Calculation known(Sample sample) {
    return ((Search.Hit) Reckoner.find(sample.name())).calculation();
  }

  private static Map<String, String> typed(Calculation calculation, Sample sample) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (int i = 0; i < sample.arguments().size(); i++) {
      Input input = calculation.inputs().get(i);
      Object given = sample.arguments().get(i);
      typed.put(
          input.key(), given instanceof Number n ? written(n.doubleValue(), input) : given + "");
    }
    return typed;
  }

  /// A number as it is typed for an input: strengths with their unit, since 61 alone is a gravity.
  private static String written(double value, Input input) {
    return input.unit().equals("°P") ? value + " P" : Double.toString(value);
  }

  private static Reckoning with(Sample sample, Calculation calculation, Input input, String text) {
    Map<String, String> typed = typed(calculation, sample);
    typed.put(input.key(), text);
    return calculation.reckon(typed, ReadingUnits.METRIC);
  }

  /// What is wrong with what came of it; empty when nothing is.
  private static List<String> faults(String where, Reckoning reckoning) {
    return switch (reckoning) {
      case Reckoning.Answer answer ->
          answer.results().stream()
              .filter(result -> !Double.isFinite(result.value()) || !tellsANumber(result.shown()))
              .map(result -> where + " gave " + result)
              .toList();
      case Reckoning.Unanswered refused -> faults(where, refused.sentence());
    };
  }

  private static boolean tellsANumber(String shown) {
    return shown.chars().anyMatch(Character::isDigit) && !shown.contains("NaN");
  }

  private static List<String> faults(String where, String sentence) {
    boolean ends = sentence.endsWith(".") || sentence.endsWith("?");
    boolean one = ends && !sentence.contains("\n") && sentence.length() < 300;
    boolean human = !sentence.contains("Exception") && !sentence.contains("gylebook.");
    return one && human ? List.of() : List.of(where + " said: " + sentence);
  }

  @Test
  void impossibleWordsAreRefusedInOneSentence() {
    List<String> faults = new ArrayList<>();
    for (Sample sample : samples) {
      Calculation calculation = known(sample);
      for (Input input : calculation.inputs()) {
        for (String text : IMPOSSIBLE) {
          String where = sample.name() + " " + input.key() + "='" + text + "'";
          Reckoning came = with(sample, calculation, input, text);
          boolean refused = came instanceof Reckoning.Unanswered;
          if (!input.text() && !refused) {
            faults.add(where + " was answered");
          }
          faults.addAll(faults(where, came));
        }
      }
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void extremeNumbersAreAnsweredWithNumbersOrRefusedWithValueAndLimit() {
    List<String> faults = new ArrayList<>();
    int asked = 0;
    for (Sample sample : samples) {
      Calculation calculation = known(sample);
      for (Input input : calculation.inputs()) {
        if (input.text()) {
          continue;
        }
        for (double value : EXTREME) {
          asked++;
          String where = sample.name() + " " + input.key() + "=" + value;
          Reckoning came = with(sample, calculation, input, written(value, input));
          faults.addAll(faults(where, came));
          if (came instanceof Reckoning.Unanswered refused && !namesANumber(refused.sentence())) {
            faults.add(where + " said: " + refused.sentence());
          }
        }
      }
    }
    assertThat(asked).isGreaterThan(5000);
    assertThat(faults).isEmpty();
  }

  private static boolean namesANumber(String sentence) {
    return sentence.chars().anyMatch(Character::isDigit);
  }

  @Test
  void beyondTheSpansOfItsRangeItIsCautiousOrRefuses() {
    List<String> silent = new ArrayList<>();
    int asked = 0;
    for (Sample sample : samples) {
      Calculation calculation = known(sample);
      for (MatchResult span : SPAN.matcher(calculation.range()).results().toList()) {
        for (Input input : calculation.inputs()) {
          String name = sample.name() + " " + input.key();
          if (input.text() || !speaks(span, input) || OTHERWISE.contains(name)) {
            continue;
          }
          for (double value : beyond(span)) {
            asked++;
            Reckoning came = with(sample, calculation, input, written(value, input));
            if (came instanceof Reckoning.Answer answer && answer.cautions().isEmpty()) {
              silent.add(name + "=" + value + " [" + calculation.range() + "]");
            }
          }
        }
      }
    }
    assertThat(asked).isGreaterThan(400);
    assertThat(silent).isEmpty();
  }

  private static double[] beyond(MatchResult span) {
    double scale = "%".equals(span.group(4)) ? 0.01 : 1;
    double least = Double.parseDouble(span.group(2)) * scale;
    double most = Double.parseDouble(span.group(3)) * scale;
    double further = 0.03 * (most - least);
    return new double[] {least - further, most + further};
  }

  private static boolean speaks(MatchResult span, Input input) {
    String unit = input.unit();
    if ("pH ".equals(span.group(1))) {
      return unit.equals("pH");
    }
    if ("SG ".equals(span.group(1))) {
      return unit.equals("SG");
    }
    if (span.group(4) == null) {
      return false;
    }
    return switch (span.group(4)) {
      case "C" -> unit.equals("°C");
      case "P" -> unit.equals("°P");
      case "%" ->
          input.javaName().endsWith("Frac")
              && (span.group(5) == null || input.key().contains(span.group(5)));
      default -> unit.equals(span.group(4));
    };
  }

  @Test
  void aCautionNamesTheRangeItSpeaksOf() {
    int seen = 0;
    for (Sample sample : samples) {
      Calculation calculation = known(sample);
      Parameter[] parts = sample.function().getParameters();
      for (int i = 0; i < parts.length; i++) {
        Span span = parts[i].getAnnotation(Span.class);
        if (span == null) {
          continue;
        }
        Input input = calculation.inputs().get(i);
        double further = 0.02 * (span.most() - span.least());
        if (!answers(sample, calculation, input, span.most() + further)
            && !answers(sample, calculation, input, span.least() - further)) {
          continue;
        }
        seen++;
        String name = sample.name() + " " + input.key();
        assertThat(cautions(sample, calculation, input, span.most())).as(name).isEmpty();
        assertThat(cautions(sample, calculation, input, span.least())).as(name).isEmpty();
        List<String> cautions =
            new ArrayList<>(cautions(sample, calculation, input, span.most() + further));
        cautions.addAll(cautions(sample, calculation, input, span.least() - further));
        assertThat(cautions).as(name).isNotEmpty();
        Named named = calculation.named(i);
        assertThat(cautions.getFirst())
            .as(name)
            .startsWith(input.words() + " is ")
            .contains(named.typed(span.most(), ReadingUnits.METRIC))
            .contains(named.typed(span.least(), ReadingUnits.METRIC))
            .endsWith(span.beyond() + ".");
      }
    }
    assertThat(seen).isGreaterThan(50);
  }

  private static boolean answers(
      Sample sample, Calculation calculation, Input input, double value) {
    return with(sample, calculation, input, written(value, input)) instanceof Reckoning.Answer;
  }

  /// Cautions that speak of one input; a function may be cautious of others at the same time.
  private static List<String> cautions(
      Sample sample, Calculation calculation, Input input, double value) {
    return switch (with(sample, calculation, input, written(value, input))) {
      case Reckoning.Answer answer ->
          answer.cautions().stream()
              .filter(caution -> caution.startsWith(input.words() + " is "))
              .collect(Collectors.toList());
      case Reckoning.Unanswered _ -> List.of();
    };
  }

  @Test
  void manyOddInputsAtOnceNeverThrow() {
    for (Sample sample : samples) {
      Calculation calculation = known(sample);
      Cases.each(
          60,
          random -> {
            Map<String, String> typed = typed(calculation, sample);
            for (Input input : calculation.inputs()) {
              if (random.nextInt(3) > 0) {
                typed.put(input.key(), odd(random, input));
              }
            }
            assertThat(faults(sample.name() + typed, calculation.reckon(typed, ReadingUnits.US)))
                .isEmpty();
          });
    }
  }

  private static String odd(RandomGenerator random, Input input) {
    if (input.text()) {
      return List.of("24:9.1", "1:2 3:4 5:NaN", "0:1e300 1:2", "CaCl2", "Xx9", "H2O.", "48:4 24:9")
          .get(random.nextInt(7));
    }
    int kind = random.nextInt(4);
    double value =
        kind == 0
            ? EXTREME.get(random.nextInt(EXTREME.size()))
            : Math.exp(6 * random.nextGaussian()) * (kind == 1 ? -1 : 1);
    return written(value, input);
  }
}
