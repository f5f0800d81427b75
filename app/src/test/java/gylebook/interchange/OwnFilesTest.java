package gylebook.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Demo;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.rig.Chiller;
import gylebook.rig.DemoRigs;
import gylebook.rig.Newcomer;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

class OwnFilesTest {
  private static String refused(Reading<?> reading) {
    assertThat(reading).isInstanceOf(Reading.NotUnderstood.class);
    return ((Reading.NotUnderstood<?>) reading).sentence();
  }

  @Test
  void aRigReadsBackAsItWasWritten() {
    for (Rig rig : new Rig[] {DemoRigs.household(), DemoRigs.smallFlat()}) {
      assertThat(OwnFiles.readRig(OwnFiles.rig(rig))).isEqualTo(new Reading.Understood<>(rig));
    }
  }

  @Test
  void anyRigReadsBackAsItWasWritten() {
    RandomGenerator luck = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
    for (int i = 0; i < 200; i++) {
      Newcomer newcomer =
          new Newcomer(
              "rig № " + i + " \"quoted\"",
              luck.nextDouble(5, 500),
              luck.nextDouble(300, 30_000),
              luck.nextDouble(90, 500),
              luck.nextDouble(90, 500),
              luck.nextDouble(-400, 5000),
              luck.nextBoolean(),
              luck.nextDouble(0.1, 20),
              luck.nextDouble(0.004, 0.05),
              luck.nextBoolean(),
              luck.nextBoolean(),
              Probe.Place.values()[luck.nextInt(Probe.Place.values().length)],
              Chiller.Kind.values()[luck.nextInt(Chiller.Kind.values().length)],
              luck.nextDouble(2, 1000),
              luck.nextDouble(1, 1000));
      Rig rig = newcomer.rig();
      assertThat(OwnFiles.readRig(OwnFiles.rig(rig))).isEqualTo(new Reading.Understood<>(rig));
    }
  }

  @Test
  void aRecipeReadsBackAsItWasWritten() {
    for (Recipe recipe : new Recipe[] {Demo.copperBitter(), Demo.wheatBeer()}) {
      assertThat(OwnFiles.readRecipe(OwnFiles.recipe(recipe)))
          .isEqualTo(new Reading.Understood<>(recipe));
    }
  }

  @Test
  void aRecipeOfAnOlderEditionSaysNothingOfMeterOrAgeAndIsReadAllTheSame() {
    Recipe recipe = Demo.copperBitter();
    String older =
        OwnFiles.recipe(recipe)
            .replaceAll(",\\s*\"(meterUsPerCm|agedSec|storedC|colourEbc|rampSec)\" : null", "")
            .replaceAll(",\\s*\"wrap\" : \"SEALED\"", "")
            .replaceAll(",\\s*\"lid\" : \"OFF\"", "")
            .replaceAll(",\\s*\"doneBy\" : \"\"", "");
    assertThat(older)
        .doesNotContain("meterUsPerCm", "agedSec", "storedC", "wrap", "doneBy", "rampSec", "lid");
    assertThat(OwnFiles.readRecipe(older)).isEqualTo(new Reading.Understood<>(recipe));
    String ajar = OwnFiles.recipe(recipe).replace("\"lid\" : \"OFF\"", "\"lid\" : \"AJAR\"");
    assertThat(((Reading.NotUnderstood<Recipe>) OwnFiles.readRecipe(ajar)).sentence())
        .contains("boil > lid")
        .contains("no lid is 'AJAR'");
  }

