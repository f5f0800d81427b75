package gylebook.plan;

import gylebook.recipe.Aim;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Goods;
import gylebook.recipe.Recipe;
import gylebook.science.WortDensity;
import gylebook.simulate.Outcome;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import java.util.Optional;
import java.util.OptionalDouble;

/// Somebody else's recipe: the beer that their kettle made of it becomes the aim on ours.
///
/// What the recipe claims of itself (strength, bitterness) is the beer; where it only says how much
/// of the extract reached the fermenter, the strength follows by the mass balance. What it does not
/// claim is found by brewing it, simulated, on the equipment that it states.
final class Rescale {
  private static final double PLATO_PER_FRAC = 100;

  private Rescale() {}

  static Recipe aimed(Recipe recipe) {
    Aim aim = recipe.aim();
    Elsewhere there = recipe.elsewhere();
    Optional<Entered> strength =
        aim.strengthPlato().or(() -> entered(strengthPlato(recipe, there), Quantity.GRAVITY));
    Optional<Entered> bitterness =
        aim.bitternessMgPerL().or(() -> entered(there.bitternessMgPerL(), Quantity.BITTERNESS));
    boolean open = strength.isEmpty() || (bitterness.isEmpty() && !recipe.hops().isEmpty());
    if (open && ForeignBrew.stated(there)) {
      Optional<Outcomes> out = ForeignBrew.of(recipe);
      strength = strength.or(() -> brewed(out, Outcome.STRENGTH, Quantity.GRAVITY));
      if (!recipe.hops().isEmpty()) {
        bitterness = bitterness.or(() -> brewed(out, Outcome.BITTERNESS, Quantity.BITTERNESS));
      }
    }
    Aim reached =
        new Aim(
            aim.lengthL(),
            aim.into(),
            strength,
            bitterness,
            aim.readyBy(),
            aim.doneBy(),
            aim.colourEbc().or(() -> entered(there.colourEbc(), Quantity.COLOUR)));
    return recipe.withAim(reached);
  }

  private static Optional<Entered> brewed(
      Optional<Outcomes> out, Outcome outcome, Quantity quantity) {
    return out.map(found -> found.at(outcome))
        .filter(value -> value > 0)
        .map(value -> Entered.of(value, quantity.inside()));
  }

  private static Optional<Entered> entered(OptionalDouble insideNumber, Quantity quantity) {
    return insideNumber.isPresent()
        ? Optional.of(Entered.of(insideNumber.getAsDouble(), quantity.inside()))
        : Optional.empty();
  }

  private static OptionalDouble strengthPlato(Recipe recipe, Elsewhere there) {
    if (there.strengthPlato().isPresent() || there.brewhouseFrac().isEmpty()) {
      return there.strengthPlato();
    }
    double extractKg = 0;
    for (Goods line : recipe.grist()) {
      double shareFrac = line.kind().mashed() ? there.brewhouseFrac().getAsDouble() : 1;
      extractKg +=
          line.massKg().inside()
              * (1 - line.analysis().moistureFrac())
              * line.analysis().extractFrac()
              * shareFrac;
    }
    double lengthL = there.lengthL().orElse(recipe.aim().lengthL().inside());
    return OptionalDouble.of(solvedPlato(extractKg, lengthL));
  }

  /// The strength at which this much extract fills this many litres.
  private static double solvedPlato(double extractKg, double lengthL) {
    double wortKg = lengthL * WortDensity.wortKgPerL(0, 20);
    for (int i = 0; i < 30; i++) {
      double extractFrac = Math.min(0.4, extractKg / wortKg);
      wortKg = lengthL * WortDensity.wortKgPerL(extractFrac, 20);
    }
    double extractFrac = extractKg / wortKg;
    return PLATO_PER_FRAC * extractFrac;
  }
}
