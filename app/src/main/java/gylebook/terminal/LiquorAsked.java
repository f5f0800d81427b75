package gylebook.terminal;

import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.telling.Filled;
import gylebook.telling.LiquorAnswer;
import gylebook.telling.LiquorWish;
import gylebook.units.ReadingUnits;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/// The options of `plan` that find salts and acid for a wanted liquor.
final class LiquorAsked {
  /// Only the litres are asked of the first plan, not its bands.
  private static final int FEW_DAYS = 20;

  @Option(
      names = "--liquor",
      paramLabel = "WANTED",
      description =
          "Find salts and acid for this liquor and plan with them in place of the recipe's:"
              + " 'calcium 100, sulphate 150, pH 5.4'. What is not named does not matter.")
  private @Nullable String wanted;

  @Option(
      names = "--house",
      paramLabel = "LIST",
      description =
          "What there is for --liquor, an acid with the strength on its label:"
              + " 'gypsum, lactic acid 80 %%' (default: ${DEFAULT-VALUE}).")
  private String house = LiquorWish.USUAL_HOUSE;

  @Option(
      names = "--scale",
      paramLabel = "STEP",
      description = "The steps of the scale for --liquor (default ${DEFAULT-VALUE}).")
  private String scale = LiquorWish.USUAL_SCALE;

  @Option(
      names = "--measure",
      paramLabel = "STEP",
      description = "The steps in which acid is measured for --liquor (default ${DEFAULT-VALUE}).")
  private String measure = LiquorWish.USUAL_MEASURE;

  /// What is unclear about them; empty when nothing is, or nothing is asked.
  Optional<String> fault() {
    return wanted != null && wish(wanted) instanceof Filled.Unclear<LiquorWish> unclear
        ? Optional.of("--liquor: " + unclear.what() + " " + unclear.maybe())
        : Optional.empty();
  }

  private Filled<LiquorWish> wish(String line) {
    return LiquorWish.read(line, house, scale, measure);
  }

  /// What is found for a recipe on a rig; empty when nothing is asked, or when it cannot be brewed
  /// anyway, which its plan says.
  Optional<LiquorAnswer> answer(Recipe recipe, Rig on, long seed, ReadingUnits units) {
    if (wanted == null || !(wish(wanted) instanceof Filled.Done<LiquorWish>(LiquorWish wish))) {
      return Optional.empty();
    }
    Planned planned = Planner.plan(recipe, on, FEW_DAYS, seed, () -> false, _ -> {});
    return planned instanceof Planned.Feasible(Plan plan)
        ? Optional.of(LiquorAnswer.of(recipe, plan.settings(), wish, units))
        : Optional.empty();
  }
}
