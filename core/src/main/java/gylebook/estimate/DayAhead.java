package gylebook.estimate;

import gylebook.simulate.Action;
import gylebook.simulate.Leg;
import java.util.List;
import java.util.Optional;

/// Where a brew stands in its day and which legs are left: what can still be changed.
///
/// @param left what is left to do, what is left of the leg under way first
/// @param overSec by how much the leg under way has outlasted its plan
record DayAhead(List<Action> left, double overSec) {

  static DayAhead of(Belief belief) {
    double overSec = 0;
    if (belief.leg().until() instanceof Leg.Until.After after) {
      overSec = Math.max(0, belief.clockSec() - belief.legFromSec() - after.holdSec());
    }
    return new DayAhead(belief.left(), overSec);
  }

  private static boolean boils(String key) {
    return key.startsWith("hop.") || key.equals("sugarIn") || key.equals("flameOut");
  }

  List<Leg> legs() {
    return left.stream().filter(Leg.class::isInstance).map(Leg.class::cast).toList();
  }

  /// The milestone that is being worked towards; empty after the last.
  String now() {
    return legs().stream().map(Leg::key).findFirst().orElse("");
  }

  boolean ahead(String key) {
    return legs().stream().anyMatch(leg -> leg.key().equals(key));
  }

  /// Legs of the boil that are left.
  List<Leg> boil() {
    return legs().stream().filter(leg -> boils(leg.key())).toList();
  }

  boolean inBoil() {
    return boils(now());
  }

  /// What is left of a leg by the clock.
  static double lastsSec(Leg leg) {
    return leg.until() instanceof Leg.Until.After after ? after.holdSec() : 0;
  }

  /// The leg of the boil that every later addition waits for.
  Optional<Leg> beforeNextHops() {
    return boil().stream().filter(leg -> leg.key().startsWith("hop.")).findFirst();
  }

  double boilLeftSec() {
    return boil().stream().mapToDouble(DayAhead::lastsSec).sum();
  }

  boolean hopsToCome() {
    return left.stream().anyMatch(action -> action instanceof Action.AddHops);
  }

  /// The first leg left whose milestone begins so.
  Optional<String> first(String beginning) {
    return legs().stream().map(Leg::key).filter(key -> key.startsWith(beginning)).findFirst();
  }

  /// The milestone before this one; empty when that is past.
  String before(String key) {
    List<String> keys = legs().stream().map(Leg::key).toList();
    int index = keys.indexOf(key);
    return index > 0 ? keys.get(index - 1) : "";
  }

  /// A leg lasts so much longer from now or from its beginning.
  double countedSec(String key, double bySec) {
    return key.equals(now()) && bySec > 0 ? bySec + overSec : bySec;
  }
}
