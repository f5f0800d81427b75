package gylebook.device;

import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/// Listens to a board that prints lines on a serial port, or to a named pipe. Reads; never writes.
public final class LineInstruments implements Listening {
  private final LinePlace place;
  private final List<LineSource> sources;
  private final Watch watch;
  private final Consumer<String> overhear;
  private final Rounds rounds;
  private final Duration pause;
  private volatile Optional<InputStream> open = Optional.empty();

  /// Begins to listen at once.
  ///
  /// @param overhear gets every line as it came, for the set-up page
  public LineInstruments(
      LinePlace place,
      List<LineSource> sources,
      InstantSource clock,
      Patience patience,
      Consumer<Heard> ear,
      Consumer<String> overhear) {
    this.place = place;
    this.sources = List.copyOf(sources);
    this.watch = new Watch(clock, ear);
    this.overhear = overhear;
    this.pause = patience.first();
    String name = "lines-" + place.words();
    this.rounds = new Rounds(name, pause, patience, clock, this::round);
    rounds.start();
  }

  /// Listens until the line breaks off or ends.
  private void round() throws IOException, InterruptedException {
    LineCutter cutter = new LineCutter(place.midway());
    boolean ended = false;
    byte[] buffer = new byte[1024];
    try (InputStream in = place.open()) {
      open = Optional.of(in);
      while (!ended) {
        int count = in.read(buffer);
        if (Thread.interrupted()) {
          throw new InterruptedException();
        }
        if (count > 0) {
          rounds.up();
          cutter.lines(buffer, count).forEach(this::hear);
        } else if (count < 0) {
          ended = !place.pauses();
          // Half a line of a writer that went is no beginning of the next one's.
          cutter = new LineCutter(place.midway());
          Thread.sleep(pause);
        }
      }
      throw new IOException(place.words() + ": ended");
    } finally {
      open = Optional.empty();
    }
  }

  private void hear(String line) {
    overhear.accept(Received.shown(line));
    for (LineSource source : sources) {
      LineText.decode(source, line).ifPresent(decoded -> watch.hear(source.instrument(), decoded));
    }
  }

  @Override
  public Line line() {
    return rounds.line();
  }

  @Override
  public void close() {
    // A read that waits for a byte wakes when its stream is closed.
    open.ifPresent(LineInstruments::shut);
    rounds.close();
  }

  private static void shut(InputStream in) {
    try {
      in.close();
    } catch (IOException _) {
      // It is gone already.
    }
  }
}
