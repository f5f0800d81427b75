package gylebook.telling;

import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/// Small matters of English.
final class Grammar {
  private static final List<String> OWN_ARTICLE =
      List.of("a ", "an ", "the ", "some ", "my ", "our ");
  private static final List<String> VOWELS = List.of("a", "e", "i", "o", "u", "hour", "honest");
  private static final List<String> NO_VOWELS = List.of("uni", "use", "eu", "one", "u-");

  private Grammar() {}

  /// "a " or "an ", by the sound as far as letters tell; nothing before words that bring one.
  static String article(String words) {
    String said = words.strip().toLowerCase(Locale.ROOT);
    if (starts(said, OWN_ARTICLE)) {
      return "";
    }
    return starts(said, VOWELS) && !starts(said, NO_VOWELS) ? "an " : "a ";
  }

  private static boolean starts(String words, List<String> beginnings) {
    return beginnings.stream().anyMatch(words::startsWith);
  }

  /// "a, b and c".
  static String joined(List<String> lines) {
    if (lines.size() < 2) {
      return String.join("", lines);
    }
    return String.join(", ", lines.subList(0, lines.size() - 1)) + " and " + lines.getLast();
  }

  static List<String> lines(int count, IntFunction<String> line) {
    return IntStream.range(0, count).mapToObj(line).toList();
  }

  /// A template with the place in the list for `#` and the number that people count for `##`.
  static String numbered(String template, int number) {
    return template
        .replace("##", Integer.toString(number + 1))
        .replace("#", Integer.toString(number));
  }
}
