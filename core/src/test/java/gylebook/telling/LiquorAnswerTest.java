package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Demo;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.simulate.Settings;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class LiquorAnswerTest {
  private static final Settings ALL_IN = new Settings(20, 70, 0, 1, 1, 0.7, 0);
  private static final Settings HELD = new Settings(15, 70, 0, 1, 1, 0.7, 10);

  private static Recipe from(Liquor.Ions ions, Liquor.Addition... additions) {
    return Demo.copperBitter().withLiquor(new Liquor("source", ions, List.of(additions)));
  }

  private static LiquorAnswer answer(
      Recipe recipe, Settings settings, String wanted, String house) {
    LiquorWish wish =
        ((Filled.Done<LiquorWish>) LiquorWish.read(wanted, house, "0.1 g", "0.1 mL")).thing();
    return LiquorAnswer.of(recipe, settings, wish, ReadingUnits.METRIC);
  }

  @Test
  void theSaltsOfAKnownWaterAreSaidWithWhereTheyGo() {
    // A gram of calcium chloride dihydrate in a litre: Ca 272.62, Cl 482.29 mg/L (formula masses
    // from the IUPAC abridged weights); 8 g in 20 L are 0.4 g/L.
    LiquorAnswer found =
        answer(
            from(new Liquor.Ions(0, 0, 0, 0, 0, 0)),
            ALL_IN,
            "calcium 109.05, chloride 192.92",
            "calcium chloride, gypsum, table salt");
    assertThat(found.sentences())
        .containsExactly(
            "Into the 20.0 L of the mash: 8 g calcium chloride.",
            "No liquor is held back, so there is none to treat by itself.");
    assertThat(found.missed()).isEmpty();
    assertThat(found.caution()).isEmpty();
    assertThat(found.rows().getFirst())
        .isEqualTo(new LiquorAnswer.Row("calcium", "0 mg/L", "109 mg/L", "109 mg/L", "109 mg/L"));
    assertThat(found.rows().get(1).wanted()).isEqualTo("any");
    assertThat(found.recipe().liquor().additions()).hasSize(1);
  }

  @Test
  void heldBackLiquorHasALineOfItsOwnAndAcidACaution() {
    LiquorAnswer found =
        answer(
            from(new Liquor.Ions(20, 4, 10, 15, 15, 122.034)),
            HELD,
            "calcium 100, sulphate 150, chloride 60, pH 5.35",
            "gypsum, calcium chloride, lactic acid 88 %");
    assertThat(found.sentences()).hasSize(2);
    // 2 meq/L in 10 L, 90 % of it gone at pH 5.40, lactic acid 88 % giving 11.45 meq/mL there.
    assertThat(found.sentences().get(1))
        .startsWith("Into the 10.0 L held back for after the bag:")
        .contains("1.5 mL lactic acid 88 %");
    assertThat(found.caution()).contains("goggles");
    assertThat(found.text()).contains("pH of the mash: wanted 5.35, comes to 5.3");
  }

  @Test
  void whatTheChemistDoesNotKnowStaysInTheRecipeAndTheRestIsReplaced() {
    Entered one = Entered.of(1, Unit.known(Quantity.SMALL_MASS, "g"));
    Liquor.Addition tablet =
        new Liquor.Addition("tablet", Liquor.Agent.UNKNOWN, one, Liquor.Into.MASH);
    Liquor.Addition chalk = new Liquor.Addition("chalk", Liquor.Agent.CHALK, one, Liquor.Into.MASH);
    Recipe recipe = from(new Liquor.Ions(0, 0, 0, 0, 0, 0), tablet, chalk);
    LiquorAnswer found = answer(recipe, ALL_IN, "sodium 40", "table salt");
    assertThat(found.recipe().liquor().additions())
        .extracting(Liquor.Addition::name)
        .containsExactly("table salt", "tablet");
  }
}
