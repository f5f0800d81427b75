package gylebook.device;

import java.io.IOException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;

/// A look at a place before an instrument is tied there: what is published, printed, on the bus or
/// in the registers just now. It listens until closed.
public final class Look implements AutoCloseable {
  private static final int SEEN_MOST = 60;

  private final Fields fields;
  private final Path oneWireRoot;
  private final Listening listening;
  private final SequencedMap<String, Seen> heard = new LinkedHashMap<>();
  private long lineCount;

  /// Begins to look.
  ///
  /// @param form the form of a tie, as far as it is filled in
  public Look(Map<String, String> form, InstantSource clock, Path oneWireRoot) throws Unfit {
    this.fields = new Fields(form);
    this.oneWireRoot = oneWireRoot;
    try {
      this.listening = begin(clock);
    } catch (IllegalArgumentException wrong) {
      throw new Unfit("form", "", String.valueOf(wrong.getMessage()));
    }
  }

  private Listening begin(InstantSource clock) throws Unfit {
    return switch (fields.text("kind", "")) {
      case "broker" ->
          new MqttSubscription(
              TieForm.broker(fields),
              List.of(fields.text("topic", "#")),
              clock,
              Patience.USUAL,
              this::published);
      case "line" ->
          new LineInstruments(
              TieForm.line(fields), List.of(), clock, Patience.USUAL, _ -> {}, this::printed);
      default -> new Standing(new Line.Up(clock.instant()));
    };
  }

  private void published(MqttMessage message) {
    String stored = message.stored() ? " (kept from earlier)" : "";
    Map<String, String> fill = Map.of("topic", message.topic());
    add(message.topic(), new Seen("", message.topic(), message.shown() + stored, false, fill));
  }

  private void printed(String line) {
    add("line " + lineCount++, new Seen("", "", line, false, Map.of()));
  }

  private void add(String key, Seen seen) {
    synchronized (heard) {
      heard.putLast(key, seen);
      if (heard.size() > SEEN_MOST) {
        heard.pollFirstEntry();
      }
    }
  }

  /// Whether the line is up, and why not.
  public Line line() {
    return listening.line();
  }

  /// What there is to see now.
  ///
  /// @throws IOException when nobody answers at the place
  public List<Seen> seen() throws IOException, Unfit {
    return switch (fields.text("kind", "")) {
      case "controller" -> RegisterLook.seen(fields);
      case "chip" -> chips();
      default -> {
        synchronized (heard) {
          yield List.copyOf(heard.reversed().values());
        }
      }
    };
  }

  private List<Seen> chips() throws IOException {
    return OneWireInstruments.found(oneWireRoot).stream()
        .map(number -> new Seen("", number, "on the bus", false, Map.of("number", number)))
        .toList();
  }

  @Override
  public void close() {
    listening.close();
  }
}
