package gylebook.brewday;

import gylebook.estimate.Belief;
import gylebook.estimate.Held;
import gylebook.estimate.Instrument;
import gylebook.estimate.Levers;
import gylebook.estimate.LiveGuards;
import gylebook.estimate.Reading;
import gylebook.estimate.Suspicion;
import gylebook.estimate.Switched;
import gylebook.estimate.Wanted;
import gylebook.estimate.Weighed;
import gylebook.estimate.Witnesses;
import gylebook.journal.Event;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.simulate.Ahead;
import gylebook.simulate.BrewDay;
import gylebook.simulate.DayLog;
import gylebook.simulate.Leg;
import gylebook.simulate.Outcome;
import gylebook.simulate.Sight;
import gylebook.units.AnyUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// Follows a day: what was noted moves a belief, and the belief says what is and what comes.
///
/// The same notes always give the same belief. Notes are taken in the order they happened, so a
/// late one has the day told anew from its beginning; one that comes last is only added.
@AnyUnit("readings of every quantity")
public final class Follower {
  /// The hand-held thermometer where the rig names none.
  public static final String HAND_HELD = "hand-held thermometer";

  // A kitchen thermometer that was never tried in ice (our judgement).
  private static final double HAND_HELD_DOUBT_K = 0.7;
  private static final long MS_PER_SEC = 1000;
  private static final List<Outcome> SHOWN =
      List.of(
          Outcome.STRENGTH,
          Outcome.PRE_BOIL_STRENGTH,
          Outcome.FERMENTER,
          Outcome.BITTERNESS,
          Outcome.COLOUR,
          Outcome.ALCOHOL,
          Outcome.TO_BOIL,
          Outcome.DAY);

  private final BrewDay day;
  private final Plan plan;
  private final long seed;
  private final Instant began;
  private final List<Instrument> instruments;
  private final List<String> order;
  private final List<DayNote> told = new ArrayList<>();
  private final Map<Long, Weighed> weighed = new HashMap<>();
  private final Map<String, String> switches = new HashMap<>();
  private Belief belief;
  private Suspicion suspicion;

  private Follower(BrewDay day, Plan plan, long seed, Instant began) {
    this.day = day;
    this.plan = plan;
    this.seed = seed;
    this.began = began;
    this.instruments = instruments(day.rig());
    this.order = plan.forecast().milestones().stream().map(Milestone::key).toList();
    this.belief = Belief.atStart(day, instruments, seed, Belief.USUAL_COUNT);
    this.suspicion = Suspicion.since(belief);
  }

  /// Follows the day of a plan.
  ///
  /// @param recipe that the plan pins
  /// @param rig that the plan pins
  /// @param days how many are simulated for what the plan says
  /// @param began when the day began
  /// @return empty when the plan cannot be met any more by this engine
  public static Optional<Follower> of(Recipe recipe, Rig rig, int days, long seed, Instant began) {
    Planned planned = Planner.plan(recipe, rig, days, seed, () -> false, _ -> {});
    Optional<Plan> plan =
        switch (planned) {
          case Planned.Feasible(Plan found) -> Optional.of(found);
          case Planned.Impossible impossible -> impossible.nearest();
        };
    return plan.map(p -> new Follower(Planner.day(recipe, rig, p.settings()), p, seed, began));
  }

  /// What can be read on a rig: its thermometers, and what every brewer has at hand.
  public static List<Instrument> instruments(Rig rig) {
    List<Instrument> all = new ArrayList<>();
    rig.probes().forEach(probe -> all.add(Instrument.of(probe)));
    if (all.stream().noneMatch(one -> one.role() == Instrument.Role.CARRIED)) {
      all.add(Instrument.handHeld(HAND_HELD, HAND_HELD_DOUBT_K));
    }
    all.add(Instrument.dipStick());
    all.add(Instrument.hydrometer());
    return List.copyOf(all);
  }

  /// The plan that is followed.
  public Plan plan() {
    return plan;
  }

  /// What can be read.
  public List<Instrument> instruments() {
    return instruments;
  }

  /// How the day stands.
  ///
  /// @param happened what stands of the notes, in the order it happened
  /// @param now for which moment
  public Followed at(List<DayNote> happened, Instant now) {
    return at(happened, now, Set.of());
  }

