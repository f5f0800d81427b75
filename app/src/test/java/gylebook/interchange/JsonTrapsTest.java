package gylebook.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.recipe.Hop;
import gylebook.recipe.Hop.When;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.units.Quantity;
import java.util.List;
import org.junit.jupiter.api.Test;

/// What the open JSON standard leaves open, each place settled and tried.
///
/// Source of what the standard says: its schema, versions 1.0.2 to 3.0, and its decision records.
class JsonTrapsTest {
  private static final String TIME = "\"time\": {\"value\": 40, \"unit\": \"min\"}";
  private static final String BOIL = "{\"boil_time\": {\"value\": 60, \"unit\": \"min\"}}";
  private static final String YIELD = "{\"fine_grind\": {\"value\": 80, \"unit\": \"%\"}}";

  private static When when(String file) {
    return Foreign.recipe(file).hops().getFirst().when();
  }

  private static double leftMin(String file) {
    return ((When.InBoil) when(file)).leftSec().inside() / 60;
  }

  private static String stepped(String timing) {
    return Foreign.changed(Foreign.json(BOIL, Foreign.file("first-wort.json")), TIME, timing);
  }

  @Test
  void trap01AHopInTheBoilTakesTimeElseDurationAndSaysWhenBothDiffer() {
    String duration = "\"duration\": {\"value\": 40, \"unit\": \"min\"}";
    assertThat(leftMin(Foreign.file("plain.json"))).isEqualTo(40);
    assertThat(leftMin(Foreign.json(TIME, duration))).isEqualTo(40);
    String both = Foreign.json(TIME, "\"time\": {\"value\": 20, \"unit\": \"min\"}, " + duration);
    assertThat(leftMin(both)).isEqualTo(20);
    assertThat(Foreign.remarks(both)).contains("duration: Says 40 min and 'time' says 20 min");
    assertThat(RecipeWriter.json(Foreign.recipe(both)).json()).doesNotContain("duration");
  }

  @Test
  void trap02AHopInAStepThatRampsToTheBoilIsAFirstWortHop() {
    String file = stepped("\"time\": {\"value\": 15, \"unit\": \"min\"}, \"step\": 1");
    assertThat(when(file)).isEqualTo(new When.FirstWort());
    assertThat(Foreign.remarks(file)).contains("15 min is longer than the step it is in");
  }

  @Test
  void trap03AHopInAStepThatEndsBelowTheBoilIsAtAStandOfThatTemperature() {
    String file = stepped("\"time\": {\"value\": 25, \"unit\": \"min\"}, \"step\": 3");
    Recipe recipe = Foreign.recipe(file);
    assertThat(recipe.hops().getFirst().when()).isEqualTo(new When.AtStand(0));
    assertThat(recipe.stands()).hasSize(1);
    assertThat(recipe.stands().getFirst().targetC().inside()).isEqualTo(80);
    assertThat(recipe.stands().getFirst().holdSec().inside()).isEqualTo(25 * 60.0);
    String late = stepped("\"time\": {\"value\": 10, \"unit\": \"min\"}, \"step\": 3");
    assertThat(Foreign.remarks(late)).contains("10 min before the end of the stand");
  }

  @Test
  void trap04AStepThatDoesNotExistIsSaidAndTheWholeBoilIsTaken() {
    for (int step : new int[] {0, -1, 5}) {
      String file = stepped(TIME + ", \"step\": " + step);
      assertThat(leftMin(file)).isEqualTo(40);
      assertThat(Foreign.remarks(file)).contains("Names step " + step + " of 4");
    }
    String without = Foreign.json(TIME, TIME + ", \"step\": 1");
    assertThat(leftMin(without)).isEqualTo(40);
    assertThat(Foreign.remarks(without)).contains("the boil has no steps");
  }

