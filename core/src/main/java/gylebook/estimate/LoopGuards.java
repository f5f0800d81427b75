package gylebook.estimate;

import gylebook.plan.Guard;
import gylebook.plan.Note;
import gylebook.rig.Rig;
import gylebook.science.Suction;
import gylebook.simulate.Leg;
import gylebook.simulate.Sight;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/// Guards of the levels and the loop: element, bed, pump.
@AnyUnit("figures of every quantity; each note names its unit")
final class LoopGuards {
  private static final double HEATING_FRAC = 0.05;
  private static final double BARE_CHANCE = 0.25;
  private static final double LOW_CHANCE = 0.5;
  private static final double AHEAD_SEC = 600;
  private static final double DIP_AGE_SEC = 600;
  private static final double L_PER_M3 = 1000;
  // A level sight is good to a centimetre or two round a moving bag (our judgement).
  private static final double LEVEL_DOUBT_M = 0.02;
  private static final double STUCK_FLOW_RATIO = 0.6;
  private static final double DRY_FLOW_RATIO = 0.15;
  // No more than half the heat on wort that stands with grain in it (common practice, no source;
  // where the limit lies hangs on the element's watts per area, so half is an assumption).
  private static final double SCORCHING_FRAC = 0.5;
  // Within this it burns on (our judgement).
  private static final double SCORCHED_SEC = 120;

  private final Belief belief;
  private final Watch watch;
  private final double dutyFrac;
  private final Rig rig;
  private final Leg now;
  private final List<LiveGuard> found = new ArrayList<>();

  private LoopGuards(Belief belief, Watch watch, double dutyFrac) {
    this.belief = belief;
    this.watch = watch;
    this.dutyFrac = dutyFrac;
    this.rig = belief.twins().day().rig();
    this.now = belief.legNow();
  }

  static List<LiveGuard> of(Belief belief, Watch watch, double dutyFrac) {
    LoopGuards guards = new LoopGuards(belief, watch, dutyFrac);
    guards.element();
    if (guards.rig.loop().present() && dutyFrac > SCORCHING_FRAC) {
      guards.scorching();
    }
    if (guards.pumping()) {
      guards.flow();
      guards.ring();
      guards.suction();
    }
    return guards.found;
  }

  private boolean pumping() {
    return rig.loop().present() && now.pump() != Leg.Pump.OFF;
  }

  private static double chanceBelow(double[] column, double limit) {
    return (double) Arrays.stream(column).filter(value -> value < limit).count() / column.length;
  }

  private void found(
      LiveGuard.Kind kind, Guard.Level level, double bySec, double chance, Note... what) {
    found.add(new LiveGuard(kind, level, List.of(what), bySec, chance));
  }

  private void element() {
    if (dutyFrac <= HEATING_FRAC) {
      return;
    }
    double[] coverM = belief.column(Sight.COVER_M);
    double wantedM = rig.element().coverM().value();
    double seenM = seenCoverM(coverM);
    double bare = seenM < 0 ? 1 : chanceBelow(coverM, 0);
    double low = seenM < wantedM ? 1 : chanceBelow(coverM, wantedM);
    double shownM = Math.min(seenM, Held.of(coverM).mean());
    Note stands = Note.of("Above the element stand only ", "coverM", shownM);
    double nowSec = belief.clockSec();
    if (bare >= BARE_CHANCE) {
      found(LiveGuard.Kind.BARE_ELEMENT, Guard.Level.STOP, nowSec, bare, stands);
    } else if (low >= LOW_CHANCE) {
      found(LiveGuard.Kind.BARE_ELEMENT, Guard.Level.SOON, bareAtSec(bare), low, stands);
    } else if (now.drive() instanceof Leg.Drive.ByHand && bareAtSec(bare) < nowSec + AHEAD_SEC) {
      found(LiveGuard.Kind.BARE_ELEMENT, Guard.Level.SOON, bareAtSec(bare), 1, stands);
    }
  }

  /// What was measured of the cover, the worst of it; infinite when nothing was.
  private double seenCoverM(double[] coverM) {
    double seenM = Double.POSITIVE_INFINITY;
    OptionalDouble dipL =
        watch.recent().stream()
            .filter(read -> measures(read) == Instrument.Measures.HOT_VOLUME)
            .filter(read -> belief.clockSec() - read.atSec() <= DIP_AGE_SEC)
            .mapToDouble(Reading::value)
            .reduce((a, b) -> b);
    if (dipL.isPresent()) {
      double fallM = Held.of(belief.column(Sight.HOT_L)).mean() - dipL.getAsDouble();
      seenM = Held.of(coverM).mean() - fallM / L_PER_M3 / rig.kettle().surfaceM2();
    }
    if (watch.ringM().isPresent()) {
      seenM = Math.min(seenM, watch.ringM().getAsDouble() - rig.element().topM().value());
    }
    return seenM;
  }

