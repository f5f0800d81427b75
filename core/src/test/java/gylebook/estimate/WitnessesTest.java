package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.rig.Probe;
import gylebook.simulate.Sight;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/// What instruments are worth, on twins with known answers: counted by hand or tried out.
class WitnessesTest {
  private static Belief fresh(int twins) {
    return Belief.atStart(Rehearsal.day(), Rehearsal.instruments(), 5, twins);
  }

  private static Witness of(List<Witness> all, String instrument) {
    return all.stream().filter(w -> w.instrument().equals(instrument)).findFirst().orElseThrow();
  }

  private static Belief mashed(Rehearsal.Fault fault) {
    return new Rehearsal(3, 100, fault, true).upTo("rest.0").belief;
  }

  @Test
  void beforeAnyReadingNothingIsToldAndIceSettlesMostOfAHandHeld() {
    Witness hand = of(Witnesses.of(fresh(200)), Rehearsal.HAND);
    assertThat(hand.verdict()).isEqualTo(Witness.Verdict.CANNOT_TELL);
    assertThat(hand.because()).isEqualTo(Witness.Reason.NOTHING_SEEN);
    assertThat(hand.settles()).isPresent();
    assertThat(hand.settles().orElseThrow().test())
        .isIn(CheapTest.ICE_POINT, CheapTest.BOILING_WATER);
  }

  @Test
  void aDialThatIsFarOffIsToBeCorrectedNotTrusted() {
    Rehearsal.Fault off =
        new Rehearsal.Fault() {
          @Override
          public UnaryOperator<gylebook.simulate.Leg> truth() {
            return UnaryOperator.identity();
          }

          @Override
          public double dialK() {
            return 5;
          }
        };
    Belief belief = mashed(off);
    Witness dial = of(Witnesses.of(belief), Rehearsal.DIAL);
    assertThat(dial.verdict()).isEqualTo(Witness.Verdict.CORRECT);
    assertThat(dial.readsHigh().doubt()).isLessThan(0.7);
    assertThat(Math.abs(dial.readsHigh().mean())).isGreaterThan(1);
  }

  @Test
  void anInstrumentThatTwiceDoesNotFitIsDoubted() {
    Belief belief = mashed(Rehearsal.NONE);
    double sec = belief.clockSec();
    for (int i = 1; i <= 2; i++) {
      Weighed weighed =
          belief.weigh(
              Reading.temperature(Rehearsal.PROBE, Probe.Place.SUCTION, 85.0, sec + 60 * i));
      assertThat(weighed).isInstanceOf(Weighed.SetAside.class);
    }
    assertThat(of(Witnesses.of(belief), Rehearsal.PROBE).verdict())
        .isEqualTo(Witness.Verdict.DOUBT);
    assertThat(belief.sees(Sight.WORT_C).mean()).isBetween(60.0, 72.0);
  }

  /// What the computation promises of a test, against doing it: the same reading weighed for real.
  @Test
  void aDipLeavesAsMuchDoubtOfTheVolumeAsWasPromised() {
    Belief belief = new Rehearsal(3, 200, Rehearsal.NONE, true).upTo("rest.0").belief;
    double[] volume = belief.twins().sees(Sight.HOT_L);
    double before = Held.of(volume).doubt();
    Instrument dip = Instrument.dipStick();
    double[] shows = belief.traits().expected(belief.twins(), dip.name(), dip.place(), true);
    double cross = SquareRootFilter.covariance(volume, shows);
    double total = SquareRootFilter.covariance(shows, shows) + dip.noise() * dip.noise();
    double promised = Math.sqrt(1 - cross * cross / (before * before * total));
    belief.weigh(
        new Reading(
            dip.name(), dip.place(), true, Double.NaN, Held.of(shows).mean(), belief.clockSec()));
    assertThat(belief.sees(Sight.HOT_L).doubt() / before).isCloseTo(promised, within(0.05));
  }

  @Test
  void whatIsWorthDoingComesBestFirstAndTellsSomething() {
    List<Witness.WorthDoing> worth = Witnesses.worthDoing(mashed(Rehearsal.NONE));
    assertThat(worth).isNotEmpty();
    assertThat(worth)
        .isSortedAccordingTo(Comparator.comparingDouble(Witness.WorthDoing::leftRatio));
    assertThat(worth).allMatch(each -> each.leftRatio() <= 0.9 && each.leftRatio() >= 0);
  }
}
