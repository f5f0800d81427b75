package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import gylebook.brewday.Command;
import gylebook.brewday.DayNote;
import gylebook.gate.Codes;
import gylebook.gate.Gate;
import gylebook.gate.Home;
import gylebook.gate.HomeAuthority;
import gylebook.gate.ScreenFile;
import gylebook.gate.Screens;
import gylebook.gate.Ticking;
import gylebook.journal.Event;
import gylebook.journal.MemoryJournal;
import gylebook.testing.Browser;
import gylebook.testing.InBrowser;
import gylebook.web.PageServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The page at the kettle while the program is really away: the server is stopped, and started
/// again at the same port.
class OfflineStoryTest extends InBrowser {
  private static final double PATIENCE_MS = 90_000;
  @TempDir private Path folder;

  private final MemoryJournal journal = new MemoryJournal();
  private final Clerk clerk = new Clerk(journal, InstantSource.system());
  private final Wallet wallet = new Wallet();
  private final Wiring wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
  private final RandomGenerator chance = RandomGeneratorFactory.of("L64X128MixRandom").create(5);
  private final Ticking clock = new Ticking();
  private final Codes codes = new Codes(clock.nanos(), chance);
  private Screens screens;
  private PageServer server;

  @BeforeEach
  void start() {
    ScreenFile file = new ScreenFile(folder.resolve("screens.json"));
    screens = new Screens(file, InstantSource.system(), chance);
    Serve.invent(clerk, wallet);
    long seen = clerk.book().gyle("bitter").orElseThrow().lastSeq();
    clerk.write("bitter", seen, new Command.FixPlan("3", 20, 100, "as planned"), "fixed");
    clerk.note("bitter", new Command.StartDay(), "began", Optional.empty());
    server = PageServer.start(0, clerk, wallet, wiring);
  }

  @AfterEach
  void stop() {
    server.stop();
    wiring.close();
  }

  private static BrowserContext sized() {
    return browser.sized(390, 844, ColorScheme.LIGHT);
  }

  private static LocatorAssertions.ContainsTextOptions patient() {
    return new LocatorAssertions.ContainsTextOptions().setTimeout(PATIENCE_MS);
  }

  private static Page held(BrowserContext context, String address) {
    Page page = context.newPage();
    page.navigate(address + "gyles/bitter/kettle");
    assertThat(page.locator("#reload")).containsText("held on this device", patient());
    return page;
  }

  private List<String> read() {
    return clerk.book().gyle("bitter").orElseThrow().happened().stream()
        .map(DayNote::event)
        .flatMap(
            event ->
                event instanceof Event.ReadingTaken taken
                    ? Stream.of(taken.asRead())
                    : Stream.empty())
        .toList();
  }

  private static void dip(Page page, String typed) {
    Locator form = page.locator("form[data-what='dip-stick']");
    form.locator("[name=value]").fill(typed);
    form.locator("button").click();
  }

  @Test
  void thePageIsLoadedAgainWithoutTheProgramAndItsNotesAreDeliveredOnceInOrder() {
    try (BrowserContext context = sized()) {
      Page page = held(context, server.address());
      clerk.note("bitter", new Command.Reach("strikeReady"), "strike", Optional.empty());
      assertThat(page.locator(".leg")).containsText("malt in", patient());
      int port = server.port();
      server.stop();

      dip(page, "24,9");
      assertThat(page.locator("#strip")).containsText("1 note waits", patient());
      page.reload();
      assertThat(page.locator(".leg")).containsText("malt in");
      assertThat(page.locator(".left")).hasText(Pattern.compile("[0-9]+:[0-9]{2} (left|over)"));
      assertThat(page.locator(".three")).containsText("\u00b0C");
      assertThat(page.locator("#strip")).containsText("the program does not answer", patient());
      assertThat(page.locator("#strip")).containsText("1 note waits");
      dip(page, "25");
      assertThat(page.locator("#strip")).containsText("2 notes wait", patient());
      page.reload();
      dip(page, "25,1");
      assertThat(page.locator("#strip")).containsText("3 notes wait", patient());
      assertThat(read()).isEmpty();

      server = PageServer.start(port, clerk, wallet, wiring);
      assertThat(page.locator("#strip"))
          .isHidden(new LocatorAssertions.IsHiddenOptions().setTimeout(PATIENCE_MS));
      assertThat(page.locator(".notes")).containsText("25,1 L", patient());
      assertThat(read()).containsExactly("24,9 L", "25 L", "25,1 L");
      page.reload();
      assertThat(page.locator(".notes")).containsText("25,1 L", patient());
      assertThat(read()).as("nothing is sent again").hasSize(3);
    }
  }

  @Test
  void theCountdownOfAHeldPageGoesOnFromTheTimeItWasHeld() {
    try (BrowserContext context = sized()) {
      Page page = held(context, server.address());
      server.stop();
      // As if the program's clock were ten minutes ahead of this device's when it was held.
      page.evaluate(TEN_MINUTES_APART);
      page.reload();
      assertThat(page.locator("#strip")).containsText("does not answer", patient());
      Number apartMs = (Number) page.evaluate(APART);
      // A second for the rounding of what is shown, one for its last tick.
      assertThat(apartMs.doubleValue()).isBetween(598_000.0, 602_000.0);
    }
  }

