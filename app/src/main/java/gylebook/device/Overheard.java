package gylebook.device;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;

/// The last lines that a tied instrument's driver read, for whoever looks meanwhile.
final class Overheard {
  private static final int LINES_MOST = 60;

  private final Deque<String> lines = new ArrayDeque<>();

  synchronized void add(String line) {
    lines.addFirst(line);
    if (lines.size() > LINES_MOST) {
      lines.removeLast();
    }
  }

  /// Newest first.
  synchronized List<Seen> seen() {
    return lines.stream().map(line -> new Seen("", "", line, false, Map.of())).toList();
  }
}
