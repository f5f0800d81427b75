package gylebook.estimate;

import gylebook.simulate.Ahead;
import gylebook.simulate.Outcome;
import gylebook.simulate.Twins;
import gylebook.units.AnyUnit;
import java.util.List;
import java.util.Optional;

/// Tries ways on copies of a belief, all with the same draws, and solves each for its amount.
@AnyUnit("amounts of every unit")
final class LeverTrial {
  private static final int MOST_TRIES = 9;
  // The middle is met when it is this near, in tolerances.
  private static final double MET_RATIO = 0.2;
  // What takes off less than this share of the miss is no remedy.
  private static final double HELPS_FRAC = 0.15;
  // Enough twins to find an amount by; what comes of it is told by all of them.
  private static final int QUICK_COUNT = 60;

  private final Belief belief;
  private final Twins quick;
  private final Wanted wanted;
  private final Lever.Comes asItIs;
  private final Lever.Comes quickAsItIs;
  private final boolean bareAlready;

  LeverTrial(Belief belief, Wanted wanted, Ahead asItIs) {
    this.belief = belief;
    this.quick = belief.twins().first(QUICK_COUNT);
    this.quickAsItIs = Lever.Comes.of(quick.ahead(belief.onward()));
    this.wanted = wanted;
    this.asItIs = Lever.Comes.of(asItIs);
    this.bareAlready = bare(asItIs);
  }

  private static boolean bare(Ahead ahead) {
    return Lever.band(ahead.outcome(Outcome.COVER)).low() < 0;
  }

  private static boolean givenUp(Ahead ahead) {
    return Lever.band(ahead.outcome(Outcome.GAVE_UP)).high() > 0;
  }

  /// Nothing is done.
  Lever accepted(boolean meets) {
    return new Lever(
        Lever.Kind.ACCEPT,
        List.of(),
        "",
        Double.NaN,
        Optional.empty(),
        meets,
        Optional.empty(),
        asItIs,
        asItIs.missNumber(wanted));
  }

  /// Solves a way for its amount and simulates it.
  Way.Tried tried(Way way, Levers.Off towards) {
    double mostNumber = way.measured(way.mostNumber());
    if (!(mostNumber > 0)) {
      return way.refused(way.binds());
    }
    Goal goal = towards.goal();
    double off = asItIs.of(goal).middle() - towards.wanted();
    double offAtMost = middle(way, mostNumber, goal) - towards.wanted();
    double amount = mostNumber;
    if (off * offAtMost < 0) {
      amount = way.measured(solved(way, towards, off, mostNumber, offAtMost));
    } else if (Math.abs(offAtMost) > (1 - HELPS_FRAC) * Math.abs(off)) {
      return way.refused(Lever.Limit.HARDLY_HELPS);
    }
    if (!(amount > 0)) {
      return way.refused(Lever.Limit.HARDLY_HELPS);
    }
    return safe(way, amount, towards);
  }

  private Way.Tried safe(Way way, double amount, Levers.Off towards) {
    Ahead ahead = ahead(belief.twins().copy(), way, amount);
    if (bare(ahead) && !bareAlready) {
      return way.refused(Lever.Limit.ELEMENT_BARE);
    }
    if (givenUp(ahead)) {
      return way.refused(way.binds());
    }
    Lever.Comes comes = Lever.Comes.of(ahead);
    double leftRatio =
        Math.abs(comes.of(towards.goal()).middle() - towards.wanted()) / towards.goal().tolerance();
    return way.offered(amount, towards, leftRatio <= 1, comes, comes.missNumber(wanted));
  }

  /// The amount at which the middle meets what is wanted: Illinois' rule of false position.
  private double solved(Way way, Levers.Off towards, double off, double most, double offAtMost) {
    double from = 0;
    double to = most;
    double offFrom = off;
    double offTo = offAtMost;
    double tried = most;
    double near = MET_RATIO * towards.goal().tolerance();
    for (int i = 0; i < MOST_TRIES; i++) {
      tried = to - offTo * (to - from) / (offTo - offFrom);
      double offTried = middle(way, tried, towards.goal()) - towards.wanted();
      if (Math.abs(offTried) < near || to - from < way.stepNumber()) {
        break;
      }
      if (offTried * offTo < 0) {
        from = to;
        offFrom = offTo;
      } else {
        offFrom /= 2;
      }
      to = tried;
      offTo = offTried;
    }
    return tried;
  }

  /// What the few twins say of the change, on top of what all say if nothing is done.
  private double middle(Way way, double amount, Goal goal) {
    double[] column = ahead(quick.copy(), way, amount).outcome(goal.outcome());
    double change = Lever.band(column).middle() - quickAsItIs.of(goal).middle();
    return asItIs.of(goal).middle() + change;
  }

  private Ahead ahead(Twins tried, Way way, double amount) {
    way.changes().apply(amount).forEach(tried::change);
    return tried.ahead(belief.onward());
  }
}
