package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.Program;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// A brew day is under way when the program is killed: in the first life after one note, in the
/// second after two, and so on, each time with a further note on its way. The screen sends that one
/// again under its own name, as the page does. Ten kills under `-Plong`, `-Dkills=100` for a longer
/// campaign.
class KettleKillTest {
  private static final Pattern ENDS = Pattern.compile("data-ends=\"(\\d+)\"");
  private static final long ENDS_AGREE_MS = Duration.ofMinutes(1).toMillis();

  @TempDir Path folder;

  private final HttpClient client = HttpClient.newHttpClient();
  private String address = "";

  @Test
  void afterEveryKillTheDayIsWhereItWasAndEachNoteStandsOnce()
      throws IOException, InterruptedException {
    int kills = Integer.getInteger("kills", Boolean.getBoolean("long") ? 10 : 1);
    Path book = folder.resolve("book.sqlite");
    int notes = 0;
    long endsMs = 0;
    for (int life = 1; life <= kills + 1; life++) {
      Program program = Program.on(book);
      address = program.address();
      if (life == 1) {
        begin();
      } else {
        // What was on its way is sent again; whether the book had it, it stands there once.
        say(notes);
        String kettle = kettle();
        assertEachOnce(kettle, notes, life);
        assertThat(kettle).as("life %d: under way", life).contains("To: strike reached");
        assertThat(ends(kettle))
            .as("life %d: the countdown goes to the same moment", life)
            .isBetween(endsMs - ENDS_AGREE_MS, endsMs + ENDS_AGREE_MS);
      }
      for (int i = 0; i < life; i++) {
        notes++;
        say(notes);
      }
      endsMs = ends(kettle());
      notes++;
      int onItsWay = notes;
      Thread sending = Thread.ofVirtual().start(() -> sayOrDie(onItsWay));
      program.kill();
      sending.join();
    }
    System.getLogger("kills")
        .log(System.Logger.Level.INFO, "{0} kills of a day under way, {1} notes", kills, notes);
  }

  private void begin() throws IOException, InterruptedException {
    String page = get("gyles/bitter");
    String seen = page.replaceAll("(?s).*data-seq=\"(\\d+)\".*", "$1");
    assertThat(post("api/gyles/bitter/fix", "{}", "plan", seen)).isEqualTo(200);
    assertThat(post("api/gyles/bitter/day", "{\"do\":\"start\"}", "start", seen)).isEqualTo(200);
  }

  private void say(int number) throws IOException, InterruptedException {
    String body = "{\"do\":\"say\",\"what\":\"words\",\"value\":\"word-%d.\"}".formatted(number);
    assertThat(post("api/gyles/bitter/day", body, "note-" + number, "0")).isEqualTo(200);
  }

  private void sayOrDie(int number) {
    try {
      say(number);
    } catch (IOException | InterruptedException | AssertionError _) {
      // It was not acknowledged, so nothing is promised.
    }
  }

  private static void assertEachOnce(String kettle, int notes, int life) {
    String entries = kettle.substring(kettle.indexOf("class=\\\"notes\\\""));
    for (int note = 1; note <= notes; note++) {
      assertThat(entries.split(Pattern.quote("</time> word-" + note + "."), -1).length - 1)
          .as("life %d: note %d stands once", life, note)
          .isEqualTo(1);
    }
  }

  private static long ends(String kettle) {
    Matcher ends = ENDS.matcher(kettle.replace("\\\"", "\""));
    assertThat(ends.find()).as("a countdown in %s", kettle).isTrue();
    return Long.parseLong(ends.group(1));
  }

  private String kettle() throws IOException, InterruptedException {
    return get("api/gyles/bitter/kettle");
  }

  private String get(String path) throws IOException, InterruptedException {
    HttpRequest request = HttpRequest.newBuilder(URI.create(address + path)).build();
    return client.send(request, HttpResponse.BodyHandlers.ofString()).body();
  }

  private int post(String path, String body, String once, String seen)
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address + path))
            .header("Origin", address.replaceFirst("/$", ""))
            .header("Gyle-Once", once)
            .header("Gyle-Seen", seen)
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    return client.send(request, HttpResponse.BodyHandlers.ofString()).statusCode();
  }
}
