package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.brewday.Command;
import gylebook.brewday.DayNote;
import gylebook.brewday.ForecastsGiven;
import gylebook.brewday.Foreseen;
import gylebook.brewday.GivenForecast;
import gylebook.brewday.Gyle;
import gylebook.journal.Addition;
import gylebook.journal.Entry;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.JournalUnavailable;
import gylebook.journal.MemoryJournal;
import gylebook.simulate.Engine;
import gylebook.web.Desk;
import gylebook.web.PageServer;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// What was forecast is kept by the program itself, beside what people note.
class ForecastsKeptTest {
  private static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");

  private final Journal kept = new MemoryJournal();
  private final Wallet wallet = new Wallet();
  private volatile Instant now = NOON;
  private volatile boolean full;
  private Clerk clerk;
  private PageServer server;
  private Wiring wiring;

  /// A book in which there is no room for forecasts while it is full.
  private final Journal disk =
      new Journal() {
        @Override
        public List<Entry> append(Addition addition) {
          if (full && addition.gyleId().equals(FORECASTS)) {
            throw new JournalUnavailable("The disk is full.", new IOException());
          }
          return kept.append(addition);
        }

        @Override
        public List<Entry> entries(long afterSeq) {
          return kept.entries(afterSeq);
        }

        @Override
        public boolean has(String once) {
          return kept.has(once);
        }
      };

  @BeforeEach
  void start() {
    clerk = new Clerk(disk, () -> now);
    Serve.invent(clerk, wallet);
    serve();
  }

  private void serve() {
    clerk = new Clerk(disk, () -> now);
    wiring = new Wiring(clerk, () -> now, Path.of("/none"));
    server = PageServer.start(0, clerk, wallet, wiring);
    server.keepForecasts();
  }

  @AfterEach
  void stop() {
    server.stop();
    wiring.close();
  }

  private Gyle gyle() {
    return clerk.book().gyle("bitter").orElseThrow();
  }

  private void fix(String gyleId) {
    Desk.Answer answer =
        clerk.write(
            gyleId,
            clerk.book().seen(gyleId),
            new Command.FixPlan("4", 20, 20, "as planned"),
            gyleId + "-fixed");
    assertThat(answer).isInstanceOf(Desk.Answer.Written.class);
  }

  private void note(Command command, String once) {
    assertThat(clerk.note("bitter", command, once, Optional.empty()))
        .isInstanceOf(Desk.Answer.Written.class);
  }

  private List<ForecastsGiven.Kept> forecasts(String gyleId) {
    return clerk.book().forecasts().of(gyleId);
  }

  private void untilThereAre(String gyleId, int count) {
    Awaitility.await()
        .atMost(Duration.ofSeconds(60))
        .pollInterval(Duration.ofMillis(20))
        .until(() -> forecasts(gyleId).size() >= count);
    assertThat(forecasts(gyleId)).hasSize(count);
  }

  private long seqOf(String milestone) {
    return gyle().happened().stream()
        .filter(note -> note.event().equals(new Event.PointReached(milestone)))
        .map(DayNote::seq)
        .findFirst()
        .orElseThrow();
  }

  /// Forecasts are kept one after another, so when one of another gyle is there, whatever was due
  /// before it has been looked at.
  private void whenAllWasLookedAt() {
    fix("wheat");
    untilThereAre("wheat", 1);
  }

  private void strikeReached() {
    fix("bitter");
    untilThereAre("bitter", 1);
    note(new Command.StartDay(), "began");
    now = NOON.plusSeconds(2300);
    note(new Command.Reach("strikeReady"), "strike");
    untilThereAre("bitter", 2);
  }

