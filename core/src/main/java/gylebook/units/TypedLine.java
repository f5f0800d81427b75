package gylebook.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/// A line of words and amounts as somebody typed it, taken apart: `strike 4.4 kg 66 C 15 L`.
///
/// It only finds where an amount begins and ends; what it is an amount of, [Typed] says when it is
/// known what is wanted. A space never groups thousands here: in a line it parts two numbers.
public final class TypedLine {
  /// Longer lines are not read.
  public static final int LENGTH_MOST = 300;

  /// An amount has at most so many pieces with spaces between: `1 1/2 imp fl oz`.
  private static final int PIECES_MOST = 5;

  private static final Pattern BEGINS_NUMBER =
      Pattern.compile("[+-]?[.,]?\\d.*|[+-]?[½¼¾⅓⅔⅛⅜⅝⅞].*");
  private static final Pattern EDGES = Pattern.compile("^[\\s(\\[\"“„]+|[\\s,;:?!)\\]\"”]+$");
  private static final Pattern PART = Pattern.compile("\\d+/\\d+|[½¼¾⅓⅔⅛⅜⅝⅞]");
  private static final Pattern MIXED = Pattern.compile("(?s)\\d+ (\\d+/\\d+|[½¼¾⅓⅔⅛⅜⅝⅞]).*");

  /// In a line they name the amount before or behind them: `og 1.050`, `pH 5.4`.
  private static final Set<String> NAMES = Set.of("og", "fg", "ph", "ibu", "ibus");

  /// Whole and part that people write in one amount, larger unit first.
  private static final List<List<String>> JOINED =
      List.of(
          List.of("lb", "oz"),
          List.of("ft", "in"),
          List.of("h", "min"),
          List.of("min", "s"),
          List.of("d", "h"),
          List.of("US gal", "US qt"),
          List.of("US gal", "US pt"),
          List.of("imp gal", "imp pt"));

  /// Behind an `in` they say that it is an inch: `18 in away`.
  private static final Set<String> MEASURED =
      Set.of(
          ("height high away reach deep depth wide width diameter dia long length tall above below"
                  + " bore rise line hose tube pipe travel apart up thick")
              .split(" ", -1));

  private TypedLine() {}

  /// One piece of a line.
  public sealed interface Piece {
    /// A word as it was typed.
    record Word(String text) implements Piece {}

    /// An amount as it was typed; `bare` when it names no unit.
    record Figure(String text, boolean bare) implements Piece {}

    /// Begins like an amount and is none: `20-25`.
    record Odd(String text) implements Piece {}

    /// An equals sign between a name and its value.
    record Equals() implements Piece {}
  }

  /// The pieces of a line in their order.
  ///
  /// @param symbols units beyond the table's that may stand behind a number: `meq/L`
  public static List<Piece> pieces(String line, Set<String> symbols) {
    List<String> tokens = tokens(line);
    List<Piece> pieces = new ArrayList<>();
    int at = 0;
    while (at < tokens.size()) {
      String token = tokens.get(at);
      if (token.equals("=")) {
        pieces.add(new Piece.Equals());
        at++;
      } else if (BEGINS_NUMBER.matcher(token).matches()) {
        at += figure(tokens, at, symbols, pieces);
      } else {
        pieces.add(new Piece.Word(token));
        at++;
      }
    }
    return pieces;
  }

  private static List<String> tokens(String line) {
    List<String> tokens = new ArrayList<>();
    for (String raw : line.replace("=", " = ").strip().split("[\\s\\u00a0\\u202f]+", -1)) {
      String token = raw.equals("\"") ? "" : trimmed(raw);
      if (!token.isEmpty()) {
        tokens.add(token);
      }
    }
    return tokens;
  }

