package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.SameSiteAttribute;
import com.sun.net.httpserver.HttpServer;
import gylebook.brewday.Command;
import gylebook.gate.Codes;
import gylebook.gate.Gate;
import gylebook.gate.Home;
import gylebook.gate.ScreenFile;
import gylebook.gate.Screens;
import gylebook.gate.Ticking;
import gylebook.journal.MemoryJournal;
import gylebook.testing.Browser;
import gylebook.testing.InBrowser;
import gylebook.web.PageServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Who may come in from the home network, in real browsers. `brewhouse.test` is the machine's name
/// there; whoever calls it so is a screen like any other, wherever it runs.
class OtherScreensStoryTest extends InBrowser {
  @TempDir private Path folder;

  private Clerk clerk;
  private Screens screens;
  private PageServer server;
  private Wiring wiring;

  @BeforeEach
  void start() {
    clerk = new Clerk(new MemoryJournal(), InstantSource.system());
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    long seen = clerk.book().gyle("bitter").orElseThrow().lastSeq();
    clerk.write("bitter", seen, new Command.FixPlan("3", 20, 100, "as planned"), "fixed");
    clerk.note("bitter", new Command.StartDay(), "began", Optional.empty());
    wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
    RandomGenerator chance = RandomGeneratorFactory.of("L64X128MixRandom").create(3);
    screens =
        new Screens(new ScreenFile(folder.resolve("screens.json")), InstantSource.system(), chance);
    Home home =
        new Home(
            Set.of("brewhouse.test"),
            List.of(new Home.Place(InetAddress.ofLiteral("192.0.2.40"), 24)));
    Ticking clock = new Ticking();
    Gate gate =
        Gate.open(
            () -> home, new Codes(clock.nanos(), chance), screens, clock.nanos(), Optional.empty());
    server = PageServer.start(0, clerk, wallet, wiring, gate);
  }

  @AfterEach
  void stop() {
    server.stop();
    wiring.close();
  }

  private String outside(String path) {
    return "http://brewhouse.test:" + server.port() + path;
  }

  private static BrowserContext sized(int width, int height) {
    return browser.sized(width, height, ColorScheme.LIGHT);
  }

  /// A code as the page on the machine itself shows it.
  private String invited(Page own) {
    own.navigate(server.address() + "screens");
    own.locator("#invite").click();
    assertThat(own.locator("svg.qr")).isVisible();
    return own.locator(".code").innerText();
  }

  private Page letIn(BrowserContext context, Page own, String name) {
    String code = invited(own);
    Page page = context.newPage();
    page.navigate(outside("/come-in#" + code.replace(" ", "")));
    assertThat(page.locator("[name=code]")).hasValue(code.replace(" ", ""));
    page.locator("[name=name]").fill(name);
    page.locator("button.main").click();
    assertThat(page.locator("#gyle")).isVisible();
    return page;
  }

  @Test
  void aScreenThatIsNotLetInGetsNothing() {
    try (BrowserContext context = sized(390, 844)) {
      Page page = context.newPage();
      for (String path :
          List.of(
              "/",
              "/gyles/bitter",
              "/gyles/bitter/kettle",
              "/gyles/bitter/rig.json",
              "/api/gyles/bitter/kettle",
              "/api/gyles/bitter/live",
              "/api/gyles/bitter/forecast",
              "/api/gyles/bitter/levers",
              "/instruments",
              "/api/instruments",
              "/rehearsal",
              "/screens",
              "/api/screens",
              "/kettle.js",
              "/nothing/here")) {
        Response answer = page.navigate(outside(path));
        assertThat(answer.status()).as(path).isEqualTo(401);
        assertThat(answer.text()).as(path).contains("not let in").doesNotContain("bitter");
      }
      assertThat(page.locator("a")).hasCount(2);
      page.locator("text=Come in with a code").click();
      page.locator("[name=code]").fill("1234 5678");
      page.locator("button.main").click();
      assertThat(page.locator("#state")).containsText("not, or no longer, good");
      assertThat(context.cookies()).isEmpty();
      assertThat(screens.all()).isEmpty();
    }
  }

  @Test
  void aScreenThatIsLetInSeesTheDayLiveAndOneThatIsTurnedOutIsOutAtOnce() {
    try (BrowserContext house = sized(1024, 768);
        BrowserContext away = sized(390, 844)) {
      Page own = house.newPage();
      Page tablet = letIn(away, own, "the kitchen tablet");
      assertThat(own.locator("#screens")).containsText("the kitchen tablet");
      assertThat(own.locator("#invitation")).containsText("The code was used");
      Cookie cookie = away.cookies().getFirst();
      assertThat(cookie.httpOnly).isTrue();
      assertThat(cookie.sameSite).isEqualTo(SameSiteAttribute.STRICT);

      tablet.navigate(outside("/gyles/bitter/kettle"));
      assertThat(tablet.locator(".leg")).containsText("strike reached");
      assertThat(tablet.locator("#reload")).containsText("not encrypted");
      clerk.note("bitter", new Command.Reach("strikeReady"), "strike", Optional.empty());
      assertThat(tablet.locator(".leg")).containsText("malt in");

      Locator form = tablet.locator("form[data-what='dip-stick']");
      form.locator("[name=value]").fill("25 L");
      form.locator("button").click();
      assertThat(tablet.locator(".notes")).containsText("25 L");

      // Turned out: its open stream ends, so that the page asks, hears it, and shows no more.
      own.locator("[data-out]").click();
      assertThat(own.locator("#screens")).containsText("None yet");
      assertThat(tablet.locator("#kettle")).containsText("not let in any more");
      assertThat(tablet.locator(".notes")).hasCount(0);
      assertThat(tablet.navigate(outside("/gyles/bitter/kettle")).status()).isEqualTo(401);
    }
  }

