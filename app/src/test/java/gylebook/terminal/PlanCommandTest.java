package gylebook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.testing.Checkout;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlanCommandTest {
  private static final PlanSources DEMOS =
      new PlanSources() {
        @Override
        public Found recipe(String name) throws Unreadable {
          return switch (name) {
            case "demo" -> new Found(Demo.copperBitter(), List.of());
            case "demo-wheat" -> new Found(Demo.wheatBeer(), List.of("a remark to show"));
            default -> throw new Unreadable("There is no recipe '" + name + "'.");
          };
        }

        @Override
        public Rig rig(String name) {
          return name.equals("flat") ? DemoRigs.smallFlat() : DemoRigs.household();
        }
      };

  private record Said(int code, String out, String err) {}

  private static Said said(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = new CommandLine(new PlanCommand(DEMOS));
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    int code = line.execute(words);
    return new Said(code, out.toString(), err.toString());
  }

  @Test
  void theDemoIsForecastInMetricUnits() {
    Said said = said("demo", "--days", "100");
    assertThat(said.code()).isZero();
    assertThat(said.err()).isEmpty();
    assertThat(said.out())
        .contains("(invented)")
        .contains("Cold liquor into the kettle")
        .contains("What could go wrong")
        .contains("it never switches anything")
        .doesNotContain("NaN");
  }

  @Test
  void aFlatInTheUnitedStatesReadsItsOwnUnits() {
    Said said = said("demo-wheat", "--days", "60", "--units", "us");
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("US gal").contains("°F").doesNotContain("°C");
  }

  @Test
  void theJsonIsWhatItsSchemaSays() throws IOException {
    JsonNode written = written(said("demo-wheat", "--days", "60", "--json"));
    assertThat(written.get("plan").get("days").asInt()).isEqualTo(60);
    assertThat(written.has("liquor")).isFalse();
  }

  /// What it says, held against the schema.
  private static JsonNode written(Said said) throws IOException {
    String schema =
        Files.readString(
            Checkout.root().resolve("docs/schema/forecast.schema.json"), StandardCharsets.UTF_8);
    Schema checked =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schema);
    JsonNode written = JsonMapper.builder().build().readTree(said.out());
    assertThat(checked.validate(written)).isEmpty();
    return written;
  }

  @Test
  void theJsonHoldsTheAmountsForAWantedLiquor() throws IOException {
    Said said =
        said(
            "demo",
            "--days",
            "60",
            "--json",
            "--liquor",
            "calcium 100, magnesium 90, pH 5.3",
            "--house",
            "gypsum, calcium chloride, lactic acid 80 %");
    assertThat(said.err()).isEmpty();
    JsonNode liquor = written(said).get("liquor");
    assertThat(liquor.get("wanted").get("calciumMgPerL").asDouble()).isEqualTo(100);
    assertThat(liquor.get("wanted").get("sodiumMgPerL").isNull()).isTrue();
    assertThat(liquor.get("mash").get("mashPh").asDouble()).isBetween(5.25, 5.35);
    assertThat(liquor.get("missed").get(0).asString()).contains("magnesium");
    assertThat(liquor.get("caution").asString()).contains("goggles");
    boolean acid = false;
    for (JsonNode addition : liquor.get("additions")) {
      acid |= addition.get("name").asString().equals("lactic acid 80 %");
      double amount = addition.path("massG").asDouble(addition.path("volumeMl").asDouble(0));
      assertThat(amount * 10).isGreaterThan(0).isEqualTo(Math.rint(amount * 10));
    }
    assertThat(acid).isTrue();
  }

  @Test
  void theSentencesOfTheJsonHaveUnitsAndRoundedFigures() {
    String json = said("demo", "--days", "200", "--json").out();
    assertThat(json)
        .containsPattern("At its hottest the pump lacks [0-9.]+ cm of suction head\\.")
        .doesNotContainPattern("\"(what|says)\" : \"[^\"]*[0-9]\\.[0-9]{4}");
    String weak = said("demo", "--rig", "flat", "--days", "20", "--json").out();
    assertThat(weak).containsPattern("\"says\" : \"[^\"]* only [0-9.]+ cm stay below the rim");
    String measurable = json.substring(json.indexOf("\"worthMeasuring\""), json.indexOf("stepSec"));
    assertThat(measurable).contains("shareFrac").doesNotContain("slope");
  }

  @Test
  void whyIsSaidOfEveryFigureWhenAsked() {
    String plain = said("demo", "--days", "100").out();
    String why = said("demo", "--days", "100", "--why").out();
    assertThat(plain).doesNotContain("Why these numbers");
    assertThat(why).startsWith(plain);
    String said = why.substring(plain.length());
    assertThat(said.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    assertThat(said.replaceAll("\\s+", " "))
        .containsPattern(
            "wort in the fermenter, at 20 C: [0-9.]+ L by mass balance of the day from liquor;"
                + " .*? moved most by how fast the open kettle steams [0-9]+ %.*? source:"
                + " mass-balance, bubnik-1995");
    long sourced = said.lines().filter(line -> line.strip().startsWith("source: ")).count();
    assertThat(sourced).isGreaterThan(50);
  }

  @Test
  void theSameSeedWritesTheSameText() {
    assertThat(said("demo", "--days", "50", "--json").out())
        .isEqualTo(said("demo", "--days", "50", "--json").out());
  }

  @Test
  void aBeerTooBigForTheRigSaysWhichLimitBindsAndWhatCanBeBrewed() {
    Said said = said("demo", "--rig", "flat", "--days", "60");
    assertThat(said.code()).isEqualTo(1);
    assertThat(said.out())
        .startsWith("It cannot be brewed as wanted.")
        .containsPattern("The nearest that can be brewed: [0-9.]+ L into the fermenter\\.");
  }

  @Test
  void whatIsNotKnownIsRefusedInASentence() {
    Said said = said("porter.json");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("'porter.json'").doesNotContain("Exception");
    assertThat(said("demo", "--days", "0").err().toLowerCase(Locale.ROOT)).contains("--days is 0");
  }

  @Test
  void theWallSheetIsWrittenBesideTheReport(@TempDir Path folder) throws IOException {
    Path sheet = folder.resolve("sheet.html");
    Said said = said("demo-wheat", "--days", "40", "--units", "us", "--sheet", sheet.toString());
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("What could go wrong");
    assertThat(said.err()).contains("'" + sheet + "'");
    assertThat(Files.readString(sheet)).startsWith("<!DOCTYPE html>").contains("Window-sill wheat");
  }

  @Test
  void aFileThatIsThereStaysUnlessToldOtherwise(@TempDir Path folder) throws IOException {
    Path mine = Files.writeString(folder.resolve("mine.html"), "my own page, longer than nothing");
    Said said = said("demo", "--days", "40", "--sheet", mine.toString());
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("already a file '" + mine + "'").contains("--overwrite");
    assertThat(said.out()).isEmpty();
    assertThat(mine).hasContent("my own page, longer than nothing");

    Said again = said("demo", "--days", "40", "--sheet", mine.toString(), "--overwrite");
    assertThat(again.code()).isZero();
    assertThat(Files.readString(mine)).contains("October bitter").doesNotContain("my own page");
  }

  @Test
  void aSheetThatCannotBeWrittenSaysSoAndTheReportIsStillThere(@TempDir Path folder) {
    Path nowhere = folder.resolve("no/such/folder/sheet.html");
    Said said = said("demo-wheat", "--days", "40", "--sheet", nowhere.toString());
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.out()).contains("What could go wrong");
    assertThat(said.err()).contains("cannot be written").doesNotContain("Exception");
    assertThat(said("demo", "--overwrite").err()).contains("--overwrite belongs to --sheet");
  }

  @Test
  void whatCannotBeBrewedGetsNoSheet(@TempDir Path folder) {
    Path sheet = folder.resolve("sheet.html");
    Said said = said("demo", "--rig", "flat", "--days", "40", "--sheet", sheet.toString());
    assertThat(said.code()).isEqualTo(1);
    assertThat(said.err()).contains("No sheet was written");
    assertThat(sheet).doesNotExist();
  }

  @Test
  void anHourToBeDoneByGivesAnHourToBegin() throws IOException {
    Said said = said("demo", "--days", "60", "--done-by", "18:00");
    assertThat(said.out()).contains("To be done by 18:00, begin at 1");
    Said day = said("demo", "--days", "60", "--done-by", "2026-12-05 01:00");
    assertThat(day.out()).contains("To be done by 2026-12-05 01:00, begin at 2026-12-04 2");
    // For scripts it stands in what they read, not beside it.
    Said read = said("demo", "--days", "60", "--json", "--done-by", "2026-12-05 01:00");
    assertThat(read.err()).isEmpty();
    JsonNode begin = written(read).get("begin");
    assertThat(begin.get("doneBy").asString()).isEqualTo("2026-12-05 01:00");
    assertThat(day.out())
        .contains("begin at " + begin.get("inTime").asString() + " (in time 19 days in 20)")
        .contains("beginning at " + begin.get("evenly").asString() + " is late");
    Said wrong = said("demo", "--days", "60", "--done-by", "teatime");
    assertThat(wrong.code()).isNotZero();
    assertThat(wrong.err()).contains("teatime").contains("18:00");
  }

  @Test
  void saltsForAWantedLiquorAreFoundAndPlannedWith() {
    String[] words = {
      "demo",
      "--days",
      "60",
      "--liquor",
      "calcium 100, sulphate 150, pH 5.3",
      "--house",
      "gypsum, calcium chloride, lactic acid 80 %"
    };
    Said said = said(words);
    assertThat(said.code()).isZero();
    assertThat(said.out())
        .contains("Into the ")
        .contains("lactic acid 80 %")
        .contains("calcium: wanted 100 mg/L, comes to ")
        .contains("Cold liquor into the kettle");
    Said wrong = said("demo", "--liquor", "calcium lots");
    assertThat(wrong.code()).isEqualTo(2);
    assertThat(wrong.err()).contains("--liquor: 'calcium lots'").contains("calcium 100");
  }
}
