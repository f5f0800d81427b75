package gylebook.telling;

import gylebook.plan.LiquorSolver;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.science.LiquorLevels;
import gylebook.simulate.LiquorLook;
import gylebook.simulate.Settings;
import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// The salts and the acid that were found for a wanted liquor, in words.
///
/// @param sentences what to add and where
/// @param rows what the liquor holds before and after
/// @param missed what was not reached, and why; empty when all was
/// @param caution what to mind with acid; empty without
/// @param recipe the same recipe with what was found in place of its salts and acids
/// @param wanted the wish in numbers
/// @param found what was found in numbers
@AnyUnit("shows ions, pH and amounts")
public record LiquorAnswer(
    List<String> sentences,
    List<Row> rows,
    List<String> missed,
    String caution,
    Recipe recipe,
    LiquorLevels wanted,
    LiquorSolver.Treatment found) {
  private static final String ACID_CAUTION =
      "Concentrated acid burns skin and eyes: goggles and gloves, acid into water and never the"
          + " other way round, and its supplier's safety sheet first. Add the last of it only by a"
          + " reading of the mash.";
  private static final String NO_MATTER = "any";
  private static final double HELD_BACK_L = 0.05;

  /// One line of the liquor.
  ///
  /// @param says which
  /// @param before as the water comes
  /// @param wanted as it is wanted, or `any`
  /// @param mash in the mash liquor, with what was found
  /// @param whole in all liquor together; empty for a pH
  public record Row(String says, String before, String wanted, String mash, String whole) {}

  /// Copies the lists.
  public LiquorAnswer {
    sentences = List.copyOf(sentences);
    rows = List.copyOf(rows);
    missed = List.copyOf(missed);
  }

  /// Finds the doses for a recipe as it is planned. What of the recipe's own additions is not known
  /// to the chemist stays in it.
  ///
  /// @param recipe as it was written
  /// @param settings of its plan
  public static LiquorAnswer of(
      Recipe recipe, Settings settings, LiquorWish wish, ReadingUnits units) {
    LiquorSolver.Treatment found =
        LiquorSolver.solved(recipe, settings, wish.wanted(), wish.house());
    List<Liquor.Addition> kept = new ArrayList<>(found.additions());
    recipe.liquor().additions().stream()
        .filter(addition -> addition.agent() == Liquor.Agent.UNKNOWN)
        .forEach(kept::add);
    boolean acid = found.additions().stream().anyMatch(LiquorAnswer::acid);
    Shown shown = new Shown(units);
    return new LiquorAnswer(
        sentences(found, settings, units),
        rows(recipe, settings, wish.wanted(), found, units),
        found.missed().stream().map(shown::sentence).toList(),
        acid ? ACID_CAUTION : "",
        recipe.withLiquor(recipe.liquor().withAdditions(kept)),
        wish.wanted(),
        found);
  }

  /// What the liquor holds with the salts and acids that are in the recipe now.
  public static List<String> now(Recipe recipe, Settings settings, ReadingUnits units) {
    return values(LiquorLook.of(recipe, settings), units);
  }

  private static boolean acid(Liquor.Addition addition) {
    return addition.agent() == Liquor.Agent.LACTIC_ACID
        || addition.agent() == Liquor.Agent.PHOSPHORIC_ACID;
  }

  private static List<String> sentences(
      LiquorSolver.Treatment found, Settings settings, ReadingUnits units) {
    List<String> sentences = new ArrayList<>();
    String mashL = units.shown(Quantity.VOLUME, settings.liquorL());
    sentences.add("Into the " + mashL + " of the mash: " + doses(found, Liquor.Into.MASH) + ".");
    if (settings.topUpL() > HELD_BACK_L) {
      String keptL = units.shown(Quantity.VOLUME, settings.topUpL());
      sentences.add(
          "Into the "
              + keptL
              + " held back for after the bag: "
              + doses(found, Liquor.Into.KETTLE)
              + ".");
    } else {
      sentences.add("No liquor is held back, so there is none to treat by itself.");
    }
    return sentences;
  }

  /// The amounts are steps of the brewer's own scale, so they stay in its unit.
  private static String doses(LiquorSolver.Treatment found, Liquor.Into into) {
    List<String> doses =
        found.additions().stream()
            .filter(addition -> addition.into() == into)
            .map(addition -> addition.amountNumber().asTyped() + " " + addition.name())
            .toList();
    return doses.isEmpty() ? "nothing" : Grammar.joined(doses);
  }

  private static List<Row> rows(
      Recipe recipe,
      Settings settings,
      LiquorLevels wanted,
      LiquorSolver.Treatment found,
      ReadingUnits units) {
    Recipe plain = recipe.withLiquor(recipe.liquor().withAdditions(List.of()));
    List<String> before = values(LiquorLook.of(plain, settings), units);
    List<String> after = values(new LiquorLook(found.mash(), found.whole(), found.mashPh()), units);
    List<String> whole =
        values(new LiquorLook(found.whole(), found.whole(), found.mashPh()), units);
    List<String> asked = values(new LiquorLook(ions(wanted), ions(wanted), wanted.mashPh()), units);
    List<Row> rows = new ArrayList<>();
    for (LiquorWish.Line line : LiquorWish.Line.values()) {
      int i = line.ordinal();
      boolean ion = line != LiquorWish.Line.PH;
      rows.add(
          new Row(
              line.words(), before.get(i), asked.get(i), after.get(i), ion ? whole.get(i) : ""));
    }
    return rows;
  }

  private static Liquor.Ions ions(LiquorLevels wanted) {
    return new Liquor.Ions(
        wanted.calciumMgPerL(),
        wanted.magnesiumMgPerL(),
        wanted.sodiumMgPerL(),
        wanted.chlorideMgPerL(),
        wanted.sulfateMgPerL(),
        wanted.bicarbonateMgPerL());
  }

  /// In the order of the lines that can be wanted.
  private static List<String> values(LiquorLook look, ReadingUnits units) {
    return List.of(
        ion(look.mash().calciumMgPerL(), units),
        ion(look.mash().magnesiumMgPerL(), units),
        ion(look.mash().sodiumMgPerL(), units),
        ion(look.mash().chlorideMgPerL(), units),
        ion(look.mash().sulphateMgPerL(), units),
        ion(look.mash().bicarbonateMgPerL(), units),
        Double.isNaN(look.mashPh())
            ? NO_MATTER
            : String.format(Locale.ROOT, "%.2f", look.mashPh()));
  }

  private static String ion(double ionMgPerL, ReadingUnits units) {
    return Double.isNaN(ionMgPerL) ? NO_MATTER : units.shown(Quantity.CONCENTRATION, ionMgPerL);
  }

  /// The answer for a terminal.
  public String text() {
    List<String> lines = new ArrayList<>(sentences);
    for (Row row : rows) {
      String whole = row.whole().isEmpty() ? "" : "; " + row.whole() + " in all liquor";
      lines.add(
          "  "
              + row.says()
              + ": wanted "
              + row.wanted()
              + ", comes to "
              + row.mash()
              + " in the mash from "
              + row.before()
              + whole);
    }
    lines.addAll(missed);
    if (!caution.isEmpty()) {
      lines.add(caution);
    }
    return String.join("\n", lines).replace('\u00a0', ' ') + "\n";
  }
}
