package gylebook.telling;

import gylebook.recipe.Recipe;
import gylebook.rig.Bounds;
import gylebook.rig.Newcomer;
import gylebook.rig.Rig;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.Component;
import gylebook.units.ReadingUnits;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Fills a slot of a recipe or a rig with what somebody typed.
///
/// What the sentences show can be filled. A line of a list is taken out by its amount, with nothing
/// (`grist.1.massKg` with `0`), or by name (`grist.1.remove`). Whatever is typed, nothing is thrown
/// at the person who typed it.
@AnyUnit("values of every quantity")
public final class Filling {
  /// Ends the name of a slot that adds a line to a list.
  static final String ADD = ".add";

  /// Ends the name of a slot that takes a line out; it is not shown, but it can be filled.
  static final String REMOVE = ".remove";

  private static final String SALTS = "liquor.additions";

  /// Amounts that take their line out when they become nothing.
  private static final Pattern LINE =
      Pattern.compile(
          "(grist|hops|others|liquor\\.additions|rests|stands|ferment\\.steps|probes)"
              + "\\.(\\d{1,4})\\.(massKg|massG|amountNumber|holdSec|remove)");

  private static final Set<String> NOTHING = Set.of("0", "none", "-");
  private static final Set<String> GOES = Set.of("", "remove", "yes", "take it out");
  private static final Set<String> STAYS = Set.of("no", "keep", "keep it");

  private Filling() {}

  /// Fills a slot of a recipe.
  ///
  /// @param slot as named by [RecipeWords]; a salt may be called `salts.0` as well
  public static Filled<Recipe> recipe(
      Recipe recipe, String slot, String typed, ReadingUnits units) {
    String name = slot.startsWith("salts.") ? SALTS + slot.substring("salts".length()) : slot;
    Matcher line = LINE.matcher(name);
    if (line.matches() && (name.endsWith(REMOVE) || isNothing(typed))) {
      return removed(recipe, line, typed, units);
    }
    Optional<Piece.Slot> shown = shown(RecipeWords.of(recipe, units), name);
    if (shown.isEmpty()) {
      return unknown(slot, typed);
    }
    if (name.endsWith(ADD)) {
      boolean nothing = typed.isBlank() || typed.strip().equals(shown.get().shown());
      String list = name.substring(0, name.length() - ADD.length());
      return filled(typed, () -> nothing ? recipe : new Lines(recipe, units).added(list, typed));
    }
    return filled(typed, () -> changed(recipe, name, typed, units));
  }

  /// Fills a slot of a rig.
  ///
  /// @param slot as named by [RigWords]
  public static Filled<Rig> rig(Rig rig, String slot, String typed, ReadingUnits units) {
    Matcher line = LINE.matcher(slot);
    if (line.matches() && line.group(1).equals("probes") && slot.endsWith(REMOVE)) {
      int number = Integer.parseInt(line.group(2));
      return number < rig.probes().size()
          ? taken(rig, typed, () -> Component.without(rig, "probes", number))
          : unknown(slot, typed);
    }
    Optional<Piece.Slot> shown = shown(RigWords.of(rig, units), slot);
    if (shown.isEmpty()) {
      return unknown(slot, typed);
    }
    if (slot.endsWith(ADD)) {
      boolean nothing = typed.isBlank() || typed.strip().equals(shown.get().shown());
      return filled(
          typed, () -> nothing ? rig : sound(ThermometerLine.added(rig, typed), rig, units));
    }
    Rig ready = Consequences.before(rig, slot, typed);
    return filled(
        typed, () -> sound(Consequences.of(rig, replaced(slot, typed, ready, units)), rig, units));
  }

