package gylebook.device;

import gylebook.units.Entered;
import java.time.Instant;
import java.util.Optional;

/// What a decoder makes of the bytes of an instrument: a value, or what it could not read and why.
public sealed interface Decoded {
  /// Understood.
  ///
  /// @param amount the value with its unit and the characters received
  /// @param claimed when the instrument says it measured this, if it says so
  record Value(Entered amount, Optional<Instant> claimed) implements Decoded {}

  /// Not understood.
  ///
  /// @param text what was received, cut to a length one can show
  /// @param why what is wrong with it; continues "what was received ..."
  record Garbled(String text, String why) implements Decoded {}

  /// Garbled, with the text cut and made printable.
  static Decoded garbled(String text, String why) {
    return new Garbled(Received.shown(text), why);
  }
}
