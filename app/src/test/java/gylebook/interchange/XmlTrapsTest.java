package gylebook.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.recipe.Hop.When;
import gylebook.recipe.Recipe;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/// What the open XML standard version 1 leaves open, each place settled and tried.
///
/// Source of what the standard says: the tables of its text.
class XmlTrapsTest {
  private static final String HOP = "<USE>Boil</USE><TIME>60.0</TIME>";
  private static final String GRAIN = "<TYPE>Grain</TYPE>";

  private static When when(String hop) {
    return Foreign.recipe(Foreign.xml(HOP, hop)).hops().getFirst().when();
  }

  private static String misc(String inner) {
    return Foreign.xml(
        "<MISCS/>", "<MISCS><MISC><VERSION>1</VERSION><TIME>10</TIME>" + inner + "</MISC></MISCS>");
  }

  @Test
  void trap17BrokenTagsAreRefusedAndBothSpellingsAreRead() {
    String broken = Foreign.xml("<MAGNESIUM>8.0</MAGNESIUM>", "<MAGNESIUM>8.0</MAGNESIUMS>");
    assertThat(Foreign.refused(broken)).contains("not whole XML at line").contains("not mended");
    String open =
        Foreign.xml("<STEP_TIME>60.0</STEP_TIME>", "<RAMP_TIME>5<STEP_TIME>60</STEP_TIME>");
    assertThat(Foreign.refused(open)).contains("not whole XML at line");
    for (String name : new String[] {"IBU_GAL_PER_LB", "IBU_GAL_PER_POUND"}) {
      String file = Foreign.xml(GRAIN, GRAIN + "<" + name + ">3.5</" + name + ">");
      assertThat(Foreign.recipe(file).kept())
          .containsEntry("FERMENTABLE 1 > IBU_GAL_PER_LB", "3.5");
    }
    for (String name : new String[] {"TASTE_RATING", "RATING"}) {
      String place = "<CARBONATION>";
      String file = Foreign.xml(place, "<" + name + ">40</" + name + ">" + place);
      assertThat(Foreign.recipe(file).kept()).containsEntry("TASTE_RATING", "40");
    }
  }

  @Test
  void trap18TheTimeOfADryHopIsMinutes() {
    When.Dry dry = (When.Dry) when("<USE>Dry Hop</USE><TIME>10080.0</TIME>");
    assertThat(dry.holdSec().inside()).isEqualTo(7 * 86_400.0);
    assertThat(dry.holdSec().unit().symbol()).isEqualTo("d");
    assertThat(dry.afterSec().inside()).isEqualTo(7 * 86_400.0);
  }

  @Test
  void trap19TheFlagSaysWhetherAnAmountIsWeighedAndWithoutItOneIsAsked() {
    String spice = "<NAME>coriander</NAME><TYPE>Spice</TYPE><USE>Boil</USE><AMOUNT>0.02</AMOUNT>";
    String weighed = misc(spice + "<AMOUNT_IS_WEIGHT>TRUE</AMOUNT_IS_WEIGHT>");
    String measured = misc(spice + "<AMOUNT_IS_WEIGHT>FALSE</AMOUNT_IS_WEIGHT>");
    assertThat(quantity(weighed)).isEqualTo(Quantity.MASS);
    assertThat(quantity(measured)).isEqualTo(Quantity.VOLUME);
    assertThat(quantity(misc(spice))).isEqualTo(Quantity.VOLUME);
    assertThat(Foreign.remarks(misc(spice))).contains("Does not say whether it is weighed");
    String salt =
        misc("<NAME>gypsum</NAME><TYPE>Water Agent</TYPE><USE>Mash</USE><AMOUNT>0.005</AMOUNT>");
    assertThat(Foreign.recipe(salt).liquor().additions().getFirst().amountNumber().asTyped())
        .isEqualTo("5 g");
    assertThat(Foreign.remarks(salt)).contains("Is it 0.005 kg or 0.005 L?");
    String absurd = misc("<NAME>moss</NAME><TYPE>Fining</TYPE><USE>Boil</USE><AMOUNT>5</AMOUNT>");
    assertThat(Foreign.remarks(absurd)).contains("Is it 5.0 kg or 5.0 L?");
  }

