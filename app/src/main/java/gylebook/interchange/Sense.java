package gylebook.interchange;

import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.OptionalDouble;

/// Does a well-formed file make sense? What does not is said, and taken as it stands.
@AnyUnit("limits of sense, each in its own unit")
final class Sense {
  private static final double SG_LEAST = 0.98;
  private static final double SG_MOST = 1.20;

  // The heaviest dry hopping is some 20 g/L (common practice, no source).
  private static final double MOST_HOPS_G_PER_L = 40;
  // The warmest yeasts are pitched at 40 C or so (common practice, no source).
  private static final double MOST_PITCH_C = 45;
  private static final double LEAST_PITCH_C = -1;

  private Sense() {}

  /// What no tag alone shows.
  static void recipe(Recipe recipe, Ledger ledger) {
    double lengthL = recipe.elsewhere().lengthL().orElse(recipe.aim().lengthL().inside());
    for (Hop hop : recipe.hops()) {
      if (lengthL > 0 && hop.massG().inside() > MOST_HOPS_G_PER_L * lengthL) {
        ledger.says(
            "hops > " + hop.name(),
            hop.massG().asTyped()
                + " is more than "
                + MOST_HOPS_G_PER_L
                + " g in each litre of the beer; taken as said. Were they grams?");
      }
    }
    double pitchC = recipe.yeast().pitchC().inside();
    if (!(pitchC >= LEAST_PITCH_C && pitchC <= MOST_PITCH_C)) {
      ledger.says(
          "yeast",
          "Pitching at " + recipe.yeast().pitchC().asTyped() + " kills yeast; taken as said.");
    }
  }

  static void gravity(String path, Entered gravity, Ledger ledger) {
    double sg = Unit.known(Quantity.GRAVITY, "SG").fromInside(gravity.inside());
    if (!(sg >= SG_LEAST && sg <= SG_MOST)) {
      ledger.says(
          path,
          gravity.asTyped()
              + " lies outside 0.980 to 1.200, where worts and beers are; taken as"
              + " said.");
    }
  }

  static void volumes(String path, double lengthL, OptionalDouble preBoilL, Ledger ledger) {
    if (preBoilL.isPresent() && preBoilL.getAsDouble() > 0 && lengthL > preBoilL.getAsDouble()) {
      ledger.says(path, "Is more than the volume before the boil; taken as said.");
    }
  }
}
