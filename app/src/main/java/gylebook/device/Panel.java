package gylebook.device;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/// Every instrument that is tied, each with what it says now. Instruments that share a line share a
/// driver. Nothing a device does comes out of here but readings and reasons.
public final class Panel implements AutoCloseable {
  private static final System.Logger LOG = System.getLogger(Panel.class.getName());

  private final InstantSource clock;
  private final Patience patience;
  private final Path oneWireRoot;
  private final Consumer<Heard> ear;
  private final SequencedMap<String, Tie> ties = new LinkedHashMap<>();
  private final Map<String, Tally> tallies = new ConcurrentHashMap<>();
  private final Map<Object, Listening> drivers = new HashMap<>();
  private final Map<LinePlace, Overheard> overheard = new ConcurrentHashMap<>();
  private volatile Posted posted;

  /// An empty panel.
  ///
  /// @param ear gets everything that is heard, on the threads of the drivers
  public Panel(InstantSource clock, Patience patience, Path oneWireRoot, Consumer<Heard> ear) {
    this.clock = clock;
    this.patience = patience;
    this.oneWireRoot = oneWireRoot;
    this.ear = ear;
    this.posted = new Posted(List.of(), clock, this::hear);
  }

  /// Listens to these instruments as well; one of the same name is let go first.
  public synchronized void tie(List<Tie> more) {
    Map<Object, List<Tie>> before = byLine();
    more.forEach(tie -> ties.put(tie.instrument().id(), tie));
    more.forEach(tie -> tallies.put(tie.instrument().id(), new Tally()));
    renew(before);
  }

  /// Listens to this one no longer.
  public synchronized void loose(String id) {
    Map<Object, List<Tie>> before = byLine();
    ties.remove(id);
    tallies.remove(id);
    renew(before);
  }

  /// How every instrument stands, in the order they were tied.
  public synchronized List<Gauge> gauges() {
    return ties.values().stream()
        .map(tie -> tally(tie.instrument().id()).gauge(tie, line(tie)))
        .toList();
  }

  private Tally tally(String id) {
    return tallies.computeIfAbsent(id, _ -> new Tally());
  }

  /// How one stands.
  public Optional<Gauge> gauge(String id) {
    return gauges().stream().filter(one -> one.tie().instrument().id().equals(id)).findFirst();
  }

  /// Takes what a board posted.
  public Posted.Answer post(Optional<String> authorization, byte[] body) {
    return posted.take(authorization, body);
  }

  /// What is printed where a tied instrument reads already. A serial port or a named pipe has one
  /// reader at a time, so a look goes through that one.
  ///
  /// @param form the form of a tie, as far as it is filled in
  /// @return empty when nobody reads there
  /// @throws Unfit when it cannot be looked at meanwhile, with the way out
  public synchronized Optional<List<Seen>> overheard(Map<String, String> form) throws Unfit {
    String device = form.getOrDefault("device", "").strip();
    Optional<Tie> reader =
        device.isEmpty()
            ? Optional.empty()
            : ties.values().stream()
                .filter(tie -> tie.reach().port().filter(port -> same(port, device)).isPresent())
                .findFirst();
    if (reader.isEmpty()) {
      return Optional.empty();
    }
    boolean lines = form.getOrDefault("kind", "").equals("line");
    String name = reader.get().instrument().id();
    if (lines && reader.get().reach() instanceof Reach.Printed(LinePlace place, String _)) {
      if (place instanceof LinePlace.Serial(String _, int baud) && baud != baud(form)) {
        throw new Unfit(
            "baud",
            form.getOrDefault("baud", ""),
            "'%s' reads %s at %d baud: look at %d baud too, or loose '%s' first."
                .formatted(name, device, baud, baud, name));
      }
      return Optional.of(
          Optional.ofNullable(overheard.get(place)).map(Overheard::seen).orElse(List.of()));
    }
    throw new Unfit(
        "device",
        device,
        "It is in use for '%s', which is tied, and serves one at a time. What '%s' says stands on its page; to look at the port itself, loose '%s' first and tie it again afterwards."
            .formatted(name, name, name));
  }

  private static int baud(Map<String, String> form) {
    String typed = form.getOrDefault("baud", "").strip();
    return typed.matches("\\d{1,7}") ? Integer.parseInt(typed) : 0;
  }

  /// Whether two paths lead to one port: such names are often links.
  private static boolean same(String one, String other) {
    return one.equals(other) || real(one).equals(real(other));
  }

  private static String real(String path) {
    try {
      return Path.of(path).toRealPath().toString();
    } catch (IOException | InvalidPathException _) {
      return path;
    }
  }