  private static Quantity quantity(String file) {
    return Foreign.recipe(file).others().getFirst().amountNumber().unit().quantity();
  }

  @Test
  void aDecimalCommaIsReadAndSaid() {
    String comma =
        misc("<NAME>moss</NAME><TYPE>Fining</TYPE><USE>Boil</USE><AMOUNT>0,005</AMOUNT>");
    String point =
        misc("<NAME>moss</NAME><TYPE>Fining</TYPE><USE>Boil</USE><AMOUNT>0.005</AMOUNT>");
    assertThat(Foreign.recipe(comma).others()).isEqualTo(Foreign.recipe(point).others());
    assertThat(Foreign.remarks(comma)).contains("Is written with a comma; read as 0.005.");
    assertThat(Foreign.remarks(point)).doesNotContain("comma");
  }

  @Test
  void trap20YeastIsWeighedOrMeasuredAndNeverCountedIntoPackets() {
    Recipe recipe = Foreign.recipe(Foreign.file("plain.xml"));
    assertThat(recipe.yeast().amountNumber().asTyped()).isEqualTo("0.0115 kg");
    assertThat(Foreign.remarks(Foreign.file("plain.xml"))).contains("knows no packets");
    String litres = Foreign.xml("<AMOUNT_IS_WEIGHT>TRUE</AMOUNT_IS_WEIGHT>", "");
    assertThat(Foreign.recipe(litres).yeast().amountNumber().unit().quantity())
        .isEqualTo(Quantity.VOLUME);
    String json = RecipeWriter.json(recipe).json();
    assertThat(Foreign.recipe(json).yeast().amountNumber().inside()).isEqualTo(0.0115);
  }

  @Test
  void trap21AnAromaHopStandsInHotWortAndIsNotTakenAsWithoutBitterness() {
    Recipe recipe = Foreign.recipe(Foreign.xml(HOP, "<USE>Aroma</USE><TIME>20.0</TIME>"));
    assertThat(recipe.hops().getFirst().when()).isEqualTo(new When.AtStand(0));
    assertThat(recipe.hops().getFirst().alphaFrac().inside()).isEqualTo(0.05, within(1e-12));
    assertThat(recipe.stands().getFirst().holdSec().inside()).isEqualTo(1200);
    assertThat(recipe.stands().getFirst().targetC().inside()).isEqualTo(100);
    assertThat(when("<USE>Aroma</USE><TIME>0</TIME>")).isEqualTo(new When.FlameOut());
    assertThat(when("<USE>First Wort</USE><TIME>60</TIME>")).isEqualTo(new When.FirstWort());
  }

  @Test
  void trap22TheFlagOfAFormulaIsKeptAndEvaporationIsTurnedIntoLitresApproximately() {
    String place = "<BREWER>";
    String file =
        Foreign.xml(
            place,
            "<EQUIPMENT><NAME>pot</NAME><VERSION>1</VERSION><BATCH_SIZE>18</BATCH_SIZE>"
                + "<BOIL_SIZE>22</BOIL_SIZE><EVAP_RATE>10</EVAP_RATE>"
                + "<CALC_BOIL_VOLUME>TRUE</CALC_BOIL_VOLUME></EQUIPMENT>"
                + place);
    Recipe recipe = Foreign.recipe(file);
    assertThat(recipe.elsewhere().evaporationLPerHr().orElseThrow()).isEqualTo(2, within(1e-9));
    assertThat(recipe.kept()).containsEntry("EQUIPMENT > CALC_BOIL_VOLUME", "TRUE");
    assertThat(recipe.elsewhere().preBoilL().orElseThrow()).isEqualTo(22);
    assertThat(Foreign.remarks(file)).contains("approximately");
  }

