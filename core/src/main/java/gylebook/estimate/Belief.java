package gylebook.estimate;

import gylebook.rig.Probe;
import gylebook.science.Hydrometer;
import gylebook.simulate.Action;
import gylebook.simulate.Ahead;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Change;
import gylebook.simulate.Leg;
import gylebook.simulate.Sight;
import gylebook.simulate.Twins;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/// What a brew under way is held to be: many twins of it, corrected by every reading.
///
/// Readings and happenings are told in the order of their times. Each reading moves all twins to
/// its time, under what was really switched on, and then corrects them. Numbers of the rig and the
/// errors of the instruments are corrected with them. The rest of the day can be looked at any
/// time.
@AnyUnit("readings and columns of every quantity")
public final class Belief {
  /// Enough twins for the thermometers and the rig's numbers.
  public static final int USUAL_COUNT = 200;

  // A miss of this square (99.7 % of honest ones are smaller) is set aside.
  private static final double GATE_NUMBER = 8.807;
  private static final double INFLATED_NUMBER = 9;
  // Readings closer together than this share their error of place.
  private static final double APART_SEC = 45;
  // What the model leaves out, in a root of a minute (the rig sheet's process noise).
  private static final double KETTLE_WANDER_K = 0.01;
  private static final double BED_WANDER_K = 0.02;
  private static final double SEC_PER_MIN = 60;
  // How sharply a brewer sees that it boils (assumed).
  private static final double SEEN_SEC = 45;
  private static final double GLASS_PER_K = 25e-6;
  private static final double SCALE_C = 20;

  private final Twins twins;
  private final Traits traits;
  private final Map<String, Double> lastSec;
  private final Map<String, Integer> asideInRow;
  private final UnaryOperator<Leg> meant;
  private final double noise2Ratio;
  private Switched switched;
  private double logLikelihood;
  private double surprise2;
  private int surprises;

  private Belief(Twins twins, Traits traits, UnaryOperator<Leg> meant, double noise2Ratio) {
    this.twins = twins;
    this.traits = traits;
    this.meant = meant;
    this.noise2Ratio = noise2Ratio;
    this.lastSec = new HashMap<>();
    this.asideInRow = new HashMap<>();
    this.switched = Switched.asPlanned();
  }

  /// The belief before the day, with cold liquor in the kettle.
  ///
  /// @param day as planned
  /// @param instruments all that may be read
  /// @param seed of the draws
  /// @param count how many twins
  public static Belief atStart(BrewDay day, List<Instrument> instruments, long seed, int count) {
    Twins twins = Twins.atStart(day, Traits.gauges(instruments), seed, count);
    return new Belief(twins, Traits.drawn(instruments, seed, count), UnaryOperator.identity(), 1);
  }

  /// The same belief before the day, with what it holds of rig and instruments by now.
  ///
  /// @param newNoise2Ratio how many times its variance each reading counts with
  Belief backAtStart(double newNoise2Ratio) {
    return new Belief(twins.backAtStart(), traits.copy(), UnaryOperator.identity(), newNoise2Ratio);
  }

  /// The same belief once more, to try something on.
  public Belief copy() {
    return as(twins.copy(), traits.copy(), meant);
  }

  /// The same belief under another supposition.
  Belief supposing(BrewDay day, List<Instrument> instruments, UnaryOperator<Leg> newMeant) {
    Belief other = as(twins.on(day), traits.with(instruments), newMeant);
    other.logLikelihood = 0;
    return other;
  }

  private Belief as(Twins newTwins, Traits newTraits, UnaryOperator<Leg> newMeant) {
    Belief other = new Belief(newTwins, newTraits, newMeant, noise2Ratio);
    other.lastSec.putAll(lastSec);
    other.asideInRow.putAll(asideInRow);
    other.switched = switched;
    other.logLikelihood = logLikelihood;
    other.surprise2 = surprise2;
    other.surprises = surprises;
    return other;
  }

  /// What is really switched on from now.
  public void switchTo(Switched newSwitched) {
    switched = newSwitched;
  }

  /// What is held to be switched on now.
  public Switched switched() {
    return switched;
  }

  private UnaryOperator<Leg> as() {
    Switched now = switched;
    return leg -> meant.apply(now.apply(leg));
  }

  /// What is held to be switched on from now, as the rest of the day is looked at.
  UnaryOperator<Leg> onward() {
    // What is switched otherwise than planned holds for the leg under way, not for the next.
    Switched now = switched.onward();
    String key = twins.leg().key();
    return leg -> meant.apply(leg.key().equals(key) ? now.apply(leg) : leg);
  }

  /// Moves on to a time.
  public void advance(double toSec) {
    double forSec = toSec - twins.clockSec();
    twins.advance(toSec, as());
    double rootMin = Math.sqrt(Math.max(0, forSec) / SEC_PER_MIN);
    if (rootMin > 0) {
      twins.wander(KETTLE_WANDER_K * rootMin, BED_WANDER_K * rootMin);
    }
  }

  /// The leg under way was seen to end. That it boiled says as much as a reading does.
  public void ended(double atSec) {
    if (twins.leg().until() instanceof Leg.Until.Boils) {
      double[] ends = twins.endsSec(as());
      SquareRootFilter.Met met =
          SquareRootFilter.met(ends, atSec, SEEN_SEC * SEEN_SEC * noise2Ratio);
      logLikelihood += met.logLikelihood();
      correct(ends, inflated(met));
    }
    advance(atSec);
    twins.ended();
    switched = Switched.asPlanned();
  }

