package gylebook.reckon;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/// Finds the names that somebody may have meant.
final class NearNames {
  private static final int MOST = 3;

  private NearNames() {}

  /// The nearest of the known names: those that hold the word, then those a few letters away.
  static List<String> of(String wanted, List<String> known) {
    String word = wanted.toLowerCase(Locale.ROOT);
    int far = Math.max(2, word.length() / 3);
    return known.stream()
        .filter(name -> distance(word, name, far) <= far)
        .sorted(
            Comparator.comparingInt((String name) -> distance(word, name, far))
                .thenComparing(Comparator.naturalOrder()))
        .limit(MOST)
        .toList();
  }

  /// How many letters lie between two words; one that holds the other counts as one away.
  private static int distance(String word, String name, int far) {
    if (word.length() >= 3 && (name.contains(word) || word.contains(name))) {
      return 1;
    }
    return Math.abs(name.length() - word.length()) > far ? far + 1 : letters(word, name);
  }

  static int letters(String a, String b) {
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int swap = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(swap, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[b.length()];
  }
}
