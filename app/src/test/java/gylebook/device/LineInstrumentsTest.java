package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Against a pseudo-terminal of socat and a named pipe.
final class LineInstrumentsTest {
  private static final Patience QUICK = new Patience(Duration.ofMillis(10), Duration.ofMillis(50));
  private static final Unit CELSIUS = Unit.known(Quantity.TEMPERATURE, "°C");
  private static final Instrument PROBE = new Instrument("probe", "suction", CELSIUS);
  private static final Instrument OTHER = new Instrument("other", "cellar", CELSIUS);

  @TempDir private Path folder;

  private final List<String> overheard = new CopyOnWriteArrayList<>();
  private final AtomicInteger looks = new AtomicInteger();
  private final InstantSource clock =
      () -> Instant.parse("2026-11-25T08:00:00Z").plusSeconds(looks.incrementAndGet());

  private LineInstruments listen(LinePlace place, Ear ear, LineSource... sources) {
    return new LineInstruments(place, List.of(sources), clock, QUICK, ear, overheard::add);
  }

  private static LineSource whole() {
    return new LineSource(PROBE, LineSource.WHOLE_LINE);
  }

  private static List<String> cut(boolean midway, String... pieces) {
    LineCutter cutter = new LineCutter(midway);
    List<String> lines = new java.util.ArrayList<>();
    for (String piece : pieces) {
      byte[] bytes = piece.getBytes(StandardCharsets.UTF_8);
      lines.addAll(cutter.lines(bytes, bytes.length));
    }
    return lines;
  }

  @Test
  void linesArePutTogetherFromPiecesWithAnyLineEnd() {
    assertThat(cut(false, "66", ".3\r", "\n66.4\n\n", "66.5\r6", "6.6"))
        .containsExactly("66.3", "66.4", "66.5");
    assertThat(cut(false, "66.3 °C\n")).containsExactly("66.3 °C");
  }

  @Test
  void whoComesInTheMiddleDropsTheFirstPiece() {
    assertThat(cut(true, "6.3\n66.4\n")).containsExactly("66.4");
  }

  @Test
  void aLineWithoutEndIsDroppedAndFillsNoMemory() {
    String endless = "9".repeat(LineCutter.LINE_BYTES_MOST + 1);
    assertThat(cut(false, endless, endless, "\n66.4\n")).containsExactly("66.4");
  }

  @Test
  void aPatternPicksTheInstrumentAndTheNumber() {
    LineSource source = new LineSource(PROBE, "T1=(?<value>[^;]*);.*");
    assertThat(LineText.decode(source, "T1=66.3;T2=12.0")).containsInstanceOf(Decoded.Value.class);
    assertThat(LineText.decode(source, "T1=nan;T2=12.0"))
        .contains(new Decoded.Garbled("nan", "is no number"));
    assertThat(LineText.decode(source, "starting ...")).isEmpty();
    assertThatThrownBy(() -> new LineSource(PROBE, "T1=(.*)"))
        .hasMessageContaining("must have a group (?<value>...)");
    assertThatThrownBy(() -> new LineSource(PROBE, "T1=(")).hasMessageContaining("pattern is");
  }

  @Test
  void aBoardOnASerialLineIsHeard() throws IOException {
    Path ours = folder.resolve("ours");
    Path theirs = folder.resolve("theirs");
    Ear ear = new Ear();
    LinePlace place = new LinePlace.Serial(ours.toString(), 9600);
    try (Other _ = Other.cable(folder, ours, theirs);
        LineInstruments driver =
            listen(
                place,
                ear,
                new LineSource(PROBE, "A (?<value>.*)"),
                new LineSource(OTHER, "B (?<value>.*)"));
        OutputStream board = Files.newOutputStream(theirs)) {
      Ear.soon()
          .until(
              () -> {
                board.write("A 66.3\r\nB 53.6 F\r\n".getBytes(StandardCharsets.UTF_8));
                board.flush();
                return driver.line() instanceof Line.Up;
              });
      board.write("noise\r\nA 66.4\r\nB 54.5 F\r\n".getBytes(StandardCharsets.UTF_8));
      ear.value("probe", 66.4);
      ear.value("other", 12.5);
      assertThat(overheard).contains("noise");
    }
  }

