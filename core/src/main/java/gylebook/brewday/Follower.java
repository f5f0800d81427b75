package gylebook.brewday;

import gylebook.estimate.Belief;
import gylebook.estimate.Held;
import gylebook.estimate.Hindsight;
import gylebook.estimate.Instrument;
import gylebook.estimate.Levers;
import gylebook.estimate.LiveGuard;
import gylebook.estimate.LiveGuards;
import gylebook.estimate.Suspicion;
import gylebook.estimate.Watch;
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
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/// Follows a day: what was noted moves a belief, and the belief says what is and what comes.
///
/// The same notes always give the same belief. Notes are taken in the order they happened, so a
/// late one has the day told anew from a while before it; one that comes last is only added.
@AnyUnit("readings of every quantity")
public final class Follower {
  /// The hand-held thermometer where the rig names none.
  public static final String HAND_HELD = "hand-held thermometer";

  // A kitchen thermometer that was never tried in ice (our judgement).
  private static final double HAND_HELD_DOUBT_K = 0.7;
  // A copy of a belief is some megabytes; so many readings are told in a blink (our judgement).
  private static final int KEPT_EVERY = 64;

  private final BrewDay day;
  private final long seed;
  private final Plan plan;
  private final Instant began;
  private final List<Instrument> instruments;
  private final List<String> order;
  private final DayOrder points;
  private final List<DayNote> told = new ArrayList<>();
  private final Map<Long, Weighed> weighed = new HashMap<>();
  private final NavigableMap<Integer, Telling> kept = new TreeMap<>();
  private Map<String, Double> seenSecByKey = Map.of();
  private Telling telling;

