package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import gylebook.journal.MemoryJournal;
import gylebook.testing.Browser;
import gylebook.testing.InBrowser;
import gylebook.web.PageServer;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The Reckoner in a real browser: phone and desktop, light and dark, by keyboard, without scripts.
class ReckonBrowserTest extends InBrowser {
  private static final List<String> PATHS =
      List.of(
          "reckon",
          "reckon?q=ibu+30+g+5.5+%25+20+L+60+min",
          "reckon?q=boil+the+ocean",
          "reckon/strike",
          "reckon/all",
          "science/hops-in-the-boil",
          "science/sources");

  private static PageServer server;
  private static Wiring wiring;

  @BeforeAll
  static void serve() {
    Clerk clerk = new Clerk(new MemoryJournal(), InstantSource.system());
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
    server = PageServer.start(0, clerk, wallet, wiring);
  }

  @AfterAll
  static void stop() {
    // Without a browser nothing was served.
    if (server != null) {
      server.stop();
      wiring.close();
    }
  }

  private static BrowserContext sized(int width, int height, ColorScheme look, boolean scripts) {
    return browser.with(
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
        int beyond = Browser.beyond(page);
        assertThat(beyond).as("%s at %d px is wider than the screen", path, width).isZero();
        // The long list is looked through once: what it is made of is the same at every width.
        boolean looked = path.equals("reckon/all") && look == ColorScheme.DARK;
        assertThat(looked ? List.of() : Browser.faults(page)).as(path).isEmpty();
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
