package gylebook.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.reckon.Calculation;
import gylebook.reckon.Reckoner;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CalcCommandTest {
  private record Said(int code, String out, String err) {}

  private static Said calc(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line =
        new CommandLine(new CalcCommand())
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err));
    int code = line.execute(words);
    return new Said(code, out.toString(), err.toString());
  }

  @Test
  void withoutANameItListsEveryCalculation() {
    Said said = calc();
    assertThat(said.code()).isZero();
    for (Calculation calculation : Reckoner.all()) {
      assertThat(said.out()).contains(calculation.name()).contains(calculation.says());
    }
  }

  @Test
  void aNameAloneIsExplained() {
    Said said = calc("saturation-pressure");
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("water", "°C", "kPa", "equation", "source:", "373.946");
  }

  @Test
  void anAnswerNamesWhatItCameFrom() {
    Said said = calc("saturation-pressure", "water=80.33 F");
    assertThat(said.code()).isZero();
    // IAPWS-IF97 table 35: 3.53658941 kPa at 300 K.
    assertThat(said.out()).contains("3.5 kPa").contains("26.9 °C").contains("source:");
    assertThat(said.err()).isEmpty();
  }

  @Test
  void theReadersUnitsAreUsed() {
    assertThat(calc("saturation-pressure", "water=100", "--units", "us").out())
        .contains("212.0 °F")
        .contains("14.7 psi");
  }

  @Test
  void jsonCarriesTheUnroundedValueInTheUnitOfTheCode() {
    Said said = calc("saturation-pressure", "water=26.85", "--json", "--units", "us");
    JsonNode answer = JsonMapper.builder().build().readTree(said.out());
    assertThat(answer.get("calculation").asString()).isEqualTo("saturation-pressure");
    assertThat(answer.get("inputs").get("water").get("value").asDouble()).isEqualTo(26.85);
    JsonNode result = answer.get("results").get(0);
    assertThat(result.get("value").asDouble()).isCloseTo(3.53658941, within(1e-7));
    assertThat(result.get("unit").asString()).isEqualTo("kPa");
    assertThat(result.get("shown").asString()).isEqualTo("0.51 psi");
    assertThat(result.get("name").asString()).isEqualTo("saturation");
    assertThat(answer.get("cautions").isArray()).isTrue();
    assertThat(answer.get("sources").get(0).get("key").asString()).isNotBlank();
  }

  @Test
  void plainWordsDoAsWell() {
    Said said = calc("boiling", "point", "at", "1200", "m");
    assertThat(said.code()).isZero();
    // 96.0 C at 87.77 kPa: IAPWS-IF97; 87.72 kPa at 1200 m: US Standard Atmosphere 1976.
    assertThat(said.out())
        .startsWith("boiling-point: The temperature at which water boils")
        .contains("boiling point: 96.0 °C")
        .contains("'1200 m' was taken for pressure, which is 87.718 kPa: air at 1200 m");
    assertThat(calc("ABV 1.064 1.012").out()).contains("by volume: 6.8 %");
    assertThat(calc("strike", "4.4kg", "66c", "15L", "--units", "us").out())
        .contains("strike: 157.5 °F");
  }

  @Test
  void whatPlainWordsLackIsSaidWithWhatWasTaken() {
    Said said = calc("strike", "4.4", "kg", "66", "C");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err())
        .contains("strike still needs liquor (kg).")
        .contains("'4.4 kg' was taken for malt.")
        .contains("'66 C' was taken for mash.");
    assertThat(said.out()).isEmpty();
    assertThat(calc("carbonate", "20-25", "C").err()).contains("'20-25'");
  }

  @Test
  void anotherMethodStandsBesideTheAnswer() {
    assertThat(calc("ibu 30 g 5.5 % 20 L 60 min").out())
        .contains("bitterness is 19 mg/L here, 27 mg/L by iso-alpha-of-addition");
    JsonNode answer =
        JsonMapper.builder().build().readTree(calc("plato", "gravity=1.048", "--json").out());
    assertThat(answer.get("others").get(0).get("calculation").asString()).isNotBlank();
    assertThat(answer.get("others").get(0).get("value").asDouble()).isCloseTo(11.9, within(0.1));
  }

  @Test
  void theListIsJsonAsWell() {
    JsonNode list = JsonMapper.builder().build().readTree(calc("--json").out());
    assertThat(list.size()).isEqualTo(Reckoner.all().size());
    JsonNode one =
        JsonMapper.builder().build().readTree(calc("saturation-pressure", "--json").out());
    assertThat(one.get("inputs").get(0).get("name").asString()).isEqualTo("water");
  }

  @Test
  void whatCannotBeMetIsASentenceAndCodeTwo() {
    String[][] requests = {
      {"saturation-presure"},
      {"nothing-like-it-at-all"},
      {"saturation-pressure", "water"},
      {"saturation-pressure", "water=hot"},
      {"saturation-pressure", "wort=66"},
      {"saturation-pressure", "water=66", "water=67"},
      {"saturation-pressure", "water=400"},
      {"saturation-pressure", "water=66", "--units", "old"}
    };
    for (String[] request : requests) {
      Said said = calc(request);
      assertThat(said.code()).as(String.join(" ", request)).isEqualTo(2);
      assertThat(said.err()).as(String.join(" ", request)).isNotBlank();
      assertThat(said.out()).as(String.join(" ", request)).isEmpty();
    }
    assertThat(calc("saturation-presure").err()).contains("saturation-pressure");
  }
}
