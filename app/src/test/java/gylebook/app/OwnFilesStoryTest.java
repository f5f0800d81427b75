package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// A brewer writes a rig file, changes it, and plans with it.
class OwnFilesStoryTest {
  private record Said(int code, String out, String err) {}

  private static Said said(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Terminal.commandLine(Surroundings.ofThisProcess());
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    int code = line.execute(words);
    return new Said(code, out.toString(), err.toString());
  }

  @Test
  void aRigFileIsWrittenChangedAndPlannedWith(@TempDir Path folder) throws IOException {
    Path rig = folder.resolve("my-rig.json");
    Path recipe = folder.resolve("my-beer.json");
    Said written = said("write", "rig", "household");
    assertThat(written.code()).isZero();
    Files.writeString(
        rig, written.out().replace("the household's kettle", "my kettle"), StandardCharsets.UTF_8);
    Files.writeString(recipe, said("write", "recipe", "demo").out(), StandardCharsets.UTF_8);
    Said planned = said("plan", recipe.toString(), "--rig", rig.toString(), "--days", "50");
    assertThat(planned.err()).isEmpty();
    assertThat(planned.code()).isZero();
    assertThat(planned.out()).contains("October bitter, on my kettle");
  }

  @Test
  void aRecipeOfEitherOpenStandardIsPlannedAndItsGuessesAreSaid(@TempDir Path folder)
      throws IOException {
    for (String sample : List.of("plain.json", "plain.xml")) {
      Path recipe = folder.resolve(sample);
      try (InputStream stream =
          OwnFilesStoryTest.class.getResourceAsStream("/interchange/" + sample)) {
        Files.write(recipe, stream.readAllBytes());
      }
      Said planned = said("plan", recipe.toString(), "--days", "40");
      assertThat(planned.code()).as(sample + planned.err()).isLessThan(2);
      assertThat(planned.out()).as(sample).contains("What could go wrong");
      assertThat(planned.err()).as(sample).contains("Note: ");
    }
  }

  @Test
  void aMissingOrForeignFileGetsOneSentence(@TempDir Path folder) throws IOException {
    Said missing = said("plan", folder.resolve("none.json").toString());
    assertThat(missing.code()).isEqualTo(2);
    assertThat(missing.err()).contains("There is no recipe file").doesNotContain("at gylebook");
    Path foreign = folder.resolve("photo.jpg");
    Files.write(foreign, new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff});
    Said refused = said("plan", foreign.toString());
    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err()).contains("photo.jpg");
  }

  @Test
  void whatTheStandardLosesIsSaidBeforeAnythingIsWritten(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("beer.json");
    Said asked = said("write", "recipe", "demo", "--standard", "--to", file.toString());
    assertThat(asked.code()).isEqualTo(1);
    assertThat(asked.out()).isEmpty();
    assertThat(asked.err()).contains("Lost: wanted: ").contains("Nothing was written");
    assertThat(file).doesNotExist();

    Said told = said("write", "recipe", "demo", "--standard", "--yes", "--to", file.toString());
    assertThat(told.code()).isZero();
    assertThat(told.err()).contains("Lost: wanted: ").contains("'" + file + "'");
    JsonNode written = JsonMapper.builder().build().readTree(Files.readString(file));
    assertThat(written.get("beerjson").get("version").asInt()).isEqualTo(3);

    Said planned = said("plan", file.toString(), "--days", "40");
    assertThat(planned.code()).as(planned.err()).isZero();
    assertThat(planned.out()).contains("October bitter").contains("gypsum");
  }

  @Test
  void aWrittenFileNeverReplacesOneThatIsThere(@TempDir Path folder) throws IOException {
    Path mine = Files.writeString(folder.resolve("rig.json"), "mine");
    assertThat(said("write", "rig", "flat", "--to", mine.toString()).code()).isEqualTo(2);
    assertThat(mine).hasContent("mine");
    Said over = said("write", "rig", "flat", "--to", mine.toString(), "--overwrite");
    assertThat(over.code()).isZero();
    assertThat(Files.readString(mine)).isEqualTo(said("write", "rig", "flat").out());
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(mine);
    }
  }

  @Test
  void wordsThatDoNotFitTogetherAreRefused() {
    assertThat(said("write", "rig", "flat", "--standard").err()).contains("is for recipes");
    assertThat(said("write", "recipe", "demo", "--overwrite").err()).contains("belongs to --to");
    assertThat(said("write", "gyle", "demo").err()).contains("'gyle' cannot be written");
    Said lost = said("write", "rig", "flat", "--to", "/no/such/folder/rig.json");
    assertThat(lost.code()).isEqualTo(2);
    assertThat(lost.err()).contains("there is no such folder").doesNotContain("Exception");
  }
}
