package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.io.FilterReader;
import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

final class CsvReplayTest {
  private static final Instant START = Instant.parse("2026-11-25T08:00:00Z");
  private static final Instrument PROBE =
      new Instrument("probe", "suction", Unit.known(Quantity.TEMPERATURE, "°C"));
  private static final Instrument DUTY =
      new Instrument("duty", "element", Unit.known(Quantity.SHARE, "%"));
  private static final List<CsvColumn> COLUMNS =
      List.of(new CsvColumn(PROBE, "kettle"), new CsvColumn(DUTY, "duty"));

  private final Ear ear = new Ear();
  private final List<Duration> waits = new ArrayList<>();

  private void play(String table, double paceFactor) throws Exception {
    CsvReplay.read(new StringReader(table), "time", COLUMNS, START)
        .play(paceFactor, waits::add, ear);
  }

  @Test
  void aTableIsHeardWithItsOwnTimesAtTheChosenPace() throws Exception {
    play("time,kettle,duty\n0,20.5,100\n60,22.1,100\n90,,50\n", 10);
    assertThat(waits).containsExactly(Duration.ofSeconds(6), Duration.ofSeconds(3));
    assertThat(ear.heard)
        .extracting(Heard::received)
        .containsExactly(
            START, START, START.plusSeconds(60), START.plusSeconds(60), START.plusSeconds(90));
    assertThat(ear.heard.stream().map(Ear::inside)).containsExactly(20.5, 1.0, 22.1, 1.0, 0.5);
    assertThat(ear.heard).allSatisfy(one -> assertThat(one.oddities()).isEmpty());
  }

  @Test
  void semicolonsDecimalCommasQuotesAndUnitsAreRead() throws Exception {
    String table =
        """
        duty;kettle;time
        "50";"66,3";2026-11-25T09:00:00+01:00
        50 %;151.34 F;2026-11-25T08:00:01Z
        """;
    play("\uFEFF" + table.replace("\n", "\r\n"), 1);
    assertThat(ear.heard.stream().map(Ear::inside).map(inside -> Math.round(inside * 1e6) / 1e6))
        .containsExactly(66.3, 0.5, 66.3, 0.5);
    assertThat(ear.heard.getFirst().received()).isEqualTo(START);
  }

  @Test
  void badCellsAreShownAsTheyAreAndTheNextRowIsHeard() throws Exception {
    play("time,kettle,duty\nnoon,20.5,\n10,---,\n20\n30,20.6,1,2,3\n", 1);
    assertThat(ear.heard.stream().map(Heard::decoded).limit(2))
        .containsExactly(
            new Decoded.Garbled("20.5", "has no time: 'noon'"),
            new Decoded.Garbled("---", "is no number"));
    ear.value("probe", 20.6);
  }

  @Test
  void rowsThatGoBackInTimeAreMarkedAndNobodyWaits() throws Exception {
    play("time,kettle,duty\n100,20.5,\n40,20.6,\n", 1);
    assertThat(waits).isEmpty();
    assertThat(ear.heard.getLast().oddities()).containsExactly(Oddity.CLOCK_WENT_BACK);
  }

  @Test
  void whatIsNoTableIsRefusedWithTheReason() {
    assertThatThrownBy(() -> play("", 1)).hasMessageContaining("empty");
    assertThatThrownBy(() -> play("time,duty\n", 1))
        .hasMessage("the table has no column 'kettle', but [time, duty]");
    assertThatThrownBy(() -> play("time,kettle,duty\n1,\"2", 1)).hasMessageContaining("broken");
    assertThatThrownBy(() -> play("time,kettle,duty\n", 0)).hasMessageContaining("paceFactor is 0");
  }

  /// A reader whose n-th read fails.
  private static final class FaultyReader extends FilterReader {
    private final AtomicInteger reads = new AtomicInteger();
    private final int failAt;

    FaultyReader(String text, int failAt) {
      super(new StringReader(text));
      this.failAt = failAt;
    }

    @Override
    public int read(char[] into, int offset, int length) throws IOException {
      if (reads.getAndIncrement() == failAt) {
        throw new IOException("pulled");
      }
      return super.read(into, offset, Math.min(length, 8));
    }
  }

  @Test
  void aFileThatFailsAtTheNthReadIsRefusedWholeAndNeverHalfPlayed() throws Exception {
    String table = "time,kettle,duty\n0,20.5,100\n60,22.1,100\n";
    boolean failed = true;
    int n = 0;
    while (failed) {
      try {
        CsvReplay replay = CsvReplay.read(new FaultyReader(table, n), "time", COLUMNS, START);
        assertThat(replay.rowCount()).isEqualTo(2);
        failed = false;
      } catch (IOException pulled) {
        assertThat(pulled).hasMessage("pulled");
        n++;
      }
    }
    assertThat(n).isGreaterThan(3);
  }
}
