package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import gylebook.journal.MemoryJournal;
import gylebook.testing.Browser;
import gylebook.testing.InBrowser;
import gylebook.web.PageServer;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The page in a real browser: phone, tablet and desktop, by hand and by keyboard, light and dark.
class BrowserStoryTest extends InBrowser {
  private final List<String> complaints = new ArrayList<>();
  private PageServer server;
  private Wiring wiring;

  @BeforeEach
  void start() {
    Clerk clerk = new Clerk(new MemoryJournal(), InstantSource.system());
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
    server = PageServer.start(0, clerk, wallet, wiring);
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

  private static Locator forecast(Page page) {
    return page.locator("#forecast[data-days='1000']");
  }

  @ParameterizedTest
  @CsvSource({"360, 740", "810, 1080", "1280, 800"})
  void nothingIsWiderThanTheScreen(int width, int height) {
    try (BrowserContext context = sized(width, height, ColorScheme.LIGHT)) {
      for (String path : List.of("", "gyles/wheat")) {
        Page page = opened(context, path);
        if (!path.isEmpty()) {
          assertThat(forecast(page)).isVisible();
          page.locator("#rig summary").click();
        }
        int beyond = Browser.beyond(page);
        assertThat(beyond).as("%s at %d px is wider than the screen", path, width).isZero();
        page.close();
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"360, 740, LIGHT", "1280, 800, DARK"})
  void axeFindsNothing(int width, int height, ColorScheme look) {
    try (BrowserContext context = sized(width, height, look)) {
      Page page = opened(context, "gyles/bitter");
      assertThat(forecast(page)).isVisible();
      page.locator("#rig summary").click();
      page.locator("#why summary").first().click();
      page.locator(".slot").first().click();
      assertThat(Browser.faults(page)).isEmpty();
    }
  }

  @Test
  void aLineOfHopsIsTakenOutByAButtonAndComesBackByUndo() {
    try (BrowserContext context = sized(360, 740, ColorScheme.LIGHT)) {
      Page page = opened(context, "gyles/bitter");
      Locator hops = page.locator(".slot[data-slot^='hops.'][data-slot$='.massG']");
      assertThat(forecast(page)).isVisible();
      int before = hops.count();
      hops.first().click();
      page.getByText("Take it out").click();
      assertThat(hops).hasCount(before - 1);
      page.locator("#undo").click();
      assertThat(hops).hasCount(before);
      // A value that cannot go has no such button.
      page.locator(".slot[data-slot='aim.lengthL']").click();
      assertThat(page.getByText("Take it out")).hasCount(0);
    }
  }

  @Test
  void aValueIsChangedWhereItStandsAndTheForecastFollows() {
    try (BrowserContext context = sized(360, 740, ColorScheme.LIGHT)) {
      Page page = opened(context, "gyles/bitter");
      assertThat(forecast(page)).isVisible();
      String before = page.locator(".expect").innerText();

      page.locator(".slot[data-slot='aim.lengthL']").click();
      Locator field = page.locator(".editing input");
      field.fill("15,5 L");
      field.press("Enter");

      assertThat(page.locator(".slot[data-slot='aim.lengthL']")).hasText("15.5 L");
      assertThat(page.locator(".slot[data-slot='aim.lengthL']")).isFocused();
      assertThat(page.locator(".expect")).not().hasText(before);
      assertThat(page.locator("#undo")).containsText("15,5 L");
      page.locator("#undo").click();
      assertThat(page.locator(".slot[data-slot='aim.lengthL']")).hasText("20.0 L");
      assertThat(page.locator(".expect")).hasText(before);
    }
  }

  @Test
  void whatIsTypedIsToldAheadAndLeavingItChangesNothing() {
    try (BrowserContext context = sized(360, 740, ColorScheme.LIGHT)) {
      Page page = opened(context, "gyles/bitter");
      assertThat(forecast(page)).isVisible();
      String before = page.locator(".expect").innerText();
      Locator slot = page.locator(".slot[data-slot='aim.lengthL']");
      slot.click();
      page.waitForResponse(
          response -> response.url().endsWith("typed=15+L") && response.status() == 200,
          () -> page.locator(".editing input").fill("15 L"));
      page.locator(".editing input").press("Escape");

      assertThat(slot).hasText("20.0 L");
      assertThat(page.locator(".expect")).hasText(before);
      assertThat(page.locator("#undo")).hasCount(0);
    }
  }

  @Test
  void whatCannotBeReadStaysInItsFieldWithAReason() {
    try (BrowserContext context = sized(810, 1080, ColorScheme.LIGHT)) {
      Page page = opened(context, "gyles/bitter");
      page.locator(".slot[data-slot='grist.0.massKg']").click();
      Locator field = page.locator(".editing input");
      field.fill("a sackful");
      field.press("Enter");

      assertThat(page.locator(".problem")).containsText("a sackful");
      assertThat(field).hasValue("a sackful");
      assertThat(field).isFocused();
      field.press("Escape");
      assertThat(page.locator(".slot[data-slot='grist.0.massKg']")).isFocused();
    }
  }

  @Test
  void everythingIsReachedByKeyboard() {
    try (BrowserContext context = sized(1280, 800, ColorScheme.LIGHT)) {
      Page page = opened(context, "gyles/bitter");
      assertThat(forecast(page)).isVisible();
      page.keyboard().press("/");
      assertThat(page.locator(".slot").first()).isFocused();
      page.keyboard().press("Enter");
      page.keyboard().type("");
      page.keyboard().press("Control+A");
      page.keyboard().type("18 L");
      page.keyboard().press("Enter");
      assertThat(page.locator(".slot[data-slot='aim.lengthL']")).hasText("18.0 L");
      page.keyboard().press("Backspace");
      assertThat(page.locator(".slot[data-slot='aim.lengthL']")).hasText("20.0 L");
      page.keyboard().press("?");
      assertThat(page.locator("#key-list")).isVisible();
      page.keyboard().press("Escape");
      assertThat(page.locator("#key-list")).hasCount(0);
    }
  }

  @Test
  void aNewcomerDescribesARigAndTheForecastIsForIt() {
    try (BrowserContext context = sized(810, 1080, ColorScheme.LIGHT)) {
      Page page = opened(context, "gyles/bitter");
      assertThat(forecast(page)).isVisible();
      page.locator("#describe summary").click();
      page.locator("#newcomer .slot[data-slot='name']").click();
      page.locator("#newcomer .editing input").fill("the blue pot");
      page.locator("#newcomer .editing input").press("Enter");
      assertThat(page.locator("#newcomer .slot[data-slot='name']")).hasText("the blue pot");
      page.locator("#newcomer .slot[data-slot='place']").click();
      page.locator("#newcomer .editing select").selectOption("in the kettle");
      page.locator("#newcomer .editing button[type=submit]").click();
      page.locator("#use-rig").click();

      assertThat(page.locator("#rig h2")).containsText("the blue pot");
      assertThat(page.locator("#undo")).containsText("the blue pot");
    }
  }

  @Test
  void aWantedLiquorIsFoundTakenAndUndone() {
    try (BrowserContext context = sized(360, 740, ColorScheme.LIGHT)) {
      Page page = opened(context, "gyles/wheat");
      page.getByText("Find salts and acid for a wanted liquor").click();
      assertThat(Browser.faults(page)).isEmpty();
      page.locator("input[name=calcium]").fill("90");
      page.locator("input[name=ph]").fill("5.4");
      page.locator("input[name=lactic_acid]").fill("80 %");
      page.getByText("Find the amounts").click();

      assertThat(page.locator("#found")).containsText("lactic acid 80 %");
      assertThat(page.locator("input[name=calcium]")).hasValue("90");
      assertThat(Browser.beyond(page)).isZero();
      assertThat(Browser.faults(page)).isEmpty();
      page.locator("#take-liquor").click();
      assertThat(page.locator("#words")).containsText("lactic acid 80 %");
      page.locator("#undo").click();
      assertThat(page.locator("#words")).containsText("nothing is added");
    }
  }

  @Test
  void theNewestEditWins() {
    try (BrowserContext context = sized(810, 1080, ColorScheme.LIGHT)) {
      Page page = opened(context, "gyles/bitter");
      for (String litres : List.of("15 L", "16 L", "17 L")) {
        page.locator(".slot[data-slot='aim.lengthL']").click();
        page.locator(".editing input").fill(litres);
        page.locator(".editing input").press("Enter");
        assertThat(page.locator(".slot[data-slot='aim.lengthL']"))
            .hasText(litres.replace(" ", ".0 "));
      }
      assertThat(page.locator(".expect")).containsText(Pattern.compile("17\\.\\d L|16\\.9 L"));
    }
  }

  @Test
  void unitsAndLookAreTheReadersChoice() {
    try (BrowserContext context = sized(810, 1080, ColorScheme.LIGHT)) {
      Page page = opened(context, "gyles/bitter");
      page.locator("button[data-set='us']").click();
      assertThat(page.locator(".slot[data-slot='aim.lengthL']")).containsText("US gal");
      // The page came anew, and its text stands before its script listens.
      page.waitForLoadState();
      page.locator("select[data-quantity='VOLUME']").selectOption("L");
      assertThat(page.locator(".slot[data-slot='aim.lengthL']")).hasText("20.0 L");
      page.locator("#look").selectOption("dark");
      page.reload();
      assertThat(page.locator("html")).hasAttribute("data-look", "dark");
    }
  }

  @Test
  void aServerThatIsGoneIsSaidAndWhatWasTypedStays() {
    try (BrowserContext context = sized(360, 740, ColorScheme.LIGHT)) {
      Page page = opened(context, "gyles/bitter");
      assertThat(forecast(page)).isVisible();
      page.locator(".slot[data-slot='aim.lengthL']").click();
      page.locator(".editing input").fill("25 L");
      // The network's own switch may come a moment after the key.
      page.route("**/fill", Route::abort);
      page.locator(".editing input").press("Enter");

      assertThat(page.locator(".problem")).containsText("Not saved");
      assertThat(page.locator(".editing input")).hasValue("25 L");
      page.unroute("**/fill");
      page.locator(".editing input").press("Enter");
      assertThat(page.locator(".slot[data-slot='aim.lengthL']")).hasText("25.0 L");
      complaints.removeIf(text -> text.contains("ERR_FAILED"));
    }
  }
}
