package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gylebook.rig.Probe;
import gylebook.science.Hydrometer;
import gylebook.simulate.Outcome;
import gylebook.simulate.Sight;
import org.junit.jupiter.api.Test;

/// One belief under single readings.
class BeliefTest {
  private static Belief fresh() {
    return Belief.atStart(Rehearsal.day(), Rehearsal.instruments(), 5, 120);
  }

  @Test
  void aReadingPullsTheBeliefTowardsItAndNarrowsIt() {
    Belief belief = fresh();
    belief.advance(900);
    Held before = belief.sees(Sight.WORT_C);
    Weighed weighed =
        belief.weigh(
            Reading.temperature(
                Rehearsal.HAND, Probe.Place.KETTLE, before.mean() + before.doubt(), 900));
    Held after = belief.sees(Sight.WORT_C);
    assertThat(weighed).isInstanceOf(Weighed.Used.class);
    assertThat(weighed.expected()).isCloseTo(before.mean(), within(0.2));
    assertThat(after.mean()).isGreaterThan(before.mean());
    assertThat(after.doubt()).isLessThan(before.doubt());
  }

  @Test
  void anImpossibleReadingStaysVisibleAndHardlyMovesTheBelief() {
    Belief belief = fresh();
    belief.advance(900);
    Held before = belief.sees(Sight.WORT_C);
    Weighed weighed =
        belief.weigh(
            Reading.temperature(Rehearsal.HAND, Probe.Place.KETTLE, before.mean() + 60, 900));
    assertThat(weighed)
        .isInstanceOfSatisfying(
            Weighed.SetAside.class,
            aside -> {
              assertThat(aside.surpriseRatio()).isGreaterThan(3);
              assertThat(aside.countsFrac()).isBetween(0.0, 0.1);
              assertThat(aside.inRowCount()).isEqualTo(1);
            });
    assertThat(belief.sees(Sight.WORT_C).mean())
        .isCloseTo(before.mean(), within(3.1 * before.doubt()));
  }

  @Test
  void readingsEverySecondTellNoMoreThanOneAMinute() {
    Belief often = fresh();
    Belief seldom = fresh();
    for (int sec = 900; sec <= 1020; sec++) {
      often.weigh(Reading.temperature(Rehearsal.PROBE, Probe.Place.SUCTION, 35, sec));
    }
    for (int sec = 900; sec <= 1020; sec += 60) {
      seldom.weigh(Reading.temperature(Rehearsal.PROBE, Probe.Place.SUCTION, 35, sec));
    }
    assertThat(often.sees(Sight.WORT_C).doubt())
        .isCloseTo(seldom.sees(Sight.WORT_C).doubt(), within(0.05));
  }

  @Test
  void aWarmSampleIsBroughtToTheScalesTemperature() {
    Belief warm = new Rehearsal(3, 60, Rehearsal.NONE, true).upTo("rest.0").belief;
    Belief cold = warm.copy();
    double readPlato = 9.5;
    double atScalePlato = readPlato + Hydrometer.correctionPlato(readPlato, 40, 20, 25e-6);
    double sec = warm.clockSec();
    Probe.Place kettle = Probe.Place.KETTLE;
    warm.weigh(new Reading("hydrometer", kettle, true, 40, readPlato, sec));
    cold.weigh(new Reading("hydrometer", kettle, true, Double.NaN, atScalePlato, sec));
    assertThat(warm.sees(Sight.MIXED_PLATO)).isEqualTo(cold.sees(Sight.MIXED_PLATO));
  }

  @Test
  void readingsNarrowTheForecastOfTheRestOfTheDay() {
    Belief belief = new Rehearsal(4, 100, Rehearsal.NONE, true).upTo("bagOut").belief;
    double told = Held.of(belief.ahead().outcome(Outcome.FERMENTER)).doubt();
    double planned = Held.of(fresh().ahead().outcome(Outcome.FERMENTER)).doubt();
    assertThat(told).isLessThan(0.8 * planned);
  }

  @Test
  void whatCannotBeAReadingIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reading.temperature(Rehearsal.HAND, Probe.Place.KETTLE, Double.NaN, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> fresh().weigh(Reading.temperature("nobody's", Probe.Place.KETTLE, 20, 1)))
        .withMessageContaining("nobody's");
    Belief later = fresh();
    later.advance(600);
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> later.weigh(Reading.temperature(Rehearsal.HAND, Probe.Place.KETTLE, 20, 500)));
  }
}
