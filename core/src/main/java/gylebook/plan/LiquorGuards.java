package gylebook.plan;

import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.simulate.Dose;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;

/// What the liquor may do to the mash, and what of it could not be counted.
@AnyUnit("chances and columns of pH")
final class LiquorGuards {
  // Cold; enzymes, run-off and taste suffer outside (common practice, no source).
  private static final double USUAL_LEAST_PH = 5.2;
  private static final double USUAL_MOST_PH = 5.6;
  private static final double CHANCE_SHOWN = 0.05;
  private static final double LIKELY_CHANCE = 0.5;
  private static final String ACID_CAUTION =
      "Concentrated acid burns skin and eyes: goggles and gloves, acid into water, never the other"
          + " way round, and the supplier's safety sheet first.";

  private LiquorGuards() {}

  static List<Guard> of(Recipe recipe, Ensemble ensemble) {
    List<Guard> found = new ArrayList<>();
    double[] column = ensemble.outcome(Outcome.MASH_PH);
    highPh(found, column, Bands.shareFrac(column, p -> p > USUAL_MOST_PH));
    lowPh(found, column, Bands.shareFrac(column, p -> p < USUAL_LEAST_PH));
    uncounted(found, recipe.liquor());
    acidStrength(found, recipe.liquor());
    return found;
  }

  private static Guard.Level level(double chanceFrac) {
    return chanceFrac >= LIKELY_CHANCE ? Guard.Level.SOON : Guard.Level.NOTE;
  }

  private static List<Note> says(double[] column, String end) {
    return List.of(
        new Note("The mash may stand at ", Outcome.MASH_PH.key(), Bands.of(column)),
        Note.words(end));
  }

  private static void highPh(List<Guard> found, double[] column, double chanceFrac) {
    if (chanceFrac < CHANCE_SHOWN) {
      return;
    }
    found.add(
        new Guard(
            "mashPhHigh",
            level(chanceFrac),
            says(column, ", above the usual 5.2 to 5.6."),
            "Ten minutes after dough-in, cool a sample to the room and read its pH; add acid in"
                + " small steps only by that reading.",
            "settled",
            chanceFrac,
            "The liquor's alkalinity outweighs what malt, calcium and acid bring.",
            ACID_CAUTION));
  }

  private static void lowPh(List<Guard> found, double[] column, double chanceFrac) {
    if (chanceFrac < CHANCE_SHOWN) {
      return;
    }
    found.add(
        new Guard(
            "mashPhLow",
            level(chanceFrac),
            says(column, ", below the usual 5.2 to 5.6."),
            "Ten minutes after dough-in, cool a sample to the room and read its pH; if it is low,"
                + " stir in a little baking soda and read again.",
            "settled",
            chanceFrac,
            "Dark malts, calcium or acid outweigh the liquor's alkalinity.",
            ""));
  }

  private static void uncounted(List<Guard> found, Liquor liquor) {
    for (Liquor.Addition addition : liquor.additions()) {
      if (!Dose.counted(addition)) {
        found.add(
            new Guard(
                "saltUnknown",
                Guard.Level.NOTE,
                List.of(
                    Note.words(
                        addition.name()
                            + " is not in the ions and the pH: what it is, or how much of it, is"
                            + " not known.")),
                "Name the salt or acid, and give solids by mass.",
                "liquorIn",
                1,
                "Its words or its amount do not say enough.",
                ""));
      }
    }
  }

  private static void acidStrength(List<Guard> found, Liquor liquor) {
    for (Liquor.Addition addition : liquor.additions()) {
      boolean acid = Dose.acidMeq(addition, USUAL_MOST_PH) > 0;
      if (acid && !Dose.saysStrength(addition)) {
        double strengthFrac = Dose.strengthFrac(addition);
        found.add(
            new Guard(
                "acidStrength",
                Guard.Level.NOTE,
                List.of(
                    Note.of(addition.name() + " was taken as ", "strengthFrac", strengthFrac),
                    Note.words(" strong; its name does not say.")),
                "Read the label and put its strength into the name.",
                "liquorIn",
                1,
                "The same volume of another strength gives another pH.",
                ACID_CAUTION));
      }
    }
  }
}
