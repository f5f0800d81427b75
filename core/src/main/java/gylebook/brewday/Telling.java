package gylebook.brewday;

import gylebook.estimate.Belief;
import gylebook.estimate.Instrument;
import gylebook.estimate.Reading;
import gylebook.estimate.Suspicion;
import gylebook.estimate.Switched;
import gylebook.estimate.Weighed;
import gylebook.journal.Event;
import gylebook.simulate.Change;
import gylebook.simulate.Leg;
import gylebook.units.AnyUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/// A day as far as it has been told, note by note in the order they happened.
@AnyUnit("readings of every quantity")
final class Telling {
  private static final double MS_PER_SEC = 1000;

  private final Instant began;
  private final List<Instrument> instruments;
  private final List<String> order;
  private final Map<String, String> switches;
  private final Set<Long> tooLate;
  private final Belief belief;
  private final BoilClock boil;
  private Optional<Double> dutyFrac = Optional.empty();
  private double dutySec;
  private Suspicion suspicion;
  private PlanInForce plan;

  /// Nothing is told yet.
  Telling(Instant began, List<String> order, Belief belief, PlanInForce plan) {
    this.began = began;
    this.instruments = belief.instruments();
    this.order = order;
    this.switches = new HashMap<>();
    this.tooLate = new HashSet<>();
    this.belief = belief;
    this.boil = new BoilClock();
    this.suspicion = Suspicion.since(belief);
    this.plan = plan;
  }

  private Telling(Telling from) {
    this.began = from.began;
    this.instruments = from.instruments;
    this.order = from.order;
    this.switches = new HashMap<>(from.switches);
    this.tooLate = new HashSet<>(from.tooLate);
    this.belief = from.belief.copy();
    this.boil = from.boil.copy();
    this.suspicion = from.suspicion.copy();
    this.plan = from.plan;
    this.dutyFrac = from.dutyFrac;
    this.dutySec = from.dutySec;
  }

  /// The same once more, to come back to.
  Telling copy() {
    return new Telling(this);
  }

  /// The same at a later time until which nothing was noted; this one, unless that says something.
  Telling silentTo(double toSec) {
    boolean stale = dutyFrac.isPresent() && toSec > dutySec + Sighting.DUTY.goodForSec();
    Telling later = stale ? copy() : this;
    later.forget(toSec);
    return later;
  }

  /// What the brew is held to be.
  Belief belief() {
    return belief;
  }

  /// The boil's clock.
  BoilClock boil() {
    return boil;
  }

  /// What may be wrong.
  Suspicion suspicion() {
    return suspicion;
  }

  /// The plan that the day goes on by.
  PlanInForce plan() {
    return plan;
  }

  /// Ways that were taken when it was too late for them; they count nowhere.
  Set<Long> tooLate() {
    return tooLate;
  }

  /// A time of the day, since it began.
  static double sec(Instant began, Instant at) {
    return Math.max(0, Duration.between(began, at).toMillis() / MS_PER_SEC);
  }

  /// Tells one note more.
  ///
  /// @param seenSecByKey when points of the boil were noted, now or later
  /// @return what became of it, when it is a reading that the belief can follow
  Optional<Weighed> tell(DayNote note, Map<String, Double> seenSecByKey) {
    double atSec = Math.max(belief.clockSec(), sec(began, note.at()));
    boil.runOn(belief, atSec, seenSecByKey, suspicion::tell);
    forget(atSec);
    switch (note.event()) {
      case Event.PointReached(String milestone) -> {
        boolean seen = !DayOrder.unseen(note);
        reached(milestone, atSec, seen);
      }
      case Event.ReadingTaken reading when reading.instrument().equals(Sighting.DUTY.says()) ->
          duty(reading, atSec);
      case Event.ReadingTaken reading -> {
        return asked(reading, atSec).map(this::weigh);
      }
      case Event.SwitchSet(String what, String state) -> {
        belief.advance(atSec);
        suspicion.advance(atSec);
        switches.put(what, state);
        dutyFrac = what.equals("heater") ? Optional.empty() : dutyFrac;
        switchTo();
      }
      case Event.PlanChanged(_, String document) ->
          PlanChange.read(document).ifPresent(change -> take(note.seq(), change, atSec));
      // What happened in words is for people; it moves no number by itself.
      default -> {}
    }
    return Optional.empty();
  }

