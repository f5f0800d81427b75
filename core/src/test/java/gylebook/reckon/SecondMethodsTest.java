package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.units.ReadingUnits;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SecondMethodsTest {
  private static Calculation known(String name) {
    return switch (Reckoner.find(name)) {
      case Search.Hit hit -> hit.calculation();
      case Search.Miss miss -> throw new AssertionError(miss.sentence());
    };
  }

  private static List<Opinion> opinions(String line) {
    if (Question.read(line, ReadingUnits.METRIC) instanceof Asked.Meant meant
        && meant.calculation().reckon(meant.typed(), ReadingUnits.METRIC)
            instanceof Reckoning.Answer answer) {
      return SecondMethods.beside(meant.calculation(), meant.typed(), answer, ReadingUnits.METRIC);
    }
    throw new AssertionError(line + ": " + Question.read(line, ReadingUnits.METRIC));
  }

  @Test
  void everyMethodAndItsResultAndInputsExist() {
    for (SecondMethods.Shared shared : SecondMethods.all()) {
      assertThat(shared.methods()).as(shared.question()).hasSizeGreaterThan(1);
      Set<String> quantities = new HashSet<>();
      for (SecondMethods.Method method : shared.methods()) {
        Calculation calculation = known(method.calculation());
        Output result =
            calculation.outputs().stream()
                .filter(output -> output.name().equals(method.result()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(method + ": " + calculation.outputs()));
        quantities.add(result.unit().replace("SG", "°P"));
        assertThat(calculation.inputs())
            .extracting(Input::key)
            .as(method.calculation())
            .containsAll(method.otherwise().keySet());
      }
      assertThat(quantities).as(shared.question()).hasSize(1);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ABV 1.048 1.010 | alcohol-regression | 0.02",
        "alcohol regression 12 P 2.5 P | alcohol | 0.02",
        "ibu 30 g 5.5 % 20 L 60 min | iso-alpha-of-addition | 0.6",
        "iso-alpha-of-addition 30 g 5.5 % 20 L 60 min | bitterness-of-addition | 0.6",
        "ibu 300 g 12 % 20 L 60 min | iso-alpha-of-large-addition | 0.9",
        "iso-alpha-of-addition 30 g 5.5 % 20 L 40 min | iso-alpha-of-large-addition | 0.01",
        "mash-ph 5 kg 20 L alkalinity 5 calcium 2.5 magnesium 0.4 | mash-ph-gas-kept | 0.03",
        "malt-heat-ratio 4 % | malt-heat-ratio-mixed | 0.02",
        "mcu 20 | beer-colour-lines | 0.1",
        "beer-colour-of-malt 5 kg 10 20 L | beer-colour-of-malt-lines | 0.12",
        "carbonate 2.4 at 4 C | carbonation-pressure-german | 0.1",
        "plato 1.048 | brix | 0.01",
        "gravity 12 P | gravity-from-brix | 0.001",
        "attenuation limit 62 C | attenuation-after-rest | 0.1",
        "boiling rise 0.12 | ideal-boiling-rise | 0.2",
        "evaporation-open 80 C | evaporation-pool-form | 0.5",
        "latent-heat 80 C | latent-heat-fit | 0.01",
        "water density 66 C | water-density-steam-tables | 0.001",
        "strike 4.4 kg 66 C 15 L | strike-from-moisture | 0.01",
        "bed-pressure-ergun 1 mm 0.001 m/s | bed-pressure-carman | 0.5",
        "draught-line-gradient 4.8 mm | draught-line-rule | 1",
        "oxygen-in-wort 20 C 15 P | oxygen-in-wort-disputed | 0.1",
        "starter-cells 1e11 1 L 7 P | starter-cells-by-mass | 0.1",
        "yeast-viability-stored 30 d | yeast-viability-packaged | 0.4",
        "seconds-to-burn 60 C | seconds-to-third-degree-burn | 0.35"
      })
  void anotherMethodStandsBesideAndIsNear(String line, String other, double apartFrac) {
    Opinion opinion =
        opinions(line).stream()
            .filter(each -> each.calculation().name().equals(other))
            .findFirst()
            .orElseThrow(() -> new AssertionError(line + ": " + opinions(line)));
    double own = opinion.own().value();
    assertThat(opinion.amount().value()).isCloseTo(own, within(apartFrac * Math.abs(own)));
    assertThat(opinion.amount().unit()).isEqualTo(opinion.own().unit());
    assertThat(opinion.question()).isNotBlank();
  }

  @Test
  void theTwoBitternessesDoNotAgreeAndThatIsSeen() {
    Opinion opinion = opinions("ibu 30 g 5.5 % 20 L 60 min").getFirst();
    assertThat(opinion.amount().value() / opinion.own().value()).isBetween(1.1, 1.8);
  }

  @Test
  void whatTakesAllForTheBoilSaysNothingOfACoolerStand() {
    assertThat(opinions("whirlpool 30 min 80 C 50 g 10 % 20 L"))
        .extracting(each -> each.calculation().name())
        .contains("iso-alpha-of-large-addition")
        .doesNotContain("bitterness-of-addition");
  }

  @Test
  void aRefractometerHasASecondOpinionInGravity() {
    List<Opinion> opinions = opinions("refractometer 12 P 6 P");
    assertThat(opinions).extracting(Opinion::question).containsExactly("gravity of the beer");
    assertThat(opinions.getFirst().amount().shown()).startsWith("1.0");
  }

  @Test
  void whatNoOtherMethodAnswersHasNoOpinionBesideIt() {
    assertThat(opinions("mash volume 15 L 4.4 kg")).isEmpty();
  }
}
