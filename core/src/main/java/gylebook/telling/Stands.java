package gylebook.telling;

import gylebook.recipe.Hop;
import gylebook.recipe.Other;
import gylebook.recipe.Recipe;
import gylebook.recipe.Stand;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.Component;
import gylebook.units.Entered;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/// The hot stands of a recipe and what points at them by number.
///
/// Wort only cools, so a new stand takes its place by its temperature, the hottest first; whatever
/// goes in at the stands behind it keeps its own.
@AnyUnit("compares amounts of any one quantity")
final class Stands {
  private static final double SAME_K = 0.05;
  private static final double SAME_SEC = 1;

  private Stands() {}

  /// The only stand at about this temperature.
  static OptionalInt at(Recipe recipe, Entered targetC) {
    int[] found =
        IntStream.range(0, recipe.stands().size())
            .filter(i -> near(recipe.stands().get(i).targetC(), targetC, SAME_K))
            .toArray();
    return found.length == 1 ? OptionalInt.of(found[0]) : OptionalInt.empty();
  }

  /// The first stand that is the same but for rounding.
  static OptionalInt like(Recipe recipe, Stand wanted) {
    return IntStream.range(0, recipe.stands().size())
        .filter(i -> near(recipe.stands().get(i).targetC(), wanted.targetC(), SAME_K))
        .filter(i -> near(recipe.stands().get(i).holdSec(), wanted.holdSec(), SAME_SEC))
        .findFirst();
  }

  private static boolean near(Entered one, Entered other, double within) {
    return Math.abs(one.inside() - other.inside()) < within;
  }

  /// Where a stand of this temperature belongs: behind those that are as hot or hotter.
  static int place(Recipe recipe, Entered targetC) {
    List<Stand> stands = recipe.stands();
    int place = stands.size();
    while (place > 0 && stands.get(place - 1).targetC().inside() < targetC.inside()) {
      place--;
    }
    return place;
  }

  static Recipe with(Recipe recipe, Stand stand) {
    int place = place(recipe, stand.targetC());
    List<Stand> longer = new ArrayList<>(recipe.stands());
    longer.add(place, stand);
    Recipe roomy = Component.with(recipe, "stands", List.copyOf(longer));
    return pointing(roomy, number -> number >= place ? number + 1 : number);
  }

  /// The recipe without one stand.
  ///
  /// @throws Unfit when something would have no stand to go in at
  static Recipe without(Recipe recipe, int number) {
    List<String> held = new ArrayList<>();
    recipe.hops().stream().filter(hop -> at(hop.when(), number)).forEach(h -> held.add(h.name()));
    recipe.others().stream().filter(o -> at(o.when(), number)).forEach(o -> held.add(o.name()));
    if (!held.isEmpty()) {
      throw new Unfit(
          String.join(" and ", held.stream().distinct().toList())
              + " would have no stand to go in at.",
          "Say when else they go in, then take the stand out.");
    }
    // What points past it moves before the stand goes, so that nothing points past the end.
    Recipe moved = pointing(recipe, stand -> stand > number ? stand - 1 : stand);
    return Component.without(moved, "stands", number);
  }

  private static boolean at(Hop.When when, int number) {
    return when instanceof Hop.When.AtStand(int stand) && stand == number;
  }

  private static Recipe pointing(Recipe recipe, IntUnaryOperator move) {
    List<Hop> hops =
        recipe.hops().stream()
            .map(hop -> Component.with(hop, "when", moved(hop.when(), move)))
            .toList();
    List<Other> others =
        recipe.others().stream()
            .map(other -> Component.with(other, "when", moved(other.when(), move)))
            .toList();
    return Component.with(Component.with(recipe, "others", others), "hops", hops);
  }

  private static Hop.When moved(Hop.When when, IntUnaryOperator move) {
    return when instanceof Hop.When.AtStand(int stand)
        ? new Hop.When.AtStand(move.applyAsInt(stand))
        : when;
  }
}
