package gylebook.estimate;

import gylebook.simulate.Change;
import gylebook.simulate.Leg;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/// The ways that lie in the hops still to come: how much of them, and when.
@AnyUnit("amounts of every unit")
final class HopWays {
  // Beyond this nobody goes on for the sake of a number (our judgement).
  private static final double MOST_HOPS_RATIO = 3;
  private static final double SHARE_STEP = 0.02;

  private final DayAhead day;
  private final List<Way> ways = new ArrayList<>();

  private HopWays(DayAhead day) {
    this.day = day;
  }

  static List<Way> of(DayAhead day) {
    HopWays all = new HopWays(day);
    all.weighHops();
    all.shiftHops();
    return all.ways;
  }

  private void weighHops() {
    boolean some = day.hopsToCome();
    ways.add(
        hops(
            Lever.Kind.MORE_HOPS,
            Set.of(Goal.BITTERNESS),
            Set.of(),
            some ? MOST_HOPS_RATIO - 1 : 0,
            some ? Lever.Limit.ENOUGH : Lever.Limit.NO_HOPS,
            more -> 1 + more));
    ways.add(
        hops(
            Lever.Kind.FEWER_HOPS,
            Set.of(),
            Set.of(Goal.BITTERNESS),
            some ? 1 : 0,
            some ? Lever.Limit.NOTHING_LEFT : Lever.Limit.NO_HOPS,
            less -> 1 - less));
  }

  private static Way hops(
      Lever.Kind kind,
      Set<Goal> raises,
      Set<Goal> lowers,
      double most,
      Lever.Limit binds,
      DoubleUnaryOperator factor) {
    return new Way(
        kind,
        raises,
        lowers,
        "hopFactor",
        factor,
        SHARE_STEP,
        most,
        binds,
        amount -> List.of(new Change.HopsTimes(factor.applyAsDouble(amount))));
  }

  /// All additions left move together; flame-out stays when it is.
  private void shiftHops() {
    Set<Goal> bitter = Set.of(Goal.BITTERNESS);
    List<Leg> waits = day.boil().stream().filter(leg -> leg.key().startsWith("hop.")).toList();
    if (waits.isEmpty()) {
      Lever.Limit none = day.hopsToCome() ? Lever.Limit.TIME_PAST : Lever.Limit.NO_HOPS;
      ways.add(
          Ways.timed(
              Lever.Kind.HOPS_EARLIER, "earlierSec", bitter, Set.of(), 0, none, Ways::nothing));
      ways.add(
          Ways.timed(Lever.Kind.HOPS_LATER, "laterSec", Set.of(), bitter, 0, none, Ways::nothing));
      return;
    }
    double lastSec = DayAhead.lastsSec(day.boil().getLast());
    String first = waits.getFirst().key();
    Leg longest =
        waits.stream()
            .filter(leg -> DayAhead.lastsSec(leg) > 0)
            .findFirst()
            .orElse(waits.getFirst());
    ways.add(
        Ways.timed(
            Lever.Kind.HOPS_EARLIER,
            "earlierSec",
            bitter,
            Set.of(),
            DayAhead.lastsSec(longest),
            Lever.Limit.NOTHING_LEFT,
            bySec -> shifted(longest.key(), -bySec, bySec)));
    ways.add(
        Ways.timed(
            Lever.Kind.HOPS_LATER,
            "laterSec",
            Set.of(),
            bitter,
            lastSec,
            Lever.Limit.NOTHING_LEFT,
            bySec -> shifted(first, day.countedSec(first, bySec), -bySec)));
  }

  private static List<Change> shifted(String key, double bySec, double lastBySec) {
    return List.of(new Change.Lasts(key, bySec), new Change.Lasts("flameOut", lastBySec));
  }
}