  @Test
  void aScreenThatIsLetInReachesNotIntoTheMachine() {
    try (BrowserContext house = sized(1024, 768);
        BrowserContext away = sized(390, 844)) {
      Page tablet = letIn(away, house.newPage(), "tablet");
      for (String path :
          List.of("/screens", "/screens/", "/api/screens", "/instruments/tie/table")) {
        Response answer = tablet.navigate(outside(path));
        assertThat(answer.status()).as(path).isEqualTo(403);
      }
      tablet.navigate(outside("/"));
      for (String path :
          List.of(
              "/api/screens/invite",
              "/api/screens/invite/",
              "/api/screens/out",
              "/api/instruments/look",
              "/api/instruments/tie",
              "/api/instruments/loose")) {
        Object status =
            tablet.evaluate(
                "path => fetch(path, {method: 'POST', headers: {'Gyle-Seen': '0'},"
                    + " body: '{\"kind\":\"table\",\"path\":\"/etc/passwd\"}'}).then(a => a.status)",
                path);
        assertThat(status).as(path).isEqualTo(403);
      }
    }
  }

  @Test
  void aPageOfAnotherOriginGetsNothing() throws IOException {
    HttpServer foreign =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    foreign.createContext(
        "/",
        exchange -> {
          byte[] html = "<!doctype html><title>foreign</title>".getBytes(StandardCharsets.UTF_8);
          exchange.getResponseHeaders().add("Content-Type", "text/html");
          exchange.sendResponseHeaders(200, html.length);
          exchange.getResponseBody().write(html);
          exchange.close();
        });
    foreign.start();
    int port = foreign.getAddress().getPort();
    long before = clerk.book().lastSeq();
    try (BrowserContext house = sized(1024, 768);
        BrowserContext away = sized(390, 844)) {
      letIn(away, house.newPage(), "tablet");
      // On the machine itself, and in the browser of a screen that is in: the same.
      for (BrowserContext victim : List.of(house, away)) {
        for (String from : List.of("http://elsewhere.test:", "http://brewhouse.test:")) {
          Page page = victim.newPage();
          page.navigate(from + port + "/");
          for (String there : List.of(server.address(), outside("/"))) {
            assertThat(page.evaluate(REACH, there)).as(from + " to " + there).isEqualTo("nothing");
          }
        }
      }
    } finally {
      foreign.stop(0);
    }
    assertThat(clerk.book().lastSeq()).as("nothing was written").isEqualTo(before);
  }

  /// Everything a page can try: to fetch, to post, to listen, to draw, to frame.
  private static final String REACH =
      """
      async (there) => {
        const got = [];
        for (const path of ["", "api/gyles/bitter/kettle", "gyles/bitter", "api/screens"]) {
          for (const options of [{}, {credentials: "include"},
              {method: "POST", credentials: "include", body: "{}"}]) {
            try {
              const answer = await fetch(there + path, options);
              got.push(path + answer.status + (await answer.text()));
            } catch {}
          }
          try {
            const answer = await fetch(there + path, {mode: "no-cors", credentials: "include"});
            if (answer.type !== "opaque" || await answer.text()) got.push("opaque " + path);
          } catch {}
        }
        for (const body of ['{"do":"reach","what":"maltIn"}', "{}"]) {
          try {
            await fetch(there + "api/gyles/bitter/day", {method: "POST", mode: "no-cors",
              credentials: "include", body});
          } catch {}
        }
        await new Promise((done) => {
          const live = new EventSource(there + "api/gyles/bitter/live", {withCredentials: true});
          live.addEventListener("there", () => { got.push("stream"); done(); });
          live.onerror = () => { live.close(); done(); };
        });
        for (const path of ["kettle.js", "page.js"]) {
          await new Promise((done) => {
            const script = document.createElement("script");
            script.src = there + path;
            script.onload = () => { got.push("script " + path); done(); };
            script.onerror = done;
            document.head.append(script);
          });
        }
        const frame = document.createElement("iframe");
        frame.src = there;
        await new Promise((done) => { frame.onload = done; document.body.append(frame); });
        try {
          if (frame.contentDocument?.body?.textContent) got.push("frame");
        } catch {}
        return got.join() || "nothing";
      }
      """;

  @Test
  void axeFindsNothingAndNothingIsWiderThanTheScreen() {
    for (int width : List.of(390, 1024)) {
      try (BrowserContext house = sized(width, 800)) {
        Page own = house.newPage();
        invited(own);
        assertThat(Browser.beyond(own)).isZero();
        assertThat(Browser.faults(own)).isEmpty();
        own.navigate(outside("/come-in"));
        assertThat(own.locator("[name=name]")).not().hasValue("");
        assertThat(Browser.beyond(own)).isZero();
        assertThat(Browser.faults(own)).isEmpty();
        own.navigate(outside("/"));
        assertThat(own.locator("h1")).hasText("Not let in");
        assertThat(Browser.faults(own)).isEmpty();
      }
    }
  }
}
