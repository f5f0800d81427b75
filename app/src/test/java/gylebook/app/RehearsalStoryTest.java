package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.device.Decoded;
import gylebook.device.Heard;
import gylebook.device.Mosquitto;
import gylebook.journal.Entry;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.MemoryJournal;
import gylebook.terminal.RehearseCommand;
import gylebook.web.PageServer;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/// The rehearsal as a person starts it, against a started program and a real broker.
class RehearsalStoryTest {
  @TempDir private Path folder;

  private record Played(int code, String out, String err) {}

  private static Played play(String keys, String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    byte[] typed = keys.getBytes(StandardCharsets.UTF_8);
    CommandLine line =
        new CommandLine(new RehearseCommand(new Shelf(), new ByteArrayInputStream(typed)));
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    int code = line.execute(words);
    return new Played(code, out.toString(), err.toString());
  }

  @Test
  void aWholeDayIsPlayedByItselfThroughBrokerControllerAndPost() throws IOException {
    int modbus = Mosquitto.freePort();
    Journal journal = new MemoryJournal();
    Clerk clerk = new Clerk(journal, InstantSource.system());
    List<Heard> heard = new CopyOnWriteArrayList<>();
    try (Mosquitto broker = Mosquitto.start(folder, false);
        Wiring wiring = new Wiring(clerk, InstantSource.system(), folder)) {
      wiring.listen(heard::add);
      PageServer server = PageServer.start(0, clerk, new Wallet(), wiring);
      try {
        String at = "127.0.0.1:" + broker.port();
        Played played =
            play(
                "",
                "--seed=7",
                "--wrong=PUMP_OFF",
                "--by-itself",
                "--pace=100000",
                "--mqtt=" + at,
                "--modbus=" + modbus,
                "--to=" + server.address(),
                "--tie");
        assertThat(played.err()).isEmpty();
        assertThat(played.code()).isZero();
        assertThat(played.out())
            .contains("Rehearsal 7", "publishes to " + at, "The day is over.")
            .contains("What was hidden: The pump does not run", "times what the rig says");
        assertThat(journal.entries(0))
            .extracting(Entry::event)
            .filteredOn(event -> event instanceof Event.InstrumentTied)
            .extracting(Event::toString)
            .satisfiesExactly(
                one -> assertThat(one).contains("rehearsal controller", "broker"),
                one -> assertThat(one).contains("rehearsal bag chip", "float32"),
                one -> assertThat(one).contains("rehearsal duty", "post"));
        assertThat(heard)
            .filteredOn(one -> one.decoded() instanceof Decoded.Value)
            .extracting(Heard::instrumentId)
            .contains("rehearsal controller", "rehearsal bag chip", "rehearsal duty");
        // What was tied for the rehearsal is loosed at its end.
        assertThat(clerk.book().tied()).isEmpty();
      } finally {
        server.stop();
      }
    }
  }

  @Test
  void theSameSeedPlaysTheSameDay() {
    String[] words = {"--seed=11", "--by-itself", "--pace=1000000"};
    Played one = play("", words);
    assertThat(one.code()).as(one.err()).isZero();
    assertThat(one.out())
        .contains("Next: Cold liquor into the kettle", "hydrometer shows", "The day is over.")
        .contains("sent garbage", "was silent", "flooded the line");
    assertThat(play("", words).out()).isEqualTo(one.out());
    assertThat(play("", "--seed=12", "--by-itself", "--pace=1000000").out())
        .isNotEqualTo(one.out());
  }

  @Test
  void aPersonActsByTheKeyboard() {
    String keys = "read dial\nread cup\nheat 50\npump off\nlid on\nheat auto\nwhat\n\nlook\nend\n";
    Played played = play(keys, "--seed=3", "--pace=60");
    assertThat(played.code()).as(played.err()).isZero();
    assertThat(played.out())
        .contains("dial shows ", "There is no 'cup' to read")
        .contains("Heat 50 %, pump as planned, lid as planned.")
        .contains("Heat as planned, pump off, lid on.")
        .contains("Enter: done, the next thing.", "stir in the malt", "What was hidden")
        .doesNotContain("The day is over");
  }

  @Test
  void whatCannotBeIsRefusedWithASentence() throws IOException {
    assertThat(play("", "--pace=0").err()).contains("--pace is 0.0");
    assertThat(play("", "--tie").err()).contains("--tie and --token belong to --to");
    assertThat(play("", "--mqtt=broker").err()).contains("--mqtt is 'broker'");
    assertThat(play("", "--note=bitter").err()).contains("--note belongs to --to");
    assertThat(play("", "--note=bitter", "--to=http://127.0.0.1:1", "--tie").err())
        .contains("leave out --mqtt");
    assertThat(play("", "--note=bitter", "--to=http://127.0.0.1:1", "--pace=1.5").err())
        .contains("--pace is 1.5");
    assertThat(play("", "no-such-recipe").code()).isEqualTo(2);
    Played nobody = play("", "--by-itself", "--mqtt=127.0.0.1:" + Mosquitto.freePort());
    assertThat(nobody.code()).isEqualTo(2);
    assertThat(nobody.err()).contains("the broker at 127.0.0.1");
    Played nowhere =
        play("", "--by-itself", "--tie", "--to=http://127.0.0.1:" + Mosquitto.freePort());
    assertThat(nowhere.code()).isEqualTo(2);
    assertThat(List.of(nowhere.err().split("\n"))).hasSize(1);
  }
}
