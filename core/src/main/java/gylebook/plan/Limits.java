package gylebook.plan;

import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.rig.Rig;
import gylebook.simulate.Outcome;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Optional;

/// What can stand in the way of a plan.
final class Limits {
  private static final double L_PER_M3 = 1000;
  static final String BOILS_TOO_COOL = "boilsTooCool";

  // A set point this close to the boil cannot be held.
  private static final double LEAST_BELOW_K = 2;
  // A fermenter wants room for the head: a tenth (common practice, no source).
  private static final double FERMENTER_FULL_FRAC = 0.92;

  private Limits() {}

  /// One limit that binds.
  ///
  /// @param key its name
  /// @param says what it is, with its figures
  /// @param maybe what to try
  /// @param less whether brewing less can help
  record Bound(String key, List<Note> says, String maybe, boolean less) {}

  /// Litres by which the wort stands too high at dough-in; 0 when it fits.
  static double overL(Rig rig, Solver.Found found) {
    double missingM = rig.kettle().headroomM().value() - found.out().at(Outcome.ROOM_AT_DOUGH_IN);
    return Math.max(0, missingM * rig.kettle().surfaceM2() * L_PER_M3);
  }

  /// The first limit that binds; what cannot be held at all goes before what does not fit.
  static Optional<Bound> of(Recipe recipe, Rig rig, Solver.Found found) {
    return mash(recipe, rig)
        // What runs over the rim is no question of heat, though it also takes hours to heat.
        .or(() -> kettle(rig, found).filter(_ -> overTheRim(found)))
        .or(() -> heat(found))
        .or(() -> kettle(rig, found))
        .or(() -> rest(recipe, rig, found));
  }

  private static boolean overTheRim(Solver.Found found) {
    return found.out().at(Outcome.ROOM_AT_DOUGH_IN) < 0
        || found.out().at(Outcome.ROOM_AT_BREAK) < 0;
  }

  private static Optional<Bound> mash(Recipe recipe, Rig rig) {
    double boilsC = waterBoilsC(rig);
    double hottestC =
        recipe.rests().stream().mapToDouble(rest -> rest.targetC().inside()).max().orElse(0);
    if (hottestC > boilsC - LEAST_BELOW_K) {
      return Optional.of(
          new Bound(
              BOILS_TOO_COOL,
              List.of(
                  Note.of("A rest at ", "restC", hottestC),
                  Note.of(" is wanted, but here wort boils at ", "boilsC", boilsC),
                  Note.words(".")),
              "Choose a cooler rest.",
              false));
    }
    double tapC = rig.site().tapC().value();
    if (!recipe.rests().isEmpty() && firstC(recipe) < tapC) {
      return Optional.of(
          new Bound(
              "liquorTooWarm",
              List.of(
                  Note.of("The first rest is wanted at ", "restC", firstC(recipe)),
                  Note.of("; the liquor comes at ", "tapC", tapC),
                  Note.words(", and nothing here cools it.")),
              "Choose a warmer rest.",
              false));
    }
    return Optional.empty();
  }

  private static double firstC(Recipe recipe) {
    return recipe.rests().getFirst().targetC().inside();
  }

  private static Optional<Bound> heat(Solver.Found found) {
    if (found.out().at(Outcome.GAVE_UP) > 0) {
      return Optional.of(
          new Bound(
              "elementTooWeak",
              List.of(
                  Note.of("The element (", "currentA", found.out().at(Outcome.CURRENT)),
                  Note.words(
                      ") does not bring this much wort to the wanted heat: what it gives is lost"
                          + " to the room before.")),
              "Brew less, keep the lid on, or insulate the kettle.",
              true));
    }
    return Optional.empty();
  }

  /// The recipe with no rest hotter than can be held here.
  static Recipe cooled(Recipe recipe, Rig rig) {
    double mostC = Math.floor(10 * (waterBoilsC(rig) - LEAST_BELOW_K)) / 10;
    return recipe.withRests(
        recipe.rests().stream()
            .map(rest -> rest.targetC().inside() > mostC ? atC(rest, mostC) : rest)
            .toList());
  }

  private static Rest atC(Rest rest, double targetC) {
    Entered target = Entered.of(targetC, Unit.known(Quantity.TEMPERATURE, "°C"));
    return new Rest(rest.name(), target, rest.holdSec(), rest.rampSec());
  }

  /// The temperature at which water boils where the rig stands.
  static double waterBoilsC(Rig rig) {
    return rig.site().waterBoilsC();
  }

  private static Optional<Bound> kettle(Rig rig, Solver.Found found) {
    double headroomM = rig.kettle().headroomM().value();
    double doughInM = found.out().at(Outcome.ROOM_AT_DOUGH_IN);
    double breakM = found.out().at(Outcome.ROOM_AT_BREAK);
    if (doughInM < headroomM - 1e-3 || breakM < headroomM - 1e-3) {
      boolean atBreak = doughInM >= headroomM - 1e-3;
      return Optional.of(
          new Bound(
              "kettleTooSmall",
              List.of(
                  Note.of(
                      atBreak ? "At the hot break only " : "With the malt in only ",
                      "roomM",
                      Math.max(0, atBreak ? breakM : doughInM)),
                  Note.of(" stay below the rim; wanted are ", "headroomM", headroomM),
                  Note.words(".")),
              "Brew less, or a weaker beer.",
              true));
    }
    return Optional.empty();
  }

  private static Optional<Bound> rest(Recipe recipe, Rig rig, Solver.Found found) {
    double fermenterL = found.out().at(Outcome.FERMENTER);
    double holdsL = rig.working().fermenterL().value() * FERMENTER_FULL_FRAC;
    if (fermenterL > holdsL) {
      return Optional.of(
          new Bound(
              "fermenterTooSmall",
              List.of(
                  Note.of("The fermenter takes ", "fermenterL", holdsL),
                  Note.of(" with room for the head; this gyle gives ", "lengthL", fermenterL),
                  Note.words(".")),
              "Brew less, or use two fermenters.",
              true));
    }
    if (found.out().at(Outcome.COVER) < 0) {
      return Optional.of(
          new Bound(
              "elementBare",
              List.of(
                  Note.of(
                      "The element would stand bare by ", "bareM", -found.out().at(Outcome.COVER)),
                  Note.words(".")),
              "Brew more, or use a smaller kettle.",
              false));
    }
    return unmet(recipe, found);
  }

  private static Optional<Bound> unmet(Recipe recipe, Solver.Found found) {
    if (found.met()) {
      return Optional.empty();
    }
    return Optional.of(
        new Bound(
            "aimsApart",
            List.of(Note.words("No settings reach all that is wanted of " + recipe.name() + ".")),
            "Loosen one aim: strength, bitterness or litres.",
            true));
  }
}
