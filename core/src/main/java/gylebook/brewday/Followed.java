package gylebook.brewday;

import gylebook.estimate.Held;
import gylebook.estimate.LiveGuard;
import gylebook.estimate.Suspicion;
import gylebook.estimate.Weighed;
import gylebook.estimate.Witness;
import gylebook.plan.Plan;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// The day as it is held to stand at one moment, and what is held to come.
///
/// @param clockSec time since the day began
/// @param leg milestone at the end of what is under way; empty after the last
/// @param says that milestone in words
/// @param legFromSec when what is under way began
/// @param timed whether a clock ends it, and not something that is seen
/// @param endsSec when it is held to end
/// @param lateSec how much later than by plan, in the middle
/// @param grainC in the grain, or the wort where the bag is out
/// @param soundC the same if all is as it was told, whatever leads
/// @param inBag whether the grain is in the kettle
/// @param hotL in the kettle as it stands
/// @param wortPlato strength of all wort, mixed
/// @param flowing whether the pump is held to run
/// @param doNow what is to be done to reach the milestone
/// @param due what passed by the clock and was not ticked off
/// @param offTime what went into the boil late or early, and what that changed
/// @param coming the points that lie ahead
/// @param outcomes what is held to come out
/// @param planned what the plan said would come out
/// @param witnesses what each instrument is worth
/// @param worthDoing cheap tests, the best first
/// @param shares what may be wrong, the likeliest first
/// @param guards what goes wrong now or soon, the loudest first
/// @param tooLate entries of ways that were taken too late and count nowhere
/// @param weighedBySeq what became of each reading
@AnyUnit("holds several quantities; each component names its unit")
public record Followed(
    double clockSec,
    String leg,
    String says,
    double legFromSec,
    boolean timed,
    Held endsSec,
    double lateSec,
    Held grainC,
    Held soundC,
    boolean inBag,
    Held hotL,
    Held wortPlato,
    boolean flowing,
    List<Plan.PlannedStep> doNow,
    List<Plan.PlannedStep> due,
    List<OffTime> offTime,
    List<Coming> coming,
    Map<Outcome, Held> outcomes,
    Map<Outcome, Double> planned,
    List<Witness> witnesses,
    List<Witness.WorthDoing> worthDoing,
    List<Suspicion.Share> shares,
    List<LiveGuard> guards,
    Set<Long> tooLate,
    Map<Long, Weighed> weighedBySeq) {

  /// Copies what it is given.
  public Followed {
    doNow = List.copyOf(doNow);
    due = List.copyOf(due);
    offTime = List.copyOf(offTime);
    coming = List.copyOf(coming);
    outcomes = Map.copyOf(outcomes);
    planned = Map.copyOf(planned);
    witnesses = List.copyOf(witnesses);
    worthDoing = List.copyOf(worthDoing);
    shares = List.copyOf(shares);
    guards = List.copyOf(guards);
    tooLate = Set.copyOf(tooLate);
    weighedBySeq = Map.copyOf(weighedBySeq);
  }

  /// What is wrong, where that leads; the numbers and the forecast are held by it.
  public Optional<Suspicion.Share> leads() {
    return shares.stream().filter(Suspicion.Share::leads).findFirst();
  }

  /// Whether something is left to be done.
  public boolean underWay() {
    return !leg.isEmpty();
  }

  /// Something that did not go into the boil when it should have; the forecast counts it.
  ///
  /// @param key its point
  /// @param says that point in words
  /// @param bySec later than by the boil's clock; below 0 sooner
  /// @param bitternessMgPerL what that changed of the bitterness to come, in the middle
  public record OffTime(String key, String says, double bySec, double bitternessMgPerL) {
    // By so much two analyses of one beer may differ (from memory).
    private static final double NOISE_MG_PER_L = 1;

    /// Whether it is more than an analysis would find by chance.
    public boolean matters() {
      return Math.abs(bitternessMgPerL) >= NOISE_MG_PER_L;
    }
  }

  /// A point that lies ahead.
  ///
  /// @param key its name
  /// @param says in words
  /// @param hands how many are needed
  /// @param doing what they do
  /// @param atSec when it is held to come
  /// @param plannedSec when it comes by plan
  public record Coming(
      String key, String says, int hands, String doing, Held atSec, double plannedSec) {}
}
