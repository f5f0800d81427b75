package gylebook.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.plan.Demo;
import gylebook.recipe.Analysis;
import gylebook.recipe.Ferment;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Hop.When;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.units.Entered;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// Written in the open JSON standard and read again: the same beer, in quantities, not in letters.
class RoundTripTest {
  private static final double RATIO = 1e-9;

  @Test
  void theInventedBeersComeBackTheSame() {
    for (Recipe recipe : List.of(Demo.copperBitter(), Demo.wheatBeer())) {
      assertThere(recipe);
    }
  }

  @Test
  void anyRecipeComesBackTheSameInAllThatTheFormatHolds() {
    InventedRecipes.each(400, recipe -> assertThere(recipe));
  }

  @Test
  void anyRecipeComesBackTheSameFromOurOwnForm() {
    InventedRecipes.each(
        200,
        recipe -> {
          ReadRecipe read = Foreign.read(OwnFiles.recipe(recipe));
          boolean heatedFirst =
              recipe.rests().stream().limit(1).anyMatch(r -> r.rampSec().isPresent());
          List<Remark> remarks =
              heatedFirst
                  ? List.of(new Remark("rests 1 > rampSec", RecipeReader.STRUCK))
                  : List.of();
          assertThat(read).isEqualTo(new ReadRecipe.Understood(recipe, remarks));
        });
  }

  @Test
  void aForeignRecipeComesBackTheSameAfterASecondTrip() {
    for (String file : new String[] {"plain.json", "plain.xml"}) {
      Recipe recipe = Foreign.recipe(Foreign.file(file));
      assertThere(recipe);
      Recipe once = Foreign.recipe(RecipeWriter.json(recipe).json());
      Recipe twice = Foreign.recipe(RecipeWriter.json(once).json());
      assertThat(twice.elsewhere()).isEqualTo(once.elsewhere());
    }
  }

  @Test
  void authorAndStyleOfAForeignRecipeAreWrittenAgain() {
    String json = RecipeWriter.json(Foreign.recipe(Foreign.file("plain.xml"))).json();
    assertThat(json).contains("\"author\" : \"nobody\"").contains("\"type\" : \"ale\"");
  }

  @Test
  void bitternessIsWrittenAsWorkedOutOtherwise() {
    String json = RecipeWriter.json(Demo.copperBitter()).json();
    assertThat(json).contains("\"method\" : \"Other\"").contains("\"version\" : 3");
  }

  @Test
  void numbersAreWrittenAsAPersonWritesThem() {
    assertThat(RecipeWriter.json(Demo.copperBitter()).json()).doesNotContain("E+");
    String powers =
        Foreign.json("\"value\": 20, \"unit\": \"l\"", "\"value\": 2E+1, \"unit\": \"l\"");
    assertThat(Foreign.recipe(powers).aim().lengthL().asTyped()).isEqualTo("20 L");
  }

  @Test
  void anEfficiencyThatCannotBeIsSaidAndNotUsed() {
    String file = Foreign.json("\"value\": 72, \"unit\": \"%\"", "\"value\": 172, \"unit\": \"%\"");
    assertThat(Foreign.recipe(file).elsewhere().brewhouseFrac()).isEmpty();
    assertThat(Foreign.remarks(file)).contains("efficiency: Lies outside 0 to 100 %");
  }

  @Test
  void whatTheFormatCannotHoldIsSaidBeforehand() {
    Written written = RecipeWriter.json(Demo.copperBitter());
    assertThat(written.lost())
        .extracting(Remark::path)
        .contains("wanted", "invented", "efficiency", "mash", "boil", "grist");
  }

  @Test
  void theUnitOfAFileDoesNotChangeTheBeer() {
    Recipe metric = Foreign.recipe(Foreign.file("plain.json"));
    Recipe us =
        Foreign.recipe(
            Foreign.json(
                "{\"value\": 4.2, \"unit\": \"kg\"}",
                "{\"value\": " + 4.2 / 0.45359237 + ", \"unit\": \"lb\"}"));
    near(us.grist().getFirst().massKg(), metric.grist().getFirst().massKg());
    Recipe warm =
        Foreign.recipe(
            Foreign.json(
                "{\"value\": 66, \"unit\": \"C\"}", "{\"value\": 150.8, \"unit\": \"F\"}"));
    near(warm.rests().getFirst().targetC(), metric.rests().getFirst().targetC());
    Recipe gallons =
        Foreign.recipe(
            Foreign.json(
                "{\"value\": 20, \"unit\": \"l\"}",
                "{\"value\": " + 20 / 4.54609 + ", \"unit\": \"igal\"}"));
    near(gallons.aim().lengthL(), metric.aim().lengthL());
  }