  /// Without the marks of a sentence; a bracket that belongs to a unit stays: `W/(m² K)`.
  private static String trimmed(String token) {
    boolean unit = token.contains("/(") || (token.endsWith(")") && !token.contains("("));
    String cut = unit ? token.replaceAll("[,;:?!]+$", "") : EDGES.matcher(token).replaceAll("");
    return token.endsWith("\"") && Character.isDigit(first(token)) ? token : cut;
  }

  private static char first(String token) {
    return token.isEmpty() ? ' ' : token.charAt(0);
  }

  /// Adds the longest amount that begins at a token; answers how many tokens it took.
  private static int figure(List<String> tokens, int at, Set<String> symbols, List<Piece> pieces) {
    for (int count = Math.min(PIECES_MOST, tokens.size() - at); count > 0; count--) {
      String text = String.join(" ", tokens.subList(at, at + count));
      boolean means = count > 1 && inside(tokens, at + count);
      Optional<Piece> found = means ? Optional.empty() : whole(text, symbols);
      if (found.isPresent()) {
        pieces.add(found.get());
        return count;
      }
    }
    pieces.add(new Piece.Odd(tokens.get(at)));
    return 1;
  }

  /// Whether an `in` before this place is no inch: `1.060 in plato`.
  private static boolean inside(List<String> tokens, int end) {
    return tokens.get(end - 1).equals("in")
        && end < tokens.size()
        && Character.isLetter(first(tokens.get(end)))
        && !MEASURED.contains(tokens.get(end).toLowerCase(Locale.ROOT));
  }

  /// The text as one amount: a number, or numbers with their units.
  private static Optional<Piece> whole(String text, Set<String> symbols) {
    String normal = UnitText.normal(text);
    Optional<NumberText.Found> number = number(normal);
    if (number.isEmpty()) {
      return Optional.empty();
    }
    String rest = normal.substring(number.get().end()).strip();
    if (rest.isEmpty()) {
      return Optional.of(new Piece.Figure(text, true));
    }
    boolean unit =
        !NAMES.contains(rest)
            && (UnitText.anywhere(rest).isPresent()
                || symbols.stream().anyMatch(symbol -> UnitText.normal(symbol).equals(rest))
                || joined(rest));
    return unit ? Optional.of(new Piece.Figure(text, false)) : Optional.empty();
  }

  private static Optional<NumberText.Found> number(String normal) {
    int space = normal.indexOf(' ');
    Optional<NumberText.Found> found = NumberText.at(normal, 0);
    if (found.isEmpty() || space < 0 || found.get().end() <= space) {
      return found;
    }
    return MIXED.matcher(normal).matches() ? found : NumberText.at(normal.substring(0, space), 0);
  }

  /// Whether what follows a number is a unit, a second number and a smaller unit, as in `h30`.
  private static boolean joined(String rest) {
    for (List<String> pair : JOINED) {
      Unit larger = anyUnit(pair.getFirst());
      Optional<UnitText.Found> first = UnitText.at(rest, 0, larger.quantity());
      if (first.isEmpty() || !first.get().unit().symbol().equals(pair.getFirst())) {
        continue;
      }
      String behind = rest.substring(first.get().end()).strip();
      Optional<NumberText.Found> second = NumberText.at(behind, 0);
      if (second.isEmpty() || !Character.isDigit(first(behind))) {
        continue;
      }
      String last = behind.substring(second.get().end()).strip();
      // `50 ft 3/8 in` is a long coil of thin tube.
      if (pair.getFirst().equals("ft") && PART.matcher(behind).lookingAt()) {
        continue;
      }
      boolean hour = last.isEmpty() && rest.charAt(first.get().end()) != ' ';
      boolean smaller =
          UnitText.anywhere(last, larger.quantity())
              .filter(unit -> unit.symbol().equals(pair.getLast()))
              .isPresent();
      if (smaller || (hour && pair.getFirst().equals("h"))) {
        return true;
      }
    }
    return false;
  }

  private static Unit anyUnit(String symbol) {
    return Unit.all().stream()
        .filter(unit -> unit.symbol().equals(symbol))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no unit " + symbol));
  }
}
