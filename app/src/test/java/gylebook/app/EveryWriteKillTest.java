package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.brewday.Follower;
import gylebook.journal.Entry;
import gylebook.journal.MemoryJournal;
import gylebook.plan.Demo;
import gylebook.plan.Milestone;
import gylebook.rig.DemoRigs;
import gylebook.store.DiskJournal;
import gylebook.store.DyingDisk.Moment;
import gylebook.testing.Program;
import gylebook.web.PageServer;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// A whole brew day is noted, and the program dies by signal 9 at chosen writes of its book: before
/// the write, before its commit, and after it before the answer. A twin in this process, which
/// nobody kills, gets the same notes; after every start both must show the same day.
///
/// Four deaths at drawn writes of the first hours; under `-Plong` all three at every write of the
/// whole day.
class EveryWriteKillTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final boolean LONG = Boolean.getBoolean("long");
  private static final int FEW_DEATHS = 4;
  // Until the malt is in and somebody has struck, corrected, and taken over.
  private static final int FEW_ACTS = 13;
  // Laying out the file, and the two invented gyles.
  private static final int OWN_WRITES = 3;
  private static final int BY_SIGNAL_9 = 128 + 9;
  private static final long AGREE_MS = Duration.ofMinutes(1).toMillis();
  private static final Pattern LEG = Pattern.compile("(?s)<p class=\"leg\">(<b>.*?</b>|[^<]*)");
  private static final Pattern ENDS = Pattern.compile("data-ends=\"(\\d+)\"");
  private static final Pattern NOTES = Pattern.compile("(?s)(<ul class=\"notes\">.*?</ul>)");
  private static final Pattern HOLDER = Pattern.compile("data-holder=\"([^\"]*)\"");

  @TempDir private Path folder;

  private final HttpClient client = HttpClient.newHttpClient();
  private final MemoryJournal kept = new MemoryJournal();
  private final Clerk clerk = new Clerk(kept, InstantSource.system());
  private final Wallet wallet = new Wallet();
  private final Wiring wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
  private final List<Act> acts = new ArrayList<>();
  private final List<String> bodies = new ArrayList<>();
  private Optional<Program> running = Optional.empty();
  private PageServer twin;
  private Instant began;
  private String life = "";

  /// How many writes the book of the mortal one holds, how many notes the screen knows of, and how
  /// many the twin has.
  private int inBook;

  private int acknowledged;
  private int onTwin;

  /// A death: at which write of the whole day, and where in it.
  private record Death(int write, Moment moment) {}

  /// One thing a screen sends, under its own name.
  private record Act(String name, String path, Map<String, String> body) {}

  @BeforeEach
  void begin() {
    Serve.invent(clerk, wallet);
    twin = PageServer.start(0, clerk, wallet, wiring);
    Follower follower =
        Follower.of(Demo.copperBitter(), DemoRigs.household(), 20, 20, Instant.EPOCH).orElseThrow();
    List<Milestone> day = follower.plan().forecast().milestones();
    double wholeSec = day.getLast().atSec().middle();
    began = clerk.now().minusSeconds(Math.round(wholeSec) + 60);
    write(day);
  }

  @AfterEach
  void end() throws InterruptedException {
    if (running.isPresent()) {
      running.get().kill();
    }
    twin.stop();
    wiring.close();
    client.close();
  }

  /// The script of the day: what is noted, with its own time.
  private void write(List<Milestone> day) {
    acts.add(new Act("plan", "fix", Map.of()));
    act(0, "start", "", "");
    act(1, "here", "phone-0001", "a phone");
    act(2, "read", "hand-held thermometer", "14.5");
    act(5, "switch", "heater", "80 %");
    for (Milestone point : day) {
      long min = Math.round(point.atSec().middle() / 60);
      act(min, "reach", point.key(), "");
      switch (point.key()) {
        case "maltIn" -> {
          act(min + 1, "read", "hand-held thermometer", "60.2");
          // Misread: struck, and noted anew for the time it was read.
          act(min + 2, "strike", "last", "");
          act(min + 1, "read", "hand-held thermometer", "66.2");
          act(min + 3, "here", "tablet-0001", "a tablet");
          act(min + 4, "say", "mishap", "The pump lost its prime");
        }
        case "bagOut" -> {
          act(min + 1, "read", "dip-stick", "26");
          act(min + 2, "say", "words", "one more word");
          act(min + 2, "strike", "last", "");
        }
        case "boilReached" -> {
          act(min + 2, "read", "hydrometer", "9.5 P");
          act(min + 3, "switch", "heater", "");
        }
        default -> {}
      }
    }
    if (!LONG) {
      acts.subList(FEW_ACTS, acts.size()).clear();
    }
  }

  private void act(long min, String does, String what, String value) {
    Instant at = began.plus(Duration.ofMinutes(min));
    Map<String, String> body =
        Map.of("do", does, "what", what, "value", value, "at", at.toString());
    acts.add(new Act("act-" + acts.size(), "day", body));
  }

  private List<Death> deaths(long seed) {
    List<Death> all = new ArrayList<>();
    for (int write = 0; write < OWN_WRITES + acts.size(); write++) {
      for (Moment moment : Moment.values()) {
        all.add(new Death(write, moment));
      }
    }
    if (LONG) {
      return all;
    }
    RandomGenerator dice = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    var few = new TreeSet<>(Comparator.comparingInt(Death::write));
    while (few.size() < FEW_DEATHS) {
      few.add(all.get(dice.nextInt(all.size())));
    }
    return List.copyOf(few);
  }

  @Test
  void afterDyingAtAnyWriteTheDayIsWhereItWasAndEachNoteStandsOnce()
      throws IOException, InterruptedException {
    long seed = Long.getLong("case.seed", 20260314L);
    Path book = folder.resolve("book.sqlite");
    List<Death> deaths = deaths(seed);
    for (Death death : deaths) {
      life = "seed %d, dies %s write %d".formatted(seed, death.moment(), death.write());
      Program program = started(book, death.write() - inBook, death.moment());
      if (!program.address().isEmpty()) {
        assertSameDay(program.address());
        deliver(program.address());
      }
      assertThat(program.process().waitFor()).as(life).isEqualTo(BY_SIGNAL_9);
      inBook = death.write() + (death.moment() == Moment.UNTOLD ? 1 : 0);
      catchUp();
    }
    life = "the last life";
    Program program = started(book, -1, Moment.BEFORE);
    assertSameDay(program.address());
    deliver(program.address());
    assertSameDay(program.address());
    assertThat(get(program.address()).contains("The day is done"))
        .as("the day is done")
        .isEqualTo(LONG);
    program.kill();
    assertSameBook(book);
    System.getLogger("kills").log(System.Logger.Level.INFO, told(seed, deaths.size()));
  }

  private String told(long seed, int deaths) {
    int writes = OWN_WRITES + acts.size();
    return "seed %d: killed at %d of the %d moments of a day of %d writes; every note stands once"
        .formatted(seed, deaths, Moment.values().length * writes, writes);
  }

  private Program started(Path book, int lastWrite, Moment moment) throws IOException {
    running =
        Optional.of(
            Program.started(
                List.of(
                    MortalProgram.class.getName(),
                    book.toString(),
                    "" + lastWrite,
                    moment.toString())));
    return running.get();
  }

  /// Sends what waits, in order, until all is acknowledged or the program dies. What was in the
  /// book without its acknowledgement is sent again.
  private void deliver(String address) throws InterruptedException {
    while (acknowledged < acts.size()) {
      Act act = acts.get(acknowledged);
      try {
        HttpResponse<String> answer = post(address, act, body(acknowledged));
        assertThat(answer.statusCode()).as("%s: %s %s", life, act, answer.body()).isEqualTo(200);
      } catch (IOException _) {
        // It died before it answered.
        return;
      }
      acknowledged++;
      inBook = Math.max(inBook, OWN_WRITES + acknowledged);
      catchUp();
    }
  }

  /// What is in the book of the one is noted on the twin as well.
  private void catchUp() {
    while (onTwin < inBook - OWN_WRITES) {
      try {
        HttpResponse<String> answer = post(twin.address(), acts.get(onTwin), body(onTwin));
        assertThat(answer.statusCode()).as("twin: " + answer.body()).isEqualTo(200);
      } catch (IOException | InterruptedException failure) {
        throw new AssertionError(failure);
      }
      onTwin++;
    }
  }

  /// A note's words are fixed when it is first sent: which entry is struck is told by the twin,
  /// which has the same numbers.
  private String body(int number) {
    while (bodies.size() <= number) {
      Map<String, String> body = new HashMap<>(acts.get(bodies.size()).body());
      if (body.getOrDefault("what", "").equals("last")) {
        long seq = clerk.book().gyle("bitter").orElseThrow().day().getLast().seq();
        body.put("what", "" + seq);
      }
      bodies.add(JSON.writeValueAsString(body));
    }
    return bodies.get(number);
  }

  private HttpResponse<String> post(String address, Act act, String body)
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address + "api/gyles/bitter/" + act.path()))
            .header("Origin", address.replaceFirst("/$", ""))
            .header("Gyle-Once", act.name())
            .header("Gyle-Seen", "" + clerk.book().seen("bitter"))
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    return client.send(request, HttpResponse.BodyHandlers.ofString());
  }

  private String get(String address) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address + "api/gyles/bitter/kettle")).build();
    return client.send(request, HttpResponse.BodyHandlers.ofString()).body();
  }

  private void assertSameDay(String address) throws IOException, InterruptedException {
    JsonNode here = JSON.readTree(get(address));
    JsonNode there = JSON.readTree(get(twin.address()));
    String shown = here.get("html").asString();
    String wanted = there.get("html").asString();
    for (Pattern part : List.of(LEG, HOLDER, NOTES)) {
      assertThat(found(part, shown)).as(life).isEqualTo(found(part, wanted));
    }
    assertThat(here.get("seq").asLong()).as(life).isEqualTo(there.get("seq").asLong());
    assertThat(here.get("now").asLong())
        .as("%s: the clock", life)
        .isCloseTo(there.get("now").asLong(), within(AGREE_MS));
    assertThat(Long.parseLong("0" + found(ENDS, shown)))
        .as("%s: the countdown", life)
        .isCloseTo(Long.parseLong("0" + found(ENDS, wanted)), within(AGREE_MS));
  }

  private static String found(Pattern part, String html) {
    Matcher matcher = part.matcher(html);
    return matcher.find() ? matcher.group(1) : "";
  }

  private void assertSameBook(Path book) {
    try (DiskJournal disk = DiskJournal.open(book)) {
      assertThat(disk.entries(0).stream().map(EveryWriteKillTest::told))
          .containsExactlyElementsOf(
              kept.entries(0).stream().map(EveryWriteKillTest::told).toList());
    }
  }

  private static List<Object> told(Entry entry) {
    return List.of(entry.seq(), entry.gyleId(), entry.event());
  }
}
