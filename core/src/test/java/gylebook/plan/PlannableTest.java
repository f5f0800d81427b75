package gylebook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.recipe.Aim;
import gylebook.recipe.Analysis;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.recipe.Stand;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// Recipes that say too little, or more than the models hold: a sentence, and no exception.
class PlannableTest {
  private static final Rig RIG = DemoRigs.household();
  private static final Recipe BITTER = Demo.copperBitter();

  private static Planned planned(Recipe recipe) {
    return Planner.plan(recipe, RIG, 20, 20, () -> false, _ -> {});
  }

  private static Planned.Impossible impossible(Recipe recipe) {
    Planned planned = planned(recipe);
    assertThat(planned).isInstanceOf(Planned.Impossible.class);
    return (Planned.Impossible) planned;
  }

  private static Entered of(double value, Quantity quantity, String symbol) {
    return Entered.of(value, Unit.known(quantity, symbol));
  }

  private static Recipe grist(Goods... lines) {
    return BITTER.with(List.of(lines), BITTER.hops());
  }

  private static Goods goods(Goods.Kind kind, double massKg, Goods.Use use) {
    return new Goods("test", "", kind, of(massKg, Quantity.MASS, "kg"), kind.usual(), use);
  }

  private static Recipe rests(double... restsC) {
    List<Rest> rests = new ArrayList<>();
    for (double restC : restsC) {
      rests.add(new Rest("", of(restC, Quantity.TEMPERATURE, "°C"), of(5, Quantity.TIME, "min")));
    }
    return BITTER.withRests(rests);
  }

  private static Recipe withStands(Recipe recipe, List<Stand> stands) {
    return new Recipe(
        recipe.name(),
        "",
        true,
        recipe.aim(),
        recipe.grist(),
        recipe.liquor(),
        recipe.rests(),
        recipe.boil(),
        stands,
        recipe.hops(),
        recipe.others(),
        recipe.yeast(),
        recipe.ferment(),
        recipe.pack(),
        "",
        recipe.elsewhere(),
        recipe.kept());
  }

  @Test
  void extractAloneIsRefusedInASentence() {
    Planned.Impossible no = impossible(grist(goods(Goods.Kind.DRY_EXTRACT, 3, Goods.Use.BOIL)));
    assertThat(no.limit()).isEqualTo("noGrist");
    assertThat(NoteText.plain(no.says())).contains("Nothing in the recipe is mashed");
  }

  @Test
  void maltWithoutAMassIsRefusedInASentence() {
    Planned.Impossible no = impossible(grist(goods(Goods.Kind.BASE_MALT, 0, Goods.Use.MASH)));
    assertThat(NoteText.plain(no.says())).contains("has no mass");
  }

  @Test
  void maltThatGivesNothingIsRefusedInASentence() {
    Goods malt = goods(Goods.Kind.BASE_MALT, 4, Goods.Use.MASH);
    Analysis usual = malt.analysis();
    Analysis nothing = new Analysis(usual.moistureFrac(), 0, 0, usual.colourEbc(), 0, true);
    Goods chaff =
        new Goods(malt.name(), malt.lot(), malt.kind(), malt.massKg(), nothing, malt.use());
    Planned.Impossible no = impossible(grist(chaff));
    assertThat(no.limit()).isEqualTo("noExtract");
    assertThat(NoteText.plain(no.says())).contains("gives no extract");
    assertThat(planned(grist(chaff, malt))).isInstanceOf(Planned.Feasible.class);
  }

  @Test
  void aMashWetterThanItsHeatIsKnownForIsRefusedAndADryOneIsNot() {
    Goods malt = goods(Goods.Kind.BASE_MALT, 4, Goods.Use.MASH);
    Planned.Impossible no = impossible(grist(malt, goods(Goods.Kind.FRUIT, 3, Goods.Use.MASH)));
    assertThat(no.limit()).isEqualTo("mashTooWet");
    assertThat(no.says().getFirst().band().middle()).isBetween(0.3, 0.5);
    assertThat(planned(grist(malt, goods(Goods.Kind.FRUIT, 0.5, Goods.Use.MASH))))
        .isInstanceOf(Planned.Feasible.class);
    assertThat(planned(grist(malt, goods(Goods.Kind.FRUIT, 3, Goods.Use.FERMENTER))))
        .isNotInstanceOf(RuntimeException.class)
        .matches(p -> !(p instanceof Planned.Impossible i && i.limit().equals("mashTooWet")));
    Analysis damp = new Analysis(0.45, 0.8, 0.015, 5, 0, true);
    Goods wet = new Goods("", "", malt.kind(), malt.massKg(), damp, Goods.Use.MASH);
    assertThat(impossible(grist(wet)).limit()).isEqualTo("mashTooWet");
  }

