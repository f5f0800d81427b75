package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import gylebook.brewday.Command;
import gylebook.brewday.DayNote;
import gylebook.brewday.Gyle;
import gylebook.journal.Event;
import gylebook.journal.MemoryJournal;
import gylebook.rig.DemoRigs;
import gylebook.testing.Browser;
import gylebook.web.Desk;
import gylebook.web.PageServer;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// A day beside the brewer, in two real browsers.
class KettleStoryTest {
  private static Browser browser;

  private final MemoryJournal journal = new MemoryJournal();
  private Clerk clerk;
  private PageServer server;
  private Wiring wiring;

  @BeforeAll
  static void launch() {
    browser = Browser.started();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void start() {
    clerk = new Clerk(journal, InstantSource.system());
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    long seen = gyle().lastSeq();
    clerk.write("bitter", seen, new Command.FixPlan("3", 20, 100, "as planned"), "fixed");
    wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
    server = PageServer.start(0, clerk, wallet, wiring);
  }

  @AfterEach
  void stop() {
    server.stop();
    wiring.close();
  }

  private Gyle gyle() {
    return clerk.book().gyle("bitter").orElseThrow();
  }

  private Stream<Event> happened() {
    return gyle().happened().stream().map(DayNote::event);
  }

  private static BrowserContext sized(int width, int height) {
    return browser.sized(width, height, ColorScheme.LIGHT);
  }

  private Page kettle(BrowserContext context) {
    Page page = context.newPage();
    page.navigate(server.address() + "gyles/bitter/kettle");
    return page;
  }

  @Test
  void aDayIsStartedNotedSeenOnAnotherScreenAndUndone() {
    try (BrowserContext phone = sized(360, 740);
        BrowserContext tablet = sized(1080, 810)) {
      Page noted = kettle(phone);
      Page watched = kettle(tablet);
      noted.locator("button.main").click();
      assertThat(watched.locator(".leg")).containsText("strike reached");

      Locator warm = noted.locator("form[data-what='hand-held thermometer']");
      warm.locator("[name=value]").fill("14,5");
      warm.locator("button").click();
      assertThat(watched.locator(".notes")).containsText("14,5 \u00b0C");
      assertThat(watched.locator(".notes")).containsText("Expected");

      noted.locator("button.main").click();
      assertThat(watched.locator(".leg")).containsText("malt in");
      noted.locator(".thumb button[data-do=strike]").click();
      assertThat(watched.locator(".leg")).containsText("strike reached");
      assertThat(watched.locator(".notes del")).hasText("strike reached");
    }
  }

  @Test
  void oneScreenIsAtTheKettleAndAnotherTakesOverByAHeldPressAlone() {
    try (BrowserContext phone = sized(360, 740);
        BrowserContext tablet = sized(1080, 810)) {
      Page first = kettle(phone);
      Page second = kettle(tablet);
      first.locator("button.main").click();
      assertThat(first.locator(".holder .mine")).isVisible();
      assertThat(second.locator(".holder .theirs").first()).containsText("At the kettle: a phone");
      assertThat(second.locator(".thumb").first()).isHidden();
      assertThat(second.locator("form.entry:visible")).hasCount(0);

      // A touch in passing is not meant.
      second.locator("[data-take]").click();
      second.locator("[data-take]").dispatchEvent("pointerdown");
      assertThat(first.locator(".thumb").first()).isHidden();
      assertThat(second.locator(".thumb").first()).isVisible();
      assertThat(second.locator(".holder .mine")).isVisible();

      second.reload();
      assertThat(second.locator(".thumb").first()).isVisible();
    }
  }

  @Test
  void ticksOfAListStayWhenThePageIsToldAnew() {
    try (BrowserContext phone = sized(360, 740)) {
      Page page = kettle(phone);
      page.locator(".checklist input").first().check();
      page.reload();
      assertThat(page.locator(".checklist input").first()).isChecked();
      assertThat(page.locator(".checklist input").nth(1)).not().isChecked();

      page.locator("button.main").click();
      page.getByText("Before you walk away").click();
      assertThat(page.locator(".checks")).containsText("Hands are needed");
    }
  }

  @Test
  void whatMakesNoSenseIsSaidWhereItWasTypedAndStaysThere() {
    clerk.note("bitter", new Command.StartDay(), "began", Optional.empty());
    try (BrowserContext phone = sized(360, 740)) {
      Page page = kettle(phone);
      Locator form = page.locator("form[data-what='hydrometer']");
      form.locator("[name=value]").fill("quite sweet");
      form.locator("button").click();

      assertThat(form.locator(".problem")).containsText("quite sweet");
      assertThat(form.locator("[name=value]")).hasValue("quite sweet");
      assertThat(happened()).hasSize(1);
    }
  }

  @Test
  void notesWaitWhileTheNetworkIsAwayAndAreWrittenOnceInOrder() {
    clerk.note("bitter", new Command.StartDay(), "began", Optional.empty());
    try (BrowserContext phone = sized(360, 740)) {
      Page page = kettle(phone);
      Locator form = page.locator("form[data-what='dip-stick']");
      assertThat(form).isVisible();
      phone.setOffline(true);
      for (String typed : List.of("24,9", "25", "25,1")) {
        form.locator("[name=value]").fill(typed);
        form.locator("button").click();
      }
      assertThat(page.locator("#strip")).containsText("3 notes wait");
      assertThat(happened()).hasSize(1);

      phone.setOffline(false);
      assertThat(page.locator("#strip")).isHidden();
      assertThat(happened().skip(1).map(KettleStoryTest::asRead))
          .containsExactly("24,9 L", "25 L", "25,1 L");
    }
  }

  @Test
  void whatGoesWrongIsSaidWithWhatToDoAndByWhenAndACalmDaySaysSo() {
    Instant began = clerk.now().minus(Duration.ofMinutes(12));
    clerk.note("bitter", new Command.StartDay(), "began", Optional.of(began));
    try (BrowserContext phone = sized(360, 740)) {
      Page page = kettle(phone);
      assertThat(page.locator(".guards .calm")).isVisible();
      for (int min = 4; min <= 12; min++) {
        Event.ReadingTaken cold =
            new Event.ReadingTaken(steering(), "SUCTION", true, "12.0 \u00b0C", "");
        Instant at = began.plus(Duration.ofMinutes(min));
        clerk.note("bitter", new Command.Note(cold), "cold" + min, Optional.of(at));
      }

      Locator plate = page.locator(".guards [data-guard=NO_HEAT]");
      assertThat(plate.locator("h2")).containsText("SOON");
      assertThat(plate.locator("h2 svg.sign")).isVisible();
      assertThat(plate).containsText("Do this:");
      assertThat(plate).containsText("By when:");
      assertThat(page.locator(".guards .calm")).hasCount(0);
      String told = page.request().get(server.address() + "api/gyles/bitter/kettle").text();
      assertThat(told).contains("\"guards\":[{").contains("NO_HEAT").contains("\"doThis\"");
      assertThat(Browser.beyond(page)).isEqualTo(0);
      assertThat(Browser.faults(page)).isEmpty();
    }
  }

  private static String steering() {
    return DemoRigs.household().probes().stream()
        .filter(probe -> probe.steers())
        .findFirst()
        .orElseThrow()
        .name();
  }

  private static String asRead(Event event) {
    return event instanceof Event.ReadingTaken taken ? taken.asRead() : event.toString();
  }

  @Test
  void theSameNoteSentTwiceIsWrittenOnceAndOneFromTheFutureIsRefused() {
    clerk.note("bitter", new Command.StartDay(), "began", Optional.empty());
    Command dip = new Command.Note(new Event.ReadingTaken("dip-stick", "KETTLE", true, "25 L", ""));
    Instant now = clerk.now();

    clerk.note("bitter", dip, "one", Optional.of(now));
    clerk.note("bitter", dip, "one", Optional.of(now));
    assertThat(happened()).hasSize(2);
    assertThat(clerk.note("bitter", dip, "two", Optional.of(now.plus(Duration.ofHours(1)))))
        .isInstanceOf(Desk.Answer.Refused.class);
  }

  @Test
  void axeFindsNothingAndNothingIsWiderThanThePhone() {
    clerk.note("bitter", new Command.StartDay(), "began", Optional.empty());
    try (BrowserContext phone = sized(360, 740)) {
      Page page = kettle(phone);
      assertThat(page.locator(".three")).isVisible();
      Object beyond = Browser.beyond(page);
      assertThat(beyond).isEqualTo(0);
      assertThat(Browser.faults(page)).isEmpty();
    }
  }

  @Test
  void afterAnEndTheDayIsWhereItWas() {
    clerk.note("bitter", new Command.StartDay(), "began", Optional.empty());
    clerk.note("bitter", new Command.Reach("strikeReady"), "strike", Optional.empty());
    Clerk again = new Clerk(journal, InstantSource.system());

    assertThat(again.book().gyle("bitter").orElseThrow().happened()).isEqualTo(gyle().happened());
  }
}
