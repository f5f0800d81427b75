package gylebook.brewday;

import gylebook.estimate.Belief;
import gylebook.estimate.Held;
import gylebook.simulate.Change;
import gylebook.simulate.Leg;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/// The boil counted from where it was seen: what is timed inside it passes by the clock, unless
/// somebody noted another moment.
///
/// What goes in late or early moves nothing that comes after it: the next leg is so much shorter or
/// longer, and the boil ends where its clock puts it.
@AnyUnit("times, and a forecast in the unit of its outcome")
final class BoilClock {
  // A minute sooner or later is on time (common practice, no source).
  static final double ON_TIME_SEC = 60;

  private final Map<String, Double> passedSecByKey;
  private final Map<String, OffTime> offTimeByKey;
  // What the leg under way began behind the clock, beyond what could be taken off it.
  private double behindSec;

  /// Nothing has passed yet.
  BoilClock() {
    this.passedSecByKey = new LinkedHashMap<>();
    this.offTimeByKey = new LinkedHashMap<>();
  }

  private BoilClock(BoilClock from) {
    this.passedSecByKey = new LinkedHashMap<>(from.passedSecByKey);
    this.offTimeByKey = new LinkedHashMap<>(from.offTimeByKey);
    this.behindSec = from.behindSec;
  }

  /// Something that did not go in when it should have.
  ///
  /// @param bySec later than by the clock; below 0 sooner
  /// @param bitternessMgPerL what that changes of the bitterness to come, in the middle
  record OffTime(double bySec, double bitternessMgPerL) {}

  /// The same once more.
  BoilClock copy() {
    return new BoilClock(this);
  }

  /// What did not go in on time so far, by its point.
  Map<String, OffTime> offTimeByKey() {
    return offTimeByKey;
  }

  /// Whether a point has passed so long from this moment that the brew has to be told anew.
  boolean passedOtherwise(String key, double seenSec) {
    Double passedSec = passedSecByKey.get(key);
    return passedSec != null && Math.abs(passedSec - seenSec) > ON_TIME_SEC;
  }

  /// Lets pass what passes until a time.
  ///
  /// @param seenSecByKey when points were noted, now or later
  /// @param also does to others what is done to the belief
  void runOn(
      Belief belief,
      double toSec,
      Map<String, Double> seenSecByKey,
      Consumer<Consumer<Belief>> also) {
    while (belief.underWay()
        && DayOrder.inBoil(belief.leg().key())
        && belief.leg().until() instanceof Leg.Until.After(double holdSec)) {
      String key = belief.leg().key();
      double clockSec = belief.legFromSec() + holdSec - behindSec;
      double seenSec = seenSecByKey.getOrDefault(key, clockSec);
      boolean onTime = Math.abs(seenSec - clockSec) <= ON_TIME_SEC;
      if (!onTime && Math.min(seenSec, clockSec) <= toSec) {
        weighOffTime(belief, key, seenSec, seenSec - clockSec);
      }
      double passesSec = onTime ? clockSec : seenSec;
      if (passesSec > toSec) {
        return;
      }
      pass(belief, Math.max(belief.clockSec(), passesSec), also);
    }
  }

  /// The leg of the boil that is under way ends; the next makes up for it.
  void pass(Belief belief, double atSec, Consumer<Consumer<Belief>> also) {
    Leg leg = belief.leg();
    double clockSec =
        leg.until() instanceof Leg.Until.After(double holdSec)
            ? belief.legFromSec() + holdSec - behindSec
            : atSec;
    passedSecByKey.put(leg.key(), atSec);
    both(belief, also, each -> each.ended(atSec));
    double lateSec = DayOrder.inBoil(leg.key()) ? atSec - clockSec : 0;
    behindSec = 0;
    Leg next = belief.leg();
    boolean timed = DayOrder.inBoil(next.key()) || next.key().equals(DayOrder.FLAME_OUT);
    if (lateSec != 0 && timed && next.until() instanceof Leg.Until.After(double nextSec)) {
      double cutSec = Math.min(lateSec, nextSec);
      behindSec = lateSec - cutSec;
      both(belief, also, each -> each.change(new Change.Lasts(next.key(), -cutSec)));
    }
  }

  private static void both(Belief belief, Consumer<Consumer<Belief>> also, Consumer<Belief> what) {
    what.accept(belief);
    also.accept(what);
  }

  /// The same twins with the same draws, once on time and once as it was.
  private void weighOffTime(Belief belief, String key, double seenSec, double bySec) {
    if (offTimeByKey.containsKey(key)) {
      return;
    }
    Belief onTime = belief.copy();
    copy().pass(onTime, Math.max(belief.clockSec(), seenSec - bySec), _ -> {});
    Belief really = belief.copy();
    copy().pass(really, Math.max(belief.clockSec(), seenSec), _ -> {});
    offTimeByKey.put(key, new OffTime(bySec, bitterness(really) - bitterness(onTime)));
  }

  private static double bitterness(Belief belief) {
    return Held.of(belief.ahead().outcome(Outcome.BITTERNESS)).mean();
  }
}
