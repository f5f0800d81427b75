package gylebook.reckon;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// The words the catalogue knows, and how well some words fit a calculation.
///
/// A word counts by where it stands (in the name, in what is answered, in what is asked for) and by
/// how few calculations have it: `boiling` says more than `wort`.
@AnyUnit("weights of words")
final class Vocabulary {
  /// Words that say nothing of what is asked.
  private static final Set<String> IDLE =
      Set.of(
          ("a an the at of in to for with from and or is are be been what whats what's how much many"
                  + " long does do did will would my i it its on by as when if than that this which"
                  + " was get gets need needs me your please reckon calculate find give tell"
                  + " can should must have has we our want into out up about after before"
                  + " some so there then no not over under between equals convert early late now")
              .split(" ", -1));

  /// Words of the trade that no calculation has; read as near ones they would say something else.
  private static final Set<String> TRADE =
      Set.of(
          "pale", "base", "wheat", "crystal", "munich", "vienna", "pilsner", "pils", "roast",
          "pint");

  private static final Set<String> ARTICLES = Set.of("a", "an", "the", "my", "our", "your");

  private static final int PART_LEAST = 3;
  private static final double NAME = 3;
  private static final double ANSWER = 1;
  private static final double ASKS = 0.8;
  private static final double UNSAID = 0.25;
  private static final double SPELT = 1;
  private static final double PHRASE = 1.3;
  private static final double PHRASE_WORD = 0.12;
  private static final double PHRASE_RANK = 0.04;

  private final Map<String, Map<String, Double>> weights = new HashMap<>();
  private final Map<String, List<String>> names = new HashMap<>();
  private final Map<String, Integer> spread = new HashMap<>();
  private final Set<String> phrased = new HashSet<>();

  Vocabulary(List<Calculation> calculations) {
    for (Calculation calculation : calculations) {
      Map<String, Double> words = new HashMap<>();
      note(words, calculation.name(), NAME);
      note(words, calculation.group(), ANSWER);
      note(words, calculation.says(), ANSWER);
      calculation.inputs().forEach(input -> note(words, input.key(), ASKS));
      calculation.outputs().forEach(output -> note(words, output.name(), ANSWER));
      weights.put(calculation.name(), words);
      names.put(calculation.name(), split(calculation.name()));
      words.keySet().forEach(word -> spread.merge(word, 1, Integer::sum));
    }
    Phrases.meant().keySet().forEach(words -> words.forEach(w -> phrased.add(stem(w))));
  }

  private static void note(Map<String, Double> words, String text, double weight) {
    split(text).forEach(word -> words.merge(word, weight, Math::max));
  }

