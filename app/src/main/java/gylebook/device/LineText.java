package gylebook.device;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// One printed line for the instruments that share the wire. Pure.
final class LineText {
  private LineText() {}

  /// What a line says of an instrument; empty when it is the line of another.
  static Optional<Decoded> decode(LineSource source, String line) {
    Matcher found = Pattern.compile(source.pattern()).matcher(line.strip());
    return found.matches()
        ? Optional.of(PlainText.decode(source.instrument(), found.group("value")))
        : Optional.empty();
  }
}
