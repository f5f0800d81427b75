package gylebook.brewday;

import gylebook.estimate.Goal;
import gylebook.estimate.Held;
import gylebook.estimate.Lever;
import gylebook.estimate.Wanted;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.simulate.Ahead;
import gylebook.simulate.Change;
import gylebook.simulate.DayLog;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// The plan that the day goes on by: as it was fixed, or as it was changed at the kettle since.
///
/// @param steps what is to be done, in the order of the day
/// @param atSecByMilestone when each point is planned
/// @param outcomes what is planned to come out
/// @param wanted what the ways to put it right aim at
@AnyUnit("holds several quantities; each key names its unit")
record PlanInForce(
    List<Plan.PlannedStep> steps,
    Map<String, Double> atSecByMilestone,
    Map<Outcome, Double> outcomes,
    Wanted wanted) {
  static final List<Outcome> SHOWN =
      List.of(
          Outcome.STRENGTH,
          Outcome.PRE_BOIL_STRENGTH,
          Outcome.FERMENTER,
          Outcome.BITTERNESS,
          Outcome.COLOUR,
          Outcome.ALCOHOL,
          Outcome.TO_BOIL,
          Outcome.DAY);

  PlanInForce {
    steps = List.copyOf(steps);
    atSecByMilestone = Map.copyOf(atSecByMilestone);
    outcomes = Map.copyOf(outcomes);
  }

  /// The plan as it was fixed.
  static PlanInForce fixed(Plan plan) {
    Map<String, Double> atSec = new HashMap<>();
    for (Milestone milestone : plan.forecast().milestones()) {
      atSec.put(milestone.key(), milestone.atSec().middle());
    }
    Map<Outcome, Double> middles = new EnumMap<>(Outcome.class);
    SHOWN.forEach(
        outcome ->
            plan.forecast()
                .figure(outcome.key())
                .ifPresent(figure -> middles.put(outcome, figure.band().middle())));
    return new PlanInForce(plan.steps(), atSec, middles, Wanted.of(plan.forecast()));
  }

  /// The same after a way was taken.
  ///
  /// @param order points of the day
  /// @param leg point that is worked towards
  /// @param ahead the day as it then looks
  PlanInForce changed(PlanChange change, List<String> order, String leg, Ahead ahead) {
    Map<String, Double> atSec = new HashMap<>(atSecByMilestone);
    for (String key : ahead.keys()) {
      if (order.indexOf(key) >= order.indexOf(leg)) {
        atSec.put(key, Held.of(ahead.milestone(key, DayLog.Column.AT_SEC)).mean());
      }
    }
    Map<Outcome, Double> planned = new EnumMap<>(Outcome.class);
    SHOWN.forEach(outcome -> planned.put(outcome, Held.of(ahead.outcome(outcome)).mean()));
    for (Goal goal : Goal.values()) {
      planned.put(goal.outcome(), change.wanted().of(goal));
    }
    List<Plan.PlannedStep> changed = steps;
    for (Change each : change.changes()) {
      changed = done(changed, each, order, leg, change.way());
    }
    return new PlanInForce(shifted(changed, order, leg, atSec), atSec, planned, change.wanted());
  }

  private static List<Plan.PlannedStep> done(
      List<Plan.PlannedStep> steps, Change change, List<String> order, String leg, Lever.Kind way) {
    return switch (change) {
      case Change.Lasts lasts -> lasting(steps, lasts);
      case Change.HopsTimes(double factor) -> hopped(steps, order, leg, factor);
      case Change.Deed deed -> with(steps, step(deed, leg, way));
    };
  }

  /// Times that are held change with what lasts longer; the boil is counted as a whole.
  private static List<Plan.PlannedStep> lasting(List<Plan.PlannedStep> steps, Change.Lasts lasts) {
    boolean boils = DayOrder.inBoil(lasts.key()) || lasts.key().equals(DayOrder.FLAME_OUT);
    String held = boils ? DayOrder.FLAME_OUT : lasts.key();
    return steps.stream()
        .map(
            step ->
                step.milestone().equals(held) && step.key().endsWith("Sec")
                    ? step.withAmount(Math.max(0, step.amountNumber() + lasts.bySec()))
                    : step)
        .toList();
  }

  private static List<Plan.PlannedStep> hopped(
      List<Plan.PlannedStep> steps, List<String> order, String leg, double factor) {
    return steps.stream()
        .map(
            step ->
                step.key().equals("hopG") && order.indexOf(step.milestone()) >= order.indexOf(leg)
                    ? step.withAmount(factor * step.amountNumber())
                    : step)
        .toList();
  }

  private static Plan.PlannedStep step(Change.Deed deed, String leg, Lever.Kind way) {
    String at = deed.after().isEmpty() ? leg : deed.after();
    String when =
        deed.after().isEmpty() ? "Now, by the changed plan: " : "Then, by the changed plan: ";
    return switch (deed) {
      case Change.Pours(_, double liquorL) ->
          new Plan.PlannedStep(at, when + "cold liquor into the kettle,", "liquorL", liquorL);
      case Change.Dilutes(double liquorL) ->
          new Plan.PlannedStep(
              at, when + "boiled, cooled liquor into the fermenter,", "liquorL", liquorL);
      case Change.Sweetens sweetens ->
          new Plan.PlannedStep(
              at,
              when
                  + "heater off, stir in "
                  + (way == Lever.Kind.ADD_SUGAR ? "sugar" : "dry malt extract")
                  + ", heater on,",
              "goodsKg",
              sweetens.goodsKg());
      case Change.TakesOut(_, double wortL) ->
          new Plan.PlannedStep(
              at,
              when
                  + (way == Lever.Kind.FEWER_LITRES
                      ? "leave hot wort in the kettle,"
                      : "take hot wort out, with gloves,"),
              "wortL",
              wortL);
    };
  }

  /// A step comes after what its point has already.
  private static List<Plan.PlannedStep> with(List<Plan.PlannedStep> steps, Plan.PlannedStep added) {
    List<Plan.PlannedStep> all = new ArrayList<>(steps);
    int place = 0;
    for (int i = 0; i < all.size(); i++) {
      place = all.get(i).milestone().equals(added.milestone()) ? i + 1 : place;
    }
    all.add(place == 0 ? all.size() : place, added);
    return all;
  }

  /// What goes into the boil says how much of the boil is left then.
  private static List<Plan.PlannedStep> shifted(
      List<Plan.PlannedStep> steps, List<String> order, String leg, Map<String, Double> atSec) {
    Double flameOutSec = atSec.get(DayOrder.FLAME_OUT);
    return steps.stream()
        .map(
            step -> {
              Double stepSec = atSec.get(step.milestone());
              boolean ahead = order.indexOf(step.milestone()) >= order.indexOf(leg);
              return ahead
                      && DayOrder.inBoil(step.milestone())
                      && stepSec != null
                      && flameOutSec != null
                  ? step.withBoilLeft(flameOutSec - stepSec)
                  : step;
            })
        .toList();
  }
}
