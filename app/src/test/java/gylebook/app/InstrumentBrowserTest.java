package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.RequestOptions;
import gylebook.journal.MemoryJournal;
import gylebook.testing.Browser;
import gylebook.testing.InBrowser;
import gylebook.web.PageServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The pages of the instruments in a browser.
class InstrumentBrowserTest extends InBrowser {
  @TempDir private Path folder;

  private final List<String> complaints = new ArrayList<>();
  private Wiring wiring;
  private PageServer server;

  @BeforeEach
  void start() {
    Clerk clerk = new Clerk(new MemoryJournal(), InstantSource.system());
    wiring = new Wiring(clerk, InstantSource.system(), folder);
    server = PageServer.start(0, clerk, new Wallet(), wiring);
  }

  @AfterEach
  void stop() {
    server.stop();
    wiring.close();
    assertThat(complaints).as("what the browser complained of").isEmpty();
  }

  private Page opened(BrowserContext context, String path) {
    return Browser.opened(context, server.address() + path, complaints);
  }

  private static BrowserContext sized(int width, int height, ColorScheme look) {
    return browser.sized(width, height, look);
  }

  private void post(Page page, String token, String body) {
    page.request()
        .post(
            server.address() + "api/readings",
            RequestOptions.create().setHeader("Authorization", "Bearer " + token).setData(body));
  }

  /// Ties a board by keyboard alone and gives its token.
  private static String tied(Page page) {
    page.locator("[name=name]").focus();
    page.keyboard().type("suction probe");
    page.keyboard().press("Tab");
    page.keyboard().type("at the pump");
    page.keyboard().press("Enter");
    assertThat(page.locator("#token")).isVisible();
    return page.locator("#token").innerText();
  }

  @ParameterizedTest
  @CsvSource({"360, 740, LIGHT", "1280, 800, DARK"})
  void aBoardIsTiedByKeyboardAndWhatArrivesIsShownAsItIs(int width, int height, ColorScheme look) {
    try (BrowserContext context = sized(width, height, look)) {
      Page page = opened(context, "instruments/tie/post");
      String token = tied(page);
      page.keyboard().press("Enter");
      assertThat(page.locator("h1")).hasText("suction probe");
      assertThat(page.locator("main")).not().containsText(token);
      post(page, token, "66.3");
      assertThat(page.locator(".value b")).hasText("66.3 \u00b0C");
      post(page, token, "85");
      assertThat(page.locator("#live")).containsText("1 power-on value of 85 \u00b0C");
      post(page, token, "overheated <b>twice</b> " + "x".repeat(100));
      assertThat(page.locator("#live")).containsText("1 garbled");
      assertFits(page);
      page.locator("p.back a").click();
      assertThat(page.locator(".dial .value b")).hasText("85.0 \u00b0C");
      assertFits(page);
      page.locator(".dial h2 a").click();
      page.locator("#loose").click();
      assertThat(page.locator("#live")).containsText("None is tied yet");
    }
  }

  @ParameterizedTest
  @CsvSource({"controller, 360", "table, 1280"})
  void theFormsFitTheScreenAndAxeFindsNothing(String kind, int width) {
    try (BrowserContext context = sized(width, 740, ColorScheme.LIGHT)) {
      Page page = opened(context, "instruments/tie/" + kind);
      assertThat(page.locator("[name=name]")).isVisible();
      assertFits(page);
    }
  }

  private static void assertFits(Page page) {
    int beyond = Browser.beyond(page);
    assertThat(beyond).as("wider than the screen by").isZero();
    assertThat(Browser.faults(page)).isEmpty();
  }

  @Test
  void aRehearsalIsBegunActedInAndEndedOnThePageForEverybodyWhoLooks() {
    try (BrowserContext one = sized(360, 740, ColorScheme.LIGHT);
        BrowserContext other = sized(810, 1080, ColorScheme.DARK)) {
      Page kettle = opened(one, "rehearsal");
      Page sofa = opened(other, "rehearsal");
      assertFits(kettle);
      kettle.locator("[name=pace]").selectOption("60");
      kettle.locator("[name=seed]").fill("5");
      kettle.locator("#rehearse-form button").click();
      assertThat(sofa.locator("#live")).containsText("Rehearsal 5");
      assertThat(sofa.locator("#live")).containsText("Cold liquor into the kettle");
      sofa.locator("[data-line='read dial']").click();
      assertThat(kettle.locator("#live")).containsText("dial shows");
      Page dials = opened(one, "instruments");
      assertThat(dials.locator(".dial")).hasCount(3);
      assertThat(dials.locator(".dial .value b")).hasCount(3);
      kettle.locator("[data-line='end']").click();
      assertThat(sofa.locator("#live")).containsText("What was hidden");
      assertFits(sofa);
    }
  }

  @Test
  void aChipIsSeenChosenAndAFieldThatDoesNotFitIsNamed() throws IOException {
    Files.createDirectory(folder.resolve("28-0416c2f4a1ff"));
    try (BrowserContext context = sized(360, 740, ColorScheme.DARK)) {
      Page page = opened(context, "instruments/tie/chip");
      page.locator("[name=everySec]").fill("soon");
      page.locator("[name=name]").fill("grain");
      page.locator("#look-there").click();
      page.locator(".sight").click();
      assertThat(page.locator("[name=number]")).hasValue("28-0416c2f4a1ff");
      page.locator("button[type=submit]").click();
      assertThat(page.locator("#state")).containsText("a whole number from 1 to 3600");
      assertThat(page.locator("[name=everySec]")).isFocused();
      page.locator("[name=everySec]").fill("1");
      page.locator("button[type=submit]").click();
      assertThat(page.locator(".plate")).containsText("28-0416c2f4a1ff: not on the bus");
      assertFits(page);
    }
  }
}
