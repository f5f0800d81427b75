package gylebook.device;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/// Plays one column of a table once. What is heard carries the moment at which it is played.
final class TableInstrument implements Listening {
  private final InstantSource clock;
  private final Tie tie;
  private final Reach.Table table;
  private final Consumer<Heard> ear;
  private final Thread thread;
  private volatile Line line;

  TableInstrument(Tie tie, Reach.Table table, InstantSource clock, Consumer<Heard> ear) {
    this.tie = tie;
    this.table = table;
    this.clock = clock;
    this.ear = ear;
    this.line = new Line.Down(clock.instant(), "not read yet");
    this.thread = Thread.ofVirtual().name("table-" + tie.instrument().id()).unstarted(this::play);
  }

  void start() {
    thread.start();
  }

  private void play() {
    Instant begun = clock.instant();
    try (Reader reader = Files.newBufferedReader(table.file())) {
      CsvReplay replay =
          CsvReplay.read(
              reader,
              table.timeHeading(),
              List.of(new CsvColumn(tie.instrument(), table.heading())),
              begun);
      line = new Line.Up(begun);
      replay.play(table.paceFactor(), TableInstrument::pass, heard -> ear.accept(now(heard)));
      line = new Line.Down(clock.instant(), table.file() + ": played to its end");
    } catch (IOException failed) {
      line = new Line.Down(clock.instant(), table.file() + ": " + failed.getMessage());
    } catch (InterruptedException _) {
      line = new Line.Down(clock.instant(), "closed");
    }
  }

  private static void pass(Duration gap) throws InterruptedException {
    Thread.sleep(gap);
  }

  /// The table's own times are long past; the day is now.
  private Heard now(Heard heard) {
    Decoded decoded =
        heard.decoded() instanceof Decoded.Value value
            ? new Decoded.Value(value.amount(), Optional.empty())
            : heard.decoded();
    return new Heard(
        heard.instrumentId(), clock.instant(), decoded, heard.oddities(), heard.leftOutCount());
  }

  @Override
  public Line line() {
    return line;
  }

  @Override
  public void close() {
    thread.interrupt();
  }
}
