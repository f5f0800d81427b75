package gylebook.estimate;

import gylebook.plan.Guard;
import gylebook.plan.Note;
import gylebook.rig.Rig;
import gylebook.simulate.Leg;
import gylebook.simulate.Sight;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/// What goes wrong at the kettle now or soon: a pure function of the belief and of what is known
/// beside it. It advises; it switches nothing.
@AnyUnit("figures of every quantity; each note names its unit")
public final class LiveGuards {
  // Continuous loads at no more than four fifths of the breaker (NEC 210.20(A)).
  private static final double BREAKER_SHARE = 0.80;
  // What is silent longer than this is missed (our judgement).
  private static final double SILENT_SEC = 60;
  private static final double SILENT_LONG_SEC = 300;
  private static final double SILENT_USUAL_RATIO = 4;
  // The foam comes within minutes of the boil (common practice, no source).
  private static final double FOAM_SOON_SEC = 300;
  private static final double FOAM_NOTE_SEC = 900;
  private static final double NEAR_BOIL_K = 3;
  private static final double HEATING_FRAC = 0.05;
  // What leaves the chiller this much above all that was expected.
  private static final double CHILLED_OVER_K = 2;
  private static final double FAR_RATIO = 3;

  // Likelier than all else that is supposed.
  private static final double LIKELY_FRAC = 0.5;

  private final Belief belief;
  private final Watch watch;
  private final Rig rig;
  private final Leg now;
  private final List<LiveGuard> found = new ArrayList<>();

  private LiveGuards(Belief belief, Watch watch) {
    this.belief = belief;
    this.watch = watch;
    this.rig = belief.twins().day().rig();
    this.now = belief.legNow();
  }

  /// All that is wrong now or soon, the loudest first.
  public static List<LiveGuard> of(Belief belief, Watch watch) {
    LiveGuards guards = new LiveGuards(belief, watch);
    guards.found.addAll(LoopGuards.of(belief, watch, guards.dutyFrac()));
    guards.found.addAll(HeatGuards.of(belief, watch, guards.dutyFrac()));
    guards.boilOver();
    guards.chiller();
    guards.silent();
    guards.dryProbe();
    guards.breaker();
    guards.found.sort(Comparator.comparing(LiveGuard::level).thenComparingDouble(LiveGuard::bySec));
    return List.copyOf(guards.found);
  }

  /// The duty, as told or as set by hand; where neither is known, what the twins hold.
  private double dutyFrac() {
    return watch.dutyFrac().orElseGet(() -> belief.sees(Sight.DUTY_FRAC).mean());
  }

  private boolean beforeBoil() {
    String key = belief.leg().key();
    return belief.underWay()
        && DayAhead.of(belief).ahead("boilReached")
        && !key.equals("boilReached");
  }

  private void boilOver() {
    double nowSec = belief.clockSec();
    if (belief.leg().until() instanceof Leg.Until.Boils) {
      double firstSec = Held.of(belief.endsSec()).low();
      if (firstSec - nowSec <= FOAM_NOTE_SEC) {
        boolean soon = firstSec - nowSec <= FOAM_SOON_SEC;
        Guard.Level level = soon ? Guard.Level.SOON : Guard.Level.NOTE;
        Note when = Note.of("It may boil in ", "untilBoilSec", Math.max(0, firstSec - nowSec));
        found.add(new LiveGuard(LiveGuard.Kind.BOIL_OVER, level, List.of(when), firstSec, 1));
      }
    } else if (beforeBoil() && dutyFrac() > HEATING_FRAC) {
      double[] wortC = belief.column(Sight.WORT_C);
      double[] boilsC = belief.column(Sight.BOILS_C);
      long near = 0;
      for (int j = 0; j < wortC.length; j++) {
        near += wortC[j] > boilsC[j] - NEAR_BOIL_K ? 1 : 0;
      }
      double chance = (double) near / wortC.length;
      if (chance > 0.5) {
        Note is = Note.of("It is at ", "wortC", Held.of(wortC).mean());
        found.add(
            new LiveGuard(LiveGuard.Kind.BOIL_OVER, Guard.Level.SOON, List.of(is), nowSec, chance));
      }
    }
  }

  private void chiller() {
    if (!now.chilling() || watch.chilledC().isEmpty()) {
      return;
    }
    double chilledC = watch.chilledC().getAsDouble();
    Held expected = belief.sees(Sight.CHILLED_C);
    double mostC = Math.max(expected.high(), expected.mean() + FAR_RATIO * expected.doubt());
    if (chilledC > mostC + CHILLED_OVER_K) {
      found.add(
          new LiveGuard(
              LiveGuard.Kind.CHILLER_WARM,
              Guard.Level.SOON,
              List.of(
                  Note.of("Wort leaves it at ", "chilledC", chilledC),
                  Note.of("; to be expected was ", "expectedC", expected.mean())),
              belief.clockSec(),
              1));
    }
  }

  private void silent() {
    boolean heats = dutyFrac() > HEATING_FRAC;
    for (Watch.Silence silence : watch.silent()) {
      double missedSec = Math.max(SILENT_SEC, SILENT_USUAL_RATIO * silence.usualSec());
      if (silence.forSec() <= missedSec) {
        continue;
      }
      boolean steers =
          belief.instruments().stream()
              .anyMatch(
                  each ->
                      each.name().equals(silence.instrument())
                          && each.role() == Instrument.Role.STEERS);
      Guard.Level level =
          !steers || !heats
              ? Guard.Level.NOTE
              : silence.forSec() > SILENT_LONG_SEC ? Guard.Level.STOP : Guard.Level.SOON;
      found.add(
          new LiveGuard(
              LiveGuard.Kind.DEVICE_SILENT,
              level,
              List.of(
                  Note.of(
                      "'" + silence.instrument() + "' has sent nothing for ",
                      "silentSec",
                      silence.forSec())),
              belief.clockSec(),
              1));
    }
  }

  /// The thermometer that steers has become slow. That is known where what it reads turns: at the
  /// end of a climb it runs on after the wort. Read once a minute through a steady rest, a slow one
  /// and a quick one show the same, and nothing is said.
  private void dryProbe() {
    double chanceFrac = watch.chanceFrac(Supposition.PROBE_DRY);
    if (chanceFrac > LIKELY_FRAC && belief.underWay()) {
      boolean heats = dutyFrac() > HEATING_FRAC;
      found.add(
          new LiveGuard(
              LiveGuard.Kind.DRY_PROBE,
              heats ? Guard.Level.SOON : Guard.Level.NOTE,
              List.of(
                  Note.of("That it is as slow as in air is as likely as ", "dryFrac", chanceFrac)),
              belief.clockSec(),
              chanceFrac));
    }
  }

  private void breaker() {
    if (!(watch.otherLoadA() > 0) || !(dutyFrac() > HEATING_FRAC)) {
      return;
    }
    double ratedA = rig.element().breakerA().value();
    double[] allA =
        Arrays.stream(belief.column(Sight.ELEMENT_A)).map(a -> a + watch.otherLoadA()).toArray();
    Held held = Held.of(allA);
    if (held.mean() <= BREAKER_SHARE * ratedA) {
      return;
    }
    boolean over = held.mean() > ratedA;
    found.add(
        new LiveGuard(
            LiveGuard.Kind.BREAKER_LOAD,
            over ? Guard.Level.STOP : Guard.Level.SOON,
            List.of(
                Note.of("The circuit carries ", "currentA", held.mean()),
                Note.of("; its breaker is for ", "breakerA", ratedA)),
            belief.clockSec(),
            1));
  }
}
