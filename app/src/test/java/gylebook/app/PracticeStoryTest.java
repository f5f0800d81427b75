package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import gylebook.brewday.Command;
import gylebook.brewday.DayNote;
import gylebook.brewday.FixedPlan;
import gylebook.brewday.Gyle;
import gylebook.brewday.TiedInstrument;
import gylebook.device.Mosquitto;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.MemoryJournal;
import gylebook.terminal.RehearseCommand;
import gylebook.testing.Browser;
import gylebook.testing.InBrowser;
import gylebook.web.PageServer;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/// A rehearsal that is noted on a day: the hidden rig plays a fixed plan through real posts.
class PracticeStoryTest extends InBrowser {
  private static final String PAGE = "rehearsal-1";

  private final CountDownLatch over = new CountDownLatch(1);
  private volatile InstantSource time = InstantSource.system();
  private Clerk clerk;
  private PageServer server;
  private Wiring wiring;

  @BeforeEach
  void start() {
    InstantSource clock = () -> time.instant();
    clerk = new Clerk(new MemoryJournal(), clock);
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    clerk.write(
        "bitter",
        clerk.book().seen("bitter"),
        new Command.FixPlan("3", 20, 100, "as planned"),
        "fixed");
    wiring = new Wiring(clerk, clock, Path.of("/none"));
    wiring.listen(new NoteTaker(clerk, wallet));
    server = PageServer.start(0, clerk, wallet, wiring);
    clerk.listen(
        _ -> {
          if (happened().anyMatch(Event.WordSaid.class::isInstance)) {
            over.countDown();
          }
        });
  }

  @AfterEach
  void stop() {
    wiring.close();
    server.stop();
  }

  private Stream<DayNote> notes() {
    return clerk.book().gyle(PAGE).stream().map(Gyle::happened).flatMap(List::stream);
  }

  private Stream<Event> happened() {
    return notes().map(DayNote::event);
  }

  private Optional<String> begin(String pace, String acts) {
    Map<String, String> asked =
        Map.of("gyle", "bitter", "pace", pace, "seed", "7", "acts", acts, "wires", "sound");
    return wiring.practice().begin(server.address().replaceAll("/$", ""), asked);
  }

  private static BrowserContext sized(int width, int height) {
    return browser.sized(width, height, ColorScheme.LIGHT);
  }

  private Page kettle(BrowserContext context) {
    Page page = context.newPage();
    page.navigate(server.address() + "gyles/" + PAGE + "/kettle");
    return page;
  }

  /// Sixty times faster than the machine's clock, so that a whole day is over in a test.
  private static InstantSource hurried() {
    Instant base = InstantSource.system().instant();
    long from = System.nanoTime();
    return () -> base.plusNanos(60 * (System.nanoTime() - from));
  }

  @Test
  void aWholeDayIsPlayedByItselfAndStandsInTheBookAsPractice() throws InterruptedException {
    time = hurried();
    clerk.note("bitter", new Command.StartDay(), "real", Optional.empty());
    assertThat(begin("20", "itself")).isEmpty();
    assertThat(begin("20", "itself"))
        .hasValueSatisfying(no -> assertThat(no).contains("under way"));
    assertThat(over.await(180, TimeUnit.SECONDS)).isTrue();

    Gyle played = clerk.book().gyle(PAGE).orElseThrow();
    assertThat(played.practice().orElseThrow().event())
        .isEqualTo(new Event.PracticeStarted(played.plan().orElseThrow().seq(), 7, 20));
    assertThat(happened().filter(Event.PointReached.class::isInstance))
        .contains(new Event.PointReached("strikeReady"), new Event.PointReached("hop.0"))
        .contains(new Event.PointReached("boilReached"), new Event.PointReached("cast"));
    List<Event> read = happened().filter(Event.ReadingTaken.class::isInstance).toList();
    assertThat(read).hasSizeGreaterThan(30);
    assertThat(read)
        .extracting(event -> ((Event.ReadingTaken) event).instrument())
        .containsOnly("controller", "duty");
    // Common practice, no source: such a day takes from four hours to a long evening.
    Instant began = played.started().orElseThrow().at();
    assertThat(Duration.between(began, notes().toList().getLast().at()))
        .isBetween(Duration.ofHours(4), Duration.ofHours(12));
    assertThat(happened().toList().getLast().toString()).contains("over", "What was hidden");
    // The real day beside it holds nothing but its beginning.
    assertThat(clerk.book().gyle("bitter").orElseThrow().day()).hasSize(1);
    assertThat(clerk.book().tied()).isEmpty();
  }

