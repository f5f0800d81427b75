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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/// A brewer writes a rig file, changes it, and plans with it.
class OwnFilesStoryTest {
  private record Said(int code, String out, String err) {}

  private static Said said(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Gylebook.commandLine(Surroundings.ofThisProcess());
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
}