  @Test
  void asManyRestsStandsAndHopsAsAreAllowedFitIntoOneDayAndOneMoreIsRefused() {
    Hop hop = BITTER.hops().getFirst();
    List<Hop> hops = new ArrayList<>(Collections.nCopies(BrewDay.MOST_HOPS, hop));
    Stand stand = BITTER.stands().getFirst();
    List<Stand> stands = Collections.nCopies(BrewDay.MOST_STANDS, stand);
    double[] restsC = new double[BrewDay.MOST_RESTS];
    for (int i = 0; i < restsC.length; i++) {
      restsC[i] = 60 + 0.5 * i;
    }
    Recipe full = rests(restsC).with(BITTER.grist(), hops);
    full = withStands(full, stands);
    assertThat(planned(full)).isNotNull();
    hops.add(hop);
    assertThat(impossible(full.with(BITTER.grist(), hops)).limit()).isEqualTo("tooMany.hops");
    double[] more = new double[BrewDay.MOST_RESTS + 1];
    Arrays.fill(more, 66);
    assertThat(impossible(rests(more)).limit()).isEqualTo("tooMany.rests");
    List<Stand> tooMany = Collections.nCopies(BrewDay.MOST_STANDS + 1, stand);
    assertThat(impossible(withStands(BITTER, tooMany)).limit()).isEqualTo("tooMany.stands");
  }

  @Test
  void aRestColderThanTheLiquorNamesTheLiquorAndNotTheKettle() {
    Planned.Impossible no = impossible(rests(5));
    assertThat(no.limit()).isEqualTo("liquorTooWarm");
    assertThat(NoteText.plain(no.says())).contains("5.0", "13.0");
  }

  @Test
  void aRestColderThanTheOneBeforeIsAGuardWithWhatItBeginsAt() {
    Planned planned = planned(rests(66, 50));
    Guard guard =
        ((Planned.Feasible) planned)
            .plan().forecast().guards().stream()
                .filter(g -> g.key().equals("restTooWarm.1"))
                .findFirst()
                .orElseThrow();
    assertThat(guard.chanceFrac()).isGreaterThan(0.9);
    assertThat(guard.what().get(1).band().middle()).isBetween(64.0, 68.0);
    List<Guard> rising = ((Planned.Feasible) planned(BITTER)).plan().forecast().guards();
    assertThat(rising).noneMatch(g -> g.key().startsWith("restTooWarm"));
  }

  @Test
  void aStandNearTheBoilGoesOneWayOnEveryDayWhateverItsWeather() {
    for (double standC : new double[] {98.5, 99, 99.5}) {
      Stand near = new Stand(of(standC, Quantity.TEMPERATURE, "°C"), of(20, Quantity.TIME, "min"));
      Planned planned =
          Planner.plan(withStands(BITTER, List.of(near)), RIG, 300, 20, () -> false, _ -> {});
      Plan plan = ((Planned.Feasible) planned).plan();
      boolean cooled = plan.forecast().milestone("standAt.0").isPresent();
      assertThat(cooled).isEqualTo(standC < 99);
      assertThat(plan.steps().stream().map(Plan.PlannedStep::does))
          .contains(cooled ? "Cool and stand at" : "Do not cool; it stands at most at");
    }
  }

  @Test
  void fruitInTheBoilThatMayHoldNoExtractIsInEveryDayAllTheSame() {
    Analysis thin = new Analysis(0.85, 0.02, 0.1, 3, 0, true);
    Goods fruit =
        new Goods(
            "cherries", "", Goods.Kind.FRUIT, of(1, Quantity.MASS, "kg"), thin, Goods.Use.BOIL);
    Goods malt = goods(Goods.Kind.BASE_MALT, 4, Goods.Use.MASH);
    Planned planned = Planner.plan(grist(malt, fruit), RIG, 200, 20, () -> false, _ -> {});
    Forecast forecast = ((Planned.Feasible) planned).plan().forecast();
    assertThat(forecast.milestone("sugarIn")).isPresent();
  }

  @Test
  void hopsThatSoakUpTheKettleNameTheKettleAndNotTheElement() {
    Hop hop = BITTER.hops().getFirst();
    Recipe heavy =
        BITTER.with(BITTER.grist(), List.of(hop.withMass(of(40_000, Quantity.SMALL_MASS, "g"))));
    Recipe free =
        heavy.withAim(
            new Aim(
                heavy.aim().lengthL(),
                heavy.aim().into(),
                heavy.aim().strengthPlato(),
                Optional.empty(),
                ""));
    Planned.Impossible no = impossible(free);
    assertThat(no.limit()).isEqualTo("kettleTooSmall");
  }

  @Test
  void everyGuardSaysWhenByAMilestoneOfItsDayAndWhy() {
    for (Planned planned : List.of(planned(BITTER), planned(rests(66, 50)))) {
      Forecast forecast = ((Planned.Feasible) planned).plan().forecast();
      assertThat(forecast.guards()).isNotEmpty();
      for (Guard guard : forecast.guards()) {
        assertThat(forecast.milestone(guard.byWhen())).as(guard.key()).isPresent();
        assertThat(guard.cause()).as(guard.key()).endsWith(".");
      }
    }
  }
}
