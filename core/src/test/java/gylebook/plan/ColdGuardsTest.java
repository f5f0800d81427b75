package gylebook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.recipe.Ferment;
import gylebook.recipe.Hop;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.recipe.Yeast;
import gylebook.rig.DemoRigs;
import gylebook.science.RoomGas;
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

  private static Plan plan(Recipe recipe) {
    Planned planned = Planner.plan(recipe, DemoRigs.household(), 60, 7, () -> false, _ -> {});
    return ((Planned.Feasible) planned).plan();
  }

  private static Band figure(Plan plan, String key) {
    return plan.forecast().figure(key).orElseThrow().band();
  }

  /// 20 L of 12 P by habit 180 thousand million cells (ale) and 360 (lager), so here 0.75e6 and
  /// 1.5e6 for each mL and degree; 11 g of dried yeast bring 11 x 10 x 0.75 of them in the middle,
  /// and never surely.
  @Test
  void cellsAreCountedAsFarAsTheRecipeNamesThem() {
    Plan ale = plan(dried(11, "dry", 18));
    double millions =
        figure(ale, "fermenterL").middle() * figure(ale, "strengthPlato").middle() * 0.75;
    assertThat(figure(ale, "cellsWantedNumber").middle()).isCloseTo(millions, withinShare(0.02));
    Band brought = figure(ale, "cellsBroughtNumber");
    assertThat(brought.middle()).isCloseTo(11 * 10 * 0.75, withinShare(0.2));
    assertThat(brought.high()).isGreaterThan(2 * brought.low());
    assertThat(figure(ale, "driedYeastWantedG").middle()).isBetween(15.0, 30.0);
    Plan lager = plan(dried(11, "dry", 11));
    assertThat(figure(lager, "cellsWantedNumber").middle())
        .isCloseTo(2 * millions, withinShare(0.02));
    // A packet's mass is not known, and nobody told how many cells a litre of slurry has.
    assertThat(plan(BEER).forecast().figure("cellsBroughtNumber")).isEmpty();
    Plan slurry = plan(dried(200, "slurry", 18));
    assertThat(slurry.forecast().figure("cellsBroughtNumber")).isEmpty();
    assertThat(slurry.forecast().figure("driedYeastWantedG")).isEmpty();
  }

  private static org.assertj.core.data.Percentage withinShare(double share) {
    return org.assertj.core.data.Percentage.withPercentage(100 * share);
  }

  /// Water under air holds 10.1 and 11.0 mg/L at 15 and 11 C; sugar takes a tenth to a fifth of it.
  @Test
  void airGivesWhatItCanAndLagersAreToldThatItIsLittle() {
    Plan ale = plan(dried(100, "slurry", 18));
    assertThat(figure(ale, "oxygenFromAirMgPerL").middle()).isBetween(7.0, 9.0);
    assertThat(keys(dried(100, "slurry", 18))).doesNotContain("littleAir");
    Guard little =
        guards(dried(100, "slurry", 14)).stream()
            .filter(guard -> guard.key().equals("littleAir"))
            .findFirst()
            .orElseThrow();
    assertThat(little.what().getFirst().band().high()).isLessThan(10);
    assertThat(little.caution()).contains("fire").contains("local code");
    assertThat(keys(dried(100, "dry", 14))).doesNotContain("littleAir");
    Plan.PlannedStep rouse = ale.steps().get(ale.steps().size() - 2);
    assertThat(rouse.does()).contains("Rouse");
    assertThat(rouse.amountNumber()).isEqualTo(figure(ale, "oxygenFromAirMgPerL").middle());
    assertThat(ale.steps().getLast().key()).isEqualTo("pitchC");
  }

  /// The sheet: 20 L of 12 P to 2.5 P give 0.74 to 0.76 kg, 0.41 m3, 13 500 to 13 800 ppm in 30 m3;
  /// 5000 ppm so ask for 81 to 83 m3.
  @Test
  void theGasOfAFermentAsksForARoom() {
    var sheet = RoomGas.givenOff(20.967, 9.5, 0.1, 20, 101.325);
    assertThat(sheet.gasKg()).isBetween(0.735, 0.765);
    assertThat(sheet.gasL()).isBetween(400.0, 420.0);
    assertThat(sheet.peakLPerHr()).isCloseTo(sheet.gasL() * 0.1 / 4, withinShare(0.001));
    double roomM3 = RoomGas.closedRoomM3(sheet.gasKg(), 5000, 20, 101.325);
    assertThat(roomM3).isBetween(80.0, 83.5);
    assertThat(RoomGas.releasedPpm(sheet.gasKg(), roomM3, 20, 101.325))
        .isCloseTo(5000, withinShare(0.001));
    Plan plan = plan(BEER);
    Band gas = figure(plan, "fermentGasKg");
    assertThat(gas.middle()).isBetween(0.5, 0.85);
    assertThat(figure(plan, "closedRoomM3").middle() / gas.middle())
        .isCloseTo(roomM3 / sheet.gasKg(), withinShare(0.08));
    Band peak = figure(plan, "fermentGasPeakLPerHr");
    assertThat(peak.high()).isGreaterThan(2 * peak.low());
    Guard guard =
        plan.forecast().guards().stream()
            .filter(each -> each.key().equals("gasInRoom"))
            .findFirst()
            .orElseThrow();
    assertThat(guard.caution()).contains("local code");
    assertThat(guard.byWhen()).isEqualTo("cast");
  }

  @Test
  void theFermentersFiguresNameTheirSources() throws java.io.IOException {
    String list =
        java.nio.file.Files.readString(
            java.nio.file.Path.of("../docs/sources.bib"), java.nio.charset.StandardCharsets.UTF_8);
    List<Figure> cold =
        plan(dried(11, "dry", 18)).forecast().figures().stream()
            .filter(
                figure -> figure.key().matches("cells.*|dried.*|oxygen.*|fermentGas.*|closed.*"))
            .toList();
    assertThat(cold).hasSize(7);
    for (Figure figure : cold) {
      assertThat(figure.why().sources()).isNotEmpty();
      figure.why().sources().forEach(key -> assertThat(list).contains("{" + key + ","));
    }
  }
}