  @Test
  void aSerialPortThatIsNotThereIsAway() {
    LinePlace nowhere = new LinePlace.Serial(folder.resolve("none").toString(), 9600);
    try (LineInstruments driver = listen(nowhere, new Ear(), whole())) {
      Ear.soon()
          .until(() -> driver.line() instanceof Line.Down(_, var why) && why.contains("none"));
      assertThat(overheard).isEmpty();
    }
  }

  @Test
  void aNamedPipeIsHeardThroughEveryWriterThatComesAndGoes() throws IOException {
    Path pipe = folder.resolve("pipe");
    Other.run(folder, "mkfifo", pipe.toString());
    Ear ear = new Ear();
    try (LineInstruments _ = listen(new LinePlace.Pipe(pipe), ear, whole())) {
      for (String value : List.of("66.3", "garbage", "66.4")) {
        Files.writeString(pipe, value + "\n");
        Ear.soon().until(() -> overheard.contains(value));
      }
      ear.value("probe", 66.3);
      ear.value("probe", 66.4);
      assertThat(ear.garbled("probe").text()).isEqualTo("garbage");
    }
  }

  @Test
  void nothingIsLostBetweenTwoWritersOfANamedPipe() throws IOException {
    Path pipe = folder.resolve("pipe");
    Other.run(folder, "mkfifo", pipe.toString());
    Ear ear = new Ear();
    int writers = 200;
    try (LineInstruments _ = listen(new LinePlace.Pipe(pipe), ear, whole())) {
      for (int i = 0; i < writers; i++) {
        String value = (20 + i / 10.0) + "\n";
        Files.writeString(pipe, value);
        Ear.soon().until(() -> overheard.contains(value.strip()));
      }
      Files.writeString(pipe, "50.5\n");
      ear.value("probe", 50.5);
    }
    assertThat(overheard).hasSize(writers + 1);
  }

  /// A place where the first writer goes in the middle of a line and a second one comes.
  private record HalfPlace() implements LinePlace {
    @Override
    public String words() {
      return "half";
    }

    @Override
    public boolean midway() {
      return false;
    }

    @Override
    public boolean pauses() {
      return true;
    }

    @Override
    public InputStream open() {
      InputStream first = new ByteArrayInputStream("50\n6".getBytes(StandardCharsets.UTF_8));
      InputStream second = new ByteArrayInputStream("51\n".getBytes(StandardCharsets.UTF_8));
      AtomicInteger ends = new AtomicInteger();
      return new InputStream() {
        @Override
        public int read() throws IOException {
          throw new IOException("one byte is never asked for");
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
          int count = (ends.get() == 0 ? first : second).read(into, offset, length);
          ends.addAndGet(count < 0 ? 1 : 0);
          return count;
        }
      };
    }
  }

  @Test
  void halfALineOfOneWriterIsNotJoinedToTheNextOnes() {
    Ear ear = new Ear();
    try (LineInstruments _ = listen(new HalfPlace(), ear, whole())) {
      ear.value("probe", 51);
    }
    assertThat(overheard).containsExactly("50", "51");
  }

  /// A place whose n-th read fails, once; each opening gives the same three lines.
  private record FaultyPlace(AtomicInteger reads, int n) implements LinePlace {
    @Override
    public String words() {
      return "faulty";
    }

    @Override
    public boolean midway() {
      return false;
    }

    @Override
    public InputStream open() {
      InputStream lines = new ByteArrayInputStream("50\n51\n52\n".getBytes(StandardCharsets.UTF_8));
      return new InputStream() {
        @Override
        public int read() throws IOException {
          throw new IOException("one byte is never asked for");
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
          if (reads.getAndIncrement() == n) {
            throw new IOException("pulled");
          }
          return lines.read(into, offset, 2);
        }
      };
    }
  }

  @Test
  void aLineThatFailsAtTheNthReadStopsNothing() {
    for (int n = 0; n < 12; n++) {
      AtomicInteger reads = new AtomicInteger();
      Ear ear = new Ear();
      int failAt = n;
      try (LineInstruments _ = listen(new FaultyPlace(reads, n), ear, whole())) {
        Ear.soon().until(() -> reads.get() > failAt + 12);
        ear.value("probe", 50);
        ear.value("probe", 51);
        ear.value("probe", 52);
        assertThat(ear.heard).allMatch(one -> one.decoded() instanceof Decoded.Value);
      }
    }
  }
}
