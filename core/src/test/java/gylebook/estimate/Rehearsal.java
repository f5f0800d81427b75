package gylebook.estimate;

import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.simulate.Ahead;
import gylebook.simulate.BrewDay;
import gylebook.simulate.DayLog;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Leg;
import gylebook.simulate.Outcome;
import gylebook.simulate.Settings;
import gylebook.simulate.Sight;
import gylebook.simulate.Twins;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.jspecify.annotations.Nullable;

/// One day of a hidden truth with another geometry, told to a belief reading by reading.
///
/// The truth is a brew of the same simulator on [HiddenRig], with numbers drawn from its own seed;
/// what differs from the belief is geometry, numbers, instruments and their scatter, not the
/// equations. The belief is told: the logged duty of each stretch, when legs ended, readings.
final class Rehearsal {
  static final String PROBE = "controller";
  static final String DIAL = "dial";
  static final String HAND = "hand-held";
  private static final double STRETCH_SEC = 120;
  private static final double BOIL_STRETCH_SEC = 300;

  /// What the belief is told wrongly, or what breaks; the truth has it.
  interface Fault {
    /// What is really switched on.
    UnaryOperator<Leg> truth();

    /// The truth's day in place of the planned.
    default BrewDay day(BrewDay day) {
      return day;
    }

    /// So much the dial reads higher than any dial of its kind.
    default double dialK() {
      return 0;
    }

    /// How good the dial is held to be.
    default double dialDoubtK() {
      return 2.5;
    }

    /// The duty that the controller says it gives in a leg.
    default double toldFrac(Leg leg, double dutyFrac) {
      return dutyFrac;
    }
  }

  static final Fault NONE = UnaryOperator::identity;

  /// A range that was stated and what came.
  record Stated(String of, Held held, double came) {}

  /// Three forecasts of one thing and what came.
  record Scored(String of, List<Double> belief, List<Double> plan, double faceValue, double came) {}

  private static List<Double> listed(double[] column) {
    return Arrays.stream(column).boxed().toList();
  }

  final List<Stated> stated = new ArrayList<>();
  final List<Scored> scored = new ArrayList<>();
  final List<Weighed> weighed = new ArrayList<>();
  final Belief belief;
  final Twins truth;
  final Traits real;

  /// Everything the belief was told, in order.
  final List<Consumer<Belief>> told = new ArrayList<>();

  private final RandomGenerator random;
  private final UnaryOperator<Leg> really;
  private final double dialHighK;
  private final boolean dutyLogged;
  private final Map<String, Double> endedSec = new HashMap<>();
  private final Map<String, double[][]> forecasts = new HashMap<>();
  private final double[][] plan;
  private final double[] middle;
  private double dialledSec = -1e9;
  private double lastDipL = Double.NaN;
  private double lastPlato = Double.NaN;
  private double lastC = Double.NaN;
  private final Fault fault;
  private @Nullable Suspicion suspicion;

  /// What the bank held at the end of each leg, set up anew at its beginning.
  final Map<String, List<Suspicion.Share>> suspected = new LinkedHashMap<>();

  /// The belief as it was when a leg ended.
  final Map<String, Belief> at = new HashMap<>();

  Rehearsal(long seed, int count, Fault fault, boolean dutyLogged) {
    this(seed, count, fault, dutyLogged, day(), Optional.empty());
  }

  /// A day on a rig that is believed to be one thing and is another.
  Rehearsal(long seed, int count, Rig believed, Rig hidden) {
    this(seed, count, NONE, true, day(believed), Optional.of(hidden));
  }

