package gylebook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.recipe.Aim;
import gylebook.recipe.Boil;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.recipe.Stand;
import gylebook.rig.Chiller;
import gylebook.rig.DemoRigs;
import gylebook.rig.Newcomer;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.simulate.Settings;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class PlannerTest {
  private static Planned plan(Recipe recipe, Rig rig) {
    return Planner.plan(recipe, rig, 200, 20, () -> false, _ -> {});
  }

  private static Plan feasible(Recipe recipe, Rig rig) {
    Planned planned = plan(recipe, rig);
    assertThat(planned).isInstanceOf(Planned.Feasible.class);
    return ((Planned.Feasible) planned).plan();
  }

  private static Recipe litres(Recipe recipe, double lengthL) {
    Aim aim = recipe.aim();
    Entered length = Entered.of(lengthL, Unit.known(Quantity.VOLUME, "L"));
    return recipe.withAim(
        new Aim(length, aim.into(), aim.strengthPlato(), aim.bitternessMgPerL(), ""));
  }

  private static Rig rig(double kettleL, double plateW, double altitudeM) {
    return new Newcomer(
            "test",
            kettleL,
            plateW,
            230,
            230,
            altitudeM,
            true,
            1.5,
            0.0127,
            true,
            false,
            Probe.Place.SUCTION,
            Chiller.Kind.COUNTERFLOW,
            60,
            50)
        .rig();
  }

  private static List<String> guards(double rampMin) {
    Recipe bitter = Demo.copperBitter();
    List<Rest> rests = new ArrayList<>(bitter.rests());
    Rest last = rests.removeLast();
    Entered ramp = Entered.of(rampMin, Unit.known(Quantity.TIME, "min"));
    rests.add(new Rest(last.name(), last.targetC(), last.holdSec(), Optional.of(ramp)));
    Plan plan = feasible(bitter.withRests(rests), DemoRigs.household());
    assertThat(plan.steps().stream().map(Plan.PlannedStep::does))
        .contains("Over " + Math.round(rampMin) + " min, evenly, turn the controller up to");
    return plan.forecast().guards().stream().map(Guard::key).toList();
  }

  @Test
  void saysWhenTheElementIsTooWeakForAWantedRamp() {
    assertThat(guards(2)).contains("rampTooFast.1");
    assertThat(guards(45)).doesNotContain("rampTooFast.1");
  }

  @Test
  void aCoveredBoilIsPlannedWithACaution() {
    Recipe bitter = Demo.copperBitter();
    Boil boil = new Boil(bitter.boil().holdSec(), Optional.empty(), Optional.empty(), Boil.Lid.ON);
    Plan plan = feasible(bitter.withBoil(boil), DemoRigs.household());
    assertThat(plan.forecast().guards())
        .filteredOn(guard -> guard.key().equals("lidOnInBoil"))
        .singleElement()
        .satisfies(guard -> assertThat(guard.caution()).contains("scalds"));
    assertThat(plan.steps().stream().map(Plan.PlannedStep::does))
        .anyMatch(does -> does.startsWith("Full heat, lid on; stay by the kettle"));
  }

  @Test
  void theLastStepExpectsWhatTheForecastExpects() {
    Plan plan = feasible(Demo.copperBitter(), DemoRigs.household());
    assertThat(plan.steps())
        .filteredOn(step -> step.key().equals("fermenterL"))
        .singleElement()
        .satisfies(
            step ->
                assertThat(step.amountNumber())
                    .isEqualTo(band(plan.forecast(), Outcome.FERMENTER).middle()));
  }

  @Test
  void hopsThatStandHotterThanWaterBoilsAreNotCooledFor() {
    Recipe bitter = Demo.copperBitter();
    Stand stand = bitter.stands().getFirst();
    Entered boilC = Entered.of(100, Unit.known(Quantity.TEMPERATURE, "°C"));
    Recipe hot =
        new Recipe(
            bitter.name(),
            bitter.wanted(),
            bitter.invented(),
            bitter.aim(),
            bitter.grist(),
            bitter.liquor(),
            bitter.rests(),
            bitter.boil(),
            List.of(new Stand(boilC, stand.holdSec())),
            bitter.hops(),
            bitter.others(),
            bitter.yeast(),
            bitter.ferment(),
            bitter.pack(),
            bitter.notes(),
            bitter.elsewhere(),
            bitter.kept());
    Plan plan = feasible(hot, rig(36, 3000, 1500));
    assertThat(plan.steps().stream().map(Plan.PlannedStep::does))
        .contains("Do not cool; it stands at most at")
        .doesNotContain("Cool and stand at");
    assertThat(feasible(bitter, DemoRigs.household()).steps().stream().map(Plan.PlannedStep::does))
        .contains("Cool and stand at");
  }

  @Test
  void whatIsAddedByTheGramIsSaidInGramsWhicheverScalesTheRecipeNames() {
    Recipe bitter = Demo.copperBitter();
    Liquor.Addition gypsum = bitter.liquor().additions().getFirst();
    Entered kilograms = Entered.of(0.006, Unit.known(Quantity.MASS, "kg"));
    Liquor.Addition inKg =
        new Liquor.Addition(gypsum.name(), gypsum.agent(), kilograms, gypsum.into());
    Recipe recipe = bitter.withLiquor(bitter.liquor().withAdditions(List.of(inKg)));
    assertThat(feasible(recipe, DemoRigs.household()).steps())
        .filteredOn(step -> step.does().contains(gypsum.name()))
        .singleElement()
        .satisfies(
            step -> {
              assertThat(step.key()).isEqualTo("saltG");
              assertThat(step.amountNumber()).isCloseTo(6, within(1e-9));
            });
  }

  @Test
  void reachesTheWantedBeerOnBothDemoRigs() {
    assertReached(Demo.copperBitter(), DemoRigs.household());
    assertReached(Demo.wheatBeer(), DemoRigs.smallFlat());
  }

  private static void assertReached(Recipe recipe, Rig rig) {
    Forecast forecast = feasible(recipe, rig).forecast();
    Aim aim = recipe.aim();
    assertThat(band(forecast, Outcome.FERMENTER).middle())
        .as("the middle of the days, not the day without luck")
        .isCloseTo(aim.lengthL().inside(), within(0.1));
    assertThat(band(forecast, Outcome.STRENGTH).middle())
        .isCloseTo(aim.strengthPlato().orElseThrow().inside(), within(0.05));
    assertThat(band(forecast, Outcome.BITTERNESS).middle())
        .isCloseTo(aim.bitternessMgPerL().orElseThrow().inside(), within(1.0));
    double restC = recipe.rests().getFirst().targetC().inside();
    assertThat(band(forecast, Outcome.GRAIN_HELD).middle()).isCloseTo(restC, within(0.1));
    assertThat(band(forecast, Outcome.DOUGH_IN).middle()).isCloseTo(restC, within(0.15));
  }

  private static Band band(Forecast forecast, Outcome outcome) {
    return forecast.figure(outcome.key()).orElseThrow().band();
  }

  @Test
  void whatIsSetDoesNotDependOnHowManyDaysAreShown() {
    Recipe recipe = Demo.copperBitter();
    Planned few = Planner.plan(recipe, DemoRigs.household(), 1, 20, () -> false, _ -> {});
    assertThat(((Planned.Feasible) few).plan().settings())
        .isEqualTo(feasible(recipe, DemoRigs.household()).settings());
  }

  /// What a first look sets, by the lean of the plan before, is what the whole plan then sets.
  @Test
  void aLookAfterAnEditSetsWhatTheWholePlanSets() {
    Recipe recipe = Demo.copperBitter();
    Rig rig = DemoRigs.household();
    Planner.Before before = new Planner.Before(recipe, rig, feasible(recipe, rig));
    for (double lengthL : new double[] {16, 19, 21}) {
      Recipe edited = litres(recipe, lengthL);
      Planned look = Planner.look(edited, rig, 100, Planner.USUAL_SEED, before, () -> false);
      Settings quick = ((Planned.Feasible) look).plan().settings();
      Settings whole = feasible(edited, rig).settings();
      assertThat(quick.liquorL()).isCloseTo(whole.liquorL(), within(0.1));
      assertThat(quick.strikeC()).isCloseTo(whole.strikeC(), within(0.1));
      assertThat(quick.gristFactor()).isCloseTo(whole.gristFactor(), within(0.01));
      assertThat(quick.hopFactor()).isCloseTo(whole.hopFactor(), within(0.02));
    }
  }

  @Test
  void bandsHoldTheMiddleAndNarrowNowhereToNothing() {
    Forecast forecast = feasible(Demo.copperBitter(), DemoRigs.household()).forecast();
    for (String key : List.of("fermenterL", "strengthPlato", "bitternessMgPerL", "castC")) {
      Band band = forecast.figure(key).orElseThrow().band();
      assertThat(band.low()).as(key).isLessThan(band.middle());
      assertThat(band.middle()).as(key).isLessThan(band.high());
    }
  }

  @Test
  void theFirstHundredDaysOfAThousandAreTheHundredAlone() {
    BrewDay day =
        new BrewDay(
            Demo.copperBitter(),
            DemoRigs.household(),
            feasible(Demo.copperBitter(), DemoRigs.household()).settings());
    double[] few =
        Ensemble.of(day, 7, 100, () -> false, _ -> {}).orElseThrow().outcome(Outcome.STRENGTH);
    double[] many =
        Ensemble.of(day, 7, 300, () -> false, _ -> {}).orElseThrow().outcome(Outcome.STRENGTH);
    for (int i = 0; i < few.length; i++) {
      assertThat(few[i]).isEqualTo(many[i]);
    }
  }

  @Test
  void tooSmallAKettleNamesItselfAndTheNearestPlanFits() {
    Rig small = rig(25, 3000, 0);
    Planned planned = plan(litres(Demo.copperBitter(), 40), small);
    assertThat(planned).isInstanceOf(Planned.Impossible.class);
    Planned.Impossible impossible = (Planned.Impossible) planned;
    assertThat(impossible.limit()).isEqualTo("kettleTooSmall");
    Plan nearest = impossible.nearest().orElseThrow();
    Outcomes out = Outcomes.of(new BrewDay(Demo.copperBitter(), small, nearest.settings()));
    assertThat(out.at(Outcome.ROOM_AT_BREAK)).isGreaterThan(0.03);
    assertThat(out.at(Outcome.FERMENTER)).isBetween(8.0, 40.0);
  }

  @Test
  void liquorIsHeldBackBeforeTheBeerIsGivenUp() {
    Rig tight = rig(30, 3000, 0);
    Plan plan = feasible(litres(Demo.copperBitter(), 20.5), tight);
    assertThat(plan.settings().topUpL()).isGreaterThan(0.2);
    assertThat(plan.forecast().figure("fermenterL").orElseThrow().band().middle())
        .isCloseTo(20.5, within(0.6));
  }

  @Test
  void aRestAboveTheBoilingPointOfAHighPlaceIsRefusedByName() {
    Entered hot = Entered.of(88, Unit.known(Quantity.TEMPERATURE, "°C"));
    Recipe bitter = Demo.copperBitter();
    Rest rest = new Rest("", hot, bitter.rests().getFirst().holdSec());
    Recipe recipe =
        new Recipe(
            bitter.name(),
            "",
            true,
            bitter.aim(),
            bitter.grist(),
            bitter.liquor(),
            List.of(rest),
            bitter.boil(),
            bitter.stands(),
            bitter.hops(),
            bitter.others(),
            bitter.yeast(),
            bitter.ferment(),
            bitter.pack(),
            "",
            bitter.elsewhere(),
            bitter.kept());
    Planned planned = plan(recipe, rig(36, 3300, 3600));
    Planned.Impossible impossible = (Planned.Impossible) planned;
    assertThat(impossible.limit()).isEqualTo("boilsTooCool");
    assertThat(NoteText.plain(impossible.says())).endsWith(".");
  }

  @Test
  void whereAMashOutIsTooHotTheNearestPlanHasItAsHotAsCanBeHeld() {
    Recipe bitter = Demo.copperBitter();
    List<Rest> rests = new ArrayList<>(bitter.rests());
    Rest last = rests.removeLast();
    Entered hotC = Entered.of(94, Unit.known(Quantity.TEMPERATURE, "°C"));
    rests.add(new Rest(last.name(), hotC, last.holdSec()));
    Planned planned = plan(litres(bitter.withRests(rests), 15), rig(36, 3300, 3600));
    assertThat(planned).isInstanceOf(Planned.Impossible.class);
    Plan nearest = ((Planned.Impossible) planned).nearest().orElseThrow();
    assertThat(nearest.recipe().rests().getFirst()).isEqualTo(rests.getFirst());
    // At 3600 m standard weather leaves some 65 kPa, where water boils near 88 C; 2 K less holds.
    assertThat(nearest.recipe().rests().getLast().targetC().inside()).isBetween(85.0, 86.5);
  }

  @Test
  void anElementThatCannotBoilSoMuchIsNamed() {
    Planned planned = plan(litres(Demo.copperBitter(), 45), rig(90, 700, 0));
    assertThat(planned).isInstanceOf(Planned.Impossible.class);
    assertThat(((Planned.Impossible) planned).limit()).isEqualTo("elementTooWeak");
  }

  @Test
  void anOvertakenPlanStops() {
    assertThatThrownBy(
            () ->
                Planner.plan(
                    Demo.copperBitter(), DemoRigs.household(), 100, 20, () -> true, _ -> {}))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void withoutAimsTheLotsStand() {
    Recipe bitter = Demo.copperBitter();
    Aim aim = bitter.aim();
    Recipe free =
        bitter.withAim(new Aim(aim.lengthL(), aim.into(), Optional.empty(), Optional.empty(), ""));
    Plan plan = feasible(free, DemoRigs.household());
    assertThat(plan.settings().gristFactor()).isEqualTo(1.0);
    assertThat(plan.recipe().grist().getFirst().massKg())
        .isEqualTo(bitter.grist().getFirst().massKg());
  }

  @Test
  void higherUpTheSameHopsGiveLessBitterness() {
    Plan sea = feasible(Demo.copperBitter(), rig(36, 3300, 0));
    Outcomes low = Outcomes.of(new BrewDay(Demo.copperBitter(), rig(36, 3300, 0), sea.settings()));
    Outcomes high =
        Outcomes.of(new BrewDay(Demo.copperBitter(), rig(36, 3300, 1600), sea.settings()));
    // Water boils 5.4 K cooler there; the rate of isomerisation is 0.63 of sea level's
    // (Malowicki & Shellhammer 2005 with the standard atmosphere), the hour loses a little less.
    double ratio = high.at(Outcome.ISO_IN_BEER) / low.at(Outcome.ISO_IN_BEER);
    assertThat(ratio).isBetween(0.65, 0.85);
  }

  @Test
  void aLengthThatIsNoneOrAbsurdGetsALimitAndNoCrash() {
    Rig rig = DemoRigs.household();
    assertThat(((Planned.Impossible) plan(litres(Demo.copperBitter(), 0), rig)).limit())
        .isEqualTo("noLength");
    assertThat(plan(litres(Demo.copperBitter(), 0.3), rig)).isInstanceOf(Planned.Impossible.class);
    Planned huge = plan(litres(Demo.copperBitter(), 5000), rig);
    assertThat(((Planned.Impossible) huge).nearest()).isPresent();
  }

  @Test
  void somebodyElsesStrengthFollowsFromTheirBrewhouse() {
    // Their 5.000 kg at 4.5 % moisture and 80 % on dry matter hold 3.820 kg; 70 % of that in
    // 20 L is 2.674 kg, which by the extract table's own inverse is 12.74 P (mass balance).
    Recipe bitter = Demo.copperBitter();
    Entered five = Entered.of(5, Unit.known(Quantity.MASS, "kg"));
    Recipe theirs =
        new Recipe(
            bitter.name(),
            "",
            true,
            new Aim(
                bitter.aim().lengthL(), Aim.Into.FERMENTER, Optional.empty(), Optional.empty(), ""),
            List.of(bitter.grist().getFirst().withMass(five)),
            bitter.liquor(),
            bitter.rests(),
            bitter.boil(),
            bitter.stands(),
            bitter.hops(),
            bitter.others(),
            bitter.yeast(),
            bitter.ferment(),
            bitter.pack(),
            "",
            said(0.70, 20),
            bitter.kept());
    double plato = Rescale.aimed(theirs).aim().strengthPlato().orElseThrow().inside();
    assertThat(plato).isCloseTo(12.74, within(0.02));
  }

  private static Elsewhere said(double brewhouseFrac, double lengthL) {
    OptionalDouble none = OptionalDouble.empty();
    return new Elsewhere(
        OptionalDouble.of(brewhouseFrac),
        OptionalDouble.of(lengthL),
        none,
        none,
        none,
        none,
        none,
        none,
        "",
        none);
  }
}