  private static void assertThere(Recipe recipe) {
    Written written = RecipeWriter.json(recipe);
    same(recipe, Foreign.recipe(written.json()), written);
  }

  /// The same beer in all that the format holds.
  static void same(Recipe recipe, Recipe again, Written written) {
    assertThat(again.name()).isEqualTo(recipe.name());
    assertThat(again.notes()).isEqualTo(recipe.notes());
    near(again.aim().lengthL(), recipe.aim().lengthL());
    near(again.aim().strengthPlato(), recipe.aim().strengthPlato());
    near(again.aim().bitternessMgPerL(), recipe.aim().bitternessMgPerL());
    goods(recipe.grist(), again.grist());
    near(again.boil().holdSec(), recipe.boil().holdSec());
    assertThat(again.rests()).hasSameSizeAs(recipe.rests());
    for (int i = 0; i < recipe.rests().size(); i++) {
      Rest rest = recipe.rests().get(i);
      assertThat(again.rests().get(i).name()).isEqualTo(rest.name());
      near(again.rests().get(i).targetC(), rest.targetC());
      near(again.rests().get(i).holdSec(), rest.holdSec());
      assertThat(again.rests().get(i).rampSec().map(Entered::inside).orElse(0.0))
          .isCloseTo(rest.rampSec().map(Entered::inside).orElse(0.0), within(1e-6));
    }
    assertThat(again.stands()).hasSameSizeAs(recipe.stands());
    for (int i = 0; i < recipe.stands().size(); i++) {
      near(again.stands().get(i).targetC(), recipe.stands().get(i).targetC());
      near(again.stands().get(i).holdSec(), recipe.stands().get(i).holdSec());
    }
    additions(recipe, again);
    liquor(recipe.liquor(), again.liquor());
    yeast(recipe, again, written);
    near(again.pack().carbonationRatio(), recipe.pack().carbonationRatio());
    assertThat(again.pack().kind()).isEqualTo(recipe.pack().kind());
  }

  private static void goods(List<Goods> was, List<Goods> now) {
    assertThat(now).hasSameSizeAs(was);
    for (int i = 0; i < was.size(); i++) {
      Goods one = was.get(i);
      Goods other = now.get(i);
      assertThat(other.name()).isEqualTo(one.name());
      assertThat(other.lot()).isEqualTo(one.lot());
      assertThat(other.kind()).isEqualTo(one.kind());
      assertThat(other.use()).isEqualTo(one.use());
      near(other.massKg(), one.massKg());
      Analysis wanted = one.analysis();
      near(other.analysis().extractFrac(), wanted.extractFrac());
      near(other.analysis().moistureFrac(), wanted.moistureFrac());
      near(other.analysis().colourEbc(), wanted.colourEbc());
    }
  }

  private static void additions(Recipe was, Recipe now) {
    assertThat(now.hops()).hasSameSizeAs(was.hops());
    for (int i = 0; i < was.hops().size(); i++) {
      Hop one = was.hops().get(i);
      Hop other = now.hops().get(i);
      assertThat(other.name()).isEqualTo(one.name());
      assertThat(other.lot()).isEqualTo(one.lot());
      assertThat(other.form()).isEqualTo(one.form());
      near(other.massG(), one.massG());
      near(other.alphaFrac(), one.alphaFrac());
      when(one.when(), other.when());
    }
    assertThat(now.others()).hasSameSizeAs(was.others());
    for (int i = 0; i < was.others().size(); i++) {
      Other one = was.others().get(i);
      Other other = now.others().get(i);
      assertThat(other.name()).isEqualTo(one.name());
      assertThat(other.kind()).isEqualTo(one.kind());
      near(other.amountNumber(), one.amountNumber());
      when(one.when(), other.when());
    }
  }

  private static void when(When was, When now) {
    switch (was) {
      case When.InBoil(Entered leftSec) -> near(((When.InBoil) now).leftSec(), leftSec);
      case When.Dry(Entered afterSec, Entered holdSec) -> {
        near(((When.Dry) now).afterSec(), afterSec);
        near(((When.Dry) now).holdSec(), holdSec);
      }
      default -> assertThat(now).isEqualTo(was);
    }
  }