  private Follower(BrewDay day, Plan plan, long seed, Instant began) {
    this.day = day;
    this.seed = seed;
    this.plan = plan;
    this.began = began;
    this.instruments = instruments(day.rig());
    this.order = plan.forecast().milestones().stream().map(Milestone::key).toList();
    Belief start = Belief.atStart(day, instruments, seed, Belief.USUAL_COUNT);
    PlanInForce fixed = PlanInForce.fixed(plan);
    this.points = new DayOrder(began, order, fixed.atSecByMilestone());
    this.telling = new Telling(began, order, start, fixed);
    this.kept.put(0, telling.copy());
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

  /// What a finished day says of itself and of its rig, once all its notes are looked at together;
  /// takes seconds.
  ///
  /// @param basis where it was learnt, in words; kept with what the rig learns
  public LookedBack lookBack(List<DayNote> happened, String basis) {
    return new LookingBack(day, plan, began, instruments, seed)
        .at(happened, Hindsight.TWINS_COUNT, basis);
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

  /// What is forecast now, to be kept: the same numbers as [#at] tells.
  public synchronized GivenForecast given(List<DayNote> happened, Instant now) {
    Belief here = here(happened, now).held();
    Ahead ahead = here.ahead();
    return GivenForecast.of(ahead, here.clockSec(), pointsAhead(here, ahead));
  }

  /// How the brew stands: if all is as it was told, and by what leads.
  ///
  /// @param sound if all is as it was told; the guards compare with that
  /// @param held by what leads
  private record Here(Belief sound, Belief held, List<Suspicion.Share> shares) {}

  private Here here(List<DayNote> happened, Instant now) {
    take(happened);
    double nowSec = Telling.sec(began, now);
    List<Suspicion.Share> shares = telling.suspicion().shares();
    Telling asOfNow = telling.silentTo(nowSec);
    Belief sound = asOfNow.belief().copy();
    double clockSec = Math.max(sound.clockSec(), nowSec);
    Belief held = asOfNow.suspicion().leading(led -> goOn(led, clockSec)).orElse(sound);
    goOn(sound, clockSec);
    return new Here(sound, held, shares);
  }

  private void goOn(Belief belief, double clockSec) {
    telling.boil().copy().runOn(belief, clockSec, seenSecByKey, _ -> {});
    belief.advance(clockSec);
  }

  /// What could be done now to come to what is planned.
  public synchronized Levers levers(List<DayNote> happened, Instant now) {
    return Levers.of(here(happened, now).held(), telling.plan().wanted());
  }

  /// Whether a way can still be taken at a time.
  public synchronized boolean canTake(List<DayNote> happened, Instant now, PlanChange change) {
    return Telling.possible(here(happened, now).sound(), order, change);
  }

  private void take(List<DayNote> noted) {
    List<DayNote> happened = points.withUnseen(noted);
    int alike = 0;
    int most = Math.min(told.size(), happened.size());
    while (alike < most && told.get(alike).equals(happened.get(alike))) {
      alike++;
    }
    Map<String, Double> seen = points.seenInBoil(happened);
    List<String> otherwise = otherwise(seen);
    if (alike < told.size() || !otherwise.isEmpty()) {
      goBack(alike, otherwise);
    }
    seenSecByKey = seen;
    for (DayNote note : happened.subList(told.size(), happened.size())) {
      telling.tell(note, seenSecByKey).ifPresent(came -> weighed.put(note.seq(), came));
      told.add(note);
      keep();
    }
  }

  /// Points of the boil that passed, or wait, otherwise than it is noted by now.
  private List<String> otherwise(Map<String, Double> seen) {
    List<String> otherwise = new ArrayList<>();
    for (String key : order) {
      Double before = seenSecByKey.get(key);
      Double now = seen.get(key);
      boolean anew = before == null && now != null && telling.boil().passedOtherwise(key, now);
      if (anew || (before != null && !before.equals(now))) {
        otherwise.add(key);
      }
    }
    return otherwise;
  }

  /// Goes back to where at most so many notes were told, and none of these points was under way.
  private void goBack(int alike, List<String> otherwise) {
    kept.tailMap(alike, false).clear();
    int first = otherwise.stream().mapToInt(order::indexOf).min().orElse(order.size());
    kept.values().removeIf(each -> !comesBefore(each.belief(), first));
    telling = kept.lastEntry().getValue().copy();
    List<DayNote> untold = told.subList(kept.lastKey(), told.size());
    untold.forEach(note -> weighed.remove(note.seq()));
    untold.clear();
  }

  private boolean comesBefore(Belief belief, int point) {
    boolean all = point >= order.size();
    return all || (belief.underWay() && order.indexOf(belief.leg().key()) < point);
  }

  /// Keeps where the day stood now and then, the farther back the less often, so that a late note
  /// does not have the whole day told anew.
  private void keep() {
    if (told.size() % KEPT_EVERY != 0) {
      return;
    }
    int turn = told.size() / KEPT_EVERY;
    kept.put(told.size(), telling.copy());
    kept.keySet()
        .removeIf(
            count -> {
              int old = count / KEPT_EVERY;
              return old > 0 && turn - old > 2 * Integer.lowestOneBit(old);
            });
  }

  private Followed followed(Here stands, Set<String> sending) {
    Belief here = stands.held();
    double clockSec = here.clockSec();
    Ahead ahead = here.ahead();
    Leg leg = here.leg();
    boolean underWay = here.underWay();
    Held ends =
        underWay
            ? Held.of(ahead.milestone(leg.key(), DayLog.Column.AT_SEC))
            : new Held(clockSec, 0, clockSec, clockSec);
    double plannedSec = underWay ? plannedSec(leg.key()) : clockSec;
    List<Suspicion.Share> shares = stands.shares();
    return new Followed(
        clockSec,
        leg.key(),
        underWay ? says(leg.key()) : "the day is done",
        here.legFromSec(),
        leg.until() instanceof Leg.Until.After,
        ends,
        Double.isFinite(plannedSec) ? ends.mean() - plannedSec : 0,
        here.sees(Sight.GRAIN_C),
        stands.sound().sees(Sight.GRAIN_C),
        DayOrder.inBag(leg.key()),
        here.sees(Sight.HOT_L),
        here.sees(Sight.MIXED_PLATO),
        leg.pump() != Leg.Pump.OFF,
        telling.plan().steps().stream().filter(step -> step.milestone().equals(leg.key())).toList(),
        due(leg.key()),
        offTime(),
        coming(here, ahead),
        outcomes(ahead),
        telling.plan().outcomes(),
        Witnesses.of(here),
        underWay ? Witnesses.worthDoing(here) : List.of(),
        shares,
        underWay ? guards(stands.sound(), sending, shares) : List.of(),
        telling.tooLate(),
        weighed);
  }

  private List<LiveGuard> guards(Belief here, Set<String> sending, List<Suspicion.Share> shares) {
    Watch watch = new Lookout(began, instruments, told, here).watch(sending);
    return LiveGuards.of(here, watch.withShares(shares));
  }

  private double plannedSec(String key) {
    return telling.plan().atSecByMilestone().getOrDefault(key, Double.NaN);
  }

  private String says(String key) {
    return plan.forecast().milestone(key).map(Milestone::says).orElse(key);
  }

  /// What passed by the clock in the boil and was not ticked off.
  private List<Plan.PlannedStep> due(String key) {
    if (!DayOrder.inBoil(key) && !key.equals("flameOut")) {
      return List.of();
    }
    List<String> seen =
        told.stream()
            .filter(note -> !DayOrder.unseen(note))
            .map(DayNote::event)
            .filter(Event.PointReached.class::isInstance)
            .map(event -> ((Event.PointReached) event).milestone())
            .toList();
    int here = order.indexOf(key);
    return telling.plan().steps().stream()
        .filter(step -> DayOrder.inBoil(step.milestone()) && order.indexOf(step.milestone()) < here)
        .filter(step -> !seen.contains(step.milestone()))
        .toList();
  }

  private List<Followed.OffTime> offTime() {
    List<Followed.OffTime> all = new ArrayList<>();
    telling
        .boil()
        .offTimeByKey()
        .forEach(
            (key, off) ->
                all.add(new Followed.OffTime(key, says(key), off.bySec(), off.bitternessMgPerL())));
    return all;
  }

  private List<String> pointsAhead(Belief here, Ahead ahead) {
    int from = here.underWay() ? order.indexOf(here.leg().key()) : order.size();
    return order.subList(from, order.size()).stream().filter(ahead.keys()::contains).toList();
  }

  private List<Followed.Coming> coming(Belief here, Ahead ahead) {
    List<String> points = pointsAhead(here, ahead);
    List<Followed.Coming> coming = new ArrayList<>();
    for (Milestone milestone : plan.forecast().milestones()) {
      if (points.contains(milestone.key())) {
        coming.add(
            new Followed.Coming(
                milestone.key(),
                milestone.says(),
                milestone.hands(),
                milestone.doing(),
                Held.of(ahead.milestone(milestone.key(), DayLog.Column.AT_SEC)),
                plannedSec(milestone.key())));
      }
    }
    return coming;
  }

  private static Map<Outcome, Held> outcomes(Ahead ahead) {
    Map<Outcome, Held> held = new EnumMap<>(Outcome.class);
    PlanInForce.SHOWN.forEach(outcome -> held.put(outcome, Held.of(ahead.outcome(outcome))));
    return held;
  }
}
