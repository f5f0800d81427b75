package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.brewday.Book;
import gylebook.interchange.OwnFiles;
import gylebook.journal.Addition;
import gylebook.journal.Entry;
import gylebook.journal.Journal;
import gylebook.journal.JournalUnavailable;
import gylebook.journal.MemoryJournal;
import gylebook.plan.Demo;
import gylebook.web.PageServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// The page as it is asked over the wire, on a book in memory.
class PageStoryTest {
  private static final JsonMapper JSON = new JsonMapper();

  private final MovingJournal journal = new MovingJournal();
  private PageServer server;
  private Wiring wiring;
  private HttpClient client;

  /// A book in memory whose disk can be taken away.
  private static final class MovingJournal implements Journal {
    private final Journal kept = new MemoryJournal();
    private boolean away;

    @Override
    public List<Entry> append(Addition addition) {
      if (away) {
        throw new JournalUnavailable("The disk is full; make room.", new IOException());
      }
      return kept.append(addition);
    }

    @Override
    public List<Entry> entries(long afterSeq) {
      return kept.entries(afterSeq);
    }

    @Override
    public boolean has(String once) {
      return kept.has(once);
    }
  }

  @BeforeEach
  void start() {
    Clerk clerk = new Clerk(journal, InstantSource.system());
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
    server = PageServer.start(0, clerk, wallet, wiring);
    client = HttpClient.newHttpClient();
  }

  @AfterEach
  void stop() {
    client.close();
    server.stop();
    wiring.close();
  }

  private String origin() {
    return server.address().replaceFirst("/$", "");
  }

