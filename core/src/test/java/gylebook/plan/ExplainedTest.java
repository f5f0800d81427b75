package gylebook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.simulate.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ExplainedTest {
  @Test
  void everyFigureNamesSourcesThatStandInTheList() throws IOException {
    String list = Files.readString(Path.of("../docs/sources.bib"), StandardCharsets.UTF_8);
    for (Outcome outcome : Outcome.values()) {
      Explained explained = Explained.of(outcome);
      assertThat(explained.says()).as(outcome.name()).isNotBlank();
      assertThat(explained.equation()).as(outcome.name()).isNotBlank();
      assertThat(explained.sources()).as(outcome.name()).isNotEmpty();
      for (String key : explained.sources()) {
        assertThat(list).as(outcome + " names " + key).contains("{" + key + ",");
      }
    }
  }
}
