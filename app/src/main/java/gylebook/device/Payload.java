package gylebook.device;

import java.time.Instant;
import java.util.List;
import tools.jackson.core.JsonPointer;

/// The form in which an instrument writes what it measured.
public sealed interface Payload {
  /// The number alone, with or without a unit: `66.3`, `66,3 °C`, `151.3 F`.
  record Plain() implements Payload {}

  /// A SenML pack in JSON (RFC 8428); the instrument is the record of this full name.
  record SenMl(String name) implements Payload {}

  /// Any JSON; the number stands where this JSON pointer (RFC 6901) leads: `/kettle/temperature`.
  record JsonAt(String pointer) implements Payload {
    /// Refuses what is no pointer: it begins with a slash.
    public JsonAt {
      var _ = JsonPointer.compile(pointer);
    }
  }

  /// Everything this text says of the instrument; nothing when it speaks of others only.
  default List<Decoded> decode(Instrument instrument, String text, Instant received) {
    return switch (this) {
      case Plain _ -> List.of(PlainText.decode(instrument, text));
      case SenMl(String name) -> SenMlPack.decode(instrument, name, text, received);
      case JsonAt(String pointer) -> List.of(JsonText.decode(instrument, pointer, text));
    };
  }

  /// The same for bytes.
  default List<Decoded> decode(Instrument instrument, byte[] bytes, Instant received) {
    return Received.text(bytes)
        .map(text -> decode(instrument, text, received))
        .orElseGet(() -> List.of(Received.noText(bytes)));
  }
}