  @Test
  void trap05TimesAreWrittenWholeInTheLargestUnitAndComeBackTheSame() {
    Ledger lost = new Ledger();
    assertThat(JsonAmount.time(450, lost, "").toString())
        .isEqualTo("{\"value\":450,\"unit\":\"sec\"}");
    assertThat(JsonAmount.time(5400, lost, "").toString())
        .isEqualTo("{\"value\":90,\"unit\":\"min\"}");
    assertThat(JsonAmount.time(7200, lost, "").toString())
        .isEqualTo("{\"value\":2,\"unit\":\"hr\"}");
    assertThat(JsonAmount.time(14 * 86_400, lost, "").toString())
        .isEqualTo("{\"value\":2,\"unit\":\"week\"}");
    assertThat(JsonAmount.time(0, lost, "").toString()).isEqualTo("{\"value\":0,\"unit\":\"min\"}");
    assertThat(lost.remarks()).isEmpty();
    assertThat(JsonAmount.time(0.4, lost, "hop").toString()).contains("\"value\":0");
    assertThat(lost.remarks()).hasSize(1);
    String seconds = Foreign.json(TIME, "\"time\": {\"value\": 450, \"unit\": \"sec\"}");
    Recipe once = Foreign.recipe(seconds);
    assertThat(leftMin(RecipeWriter.json(once).json())).isEqualTo(7.5);
  }

  @Test
  void trap06ABareCarbonationIsVolumesUpToFiveAndIsAskedAbove() {
    assertThat(Foreign.recipe(Foreign.file("plain.json")).pack().carbonationRatio().asTyped())
        .isEqualTo("2.3 vol");
    String much = Foreign.json("\"carbonation\": 2.3", "\"carbonation\": 5.4");
    assertThat(Foreign.recipe(much).pack().carbonationRatio().asTyped()).isEqualTo("5.4 g/L");
    assertThat(Foreign.remarks(much)).contains("Are these grams per litre?");
    String absurd = Foreign.json("\"carbonation\": 2.3", "\"carbonation\": 54");
    assertThat(Foreign.refused(absurd)).contains("carbonation").contains("54");
  }

  @Test
  void trap07TextThatOnlyContainsADateIsNoDate() {
    String place = "\"author\": \"nobody\"";
    for (String date :
        new String[] {"brewed 2026-01-02 or so", "2026-13-02", "2026-02-30", "2026-01-02T10:20"}) {
      String file = Foreign.json(place, place + ", \"created\": \"" + date + "\"");
      assertThat(Foreign.remarks(file)).contains("created: '" + date + "' is no date");
      assertThat(RecipeWriter.json(Foreign.recipe(file)).json()).doesNotContain("created");
    }
    for (String date : new String[] {"2026-01-02", "2026-01-02T10:20:30"}) {
      String file = Foreign.json(place, place + ", \"created\": \"" + date + "\"");
      assertThat(Foreign.remarks(file)).doesNotContain("no date");
      assertThat(RecipeWriter.json(Foreign.recipe(file)).json())
          .contains("\"created\" : \"" + date + "\"");
    }
  }

  @Test
  void trap08TheMisspellingsOfTheFormatAreReadAndTheRightOneGoesFirst() {
    String place = "\"name\": \"well water\",";
    String old = "\"flouride\": {\"value\": 1, \"unit\": \"mg/l\"},";
    String right = "\"fluoride\": {\"value\": 0.5, \"unit\": \"mg/l\"},";
    String only = Foreign.json(place, place + old);
    assertThat(Foreign.recipe(only).kept().toString()).contains("flouride");
    String both = Foreign.json(place, place + old + right);
    assertThat(Foreign.remarks(both)).contains("the old spelling of fluoride");
    assertThat(Foreign.recipe(both).kept().keySet())
        .anyMatch(key -> key.endsWith("> flouride"))
        .anyMatch(key -> key.endsWith("> fluoride"));
    String acid =
        Foreign.json("\"carbonation\": 2.3", "\"beer_pH\": {\"value\": 4.2, \"unit\": \"pH\"}");
    assertThat(Foreign.recipe(acid).kept()).containsKey("beer_pH");
  }

