package gylebook.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/// A small bank of beliefs, each with one supposition about what may be wrong, weighed by what is
/// read from the moment it was set up.
///
/// The shares are those of the suppositions in the bank; what is not in it cannot be suspected.
public final class Suspicion {
  private final Belief origin;
  private final List<Supposition> suppositions;
  private final List<Belief> beliefs;
  // What was told since anybody asked; a bank that nobody asks costs nothing.
  private final List<Consumer<Belief>> untold;

  private Suspicion(
      Belief origin,
      List<Supposition> suppositions,
      List<Belief> beliefs,
      List<Consumer<Belief>> untold) {
    this.origin = origin;
    this.suppositions = suppositions;
    this.beliefs = beliefs;
    this.untold = untold;
  }

  /// How much one supposition is worth.
  ///
  /// @param supposition what is supposed
  /// @param shareFrac its share of all in the bank
  public record Share(Supposition supposition, double shareFrac) {}

  /// Sets up the bank on a belief as it stands; the readings from now decide.
  public static Suspicion since(Belief belief) {
    boolean heightKnown = belief.twins().day().rig().site().stationKpa().isPresent();
    List<Supposition> suppositions =
        Arrays.stream(Supposition.values())
            .filter(each -> each != Supposition.HEIGHT_WRONG || !heightKnown)
            .toList();
    return new Suspicion(belief.copy(), suppositions, new ArrayList<>(), new ArrayList<>());
  }

  /// The same bank once more.
  public Suspicion copy() {
    List<Belief> copies = new ArrayList<>();
    beliefs.forEach(belief -> copies.add(belief.copy()));
    return new Suspicion(origin, suppositions, copies, new ArrayList<>(untold));
  }

  /// What is really switched on from now.
  public void switchTo(Switched switched) {
    untold.add(belief -> belief.switchTo(switched));
  }

  /// Moves all on to a time.
  public void advance(double toSec) {
    untold.add(belief -> belief.advance(toSec));
  }

  /// The leg under way was seen to end.
  public void ended(double atSec) {
    untold.add(belief -> belief.ended(atSec));
  }

  /// Weighs a reading in every belief.
  public void weigh(Reading reading) {
    untold.add(belief -> belief.weigh(reading));
  }

  private List<Belief> told() {
    if (beliefs.isEmpty()) {
      suppositions.forEach(each -> beliefs.add(each.held(origin)));
    }
    for (Consumer<Belief> each : untold) {
      beliefs.forEach(each);
    }
    untold.clear();
    return beliefs;
  }

  /// The suppositions by their worth, the likeliest first.
  public List<Share> shares() {
    List<Belief> told = told();
    double[] logRatio = new double[told.size()];
    for (int i = 0; i < logRatio.length; i++) {
      logRatio[i] = told.get(i).logLikelihood() + Math.log(suppositions.get(i).priorNumber());
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
    int leads = suppositions.indexOf(shares().getFirst().supposition());
    return told().get(leads).copy();
  }
}
