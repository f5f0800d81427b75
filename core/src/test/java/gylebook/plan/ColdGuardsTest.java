package gylebook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.recipe.Ferment;
import gylebook.recipe.Hop;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.recipe.Yeast;
import gylebook.rig.DemoRigs;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/// What the plan says of the fermenter before anything is in it.
class ColdGuardsTest {
  private static final Recipe BEER = Demo.copperBitter();

  private static List<Guard> guards(Recipe recipe) {
    Planned planned = Planner.plan(recipe, DemoRigs.household(), 60, 7, () -> false, _ -> {});
    return ((Planned.Feasible) planned).plan().forecast().guards();
  }

  private static List<String> keys(Recipe recipe) {
    return guards(recipe).stream().map(Guard::key).toList();
  }

  private static Entered of(double value, Quantity quantity, String unit) {
    return Entered.of(value, Unit.known(quantity, unit));
  }

  private static Recipe beer(List<Hop> hops, Yeast yeast, Ferment ferment, Pack pack) {
    return new Recipe(
        BEER.name(),
        BEER.wanted(),
        BEER.invented(),
        BEER.aim(),
        BEER.grist(),
        BEER.liquor(),
        BEER.rests(),
        BEER.boil(),
        BEER.stands(),
        hops,
        BEER.others(),
        yeast,
        ferment,
        pack,
        BEER.notes(),
        BEER.elsewhere(),
        BEER.kept());
  }

  private static Recipe dried(double massG, String form, double pitchC) {
    Yeast yeast =
        new Yeast(
            "dried",
            form,
            of(massG, Quantity.SMALL_MASS, "g"),
            BEER.yeast().attenuationFrac(),
            of(pitchC, Quantity.TEMPERATURE, "°C"));
    return beer(BEER.hops(), yeast, BEER.ferment(), BEER.pack());
  }

  private static Ferment.Step step(double startC, double endC, double days) {
    return new Ferment.Step(
        "",
        of(startC, Quantity.TEMPERATURE, "°C"),
        of(endC, Quantity.TEMPERATURE, "°C"),
        of(days, Quantity.TIME, "d"),
        false);
  }

  private static Recipe fermented(Ferment.Step... steps) {
    return beer(BEER.hops(), BEER.yeast(), new Ferment(List.of(steps)), BEER.pack());
  }

  @Test
  void anOrdinaryBeerHasNothingToHear() {
    assertThat(keys(BEER)).doesNotContain("littleYeast", "shortRest", "dryHopsStartAgain");
    assertThat(keys(Demo.wheatBeer()))
        .doesNotContain("littleYeast", "shortRest", "dryHopsStartAgain");
  }

  /// The trade gives 20 L of 12 P of ale 10 to 22 g: 11 g pass, 4 g do not, nor do 11 g for a
  /// lager.
  @Test
  void fewGramsOfDriedYeastAreSaid() {
    assertThat(keys(dried(11, "dry", 18))).doesNotContain("littleYeast");
    Guard few =
        guards(dried(4, "dry", 18)).stream()
            .filter(guard -> guard.key().equals("littleYeast"))
            .findFirst()
            .orElseThrow();
    assertThat(few.what().getFirst().band().middle()).isEqualTo(4);
    double usualG = few.what().get(1).band().middle();
    assertThat(usualG).isBetween(15.0, 30.0);
    assertThat(keys(dried(11, "Dried", 11))).contains("littleYeast");
    assertThat(keys(dried(4, "slurry", 18))).doesNotContain("littleYeast");
  }

  /// Two days at 18 C or more after nine tenths (common practice, no source). At 20 C nine tenths
  /// are gone after 54 h by the priors, so four days leave 42 h and five 66.
  @Test
  void aBeerThatIsCooledTooSoonIsToldToRest() {
    assertThat(keys(fermented(step(20, 20, 4), step(2, 2, 3)))).contains("shortRest");
    assertThat(keys(fermented(step(20, 20, 5), step(2, 2, 3)))).doesNotContain("shortRest");
    Guard cool =
        guards(fermented(step(12, 12, 14))).stream()
            .filter(guard -> guard.key().equals("shortRest"))
            .findFirst()
            .orElseThrow();
    assertThat(cool.what().getFirst().band().middle()).isZero();
    // What has not got so far is another guard's.
    assertThat(keys(fermented(step(12, 12, 2)))).doesNotContain("shortRest");
  }

  /// Kirkpatrick and Shellhammer 2018: 4.75 volumes of gas.
  @Test
  void dryHopsMakeABeerUnfinished() {
    List<Hop> hops = new ArrayList<>(BEER.hops());
    hops.add(
        new Hop(
            "dry",
            "",
            Hop.Form.PELLET,
            of(60, Quantity.SMALL_MASS, "g"),
            of(6, Quantity.SHARE, "%"),
            new Hop.When.Dry(of(5, Quantity.TIME, "d"), of(2, Quantity.TIME, "d"))));
    Guard kegged = dryHopped(beer(hops, BEER.yeast(), BEER.ferment(), BEER.pack()));
    assertThat(kegged.level()).isEqualTo(Guard.Level.NOTE);
    assertThat(kegged.what().getFirst().band().middle()).isBetween(4.65, 4.80);
    Pack bottles = new Pack(Pack.Kind.BOTTLE, BEER.pack().carbonationRatio());
    Guard bottled = dryHopped(beer(hops, BEER.yeast(), BEER.ferment(), bottles));
    assertThat(bottled.level()).isEqualTo(Guard.Level.SOON);
    assertThat(bottled.caution()).contains("burst");
  }

  private static Guard dryHopped(Recipe recipe) {
    return guards(recipe).stream()
        .filter(guard -> guard.key().equals("dryHopsStartAgain"))
        .findFirst()
        .orElseThrow();
  }
}