  /// The words of a text as they are compared.
  static List<String> split(String text) {
    List<String> words = new ArrayList<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{Nd}']+", -1)) {
      if (!word.isEmpty()) {
        words.add(stem(word));
      }
    }
    return words;
  }

  /// Without the ending of a plural.
  static String stem(String word) {
    boolean plural = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss");
    return plural ? word.substring(0, word.length() - 1) : word;
  }

  static boolean idle(String word) {
    return IDLE.contains(word) || IDLE.contains(word + "s"); // `does` without its ending
  }

  /// A word that alone asks nothing: idle, or a single letter, which is a unit.
  static boolean slight(String word) {
    return idle(word) || word.length() == 1;
  }

  boolean knows(String word) {
    return spread.containsKey(word) || phrased.contains(word) || Phrases.known(word);
  }

  /// Whether a word is none of ours and near to none.
  boolean strange(String word) {
    return !idle(word) && !knows(word) && near(word).isEmpty();
  }

  /// The known word that a misspelt one is near to, if one alone is nearest.
  Optional<String> near(String word) {
    if (TRADE.contains(word)) {
      return Optional.empty();
    }
    int far = word.length() >= 8 ? 2 : word.length() >= 4 ? 1 : 0;
    Set<String> known = new HashSet<>(spread.keySet());
    known.addAll(phrased);
    List<String> close =
        known.stream()
            .filter(k -> k.length() >= 4 && Math.abs(k.length() - word.length()) <= far)
            .filter(k -> distance(word, k) <= far)
            .sorted()
            .toList();
    return close.stream().min(Comparator.comparingInt(each -> distance(word, each)));
  }

  /// Letters between two words, with the ending that may have been taken off: `bitternes`.
  private static int distance(String word, String known) {
    return Math.min(NearNames.letters(word, known), NearNames.letters(word + "s", known));
  }

  /// Two known words that are written together: `dryhop`.
  Optional<List<String>> parts(String word) {
    for (int at = PART_LEAST; at + PART_LEAST <= word.length(); at++) {
      String one = stem(word.substring(0, at));
      String other = word.substring(at);
      if ((knows(one) || idle(one)) && knows(other) && !TRADE.contains(word)) {
        return Optional.of(List.of(one, other));
      }
    }
    return Optional.empty();
  }

  /// Words, and the phrases that are in them.
  record Heard(List<String> words, List<Map.Entry<List<String>, List<String>>> phrases) {
    Heard {
      words = List.copyOf(words);
      phrases = List.copyOf(phrases);
    }
  }

  /// What is in some words, found once for all calculations.
  static Heard heard(List<String> words) {
    return new Heard(
        words,
        Phrases.meant().entrySet().stream().filter(each -> holds(words, each.getKey())).toList());
  }

  /// How well words fit a calculation; above 1 when brewers say it so.
  double fit(Calculation calculation, Heard heard) {
    List<String> words = heard.words();
    Map<String, Double> held = weights.getOrDefault(calculation.name(), Map.of());
    double have = 0;
    double most = 0;
    for (String word : words) {
      if (idle(word)) {
        continue;
      }
      double rare = rare(word);
      have += rare * held.getOrDefault(word, 0.0);
      most += rare * NAME;
    }
    if (most == 0) {
      return 0;
    }
    List<String> name = names.getOrDefault(calculation.name(), List.of());
    long unsaid = name.stream().filter(word -> !words.contains(word)).count();
    double plain = have / most - UNSAID * unsaid / name.size();
    boolean spelt = holds(words, name);
    return plain * (unsaid == 0 ? 1.2 : 1)
        + (spelt ? SPELT * name.size() : 0)
        + said(calculation, heard);
  }

  private static double said(Calculation calculation, Heard heard) {
    double best = 0;
    for (Map.Entry<List<String>, List<String>> each : heard.phrases()) {
      int rank = each.getValue().indexOf(calculation.name());
      if (rank >= 0) {
        int words = each.getKey().size();
        double length = PHRASE_WORD * words + (words > 2 ? SPELT * words : 0);
        best = Math.max(best, PHRASE + length - PHRASE_RANK * rank);
      }
    }
    return best;
  }

  /// Whether a phrase is in some words, articles left out: `co2 in a closed room`.
  private static boolean holds(List<String> spoken, List<String> said) {
    List<String> words = spoken.stream().filter(word -> !ARTICLES.contains(word)).toList();
    List<String> phrase = said.stream().filter(word -> !ARTICLES.contains(word)).toList();
    for (int from = 0; from + phrase.size() <= words.size(); from++) {
      boolean all = true;
      for (int i = 0; all && i < phrase.size(); i++) {
        all = words.get(from + i).equals(stem(phrase.get(i)));
      }
      if (all) {
        return true;
      }
    }
    return false;
  }

  /// Whether a word has to do with a calculation: in its own words, in what is said for it.
  boolean concerns(Calculation calculation, String word) {
    boolean own =
        weights.getOrDefault(calculation.name(), Map.of()).keySet().stream()
            .anyMatch(each -> Phrases.same(each, word));
    return own
        || Phrases.meant().entrySet().stream()
            .anyMatch(
                each ->
                    each.getValue().contains(calculation.name())
                        && each.getKey().stream().anyMatch(said -> stem(said).equals(word)));
  }

  private double rare(String word) {
    return Math.log((weights.size() + 1.0) / spread.getOrDefault(word, 1));
  }
}
