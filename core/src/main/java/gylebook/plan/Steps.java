package gylebook.plan;

import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Outcome;
import gylebook.simulate.Settings;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;

/// The day's list: what to do, with its one figure.
@AnyUnit("each step names its figure with its unit")
final class Steps {
  private Steps() {}

  static List<Plan.PlannedStep> of(BrewDay day, Solver.Found found) {
    List<Plan.PlannedStep> steps = new ArrayList<>();
    Settings set = day.settings();
    Recipe recipe = day.recipe();
    steps.add(step("liquorIn", "Cold liquor into the kettle", "liquorL", set.liquorL()));
    if (set.topUpL() > 0) {
      steps.add(step("bagOut", "Hold back for after the bag", "topUpL", set.topUpL()));
    }
    steps.add(
        step(
            "strikeReady",
            "Lid on, pump on; heat until the thermometer reads",
            "strikeC",
            set.strikeC()));
    double maltKg =
        recipe.grist().stream()
            .filter(line -> line.kind().mashed())
            .mapToDouble(line -> line.massKg().inside() * set.gristFactor())
            .sum();
    steps.add(step("doughedIn", "Heater to zero, pump off; stir in the malt", "maltKg", maltKg));
    rests(steps, recipe, set);
    steps.add(step("bagOut", "Heater to zero, pump off; lift the bag and let it drain", "", NONE));
    steps.add(
        step(
            "boilReached",
            "Full heat, lid on until it nears the boil; then lid off and the duty to",
            "dutyFrac",
            set.boilDutyFrac()));
    hops(steps, recipe, set);
    steps.add(step("flameOut", "Heater off after", "boilSec", recipe.boil().holdSec().inside()));
    for (int i = 0; i < recipe.stands().size(); i++) {
      steps.add(
          step(
              "standAt." + i,
              "Cool and stand at",
              "standC",
              recipe.stands().get(i).targetC().inside()));
    }
    steps.add(
        step(
            "cast",
            "Run off; into the fermenter come",
            "fermenterL",
            found.out().at(Outcome.FERMENTER)));
    return steps;
  }

  private static final double NONE = Double.NaN;

  private static Plan.PlannedStep step(String milestone, String does, String key, double amount) {
    return new Plan.PlannedStep(milestone, does, key, amount);
  }

  private static void rests(List<Plan.PlannedStep> steps, Recipe recipe, Settings set) {
    for (int i = 0; i < recipe.rests().size(); i++) {
      Rest rest = recipe.rests().get(i);
      double setC = rest.targetC().inside() + set.mashOffsetK();
      steps.add(
          step(
              (i == 0 ? "settled" : "toRest." + i),
              "Set the controller, so that the grain holds its rest, to",
              "setC",
              setC));
      steps.add(step("rest." + i, "Hold for", "holdSec", rest.holdSec().inside()));
    }
  }

  private static void hops(List<Plan.PlannedStep> steps, Recipe recipe, Settings set) {
    for (int i = 0; i < recipe.hops().size(); i++) {
      Hop hop = recipe.hops().get(i);
      if (hop.when() instanceof Hop.When.InBoil boil) {
        double massG = hop.massG().inside() * set.hopFactor();
        long leftMin = Math.round(boil.leftSec().inside() / 60);
        String does = "With " + leftMin + " min of the boil left, " + hop.name() + " in:";
        steps.add(step("hop." + i, does, "hopG", massG));
      }
    }
  }
}