  private Rehearsal(
      long seed, int count, Fault fault, boolean dutyLogged, BrewDay day, Optional<Rig> hiddenRig) {
    random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    List<Instrument> kit = instruments(day.rig(), fault.dialDoubtK());
    belief = Belief.atStart(day, kit, 20, count);
    Ahead first = belief.ahead();
    plan = columns(first);
    Ensemble nominal = Ensemble.nominal(day);
    int bagOut = nominal.milestoneKeys().indexOf("bagOut");
    middle =
        new double[] {
          nominal.outcome(Outcome.TO_BOIL)[0],
          nominal.milestone(bagOut, DayLog.Column.HOT_L)[0],
          nominal.milestone(bagOut, DayLog.Column.WORT_C)[0],
          nominal.outcome(Outcome.FERMENTER)[0],
          nominal.outcome(Outcome.BOILS_AT)[0]
        };
    BrewDay hidden =
        fault.day(
            new BrewDay(
                day.recipe(),
                hiddenRig.orElseGet(() -> HiddenRig.of(day.rig(), random)),
                day.settings()));
    truth = Twins.atStart(hidden, Traits.gauges(kit), 1000 + seed, 1);
    // A rig whose numbers are the same every day has a thermometer that is off by the same.
    List<Instrument> realKit =
        hiddenRig.map(rig -> instruments(rig, fault.dialDoubtK())).orElse(kit);
    real = Traits.drawn(realKit, 1000 + seed, 1);
    dialHighK = fault.dialK();
    really = fault.truth();
    this.fault = fault;
    this.dutyLogged = dutyLogged;
  }

  static BrewDay day() {
    return day(DemoRigs.household());
  }

  private static BrewDay day(Rig rig) {
    return new BrewDay(Demo.copperBitter(), rig, new Settings(27, 70.5, 0.4, 1, 1, 0.75, 0));
  }

  static List<Instrument> instruments() {
    return instruments(DemoRigs.household(), 2.5);
  }

  /// With a dial that is held to be as good as this.
  private static List<Instrument> instruments(Rig rig, double dialDoubtK) {
    List<Instrument> all = new ArrayList<>();
    rig.probes().forEach(probe -> all.add(Instrument.of(probe)));
    all.add(
        Instrument.of(
            new Probe(
                DIAL,
                Probe.Kind.DIAL,
                Probe.Place.KETTLE,
                Parameter.assumedPositive(25, 0.3, "dial"),
                Parameter.assumed(0, dialDoubtK, "its screw"),
                false)));
    all.add(Instrument.handHeld(HAND, 0.5));
    all.add(Instrument.dipStick());
    all.add(Instrument.hydrometer());
    return all;
  }

  /// Runs the day to the end of the boil's knock-out, or to this milestone.
  Rehearsal upTo(String milestone) {
    while (truth.underWay() && !endedSec.containsKey(milestone)) {
      stretch();
    }
    return this;
  }

  Rehearsal toTheEnd() {
    while (truth.underWay()) {
      stretch();
    }
    Ahead came = came();
    forecasts.forEach((of, columns) -> score(of, columns, came));
    return this;
  }

  private void tell(Consumer<Belief> what) {
    what.accept(belief);
    told.add(what);
  }

  /// What really came out.
  Ahead came() {
    return truth.ahead(really);
  }

  private void stretch() {
    double fromSec = truth.clockSec();
    double dutyBefore = truth.sees(Sight.DUTY_SEC)[0];
    boolean boil = truth.leg().key().startsWith("hop") || truth.leg().key().equals("flameOut");
    double length = boil ? BOIL_STRETCH_SEC : STRETCH_SEC;
    boolean ended = truth.live(fromSec + length, really);
    double toSec = truth.clockSec();
    if (toSec > fromSec) {
      double duty = (truth.sees(Sight.DUTY_SEC)[0] - dutyBefore) / (toSec - fromSec);
      double told = fault.toldFrac(truth.leg(), Math.clamp(duty, 0, 1));
      Switched switched = dutyLogged ? Switched.duty(told) : Switched.asPlanned();
      tell(each -> each.switchTo(switched));
      tell(each -> each.advance(toSec));
      if (suspicion != null) {
        suspicion.switchTo(switched);
        suspicion.advance(toSec);
      }
    }
    String key = truth.leg().key();
    if (ended) {
      tell(each -> each.ended(toSec));
      truth.ended();
      endedSec.put(key, toSec);
      suspect(key);
      after(key);
    } else {
      read();
    }
  }

  /// Lets a bank of suppositions run along, set up anew with each leg.
  Rehearsal suspecting() {
    suspicion = Suspicion.since(belief);
    return this;
  }

