package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import gylebook.brewday.Command;
import gylebook.brewday.DayNote;
import gylebook.brewday.Sighting;
import gylebook.journal.Event;
import gylebook.journal.MemoryJournal;
import gylebook.testing.Browser;
import gylebook.testing.InBrowser;
import gylebook.web.PageServer;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// Wet hands at the kettle's page, and ears across the room: what a finger meets when the page is
/// told anew under it, and what is heard when.
class KettleHandsTest extends InBrowser {
  private final MemoryJournal journal = new MemoryJournal();
  private Clerk clerk;
  private PageServer server;
  private Wiring wiring;

  @BeforeEach
  void start() {
    clerk = new Clerk(journal, InstantSource.system());
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    long seen = clerk.book().gyle("bitter").orElseThrow().lastSeq();
    clerk.write("bitter", seen, new Command.FixPlan("3", 20, 100, "as planned"), "fixed");
    wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
    server = PageServer.start(0, clerk, wallet, wiring);
  }

  @AfterEach
  void stop() {
    server.stop();
    wiring.close();
  }

  private List<Event> happened() {
    return clerk.book().gyle("bitter").orElseThrow().happened().stream()
        .map(DayNote::event)
        .toList();
  }

  private List<Event> points() {
    return happened().stream().filter(Event.PointReached.class::isInstance).toList();
  }

  private static BrowserContext phone() {
    return browser.sized(360, 740, ColorScheme.LIGHT);
  }

  private Page kettle(BrowserContext context) {
    Page page = context.newPage();
    page.navigate(server.address() + "gyles/bitter/kettle");
    return page;
  }

  private void noted(Instant began, int min, String once, Command command) {
    Instant at = began.plus(Duration.ofMinutes(min));
    clerk.note("bitter", command, once, Optional.of(at));
  }

  private static Command dip(String asRead) {
    return new Command.Note(new Event.ReadingTaken("dip-stick", "KETTLE", true, asRead, ""));
  }

  private void begin() {
    clerk.note("bitter", new Command.StartDay(), "began", Optional.empty());
  }

  /// 16 minutes of arc at 2 m are 9.3 mm (FAA human-factors web training, text size: avoid less). A
  /// phone has about 153 and a tablet about 132 of a page's pixels to an inch (from memory).
  @Test
  void theThreeNumbersCanBeReadFromTwoMetresOnAPhoneAndOnATablet() {
    begin();
    double leastMm = 2000 * Math.tan(Math.toRadians(16 / 60.0));
    for (int[] screen : new int[][] {{360, 740, 153}, {1080, 810, 132}}) {
      try (BrowserContext sized = browser.sized(screen[0], screen[1], ColorScheme.LIGHT)) {
        Page page = kettle(sized);
        assertThat(page.locator(".three b")).hasCount(3);
        Number high =
            (Number)
                page.evaluate(
                    "() => { const pen = document.createElement('canvas').getContext('2d');"
                        + " const style = getComputedStyle(document.querySelector('.three b'));"
                        + " pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;"
                        + " return pen.measureText('0').actualBoundingBoxAscent; }");
        assertThat(25.4 * high.doubleValue() / screen[2]).isGreaterThan(leastMm);
        assertThat(Browser.beyond(page)).isEqualTo(0);
      }
    }
  }

  @Test
  void whatMakesItSafeIsNearTheTopForWhoeverIsAtTheKettleAndWhoeverWatches() {
    begin();
    clerk.note("bitter", new Command.TakeKettle("other", "a tablet"), "taken", Optional.empty());
    try (BrowserContext phone = phone()) {
      Page page = kettle(phone);
      Locator safe = page.locator(".safe summary");
      assertThat(safe).isVisible();
      assertThat(page.locator(".thumb").first()).isHidden();
      // In one look, because the page may be told anew between two.
      page.waitForFunction(
          "() => { const box = document.querySelector('.safe summary')?.getBoundingClientRect();"
              + " return box && box.height >= 64 && box.top < 2 * 740; }");
      safe.click();
      assertThat(page.locator(".safe li").first()).containsText("Heater to zero");
      assertThat(page.locator(".safe li").first()).isInViewport();
    }
  }

  @Test
  void whatWasExpectedIsToldAfterAReadingAndWhatIsHardToBelieveIsAskedForAgain() {
    begin();
    try (BrowserContext phone = phone()) {
      Page page = kettle(phone);
      Locator form = page.locator("form[data-what='dip-stick']");
      assertThat(form).not().containsText("Expected");
      form.locator("[name=value]").fill("7 L");
      form.locator("button").click();

      Locator note = page.locator(".notes li").first();
      assertThat(note).containsText("dip-stick 7 L");
      assertThat(note).containsText("Expected");
      assertThat(note).containsText("read it again?");
    }
  }