  @Test
  void aMeterAndTheAgeOfHopsAreReadBackAsTyped() {
    Recipe recipe = Demo.copperBitter();
    Liquor water = recipe.liquor();
    Entered read = new Entered(22.5, Unit.known(Quantity.CONDUCTIVITY, "µS/cm"), "22,5 us");
    Hop fresh = recipe.hops().getFirst();
    Entered age = new Entered(15_778_476, Unit.known(Quantity.TIME, "mo"), "6 months");
    Hop old =
        new Hop(
            fresh.name(),
            fresh.lot(),
            fresh.form(),
            fresh.massG(),
            fresh.alphaFrac(),
            fresh.when(),
            Optional.of(age),
            Optional.empty(),
            Hop.Wrap.LOOSE);
    Recipe more =
        recipe
            .with(recipe.grist(), List.of(old))
            .withLiquor(
                new Liquor(water.name(), water.ions(), water.additions(), Optional.of(read)));
    assertThat(OwnFiles.readRecipe(OwnFiles.recipe(more)))
        .isEqualTo(new Reading.Understood<>(more));
    String tin = OwnFiles.recipe(more).replace("\"LOOSE\"", "\"TIN\"");
    assertThat(refused(OwnFiles.readRecipe(tin))).contains("wrapped 'TIN'");
  }

  @Test
  void aFileThatWasCutOffIsRefusedWithItsPlace() {
    String whole = OwnFiles.recipe(Demo.copperBitter());
    assertThat(refused(OwnFiles.readRecipe(whole.substring(0, whole.length() / 2))))
        .contains("not whole JSON at line");
  }

  @Test
  void aKeyTwiceIsRefused() {
    String twice = OwnFiles.rig(DemoRigs.household()).replaceFirst("\\{", "{\"name\":\"other\",");
    assertThat(refused(OwnFiles.readRig(twice))).contains("name");
  }

  @Test
  void aForeignKeyAndAForeignUnitAreNamed() {
    String rig = OwnFiles.rig(DemoRigs.household()).replaceFirst("\\{", "{\"colour\":1,");
    assertThat(refused(OwnFiles.readRig(rig))).contains("colour");
    String recipe =
        OwnFiles.recipe(Demo.copperBitter()).replace("\"unit\" : \"L\"", "\"unit\" : \"ell\"");
    assertThat(refused(OwnFiles.readRecipe(recipe))).contains("'ell' is no unit of volume");
  }

  @Test
  void whatIsNoNumberOrAbsurdIsRefused() {
    String rig = OwnFiles.rig(DemoRigs.household());
    assertThat(
            refused(OwnFiles.readRig(rig.replaceFirst("\"value\" : [0-9.]+", "\"value\" : NaN"))))
        .contains("rig file");
    String recipe = OwnFiles.recipe(Demo.copperBitter());
    assertThat(
            refused(
                OwnFiles.readRecipe(
                    recipe.replaceFirst("\"inside\" : 20.0", "\"inside\" : -20.0"))))
        .contains("-20.0");
  }

  @Test
  void emptyHugeAndForeignFilesGetASentence() {
    assertThat(refused(OwnFiles.readRig(""))).contains("rig file");
    assertThat(refused(OwnFiles.readRig("null"))).isNotEmpty();
    assertThat(refused(OwnFiles.readRig("[".repeat(5000)))).isNotEmpty();
    assertThat(refused(OwnFiles.readRig(" ".repeat(4_000_001)))).contains("4000001");
  }

  /// What a file says and the plan does not use is told before it is kept.
  @Test
  void aFirstRestThatIsSaidToBeHeatedToIsRemarkedOn() {
    Recipe bitter = Demo.copperBitter();
    Rest first = bitter.rests().getFirst();
    Entered slow = Entered.of(600, Unit.known(Quantity.TIME, "s"));
    List<Rest> rests = new ArrayList<>(bitter.rests());
    rests.set(0, new Rest(first.name(), first.targetC(), first.holdSec(), Optional.of(slow)));
    String plain = OwnFiles.recipe(bitter);
    String told = OwnFiles.recipe(bitter.withRests(rests));

    assertThat(remarks(told)).contains("The first rest is struck");
    assertThat(remarks(plain)).doesNotContain("struck");
  }

  private static String remarks(String file) {
    ReadRecipe read = RecipeReader.read(file.getBytes(StandardCharsets.UTF_8), "a file");
    return ((ReadRecipe.Understood) read).remarks().toString();
  }
}
