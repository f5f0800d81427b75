package gylebook.estimate;

import gylebook.science.Source;
import gylebook.science.Trust;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/// A small bank of beliefs, each with one supposition about what may be wrong, weighed by what is
/// read from the moment it was set up.
///
/// A pump, a heater and a lid may go wrong at any moment, and may be put right: after each reading
/// such a supposition that is worth less than one that began just now begins anew from the belief
/// that nothing is wrong, and that belief goes on from a supposition that is likelier to be over
/// than it is to have been right all the time. So each belief is that of the likeliest way to it.
///
/// The shares are those of the suppositions in the bank; what is not in it cannot be suspected.
public final class Suspicion {
  // As likely as the prior has it for a leg of an hour (assumed).
  private static final double LEG_SEC = 3600;
  private static final double BEGINS_WITHIN_SEC = Supposition.BAYES_FACTOR * LEG_SEC;
  // What is wrong is seen to by somebody within about an hour (assumed).
  private static final double ENDS_WITHIN_SEC = 3600;
  private static final double MOST_CHANCE_FRAC = 0.5;
  // Likelier than all others together.
  private static final double LEADS_FRAC = 0.5;

  private final Belief origin;
  private final List<Supposition> suppositions;
  private final List<Supposed> bank;
  private double renewedSec;
  // What was told since anybody asked; a bank that nobody asks costs nothing.
  private final List<Consumer<Suspicion>> untold;

  private Suspicion(
      Belief origin,
      List<Supposition> suppositions,
      List<Supposed> bank,
      List<Consumer<Suspicion>> untold) {
    this.origin = origin;
    this.suppositions = suppositions;
    this.bank = bank;
    this.untold = untold;
    this.renewedSec = origin.clockSec();
  }

  /// How much one supposition is worth.
  ///
  /// @param supposition what is supposed
  /// @param shareFrac its share of all in the bank
  public record Share(Supposition supposition, double shareFrac) {
    /// Whether something is wrong that is likelier than all else together.
    public boolean leads() {
      return supposition != Supposition.NOTHING && shareFrac > LEADS_FRAC;
    }
  }

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
    List<Supposed> copies = new ArrayList<>();
    bank.forEach(each -> copies.add(each.copy()));
    Suspicion other = new Suspicion(origin, suppositions, copies, new ArrayList<>(untold));
    other.renewedSec = renewedSec;
    return other;
  }

  /// Does to every belief in the bank what is done to the one it was set up on.
  public void tell(Consumer<Belief> each) {
    untold.add(suspicion -> suspicion.bank.forEach(supposed -> each.accept(supposed.belief())));
  }

  /// What is really switched on from now.
  public void switchTo(Switched switched) {
    tell(belief -> belief.switchTo(switched));
  }

  /// Moves all on to a time.
  public void advance(double toSec) {
    tell(belief -> belief.advance(toSec));
  }

  /// The leg under way was seen to end.
  public void ended(double atSec) {
    tell(belief -> belief.ended(atSec));
  }

  /// Weighs a reading in every belief.
  public void weigh(Reading reading) {
    tell(belief -> belief.weigh(reading));
    untold.add(Suspicion::renew);
  }

  /// The likeliest way to each supposition by now: it held before, or it follows another just now.
  @Source(
      key = "page-1954",
      at = "a sum that is begun anew where it falls below its start",
      trust = Trust.SECOND_HAND)
  private void renew() {
    Supposed sound = bank.getFirst();
    double sinceSec = sound.belief().clockSec() - renewedSec;
    if (!(sinceSec > 0)) {
      return;
    }
    renewedSec = sound.belief().clockSec();
    double beginsFrac = Math.min(MOST_CHANCE_FRAC, sinceSec / BEGINS_WITHIN_SEC);
    double endsFrac = Math.min(MOST_CHANCE_FRAC, sinceSec / ENDS_WITHIN_SEC);
    List<Supposed> passing = bank.stream().filter(each -> each.what().passes()).toList();
    Optional<Supposed> over =
        passing.stream()
            .max(Comparator.comparingDouble(Supposed::logRatio))
            .filter(each -> sound.likelierAfter(each, endsFrac));
    if (over.isPresent()) {
      sound.beginAfter(over.get(), endsFrac);
    }
    passing.stream()
        .filter(each -> each.likelierAfter(sound, beginsFrac))
        .forEach(each -> each.beginAfter(sound, beginsFrac));
  }

  private List<Supposed> told() {
    if (bank.isEmpty()) {
      suppositions.forEach(each -> bank.add(Supposed.since(each, origin)));
    }
    untold.forEach(each -> each.accept(this));
    untold.clear();
    return bank;
  }

  /// The suppositions by their worth, the likeliest first.
  public List<Share> shares() {
    double[] shareFrac =
        Particles.shareFrac(told().stream().mapToDouble(Supposed::logRatio).toArray());
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < shareFrac.length; i++) {
      shares.add(new Share(suppositions.get(i), shareFrac[i]));
    }
    shares.sort(Comparator.comparingDouble(Share::shareFrac).reversed());
    return List.copyOf(shares);
  }

  /// The belief to go on with where something that is wrong leads: its own. What may be put right
  /// is held to be put right from now on, so what it says of the rest of the day is what comes when
  /// somebody sees to it at once.
  ///
  /// @param onward what is to be done to it first
  public Optional<Belief> leading(Consumer<Belief> onward) {
    Share first = shares().getFirst();
    if (!first.leads()) {
      return Optional.empty();
    }
    Belief led = told().get(suppositions.indexOf(first.supposition())).belief().copy();
    onward.accept(led);
    return Optional.of(first.supposition().passes() ? Supposition.NOTHING.held(led) : led);
  }
}
