package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PanelTest {
  private static final Instant MORNING = Instant.parse("2026-11-25T08:00:00Z");
  private static final Patience QUICK = new Patience(Duration.ofMillis(10), Duration.ofMillis(50));
  private static final String TOKEN = "a token long enough";

  @TempDir private Path folder;

  private final AtomicInteger looks = new AtomicInteger();
  private final InstantSource clock = () -> MORNING.plusSeconds(looks.incrementAndGet());
  private final Ear ear = new Ear();
  private Optional<Panel> open = Optional.empty();

  @AfterEach
  void close() {
    open.ifPresent(Panel::close);
  }

  private Panel panel() {
    Panel panel = new Panel(clock, QUICK, folder, ear);
    open = Optional.of(panel);
    return panel;
  }

  private static Tie tie(String name, Map<String, String> form) throws Unfit {
    return TieForm.tie(name, "somewhere", form);
  }

  private static Tie posted(String name) throws Unfit {
    return tie(
        name,
        Map.of(
            "kind",
            "post",
            "tokenDigest",
            Board.digest(TOKEN),
            "payload",
            "json",
            "at",
            "/" + name));
  }

  private static Posted.Answer post(Panel panel, String token, String body) {
    return panel.post(Optional.of("Bearer " + token), body.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void whatABoardPostsIsCountedForEachOfItsInstruments() throws Unfit {
    Panel panel = panel();
    panel.tie(List.of(posted("warm"), posted("cold")));
    assertThat(post(panel, TOKEN, "{\"warm\":66.3,\"cold\":12}").status()).isEqualTo(204);
    assertThat(post(panel, TOKEN, "{\"warm\":85,\"cold\":\"off\"}").status()).isEqualTo(204);
    assertThat(post(panel, "another token of somebody", "{}").status()).isEqualTo(401);

    assertThat(panel.gauges())
        .extracting(one -> one.tie().instrument().id())
        .containsExactly("warm", "cold");
    Gauge warm = panel.gauge("warm").orElseThrow();
    assertThat(warm.counts()).isEqualTo(new Gauge.Counts(2, 0, 0, 1, 0, 0, 0));
    Gauge cold = panel.gauge("cold").orElseThrow();
    assertThat(cold.counts().garbled()).isEqualTo(1);
    assertThat(cold.lastValue().map(Ear::inside)).contains(12.0);
    assertThat(cold.recent()).hasSize(2);
    assertThat(ear.heard).hasSize(4);
  }

  @Test
  void whatIsLoosedIsHeardNoLongerAndTheOthersAre() throws Unfit {
    Panel panel = panel();
    panel.tie(List.of(posted("warm"), posted("cold")));
    panel.loose("warm");
    assertThat(post(panel, TOKEN, "{\"warm\":66.3,\"cold\":12}").status()).isEqualTo(204);
    assertThat(ear.heard).extracting(Heard::instrumentId).containsExactly("cold");
    panel.loose("cold");
    assertThat(post(panel, TOKEN, "{\"cold\":12}").status()).isEqualTo(401);
    assertThat(panel.gauges()).isEmpty();
  }

  @Test
  void silenceIsFiveUsualGapsAndNoLess() throws Unfit {
    Panel panel = panel();
    panel.tie(List.of(posted("warm")));
    for (int i = 0; i < 6; i++) {
      post(panel, TOKEN, "{\"warm\":66.3}");
    }
    Gauge warm = panel.gauge("warm").orElseThrow();
    Instant last = warm.last().orElseThrow().received();
    Duration gap = warm.usualGap().orElseThrow();
    assertThat(warm.silent(last.plus(gap.multipliedBy(5)))).isFalse();
    assertThat(warm.silent(last.plusSeconds(15))).isFalse();
    assertThat(warm.silent(last.plus(gap.multipliedBy(5)).plusSeconds(16))).isTrue();
  }

  @Test
  void aTableIsPlayedAsIfItHappenedNow() throws Exception {
    Path table = Files.writeString(folder.resolve("day.csv"), "time,kettle\n0,20.5\n60,21.5\n");
    Panel panel = panel();
    Map<String, String> form =
        Map.of("kind", "table", "file", table.toString(), "column", "kettle", "pace", "100000");
    panel.tie(List.of(tie("kettle", form)));
    assertThat(ear.value("kettle", 21.5).at()).isAfter(MORNING);
    Ear.soon()
        .until(
            () ->
                panel.gauge("kettle").orElseThrow().line() instanceof Line.Down(_, var why)
                    && why.contains("to its end"));
  }

  @Test
  void whatIsNotThereIsDownWithAReasonAndStopsNobody() throws Exception {
    Path pipe = folder.resolve("pipe");
    Other.run(folder, "mkfifo", pipe.toString());
    Panel panel = panel();
    panel.tie(
        List.of(
            tie("none", Map.of("kind", "table", "file", "/no/such", "column", "x")),
            tie("chip", Map.of("kind", "chip", "number", "28-0416c2f4a1ff")),
            tie("printed", Map.of("kind", "line", "device", pipe.toString()))));
    Files.writeString(pipe, "66.3\n");
    ear.value("printed", 66.3);
    for (String name : List.of("none", "chip")) {
      Ear.soon()
          .until(
              () ->
                  panel.gauge(name).orElseThrow().line() instanceof Line.Down(_, var why)
                      && (why.contains("no/such") || why.contains("not on the bus")));
    }
    Files.writeString(pipe, "66.4\n");
    assertThat(panel.gauge("printed").orElseThrow().counts().garbled()).isZero();
  }

  @Test
  void aTieAnewLeavesTheOtherLinesInPeace() throws Exception {
    Path table = Files.writeString(folder.resolve("day.csv"), "time,kettle\n0,20.5\n");
    Panel panel = panel();
    Map<String, String> form =
        Map.of("kind", "table", "file", table.toString(), "column", "kettle");
    panel.tie(List.of(tie("kettle", form)));
    ear.value("kettle", 20.5);
    panel.tie(List.of(posted("warm")));
    post(panel, TOKEN, "{\"warm\":66.3}");
    ear.value("warm", 66.3);
    // Begun anew, the table would have been heard twice.
    assertThat(ear.heard).extracting(Heard::instrumentId).containsExactly("kettle", "warm");
  }

  @Test
  void aLookShowsTheChipsOnTheBus() throws IOException, Unfit {
    Files.createDirectory(folder.resolve("28-0416c2f4a1ff"));
    try (Look look = new Look(Map.of("kind", "chip"), clock, folder)) {
      assertThat(look.seen())
          .extracting(Seen::fill)
          .containsExactly(Map.of("number", "28-0416c2f4a1ff"));
    }
  }
}
