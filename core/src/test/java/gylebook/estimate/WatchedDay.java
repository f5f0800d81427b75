package gylebook.estimate;

import gylebook.plan.Guard;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Leg;
import gylebook.simulate.Sight;
import gylebook.simulate.Twins;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/// A day of a hidden truth that is watched minute by minute: the belief is told readings and the
/// controller's duty, the guards are asked, and what they said is kept with its time.
final class WatchedDay {
  private static final double STRETCH_SEC = 60;
  private static final double RECENT_SEC = 900;

  /// What breaks, and what is seen of it.
  interface Breakage {
    /// What is really switched on.
    default Leg really(Leg leg, double inLegSec) {
      return leg;
    }

    /// What the controller says it gives.
    default double toldFrac(Leg leg, double inLegSec, double dutyFrac) {
      return dutyFrac;
    }

    /// Changes the truth once, when it is time; gives what it is then.
    default Twins broken(Twins truth) {
      return truth;
    }

    /// What is measured beside the thermometers.
    default Watch measured(Watch watch, Twins truth, UnaryOperator<Leg> really) {
      return watch;
    }

    /// What the belief is told is switched on by hand.
    default Switched told(Switched switched, Leg leg) {
      return switched;
    }
  }

  static final Breakage NONE = new Breakage() {};

  /// A guard, when it was said first and when in its leg, and in which leg.
  record Said(LiveGuard guard, String leg, double atSec) {}

  final List<Said> said = new ArrayList<>();
  private final Map<LiveGuard.Kind, Guard.Level> loudest = new EnumMap<>(LiveGuard.Kind.class);
  final Belief belief;
  private Twins truth;
  private final Traits real;
  private final RandomGenerator random;
  private final Breakage breakage;
  private final List<Reading> recent = new ArrayList<>();
  private double dutyFrac = -1;
  private double dutyFromSec;
  private double endedSec;

  WatchedDay(BrewDay day, long seed, Breakage breakage) {
    random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    List<Instrument> kit = kit(day.rig());
    belief = Belief.atStart(day, kit, 20, 40);
    Rig hidden = HiddenRig.of(day.rig(), random);
    truth =
        Twins.atStart(
            new BrewDay(day.recipe(), hidden, day.settings()), Traits.gauges(kit), seed, 1);
    real = Traits.drawn(kit, seed, 1);
    this.breakage = breakage;
  }

  private static List<Instrument> kit(Rig rig) {
    List<Instrument> kit = new ArrayList<>();
    rig.probes().forEach(probe -> kit.add(Instrument.of(probe)));
    kit.add(
        Instrument.of(
            new Probe(
                "kettle chip",
                Probe.Kind.DIGITAL_CHIP,
                Probe.Place.KETTLE,
                gylebook.rig.Parameter.assumedPositive(20, 0.3, "in a sheath"),
                gylebook.rig.Parameter.assumed(0, 0.3, "a chip of the better sort"),
                false)));
    kit.add(Instrument.dipStick());
    return kit;
  }

  /// Goes on until a leg of this key has ended, or the day.
  WatchedDay upTo(String key) {
    String ended = "";
    while (truth.underWay() && !ended.equals(key)) {
      String leg = truth.leg().key();
      ended = stretch() ? leg : "";
    }
    return this;
  }

  private boolean stretch() {
    truth = breakage.broken(truth);
    double fromSec = truth.clockSec();
    double dutyBeforeSec = truth.sees(Sight.DUTY_SEC)[0];
    Leg planned = truth.leg();
    double inLegSec = fromSec - truth.legFromSec();
    UnaryOperator<Leg> really = leg -> breakage.really(leg, inLegSec);
    boolean ended = truth.live(fromSec + STRETCH_SEC, really);
    double toSec = truth.clockSec();
    if (toSec > fromSec) {
      double given = (truth.sees(Sight.DUTY_SEC)[0] - dutyBeforeSec) / (toSec - fromSec);
      tell(breakage.toldFrac(planned, inLegSec, Math.clamp(given, 0, 1)), fromSec, planned);
      belief.advance(toSec);
    }
    if (ended) {
      belief.ended(toSec);
      truth.ended();
      endedSec = toSec;
      return true;
    }
    if (toSec <= fromSec) {
      throw new IllegalStateException("stands still in " + planned.key());
    }
    read();
    look(really);
    return false;
  }

  private void tell(double toldFrac, double fromSec, Leg planned) {
    boolean other = Math.abs(toldFrac - dutyFrac) > 0.05;
    dutyFromSec = other ? fromSec : dutyFromSec;
    dutyFrac = toldFrac;
    belief.switchTo(breakage.told(Switched.duty(toldFrac), planned));
  }

  private void read() {
    for (Instrument one : belief.instruments()) {
      if (one.role() != Instrument.Role.CARRIED && !truth.leg().runOff()) {
        take(one);
      }
    }
    if (truth.clockSec() - endedSec > 240 && truth.clockSec() - endedSec <= 300) {
      take(Instrument.dipStick());
    }
    recent.removeIf(reading -> reading.atSec() < truth.clockSec() - RECENT_SEC);
  }

  private void take(Instrument one) {
    double shown =
        real.expected(truth, one.name(), one.place(), true)[0]
            + one.noise() * random.nextGaussian();
    Reading reading =
        new Reading(one.name(), one.place(), true, Double.NaN, shown, truth.clockSec());
    recent.add(reading);
    belief.weigh(reading);
  }

  private void look(UnaryOperator<Leg> really) {
    double forSec = truth.clockSec() - dutyFromSec;
    Watch watch = Watch.of(recent).withDuty(dutyFrac, forSec);
    for (LiveGuard guard : LiveGuards.of(belief, breakage.measured(watch, truth, really))) {
      Guard.Level before = loudest.get(guard.kind());
      if (before == null || guard.level().compareTo(before) < 0) {
        loudest.put(guard.kind(), guard.level());
        said.add(new Said(guard, truth.leg().key(), truth.clockSec()));
      }
    }
  }

  /// What a flow meter would show.
  static OptionalDouble seen(Twins truth, Sight sight, UnaryOperator<Leg> really) {
    return OptionalDouble.of(truth.sees(sight, really)[0]);
  }

  /// When something was said of a kind at that level or louder.
  OptionalDouble saidAtSec(LiveGuard.Kind kind, Guard.Level level) {
    return said.stream()
        .filter(each -> each.guard().kind() == kind && each.guard().level().compareTo(level) <= 0)
        .mapToDouble(Said::atSec)
        .findFirst();
  }

  Twins truth() {
    return truth;
  }
}
