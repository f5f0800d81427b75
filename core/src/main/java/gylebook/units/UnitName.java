package gylebook.units;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// What a name in the code says of its number: `lossWPerK` is a `loss` in `W/K`.
///
/// Rules of the spelling:
/// - The unit stands at the end, in words of [UnitWord], with at most one `Per`; powers 2 to 4 are
///   written behind their word (`M2`). `permeabilityM2`, `heatJPerKgK`, `expansionPerK`.
/// - A scale (`C`, `Plato`) and a bare word (`Frac`) are not multiplied: in `vitaminGC` only `C` is
///   the unit. `Min` before another unit is "least", not minutes: `wortMinC` is a temperature.
///   Below a `Per` a scale is its step and stands last: `bufferMeqPerKgPh` is in meq/(kg pH).
/// - What follows `From` says where a result comes from: `platoFromSg` is in Plato.
/// - A name that is nothing but a scale or a bare word counts as well: `ratio`, `plato`; and so
///   does one that begins with its unit: `molPerL`.
///
/// Exponents are counted in words as spelled; `W` is spelled out as `J` per `Sec`.
public record UnitName(
    List<String> stem, String symbol, Map<String, Integer> exponents, Optional<Unit> unit) {
  private static final Pattern CONSTANT =
      Pattern.compile("[A-Z][A-Z0-9]*(_[A-Z0-9]+)+|[A-Z][A-Z0-9]+");
  private static final Pattern POWERED = Pattern.compile("([A-Za-z]+?)([234]?)");
  private static final String PER = "Per";

  /// Keeps its lists from being changed.
  public UnitName {
    stem = List.copyOf(stem);
    exponents = Collections.unmodifiableMap(new TreeMap<>(exponents));
  }

  /// Reads a name; empty when it names no unit.
  public static Optional<UnitName> of(String javaName) {
    List<String> words = words(javaName);
    Optional<UnitName> whole = read(words);
    int from = words.lastIndexOf("From");
    if (from <= 0) {
      return whole;
    }
    Optional<UnitName> before = read(words.subList(0, from));
    return before.isPresent() ? before : whole;
  }

  /// The stem's words as people write them: `wort max`.
  public String words() {
    return String.join(" ", stem);
  }

  private record Term(UnitWord word, int power) {}

  private static Optional<UnitName> read(List<String> words) {
    List<String> spelled = alone(words);
    int at = spelled.size();
    Deque<Term> last = new ArrayDeque<>();
    at = takeSteps(spelled, take(spelled, at, last), last);
    if (at > 0 && spelled.get(at - 1).equals(PER) && !last.isEmpty()) {
      Deque<Term> above = new ArrayDeque<>();
      at = take(spelled, at - 1, above);
      if (at > 0 && spelled.get(at - 1).equals(PER)) {
        return Optional.empty();
      }
      return Optional.of(name(spelled.subList(0, at), List.copyOf(above), List.copyOf(last)));
    }
    if (last.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(name(spelled.subList(0, at), List.copyOf(last), List.of()));
  }

  /// Takes the unit words that end at a place, going left; answers where they begin.
  private static int take(List<String> words, int end, Deque<Term> into) {
    int at = end;
    while (at > 0) {
      Optional<Term> term = term(words.get(at - 1));
      if (term.isEmpty() || (!into.isEmpty() && !joins(term.get(), into.getFirst()))) {
        break;
      }
      into.addFirst(term.get());
      at--;
    }
    return at;
  }

  /// A scale that stands alone at the end may be the last word below a `Per`: `PerKgPh`.
  private static int takeSteps(List<String> words, int end, Deque<Term> last) {
    if (last.size() != 1 || last.getFirst().word().kind() != UnitWord.Kind.SCALE) {
      return end;
    }
    Deque<Term> below = new ArrayDeque<>();
    int at = take(words, end, below);
    boolean plain = below.stream().allMatch(term -> term.word().kind() == UnitWord.Kind.PLAIN);
    if (below.isEmpty() || !plain || at == 0 || !words.get(at - 1).equals(PER)) {
      return end;
    }
    below.addLast(last.removeFirst());
    last.addAll(below);
    return at;
  }

  private static boolean joins(Term left, Term right) {
    return left.word().kind() == UnitWord.Kind.PLAIN
        && right.word().kind() == UnitWord.Kind.PLAIN
        && left.word() != UnitWord.MIN;
  }

  private static Optional<Term> term(String word) {
    Matcher powered = POWERED.matcher(word);
    if (!powered.matches()) {
      return Optional.empty();
    }
    String power = powered.group(2);
    return UnitWord.of(powered.group(1))
        .map(known -> new Term(known, power.isEmpty() ? 1 : Integer.parseInt(power)));
  }

  /// A name that is one word may be a scale or a bare word itself; `molPerL` begins with its unit.
  private static List<String> alone(List<String> words) {
    if (words.size() > 1 && words.get(1).equals(PER) && words.getFirst().length() > 1) {
      String first = capital(words.getFirst());
      if (UnitWord.of(first).isPresent()) {
        List<String> whole = new ArrayList<>(words);
        whole.set(0, first);
        return whole;
      }
    }
    if (words.size() != 1) {
      return words;
    }
    String capital = capital(words.getFirst());
    boolean whole =
        UnitWord.of(capital)
            .filter(word -> word.kind() != UnitWord.Kind.PLAIN && capital.length() > 1)
            .isPresent();
    return whole ? List.of(capital) : words;
  }

  private static UnitName name(List<String> stem, List<Term> above, List<Term> below) {
    Map<String, Integer> exponents = new TreeMap<>();
    above.forEach(term -> count(exponents, term, 1));
    below.forEach(term -> count(exponents, term, -1));
    String symbol = symbol(above, below);
    return new UnitName(
        stem.stream().map(word -> word.toLowerCase(Locale.ROOT)).toList(),
        symbol,
        exponents,
        NamedUnits.of(symbol, above.isEmpty() ? null : above.getLast().word()));
  }

  private static void count(Map<String, Integer> exponents, Term term, int sign) {
    int power = sign * term.power();
    switch (term.word()) {
      case W -> {
        add(exponents, UnitWord.J.spelling(), power);
        add(exponents, UnitWord.SEC.spelling(), -power);
      }
      case FRAC, RATIO, FACTOR, NUMBER, COUNT -> {}
      default -> add(exponents, term.word().spelling(), power);
    }
  }

  private static void add(Map<String, Integer> exponents, String word, int power) {
    if (exponents.merge(word, power, Integer::sum) == 0) {
      exponents.remove(word);
    }
  }

  private static String symbol(List<Term> above, List<Term> below) {
    String top = symbols(above);
    String bottom = symbols(below);
    if (bottom.isEmpty()) {
      return top;
    }
    return (top.isEmpty() ? "1" : top) + "/" + (below.size() > 1 ? "(" + bottom + ")" : bottom);
  }

  private static String symbols(List<Term> terms) {
    return terms.stream()
        .map(term -> term.word().symbol() + power(term.power()))
        .collect(Collectors.joining(" "))
        .strip();
  }

  private static String power(int power) {
    return switch (power) {
      case 2 -> "²";
      case 3 -> "³";
      case 4 -> "⁴";
      default -> "";
    };
  }

  private static List<String> words(String javaName) {
    List<String> words = new ArrayList<>();
    if (CONSTANT.matcher(javaName).matches()) {
      for (String word : javaName.split("_", -1)) {
        words.add(capital(word.toLowerCase(Locale.ROOT)));
      }
      return words;
    }
    words.addAll(List.of(javaName.split("(?<!^)(?=[A-Z])", -1)));
    return words;
  }

  private static String capital(String word) {
    return word.isEmpty()
        ? word
        : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }
}