  private Line line(Tie tie) {
    return Optional.ofNullable(drivers.get(tie.line()))
        .map(Listening::line)
        .orElseGet(() -> new Line.Down(clock.instant(), "not begun"));
  }

  private Map<Object, List<Tie>> byLine() {
    return ties.values().stream()
        .collect(Collectors.groupingBy(Tie::line, LinkedHashMap::new, Collectors.toList()));
  }

  /// Drivers whose instruments have changed are begun anew; the others are left in peace.
  private void renew(Map<Object, List<Tie>> before) {
    Map<Object, List<Tie>> now = byLine();
    List<Object> changed = new ArrayList<>(before.keySet());
    now.keySet().stream().filter(line -> !before.containsKey(line)).forEach(changed::add);
    changed.removeIf(line -> before.getOrDefault(line, List.of()).equals(now.get(line)));
    for (Object line : changed) {
      Optional.ofNullable(drivers.remove(line)).ifPresent(Panel::shut);
      overheard.keySet().removeIf(line::equals);
      Optional.ofNullable(now.get(line)).ifPresent(tied -> drivers.put(line, begun(tied)));
    }
    posted = new Posted(boards(), clock, this::hear);
  }

  private Listening begun(List<Tie> tied) {
    try {
      return begin(tied);
    } catch (RuntimeException | LinkageError broken) {
      // A library that cannot load its native part must not take the program along.
      LOG.log(Level.WARNING, "A driver did not begin", broken);
      return new Standing(new Line.Down(clock.instant(), "a fault of the program: " + broken));
    }
  }

  private Listening begin(List<Tie> tied) {
    return switch (tied.getFirst().reach()) {
      case Reach.Broker(MqttBroker broker, String _, Payload _) ->
          new MqttInstruments(
              broker,
              each(tied, Reach.Broker.class, Reach.Broker::topic),
              clock,
              patience,
              this::hear);
      case Reach.Controller to ->
          new ModbusInstruments(
              to.place(),
              each(tied, Reach.Controller.class, Reach.Controller::register),
              every(tied),
              clock,
              patience,
              this::hear);
      case Reach.Chip _ ->
          new OneWireInstruments(
              oneWireRoot,
              each(tied, Reach.Chip.class, Reach.Chip::chip),
              every(tied),
              clock,
              patience,
              this::hear);
      case Reach.Printed(LinePlace place, String _) ->
          new LineInstruments(
              place,
              each(tied, Reach.Printed.class, Reach.Printed::source),
              clock,
              patience,
              this::hear,
              overheard.computeIfAbsent(place, _ -> new Overheard())::add);
      case Reach.Post _ -> new Standing(new Line.Up(clock.instant()));
      case Reach.Table table -> {
        TableInstrument one = new TableInstrument(tied.getFirst(), table, clock, this::hear);
        one.start();
        yield one;
      }
    };
  }

  /// What the reach of each makes of its instrument; the ties of one line have one kind of reach.
  private static <R extends Reach, T> List<T> each(
      List<Tie> tied, Class<R> kind, BiFunction<R, Instrument, T> making) {
    return tied.stream()
        .map(tie -> making.apply(kind.cast(tie.reach()), tie.instrument()))
        .toList();
  }

  /// The shortest wish of those who share a line.
  private static Duration every(List<Tie> tied) {
    return tied.stream()
        .map(
            tie ->
                switch (tie.reach()) {
                  case Reach.Controller to -> to.every();
                  case Reach.Chip to -> to.every();
                  default -> Duration.ofHours(1);
                })
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  private List<Board> boards() {
    Map<String, List<Board.Source>> byToken = new LinkedHashMap<>();
    for (Tie tie : ties.values()) {
      if (tie.reach() instanceof Reach.Post to) {
        byToken
            .computeIfAbsent(to.tokenDigest(), _ -> new ArrayList<>())
            .add(to.source(tie.instrument()));
      }
    }
    return byToken.entrySet().stream()
        .map(one -> new Board("board", one.getKey(), one.getValue()))
        .toList();
  }

  private void hear(Heard heard) {
    Optional.ofNullable(tallies.get(heard.instrumentId())).ifPresent(tally -> tally.hear(heard));
    ear.accept(heard);
  }

  private static void shut(Listening driver) {
    try {
      driver.close();
    } catch (RuntimeException broken) {
      LOG.log(Level.WARNING, "A driver did not close", broken);
    }
  }

  @Override
  public synchronized void close() {
    drivers.values().forEach(Panel::shut);
    drivers.clear();
  }
}
