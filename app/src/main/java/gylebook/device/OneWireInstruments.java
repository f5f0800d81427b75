package gylebook.device;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.stream.Stream;

/// Reads thermometer chips from the files the kernel keeps for them, each on a thread of its own:
/// one that hangs holds up no other.
public final class OneWireInstruments implements Listening {
  /// Where Linux shows the chips of its 1-Wire bus.
  public static final Path USUAL_ROOT = Path.of("/sys/bus/w1/devices");

  /// A conversion takes 0.75 s; ten times that is no conversion.
  private static final Duration CONVERSION_MOST = Duration.ofSeconds(8);

  private static final int TEXT_BYTES_MOST = 1024;

  private final List<Rounds> chips;

  /// Fetches the text of one chip.
  interface Port {
    String read(OneWireChip chip) throws IOException, InterruptedException;
  }

  /// Begins to read at once; a chip that is not there yet is tried again and again.
  public OneWireInstruments(
      Path root,
      List<OneWireChip> chips,
      Duration every,
      InstantSource clock,
      Patience patience,
      Consumer<Heard> ear) {
    this(new Files1Wire(root, CONVERSION_MOST), chips, every, patience, new Watch(clock, ear));
  }

  OneWireInstruments(
      Port port, List<OneWireChip> chips, Duration every, Patience patience, Watch watch) {
    this.chips =
        chips.stream()
            .map(
                chip ->
                    new Rounds(
                        "one-wire-" + chip.number(),
                        every,
                        patience,
                        watch::now,
                        () -> round(port, chip, watch)))
            .toList();
    this.chips.forEach(Rounds::start);
  }

  private static void round(Port port, OneWireChip chip, Watch watch)
      throws IOException, InterruptedException {
    watch.hear(chip.instrument(), OneWireText.decode(chip.instrument(), port.read(chip)));
  }

  /// The chips on the bus now, for the set-up page.
  public static List<String> found(Path root) throws IOException {
    try (Stream<Path> files = Files.list(root)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.matches("[0-9a-f]{2}-[0-9a-f]{12}"))
          .sorted()
          .toList();
    } catch (NoSuchFileException _) {
      return List.of();
    }
  }

  /// Up when every chip answers; otherwise what is the matter with the first that does not.
  @Override
  public Line line() {
    List<Line> lines = chips.stream().map(Rounds::line).toList();
    return lines.stream()
        .filter(line -> line instanceof Line.Down)
        .findFirst()
        .or(() -> lines.stream().findFirst())
        .orElseThrow();
  }

  @Override
  public void close() {
    chips.forEach(Rounds::close);
  }

  /// The files below a root, each read with a limit on time and length.
  static final class Files1Wire implements Port {
    private final Path root;
    private final Duration patience;

    /// Readings that hang. None is begun beside one: they would pile up for as long as the bus is
    /// stuck.
    private final Map<String, FutureTask<String>> hanging = new ConcurrentHashMap<>();

    Files1Wire(Path root, Duration patience) {
      this.root = root;
      this.patience = patience;
    }

    @Override
    public String read(OneWireChip chip) throws IOException, InterruptedException {
      String number = chip.number();
      Optional<FutureTask<String>> stuck = Optional.ofNullable(hanging.get(number));
      if (stuck.isPresent() && !stuck.get().isDone()) {
        throw new IOException(number + ": still no answer");
      }
      hanging.remove(number);
      Callable<String> reading = () -> text(root.resolve(number).resolve("w1_slave"));
      FutureTask<String> task = new FutureTask<>(reading);
      Thread.ofPlatform().daemon().name("reading-" + number).start(task);
      try {
        return task.get(patience.toMillis(), TimeUnit.MILLISECONDS);
      } catch (TimeoutException late) {
        hanging.put(number, task);
        throw new IOException(number + ": no answer within " + patience, late);
      } catch (ExecutionException failed) {
        boolean away = failed.getCause() instanceof NoSuchFileException;
        String why = away ? "not on the bus" : String.valueOf(failed.getCause());
        throw new IOException(number + ": " + why, failed);
      }
    }

    private static String text(Path file) throws IOException {
      try (var in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(TEXT_BYTES_MOST);
        return Received.text(bytes).orElseGet(() -> Received.shownBytes(bytes));
      }
    }
  }
}
