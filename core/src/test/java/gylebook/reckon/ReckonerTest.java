package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.science.Saturation;
import gylebook.testing.Cases;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ReckonerTest {
  private static Calculation known(String name) {
    return switch (Reckoner.find(name)) {
      case Search.Hit hit -> hit.calculation();
      case Search.Miss miss -> throw new AssertionError(miss.sentence());
    };
  }

  private static Reckoning.Answer answer(String name, Map<String, String> typed) {
    return switch (known(name).reckon(typed, ReadingUnits.METRIC)) {
      case Reckoning.Answer answer -> answer;
      case Reckoning.Unanswered refused -> throw new AssertionError(refused.sentence());
    };
  }

  private static String refusal(String name, Map<String, String> typed) {
    return switch (known(name).reckon(typed, ReadingUnits.METRIC)) {
      case Reckoning.Answer answer -> throw new AssertionError("answered " + answer.results());
      case Reckoning.Unanswered refused -> refused.sentence();
    };
  }

  private static final String HEAT = "evaporation-heat";

  @Test
  void takesAmountsInWhateverUnitTheyAreTyped() {
    Amount celsius = answer(HEAT, Map.of("water", "66c")).results().getFirst();
    Amount bare = answer(HEAT, Map.of("waterC", "66")).results().getFirst();
    Amount fahrenheit = answer(HEAT, Map.of("water", "150.8F")).results().getFirst();
    assertThat(bare).isEqualTo(celsius);
    assertThat(fahrenheit.value()).isCloseTo(celsius.value(), within(1e-6));
    assertThat(celsius.unit()).isEqualTo("W/m²");
  }

  @Test
  void liquorMayBeSaidInLitresAndAirByItsAltitude() {
    Reckoning.Answer litres =
        answer("strike", Map.of("liquor", "25 L", "malt-kg", "4,5 kg", "mash", "66"));
    // Water of 20 C weighs 0.9982 kg/L (IAPWS-IF97).
    Reckoning.Answer kilograms =
        answer("strike", Map.of("liquor", "24.955 kg", "malt-kg", "4,5 kg", "mash", "66"));
    assertThat(litres.results().getFirst().value())
        .isCloseTo(kilograms.results().getFirst().value(), within(1e-3));
    assertThat(litres.remarks()).anySatisfy(said -> assertThat(said).contains("25 L of water"));
    assertThat(answer("boiling-point", Map.of("pressure", "1200 m")).results().getFirst().value())
        .isBetween(95.5, 96.5);
    assertThat(refusal("strike", Map.of("liquor", "25 m", "malt-kg", "4", "mash", "66")))
        .contains("'m'", "a mass is wanted");
  }

  @Test
  void theAnswerIsTheFunctionsOwn() {
    // Region 4 of IAPWS-IF97, table 35: 0.353658941e-2 MPa at 300 K.
    Reckoning.Answer answer = answer("saturation-pressure", Map.of("water", "26.85 C"));
    assertThat(answer.results().getFirst().value())
        .isCloseTo(3.53658941, within(1e-7))
        .isEqualTo(Saturation.saturationKpa(26.85));
    assertThat(answer.sources()).isNotEmpty();
  }

  @Test
  void theInputsAreListedWithWhatWasTakenByHabit() {
    Reckoning.Answer answer = answer(HEAT, Map.of("water", "66"));
    assertThat(answer.inputs()).extracting(Amount::name).contains("water", "room", "humidity");
    assertThat(answer.inputs())
        .filteredOn(input -> input.name().equals("room"))
        .extracting(Amount::shown)
        .containsExactly("20.0 °C");
  }

  @Test
  void theReaderSeesTheirOwnUnits() {
    Reckoning us = known(HEAT).reckon(Map.of("water", "66"), ReadingUnits.US);
    assertThat(us).isInstanceOf(Reckoning.Answer.class);
    assertThat(((Reckoning.Answer) us).inputs())
        .extracting(Amount::shown)
        .contains("150.8 °F", "68.0 °F");
  }

  @Test
  void whatIsWrongIsSaidInOneSentence() {
    assertThat(refusal(HEAT, Map.of())).contains("water").contains("°C");
    assertThat(refusal(HEAT, Map.of("watr", "66"))).contains("watr").contains("water");
    assertThat(refusal(HEAT, Map.of("water", "hot"))).contains("hot");
    assertThat(refusal(HEAT, Map.of("water", "66 L"))).contains("volume");
    assertThat(refusal(HEAT, Map.of("water", "66", "humidity", "0.5 C"))).contains("humidity");
    assertThat(refusal(HEAT, Map.of("water", "66", "waterC", "67"))).contains("twice");
    assertThat(refusal("latent-heat-fit", Map.of("water", "200"))).contains("200").contains("130");
  }

  /// A share above all of it is refused without the advice to write what was written.
  @Test
  void tooLargeAShareIsRefusedWithItsLimit() {
    String sentence =
        refusal(
            "bitterness-of-addition",
            Map.of("hop", "30 g", "alpha", "140%", "wort-l", "20", "boiled", "60 min"));
    assertThat(sentence).contains("140%").contains("100.0 %").doesNotContain("Maybe");
  }

  /// Cells are counted in words; what is shown can be typed again.
  @Test
  void manyCellsAreSaidInWords() {
    Reckoning found =
        known("cells-to-pitch")
            .reckon(Map.of("wort", "20 L", "original", "1.050"), ReadingUnits.METRIC);
    String shown = ((Reckoning.Answer) found).results().getFirst().shown();
    assertThat(shown).matches("18\\d(\\.\\d)? thousand million");
    Asked again = Question.read("dried yeast mass " + shown + " cells", ReadingUnits.METRIC);
    assertThat(((Asked.Meant) again).typed().get("cells")).matches("18\\d(\\.\\d)?e9");
  }

  @Test
  void aNearNameIsSuggested() {
    Search search = Reckoner.find("evaporation-haet");
    assertThat(search).isInstanceOf(Search.Miss.class);
    assertThat(((Search.Miss) search).nearest()).contains(HEAT);
    assertThat(((Search.Miss) Reckoner.find("xyzzyqq")).nearest()).isEmpty();
  }

  @Test
  void leavingTheFittedRangeIsACaution() {
    Calculation cautious =
        Reckoner.all().stream()
            .filter(c -> c.group().equals("hop isomerisation"))
            .findFirst()
            .orElseThrow();
    Map<String, String> typed = new HashMap<>();
    for (Input input : cautious.inputs()) {
      if (input.usual().isEmpty()) {
        typed.put(input.key(), input.unit().equals("°C") ? "75" : "1");
      }
    }
    assertThat(answer(cautious.name(), typed).cautions()).isNotEmpty();
    for (Input input : cautious.inputs()) {
      if (input.unit().equals("°C")) {
        typed.put(input.key(), "100");
      }
    }
    assertThat(answer(cautious.name(), typed).cautions()).isEmpty();
  }

  @Test
  void noTypedValueMakesAnyCalculationThrow() {
    List<String> values =
        List.of(
            "0", "1", "-1", "0.5", "20", "66", "101.325", "1e9", "1e-12", "NaN", "", "x", "5 gal");
    for (Calculation calculation : Reckoner.all()) {
      Cases.each(
          40,
          random -> {
            Map<String, String> typed = new HashMap<>();
            for (Input input : calculation.inputs()) {
              if (input.usual().isEmpty() || random.nextBoolean()) {
                typed.put(input.key(), values.get(random.nextInt(values.size())));
              }
            }
            switch (calculation.reckon(typed, ReadingUnits.US)) {
              case Reckoning.Answer answer ->
                  assertThat(answer.results())
                      .allMatch(r -> Double.isFinite(r.value()) && !r.shown().isBlank());
              case Reckoning.Unanswered refused -> assertThat(refused.sentence()).isNotBlank();
            }
          });
    }
  }

  @Test
  void everyUsualValueCanBeTypedAsItIsShown() {
    for (ReadingUnits units : List.of(ReadingUnits.METRIC, ReadingUnits.US)) {
      for (Calculation calculation : Reckoner.all()) {
        for (int i = 0; i < calculation.inputs().size(); i++) {
          Input input = calculation.inputs().get(i);
          if (input.usual().isEmpty()) {
            assertThat(input.usualTyped(units)).isEmpty();
            continue;
          }
          double usual = input.usual().getAsDouble();
          String typed = input.usualTyped(units);
          String where = calculation.name() + " " + input.key() + ": " + typed;
          Typed read = calculation.named(i).read(typed);
          assertThat(read).as(where).isInstanceOf(Typed.Read.class);
          assertThat(calculation.named(i).number((Typed.Read) read))
              .as(where)
              .isCloseTo(usual, within(1e-6 * Math.max(1e-9, Math.abs(usual))));
        }
      }
    }
  }

  @Test
  void everyCalculationIsOfferedInAGroup() {
    assertThat(Reckoner.all()).hasSizeGreaterThan(80).allMatch(c -> !c.group().isBlank());
  }
}