  private void suspect(String key) {
    if (suspicion != null) {
      suspicion.ended(truth.clockSec());
      suspected.put(key, suspicion.shares());
      suspicion = Suspicion.since(belief);
    }
  }

  private void read() {
    String key = truth.leg().key();
    boolean run = key.equals("cast") || key.equals("knockOut");
    if (run) {
      return;
    }
    take(PROBE, Probe.Place.SUCTION, true);
    if (truth.clockSec() - dialledSec >= 900) {
      dialledSec = truth.clockSec();
      take(DIAL, Probe.Place.KETTLE, true);
      boolean mash = key.startsWith("rest");
      take(HAND, mash ? Probe.Place.BED : Probe.Place.KETTLE, true);
      if (mash) {
        state("grain", Sight.GRAIN_C);
      }
      state("volume", Sight.HOT_L);
      if (truth.leg().key().startsWith("rest") && truth.clockSec() - truth.legFromSec() > 1500) {
        state("gravity", Sight.MIXED_PLATO);
      }
    }
  }

  private void after(String key) {
    at.put(key, belief.copy());
    if (key.startsWith("rest")) {
      lastPlato = take("hydrometer", Probe.Place.KETTLE, true);
      state("gravity", Sight.MIXED_PLATO);
      forecast("mash");
    }
    if (key.equals("bagOut")) {
      lastDipL = take("dip-stick", Probe.Place.KETTLE, true);
      lastC = take(HAND, Probe.Place.KETTLE, true);
      state("volume", Sight.HOT_L);
      forecast("bag");
    }
    if (key.equals("boilReached")) {
      state("volume", Sight.HOT_L);
      state("gravity", Sight.MIXED_PLATO);
    }
    if (key.equals("flameOut")) {
      lastDipL = take("dip-stick", Probe.Place.KETTLE, true);
      state("volume", Sight.HOT_L);
      state("gravity", Sight.MIXED_PLATO);
    }
  }

  private double take(String instrument, Probe.Place place, boolean mixed) {
    Instrument kind = real.named(instrument);
    double shown = real.expected(truth, instrument, place, mixed)[0];
    shown += instrument.equals(DIAL) ? dialHighK : 0;
    shown += kind.noise() * random.nextGaussian();
    Reading reading = new Reading(instrument, place, mixed, Double.NaN, shown, truth.clockSec());
    weighed.add(belief.weigh(reading));
    told.add(each -> each.weigh(reading));
    if (suspicion != null) {
      suspicion.weigh(reading);
    }
    return shown;
  }

  private void state(String of, Sight sight) {
    stated.add(new Stated(of, belief.sees(sight), truth.sees(sight)[0]));
  }

  private static final List<Outcome> SCORED =
      List.of(Outcome.TO_BOIL, Outcome.PRE_BOIL_STRENGTH, Outcome.FERMENTER);

  private static double[][] columns(Ahead ahead) {
    return SCORED.stream().map(ahead::outcome).toArray(double[][]::new);
  }

  private void forecast(String when) {
    tell(each -> each.switchTo(Switched.asPlanned()));
    double[][] columns = columns(belief.ahead());
    double[][] withFace = {columns[0], columns[1], columns[2], {lastDipL, lastPlato, lastC}};
    forecasts.put(when, withFace);
  }

  private void score(String when, double[][] columns, Ahead came) {
    double dipL = columns[3][0];
    double plato = columns[3][1];
    double readC = columns[3][2];
    double boilFace =
        when.equals("bag")
            ? middle[0] * dipL / middle[1] * (middle[4] - readC) / (middle[4] - middle[2])
            : middle[0];
    double litresFace = when.equals("bag") ? middle[3] + dipL - middle[1] : middle[3];
    double[] face = {boilFace, plato, litresFace};
    for (int i = 0; i < SCORED.size(); i++) {
      scored.add(
          new Scored(
              when + " " + SCORED.get(i).key(),
              listed(columns[i]),
              listed(plan[i]),
              face[i],
              came.outcome(SCORED.get(i))[0]));
    }
    stated.add(new Stated("timeToBoil", Held.of(columns[0]), came.outcome(Outcome.TO_BOIL)[0]));
  }
}
