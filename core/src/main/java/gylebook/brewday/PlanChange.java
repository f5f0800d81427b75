package gylebook.brewday;

import gylebook.estimate.Goal;
import gylebook.estimate.Lever;
import gylebook.estimate.Wanted;
import gylebook.simulate.Change;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// A way that was taken: what is done otherwise from now on, and what is wanted from now on.
///
/// As text it is a line each, words apart by one space, numbers as the machine writes them, so that
/// what is read back is the same to the last bit.
///
/// @param way which
/// @param amountKey name of its amount, ending in its unit; empty when there is none
/// @param amount how much, in that unit; NaN when there is none
/// @param changes what is done otherwise
/// @param wanted what was to be expected of it when it was taken, which is the plan from then on
@AnyUnit("an amount has the unit that its key names")
public record PlanChange(
    Lever.Kind way, String amountKey, double amount, List<Change> changes, Wanted wanted) {
  private static final int MOST_LINES = 40;
  private static final String AT_ONCE = "-";

  /// Copies the list.
  public PlanChange {
    changes = List.copyOf(changes);
  }

  /// The change that a lever makes.
  public static PlanChange of(Lever lever) {
    Lever.Comes comes = lever.comes();
    Wanted wanted =
        new Wanted(
            comes.strengthPlato().middle(),
            comes.fermenterL().middle(),
            comes.bitternessMgPerL().middle(),
            comes.colourEbc().middle());
    return new PlanChange(
        lever.kind(), lever.amountKey(), lever.amountNumber(), lever.changes(), wanted);
  }

  /// The text that is kept.
  public String text() {
    List<String> lines = new ArrayList<>();
    lines.add("way " + way);
    if (!amountKey.isEmpty()) {
      lines.add("amount " + amountKey + " " + amount);
    }
    changes.forEach(change -> lines.add(line(change)));
    for (Goal goal : Goal.values()) {
      lines.add("wants " + goal + " " + wanted.of(goal));
    }
    return String.join("\n", lines);
  }

  private static String line(Change change) {
    return switch (change) {
      case Change.Lasts(String key, double bySec) -> "lasts " + key + " " + bySec;
      case Change.HopsTimes(double factor) -> "hops " + factor;
      case Change.Pours(String after, double liquorL) -> "pours " + word(after) + " " + liquorL;
      case Change.Dilutes(double liquorL) -> "dilutes " + liquorL;
      case Change.Sweetens(
              String after,
              double goodsKg,
              double moistureFrac,
              double fermentsFrac) ->
          "sweetens " + word(after) + " " + goodsKg + " " + moistureFrac + " " + fermentsFrac;
      case Change.TakesOut(String after, double wortL) -> "takes " + word(after) + " " + wortL;
    };
  }

  private static String word(String after) {
    return after.isEmpty() ? AT_ONCE : after;
  }

  /// Reads what was kept.
  ///
  /// @return empty when it is no such text
  public static Optional<PlanChange> read(String text) {
    List<String> lines = text.lines().toList();
    if (lines.size() > MOST_LINES) {
      return Optional.empty();
    }
    try {
      return new Reader().read(lines);
    } catch (IllegalArgumentException _) {
      // An unknown word, no number, or a number that cannot be.
      return Optional.empty();
    }
  }

  /// Takes up one line after another.
  private static final class Reader {
    private Optional<Lever.Kind> way = Optional.empty();
    private String amountKey = "";
    private double amount = Double.NaN;
    private final List<Change> changes = new ArrayList<>();
    private final Map<Goal, Double> wanted = new EnumMap<>(Goal.class);

    private Optional<PlanChange> read(List<String> lines) {
      lines.forEach(line -> take(Arrays.asList(line.split(" ", -1))));
      if (wanted.size() < Goal.values().length || changes.isEmpty()) {
        return Optional.empty();
      }
      Wanted all =
          new Wanted(
              wanted.getOrDefault(Goal.STRENGTH, 0.0),
              wanted.getOrDefault(Goal.LITRES, 0.0),
              wanted.getOrDefault(Goal.BITTERNESS, 0.0),
              wanted.getOrDefault(Goal.COLOUR, 0.0));
      return way.map(known -> new PlanChange(known, amountKey, amount, changes, all));
    }

    private void take(List<String> words) {
      switch (words.getFirst()) {
        case "way" -> way = Optional.of(Lever.Kind.valueOf(word(words, 1)));
        case "amount" -> {
          amountKey = word(words, 1);
          amount = number(words, 2);
        }
        case "wants" -> wanted.put(Goal.valueOf(word(words, 1)), number(words, 2));
        case "lasts" -> changes.add(new Change.Lasts(word(words, 1), number(words, 2)));
        case "hops" -> changes.add(new Change.HopsTimes(number(words, 1)));
        case "pours" -> changes.add(new Change.Pours(after(words), number(words, 2)));
        case "dilutes" -> changes.add(new Change.Dilutes(number(words, 1)));
        case "takes" -> changes.add(new Change.TakesOut(after(words), number(words, 2)));
        case "sweetens" ->
            changes.add(
                new Change.Sweetens(
                    after(words), number(words, 2), number(words, 3), number(words, 4)));
        default -> throw new IllegalArgumentException("An unknown word: " + words.getFirst());
      }
    }

    private static String after(List<String> words) {
      String after = word(words, 1);
      return after.equals(AT_ONCE) ? "" : after;
    }

    private static String word(List<String> words, int place) {
      if (place >= words.size() || words.get(place).isEmpty()) {
        throw new IllegalArgumentException("A line is too short: " + words);
      }
      return words.get(place);
    }

    private static double number(List<String> words, int place) {
      double number = Double.parseDouble(word(words, place));
      if (!Double.isFinite(number)) {
        throw new IllegalArgumentException("That is no number: " + words);
      }
      return number;
    }
  }
}