  /// Weighs a reading and follows it by what it is worth.
  public Weighed weigh(Reading reading) {
    Instrument instrument = traits.named(reading.instrument());
    advance(reading.atSec());
    double[] expected =
        traits.expected(twins, reading.instrument(), reading.place(), reading.mixed());
    double noise = Traits.noise(instrument, reading);
    double noise2 = noise * noise * crowding(reading) * noise2Ratio;
    SquareRootFilter.Met met = SquareRootFilter.met(expected, atScale(instrument, reading), noise2);
    logLikelihood += met.logLikelihood();
    surprise2 += met.surpriseRatio() * met.surpriseRatio();
    surprises++;
    SquareRootFilter.Met used = inflated(met);
    correct(expected, used);
    lastSec.put(reading.instrument(), reading.atSec());
    return weighed(reading, met, used);
  }

  private Weighed weighed(Reading reading, SquareRootFilter.Met met, SquareRootFilter.Met used) {
    double before = reading.value() - met.miss();
    double doubt = Math.sqrt(met.spread2() + met.noise2());
    if (used.noise2() <= met.noise2()) {
      asideInRow.put(reading.instrument(), 0);
      return new Weighed.Used(reading, before, doubt);
    }
    int inRow = asideInRow.merge(reading.instrument(), 1, Integer::sum);
    return new Weighed.SetAside(reading, before, doubt, met.noise2() / used.noise2(), inRow);
  }

  /// A strength read warm is brought to the scale's temperature.
  static double atScale(Instrument instrument, Reading reading) {
    boolean strength = instrument.measures() == Instrument.Measures.STRENGTH;
    return strength && Double.isFinite(reading.sampleC())
        ? reading.value()
            + Hydrometer.correctionPlato(reading.value(), reading.sampleC(), SCALE_C, GLASS_PER_K)
        : reading.value();
  }

  /// Many readings in one minute do not make a better one: their error of place stays.
  private double crowding(Reading reading) {
    Double last = lastSec.get(reading.instrument());
    double gapSec = last == null ? APART_SEC : Math.max(1, reading.atSec() - last);
    return Math.max(1, APART_SEC / gapSec);
  }

  private static SquareRootFilter.Met inflated(SquareRootFilter.Met met) {
    double z = met.surpriseRatio();
    if (z * z <= GATE_NUMBER) {
      return met;
    }
    double total2 = met.miss() * met.miss() / INFLATED_NUMBER;
    return new SquareRootFilter.Met(met.miss(), met.spread2(), total2 - met.spread2());
  }

  private void correct(double[] expected, SquareRootFilter.Met met) {
    List<double[]> rows = new ArrayList<>(twins.correctable());
    rows.addAll(traits.rows());
    SquareRootFilter.correct(rows, expected, met, true);
    twins.settle();
  }

  /// The rest of the day as it looks now.
  public Ahead ahead() {
    return twins.ahead(onward());
  }

  /// What is held of something that could be looked at.
  public Held sees(Sight sight) {
    return Held.of(column(sight));
  }

  /// The same, twin by twin.
  double[] column(Sight sight) {
    return twins.sees(sight, as());
  }

  /// What is left to do, what is left of the leg under way first.
  List<Action> left() {
    return twins.left();
  }

  /// Whether a point of the day is still to be reached.
  public boolean liesAhead(String key) {
    return left().stream().anyMatch(action -> action instanceof Leg each && each.key().equals(key));
  }

  /// Something is done otherwise than planned: now, or later on.
  public void change(Change change) {
    twins.change(change);
  }

  /// How far an instrument is held to read high where it is.
  public Held readsHigh(String instrument) {
    return readsHigh(instrument, traits.named(instrument).place());
  }

  /// How far an instrument is held to read high at a place.
  public Held readsHigh(String instrument, Probe.Place place) {
    double[] placeC = twins.sees(Traits.sight(place));
    return Held.of(traits.high(twins, instrument, placeC));
  }

  /// Mean of the squared surprises so far; near 1 when all doubts are honest.
  public double meanSurpriseNumber() {
    return surprises == 0 ? 1 : surprise2 / surprises;
  }

  /// How many readings of an instrument in a row were set aside.
  public int asideInRowCount(String instrument) {
    return asideInRow.getOrDefault(instrument, 0);
  }

  /// How many readings were weighed.
  public int readings() {
    return surprises;
  }

  /// Logarithm of the likelihood of what was read since the supposition was made.
  double logLikelihood() {
    return logLikelihood;
  }

  /// The leg under way with what is really switched on.
  Leg legNow() {
    return as().apply(twins.leg());
  }

  /// When each twin would see the leg under way end by itself.
  double[] endsSec() {
    return twins.endsSec(as());
  }

  /// The leg under way.
  public Leg leg() {
    return twins.leg();
  }

  /// When the leg under way began.
  public double legFromSec() {
    return twins.legFromSec();
  }

  /// Whether some leg is left.
  public boolean underWay() {
    return twins.underWay();
  }

  /// The time believed in.
  public double clockSec() {
    return twins.clockSec();
  }

  /// All instruments.
  public List<Instrument> instruments() {
    return traits.instruments();
  }

  Twins twins() {
    return twins;
  }

  Traits traits() {
    return traits;
  }
}