  @Test
  void thePageStandsStillWhileAFingerIsDownAndThePressCountsForWhatItCameDownOn() {
    begin();
    try (BrowserContext phone = phone()) {
      Page page = kettle(phone);
      Locator main = page.locator(".reach-me .main");
      assertThat(main).containsText("strike reached");
      // Waits until it stands still, and looks again if it was drawn anew meanwhile.
      main.hover();
      page.mouse().down();
      // Somebody else notes the same point and one thing more, so the button would be another.
      page.waitForResponse(
          answer -> answer.url().endsWith("/api/gyles/bitter/kettle"),
          () ->
              clerk.note(
                  "bitter", new Command.Reach("strikeReady"), "other screen", Optional.empty()));
      assertThat(main).containsText("strike reached");
      page.mouse().up();

      assertThat(page.locator(".leg")).containsText("malt in");
      assertThat(points()).contains(new Event.PointReached("strikeReady"));
      assertThat(points()).doesNotContain(new Event.PointReached("doughedIn"));
    }
  }

  @Test
  void aSecondTapOnTheSamePlaceMeetsAButtonThatTakesNoPressYet() {
    begin();
    try (BrowserContext phone = phone()) {
      Page page = kettle(phone);
      Locator main = page.locator(".reach-me .main");
      assertThat(main).isVisible();
      // Whoever taps twice taps again as soon as the next point stands on the same place.
      page.evaluate(
          "() => { window.taps = 0; new MutationObserver(() => { const main ="
              + " document.querySelector('.reach-me .main');"
              + " if (main.textContent.includes('malt in') && window.taps++ === 0)"
              + " setTimeout(() => { window.met = main.textContent; main.click(); }, 100); })"
              + ".observe(document.getElementById('kettle'), { childList: true }); }");
      main.hover();
      page.mouse().down();
      page.mouse().up();
      assertThat(main).containsText("malt in");
      assertThat(main).isEnabled();
      page.waitForFunction("() => window.met");

      assertThat(page.evaluate("() => window.met").toString()).contains("malt in");
      assertThat(points()).containsExactly(new Event.PointReached("strikeReady"));
      main.click();
      assertThat(page.locator(".leg")).not().containsText("malt in");
      assertThat(points()).hasSize(2);
    }
  }

  @Test
  void aButtonThatOnlyStaysWhereItWasIsNotHeldUp() {
    begin();
    try (BrowserContext phone = phone()) {
      Page page = kettle(phone);
      Locator main = page.locator(".reach-me .main");
      assertThat(main).isVisible();
      page.evaluate(
          "() => { window.held = 0; new MutationObserver(() => {"
              + " if (document.querySelector('.reach-me .main').disabled) window.held++;"
              + " }).observe(document.getElementById('kettle'), { subtree: true, childList: true,"
              + " attributes: true }); }");
      clerk.note("bitter", dip("25 L"), "dip", Optional.empty());
      assertThat(page.locator(".notes")).containsText("25 L");
      assertThat(page.evaluate("() => window.held")).isEqualTo(0);
    }
  }

  @Test
  void whoGoesByTheKeyboardStaysWhereHeWasWhenThePageIsToldAnew() {
    begin();
    try (BrowserContext phone = phone()) {
      Page page = kettle(phone);
      Locator snooze = page.locator("[data-snooze]");
      snooze.focus();
      clerk.note("bitter", dip("25 L"), "dip", Optional.empty());
      assertThat(page.locator(".notes")).containsText("25 L");
      assertThat(snooze).isFocused();
    }
  }

  /// Listens to what the page says aloud and which tones it starts; they are played all the same.
  private static void listen(BrowserContext context) {
    context.addInitScript(
        "window.heard = []; window.toneHz = [];"
            + "const speak = speechSynthesis.speak.bind(speechSynthesis);"
            + "speechSynthesis.speak = (words) => { window.heard.push(words.text); speak(words); };"
            + "const start = OscillatorNode.prototype.start;"
            + "OscillatorNode.prototype.start = function (at) {"
            + " window.toneHz.push(this.frequency.value); return start.call(this, at); };");
  }

  private static List<String> heard(Page page) {
    return ((List<?>) page.evaluate("() => window.heard")).stream().map(String::valueOf).toList();
  }

  private static List<String> tonesHz(Page page) {
    return ((List<?>) page.evaluate("() => window.toneHz")).stream().map(String::valueOf).toList();
  }

