package gylebook.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// A small bank of beliefs, each with one supposition about what may be wrong, weighed by what is
/// read from the moment it was set up.
///
/// The shares are those of the suppositions in the bank; what is not in it cannot be suspected.
public final class Suspicion {
  private final List<Supposition> suppositions;
  private final List<Belief> beliefs;

  private Suspicion(List<Supposition> suppositions, List<Belief> beliefs) {
    this.suppositions = suppositions;
    this.beliefs = beliefs;
  }

  /// How much one supposition is worth.
  ///
  /// @param supposition what is supposed
  /// @param shareFrac its share of all in the bank
  public record Share(Supposition supposition, double shareFrac) {}

  /// Sets up the bank on a belief as it stands; the readings from now decide.
  public static Suspicion since(Belief belief) {
    List<Supposition> suppositions = new ArrayList<>();
    List<Belief> beliefs = new ArrayList<>();
    for (Supposition each : Supposition.values()) {
      boolean heightKnown = belief.twins().day().rig().site().stationKpa().isPresent();
      boolean empty = each == Supposition.HEIGHT_WRONG && heightKnown;
      if (!empty) {
        suppositions.add(each);
        beliefs.add(each.held(belief));
      }
    }
    return new Suspicion(suppositions, beliefs);
  }

  /// What is really switched on from now.
  public void switchTo(Switched switched) {
    beliefs.forEach(belief -> belief.switchTo(switched));
  }

  /// Moves all on to a time.
  public void advance(double toSec) {
    beliefs.forEach(belief -> belief.advance(toSec));
  }

  /// The leg under way was seen to end.
  public void ended(double atSec) {
    beliefs.forEach(belief -> belief.ended(atSec));
  }

  /// Weighs a reading in every belief.
  public void weigh(Reading reading) {
    beliefs.forEach(belief -> belief.weigh(reading));
  }

  /// The suppositions by their worth, the likeliest first.
  public List<Share> shares() {
    double[] logRatio = new double[beliefs.size()];
    for (int i = 0; i < logRatio.length; i++) {
      logRatio[i] = beliefs.get(i).logLikelihood() + Math.log(suppositions.get(i).priorNumber());
    }
    double[] shareFrac = Particles.shareFrac(logRatio);
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < shareFrac.length; i++) {
      shares.add(new Share(suppositions.get(i), shareFrac[i]));
    }
    shares.sort(Comparator.comparingDouble(Share::shareFrac).reversed());
    return List.copyOf(shares);
  }

  /// The belief to go on with: that of the supposition that leads.
  public Belief leading() {
    return beliefs.get(suppositions.indexOf(shares().getFirst().supposition())).copy();
  }
}