  /// The same, while some instruments should send by themselves.
  ///
  /// @param sending their names
  public synchronized Followed at(List<DayNote> happened, Instant now, Set<String> sending) {
    return followed(here(happened, now), sending);
  }

  private Belief here(List<DayNote> happened, Instant now) {
    take(happened);
    Belief here = belief.copy();
    double clockSec = Math.max(here.clockSec(), sec(now));
    runOn(here, clockSec);
    here.advance(clockSec);
    return here;
  }

  /// What could be done now to come to what was planned.
  public synchronized Levers levers(List<DayNote> happened, Instant now) {
    return Levers.of(here(happened, now), Wanted.of(plan.forecast()));
  }

  /// The boil is counted from where it was seen, whoever drops the hops: what is timed inside it
  /// passes by the clock.
  private static boolean runOn(Belief belief, double toSec) {
    boolean moved = false;
    while (belief.underWay()
        && inBoil(belief.leg().key())
        && belief.leg().until() instanceof Leg.Until.After(double holdSec)
        && belief.legFromSec() + holdSec <= toSec) {
      belief.ended(Math.max(belief.clockSec(), belief.legFromSec() + holdSec));
      moved = true;
    }
    return moved;
  }

  private static boolean inBoil(String key) {
    return key.startsWith("hop.") || key.equals("sugarIn");
  }

  private double sec(Instant at) {
    return Math.max(0, Duration.between(began, at).toMillis() / (double) MS_PER_SEC);
  }

  private void take(List<DayNote> happened) {
    boolean onlyMore =
        happened.size() >= told.size() && happened.subList(0, told.size()).equals(told);
    if (!onlyMore) {
      told.clear();
      weighed.clear();
      switches.clear();
      belief = Belief.atStart(day, instruments, seed, Belief.USUAL_COUNT);
      suspicion = Suspicion.since(belief);
    }
    for (DayNote note : happened.subList(told.size(), happened.size())) {
      tell(note, Math.max(belief.clockSec(), sec(note.at())));
      told.add(note);
    }
  }

  private void tell(DayNote note, double atSec) {
    if (runOn(belief, atSec)) {
      suspicion = Suspicion.since(belief);
    }
    switch (note.event()) {
      case Event.PointReached(String milestone) -> reached(milestone, atSec);
      case Event.ReadingTaken reading ->
          asked(reading, atSec)
              .ifPresent(
                  asked -> {
                    weighed.put(note.seq(), belief.weigh(asked));
                    suspicion.weigh(asked);
                  });
      case Event.SwitchSet(String what, String state) -> {
        belief.advance(atSec);
        suspicion.advance(atSec);
        switches.put(what, state);
        switchTo();
      }
      // What happened in words is for people; it moves no number by itself.
      default -> {}
    }
  }

  /// Whoever sees the boil has also seen all that lies before it.
  private void reached(String milestone, double atSec) {
    int to = order.indexOf(milestone);
    boolean moved = false;
    while (belief.underWay() && order.indexOf(belief.leg().key()) <= to) {
      seen(belief.leg(), milestone, atSec);
      belief.ended(atSec);
      moved = true;
    }
    if (moved) {
      // What was switched by hand holds for the leg it was switched in.
      switches.clear();
      suspicion = Suspicion.since(belief);
    }
  }

  /// Who says that the strike is reached has read it off the thermometer that steers.
  private void seen(Leg leg, String milestone, double atSec) {
    if (leg.key().equals(milestone) && leg.until() instanceof Leg.Until.Reads(double readC)) {
      instruments.stream()
          .filter(one -> one.role() == Instrument.Role.STEERS)
          .findFirst()
          .ifPresent(
              one -> belief.weigh(Reading.temperature(one.name(), one.place(), readC, atSec)));
    }
  }

  private void switchTo() {
    Switched switched =
        new Switched(
            Optional.ofNullable(switches.get("heater")).flatMap(DayRules::duty),
            on("pump"),
            on("lid"));
    belief.switchTo(switched);
    suspicion.switchTo(switched);
  }