  private Weighed weigh(Reading asked) {
    suspicion.weigh(asked);
    return belief.weigh(asked);
  }

  /// Whoever sees the boil has also seen all that lies before it.
  private void reached(String milestone, double atSec, boolean seen) {
    int to = order.indexOf(milestone);
    boolean moved = false;
    while (belief.underWay() && order.indexOf(belief.leg().key()) <= to) {
      if (seen && belief.leg().key().equals(milestone)) {
        seen(belief.leg(), atSec);
      }
      boil.pass(belief, atSec, _ -> {});
      moved = true;
    }
    if (moved) {
      // What was switched by hand holds for the leg it was switched in.
      switches.clear();
      dutyFrac = Optional.empty();
      suspicion = Suspicion.since(belief);
    }
  }

  /// Who says that the strike is reached has read it off the thermometer that steers.
  private void seen(Leg leg, double atSec) {
    if (leg.until() instanceof Leg.Until.Reads(double readC)) {
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
            dutyFrac.or(() -> Optional.ofNullable(switches.get("heater")).flatMap(DayRules::duty)),
            on("pump"),
            on("lid"));
    belief.switchTo(switched);
    suspicion.switchTo(switched);
  }

  /// While a rest is held, what the controller gives is worth more than what it should give by
  /// plan; where it gives all it has, the minute between two words of it counts for more than they
  /// say. A word tells what was given since the word before, and holds until the next: whoever took
  /// it for the time after it alone would be a minute late, which looks like a lid that is off.
  private void duty(Event.ReadingTaken reading, double atSec) {
    OptionalDouble told = Sighting.DUTY.inside(reading.asRead());
    if (told.isPresent() && DayOrder.inRest(belief.leg().key())) {
      boolean firstWord =
          dutyFrac.isEmpty() && atSec - belief.legFromSec() > Sighting.DUTY.goodForSec();
      dutyFrac = Optional.of(Math.clamp(told.getAsDouble(), 0, 1));
      if (!firstWord) {
        switchTo();
      }
      belief.advance(atSec);
      suspicion.advance(atSec);
      dutySec = atSec;
      switchTo();
    }
  }

  /// A controller that says nothing more is held to do as planned.
  private void forget(double toSec) {
    double goodSec = dutySec + Sighting.DUTY.goodForSec();
    if (dutyFrac.isPresent() && toSec > goodSec) {
      belief.advance(Math.max(belief.clockSec(), goodSec));
      suspicion.advance(belief.clockSec());
      dutyFrac = Optional.empty();
      switchTo();
    }
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

  /// A way is taken: the day goes on otherwise, and by another plan.
  private void take(long seq, PlanChange change, double atSec) {
    if (!possible(belief, order, change)) {
      tooLate.add(seq);
      return;
    }
    belief.advance(atSec);
    String leg = belief.leg().key();
    change.changes().forEach(belief::change);
    suspicion = Suspicion.since(belief);
    plan = plan.changed(change, order, leg, belief.ahead());
  }

  /// Whether a way can still be taken where the brew stands.
  static boolean possible(Belief here, List<String> order, PlanChange change) {
    return change.changes().stream().allMatch(each -> possible(here, order, each));
  }

  private static boolean possible(Belief here, List<String> order, Change change) {
    if (!here.underWay()) {
      return change instanceof Change.Dilutes;
    }
    return switch (change) {
      case Change.Lasts(String key, _) -> here.liesAhead(key);
      case Change.HopsTimes _ -> true;
      case Change.TakesOut(String after, _) when after.isEmpty() ->
          order.indexOf(here.leg().key()) > order.indexOf(DayOrder.BAG_OUT);
      case Change.Deed deed -> deed.after().isEmpty() || here.liesAhead(deed.after());
    };
  }
}
