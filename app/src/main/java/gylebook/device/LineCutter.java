package gylebook.device;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/// Cuts a stream of bytes into lines. Who joins a talk in the middle may hear 6.3 of 66.3: then
/// what stands before the first line end is dropped. So is a line that grows too long.
final class LineCutter {
  static final int LINE_BYTES_MOST = 512;

  private final StringBuilder line = new StringBuilder();
  private boolean whole;

  /// @param midway whether the talk may have begun before we listen
  LineCutter(boolean midway) {
    this.whole = !midway;
  }

  /// The lines that these bytes complete.
  List<String> lines(byte[] bytes, int count) {
    List<String> lines = new ArrayList<>();
    for (char c : new String(bytes, 0, count, StandardCharsets.ISO_8859_1).toCharArray()) {
      if (c == '\n' || c == '\r') {
        if (whole && !line.isEmpty()) {
          lines.add(text());
        }
        line.setLength(0);
        whole = true;
      } else if (line.length() < LINE_BYTES_MOST) {
        line.append(c);
      } else {
        whole = false;
      }
    }
    return lines;
  }

  /// The bytes were taken one by one; as text they may be UTF-8.
  private String text() {
    byte[] bytes = line.toString().getBytes(StandardCharsets.ISO_8859_1);
    return Received.text(bytes).orElseGet(() -> Received.shownBytes(bytes));
  }
}
