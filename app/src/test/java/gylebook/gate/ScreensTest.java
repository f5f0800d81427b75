package gylebook.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ScreensTest {
  @TempDir private Path folder;

  private final Ticking clock = new Ticking();
  private final RandomGenerator chance = RandomGeneratorFactory.of("L64X128MixRandom").create(9);
  private Path file;
  private Screens screens;

  @BeforeEach
  void open() {
    file = folder.resolve("others").resolve("screens.json");
    screens = started();
  }

  private Screens started() {
    return new Screens(new ScreenFile(file), clock, chance);
  }

  private Screens.LetIn.Done letIn(String name) {
    Screens.LetIn answer = screens.letIn(name);
    assertThat(answer).isInstanceOf(Screens.LetIn.Done.class);
    return (Screens.LetIn.Done) answer;
  }

  @Test
  void aScreenIsKnownByItsTokenAlsoAfterARestart() {
    String token = letIn("tablet").token();
    String other = letIn("phone").token();
    assertThat(token).matches("[A-Za-z0-9_-]{43}").isNotEqualTo(other);

    assertThat(screens.owner(token).orElseThrow().name()).isEqualTo("tablet");
    assertThat(started().owner(other).orElseThrow().name()).isEqualTo("phone");
    assertThat(screens.owner("")).isEmpty();
    assertThat(screens.owner(token + "x")).isEmpty();
    assertThat(screens.owner(Screens.digest(token))).as("its digest is no token").isEmpty();
  }

  @Test
  void theFileHoldsNoTokenAndIsItsOwnersAlone() throws IOException {
    String token = letIn("tablet").token();
    assertThat(Files.readString(file)).contains(Screens.digest(token)).doesNotContain(token);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.getParent())))
        .isEqualTo("rwx------");
  }

  @Test
  void whoIsTurnedOutIsOutAtOnceAndStaysOut() {
    List<String> told = new ArrayList<>();
    screens.onOut(told::add);
    Screens.LetIn.Done tablet = letIn("tablet");
    Screens.LetIn.Done phone = letIn("phone");

    assertThat(screens.out(tablet.screen().screenId())).isEmpty();
    assertThat(told).containsExactly(tablet.screen().screenId());
    assertThat(screens.owner(tablet.token())).isEmpty();
    assertThat(started().owner(tablet.token())).isEmpty();
    assertThat(started().owner(phone.token())).isPresent();
  }

  @Test
  void aDiskThatRefusesLetsNobodyInAndStillTurnsOut() throws IOException {
    Screens.LetIn.Done tablet = letIn("tablet");
    // A folder in the place of the file's neighbour: nothing can be written there.
    Files.createDirectories(file.resolveSibling("screens.json.new").resolve("in the way"));

    assertThat(screens.letIn("phone")).isInstanceOf(Screens.LetIn.NotKept.class);
    assertThat(screens.all()).hasSize(1);
    assertThat(screens.out(tablet.screen().screenId()).orElseThrow()).contains("screens.json");
    assertThat(screens.owner(tablet.token())).isEmpty();
  }

  @Test
  void aFileThatCannotBeUnderstoodLetsNobodyInAndIsPutAside() throws IOException {
    for (String text : List.of("", "{", "{}", "[]", "{\"screens\":[{}]}", "\u0000")) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
      assertThat(started().all()).as(text).isEmpty();
      assertThat(file).as(text).doesNotExist();
      assertThat(file.resolveSibling("screens.json.unreadable")).hasContent(text);
    }
  }

  @Test
  void whenAScreenWasLastSeenIsKnownAndNowAndThenWrittenDown() {
    String token = letIn("tablet").token();
    clock.pass(Duration.ofMinutes(5));
    screens.owner(token);
    assertThat(screens.all().getFirst().seen()).isEqualTo(clock.instant());
    assertThat(started().all().getFirst().seen()).isBefore(clock.instant());

    clock.pass(Screens.SEEN_WRITTEN);
    screens.owner(token);
    assertThat(started().all().getFirst().seen()).isEqualTo(clock.instant());
  }

  @Test
  void aScreenNobodyUsedForHalfAYearIsOut() {
    String token = letIn("tablet").token();
    clock.pass(Screens.FORGOTTEN);
    assertThat(screens.owner(token)).isPresent();
    clock.pass(Screens.FORGOTTEN.plusSeconds(1));
    assertThat(screens.owner(token)).isEmpty();
  }

  @Test
  void namesAreTidiedAndNeverEmpty() {
    assertThat(letIn("  my\n\u202e tablet\u0000 ").screen().name()).isEqualTo("my tablet");
    assertThat(letIn(" \t").screen().name()).isEqualTo("a screen without a name");
    assertThat(letIn("\ud83c\udf7a".repeat(99)).screen().name())
        .isEqualTo("\ud83c\udf7a".repeat(Screens.NAME_MOST));
  }
}
