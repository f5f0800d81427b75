package gylebook.estimate;

import gylebook.plan.Band;
import gylebook.simulate.Ahead;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// What to do about a day that runs off its plan.
///
/// First what is off and how surely; then what can still be done, each solved for its amount and
/// simulated from where every twin stands with the same draws. Nothing is offered that cannot be.
///
/// @param off what lies off the plan, the worst first; empty when nothing does
/// @param settles the cheap test that would narrow what matters next most; empty when none would
/// @param offered what can be done, what comes nearest to all that is wanted first; leaving it as
///   it is is one of them
/// @param refused what would help but cannot be done, and why
public record Levers(
    List<Off> off,
    Optional<Witness.WorthDoing> settles,
    List<Lever> offered,
    List<Refused> refused) {

  /// Copies the lists.
  public Levers {
    off = List.copyOf(off);
    offered = List.copyOf(offered);
    refused = List.copyOf(refused);
  }

  /// One thing that lies off the plan.
  ///
  /// @param goal which
  /// @param wanted what the plan has, in the goal's unit
  /// @param comes what is to be expected if nothing is done
  /// @param chanceFrac share of the twins that come out off by more than anybody tastes, on this
  ///   side
  @AnyUnit("each goal has its own unit")
  public record Off(Goal goal, double wanted, Band comes, double chanceFrac) {
    double missRatio() {
      return (comes.middle() - wanted) / goal.tolerance();
    }
  }

  /// What would help but cannot be done.
  ///
  /// @param kind what
  /// @param because why not
  public record Refused(Lever.Kind kind, Lever.Limit because) {}

  /// Everything that can be done from here on.
  ///
  /// @param belief as it stands; it is not moved
  /// @param wanted what the fixed plan has
  public static Levers of(Belief belief, Wanted wanted) {
    Ahead asItIs = belief.ahead();
    List<Off> off = off(asItIs, wanted);
    List<Lever> offered = new ArrayList<>();
    List<Refused> refused = new ArrayList<>();
    LeverTrial trial = new LeverTrial(belief, wanted, asItIs);
    offered.add(trial.accepted(off.isEmpty()));
    for (Way way : Ways.of(belief, asItIs)) {
      Optional<Off> towards = off.stream().filter(each -> way.helps(each)).findFirst();
      if (towards.isPresent()) {
        trial.tried(way, towards.get()).put(offered, refused);
      }
    }
    offered.sort(Comparator.comparingDouble(Lever::missNumber));
    Optional<Witness.WorthDoing> settles =
        off.isEmpty() ? Optional.empty() : Witnesses.worthDoing(belief).stream().findFirst();
    return new Levers(off, settles, offered, refused);
  }

  private static List<Off> off(Ahead asItIs, Wanted wanted) {
    List<Off> off = new ArrayList<>();
    for (Goal goal : Goal.values()) {
      double[] column = asItIs.outcome(goal.outcome());
      Off each = new Off(goal, wanted.of(goal), Lever.band(column), 0);
      if (Math.abs(each.missRatio()) > 1) {
        double side = Math.signum(each.missRatio());
        long beyond =
            Arrays.stream(column)
                .filter(came -> side * (came - wanted.of(goal)) > goal.tolerance())
                .count();
        off.add(new Off(goal, wanted.of(goal), each.comes(), (double) beyond / column.length));
      }
    }
    off.sort(Comparator.comparingDouble((Off each) -> -Math.abs(each.missRatio())));
    return off;
  }
}