  /// Twelve minutes of full heat, and cold liquor.
  private void coldLiquor(Instant began) {
    noted(began, 0, "began", new Command.StartDay());
    for (int min = 4; min <= 12; min++) {
      Event.ReadingTaken cold =
          new Event.ReadingTaken("controller", "SUCTION", true, "12.0 \u00b0C", "");
      noted(began, min, "cold" + min, new Command.Note(cold));
    }
  }

  /// A page whose time a test lets run, on a day that is as it is noted.
  private Page listened(BrowserContext phone) {
    listen(phone);
    Page page = phone.newPage();
    page.clock().install();
    page.navigate(server.address() + "gyles/bitter/kettle");
    assertThat(page.locator(".reach-me .main")).isVisible();
    page.mouse().click(2, 2);
    return page;
  }

  @Test
  void soonIsHeardOnceAndAgainAfterTwoMinutesNotSooner() {
    coldLiquor(clerk.now().minus(Duration.ofMinutes(12)));
    try (BrowserContext phone = phone()) {
      Page page = listened(phone);
      assertThat(page.locator("[data-guard=NO_HEAT]")).isVisible();
      page.clock().runFor(1_000);
      assertThat(heard(page)).hasSize(1).first().asString().contains("SOON", "Do this:");
      page.clock().runFor(100_000);
      assertThat(heard(page)).hasSize(1);
      page.clock().runFor(30_000);
      assertThat(heard(page)).hasSize(2);
    }
  }

  @Test
  void stopIsHeardThreeTimesAMinuteAndNobodyCanPutItOff() {
    Instant began = clerk.now().minus(Duration.ofMinutes(70));
    noted(began, 0, "began", new Command.StartDay());
    noted(began, 60, "settled", new Command.Reach("settled"));
    String jug = Sighting.FLOW.says();
    noted(
        began,
        69,
        "jug",
        new Command.Note(new Event.ReadingTaken(jug, "KETTLE", true, "0.3 L/min", "")));
    try (BrowserContext phone = phone()) {
      Page page = listened(phone);
      assertThat(page.locator("[data-guard=DRY_PUMP]")).hasAttribute("data-level", "STOP");
      page.locator("[data-snooze]").click();
      page.clock().runFor(61_000);
      assertThat(heard(page)).filteredOn(words -> words.contains("STOP")).hasSizeBetween(3, 4);
      assertThat(tonesHz(page)).containsSequence("880", "660", "880", "660");
    }
  }

  @Test
  void hopsThatWentInLateAreToldWithWhatTheyCostAndTheEndOfTheBoilStays() {
    Instant began = clerk.now().minus(Duration.ofMinutes(205));
    noted(began, 0, "began", new Command.StartDay());
    noted(began, 150, "out", new Command.Reach("bagOut"));
    noted(began, 180, "boils", new Command.Reach("boilReached"));
    try (BrowserContext phone = phone()) {
      Page page = kettle(phone);
      Locator flameOut =
          page.locator("table tr", new Page.LocatorOptions().setHasText("heater off")).first();
      String before = flameOut.locator("time").getAttribute("datetime");
      assertThat(page.locator(".off-time")).hasCount(0);
      assertThat(page.locator(".due .main").first()).containsText("Due, done?");
      page.locator(".due .main").first().click();

      assertThat(page.locator(".due")).hasCount(0);
      assertThat(page.locator(".off-time"))
          .containsText(
              Pattern.compile(
                  ".* in, 25 min late: the bitterness to come is about [0-9.]+ .*"
                      + "lower for it; the boil ends when it would have\\."));
      Instant after = Instant.parse(flameOut.locator("time").getAttribute("datetime"));
      assertThat(Duration.between(Instant.parse(before), after).abs())
          .isLessThan(Duration.ofMinutes(1));
    }
  }

  @Test
  void whatTheDayWentPastIsSaidAloudUntilItIsTickedAndMayBePutOff() {
    Instant began = clerk.now().minus(Duration.ofMinutes(232));
    noted(began, 0, "began", new Command.StartDay());
    noted(began, 150, "out", new Command.Reach("bagOut"));
    noted(began, 180, "boils", new Command.Reach("boilReached"));
    try (BrowserContext phone = phone()) {
      Page page = listened(phone);
      assertThat(page.locator(".due .main").first()).containsText("Due, done?");
      page.clock().runFor(10_000);
      assertThat(heard(page)).isNotEmpty().allMatch(words -> words.startsWith("Due: "));
      int said = heard(page).size();
      page.locator("[data-snooze]").click();
      page.clock().runFor(240_000);
      assertThat(heard(page)).hasSize(said);
      page.clock().runFor(90_000);
      assertThat(heard(page)).hasSizeGreaterThan(said);
    }
  }
}