  /// A number that no rig has is a slip; the forecast could not be made with it.
  private static Rig sound(Rig rig, Rig before, ReadingUnits units) {
    Optional<Bounds.Fault> fault = Bounds.fault(rig, before);
    if (fault.isPresent()) {
      String what = OutsideRig.what(fault.get(), units);
      throw new Unfit(
          what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1) + ".",
          OutsideRig.maybe(fault.get()));
    }
    return rig;
  }

  /// Fills an answer of a newcomer.
  ///
  /// @param slot as named by [NewcomerWords]
  public static Filled<Newcomer> newcomer(
      Newcomer newcomer, String slot, String typed, ReadingUnits units) {
    return shown(NewcomerWords.of(newcomer, units), slot).isEmpty()
        ? unknown(slot, typed)
        : filled(typed, () -> replaced(slot, typed, newcomer, units));
  }

  private static <T> T replaced(String slot, String typed, T tree, ReadingUnits units) {
    Blank blank = Blank.of(tree, slot, slot, units);
    return blank.same(typed) ? tree : Component.with(tree, slot, blank.read().apply(typed));
  }

  /// What a change comes to, or why it cannot be.
  static <T> Filled<T> filled(String typed, Supplier<T> change) {
    try {
      return new Filled.Done<>(change.get());
    } catch (Unfit unfit) {
      return unclear(unfit, typed, unfit.maybe().isBlank() ? "Type another value." : unfit.maybe());
    } catch (IllegalArgumentException refused) {
      return unclear(refused, typed, "Type another value.");
    }
  }

  private static <T> Filled<T> unclear(RuntimeException failure, String typed, String maybe) {
    String what = Objects.requireNonNullElse(failure.getMessage(), "This cannot stand here.");
    return new Filled.Unclear<>(what, typed, maybe);
  }

  private static Recipe changed(Recipe recipe, String slot, String typed, ReadingUnits units) {
    Blank blank = Blank.of(recipe, slot, slot, units);
    if (blank.same(typed)) {
      return recipe;
    }
    Object value = blank.read().apply(typed);
    Recipe made =
        value instanceof Moment.Said(Recipe standing, Object when)
            ? Component.with(standing, slot, when)
            : Component.with(recipe, slot, value);
    return Consequences.of(recipe, made, slot);
  }

  private static <T> Filled<T> unknown(String slot, String typed) {
    String name = slot.length() > 80 ? slot.substring(0, 80) + "..." : slot;
    return new Filled.Unclear<>(
        "There is no value '" + name + "' here.", typed, "Look at the page as it is now.");
  }

  private static Optional<Piece.Slot> shown(List<Section> sections, String name) {
    return sections.stream()
        .flatMap(section -> section.sentences().stream())
        .flatMap(sentence -> sentence.pieces().stream())
        .filter(Piece.Slot.class::isInstance)
        .map(Piece.Slot.class::cast)
        .filter(slot -> slot.slot().equals(name))
        .findFirst();
  }

  private static boolean isNothing(String typed) {
    String said = typed.strip();
    return NOTHING.contains(said) || said.matches("0+([.,]0+)?[ \u00a0]*[\\p{L} ]{0,12}");
  }

  private static Filled<Recipe> removed(
      Recipe recipe, Matcher line, String typed, ReadingUnits units) {
    String slot = line.group();
    String list = line.group(1);
    int number = Integer.parseInt(line.group(2));
    if (list.equals("probes") || number >= ((List<?>) Component.at(recipe, list)).size()) {
      return unknown(slot, typed);
    }
    // A line that came with an amount of nothing stays when that is taken as it stands.
    if (!slot.endsWith(REMOVE) && Blank.of(recipe, slot, slot, units).same(typed)) {
      return new Filled.Done<>(recipe);
    }
    Supplier<Recipe> without =
        () ->
            list.equals("stands")
                ? Stands.without(recipe, number)
                : Component.without(recipe, list, number);
    return slot.endsWith(REMOVE) ? taken(recipe, typed, without) : filled(typed, without);
  }

  /// A line goes when that is said, and only then.
  private static <T> Filled<T> taken(T tree, String typed, Supplier<T> without) {
    String said = typed.strip().toLowerCase(Locale.ROOT);
    if (GOES.contains(said)) {
      return filled(typed, without);
    }
    return STAYS.contains(said)
        ? new Filled.Done<>(tree)
        : new Filled.Unclear<>(
            "It is not clear whether this goes.", typed, "Say yes to take it out.");
  }
}
