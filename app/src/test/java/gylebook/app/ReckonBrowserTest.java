package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import gylebook.journal.MemoryJournal;
import gylebook.testing.Browser;
import gylebook.web.PageServer;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The Reckoner in a real browser: phone and desktop, light and dark, by keyboard, without scripts.
class ReckonBrowserTest {
  private static final List<String> PATHS =
      List.of(
          "reckon",
          "reckon?q=ibu+30+g+5.5+%25+20+L+60+min",
          "reckon?q=boil+the+ocean",
          "reckon/strike",
          "reckon/all",
          "science/hops-in-the-boil",
          "science/sources");

  private static Playwright playwright;
  private static com.microsoft.playwright.Browser browser;
  private static PageServer server;
  private static Wiring wiring;

  @BeforeAll
  static void launch() {
    Path chromium = Browser.chromium();
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(
                new LaunchOptions()
                    .setExecutablePath(chromium)
                    .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-sync")));
    Clerk clerk = new Clerk(new MemoryJournal(), InstantSource.system());
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
    server = PageServer.start(0, clerk, wallet, wiring);
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
      playwright.close();
      server.stop();
      wiring.close();
    }
  }

  private static BrowserContext sized(int width, int height, ColorScheme look, boolean scripts) {
    return browser.newContext(
        new NewContextOptions()
            .setViewportSize(width, height)
            .setColorScheme(look)
            .setJavaScriptEnabled(scripts));
  }

  private static Page opened(BrowserContext context, String path) {
    Page page = context.newPage();
    page.navigate(server.address() + path);
    return page;
  }

  @ParameterizedTest
  @CsvSource({"360, 740, LIGHT", "1280, 800, DARK"})
  void everyPageFitsTheScreenAndAxeFindsNothing(int width, int height, ColorScheme look) {
    try (BrowserContext context = sized(width, height, look, true)) {
      for (String path : PATHS) {
        Page page = opened(context, path);
        int beyond =
            (Integer)
                page.evaluate(
                    "document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(beyond).as("%s at %d px is wider than the screen", path, width).isZero();
        // The long list is looked through once: what it is made of is the same at every width.
        boolean looked = path.equals("reckon/all") && look == ColorScheme.DARK;
        List<Rule> found = looked ? List.of() : new AxeBuilder(page).analyze().getViolations();
        assertThat(found.stream().map(r -> r.getId() + ": " + r.getNodes()).toList())
            .as(path)
            .isEmpty();
        page.close();
      }
    }
  }

  @Test
  void aQuestionIsAskedByKeyboardAndWithoutScripts() {
    try (BrowserContext context = sized(360, 740, ColorScheme.LIGHT, false)) {
      Page page = opened(context, "reckon");
      page.locator("#q").focus();
      page.keyboard().type("strike 4.4 kg 66 C");
      page.keyboard().press("Enter");
      assertThat(page.locator(".unclear")).containsText("strike still needs liquor (kg).");
      page.locator("#in-liquor").fill("15 kg");
      page.locator("#in-liquor").press("Enter");
      assertThat(page.locator(".figure b")).hasText("69.7 °C");
      assertThat(page.locator("#in-malt-kg")).hasValue("4.4 kg");
      page.locator("a[href='/science/mash-in']").click();
      assertThat(page.locator("h1")).hasText("Mashing in");
    }
  }
}
