package gylebook.simulate;

import gylebook.plan.Demo;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Boil;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Optional;

/// The days of the two invented beers, member by member, for tests and measurements.
public final class DemoDays {
  private DemoDays() {}

  /// The copper bitter in the metric household: pump, counterflow chiller, a stand.
  public static BrewDay household() {
    return planned(Demo.copperBitter(), DemoRigs.household());
  }

  /// The wheat beer in the small flat: no pump, a coil.
  public static BrewDay flat() {
    return planned(Demo.wheatBeer(), DemoRigs.smallFlat());
  }

  /// The copper bitter with a step between: heated to slowly, then faster than the element can;
  /// boiled under the lid.
  public static BrewDay ramped() {
    Recipe bitter = Demo.copperBitter();
    List<Rest> rests =
        List.of(
            new Rest("", celsius(62), minutes(30)),
            new Rest("", celsius(68), minutes(30), Optional.of(minutes(25))),
            new Rest("mash-out", celsius(76), minutes(10), Optional.of(minutes(3))));
    BrewDay plain = household();
    return new BrewDay(
        covered(bitter.withRests(rests), Boil.Lid.ON), plain.rig(), plain.settings());
  }

  /// The same beer with the lid somewhere in the boil.
  public static Recipe covered(Recipe recipe, Boil.Lid lid) {
    Boil boil = recipe.boil();
    return recipe.withBoil(
        new Boil(boil.holdSec(), boil.evaporationLPerSec(), boil.dutyFrac(), lid));
  }

  private static Entered celsius(double restC) {
    return Entered.of(restC, Unit.known(Quantity.TEMPERATURE, "°C"));
  }

  private static Entered minutes(double restMin) {
    return Entered.of(restMin, Unit.known(Quantity.TIME, "min"));
  }

  private static BrewDay planned(Recipe recipe, Rig rig) {
    Planned planned = Planner.plan(recipe, rig, 1, Planner.USUAL_SEED, () -> false, _ -> {});
    if (planned instanceof Planned.Feasible feasible) {
      return new BrewDay(recipe, rig, feasible.plan().settings());
    }
    throw new AssertionError("the demo can be brewed");
  }

  /// One member's day, ready to run.
  ///
  /// @param member what the rig is in this member
  /// @param actions what is done
  /// @param start the filled kettle
  public record Ready(Member member, List<Action> actions, BrewState start) {
    /// Another kettle filled alike, for another run.
    public BrewState filled() {
      BrewState state = new BrewState();
      Deeds.fill(state, 1, start.kettleC);
      state.waterKg = start.waterKg;
      return state;
    }
  }

  /// Draws one member; -1 is the day without luck.
  public static Ready ready(BrewDay day, long seed, int number) {
    Doubts doubts = new Doubts(seed);
    doubts.turnTo(number);
    Member member = new Member();
    Lots lots = new Lots();
    member.read(day.rig(), doubts);
    lots.read(day.recipe(), day.settings(), doubts);
    BrewState start = new BrewState();
    Deeds.fill(start, day.settings().liquorL() * lots.liquorFactor, member.tapC);
    return new Ready(member, List.copyOf(day.actions(member, lots)), start);
  }
}
