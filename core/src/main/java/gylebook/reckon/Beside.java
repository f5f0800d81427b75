package gylebook.reckon;

import gylebook.units.TypedLine.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/// The words that stand beside the amounts of a line, and on which side their names are.
final class Beside {
  private static final Set<String> ENDS = Set.of("in", "out");
  private static final Set<String> JOINING = Set.of("and", "with", "plus", "to");

  private static final Pattern LASTS =
      Pattern.compile(
          "(?i).*\\d ?(s|sec.*|m|min.*|h|hrs?|hours?|d|days?|weeks?|wks?|months?|years?)");

  private final List<Piece> pieces;
  private final boolean ahead;
  private final boolean last;

  Beside(List<Piece> pieces) {
    this.pieces = List.copyOf(pieces);
    this.ahead = namesAhead();
    this.last = !ahead && namesLast();
  }

  /// The words in front of an amount: all of its name where names stand ahead, none where the one
  /// there is the name of the amount before.
  List<String> before(int at) {
    boolean others = last && at > 0 && says(pieces.get(at - 1)) && follows(at);
    List<String> before = others ? List.of() : ahead ? name(at, -1) : beside(at, -1);
    if (!begins(at) || before.contains("from")) {
      return before;
    }
    List<String> course = new ArrayList<>(before);
    course.addFirst("from");
    return course;
  }

  /// The word behind an amount, all of its name where names stand there, unless it is the name
  /// ahead of the next one.
  List<String> behind(int at) {
    if (at + 1 < pieces.size() && scale(at + 1)) {
      return beside(at, 1);
    }
    boolean more =
        pieces.subList(at + 1, pieces.size()).stream().anyMatch(Piece.Figure.class::isInstance);
    return ahead && more ? List.of() : last ? name(at, 1) : beside(at, 1);
  }

  /// By volume or by mass: that belongs to the share in front of it.
  private boolean scale(int at) {
    boolean by = says(at, "by") && (says(at + 1, "mass") || says(at + 1, "weight"));
    return by || says(at, "abv") || says(at, "abw") || (says(at, "by") && says(at + 1, "volume"));
  }

  private boolean says(int at, String word) {
    return at < pieces.size()
        && pieces.get(at) instanceof Piece.Word(String text)
        && text.equalsIgnoreCase(word);
  }

  /// Whether a course begins with an amount: `100 to 20 C`.
  private boolean begins(int at) {
    return at + 2 < pieces.size()
        && says(at + 1, "to")
        && pieces.get(at + 2) instanceof Piece.Figure;
  }

  /// The next word on one side that says something, before another amount comes; in front the small
  /// ones as well: `from 15 C to 68 C`. A name with an equals sign speaks of its own value.
  private List<String> beside(int at, int step) {
    List<String> beside = new ArrayList<>();
    for (int i = at + step; i >= 0 && i < pieces.size(); i += step) {
      boolean key = i + 1 < pieces.size() && pieces.get(i + 1) instanceof Piece.Equals;
      if (key || !(pieces.get(i) instanceof Piece.Word(String text))) {
        break;
      }
      List<String> split = Vocabulary.split(text);
      boolean says = !split.stream().allMatch(Vocabulary::idle);
      boolean others = says && step < 0 && spokenFor(i, beside);
      if (step < 0 && text.equalsIgnoreCase("for") && !lasts(at)) {
        break; // `strike water for 4.5 kg`: the water is not the amount.
      }
      if ((says || step < 0) && !others) {
        beside.addAll(split);
      }
      if (says) {
        break;
      }
    }
    return beside;
  }

  /// Whether an amount is a time: `boiled for 60 min` says what lasts.
  private boolean lasts(int at) {
    return pieces.get(at) instanceof Piece.Figure(String text, _) && LASTS.matcher(text).matches();
  }

  /// Whether names are written ahead of amounts: `counterflow wort 3 L/min 95 C water 6 L/min`.
  private boolean namesAhead() {
    if (saysLast()) {
      return false;
    }
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i) instanceof Piece.Figure) {
        return i > 1 && says(pieces.get(i - 1)) && pieces.get(i - 2) instanceof Piece.Word;
      }
    }
    return false;
  }

  /// Whether each amount has its name behind it: `50 mg/L Ca 10 mg/L Mg 100 mg/L HCO3`.
  private boolean namesLast() {
    for (int i = 0; i < pieces.size(); i++) {
      boolean named = i + 1 < pieces.size() && says(pieces.get(i + 1));
      if (pieces.get(i) instanceof Piece.Figure && !named && !namesItself(pieces.get(i))) {
        return false;
      }
    }
    return saysLast();
  }

  private boolean saysLast() {
    return !pieces.isEmpty() && (says(pieces.getLast()) || namesItself(pieces.getLast()));
  }

  /// `100 mg/L as CaCO3` is an alkalinity or a hardness.
  private static boolean namesItself(Piece piece) {
    return piece instanceof Piece.Figure(String text, _) && text.endsWith(Ions.CARBONATE);
  }

  /// Whether a piece may be part of a name; `wort in` and `wort out` are two of them.
  private static boolean says(Piece piece) {
    return piece instanceof Piece.Word(String text)
        && !text.equalsIgnoreCase("pH")
        && (ENDS.contains(text.toLowerCase(Locale.ROOT))
            || !Vocabulary.split(text).stream().allMatch(Vocabulary::idle));
  }

  private boolean follows(int at) {
    return pieces.subList(0, at).stream().anyMatch(Piece.Figure.class::isInstance);
  }

  /// All words on one side until the next amount.
  private List<String> name(int at, int step) {
    List<String> name = new ArrayList<>();
    for (int i = at + step; i >= 0 && i < pieces.size(); i += step) {
      boolean key = i + 1 < pieces.size() && pieces.get(i + 1) instanceof Piece.Equals;
      if (key || !(pieces.get(i) instanceof Piece.Word(String text))) {
        break;
      }
      name.addAll(Vocabulary.split(text));
    }
    return name;
  }

  /// A word in front that belongs to the amount before it, `6 kg malt and 30 kg water`, or that
  /// stands too far off: `how hot must the water be for 6 kg malt`.
  private boolean spokenFor(int at, List<String> between) {
    boolean joined = between.stream().anyMatch(JOINING::contains);
    boolean follows = at > 0 && pieces.get(at - 1) instanceof Piece.Figure;
    return (joined && follows) || between.size() > 1;
  }
}