  @Test
  void trap23ADateIsWordsAndStagesThatDisagreeAreSaid() {
    String file =
        Foreign.changed(
            Foreign.xml("<BREWER>", "<DATE>last Tuesday</DATE><BREWER>"),
            "<FERMENTATION_STAGES>1<",
            "<FERMENTATION_STAGES>3<");
    assertThat(Foreign.recipe(file).kept()).containsEntry("DATE", "last Tuesday");
    assertThat(Foreign.remarks(file)).contains("FERMENTATION_STAGES: Says 3, but 1");
    assertThat(Foreign.recipe(file).ferment().steps()).hasSize(1);
  }

  @Test
  void trap24TheMarkThenTheHeaderThenTheBytesSayWhichLettersTheyAre() {
    String named = Foreign.xml("Cellar brown", "Weißbräu “dark”");
    byte[] utf = named.getBytes(StandardCharsets.UTF_8);
    byte[] curly = named.getBytes(Charset.forName("windows-1252"));
    byte[] marked = ("\ufeff" + named).getBytes(StandardCharsets.UTF_16LE);
    for (byte[] file : new byte[][] {utf, curly, marked}) {
      ReadRecipe read = RecipeReader.read(file, "a file");
      assertThat(read).isInstanceOf(ReadRecipe.Understood.class);
      assertThat(((ReadRecipe.Understood) read).recipe().name()).isEqualTo("Weißbräu “dark”");
    }
    byte[] latin = Foreign.xml("Cellar brown", "Weißbräu").getBytes(StandardCharsets.ISO_8859_1);
    ReadRecipe read = RecipeReader.read(latin, "a file");
    assertThat(((ReadRecipe.Understood) read).recipe().name()).isEqualTo("Weißbräu");
    assertThat(((ReadRecipe.Understood) read).remarks())
        .noneMatch(remark -> remark.path().equals("file"));
  }

  @Test
  void aHeaderThatCannotBeTrueIsNotBelieved() {
    String said = Foreign.xml("ISO-8859-1", "utf-16").replace("Cellar brown", "Weißbräu");
    for (Charset real : List.of(StandardCharsets.UTF_8, Charset.forName("windows-1252"))) {
      ReadRecipe read = RecipeReader.read(said.getBytes(real), "a file");
      assertThat(read).isInstanceOf(ReadRecipe.Understood.class);
      assertThat(((ReadRecipe.Understood) read).recipe().name()).isEqualTo("Weißbräu");
      assertThat(((ReadRecipe.Understood) read).remarks())
          .anyMatch(remark -> remark.says().startsWith("The header says utf-16, but"));
    }
  }

  @Test
  void aTagThatStandsTwiceIsReadOnceAndSaidSo() {
    String place = "<BOIL_TIME>60.0</BOIL_TIME>";
    String twice = Foreign.xml(place, place + "<BOIL_TIME>90</BOIL_TIME>");
    assertThat(Foreign.recipe(twice).boil().holdSec().inside()).isEqualTo(3600);
    assertThat(Foreign.remarks(twice))
        .contains("BOIL_TIME: Stands more than once; the first is read, '90' is kept")
        .doesNotContain("BOIL_TIME: Has no place here");
    assertThat(Foreign.recipe(twice).kept()).containsEntry("BOIL_TIME", "90");
  }

  @Test
  void whatNoTagAloneShowsIsSaid() {
    String file = Foreign.file("plain.xml");
    assertThat(Foreign.remarks(file)).doesNotContain("Were they grams?", "kills yeast");
    String heavy = file.replaceFirst("(<HOP>[\\s\\S]*?<AMOUNT>)[0-9.]+", "$140");
    assertThat(Foreign.remarks(heavy)).contains("Were they grams?");
    String hot = file.replaceFirst("<PRIMARY_TEMP>[0-9.]+", "<PRIMARY_TEMP>95");
    assertThat(Foreign.remarks(hot)).contains("Pitching at 95 °C kills yeast");
  }

