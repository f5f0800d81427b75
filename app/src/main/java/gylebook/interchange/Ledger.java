package gylebook.interchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// What happens while a file is read: remarks, and what has no place here and is kept.
final class Ledger {
  private final List<Remark> remarks = new ArrayList<>();
  private final Map<String, String> kept = new LinkedHashMap<>();

  void says(String path, String sentence) {
    Remark remark = new Remark(path, sentence);
    if (!remarks.contains(remark)) {
      remarks.add(remark);
    }
  }

  /// Keeps a text under its path; a second one under the same path gets a number.
  void keep(String path, String text) {
    String place = path;
    for (int i = 2; kept.containsKey(place); i++) {
      place = path + " (" + i + ")";
    }
    kept.put(place, text);
    says(place, "Has no place here; it is kept as it is and not used.");
  }

  /// Keeps a text that is also used.
  void note(String path, String text) {
    kept.putIfAbsent(path, text);
  }

  List<Remark> remarks() {
    return List.copyOf(remarks);
  }

  Map<String, String> kept() {
    return Map.copyOf(kept);
  }

  /// One path out of two, outermost first.
  static String path(String outer, String inner) {
    return outer.isEmpty() ? inner : outer + " > " + inner;
  }
}
