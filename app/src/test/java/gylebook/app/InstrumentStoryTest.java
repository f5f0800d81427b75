package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import gylebook.device.Heard;
import gylebook.device.Mosquitto;
import gylebook.device.Other;
import gylebook.journal.Journal;
import gylebook.journal.MemoryJournal;
import gylebook.web.PageServer;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// Instruments as they are tied, shown and loosed over the wire, with real peers.
class InstrumentStoryTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  @TempDir private Path folder;

  private final Journal journal = new MemoryJournal();
  private final HttpClient client = HttpClient.newHttpClient();
  private final List<Heard> heard = new CopyOnWriteArrayList<>();
  private Clerk clerk;
  private Wiring wiring;
  private PageServer server;

  @BeforeEach
  void start() {
    clerk = new Clerk(journal, InstantSource.system());
    wiring = new Wiring(clerk, InstantSource.system(), folder);
    wiring.listen(heard::add);
    wiring.begin();
    server = PageServer.start(0, clerk, new Wallet(), wiring);
  }

  @AfterEach
  void stop() {
    server.stop();
    wiring.close();
    client.close();
  }

  private HttpResponse<String> ask(HttpRequest.Builder request) {
    try {
      return client.send(request.build(), BodyHandlers.ofString());
    } catch (IOException | InterruptedException failure) {
      throw new AssertionError(failure);
    }
  }

  private HttpRequest.Builder at(String path) {
    return HttpRequest.newBuilder(URI.create(server.address() + path));
  }

  private HttpResponse<String> get(String path) {
    return ask(at(path));
  }

  private HttpResponse<String> send(String path, Map<String, String> body) {
    return ask(
        at(path)
            .header("Origin", server.address().replaceFirst("/$", ""))
            .header("Gyle-Seen", "" + clerk.book().seen(Journal.HOUSE))
            .POST(BodyPublishers.ofString(JSON.writeValueAsString(body))));
  }

  private JsonNode tied(Map<String, String> form) {
    HttpResponse<String> answer = send("api/instruments/tie", form);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return JSON.readTree(answer.body());
  }

  private static Map<String, String> form(String... pairs) {
    Map<String, String> form = new HashMap<>(Map.of("measures", "TEMPERATURE \u00b0C"));
    for (int i = 0; i < pairs.length; i += 2) {
      form.put(pairs[i], pairs[i + 1]);
    }
    return form;
  }

  private HttpResponse<String> post(String token, String body) {
    return ask(
        at("api/readings")
            .header("Authorization", "Bearer " + token)
            .POST(BodyPublishers.ofString(body)));
  }

  private void shows(String path, String words) {
    await()
        .atMost(PATIENCE)
        .pollInterval(Duration.ofMillis(50))
        .until(() -> get(path).body().contains(words));
  }

  @Test
  void aBoardPostsWithItsTokenWhichIsShownOnceAndOpensNothingElse() {
    String token =
        tied(form("kind", "post", "name", "cellar air", "place", "shelf", "payload", "plain"))
            .get("token")
            .asString();
    assertThat(token).hasSizeGreaterThanOrEqualTo(32);
    assertThat(journal.entries(0).toString()).doesNotContain(token);

    assertThat(post(token, "12.5").statusCode()).isEqualTo(204);
    assertThat(post("0".repeat(32), "12.5").statusCode()).isEqualTo(401);
    assertThat(get("instruments/cellar%20air").body())
        .contains("<b>12.5 °C</b>", "1 heard")
        .doesNotContain(token);
    assertThat(heard).hasSize(1);

    assertThat(post(token, "1".repeat(70_000)).statusCode()).isEqualTo(413);
    assertThat(heard).hasSize(1);

    // The token is no key to the book.
    HttpResponse<String> write =
        ask(
            at("api/instruments/loose")
                .header("Authorization", "Bearer " + token)
                .header("Gyle-Seen", "1")
                .POST(BodyPublishers.ofString("{\"name\":\"cellar air\"}")));
    assertThat(write.statusCode()).isEqualTo(403);
    assertThat(clerk.book().tied()).hasSize(1);
  }

  @Test
  void oddThingsAreShownAsWhatTheyAre() {
    String token = tied(form("kind", "post", "name", "probe")).get("token").asString();
    post(token, "85");
    post(token, "<b>hello");
    assertThat(get("instruments/probe").body())
        .contains("1 garbled", "1 power-on value of 85 °C")
        .contains("&lt;b&gt;hello")
        .doesNotContain("<b>hello");
    for (int i = 0; i < 60; i++) {
      post(token, "66." + i);
    }
    // How many were left out is told with the next that is not.
    await()
        .atMost(PATIENCE)
        .until(
            () -> {
              post(token, "67");
              return get("api/instruments").body().contains("left out of a flood");
            });
  }

  @Test
  void whatDoesNotFitIsSaidAndNothingIsWritten() {
    HttpResponse<String> answer =
        send("api/instruments/tie", form("kind", "chip", "name", "x", "number", "28-xyz"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("28-xyz");
    answer = send("api/instruments/tie", form("kind", "broker", "name", "x", "topic", "t"));
    assertThat(JSON.readTree(answer.body()).get("field").asString()).isEqualTo("host");
    assertThat(send("api/instruments/tie", form("kind", "post")).statusCode()).isEqualTo(422);
    assertThat(clerk.book().tied()).isEmpty();
    assertThat(send("api/instruments/loose", Map.of("name", "x")).statusCode()).isEqualTo(422);
    assertThat(get("instruments/x").statusCode()).isEqualTo(404);
    for (String kind : List.of("broker", "controller", "chip", "line", "post", "table")) {
      assertThat(get("instruments/tie/" + kind).body()).contains("Tie it");
    }
  }

  @Test
  void aTopicIsSeenChosenAndHeardAndALooseIsFinal() throws IOException {
    try (Mosquitto broker = Mosquitto.start(folder, false)) {
      Map<String, String> where =
          form("kind", "broker", "host", "127.0.0.1", "port", "" + broker.port());
      broker.publish("rig/probe", "20.5", "-r");
      await()
          .atMost(PATIENCE)
          .pollInterval(Duration.ofMillis(50))
          .until(
              () ->
                  send("api/instruments/look", where).body().contains("rig/probe</b> 20.5 (kept"));
      where.putAll(Map.of("name", "probe", "topic", "rig/probe"));
      tied(where);
      // As it came: a value that the broker kept says nothing about now.
      shows("instruments/probe", "kept by the broker");
      broker.publish("rig/probe", "66.25");
      shows("api/instruments/probe", "66.25");
      assertThat(send("api/instruments/loose", Map.of("name", "probe")).statusCode())
          .isEqualTo(200);
      assertThat(get("instruments").body()).contains("None is tied yet");
    }
  }

  @Test
  void theFourByteOrdersStandBesideOneAnotherAndTheOneThatFitsIsMarked() throws IOException {
    int port = Mosquitto.freePort();
    try (Other _ = Other.controller(folder, "tcp", "" + port)) {
      Map<String, String> where =
          form("kind", "controller", "host", "127.0.0.1", "port", "" + port, "address", "4");
      String plain =
          JSON.readTree(send("api/instruments/look", where).body()).get("sights").asString();
      assertThat(plain).contains("ABCD</b>", "CDAB</b> 66.3", "BADC</b>", "DCBA</b>");
      assertThat(plain).doesNotContain("this is what it shows");
      where.put("shown", "66,3");
      String fit =
          JSON.readTree(send("api/instruments/look", where).body()).get("sights").asString();
      assertThat(fit).containsOnlyOnce("this is what it shows");
      assertThat(fit)
          .containsPattern("&quot;cdab&quot;[^<]*<b>CDAB</b> 66\\.3\\d* <strong>this is");
      where.putAll(
          Map.of("name", "panel", "numberKind", "float32", "order", "cdab", "everySec", "1"));
      tied(where);
      shows("instruments/panel", "<b>66.3 °C</b>");
      assertThat(clerk.book().tied().getFirst().document()).doesNotContain("shown");
    }
  }

  @Test
  void whatIsTiedIsListenedToAgainAfterARestart() throws IOException {
    Path table = Files.writeString(folder.resolve("day.csv"), "time,kettle\n0,20.5\n");
    tied(form("kind", "table", "name", "old day", "file", table.toString(), "column", "kettle"));
    shows(
        "instruments/" + URLEncoder.encode("old day", StandardCharsets.UTF_8).replace("+", "%20"),
        "20.5 °C");
    Clerk later = new Clerk(journal, InstantSource.system());
    try (Wiring again = new Wiring(later, InstantSource.system(), folder)) {
      List<Heard> anew = new CopyOnWriteArrayList<>();
      again.listen(anew::add);
      again.begin();
      await().atMost(PATIENCE).until(() -> !anew.isEmpty());
      assertThat(anew.getFirst().instrumentId()).isEqualTo("old day");
    }
  }

  @Test
  void aTieThatThisBuildCannotReadIsShownAndStopsNothing() {
    clerk.write(
        Journal.HOUSE,
        0,
        new gylebook.brewday.Command.TieInstrument("new", "", "{\"kind\":\"telepathy\"}"),
        "");
    try (Wiring again = new Wiring(clerk, InstantSource.system(), folder)) {
      again.begin();
      await().atMost(PATIENCE).until(() -> !again.dials().isEmpty());
      assertThat(again.dials().getFirst().lineSays()).contains("telepathy");
    }
  }

  @Test
  void whatATiedInstrumentReadsCanBeLookedAtAndNothingIsTakenFromIt() throws IOException {
    Path pipe = folder.resolve("pipe");
    Other.run(folder, "mkfifo", pipe.toString());
    Map<String, String> where = form("kind", "line", "device", pipe.toString());
    Map<String, String> tie = new HashMap<>(where);
    tie.put("name", "printed");
    tied(tie);
    for (String line : List.of("66.3", "66.4", "66.5")) {
      assertThat(send("api/instruments/look", where).statusCode()).isEqualTo(200);
      Files.writeString(pipe, line + "\n");
      shows("instruments/printed", "<b>" + line + " °C</b>");
    }
    assertThat(JSON.readTree(send("api/instruments/look", where).body()).get("sights").asString())
        .containsSubsequence("66.5", "66.4", "66.3");
    assertThat(heard).hasSize(3);
  }

  @Test
  void aPortThatServesOneAtATimeIsRefusedWithTheWayOut() {
    String device = folder.resolve("tty").toString();
    tied(form("kind", "controller", "device", device, "name", "panel"));
    for (String kind : List.of("controller", "line")) {
      Map<String, String> where = form("kind", kind, "device", device, "baud", "9600");
      assertThat(send("api/instruments/look", where).body())
          .contains("in use for 'panel'", "loose 'panel' first");
    }
    send("api/instruments/loose", Map.of("name", "panel"));
    tied(form("kind", "line", "device", device, "baud", "9600", "name", "printed"));
    Map<String, String> faster = form("kind", "line", "device", device, "baud", "115200");
    assertThat(send("api/instruments/look", faster).body())
        .contains("'printed' reads", "at 9600 baud", "loose 'printed' first");
  }

  @Test
  void noPageShowsThePasswordOfABroker() {
    String password = "copper-kettle-7";
    HttpResponse<String> answer =
        send(
            "api/instruments/tie",
            form(
                "kind",
                "broker",
                "host",
                "127.0.0.1",
                "port",
                "1",
                "topic",
                "warm",
                "name",
                "probe",
                "user",
                "brewer",
                "password",
                password));
    assertThat(answer.statusCode()).isEqualTo(200);
    // As decision 16 says, the book itself keeps it.
    assertThat(journal.entries(0).toString()).contains(password);
    assertThat(answer.body()).doesNotContain(password);
    for (String path :
        List.of(
            "instruments",
            "instruments/probe",
            "instruments/tie/broker",
            "api/instruments",
            "api/instruments/probe",
            "rehearsal")) {
      HttpResponse<String> page = get(path);
      assertThat(page.statusCode()).as(path).isEqualTo(200);
      assertThat(page.body()).as(path).doesNotContain(password);
    }
  }
}
