package gylebook.plan;

import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.simulate.DayLog;
import gylebook.simulate.Ensemble;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import java.util.ArrayList;
import java.util.List;

/// Whether the mash comes to its next rest, and in the time that is wanted.
@AnyUnit("chances and columns of times")
final class RampGuards {
  // The reading trails the set point by a minute or two on a ramp; that is no weak element.
  private static final double LATE_SEC = 180;
  private static final double LATE_RATIO = 1.1;
  // A rest this little above its target is nothing that somebody would notice.
  private static final double TOO_WARM_K = 1;
  private static final double CHANCE_SHOWN = 0.05;
  private static final double LIKELY_CHANCE = 0.5;

  private RampGuards() {}

  static List<Guard> of(Recipe recipe, Ensemble ensemble) {
    List<Guard> found = new ArrayList<>();
    List<Rest> rests = recipe.rests();
    for (int i = 1; i < rests.size(); i++) {
      boolean hotter = rests.get(i).targetC().inside() > rests.get(i - 1).targetC().inside();
      double rampSec = rests.get(i).rampSec().map(Entered::inside).orElse(0.0);
      if (hotter && rampSec > 0) {
        late(found, i, rampSec, tookSec(ensemble, i));
      }
      if (!hotter) {
        tooWarm(found, i, rests.get(i).targetC().inside(), ensemble);
      }
    }
    return found;
  }

  /// A kettle that is heated has nothing to cool a mash with.
  private static void tooWarm(List<Guard> found, int rest, double restC, Ensemble ensemble) {
    int row = ensemble.milestoneKeys().indexOf("toRest." + rest);
    double[] beginsC = ensemble.milestone(row, DayLog.Column.WORT_C);
    double chance = Bands.shareFrac(beginsC, c -> c > restC + TOO_WARM_K);
    if (chance < CHANCE_SHOWN) {
      return;
    }
    found.add(
        new Guard(
            "restTooWarm." + rest,
            chance >= LIKELY_CHANCE ? Guard.Level.SOON : Guard.Level.NOTE,
            List.of(
                Note.of("Rest " + (rest + 1) + " is wanted at ", "restC", restC),
                new Note(
                    "; nothing here cools the mash, and it begins at ", "wortC", Bands.of(beginsC)),
                Note.words(".")),
            "Put the cooler rest first, or stir in cold liquor by the thermometer.",
            "rest." + (rest - 1),
            chance,
            "The rig heats a mash; by itself it loses a few degrees an hour.",
            ""));
  }

  /// From the end of the rest before to the reading near the next.
  private static double[] tookSec(Ensemble ensemble, int rest) {
    List<String> keys = ensemble.milestoneKeys();
    double[] fromSec = ensemble.milestone(keys.indexOf("rest." + (rest - 1)), DayLog.Column.AT_SEC);
    double[] tookSec =
        ensemble.milestone(keys.indexOf("toRest." + rest), DayLog.Column.AT_SEC).clone();
    for (int i = 0; i < tookSec.length; i++) {
      tookSec[i] -= fromSec[i];
    }
    return tookSec;
  }

  private static void late(List<Guard> found, int rest, double rampSec, double[] tookSec) {
    double lateSec = Math.max(LATE_RATIO * rampSec, rampSec + LATE_SEC);
    double chance = Bands.shareFrac(tookSec, t -> t > lateSec);
    if (chance < CHANCE_SHOWN) {
      return;
    }
    found.add(
        new Guard(
            "rampTooFast." + rest,
            chance >= LIKELY_CHANCE ? Guard.Level.SOON : Guard.Level.NOTE,
            List.of(
                Note.of("Rest " + (rest + 1) + " is wanted after ", "rampSec", rampSec),
                new Note(" of heating; the element takes ", "rampSec", Bands.of(tookSec)),
                Note.words(".")),
            "Allow the mash the longer time, keep the lid on, or brew less.",
            "rest." + (rest - 1),
            chance,
            "At full power the element heats this much mash no faster.",
            ""));
  }
}