  @Test
  void itIsKeptWhenThePlanIsFixedAndAtEachPointAndGetsInNobodysWay() {
    strikeReached();

    GivenForecast plan =
        GivenForecast.read(forecasts("bitter").getFirst().document()).orElseThrow();
    GivenForecast later = GivenForecast.read(forecasts("bitter").get(1).document()).orElseThrow();
    assertThat(plan.beforeTheDay()).isTrue();
    assertThat(plan.engine()).as("who reckoned it, not who fixed it").isEqualTo(Engine.REVISION);
    assertThat(later.atSec()).isEqualTo(2300);
    assertThat(later.held("boilReached", Foreseen.AT)).isPresent();
    assertThat(later.held("strikeReady", Foreseen.AT)).isEmpty();
    assertThat(forecasts("bitter"))
        .extracting(ForecastsGiven.Kept::afterSeq)
        .containsExactly(gyle().plan().orElseThrow().seq(), seqOf("strikeReady"));
    // Whoever saw the page as it was before the forecast was written may still change it.
    assertThat(gyle().lastSeq()).isEqualTo(seqOf("strikeReady"));
  }

  @Test
  void aNoteThatIsSentTwiceAndAProgramThatStartsAnewKeepNoneTwice() {
    strikeReached();
    note(new Command.Reach("strikeReady"), "strike");
    server.stop();
    wiring.close();
    serve();
    whenAllWasLookedAt();

    assertThat(forecasts("bitter")).hasSize(2);
  }

  @Test
  void aProgramThatWasEndedBeforeItGotToItMakesUpForItWhileItIsFresh() {
    strikeReached();
    server.stop();
    note(new Command.Reach("doughedIn"), "malt");
    now = now.plus(Duration.ofMinutes(5));
    wiring.close();
    serve();
    untilThereAre("bitter", 3);
    assertThat(forecasts("bitter").getLast().afterSeq()).isEqualTo(seqOf("doughedIn"));

    server.stop();
    note(new Command.Reach("settled"), "settled");
    now = now.plus(Duration.ofMinutes(11));
    wiring.close();
    serve();
    whenAllWasLookedAt();
    assertThat(forecasts("bitter")).as("after the fact it is no forecast").hasSize(3);
  }

  @Test
  void aPointThatIsStruckAndReachedAgainHasAForecastOfItsOwn() {
    strikeReached();
    note(new Command.Strike(seqOf("strikeReady")), "not yet");
    now = now.plusSeconds(240);
    note(new Command.Reach("strikeReady"), "now it is");
    untilThereAre("bitter", 3);

    assertThat(forecasts("bitter").getLast().afterSeq()).isEqualTo(seqOf("strikeReady"));
  }

  private String kettle() throws IOException, InterruptedException {
    try (HttpClient client = HttpClient.newHttpClient()) {
      URI address = URI.create(server.address() + "api/gyles/bitter/kettle");
      return client
          .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString())
          .body();
    }
  }

  @Test
  void whenItCannotBeWrittenTheNoteStandsThePageSaysSoAndTheNextNoteTriesAgain() {
    strikeReached();
    full = true;
    note(new Command.Reach("doughedIn"), "malt");
    Awaitility.await()
        .atMost(Duration.ofSeconds(60))
        .pollInterval(Duration.ofMillis(100))
        .until(
            () -> {
              // What a page was told a moment ago it is told again.
              now = now.plusSeconds(6);
              return kettle().contains("is not kept");
            });
    assertThat(forecasts("bitter")).hasSize(2);
    assertThat(seqOf("doughedIn")).isPositive();

    full = false;
    note(new Command.Say("words", "the disk has room again"), "room");
    untilThereAre("bitter", 3);
  }

  @Test
  void aDayForPracticeKeepsItsOwn() {
    fix("bitter");
    assertThat(
            PracticeDay.open(
                clerk,
                wallet,
                gyle(),
                gyle().plan().orElseThrow(),
                new Command.StartPractice(7, 20)))
        .isInstanceOf(PracticeDay.Opened.Begun.class);
    untilThereAre("rehearsal-1", 1);
    now = now.plusSeconds(100);
    clerk.note("rehearsal-1", new Command.Reach("strikeReady"), "practised", Optional.empty());
    untilThereAre("rehearsal-1", 2);

    GivenForecast later =
        GivenForecast.read(forecasts("rehearsal-1").getLast().document()).orElseThrow();
    assertThat(later.atSec()).as("by the day's own clock").isGreaterThanOrEqualTo(2000);
    assertThat(forecasts("bitter")).hasSize(1);
  }
}
