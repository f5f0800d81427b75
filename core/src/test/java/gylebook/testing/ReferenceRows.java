package gylebook.testing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/// Reads the tables of `src/test/resources/reference`.
public final class ReferenceRows {
  private ReferenceRows() {}

  /// The rows of one table, header left out.
  public static List<ReferenceRow> of(String file) {
    List<ReferenceRow> rows = new ArrayList<>();
    for (List<String> cells : cells(file)) {
      if (cells.size() != 8) {
        throw new AssertionError(file + ": a row has " + cells.size() + " cells: " + cells);
      }
      rows.add(
          new ReferenceRow(
              cells.get(0),
              cells.get(1),
              cells.get(2),
              cells.get(3),
              cells.get(4),
              cells.get(5),
              cells.get(6),
              cells.get(7)));
    }
    return List.copyOf(rows);
  }

  /// The cells of any table of that folder, header left out.
  public static List<List<String>> cells(String file) {
    InputStream stream = ReferenceRows.class.getResourceAsStream("/reference/" + file);
    if (stream == null) {
      throw new AssertionError("no table " + file);
    }
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .skip(1)
          .filter(line -> !line.isBlank())
          .map(ReferenceRows::split)
          .toList();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static List<String> split(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
        cell.append(c);
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }
}
