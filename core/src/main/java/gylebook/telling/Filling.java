package gylebook.telling;

import gylebook.recipe.Hop;
import gylebook.recipe.Other;
import gylebook.recipe.Recipe;
import gylebook.rig.Newcomer;
import gylebook.rig.Rig;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// Fills a slot of a recipe or a rig with what somebody typed.
///
/// Only slots that the sentences show can be filled; whatever is typed, nothing is thrown at the
/// person who typed it.
@AnyUnit("values of every quantity")
public final class Filling {
  /// Ends the name of a slot that adds a line to a list.
  static final String ADD = ".add";

  /// Amounts that take their line out when they become nothing.
  private static final Pattern LINE =
      Pattern.compile(
          "(grist|hops|others|liquor\\.additions|rests|stands|ferment\\.steps)\\.(\\d+)"
              + "\\.(massKg|massG|amountNumber|holdSec)");

  private static final Set<String> NOTHING = Set.of("0", "none", "-");

  private Filling() {}

  /// Fills a slot of a recipe.
  ///
  /// @param slot as named by [RecipeWords]
  public static Filled<Recipe> recipe(
      Recipe recipe, String slot, String typed, ReadingUnits units) {
    if (!slots(RecipeWords.of(recipe, units)).contains(slot)) {
      return unknown(slot, typed);
    }
    Matcher line = LINE.matcher(slot);
    boolean out = line.matches() && isNothing(typed);
    return filled(
        typed,
        () -> {
          if (slot.endsWith(ADD)) {
            String list = slot.substring(0, slot.length() - ADD.length());
            return adds(typed) ? new Lines(recipe, units).added(list, typed) : recipe;
          }
          if (out) {
            return without(recipe, line.group(1), Integer.parseInt(line.group(2)));
          }
          return changed(recipe, slot, typed, units);
        });
  }

  /// Fills a slot of a rig.
  ///
  /// @param slot as named by [RigWords]
  public static Filled<Rig> rig(Rig rig, String slot, String typed, ReadingUnits units) {
    if (!slots(RigWords.of(rig, units)).contains(slot)) {
      return unknown(slot, typed);
    }
    return filled(typed, () -> changed(rig, slot, typed, units));
  }

  /// Fills an answer of a newcomer.
  ///
  /// @param slot as named by [NewcomerWords]
  public static Filled<Newcomer> newcomer(
      Newcomer newcomer, String slot, String typed, ReadingUnits units) {
    if (!slots(NewcomerWords.of(newcomer, units)).contains(slot)) {
      return unknown(slot, typed);
    }
    return filled(typed, () -> changed(newcomer, slot, typed, units));
  }

  @FunctionalInterface
  private interface Change<T> {
    T made();
  }

  private static <T> Filled<T> filled(String typed, Change<T> change) {
    try {
      return new Filled.Done<>(change.made());
    } catch (Unfit unfit) {
      String maybe = unfit.maybe().isBlank() ? "Type another value." : unfit.maybe();
      return new Filled.Unclear<>(message(unfit), typed, maybe);
    } catch (IllegalArgumentException refused) {
      return new Filled.Unclear<>(message(refused), typed, "Type another value.");
    }
  }

  private static String message(RuntimeException failure) {
    return Objects.requireNonNullElse(failure.getMessage(), "This value cannot stand here.");
  }

  private static <T> T changed(T tree, String slot, String typed, ReadingUnits units) {
    Blank blank = Blank.of(tree, slot, slot, units);
    return blank.same(typed) ? tree : Component.with(tree, slot, blank.read().apply(typed));
  }

  private static <T> Filled<T> unknown(String slot, String typed) {
    return new Filled.Unclear<>(
        "There is no value '" + slot + "' here.", typed, "Look at the page as it is now.");
  }

  /// An empty slot for a new line, taken as it stands, adds nothing.
  private static boolean adds(String typed) {
    return !typed.isBlank() && !typed.strip().startsWith("add ");
  }

  private static boolean isNothing(String typed) {
    String said = typed.strip();
    return NOTHING.contains(said) || said.matches("0+([.,]0+)?\\s*\\p{L}*");
  }

  private static Set<String> slots(List<Section> sections) {
    return sections.stream()
        .flatMap(section -> section.sentences().stream())
        .flatMap(sentence -> sentence.pieces().stream())
        .filter(Piece.Slot.class::isInstance)
        .map(piece -> ((Piece.Slot) piece).slot())
        .collect(Collectors.toSet());
  }

  private static Recipe without(Recipe recipe, String list, int number) {
    return list.equals("stands")
        ? withoutStand(recipe, number)
        : Component.without(recipe, list, number);
  }

  /// Hops point at stands by number, so those behind the one that goes move up with theirs.
  private static Recipe withoutStand(Recipe recipe, int number) {
    List<String> held = new ArrayList<>();
    recipe.hops().stream().filter(hop -> at(hop.when(), number)).forEach(h -> held.add(h.name()));
    recipe.others().stream().filter(o -> at(o.when(), number)).forEach(o -> held.add(o.name()));
    if (!held.isEmpty()) {
      throw new Unfit(
          String.join(" and ", held) + " would have no stand to go in at.",
          "Say when else they go in, then take the stand out.");
    }
    List<Hop> hops =
        recipe.hops().stream()
            .map(hop -> Component.with(hop, "when", moved(hop.when(), number)))
            .toList();
    List<Other> others =
        recipe.others().stream()
            .map(other -> Component.with(other, "when", moved(other.when(), number)))
            .toList();
    Recipe pointing = Component.with(recipe, "others", others);
    // The hops move before the stand goes, so that none points past the end in between.
    return Component.without(Component.with(pointing, "hops", hops), "stands", number);
  }

  private static boolean at(Hop.When when, int number) {
    return when instanceof Hop.When.AtStand(int stand) && stand == number;
  }

  private static Hop.When moved(Hop.When when, int gone) {
    return when instanceof Hop.When.AtStand(int stand) && stand > gone
        ? new Hop.When.AtStand(stand - 1)
        : when;
  }
}
