package gylebook.estimate;

import gylebook.plan.Guard;
import gylebook.plan.Note;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.simulate.Leg;
import gylebook.simulate.Sight;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// Guards of the heat: what the thermometers do against what the duty should do.
@AnyUnit("figures of every quantity; each note names its unit")
final class HeatGuards {
  // After a switch the probes need this long, and two of their lags, to follow.
  private static final double SEC_PER_MIN = 60;
  private static final double SETTLE_SEC = 60;
  private static final double SPAN_SEC = 90;
  private static final double WINDOW_SEC = 600;
  private static final double OFF_FRAC = 0.01;
  private static final double FULL_FRAC = 0.8;
  // A third of the element's power too much, half of it missing: no loss is misjudged by so much.
  private static final double TOO_MUCH_RATIO = 0.33;
  private static final double MISSING_RATIO = 0.5;
  private static final double COOLS_RATIO = 0.5;
  private static final double SURE_RATIO = 4;
  private static final double BELOW_BOIL_K = 3;
  // So many doubts off is no ordinary chiller any more: 6 in 1000 by chance.
  private static final double FAR_OFF_NUMBER = 2.5;
  private static final double LEAST_COOLING_K_PER_SEC = 0.3 / 60;
  private static final double AHEAD_SEC = 120;
  private static final double WORT_J_PER_L_K = 4100;
  private static final double GOODS_J_PER_KG_K = 1700;

  private final Belief belief;
  private final Watch watch;
  private final Rig rig;
  private final Leg now;
  private final List<LiveGuard> found = new ArrayList<>();

  private HeatGuards(Belief belief, Watch watch) {
    this.belief = belief;
    this.watch = watch;
    this.rig = belief.twins().day().rig();
    this.now = belief.legNow();
  }

  static List<LiveGuard> of(Belief belief, Watch watch, double dutyFrac) {
    HeatGuards guards = new HeatGuards(belief, watch);
    if (belief.underWay() && watch.dutyFrac().isPresent()) {
      guards.duty(dutyFrac);
    }
    return guards.found;
  }

  private void duty(double dutyFrac) {
    Optional<Trend> trend = trend();
    boolean quiet = now.stirred() || now.runOff();
    if (trend.isEmpty() || quiet) {
      return;
    }
    Trend seen = trend.get();
    if (dutyFrac <= OFF_FRAC) {
      off(seen, expectedKPerSec(0));
    } else if (dutyFrac >= FULL_FRAC) {
      full(seen, dutyFrac);
    }
  }

  private void off(Trend seen, double expectedKPerSec) {
    double overKPerSec = seen.perSec() - expectedKPerSec;
    boolean sure = overKPerSec > SURE_RATIO * seen.doubtPerSec();
    if (now.chilling()) {
      boolean slow = sure && overKPerSec > -COOLS_RATIO * expectedKPerSec;
      if (expectedKPerSec < -LEAST_COOLING_K_PER_SEC && (slow || learntSlow())) {
        found(LiveGuard.Kind.CHILLER_WARM, Guard.Level.SOON, seen, expectedKPerSec);
      }
    } else if (sure && overKPerSec > TOO_MUCH_RATIO * fullKPerSec()) {
      found(LiveGuard.Kind.HEATS_AT_ZERO, Guard.Level.STOP, seen, expectedKPerSec);
    }
  }

  /// Whether the readings made the twins believe in a chiller far worse than the rig's.
  private boolean learntSlow() {
    return farOff("chiller.waterLPerSec", -1)
        || farOff("chiller.hotKPerW", 1)
        || farOff("chiller.coldKPerW", 1)
        || farOff("site.tapC", 1);
  }

  private boolean farOff(String number, double side) {
    boolean doubted = belief.twins().doubts().contains(number);
    return doubted && side * Held.of(belief.twins().draws(number)).mean() > FAR_OFF_NUMBER;
  }

  private void full(Trend seen, double dutyFrac) {
    if (belief.sees(Sight.WORT_C).high() > belief.sees(Sight.BOILS_C).low() - BELOW_BOIL_K) {
      return;
    }
    double expectedKPerSec = expectedKPerSec(dutyFrac);
    double missingKPerSec = expectedKPerSec - seen.perSec();
    if (missingKPerSec > SURE_RATIO * seen.doubtPerSec()
        && missingKPerSec > MISSING_RATIO * dutyFrac * fullKPerSec()) {
      found(LiveGuard.Kind.NO_HEAT, Guard.Level.SOON, seen, expectedKPerSec);
    }
  }

  private void found(LiveGuard.Kind kind, Guard.Level level, Trend seen, double expectedKPerSec) {
    found.add(
        new LiveGuard(
            kind,
            level,
            List.of(
                Note.of("The thermometer rises by ", "seenKPerMin", SEC_PER_MIN * seen.perSec()),
                Note.of("; to be expected was ", "expectedKPerMin", SEC_PER_MIN * expectedKPerSec)),
            belief.clockSec(),
            1));
  }

  /// The surest trend of a thermometer in the wort since the duty is what it is.
  private Optional<Trend> trend() {
    double heldFromSec = belief.clockSec() - Math.min(WINDOW_SEC, watch.dutyForSec());
    double fromSec = Math.max(heldFromSec, belief.legFromSec());
    return belief.instruments().stream()
        .filter(this::inWort)
        .map(each -> Trend.of(watch.recent(), each, fromSec + SETTLE_SEC + 2 * lagSec(each)))
        .flatMap(Optional::stream)
        .filter(trend -> trend.spanSec() >= SPAN_SEC)
        .min(Comparator.comparingDouble(Trend::doubtPerSec));
  }

  private static double lagSec(Instrument instrument) {
    return instrument.lagSec().value();
  }

  /// A probe in the suction is in the wort only while the pump runs.
  private boolean inWort(Instrument instrument) {
    boolean moving = now.pump() != Leg.Pump.OFF;
    return instrument.measures() == Instrument.Measures.TEMPERATURE
        && instrument.role() != Instrument.Role.CARRIED
        && (instrument.place() == Probe.Place.KETTLE
            || (moving && instrument.place() == Probe.Place.SUCTION));
  }

  /// How fast the wort should rise under a duty, from where the twins stand.
  private double expectedKPerSec(double dutyFrac) {
    Belief later = belief.copy();
    Switched on = later.switched();
    later.switchTo(new Switched(Optional.of(dutyFrac), on.pumpOn(), on.lidOn()));
    double fromC = later.sees(Sight.WORT_C).mean();
    later.advance(later.clockSec() + AHEAD_SEC);
    return (later.sees(Sight.WORT_C).mean() - fromC) / AHEAD_SEC;
  }

  /// How fast the whole element heats all that is in the kettle, losses left out.
  private double fullKPerSec() {
    double elementW = belief.sees(Sight.ELEMENT_A).mean() * rig.element().mainsV().value();
    double wortJPerK = belief.sees(Sight.COLD_L).mean() * WORT_J_PER_L_K;
    double goodsKg = Math.max(0, belief.sees(Sight.GOODS_KG).mean());
    return elementW / (wortJPerK + goodsKg * GOODS_J_PER_KG_K);
  }
}
