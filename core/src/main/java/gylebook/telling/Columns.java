package gylebook.telling;

import java.util.List;

/// Text for a terminal of 80 columns.
final class Columns {
  static final int MOST = 78;

  /// What goes on in the next line stands this much further in.
  static final int INDENT = 2;

  private Columns() {}

  /// Adds a text in as many lines as it needs.
  static void wrap(List<String> lines, String text, int indent) {
    StringBuilder line = new StringBuilder(" ".repeat(indent));
    for (String word : text.split(" ", -1)) {
      if (line.length() + word.length() > MOST && line.length() > indent) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder(" ".repeat(indent + INDENT));
      }
      line.append(word).append(' ');
    }
    lines.add(line.toString().stripTrailing());
  }
}
