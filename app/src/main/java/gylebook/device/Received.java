package gylebook.device;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;

/// Bytes as they came over a wire, on their way to being text.
final class Received {
  /// No instrument needs more for one message; what is longer is not even looked at.
  static final int BYTES_MOST = 64 * 1024;

  private static final int SHOWN_MOST = 120;

  private Received() {}

  /// The bytes as text; empty when they are no UTF-8 or too many.
  static Optional<String> text(byte[] bytes) {
    if (bytes.length > BYTES_MOST) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException _) {
      return Optional.empty();
    }
  }

  /// What to say of bytes that are no text.
  static Decoded noText(byte[] bytes) {
    return bytes.length > BYTES_MOST
        ? Decoded.garbled(
            bytes.length + " bytes", "is more than the " + BYTES_MOST + " bytes that are read")
        : Decoded.garbled(shownBytes(bytes), "is no text (not UTF-8)");
  }

  /// Bytes as pairs of hexadecimal digits.
  static String shownBytes(byte[] bytes) {
    int length = Math.min(bytes.length, SHOWN_MOST / 3);
    return HexFormat.ofDelimiter(" ").formatHex(bytes, 0, length)
        + (length < bytes.length ? " ..." : "");
  }

  /// Text that fits on a line of a page, control characters made visible.
  static String shown(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .limit(SHOWN_MOST)
        .forEach(c -> shown.appendCodePoint(Character.isISOControl(c) ? '\uFFFD' : c));
    return text.codePointCount(0, text.length()) > SHOWN_MOST ? shown + " ..." : shown.toString();
  }

  /// What a failure began with; libraries wrap it.
  static Throwable root(Throwable failure) {
    Throwable root = failure;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    return root;
  }
}