  private HttpResponse<String> sent(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  private HttpRequest.Builder to(String path) {
    return HttpRequest.newBuilder(URI.create(server.address()).resolve(path));
  }

  private HttpResponse<String> got(String path) throws IOException, InterruptedException {
    return sent(to(path));
  }

  private HttpResponse<String> post(String path, long seen, String body)
      throws IOException, InterruptedException {
    return sent(
        to(path)
            .header("Origin", origin())
            .header("Gyle-Seen", Long.toString(seen))
            .POST(BodyPublishers.ofString(body)));
  }

  private Book book() {
    return Book.EMPTY.after(journal.entries(0));
  }

  private long seen(String gyleId) {
    return book().seen(gyleId);
  }

  private HttpResponse<String> fill(String slot, String typed)
      throws IOException, InterruptedException {
    String body = "{\"of\":\"recipe\",\"slot\":\"%s\",\"typed\":\"%s\"}".formatted(slot, typed);
    return post("/api/gyles/bitter/fill", seen("bitter"), body);
  }

  private double lengthL() {
    String document = book().gyle("bitter").orElseThrow().recipe().document();
    return new Wallet().recipe(document).aim().lengthL().inside();
  }

  @Test
  void aNewBookShowsTheDemoAndTheListNamesBoth() throws IOException, InterruptedException {
    assertThat(got("/").body()).contains("Recipe and rig are invented", "id=\"forecast\"");
    assertThat(got("/gyles").body())
        .contains("October bitter")
        .contains("Window-sill wheat")
        .contains("invented");
  }

  @Test
  void aGyleReadsAsSentencesAtOnceAndTheForecastFollows() throws IOException, InterruptedException {
    assertThat(got("/gyles/bitter").body())
        .contains("In words")
        .contains(">20.0 L</button> of ")
        .doesNotContain("NaN");

    List<JsonNode> reports =
        got("/api/gyles/bitter/forecast").body().lines().map(JSON::readTree).toList();
    assertThat(reports).anySatisfy(report -> assertThat(report.has("progress")).isTrue());
    List<JsonNode> forecasts = reports.stream().filter(r -> r.has("forecast")).toList();
    assertThat(forecasts).hasSize(2);
    assertThat(forecasts.getFirst().get("last").asBoolean()).isFalse();
    assertThat(forecasts.getLast().get("days").asInt()).isEqualTo(1000);
    assertThat(forecasts.getLast().get("forecast").asString())
        .contains("To weigh")
        // Scaled to this rig: less than the 4.10 kg of the recipe.
        .containsPattern("<b>3\\.[45]\\d kg</b><td>pale malt<td>in the mash")
        .contains("What could go wrong")
        .contains("<svg class=\"day\"")
        .contains("it never switches anything")
        .doesNotContain("NaN");
  }

  /// Whatever stands in a field for a moment, only what is taken is written.
  @Test
  void whatIsOnlyTypedIsLookedAheadToAndNotWritten() throws IOException, InterruptedException {
    var _ = got("/api/gyles/bitter/forecast");
    long seen = seen("bitter");
    String asked = "/api/gyles/bitter/ahead?of=recipe&slot=aim.lengthL&typed=";
    JsonNode look = JSON.readTree(got(asked + "18+L").body()).get("look");
    assertThat(look.get("days").asInt()).isEqualTo(100);
    assertThat(look.get("forecast").asString()).contains("To weigh");
    for (String typed : List.of("eighteen", "")) {
      HttpResponse<String> answer = got(asked + typed);
      assertThat(answer.statusCode()).isEqualTo(204);
      assertThat(answer.body()).isEmpty();
    }
    assertThat(got("/api/gyles/nobody/ahead?of=rig").statusCode()).isEqualTo(404);
    assertThat(seen("bitter")).isEqualTo(seen);
    assertThat(lengthL()).isEqualTo(20);
  }

  @Test
  void anAnswerTellsOfThePaperThatChangedAndOfTheLookThatIsThere()
      throws IOException, InterruptedException {
    var _ = got("/api/gyles/bitter/forecast");
    JsonNode length = JSON.readTree(fill("aim.lengthL", "18 L").body());
    assertThat(length.has("papers")).isTrue();
    assertThat(length.has("rig")).isFalse();
    // What was asked for after an edit is a first look at the same.
    JsonNode asked = JSON.readTree(got("/api/gyles/bitter/forecast?look=first").body());
    // A look that takes longer than nobody notices is left to be asked for.
    if (length.has("look")) {
      assertThat(length.get("look")).isEqualTo(asked);
    }
    assertThat(asked.get("days").asInt()).isEqualTo(100);

    String rig = "{\"of\":\"rig\",\"slot\":\"kettle.heightM\",\"typed\":\"44 cm\"}";
    long seen = seen("bitter");
    HttpRequest.Builder height =
        to("/api/gyles/bitter/fill")
            .header("Origin", origin())
            .header("Gyle-Seen", Long.toString(seen))
            .header("Gyle-Once", "height")
            .POST(BodyPublishers.ofString(rig));
    assertThat(JSON.readTree(sent(height).body()).has("rig")).isTrue();
    // Sent again because its answer was lost: whoever sends it has not seen the rig yet.
    JsonNode again = JSON.readTree(sent(height).body());
    assertThat(again.has("rig")).isTrue();
    assertThat(seen("bitter")).isEqualTo(again.get("seq").asLong());
  }

  @Test
  void aFilledValueStandsInTheBookAndInTheSentences() throws IOException, InterruptedException {
    HttpResponse<String> answer = fill("aim.lengthL", "4 gal");

    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(JSON.readTree(answer.body()).get("papers").asString())
        .contains("data-typed=\"4 gal\"")
        .contains("Undo: ");
    // US gallon, 231 cubic inches: 3.785411784 L (NIST Handbook 44, appendix C).
    assertThat(lengthL()).isCloseTo(4 * 3.785411784, org.assertj.core.data.Offset.offset(1e-9));

    post("/api/gyles/bitter/undo", seen("bitter"), "{}");
    assertThat(lengthL()).isEqualTo(20);
  }

  @Test
  void whatCannotBeReadIsSaidAndChangesNothing() throws IOException, InterruptedException {
    long before = seen("bitter");
    HttpResponse<String> answer = fill("aim.lengthL", "many");

    assertThat(answer.statusCode()).isEqualTo(422);
    JsonNode said = JSON.readTree(answer.body());
    assertThat(said.get("what").asString()).isNotBlank();
    assertThat(said.get("value").asString()).isEqualTo("many");
    assertThat(said.get("maybe").asString()).isNotBlank();
    assertThat(seen("bitter")).isEqualTo(before);
  }

  @Test
  void whoHasNotSeenTheLastChangeIsShownItFirst() throws IOException, InterruptedException {
    long old = seen("bitter");
    fill("aim.lengthL", "21 L");
    HttpResponse<String> answer =
        post(
            "/api/gyles/bitter/fill",
            old,
            "{\"of\":\"recipe\",\"slot\":\"aim.lengthL\",\"typed\":\"15 L\"}");

    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(JSON.readTree(answer.body()).get("papers").asString()).contains("21.0 L");
    assertThat(lengthL()).isEqualTo(21);
  }

  @Test
  void aNoteThatIsSentTwiceIsWrittenOnce() throws IOException, InterruptedException {
    long seen = seen("bitter");
    for (int i = 0; i < 2; i++) {
      HttpResponse<String> answer =
          sent(
              to("/api/gyles/bitter/fill")
                  .header("Origin", origin())
                  .header("Gyle-Seen", Long.toString(seen))
                  .header("Gyle-Once", "phone-1")
                  .POST(
                      BodyPublishers.ofString(
                          "{\"of\":\"recipe\",\"slot\":\"aim.lengthL\",\"typed\":\"22 L\"}")));
      assertThat(answer.statusCode()).isEqualTo(200);
    }
    assertThat(book().gyle("bitter").orElseThrow().recipes()).hasSize(2);
  }

  @Test
  void aDiskThatRefusesIsSaidAndNothingIsPretended() throws IOException, InterruptedException {
    journal.away = true;
    HttpResponse<String> answer = fill("aim.lengthL", "21 L");

    assertThat(answer.statusCode()).isEqualTo(503);
    assertThat(JSON.readTree(answer.body()).get("what").asString())
        .startsWith("Not saved.")
        .contains("full");
    assertThat(got("/gyles/bitter").body()).contains(">20.0 L</button> of ");
    journal.away = false;
    assertThat(fill("aim.lengthL", "21 L").statusCode()).isEqualTo(200);
  }

  @Test
  void aForeignPageChangesNothing() throws IOException, InterruptedException {
    long before = seen("bitter");
    for (String origin : List.of("http://brewery.example", "null", "http://127.0.0.1:1")) {
      HttpResponse<String> answer =
          sent(
              to("/api/gyles/bitter/undo")
                  .header("Origin", origin)
                  .header("Gyle-Seen", Long.toString(before))
                  .POST(BodyPublishers.ofString("{}")));
      assertThat(answer.statusCode()).as(origin).isEqualTo(403);
    }
    assertThat(sent(to("/api/units").POST(BodyPublishers.ofString("{}"))).statusCode())
        .as("no origin at all")
        .isEqualTo(403);
    assertThat(seen("bitter")).isEqualTo(before);
  }

  @Test
  void unitsAreChosenForTheHouse() throws IOException, InterruptedException {
    assertThat(post("/api/units", 0, "{\"quantity\":\"\",\"symbol\":\"us\"}").statusCode())
        .isEqualTo(200);
    assertThat(got("/gyles/bitter").body()).contains("US gal</button>");
    assertThat(post("/api/units", 0, "{\"quantity\":\"VOLUME\",\"symbol\":\"L\"}").statusCode())
        .isEqualTo(200);
    assertThat(got("/gyles/bitter").body()).contains(">20.0 L</button>").contains("°F</button>");
    assertThat(post("/api/units", 0, "{\"quantity\":\"VOLUME\",\"symbol\":\"ells\"}").statusCode())
        .isEqualTo(422);
  }

  @Test
  void aRecipeFileIsLookedAtBeforeItIsKept() throws IOException, InterruptedException {
    String file = OwnFiles.recipe(Demo.wheatBeer());
    long before = book().lastSeq();
    HttpResponse<String> look = post("/api/recipes/look?name=w.json", 0, file);

    assertThat(JSON.readTree(look.body()).get("preview").asString()).contains("Window-sill wheat");
    assertThat(book().lastSeq()).isEqualTo(before);

    HttpResponse<String> kept = post("/api/recipes/keep?name=w.json&rigOf=bitter", 0, file);
    String gyleId = JSON.readTree(kept.body()).get("gyle").asString();
    assertThat(gyleId).isEqualTo("window-sill-wheat");
    assertThat(got("/gyles/" + gyleId).statusCode()).isEqualTo(200);
    assertThat(got("/").body()).as("who has a gyle sees the list").contains("class=\"gyles\"");
    assertThat(post("/api/recipes/keep?name=w.json&rigOf=bitter", 0, file).body())
        .contains("window-sill-wheat-2");
  }

  @Test
  void hostileFilesGetASentence() throws IOException, InterruptedException {
    for (String file : List.of("", "{", "\u0000\u0001", "<a", "[".repeat(100_000))) {
      HttpResponse<String> look = post("/api/recipes/look?name=x", 0, file);
      assertThat(look.statusCode()).isEqualTo(422);
      assertThat(JSON.readTree(look.body()).get("what").asString()).isNotBlank();
      HttpResponse<String> rig = post("/api/gyles/bitter/rig?name=x", seen("bitter"), file);
      assertThat(rig.statusCode()).isEqualTo(422);
    }
    assertThat(post("/api/recipes/look?name=x", 0, "x".repeat(9_000_000)).statusCode())
        .isEqualTo(413);
  }

  @Test
  void filesAreCarriedAwayAndBroughtBack() throws IOException, InterruptedException {
    String rig = got("/gyles/wheat/rig.json").body();
    assertThat(post("/api/gyles/bitter/rig?name=flat.json", seen("bitter"), rig).statusCode())
        .isEqualTo(200);
    assertThat(got("/gyles/bitter/rig.json").body()).isEqualTo(rig);
    assertThat(got("/gyles/bitter/standard").body()).contains("Take the file");
    assertThat(JSON.readTree(got("/gyles/bitter/standard.json").body()).has("beerjson")).isTrue();
  }

  @Test
  void theWallSheetIsServedAndAnHourToBeginIsSaid() throws IOException, InterruptedException {
    HttpResponse<String> sheet = got("/gyles/bitter/sheet");
    assertThat(sheet.statusCode()).isEqualTo(200);
    assertThat(sheet.body()).contains("October bitter").doesNotContain("<script");
    assertThat(fill("aim.doneBy", "Saturday 18:00").statusCode()).isEqualTo(200);
    assertThat(got("/api/gyles/bitter/forecast").body())
        .contains("To be done by Saturday 18:00, begin at");
    assertThat(got("/gyles/bitter/sheet").body()).contains("To be done by Saturday 18:00, begin");
    HttpResponse<String> unclear = fill("aim.doneBy", "after lunch");
    assertThat(unclear.statusCode()).isEqualTo(422);
    assertThat(unclear.body()).contains("'after lunch' is no day or hour");
    assertThat(post("/api/gyles/bitter/undo", seen("bitter"), "{}").statusCode()).isEqualTo(200);
    assertThat(got("/api/gyles/bitter/forecast").body()).doesNotContain("To be done by");
  }

  @Test
  void aWantedLiquorIsAskedForFoundAndTakenIntoTheRecipe()
      throws IOException, InterruptedException {
    assertThat(got("/gyles/wheat").body()).contains("href=\"/gyles/wheat/liquor\"");
    assertThat(got("/gyles/wheat/liquor").body()).contains("(now 38 mg/L)", "Find the amounts");
    String asked =
        "/gyles/wheat/liquor?calcium=90&chloride=90&ph=5.4&gypsum=yes"
            + "&calcium_chloride_dihydrate=yes&lactic_acid=80&scale=0.1%20g&measure=0.1%20mL";
    assertThat(got(asked).body())
        .contains("Into the ", "of the mash:", "calcium chloride dihydrate", "lactic acid 80 %")
        .contains("goggles")
        .contains("Take these amounts into the recipe");
    assertThat(got("/gyles/wheat/liquor?calcium=plenty&gypsum=yes").body())
        .contains("For calcium &#39;plenty&#39; is said")
        .contains("value=\"plenty\"");

    String body = "{\"calcium\":\"90\",\"chloride\":\"90\",\"calcium_chloride_dihydrate\":\"yes\"}";
    HttpResponse<String> taken = post("/api/gyles/wheat/liquor", seen("wheat"), body);
    assertThat(taken.statusCode()).isEqualTo(200);
    assertThat(JSON.readTree(taken.body()).get("papers").asString())
        .contains("calcium chloride dihydrate")
        .contains("Undo: salts and acid for a wanted liquor");
    String other = body.replace("\"calcium\":\"90\"", "\"calcium\":\"70\"");
    assertThat(post("/api/gyles/wheat/liquor", 1, other).statusCode()).isEqualTo(409);
    assertThat(post("/api/gyles/wheat/liquor", seen("wheat"), "{}").statusCode()).isEqualTo(422);
    assertThat(post("/api/gyles/wheat/undo", seen("wheat"), "{}").statusCode()).isEqualTo(200);
    assertThat(got("/gyles/wheat").body()).doesNotContain("dihydrate</button>");
  }

  @Test
  void theFixedPlanSaysWhatItSaidWhateverIsChangedLater() throws IOException, InterruptedException {
    assertThat(got("/gyles/bitter/plan").statusCode()).isEqualTo(404);
    assertThat(post("/api/gyles/bitter/fix", seen("bitter"), "{}").statusCode()).isEqualTo(200);
    String before = got("/gyles/bitter/plan").body();
    fill("aim.lengthL", "12 L");

    assertThat(before)
        .contains("October bitter")
        .containsPattern("wort in the fermenter, at 20 C +(19\\.9|20\\.0|20\\.1) L");
    assertThat(got("/gyles/bitter/plan").body()).isEqualTo(before);
    assertThat(got("/gyles/bitter").body()).contains("The plan of the day</a>");
  }

  @Test
  void hostileNamesStayWords() throws IOException, InterruptedException {
    String hostile = "<img src=x onerror=alert(1)>";
    for (String slot : List.of("name", "wanted", "grist.0.name", "hops.0.name", "notes")) {
      assertThat(fill(slot, hostile).statusCode()).as(slot).isEqualTo(200);
    }
    for (String path :
        List.of("/", "/gyles/bitter", "/gyles/bitter/forecast", "/gyles/bitter/sheet")) {
      assertThat(got(path).body()).as(path).doesNotContain("<img");
    }
    assertThat(got("/api/gyles/bitter/forecast").body()).doesNotContain("<img");
  }

  @Test
  void whatIsNotThereSaysSo() throws IOException, InterruptedException {
    assertThat(got("/gyles/stout").statusCode()).isEqualTo(404);
    assertThat(got("/api/gyles/stout/forecast").statusCode()).isEqualTo(404);
    assertThat(post("/api/gyles/stout/undo", 0, "{}").statusCode()).isEqualTo(422);
  }

  @Test
  void everyAnswerForbidsForeignScriptsAndSniffing() throws IOException, InterruptedException {
    HttpResponse<String> answer = got("/");
    assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
        .contains("default-src 'none'")
        .contains("script-src 'self'")
        .doesNotContain("unsafe");
    assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
  }

  @Test
  void aForeignNameForThisMachineGetsNothing() throws IOException {
    URI uri = URI.create(server.address());
    try (Socket socket = new Socket(uri.getHost(), uri.getPort());
        OutputStream out = socket.getOutputStream();
        InputStream in = socket.getInputStream()) {
      String request = "GET / HTTP/1.1\r\nHost: brewery.example\r\nConnection: close\r\n\r\n";
      out.write(request.getBytes(StandardCharsets.US_ASCII));
      out.flush();
      String answer = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 403").doesNotContain("October bitter");
    }
  }
}