  private static void liquor(Liquor was, Liquor now) {
    assertThat(now.name()).isEqualTo(was.name());
    assertThat(now.ions()).isEqualTo(was.ions());
    assertThat(now.additions()).hasSameSizeAs(was.additions());
    for (int i = 0; i < was.additions().size(); i++) {
      assertThat(now.additions().get(i).name()).isEqualTo(was.additions().get(i).name());
      assertThat(now.additions().get(i).agent()).isEqualTo(was.additions().get(i).agent());
      assertThat(now.additions().get(i).into()).isEqualTo(was.additions().get(i).into());
      near(now.additions().get(i).amountNumber(), was.additions().get(i).amountNumber());
    }
  }

  private static void yeast(Recipe was, Recipe now, Written written) {
    assertThat(now.yeast().name()).isEqualTo(was.yeast().name());
    assertThat(now.yeast().form()).isEqualTo(was.yeast().form());
    near(now.yeast().amountNumber(), was.yeast().amountNumber());
    near(now.yeast().attenuationFrac(), was.yeast().attenuationFrac());
    if (written.lost().stream().noneMatch(lost -> lost.says().contains("itching"))
        && written.lost().stream().noneMatch(lost -> lost.says().contains("pitching"))) {
      near(now.yeast().pitchC(), was.yeast().pitchC());
    }
    List<Ferment.Step> steps = was.ferment().steps();
    assertThat(now.ferment().steps()).hasSameSizeAs(steps);
    for (int i = 0; i < steps.size(); i++) {
      Ferment.Step step = now.ferment().steps().get(i);
      assertThat(step.name()).isEqualTo(steps.get(i).name());
      assertThat(step.freeRise()).isEqualTo(steps.get(i).freeRise());
      near(step.startC(), steps.get(i).startC());
      near(step.endC(), steps.get(i).endC());
      near(step.holdSec(), steps.get(i).holdSec());
    }
  }

  @Test
  void theTimeOfHeatingToARestIsReadAndWritten() {
    String step =
        "\"step_time\": {\"value\": 1, \"unit\": \"hr\"}, \"ramp_time\": {\"value\": 12, \"unit\": \"min\"}";
    String first = Foreign.json("\"step_time\": {\"value\": 1, \"unit\": \"hr\"}", step);
    assertThat(Foreign.recipe(first).rests().getFirst().rampSec().orElseThrow().inside())
        .isEqualTo(720);
    assertThat(Foreign.remarks(first)).contains("The first rest is struck");
    String two =
        Foreign.changed(
            first,
            "\"mash_steps\": [",
            "\"mash_steps\": [{\"name\": \"cool\", \"type\": \"infusion\", \"step_temperature\":"
                + " {\"value\": 50, \"unit\": \"C\"}, \"step_time\": {\"value\": 10, \"unit\":"
                + " \"min\"}},");
    assertThat(Foreign.remarks(two))
        .doesNotContain("The first rest is struck")
        .doesNotContain("ramp");
    String written = RecipeWriter.json(Foreign.recipe(two)).json();
    assertThat(Foreign.recipe(written).rests().get(1).rampSec().orElseThrow().inside())
        .isCloseTo(720, within(1e-6));
    String xml = Foreign.xml("<STEP_TIME>60.0<", "<RAMP_TIME>9.0</RAMP_TIME><STEP_TIME>60.0<");
    assertThat(Foreign.recipe(xml).rests().getFirst().rampSec().orElseThrow().inside())
        .isEqualTo(540);
    assertThat(Foreign.remarks(xml)).contains("The first rest is struck");
  }

  private static void near(Optional<Entered> now, Optional<Entered> was) {
    assertThat(now.isPresent()).isEqualTo(was.isPresent());
    if (was.isPresent()) {
      near(now.orElseThrow(), was.orElseThrow());
    }
  }

  private static void near(Entered now, Entered was) {
    assertThat(now.unit().quantity()).isEqualTo(was.unit().quantity());
    near(now.inside(), was.inside());
  }

  private static void near(double now, double was) {
    double most = RATIO * Math.max(1, Math.abs(was));
    assertThat(Math.abs(now - was)).as(now + " and " + was).isLessThanOrEqualTo(most);
  }
}