  @Test
  void whatCannotBePlayedIsRefusedAndOpensNoPage() {
    Map<String, String> noPlan = Map.of("gyle", "wheat", "pace", "1");
    assertThat(wiring.practice().begin(server.address(), noPlan).orElseThrow())
        .contains("No plan is fixed");
    assertThat(begin("60", "me").orElseThrow()).contains("at most 20 times");
    assertThat(clerk.book().gyle(PAGE)).isEmpty();
  }

  @Test
  void whatAnEndedProgramLeftTiedIsLoosedAtTheNextStart() throws InterruptedException {
    Gyle gyle = clerk.book().gyle("bitter").orElseThrow();
    FixedPlan plan = gyle.plan().orElseThrow();
    Command.StartPractice practice = new Command.StartPractice(7, 1);
    assertThat(PracticeDay.open(clerk, new Wallet(), gyle, plan, practice))
        .isInstanceOf(PracticeDay.Opened.Begun.class);
    for (String name : List.of(PAGE + " controller", "cellar")) {
      String reach = "{\"kind\":\"pipe\",\"path\":\"/none\"}";
      clerk.write(
          Journal.HOUSE,
          clerk.book().seen(Journal.HOUSE),
          new Command.TieInstrument(name, "", reach),
          name);
    }
    CountDownLatch loosed = new CountDownLatch(1);
    clerk.listen(_ -> loosed.countDown());
    wiring.begin();

    assertThat(loosed.await(30, TimeUnit.SECONDS)).isTrue();
    assertThat(clerk.book().tied()).extracting(TiedInstrument::name).containsExactly("cellar");
  }

  @Test
  void twoPeopleWithTwoBrowsersRehearseOneDayTogether() throws InterruptedException {
    try (BrowserContext tablet = sized(1080, 810);
        BrowserContext phone = sized(360, 740)) {
      Page first = tablet.newPage();
      first.navigate(server.address() + "rehearsal");
      first.locator("[name=gyle]").selectOption("bitter");
      first.locator("[name=pace]").selectOption("20");
      first.locator("[name=wires]").selectOption("sound");
      first.locator("[name=seed]").fill("7");
      first.getByText("Begin", new Page.GetByTextOptions().setExact(true)).last().click();
      first.waitForURL("**/gyles/" + PAGE + "/kettle");
      Page second = kettle(phone);
      for (Page page : List.of(first, second)) {
        assertThat(page.locator(".practice")).containsText("REHEARSAL. Nothing is heated");
        // The hidden rig's posts come as readings of the rig's own thermometer, on both screens.
        assertThat(page.locator(".sent")).containsText(Pattern.compile("controller [0-9.,]+ .C"));
      }
      assertThat(Browser.faults(second)).isEmpty();
      assertThat(Browser.beyond(second)).isEqualTo(0);

      first.locator("button[data-line='read dip-stick']").click();
      assertThat(first.locator("#state")).containsText("dip-stick shows");

      // What one of them notes is done to the hidden rig, and seen by the other.
      Locator heater = second.locator("form[data-do=switch][data-what=heater]");
      second.getByText("Switched otherwise than planned").click();
      heater.locator("[name=value]").fill("40 %");
      heater.locator("button").click();
      assertThat(first.locator(".notes")).containsText("heater 40 %");
      // However much the instruments send, what a person did last is what a person takes back.
      assertThat(first.locator(".thumb button[data-do=strike]")).hasText("Undo: heater 40 %");
      assertThat(first.locator(".notes")).not().containsText("controller");
      for (Page page : List.of(first, second)) {
        page.evaluate("() => scrollTo(0, 0)");
        assertThat(page.locator("button.main").last()).isInViewport();
      }
      second.getByText("Say what happened").first().click();
      assertThat(second.getByText("The hoist slipped")).isInViewport();
      first.locator("button.main").last().click();
      assertThat(second.locator(".leg")).containsText("malt in");
      second.locator("a[href='/rehearsal']").click();
      assertThat(second.locator("#live")).containsText("Heat 40 %");
      assertThat(second.locator("#live")).containsText("stir in the malt");

      // What is to be done is done at the kettle, not here.
      assertThat(second.locator("button[data-line='heat 0']")).isHidden();
      assertThat(wiring.practice().act("heat a lot").orElseThrow()).contains("cannot be 'a lot'");
      second.locator("button[data-line=end]").click();
      assertThat(first.locator(".notes")).containsText("What was hidden");
      assertThat(first.locator(".practice")).containsText("played no more");
      assertThat(over.await(60, TimeUnit.SECONDS)).isTrue();
    }
  }