  private Optional<Boolean> on(String what) {
    return Optional.ofNullable(switches.get(what))
        .filter(state -> !state.isEmpty())
        .map("on"::equals);
  }

  private Optional<Reading> asked(Event.ReadingTaken taken, double atSec) {
    return instruments.stream()
        .filter(instrument -> instrument.name().equals(taken.instrument()))
        .findFirst()
        .flatMap(instrument -> AsRead.reading(instrument, taken, atSec));
  }

  private Followed followed(Belief here, Set<String> sending) {
    double clockSec = here.clockSec();
    Ahead ahead = here.ahead();
    Leg leg = here.leg();
    boolean underWay = here.underWay();
    Held ends =
        underWay
            ? Held.of(ahead.milestone(leg.key(), DayLog.Column.AT_SEC))
            : new Held(clockSec, 0, clockSec, clockSec);
    double plannedSec = underWay ? plannedSec(leg.key()) : clockSec;
    return new Followed(
        clockSec,
        leg.key(),
        underWay ? says(leg.key()) : "the day is done",
        here.legFromSec(),
        leg.until() instanceof Leg.Until.After,
        ends,
        Double.isFinite(plannedSec) ? ends.mean() - plannedSec : 0,
        here.sees(Sight.GRAIN_C),
        inBag(leg.key()),
        here.sees(Sight.HOT_L),
        here.sees(Sight.MIXED_PLATO),
        leg.pump() != Leg.Pump.OFF,
        plan.steps().stream().filter(step -> step.milestone().equals(leg.key())).toList(),
        due(leg.key()),
        coming(here, ahead),
        outcomes(ahead),
        planned(),
        Witnesses.of(here),
        underWay ? Witnesses.worthDoing(here) : List.of(),
        suspicion.shares(),
        underWay
            ? LiveGuards.of(here, new Lookout(began, instruments, told, here).watch(sending))
            : List.of(),
        weighed);
  }

  private static boolean inBag(String key) {
    return key.equals("settled") || key.startsWith("rest.") || key.startsWith("toRest.");
  }

  private double plannedSec(String key) {
    return plan.forecast().milestone(key).map(m -> m.atSec().middle()).orElse(Double.NaN);
  }

  private String says(String key) {
    return plan.forecast().milestone(key).map(Milestone::says).orElse(key);
  }

  /// What passed by the clock in the boil and was not ticked off.
  private List<Plan.PlannedStep> due(String key) {
    if (!inBoil(key) && !key.equals("flameOut")) {
      return List.of();
    }
    List<String> seen =
        told.stream()
            .map(DayNote::event)
            .filter(Event.PointReached.class::isInstance)
            .map(event -> ((Event.PointReached) event).milestone())
            .toList();
    int here = order.indexOf(key);
    return plan.steps().stream()
        .filter(step -> inBoil(step.milestone()) && order.indexOf(step.milestone()) < here)
        .filter(step -> !seen.contains(step.milestone()))
        .toList();
  }

  private List<Followed.Coming> coming(Belief here, Ahead ahead) {
    int from = here.underWay() ? order.indexOf(here.leg().key()) : order.size();
    List<Followed.Coming> coming = new ArrayList<>();
    for (Milestone milestone : plan.forecast().milestones()) {
      if (order.indexOf(milestone.key()) >= from && ahead.keys().contains(milestone.key())) {
        coming.add(
            new Followed.Coming(
                milestone.key(),
                milestone.says(),
                milestone.hands(),
                milestone.doing(),
                Held.of(ahead.milestone(milestone.key(), DayLog.Column.AT_SEC)),
                milestone.atSec().middle()));
      }
    }
    return coming;
  }

  private static Map<Outcome, Held> outcomes(Ahead ahead) {
    Map<Outcome, Held> held = new EnumMap<>(Outcome.class);
    SHOWN.forEach(outcome -> held.put(outcome, Held.of(ahead.outcome(outcome))));
    return held;
  }

  private Map<Outcome, Double> planned() {
    Map<Outcome, Double> middles = new EnumMap<>(Outcome.class);
    SHOWN.forEach(
        outcome ->
            plan.forecast()
                .figure(outcome.key())
                .ifPresent(figure -> middles.put(outcome, figure.band().middle())));
    return middles;
  }
}
