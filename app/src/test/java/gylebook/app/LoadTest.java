package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import gylebook.brewday.Command;
import gylebook.journal.Journal;
import gylebook.rig.DemoRigs;
import gylebook.rig.Probe;
import gylebook.store.DiskJournal;
import gylebook.web.Instruments;
import gylebook.web.PageServer;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLongArray;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/// A full house: twenty screens look on, a hundred readings a second come from twenty-five boards,
/// and somebody notes every second. Nothing acknowledged is lost; how long a screen waits is
/// printed. Ten minutes under `-Plong`, `-Dload.sec=N` for another time.
class LoadTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final int SCREENS = 20;
  private static final int BOARDS = 25;
  private static final int READINGS_PER_SEC = 100;
  private static final int IN_FLIGHT = 64;

  @TempDir private Path folder;

  private final HttpClient client = HttpClient.newHttpClient();
  private final List<String> tokens = new ArrayList<>();
  private final AtomicLongArray takenByBoard = new AtomicLongArray(BOARDS);
  private final AtomicInteger sent = new AtomicInteger();
  private final AtomicInteger flying = new AtomicInteger();
  private final AtomicInteger said = new AtomicInteger();
  private final Queue<Integer> acknowledged = new ConcurrentLinkedQueue<>();
  private final Queue<Long> waitedNs = new ConcurrentLinkedQueue<>();
  private final Queue<String> faults = new ConcurrentLinkedQueue<>();
  private String address = "";

  @Test
  void nothingAcknowledgedIsLostInAFullHouse() throws InterruptedException {
    int loadSec = Integer.getInteger("load.sec", Boolean.getBoolean("long") ? 600 : 5);
    Path book = folder.resolve("book.sqlite");
    try (DiskJournal journal = DiskJournal.open(book)) {
      Clerk clerk = new Clerk(journal, InstantSource.system());
      Wallet wallet = new Wallet();
      Serve.invent(clerk, wallet);
      try (Wiring wiring = new Wiring(clerk, InstantSource.system(), folder)) {
        wiring.listen(new NoteTaker(clerk, wallet));
        wiring.begin();
        PageServer server = PageServer.start(0, clerk, wallet, wiring);
        address = server.address();
        begin(clerk, wiring);
        run(loadSec);
        await().atMost(Duration.ofSeconds(60)).until(() -> flying.get() == 0);
        assertNothingLost(clerk, wiring);
        server.stop();
      }
      Clerk again = new Clerk(journal, InstantSource.system());
      assertThat(again.book().gyle("bitter")).isEqualTo(clerk.book().gyle("bitter"));
    }
    print(loadSec);
  }

  private void begin(Clerk clerk, Wiring wiring) {
    clerk.write(
        "bitter",
        clerk.book().seen("bitter"),
        new Command.FixPlan("test", 20, 200, "as planned"),
        "plan");
    clerk.note("bitter", new Command.StartDay(), "began", Optional.empty());
    for (int board = 0; board < BOARDS; board++) {
      Map<String, String> form =
          new HashMap<>(
              Map.of("kind", "post", "name", name(board), "measures", "TEMPERATURE \u00b0C"));
      long seen = clerk.book().seen(Journal.HOUSE);
      if (wiring.tie(form, seen, "tie-" + board)
          instanceof Instruments.Tied.Answered(_, var token)) {
        tokens.add(token.orElseThrow());
      }
    }
    assertThat(tokens).hasSize(BOARDS);
  }

  /// The first board is the rig's own probe, whose readings stand on the day.
  private static String name(int board) {
    return board > 0
        ? "board " + board
        : DemoRigs.household().probes().stream()
            .filter(Probe::steers)
            .findFirst()
            .orElseThrow()
            .name();
  }

  private void run(int loadSec) throws InterruptedException {
    CountDownLatch over = new CountDownLatch(1);
    try (ScheduledExecutorService clock = Executors.newScheduledThreadPool(2);
        var screens = Executors.newVirtualThreadPerTaskExecutor()) {
      var _ =
          // Boards do not make up for lost time; that would be a flood, which is thinned.
          clock.scheduleWithFixedDelay(
              this::sendReading, 0, 1000 / READINGS_PER_SEC, TimeUnit.MILLISECONDS);
      var _ = clock.scheduleAtFixedRate(this::say, 500, 1000, TimeUnit.MILLISECONDS);
      for (int screen = 0; screen < SCREENS; screen++) {
        var _ = screens.submit(() -> watch(over));
      }
      var _ = clock.schedule(over::countDown, loadSec, TimeUnit.SECONDS);
      over.await();
      clock.shutdownNow();
    }
  }

  private void sendReading() {
    if (flying.get() >= IN_FLIGHT) {
      return;
    }
    flying.incrementAndGet();
    int board = sent.getAndIncrement() % BOARDS;
    String reading = String.format(Locale.ROOT, "%.2f", 60 + board * 0.1);
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address + "api/readings"))
            .header("Authorization", "Bearer " + tokens.get(board))
            .POST(BodyPublishers.ofString(reading))
            .build();
    var _ =
        client
            .sendAsync(request, BodyHandlers.ofString())
            .whenComplete(
                (answer, failure) -> {
                  flying.decrementAndGet();
                  if (failure != null || answer.statusCode() != 204) {
                    faults.add(failure == null ? "answered " + answer.statusCode() : "" + failure);
                  } else {
                    takenByBoard.incrementAndGet(board);
                  }
                });
  }

  private void say() {
    int number = said.incrementAndGet();
    flying.incrementAndGet();
    String body =
        JSON.writeValueAsString(Map.of("do", "say", "what", "words", "value", "word " + number));
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address + "api/gyles/bitter/day"))
            .header("Origin", address.replaceFirst("/$", ""))
            .header("Gyle-Once", "note-" + number)
            .POST(BodyPublishers.ofString(body))
            .build();
    var _ =
        client
            .sendAsync(request, BodyHandlers.ofString())
            .whenComplete(
                (answer, failure) -> {
                  flying.decrementAndGet();
                  if (failure == null && answer.statusCode() == 200) {
                    acknowledged.add(number);
                  } else {
                    faults.add("a note: " + (failure == null ? answer.body() : failure.toString()));
                  }
                });
  }

  private void watch(CountDownLatch over) {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address + "api/gyles/bitter/kettle")).build();
    try {
      do {
        long from = System.nanoTime();
        int status = client.send(request, BodyHandlers.ofString()).statusCode();
        waitedNs.add(System.nanoTime() - from);
        if (status != 200) {
          faults.add("a screen was answered " + status);
        }
      } while (!over.await(1, TimeUnit.SECONDS));
    } catch (IOException | InterruptedException failure) {
      faults.add("a screen: " + failure);
    }
  }

  private void assertNothingLost(Clerk clerk, Wiring wiring) {
    assertThat(faults).isEmpty();
    Map<String, Long> heardByName =
        wiring.dials().stream()
            .collect(Collectors.toMap(Instruments.Dial::name, Instruments.Dial::heardCount));
    for (int board = 0; board < BOARDS; board++) {
      assertThat(heardByName.get(name(board)))
          .as("heard of %s", name(board))
          .isEqualTo(takenByBoard.get(board));
    }
    String notes = clerk.book().gyle("bitter").orElseThrow().happened().toString();
    for (int number : acknowledged) {
      assertThat(notes.split("word " + number + "\\]", -1)).as("note %d", number).hasSize(2);
    }
  }

  private void print(int loadSec) {
    long[] sorted = waitedNs.stream().mapToLong(Long::longValue).sorted().toArray();
    System.getLogger("load")
        .log(
            System.Logger.Level.INFO,
            String.format(
                Locale.ROOT,
                "%d s: %d readings taken, %d notes, %d looks of %d screens; a look waits %.0f ms in"
                    + " the middle, %.0f ms at the 99th of 100, %.0f ms at most",
                loadSec,
                IntStream.range(0, BOARDS).mapToLong(takenByBoard::get).sum(),
                acknowledged.size(),
                sorted.length,
                SCREENS,
                sorted[sorted.length / 2] / 1e6,
                sorted[(int) Math.min(sorted.length - 1, sorted.length * 99L / 100)] / 1e6,
                Arrays.stream(sorted).max().orElse(0) / 1e6));
  }
}
