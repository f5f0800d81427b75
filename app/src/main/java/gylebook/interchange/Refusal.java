package gylebook.interchange;

import java.io.Serial;

/// A file cannot be read; caught at the front door, so nothing half-read leaves the room.
final class Refusal extends RuntimeException {
  @Serial private static final long serialVersionUID = 1;
  private static final int VALUE_MOST = 60;

  private final String value;
  private final String maybe;

  Refusal(String what, String value, String maybe) {
    super(what);
    this.value = shortened(value);
    this.maybe = maybe;
  }

  /// The same for the reader of the file.
  ReadRecipe.NotUnderstood told() {
    return new ReadRecipe.NotUnderstood(String.valueOf(getMessage()), value, maybe);
  }

  /// A text short enough for a sentence.
  static String shortened(String text) {
    return text.length() > VALUE_MOST ? text.substring(0, VALUE_MOST) + " ..." : text;
  }
}
