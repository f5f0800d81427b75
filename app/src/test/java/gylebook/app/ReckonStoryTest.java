package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.journal.MemoryJournal;
import gylebook.reckon.Calculation;
import gylebook.reckon.Reckoner;
import gylebook.web.PageServer;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// The Reckoner as it is asked over the wire: plain addresses, no scripts.
class ReckonStoryTest {
  private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)");

  private static PageServer server;
  private static Wiring wiring;
  private static HttpClient client;

  @BeforeAll
  static void start() {
    Clerk clerk = new Clerk(new MemoryJournal(), InstantSource.system());
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
    server = PageServer.start(0, clerk, wallet, wiring);
    client = HttpClient.newHttpClient();
  }

  @AfterAll
  static void stop() {
    client.close();
    server.stop();
    wiring.close();
  }

  private static HttpResponse<String> got(String path) throws IOException, InterruptedException {
    URI at = URI.create(server.address()).resolve(path);
    return client.send(HttpRequest.newBuilder(at).build(), HttpResponse.BodyHandlers.ofString());
  }

  private static String asked(String line) throws IOException, InterruptedException {
    HttpResponse<String> page = got("/reckon?q=" + URLEncoder.encode(line, StandardCharsets.UTF_8));
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.headers().firstValue("Content-Type"))
        .hasValueSatisfying(type -> assertThat(type).startsWith("text/html"));
    return page.body();
  }

  @Test
  void theFirstPageLeadsHere() throws IOException, InterruptedException {
    assertThat(got("/").body()).contains("href=\"/reckon\"");
    assertThat(got("/reckon").body())
        .contains("<form method=\"get\" action=\"/reckon\"")
        .contains("boiling point at 1200 m");
  }

  @Test
  void anAnswerSaysWhatItTookAndWhy() throws IOException, InterruptedException {
    assertThat(asked("boiling point at 1200 m"))
        .contains("<b>96.0 °C</b>")
        .contains("<b>pressure</b> 87.718 kPa (air at 1200 m in standard weather)")
        .contains("<code>")
        .contains("Holds: ")
        .contains("href=\"/science/sources#")
        .contains("href=\"/science/boiling-point\"")
        .contains("Or did you mean")
        .contains("q=wort-boiling-point+1200+m");
  }

  @Test
  void theSpreadOfTwoMethodsIsSeen() throws IOException, InterruptedException {
    assertThat(asked("ibu 30 g 5.5 % 20 L 60 min"))
        .contains("<b>19 mg/L</b>")
        .contains("Other methods say")
        .contains("27 mg/L");
    assertThat(asked("refractometer 12 P 6 P")).contains("give or take 0.3 °P");
  }

  @Test
  void whatIsMissingIsAskedForWithTheFormFilledSoFar() throws IOException, InterruptedException {
    assertThat(asked("strike 4.4 kg 66 C"))
        .contains("strike still needs liquor (kg).")
        .contains("name=\"malt-kg\" value=\"4.4 kg\"")
        .contains("name=\"liquor\" value=\"\" required")
        .contains("name=\"malt-c\" value=\"20 °C\"")
        .contains("usually 20 °C");
  }

  @Test
  void theFormAnswersAtAnAddressOfItsOwn() throws IOException, InterruptedException {
    String query = "?liquor=15+L&malt-kg=4.4+kg&mash=66+C&malt-c=20+%C2%B0C&vessel=2500+J%2FK";
    assertThat(got("/reckon/strike" + query.replace("15+L", "14.97+kg")).body())
        .contains("<b>69.7 °C</b>")
        .contains("Usual values, because nothing else was said: <b>malt</b> 20.0 °C");
    assertThat(got("/reckon/strike?liquor=ten").body()).contains("does not begin with a number");
    assertThat(got("/reckon/strike").body()).contains("Reckon with these");
  }

  @Test
  void hostileWordsStayWords() throws IOException, InterruptedException {
    assertThat(asked("<script>alert(1)</script> plato 1.048"))
        .doesNotContain("<script>alert")
        .contains("&lt;script&gt;");
    assertThat(got("/reckon/plato?gravity=%22%3E%3Cimg%20src=x%3E").body())
        .doesNotContain("<img src=x>");
    assertThat(got("/science/..%2f..%2fetc%2fpasswd").body()).doesNotContain("root:");
  }

  @Test
  void nonsenseIsAnsweredWithASentence() throws IOException, InterruptedException {
    assertThat(asked("asdf 12")).contains("&#39;asdf&#39; is nothing that can be reckoned here");
    assertThat(got("/reckon/no-such-thing").statusCode()).isEqualTo(404);
    assertThat(got("/reckon/no-such-thing").body()).contains("There is no calculation");
  }

  @Test
  void everyCalculationIsListedUnderItsPhenomenonAndItsPageOpens()
      throws IOException, InterruptedException {
    String all = got("/reckon/all").body();
    for (Calculation calculation : Reckoner.all()) {
      assertThat(all).contains("<a href=\"/reckon/" + calculation.name() + "\">");
      HttpResponse<String> page = got("/reckon/" + calculation.name());
      assertThat(page.statusCode()).as(calculation.name()).isEqualTo(200);
      assertThat(page.body()).as(calculation.name()).contains("href=\"/science/");
    }
  }

  @Test
  void noLinkOfThesePagesLeadsNowhere() throws IOException, InterruptedException {
    List<String> links = new ArrayList<>();
    for (String page :
        List.of("/reckon", "/science", "/science/alcohol", "/science/hops-in-the-boil")) {
      LINK.matcher(got(page).body())
          .results()
          .map((MatchResult m) -> m.group(1))
          .forEach(links::add);
    }
    for (String link : links.stream().distinct().toList()) {
      assertThat(got(link.replace("&amp;", "&")).statusCode()).as(link).isEqualTo(200);
    }
    assertThat(links).hasSizeGreaterThan(40);
  }

  @Test
  void aPageOfTheScienceHasItsTextAndItsPictures() throws IOException, InterruptedException {
    String page = got("/science/hops-in-the-boil").body();
    assertThat(page)
        .contains("<h1>Hops in the boil</h1>")
        .contains("<img src=\"/science/pictures/isomerisation.svg\"")
        .contains("id=\"hop-utilisation\"")
        .doesNotContain("<!--")
        .doesNotContain("&lt;!--");
    HttpResponse<String> picture = got("/science/pictures/isomerisation.svg");
    assertThat(picture.statusCode()).isEqualTo(200);
    assertThat(picture.headers().firstValue("Content-Type").orElse("")).startsWith("image/svg+xml");
    assertThat(got("/science/sources").body()).contains("<dt id=\"malowicki2005\">");
  }
}
