package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.RequestOptions;
import gylebook.brewday.Command;
import gylebook.brewday.DayNote;
import gylebook.brewday.Gyle;
import gylebook.journal.Event;
import gylebook.journal.MemoryJournal;
import gylebook.rig.DemoRigs;
import gylebook.testing.Browser;
import gylebook.testing.InBrowser;
import gylebook.web.Desk;
import gylebook.web.PageServer;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// A day beside the brewer, in two real browsers.
class KettleStoryTest extends InBrowser {
  private final MemoryJournal journal = new MemoryJournal();
  private Clerk clerk;
  private PageServer server;
  private Wiring wiring;

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
  void whatIsTypedWhileTheNoteBeforeIsOnItsWayStays() {
    clerk.note("bitter", new Command.StartDay(), "began", Optional.empty());
    try (BrowserContext phone = sized(360, 740)) {
      Page page = kettle(phone);
      List<Route> held = new ArrayList<>();
      page.route("**/day", held::add);
      Locator form = page.locator("form[data-what='dip-stick']");
      form.locator("[name=value]").fill("24,9");
      form.locator("button").click();
      form.locator("[name=value]").fill("25,1");
      page.waitForCondition(() -> !held.isEmpty());

      held.getFirst().resume();
      assertThat(page.locator("#strip")).isHidden();
      assertThat(page.locator("#state")).hasText("Noted.");
      assertThat(form.locator("[name=value]")).hasValue("25,1");
      assertThat(happened().skip(1).map(KettleStoryTest::asRead)).containsExactly("24,9 L");
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

  private void noted(Instant began, int min, Command command) {
    clerk.note("bitter", command, "min" + min, Optional.of(began.plus(Duration.ofMinutes(min))));
  }

  /// It has boiled for two minutes and is weaker than planned.
  private void weakBoil() {
    Instant began = clerk.now().minus(Duration.ofMinutes(182));
    noted(began, 0, new Command.StartDay());
    noted(began, 150, new Command.Reach("bagOut"));
    for (int min = 152; min < 155; min++) {
      noted(
          began,
          min,
          new Command.Note(
              new Event.ReadingTaken("hydrometer", "KETTLE", true, "8.0 \u00b0P", "")));
    }
    noted(began, 180, new Command.Reach("boilReached"));
  }

  private static double endsMs(Page page) {
    return Double.parseDouble(page.locator(".left").getAttribute("data-ends"));
  }

  @Test
  void aWayIsTakenByTwoPressesTheDayFollowsItAndStrikingBringsTheOldPlanBack() {
    weakBoil();
    try (BrowserContext phone = sized(360, 740)) {
      Page page = kettle(phone);
      double beforeMs = endsMs(page);
      String wanted = page.locator(".reach").textContent();
      page.locator("[data-levers]").click();
      Locator row = page.locator("#levers tr", new Page.LocatorOptions().setHasText("Boil on."));
      Locator once = row.locator("button[data-do=take]");
      once.click();
      assertThat(once).containsText("Press once more to do it: Boil on.");
      assertThat(happened().noneMatch(Event.PlanChanged.class::isInstance)).isTrue();

      once.click();
      assertThat(page.locator(".notes")).containsText("plan changed: Boil on.");
      assertThat(endsMs(page) - beforeMs).isGreaterThan(5 * 60_000);
      assertThat(page.locator(".reach").textContent()).isNotEqualTo(wanted);
      assertThat(page.locator(".plans")).containsText("As it was fixed");
      assertThat(page.locator(".plans")).containsText("Wanted from then on");
      assertThat(Browser.beyond(page)).isEqualTo(0);
      assertThat(Browser.faults(page)).isEmpty();

      page.locator(".thumb button[data-do=strike]").click();
      assertThat(page.locator(".plans del")).containsText("Boil on.");
      assertThat(endsMs(page)).isCloseTo(beforeMs, within(60_000.0));
      assertThat(happened().noneMatch(Event.PlanChanged.class::isInstance)).isTrue();
    }
  }

  @Test
  void aWayThatMakesNoSenseOrComesTooLateIsNotWritten() {
    weakBoil();
    try (BrowserContext phone = sized(360, 740)) {
      Page page = kettle(phone);
      String late =
          "way DILUTE\\nlasts bagOut 600\\nwants STRENGTH 11\\nwants LITRES 19\\nwants BITTERNESS 30\\nwants COLOUR 20";
      for (String document : List.of("way PRAY", late)) {
        String body = "{\"do\":\"take\",\"what\":\"\",\"value\":\"" + document + "\"}";
        int status =
            page.request()
                .post(
                    server.address() + "api/gyles/bitter/day",
                    RequestOptions.create()
                        .setHeader("Content-Type", "application/json")
                        .setHeader("Gyle-Once", document.substring(0, 8))
                        .setHeader("Origin", server.address().replaceAll("/$", ""))
                        .setData(body))
                .status();
        assertThat(status).isEqualTo(422);
      }
      assertThat(happened().noneMatch(Event.PlanChanged.class::isInstance)).isTrue();
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
