package gylebook.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/// Brews that are held at a moment and taken up again, against the same brews run through. The
/// simulator run through is the other opinion; no outside source.
class TwinsTest {
  private static final long SEED = 11;
  private static final UnaryOperator<Leg> AS_PLANNED = UnaryOperator.identity();
  private static final List<Gauge> DIAL =
      List.of(new Gauge("dial", Probe.Place.KETTLE, Parameter.exact(25)));

  private static BrewDay day() {
    return new BrewDay(
        Demo.copperBitter(), DemoRigs.household(), new Settings(27, 70.5, 0.4, 1, 1, 0.75, 0));
  }

  private static Ensemble through(int days) {
    return Ensemble.of(day(), SEED, days, () -> false, done -> {}).orElseThrow();
  }

  /// Lets one brew run to the end in stretches of this length.
  private static Ahead inStretches(double stretchSec) {
    return inStretches(day(), stretchSec);
  }

  private static Ahead inStretches(BrewDay day, double stretchSec) {
    Twins one = Twins.atStart(day, DIAL, SEED, 1);
    while (one.underWay()) {
      if (one.live(one.clockSec() + stretchSec, AS_PLANNED)) {
        one.ended();
      }
    }
    return one.ahead(AS_PLANNED);
  }

  private static void alike(Ahead some, Ensemble through, int member) {
    assertThat(some.keys()).isEqualTo(through.milestoneKeys());
    for (Outcome outcome : Outcome.values()) {
      double expected = through.outcome(outcome)[member];
      if (!Double.isFinite(expected)) {
        continue;
      }
      double allowed =
          outcome.key().endsWith("Sec") ? 4 : Math.max(1e-3, 8e-3 * Math.abs(expected));
      assertThat(some.outcome(outcome)[member])
          .as(outcome.key())
          .isCloseTo(expected, within(allowed));
    }
  }

  @Test
  void aDayInStretchesOfAMinuteIsTheDayRunThrough() {
    alike(inStretches(60), through(1), 0);
  }

  @Test
  void aSetPointThatClimbsIsKeptFromStretchToStretch() {
    BrewDay ramped = DemoDays.ramped();
    Ensemble through = Ensemble.of(ramped, SEED, 1, () -> false, done -> {}).orElseThrow();
    alike(inStretches(ramped, 60), through, 0);
  }

  @Test
  void aDayInOneStretchALegIsTheDayRunThroughToTheLastBit() {
    Ahead legs = inStretches(1e9);
    Ensemble through = through(1);
    for (Outcome outcome : Outcome.values()) {
      assertThat(new double[] {legs.outcome(outcome)[0]})
          .as(outcome.key())
          .isEqualTo(new double[] {through.outcome(outcome)[0]});
    }
  }

  @Test
  void whatLiesAheadOfColdLiquorIsThePlansOwnEnsembleToTheLastBit() {
    Ahead ahead = Twins.atStart(day(), DIAL, SEED, 40).ahead(AS_PLANNED);
    Ensemble through = through(40);
    for (Outcome outcome : Outcome.values()) {
      assertThat(ahead.outcome(outcome)).as(outcome.key()).isEqualTo(through.outcome(outcome));
    }
  }

  @Test
  void lookingAheadOrAtACopyMovesNothing() {
    Twins twins = Twins.atStart(day(), DIAL, SEED, 20);
    twins.advance(1200, AS_PLANNED);
    double[] before = twins.sees(Sight.WORT_C);
    twins.ahead(AS_PLANNED);
    twins.endsSec(AS_PLANNED);
    twins.copy().advance(2400, AS_PLANNED);
    assertThat(twins.sees(Sight.WORT_C)).isEqualTo(before);
    assertThat(twins.clockSec()).isEqualTo(1200);
  }

  @Test
  void aDialLagsBehindARampByRateTimesLag() {
    Twins one = Twins.atStart(day(), DIAL, SEED, 1);
    one.advance(1140, AS_PLANNED);
    double sooner = one.sees(Sight.WORT_C)[0];
    one.advance(1200, AS_PLANNED);
    double later = one.sees(Sight.WORT_C)[0];
    double behindK = later - one.gauge(0)[0];
    assertThat(behindK).isCloseTo((later - sooner) / 60 * 25, within(0.02));
  }
}
