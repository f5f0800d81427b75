package gylebook.plan;

import gylebook.recipe.Aim;
import gylebook.recipe.Boil;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Recipe;
import gylebook.rig.Chiller;
import gylebook.rig.Newcomer;
import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.rig.Working;
import gylebook.simulate.Outcome;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import java.util.Optional;
import java.util.OptionalDouble;

/// A recipe brewed, by simulation, on the equipment that it says it was written for.
///
/// Of that equipment a recipe states litres, boil-off, length of the boil and yield; everything
/// else is a usual rig of that size at sea level (assumed).
final class ForeignBrew {
  private static final double SEC_PER_HR = 3600;
  private static final double KETTLE_RATIO = 1.35;
  private static final double USUAL_PRE_BOIL_RATIO = 1.25;
  private static final double PLATE_W_PER_L = 150;
  private static final double LEAST_L = 4;
  private static final double MOST_L = 300;
  private static final int MOST_ROUNDS = 6;
  private static final double NEAR_FRAC = 1e-3;
  private static final double LEAST_MASH_FRAC = 0.05;

  private ForeignBrew() {}

  /// Whether a recipe says anything of the equipment it was written for.
  static boolean stated(Elsewhere there) {
    return there.brewhouseFrac().isPresent()
        || there.lengthL().isPresent()
        || there.preBoilL().isPresent()
        || there.boilSec().isPresent()
        || there.evaporationLPerHr().isPresent();
  }

  /// What comes out there; empty where no usual rig of that size could brew it.
  static Optional<Outcomes> of(Recipe recipe) {
    Elsewhere there = recipe.elsewhere();
    double lengthL = there.lengthL().orElse(recipe.aim().lengthL().inside());
    if (!(lengthL >= LEAST_L && lengthL <= MOST_L)) {
      return Optional.empty();
    }
    Recipe brewed = freed(recipe, there, lengthL);
    Rig rig = rig(there.preBoilL().orElse(USUAL_PRE_BOIL_RATIO * lengthL), lengthL);
    Outcomes out = new Solver(brewed, rig, lengthL, 0, Lean.NONE).found().out();
    for (int round = 0; round < MOST_ROUNDS && there.brewhouseFrac().isPresent(); round++) {
      double wantedFrac = there.brewhouseFrac().getAsDouble();
      double gotFrac = out.at(Outcome.BREWHOUSE);
      if (!(gotFrac > 0) || Math.abs(wantedFrac - gotFrac) < NEAR_FRAC) {
        break;
      }
      rig = letting(rig, rig.working().mashFrac().value() * wantedFrac / gotFrac);
      out = new Solver(brewed, rig, lengthL, 0, Lean.NONE).found().out();
    }
    return out.at(Outcome.GAVE_UP) > 0 ? Optional.empty() : Optional.of(out);
  }

  /// Nothing is aimed at but the litres: malt and hops stand as they are written.
  private static Recipe freed(Recipe recipe, Elsewhere there, double lengthL) {
    Entered length = Entered.of(lengthL, Quantity.VOLUME.inside());
    Aim litres = new Aim(length, Aim.Into.FERMENTER, Optional.empty(), Optional.empty(), "");
    Entered hold =
        there.boilSec().isPresent()
            ? Entered.of(there.boilSec().getAsDouble(), Quantity.TIME.inside())
            : recipe.boil().holdSec();
    Optional<Entered> evaporation = recipe.boil().evaporationLPerSec();
    OptionalDouble boiledOff = boiledOffLPerSec(there, lengthL, hold.inside());
    if (boiledOff.isPresent()) {
      evaporation = Optional.of(Entered.of(boiledOff.getAsDouble(), Quantity.FLOW.inside()));
    }
    return recipe
        .withAim(litres)
        .withBoil(new Boil(hold, evaporation, Optional.empty(), recipe.boil().lid()));
  }

  private static OptionalDouble boiledOffLPerSec(Elsewhere there, double lengthL, double holdSec) {
    if (there.evaporationLPerHr().isPresent()) {
      return OptionalDouble.of(there.evaporationLPerHr().getAsDouble() / SEC_PER_HR);
    }
    boolean known = there.preBoilL().isPresent() && there.lengthL().isPresent() && holdSec > 0;
    double goneL = there.preBoilL().orElse(lengthL) - lengthL;
    return known && goneL > 0 ? OptionalDouble.of(goneL / holdSec) : OptionalDouble.empty();
  }

  private static Rig rig(double preBoilL, double lengthL) {
    double kettleL = Math.clamp(KETTLE_RATIO * Math.max(preBoilL, lengthL), 5, 500);
    return new Newcomer(
            "their rig",
            kettleL,
            Math.clamp(PLATE_W_PER_L * kettleL, 300, 30_000),
            230,
            230,
            0,
            true,
            1.5,
            0.0127,
            true,
            false,
            Probe.Place.SUCTION,
            Chiller.Kind.COUNTERFLOW,
            2 * lengthL,
            lengthL)
        .rig();
  }

  /// The same rig with a crush that lets go another share of the malt.
  private static Rig letting(Rig rig, double mashFrac) {
    Working old = rig.working();
    Working working =
        new Working(
            old.doughInSec(),
            old.settleSec(),
            old.drainSec(),
            old.squeeze(),
            Parameter.exact(Math.clamp(mashFrac, LEAST_MASH_FRAC, 1)),
            old.mixingLPerSec(),
            old.fermenterL(),
            old.fermenterLossL(),
            old.kegL(),
            old.liftReachM(),
            old.hoist());
    return new Rig(
        rig.name(),
        rig.invented(),
        rig.site(),
        rig.kettle(),
        rig.element(),
        rig.bag(),
        rig.loop(),
        rig.probes(),
        rig.controller(),
        rig.chiller(),
        working);
  }
}
