package gylebook.telling;

import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import gylebook.units.Unit;
import java.util.List;
import java.util.Optional;

/// A line that begins with an amount: "10 lb 4 oz of pale malt".
///
/// @param amount what stands before the name
/// @param name everything behind it
@AnyUnit("amounts of every quantity, as typed")
record Weighed(Entered amount, String name) {
  private static final int MOST_WORDS = 5;

  /// Reads the longest beginning that is an amount.
  ///
  /// @param usual the unit of a bare number
  static Weighed mass(String text, Unit usual, String list) {
    List<String> words = List.of(text.split(" ", -1));
    for (int count = Math.min(MOST_WORDS, words.size() - 1); count > 0; count--) {
      String beginning = String.join(" ", words.subList(0, count));
      if (Typed.parse(beginning, usual) instanceof Typed.Read(Entered entered)) {
        return new Weighed(some(entered), name(words, count, list));
      }
    }
    if (words.size() > 1 && words.getFirst().matches("[-+]?[0-9].*")) {
      int count = Math.min(2, words.size() - 1);
      throw why(Typed.parse(String.join(" ", words.subList(0, count)), usual), list);
    }
    throw unlike(list);
  }

  /// Reads a mass, a volume or a count, whichever the words say.
  static Weighed any(String text, ReadingUnits units, String list) {
    List<String> words = List.of(text.split(" ", -1));
    for (int count = Math.min(MOST_WORDS, words.size() - 1); count > 0; count--) {
      Optional<Entered> amount = any(String.join(" ", words.subList(0, count)));
      if (amount.isPresent()) {
        return new Weighed(some(amount.get()), name(words, count, list));
      }
    }
    return mass(text, units.unit(Quantity.NUMBER), list);
  }

  /// A mass or a volume with its unit.
  static Optional<Entered> any(String text) {
    String end = text.isEmpty() ? "" : text.substring(text.length() - 1);
    for (Quantity quantity : List.of(Quantity.SMALL_MASS, Quantity.VOLUME)) {
      if (end.matches("\\p{L}")
          && Typed.parse(text, quantity) instanceof Typed.Read(Entered entered)) {
        return Optional.of(entered);
      }
    }
    return Optional.empty();
  }

  private static String name(List<String> words, int from, String list) {
    String name = String.join(" ", words.subList(from, words.size())).replaceFirst("^of ", "");
    if (name.isBlank()) {
      throw unlike(list);
    }
    return name;
  }

  private static Entered some(Entered entered) {
    if (!(entered.inside() > 0)) {
      throw new Unfit("This must be more than nothing.", "Type an amount above 0.");
    }
    return entered;
  }

  private static Unfit why(Typed typed, String list) {
    return typed instanceof Typed.Unclear unclear
        ? new Unfit(unclear.what(), unclear.maybe())
        : unlike(list);
  }

  private static Unfit unlike(String list) {
    return new Unfit(
        "This is not a line that can be added.", "Say it like: " + Lines.EXAMPLES.get(list) + ".");
  }
}