  private static String played(String keys, String gyle, String address) {
    StringWriter said = new StringWriter();
    byte[] typed = keys.getBytes(StandardCharsets.UTF_8);
    CommandLine line =
        new CommandLine(new RehearseCommand(new Shelf(), new ByteArrayInputStream(typed)));
    line.setOut(new PrintWriter(said)).setErr(new PrintWriter(said));
    int code =
        line.execute("--to=" + address, "--note=" + gyle, "--seed=7", "--pace=20", "--no-glitches");
    return code + " " + said;
  }

  @Test
  void aTerminalHasTheDayNotedAndWhatIsTypedThereIsNotedAndDone() {
    String keys = "heat 40\npump sideways\nread dip-stick\n\nend\n";
    assertThat(played(keys, "bitter", server.address()))
        .startsWith("0 It is noted at " + server.address() + "gyles/" + PAGE + "/kettle")
        .contains("Rehearsal 7", "Heat 40 %", "dip-stick shows", "stir in the malt")
        .contains("The pump cannot be 'sideways'.", "What was hidden");
    assertThat(happened())
        .contains(new Event.SwitchSet("heater", "40"), new Event.PointReached("strikeReady"));
    assertThat(happened().toList().getLast().toString()).contains("over", "What was hidden");
    assertThat(clerk.book().gyle("bitter").orElseThrow().day()).isEmpty();
    assertThat(clerk.book().tied()).isEmpty();
  }

  @Test
  void aTerminalIsToldInASentenceWhyNothingIsNoted() throws IOException {
    assertThat(played("", "wheat", server.address())).startsWith("2 No plan is fixed");
    String nobody = "http://127.0.0.1:" + Mosquitto.freePort();
    assertThat(played("", "bitter", nobody))
        .startsWith("2 Nothing answers at " + nobody + "; start Gylebook there first.");
    assertThat(clerk.book().gyle(PAGE)).isEmpty();
  }

  @Test
  void daysForPracticeAreFoldedAwayInAListOfTheirOwn() {
    Gyle gyle = clerk.book().gyle("bitter").orElseThrow();
    FixedPlan plan = gyle.plan().orElseThrow();
    for (int i = 0; i < 2; i++) {
      PracticeDay.open(clerk, new Wallet(), gyle, plan, new Command.StartPractice(7, 1));
    }
    try (BrowserContext phone = sized(360, 740)) {
      Page page = phone.newPage();
      page.navigate(server.address());
      assertThat(page.locator(".gyles li")).hasCount(2);
      assertThat(page.locator(".gyles")).not().containsText("Rehearsal 1");
      Locator first = page.getByText("Rehearsal 1: ");
      assertThat(first).isHidden();
      page.getByText("Days for practice (2)").click();
      assertThat(first).isVisible();
      assertThat(page.locator(".practised a").first()).containsText("Rehearsal 2");
      assertThat(page.locator("#rig-of option")).hasCount(2);
      assertThat(Browser.faults(page)).isEmpty();
      assertThat(Browser.beyond(page)).isEqualTo(0);
    }
  }
}