  private Instrument.Measures measures(Reading read) {
    return belief.instruments().stream()
        .filter(each -> each.name().equals(read.instrument()))
        .map(Instrument::measures)
        .findFirst()
        .orElse(Instrument.Measures.TEMPERATURE);
  }

  /// When a quarter of the twins stand bare, on a straight line over the next ten minutes.
  private double bareAtSec(double bareNow) {
    double nowSec = belief.clockSec();
    if (!belief.underWay() || bareNow >= BARE_CHANCE) {
      return nowSec;
    }
    Belief later = belief.copy();
    later.advance(nowSec + AHEAD_SEC);
    double fromM = quarter(belief.column(Sight.COVER_M));
    double toM = quarter(later.column(Sight.COVER_M));
    return toM < 0 ? nowSec + AHEAD_SEC * fromM / (fromM - toM) : nowSec + AHEAD_SEC;
  }

  private static double quarter(double[] column) {
    double[] sorted = column.clone();
    Arrays.sort(sorted);
    return Held.quantile(sorted, BARE_CHANCE);
  }

  /// Much heat, and nothing that carries it away from the element.
  private void scorching() {
    if (!(belief.sees(Sight.GOODS_KG).mean() > 0)) {
      return;
    }
    boolean seen = !pumping() || hardlyFlows() || ringLow();
    double chance = seen ? 1 : watch.chanceFrac(Supposition.PUMP_OFF);
    if (chance < LOW_CHANCE) {
      return;
    }
    double leftSec = Math.max(0, SCORCHED_SEC - watch.dutyForSec());
    found(
        LiveGuard.Kind.SCORCHING,
        seen && leftSec <= 0 ? Guard.Level.STOP : Guard.Level.SOON,
        belief.clockSec() + leftSec,
        chance,
        Note.of("The element gives ", "dutyFrac", dutyFrac),
        seen
            ? Note.of("; round it stand ", "ringM", ringM())
            : Note.of("; that the pump stands is as likely as ", "pumpOffFrac", chance));
  }

  private boolean hardlyFlows() {
    return flowing()
        && watch.flowLPerSec().getAsDouble() < DRY_FLOW_RATIO * rig.loop().mashLPerSec().value();
  }

  private double ringM() {
    return watch.ringM().orElseGet(() -> Held.of(belief.column(Sight.RING_M)).mean());
  }

  private boolean ringLow() {
    double lowM = Held.of(belief.column(Sight.RING_M)).low() - LEVEL_DOUBT_M;
    return now.pump() == Leg.Pump.MASH && ringM() < lowM;
  }

  private boolean flowing() {
    return watch.flowLPerSec().isPresent();
  }

  private void flow() {
    if (!flowing()) {
      return;
    }
    double flowLPerSec = watch.flowLPerSec().getAsDouble();
    double usualLPerSec = rig.loop().mashLPerSec().value();
    Note flows = Note.of("Through the hose come ", "flowLPerSec", flowLPerSec);
    Note usual = Note.of("; usual are ", "usualLPerSec", usualLPerSec);
    double nowSec = belief.clockSec();
    if (flowLPerSec < DRY_FLOW_RATIO * usualLPerSec) {
      found(LiveGuard.Kind.DRY_PUMP, Guard.Level.STOP, nowSec, 1, flows, usual);
    } else if (now.pump() == Leg.Pump.MASH && flowLPerSec < STUCK_FLOW_RATIO * usualLPerSec) {
      found(LiveGuard.Kind.STUCK_BED, Guard.Level.SOON, nowSec, 1, flows, usual);
    }
  }

  private void ring() {
    double ringM = ringM();
    Held expected = Held.of(belief.column(Sight.RING_M));
    Note stands = Note.of("Round the bag the wort stands at ", "ringM", ringM);
    Note usual = Note.of("; to be expected was ", "expectedM", expected.mean());
    double nowSec = belief.clockSec();
    if (ringLow()) {
      found(LiveGuard.Kind.STUCK_BED, Guard.Level.SOON, nowSec, 1, stands, usual);
    }
    double flowLPerSec = watch.flowLPerSec().orElse(belief.sees(Sight.FLOW_L_PER_SEC).mean());
    if (ringM < Suction.vortexM(flowLPerSec, rig.loop().boreM().value())) {
      found(LiveGuard.Kind.AIR_IN_PUMP, Guard.Level.SOON, nowSec, 1, stands);
    }
  }

  private void suction() {
    double[] spareM = belief.column(Sight.SPARE_SUCTION_M);
    double chance = chanceBelow(spareM, 0);
    if (chance >= LOW_CHANCE) {
      found(
          LiveGuard.Kind.CAVITATION,
          Guard.Level.SOON,
          belief.clockSec(),
          chance,
          Note.of("At the pump are to spare ", "spareM", Held.of(spareM).mean()));
    }
  }
}
