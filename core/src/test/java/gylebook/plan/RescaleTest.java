package gylebook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.recipe.Aim;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Recipe;
import gylebook.simulate.Outcome;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RescaleTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Recipe theirs(Elsewhere there) {
    Recipe b = Demo.copperBitter();
    Aim aim = new Aim(b.aim().lengthL(), b.aim().into(), Optional.empty(), Optional.empty(), "");
    return new Recipe(
        b.name(),
        "",
        true,
        aim,
        b.grist(),
        b.liquor(),
        b.rests(),
        b.boil(),
        b.stands(),
        b.hops(),
        b.others(),
        b.yeast(),
        b.ferment(),
        b.pack(),
        "",
        there,
        b.kept());
  }

  private static Elsewhere equipment(
      OptionalDouble brewhouseFrac, double lengthL, OptionalDouble evaporationLPerHr) {
    return new Elsewhere(
        brewhouseFrac,
        OptionalDouble.of(lengthL),
        NONE,
        NONE,
        evaporationLPerHr,
        NONE,
        NONE,
        NONE,
        "",
        NONE);
  }

  @Test
  void aRecipeThatSaysNothingOfItsEquipmentStaysWithoutAims() {
    Aim aim = Rescale.aimed(theirs(Elsewhere.silent())).aim();
    assertThat(aim.strengthPlato()).isEmpty();
    assertThat(aim.bitternessMgPerL()).isEmpty();
  }

  @Test
  void twiceTheirLitresAreAboutHalfAsBitterFromTheSameHops() {
    double small = bitternessMgPerL(theirs(equipment(NONE, 20, NONE)));
    double large = bitternessMgPerL(theirs(equipment(NONE, 40, NONE)));
    // The same iso-alpha in twice the litres (mass balance); what hops and kettle keep is a smaller
    // share of more wort.
    assertThat(large / small).isBetween(0.48, 0.62);
  }

  private static double bitternessMgPerL(Recipe recipe) {
    return Rescale.aimed(recipe).aim().bitternessMgPerL().orElseThrow().inside();
  }

  @Test
  void theirYieldAndBoilOffAreThoseOfTheSimulatedRig() {
    Recipe theirs = theirs(equipment(OptionalDouble.of(0.65), 20, OptionalDouble.of(3)));
    Outcomes out = ForeignBrew.of(theirs).orElseThrow();
    assertThat(out.at(Outcome.BREWHOUSE)).isCloseTo(0.65, within(0.005));
    assertThat(out.at(Outcome.FERMENTER)).isCloseTo(20, within(0.05));
    assertThat(out.at(Outcome.BOIL_OFF_RATE)).isCloseTo(3, within(0.1));
    // The mass balance of the stated yield and the simulated day agree on the strength.
    double balancePlato = Rescale.aimed(theirs).aim().strengthPlato().orElseThrow().inside();
    assertThat(out.at(Outcome.STRENGTH)).isCloseTo(balancePlato, within(0.1));
  }

  @Test
  void whatARecipeClaimsGoesBeforeWhatItsRigWouldGive() {
    Elsewhere claims =
        new Elsewhere(
            OptionalDouble.of(0.7),
            OptionalDouble.of(20),
            NONE,
            NONE,
            NONE,
            OptionalDouble.of(12),
            NONE,
            OptionalDouble.of(40),
            "",
            NONE);
    Aim aim = Rescale.aimed(theirs(claims)).aim();
    assertThat(aim.strengthPlato().orElseThrow().inside()).isEqualTo(12);
    assertThat(aim.bitternessMgPerL().orElseThrow().inside()).isEqualTo(40);
  }
}