  @Test
  void trap09RecordsOfTheSameNameAreToldApartByProductElseNotUsed() {
    String record =
        "{\"name\": \"pale malt\", \"type\": \"grain\", \"product_id\": \"%s\", "
            + "\"yield\": {\"fine_grind\": {\"value\": 80, \"unit\": \"%%\"}}, "
            + "\"color\": {\"value\": 5, \"unit\": \"EBC\"}, "
            + "\"moisture\": {\"value\": %d, \"unit\": \"%%\"}}";
    String two =
        "\"version\": 3, \"fermentables\": ["
            + record.formatted("A", 3)
            + ", "
            + record.formatted("B", 6)
            + "],";
    String unclear = Foreign.json("\"version\": 3,", two);
    assertThat(Foreign.remarks(unclear)).contains("'pale malt' names 2 records of the file");
    double usual = Foreign.recipe(unclear).grist().getFirst().analysis().moistureFrac();
    assertThat(usual).isEqualTo(0.045);
    String marked =
        Foreign.changed(
            unclear,
            "\"grain_group\": \"base\",",
            "\"grain_group\": \"base\", \"product_id\": \"B\",");
    assertThat(Foreign.recipe(marked).grist().getFirst().analysis().moistureFrac())
        .isEqualTo(0.06, within(1e-12));
  }

  @Test
  void trap10DrawingsOfAPackageMayBeOneOrAList() {
    String place = "\"type\": \"keg\"}";
    for (String drawing : new String[] {"{\"text\": \"label\"}", "[{\"text\": \"label\"}]"}) {
      String file = Foreign.json(place, "\"type\": \"keg\", \"graphics\": " + drawing + "}");
      assertThat(Foreign.recipe(file).kept().values()).anyMatch(text -> text.contains("label"));
    }
  }

  @Test
  void trap11OfSeveralYieldsTheFineGrindGoesFirstThenTheCoarseThenThePotential() {
    String coarse = "{\"coarse_grind\": {\"value\": 78, \"unit\": \"%\"}}";
    String both =
        "{\"coarse_grind\": {\"value\": 78, \"unit\": \"%\"}, "
            + "\"fine_coarse_difference\": {\"value\": 1.5, \"unit\": \"%\"}}";
    String potential = "{\"potential\": {\"value\": 1.046, \"unit\": \"sg\"}}";
    assertThat(extract(YIELD)).isEqualTo(0.80, within(1e-12));
    assertThat(extract(coarse)).isEqualTo(0.78, within(1e-12));
    assertThat(extract(both)).isEqualTo(0.795, within(1e-12));
    // Sucrose: a pound in a US gallon gives 46.2 points, the trade's round figure (from memory).
    assertThat(GristRules.extractFrac(1.0462)).isEqualTo(1, within(0.003));
    assertThat(extract(potential)).isGreaterThan(0.99);
    String contradicting =
        YIELD.replace("}}", "}, \"coarse_grind\": {\"value\": 70, \"unit\": \"%\"}, ")
            + "\"fine_coarse_difference\": {\"value\": 1, \"unit\": \"%\"}, "
            + "\"potential\": {\"value\": 1.030, \"unit\": \"sg\"}}";
    assertThat(extract(contradicting)).isEqualTo(0.80, within(1e-12));
    assertThat(Foreign.remarks(Foreign.json(YIELD, contradicting)))
        .contains("do not agree; the fine grind is used")
        .contains("Does not agree with the grind");
  }

  private static double extract(String yield) {
    Recipe recipe = Foreign.recipe(Foreign.json(YIELD, yield));
    return recipe.grist().getFirst().analysis().extractFrac();
  }

  @Test
  void trap12SaltsAreKnownByTheirNameAndTheUsersWordIsKept() {
    Liquor.Addition salt =
        Foreign.recipe(Foreign.file("plain.json")).liquor().additions().getFirst();
    assertThat(salt.agent()).isEqualTo(Liquor.Agent.GYPSUM);
    assertThat(salt.amountNumber().asTyped()).isEqualTo("5 g");
    String chloride = Foreign.json("\"name\": \"gypsum\"", "\"name\": \"Calcium Chloride\"");
    assertThat(Foreign.remarks(chloride)).contains("Taken as the dihydrate");
    String secret = Foreign.json("\"name\": \"gypsum\"", "\"name\": \"uncle's powder\"");
    Liquor.Addition kept = Foreign.recipe(secret).liquor().additions().getFirst();
    assertThat(kept.agent()).isEqualTo(Liquor.Agent.UNKNOWN);
    assertThat(kept.name()).isEqualTo("uncle's powder");
    assertThat(Foreign.remarks(secret)).contains("is not known here; the word is kept");
    String acid = Foreign.json("\"name\": \"gypsum\"", "\"name\": \"lactic acid\"");
    assertThat(Foreign.remarks(acid)).contains("how strong the acid is");
  }