  @Test
  void trap25AMashMayBeAbsentForExtractAndSizesThatDifferAreSaid() {
    String start = "<MASH>";
    String file = Foreign.file("plain.xml");
    int from = file.indexOf(start);
    int to = file.indexOf("</MASH>") + "</MASH>".length();
    String mash = file.substring(from, to);
    String without = file.replace(mash, "");
    assertThat(Foreign.remarks(without)).contains("MASH: Is not there");
    String extract = without.replace("<TYPE>All Grain</TYPE>", "<TYPE>Extract</TYPE>");
    assertThat(Foreign.remarks(extract)).doesNotContain("MASH: Is not there");
    for (String set : new String[] {"MASHS", "MASHES"}) {
      String within = file.replace(mash, "<" + set + ">" + mash + "</" + set + ">");
      assertThat(Foreign.recipe(within).rests()).hasSize(1);
    }
    String sizes =
        Foreign.xml(
            "<BREWER>",
            "<EQUIPMENT><NAME>pot</NAME><VERSION>1</VERSION><BATCH_SIZE>25</BATCH_SIZE>"
                + "<BOIL_SIZE>22</BOIL_SIZE></EQUIPMENT><BREWER>");
    assertThat(Foreign.remarks(sizes)).contains("Is 25.0 L, but the recipe says 18.0 L");
  }

  @Test
  void trap26ColourIsLovibondForGrainAndSrmForLiquidExtract() {
    Unit lovibond = Unit.known(Quantity.COLOUR, "°L");
    Unit srm = Unit.known(Quantity.COLOUR, "SRM");
    assertThat(colourEbc(GRAIN)).isEqualTo(lovibond.toInside(3), within(1e-12));
    assertThat(colourEbc("<TYPE>Extract</TYPE>")).isEqualTo(srm.toInside(3), within(1e-12));
    assertThat(colourEbc("<TYPE>Dry Extract</TYPE>"))
        .isEqualTo(lovibond.toInside(3), within(1e-12));
  }

  private static double colourEbc(String type) {
    return Foreign.recipe(Foreign.xml(GRAIN, type)).grist().getFirst().analysis().colourEbc();
  }

  @Test
  void trap27TagsMayStandInAnyOrderAndWholeNumbersAreNotAskedFor() {
    String moved =
        Foreign.changed(
            Foreign.xml("<NAME>Cellar brown</NAME>", ""),
            "</RECIPE>",
            "<NAME>Cellar brown</NAME></RECIPE>");
    assertThat(Foreign.recipe(moved)).isEqualTo(Foreign.recipe(Foreign.file("plain.xml")));
    String decimal = Foreign.xml("<BOIL_TIME>60.0</BOIL_TIME>", "<BOIL_TIME>62.5</BOIL_TIME>");
    assertThat(Foreign.recipe(decimal).boil().holdSec().inside()).isEqualTo(3750);
  }

  @Test
  void trap28DocumentTypesAndOutsideEntitiesAreNotReadAtAll() {
    String head = "<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?>";
    String outside =
        Foreign.xml(head, head + "<!DOCTYPE R [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>");
    assertThat(Foreign.refused(outside.replace("Cellar brown", "&x;")))
        .contains("document type or entities");
    String remote = Foreign.xml(head, head + "<!DOCTYPE R SYSTEM \"http://dtd.invalid/x.dtd\">");
    assertThat(Foreign.refused(remote)).contains("document type or entities");
  }

  @Test
  void displayTagsAreNotTakenAsFigures() {
    String file = Foreign.xml("<BREWER>", "<EST_OG>1.044 SG</EST_OG><IBU>31</IBU><BREWER>");
    assertThat(Foreign.recipe(file).aim().strengthPlato()).isEmpty();
    assertThat(Foreign.recipe(file).aim().bitternessMgPerL()).isEmpty();
    assertThat(Foreign.recipe(file).kept()).containsEntry("EST_OG", "1.044 SG");
  }

  @Test
  void anotherVersionIsRefusedInASentence() {
    String file =
        Foreign.xml("<NAME>Cellar brown</NAME>\n    <VERSION>1</VERSION>", "<VERSION>2</VERSION>");
    assertThat(Foreign.refused(file)).contains("version 2").contains("only version 1 is read");
  }
}
