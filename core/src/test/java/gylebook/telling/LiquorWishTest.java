package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.plan.LiquorSolver;
import gylebook.recipe.Liquor;
import gylebook.science.LiquorLevels;
import gylebook.testing.Cases;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LiquorWishTest {
  private static final String HOUSE = LiquorWish.USUAL_HOUSE;

  private static LiquorWish wish(String wanted, String house) {
    return ((Filled.Done<LiquorWish>) LiquorWish.read(wanted, house, "0.1 g", "0.1 mL")).thing();
  }

  private static String unclear(String wanted, String house, String scale, String measure) {
    Filled<LiquorWish> read = LiquorWish.read(wanted, house, scale, measure);
    assertThat(read).isInstanceOf(Filled.Unclear.class);
    Filled.Unclear<LiquorWish> unclear = (Filled.Unclear<LiquorWish>) read;
    return unclear.what() + " " + unclear.maybe();
  }

  @Test
  void whatIsNotNamedDoesNotMatter() {
    LiquorLevels wanted = wish("Ca 100, SO4: 0.15 g/L; pH 5,4", HOUSE).wanted();
    assertThat(wanted.calciumMgPerL()).isEqualTo(100);
    assertThat(wanted.sulfateMgPerL()).isCloseTo(150, within(1e-9));
    assertThat(wanted.mashPh()).isEqualTo(5.4);
    assertThat(wanted.chlorideMgPerL()).isNaN();
    assertThat(wanted.magnesiumMgPerL()).isNaN();
    assertThat(wish("HCO3 120", HOUSE).wanted().bicarbonateMgPerL()).isEqualTo(120);
  }

  @Test
  void theHouseIsNamedPlainlyAndStepsAreThoseOfTheScale() {
    List<LiquorSolver.Stock> house =
        wish(
                "calcium 100",
                "gypsum, anhydrous calcium chloride, calcium chloride, lactic acid 80 %")
            .house();
    assertThat(house)
        .extracting(LiquorSolver.Stock::agent)
        .containsExactly(
            Liquor.Agent.GYPSUM,
            Liquor.Agent.CALCIUM_CHLORIDE_ANHYDROUS,
            Liquor.Agent.CALCIUM_CHLORIDE_DIHYDRATE,
            Liquor.Agent.LACTIC_ACID);
    assertThat(house).allSatisfy(one -> assertThat(one.stepNumber()).isCloseTo(0.1, within(1e-12)));
    // An ounce is 28.349523125 g (the international pound, exact by definition).
    assertThat(
            ((Filled.Done<LiquorWish>) LiquorWish.read("calcium 9", "gypsum", "0.01 oz", "1 mL"))
                .thing()
                .house()
                .getFirst()
                .stepNumber())
        .isCloseTo(0.28349523125, within(1e-9));
    assertThat(wish("calcium 1", "calcium chloride, anhydrous").house()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          much calcium    | gypsum        | 0.1 g  | 'much calcium' is nothing that can be wanted
          gold 10         | gypsum        | 0.1 g  | 'gold' cannot be wanted of a liquor
          calcium 5000    | gypsum        | 0.1 g  | Of calcium '5000' is wanted
          calcium 10 kg   | gypsum        | 0.1 g  | For calcium '10 kg' is said
          pH 3            | gypsum        | 0.1 g  | A pH of '3' is wanted of the mash
          ca 1, calcium 2 | gypsum        | 0.1 g  | The calcium is said twice
          calcium 100     | sea salt      | 0.1 g  | What 'sea salt' is to the chemist
          calcium 100     | lactic acid   | 0.1 g  | How strong the lactic acid is
          calcium 100     | ","           | 0.1 g  | Nothing is said to be in the house
          calcium 100     | gypsum        | 0 g    | The steps of the scale are '0 g'
          calcium 100     | gypsum        | 5 mL   | For the steps of the scale '5 mL' is said
          """)
  void whatIsUnclearIsAskedBack(String wanted, String house, String scale, String says) {
    assertThat(unclear(wanted, house, scale, "0.1 mL")).startsWith(says);
  }

  @Test
  void aFormInWhichNothingIsWantedIsAskedBack() {
    Filled<LiquorWish> read =
        LiquorWish.read(
            Map.of(LiquorWish.Line.CALCIUM, " ", LiquorWish.Line.PH, ""),
            List.of("gypsum"),
            "0.1 g",
            "0.1 mL");
    assertThat(((Filled.Unclear<LiquorWish>) read).what()).startsWith("Nothing is wanted");
    assertThat(unclear("calcium 9", "gypsum", "", "0.1 mL")).contains("the scale");
  }

  @Test
  void whateverIsTypedIsAnsweredWithASentenceOrTaken() {
    String letters = "calcium sulphate pH 0123456789.,;:=%-'<gypsum lactic acid";
    Cases.each(
        500,
        luck -> {
          StringBuilder typed = new StringBuilder();
          for (int i = luck.nextInt(30); i > 0; i--) {
            typed.append(letters.charAt(luck.nextInt(letters.length())));
          }
          String text = typed.toString();
          assertThat(LiquorWish.read(text, HOUSE, "0.1 g", "0.1 mL")).isNotNull();
          assertThat(LiquorWish.read("calcium 9", text, text, "0.1 mL")).isNotNull();
        });
  }
}