  @Test
  void trap13KeysThatTheFormatLacksAreReportedAndKept() {
    String file =
        Foreign.json(
            "\"form\": \"dry\",",
            "\"form\": \"dry\", \"laboratory\": \"ours\", \"add_to_fermentation_step\": 1,");
    assertThat(Foreign.recipe(file).kept())
        .containsEntry("ingredients > culture_additions 1 > laboratory", "\"ours\"")
        .containsEntry("ingredients > culture_additions 1 > add_to_fermentation_step", "1");
    assertThat(Foreign.remarks(file)).contains("laboratory: Has no place here; it is kept");
    ReadRecipe again = Foreign.read(OwnFiles.recipe(Foreign.recipe(file)));
    assertThat(((ReadRecipe.Understood) again).recipe().kept())
        .isEqualTo(Foreign.recipe(file).kept());
  }

  @Test
  void trap14AnAddressOfASchemaInTheFileIsKeptAndNeverFetched() {
    String file =
        Foreign.json(
            "\"version\": 3,",
            "\"version\": 3, \"$schema\": \"https://schema.invalid/beer.json\",");
    assertThat(Foreign.recipe(file).kept())
        .containsEntry("beerjson > $schema", "\"https://schema.invalid/beer.json\"");
  }

  @Test
  void trap15PpmIsTakenAsMilligramsPerLitreAndSaidSo() {
    String file =
        Foreign.json("{\"value\": 60, \"unit\": \"mg/l\"}", "{\"value\": 60, \"unit\": \"ppm\"}");
    assertThat(Foreign.recipe(file).liquor().ions().calciumMgPerL()).isEqualTo(60);
    assertThat(Foreign.remarks(file)).contains("ppm is taken as mg/L");
    assertThat(Foreign.remarks(Foreign.file("plain.json"))).doesNotContain("ppm");
  }

  @Test
  void trap16BrixIsTakenAsPlatoAndKeepsItsLabel() {
    String place = "\"carbonation\": 2.3";
    String file =
        Foreign.json(place, place + ", \"original_gravity\": {\"value\": 12, \"unit\": \"brix\"}");
    var strength = Foreign.recipe(file).aim().strengthPlato().orElseThrow();
    assertThat(strength.inside()).isEqualTo(12);
    assertThat(strength.asTyped()).isEqualTo("12 °Bx");
    assertThat(strength.unit().quantity()).isEqualTo(Quantity.GRAVITY);
    assertThat(RecipeWriter.json(Foreign.recipe(file)).json()).contains("\"brix\"");
  }

  @Test
  void aDryHopByGravityGoesByTimeAndSaysSo() {
    String file =
        Foreign.json(
            "\"use\": \"add_to_boil\", " + TIME,
            "\"use\": \"add_to_fermentation\","
                + " \"specific_gravity\": {\"value\": 1.018, \"unit\": \"sg\"},"
                + " \"duration\": {\"value\": 3, \"unit\": \"day\"}");
    Hop hop = Foreign.recipe(file).hops().getFirst();
    When.Dry dry = (When.Dry) hop.when();
    assertThat(dry.holdSec().asTyped()).isEqualTo("3 d");
    assertThat(dry.afterSec().inside()).isEqualTo(7 * 86_400.0);
    assertThat(Foreign.remarks(file)).contains("An addition at 1.018 has no place here");
  }

  @Test
  void everyKnownVersionIsReadAndAnyOtherIsRefusedInASentence() {
    for (String version : List.of("1", "1.1", "2.01", "2.06", "3", "3.0")) {
      assertThat(Foreign.recipe(Foreign.json("\"version\": 3", "\"version\": " + version)).name())
          .isEqualTo("Harvest pale");
    }
    for (String version : List.of("9.9", "0", "2.02", "\"three\"", "null")) {
      String file = Foreign.json("\"version\": 3", "\"version\": " + version);
      if (version.equals("null")) {
        assertThat(Foreign.remarks(file)).contains("version: Is not there");
      } else {
        assertThat(Foreign.refused(file)).contains("1, 1.1, 2.01, 2.06 and 3 are read");
      }
    }
  }
}