  private static final String TEN_MINUTES_APART =
      """
      async () => {
        const held = await caches.open((await caches.keys())[0]);
        for (const request of await held.keys()) {
          const was = await held.match(request);
          const headers = new Headers(was.headers);
          headers.set("Gyle-Held", String(Number(headers.get("Gyle-Held")) - 600_000));
          await held.put(request, new Response(await was.blob(), { headers }));
        }
      }
      """;

  /// How far the countdown that is shown is from what this device's own clock would give.
  private static final String APART =
      """
      () => {
        const left = document.querySelector(".left");
        const sec = left.textContent.match(/[0-9:]+/)[0].split(":")
          .reduce((sum, part) => 60 * sum + Number(part), 0);
        const shown = left.textContent.includes("over") ? -sec : sec;
        return Number(left.dataset.ends) - Date.now() - 1000 * shown;
      }
      """;

  @Test
  void whatAnOlderProgramHeldIsThrownAwayAndNothingForeignIsTouchedOrHeld() {
    try (BrowserContext context = sized()) {
      Page page = context.newPage();
      page.navigate(server.address());
      page.evaluate(
          "async () => { await caches.open('gylebook-older'); await caches.open('other'); }");
      Page kettle = held(context, server.address());
      kettle.evaluate("() => fetch('/').then(() => fetch('/instruments.js'))");
      Object names = kettle.evaluate("() => caches.keys()");
      assertThat(names.toString()).matches("\\[other, gylebook-[0-9A-Za-z.-]{8,}\\]");
      Object paths =
          kettle.evaluate(
              "async () => { const c = await caches.open((await caches.keys())[1]);"
                  + " return (await c.keys()).map(r => r.url).sort(); }");
      String at = server.address();
      assertThat((List<?>) paths)
          .isEqualTo(
              List.of(
                  at + "api/gyles/bitter/kettle",
                  at + "gyles/bitter/kettle",
                  at + "icon.svg",
                  at + "kettle.js",
                  at + "page.css",
                  at + "page.js"));
    }
  }

  /// Open to the home network, with the screens that were let in before.
  private PageServer opened(Home home, int port, Optional<HomeAuthority> authority) {
    Gate gate = Gate.open(() -> home, codes, screens, clock.nanos(), authority);
    return PageServer.start(port, clerk, wallet, wiring, gate);
  }

  private Page letIn(BrowserContext context, String there) {
    Page page = context.newPage();
    page.navigate(there + "come-in#" + codes.fresh());
    page.locator("button.main").click();
    assertThat(page.locator("#gyle")).isVisible();
    return held(context, there);
  }

  @Test
  void aScreenThatIsTurnedOutHoldsNothingAnyMore() {
    server.stop();
    // An address of the loopback that browsers count as secure and that is not the machine itself.
    Home home = new Home(Set.of(), List.of(new Home.Place(InetAddress.ofLiteral("127.0.0.2"), 32)));
    server = opened(home, 0, Optional.empty());
    String there = "http://127.0.0.2:" + server.port() + "/";
    try (BrowserContext context = sized()) {
      Page kettle = letIn(context, there);
      screens.out(screens.all().getFirst().screenId());
      assertThat(kettle.locator("#kettle")).containsText("not let in any more", patient());
      server.stop();
      assertThatThrownBy(kettle::reload).isInstanceOf(PlaywrightException.class);
    }
  }

  /// The first of two free ports beside one another.
  private static int twoFree() throws IOException {
    int port = 0;
    while (port == 0) {
      try (ServerSocket first = new ServerSocket(0);
          ServerSocket _ = new ServerSocket(first.getLocalPort() + 1)) {
        port = first.getLocalPort();
      } catch (IOException | IllegalArgumentException _) {
        // The next one is taken; another pair is tried.
      }
    }
    return port;
  }

  @Test
  void onAScreenThatTrustsTheHomeTheEncryptedPageIsLoadedAgainWithoutTheProgram()
      throws IOException {
    server.stop();
    Home home =
        new Home(
            Set.of("brewhouse.test"),
            List.of(new Home.Place(InetAddress.ofLiteral("192.168.7.4"), 24)));
    HomeAuthority authority =
        HomeAuthority.open(folder.resolve("others"), () -> home, InstantSource.system());
    int port = twoFree();
    server = opened(home, port, Optional.of(authority));
    String there = "https://brewhouse.test:" + (port + 1) + "/";
    try (BrowserContext stranger = sized()) {
      Page page = stranger.newPage();
      assertThatThrownBy(() -> page.navigate(there)).hasMessageContaining("ERR_CERT_AUTHORITY");
    }
    Browser tablet = Browser.trusting(authority.certificate().getPublicKey());
    try (BrowserContext context = tablet.sized(1080, 810, ColorScheme.LIGHT)) {
      Page page = letIn(context, there);
      server.stop();

      page.reload();
      assertThat(page.locator(".leg")).containsText("strike reached");
      assertThat(page.locator("#strip")).containsText("the program does not answer", patient());
      dip(page, "24,9");
      dip(page, "25");
      assertThat(page.locator("#strip")).containsText("2 notes wait", patient());
      page.reload();
      assertThat(page.locator("#strip")).containsText("2 notes wait", patient());
      assertThat(read()).isEmpty();

      server = opened(home, port, Optional.of(authority));
      assertThat(page.locator(".notes")).containsText("25 L", patient());
      page.reload();
      assertThat(page.locator(".notes")).containsText("25 L", patient());
      assertThat(read()).containsExactly("24,9 L", "25 L");
    } finally {
      tablet.close();
    }
  }
}
