package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.plan.Demo;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.rig.DemoRigs;
import gylebook.science.WortDensity;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Outcome;
import gylebook.simulate.Twins;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class LeversTest {
  private static BrewDay day;
  private static Belief before;

  @BeforeAll
  static void heat() {
    Planned planned =
        Planner.plan(Demo.copperBitter(), DemoRigs.household(), 20, 20, () -> false, _ -> {});
    day =
        Planner.day(
            Demo.copperBitter(),
            DemoRigs.household(),
            ((Planned.Feasible) planned).plan().settings());
    before = Belief.atStart(day, List.of(), 20, 60);
  }

  private static double middle(Outcome outcome) {
    return Held.of(before.ahead().outcome(outcome)).mean();
  }

  private static Optional<Lever> lever(List<Lever> levers, Lever.Kind kind) {
    return levers.stream().filter(lever -> lever.kind() == kind).findFirst();
  }

  private static double mean(Lever lever, Outcome outcome) {
    return Optional.ofNullable(lever.outcomes().get(outcome)).orElseThrow().mean();
  }

  @Test
  void onAimNothingIsToBeDone() {
    List<Lever> levers = Levers.of(before, middle(Outcome.STRENGTH), middle(Outcome.BITTERNESS));

    assertThat(levers).extracting(Lever::kind).containsExactly(Lever.Kind.ACCEPT);
    assertThat(levers.getFirst().outcomes().get(Outcome.STRENGTH))
        .isEqualTo(Held.of(before.ahead().outcome(Outcome.STRENGTH)));
  }

  @Test
  void tooWeakIsBoiledOnToTheAimAtTheCostOfLitresAndTime() {
    double wantedPlato = middle(Outcome.STRENGTH) + 0.5;
    List<Lever> levers = Levers.of(before, wantedPlato, 0);
    Lever on = lever(levers, Lever.Kind.BOIL_ON).orElseThrow();

    assertThat(on.reaches()).isTrue();
    assertThat(mean(on, Outcome.STRENGTH)).isCloseTo(wantedPlato, within(0.05));
    assertThat(mean(on, Outcome.FERMENTER)).isLessThan(middle(Outcome.FERMENTER));
    assertThat(mean(on, Outcome.DAY) - middle(Outcome.DAY))
        .isCloseTo(on.amountNumber(), within(60.0));
    assertThat(lever(levers, Lever.Kind.DILUTE)).isEmpty();
  }

  /// The balance of masses, by hand: extract does not change when water is added.
  @Test
  void whatIsDilutedKeepsItsExtract() {
    double wantedPlato = middle(Outcome.STRENGTH) - 1;
    Lever dilute = lever(Levers.of(before, wantedPlato, 0), Lever.Kind.DILUTE).orElseThrow();

    double extractKg = extractKg(middle(Outcome.STRENGTH), middle(Outcome.FERMENTER));
    double afterKg = extractKg(mean(dilute, Outcome.STRENGTH), mean(dilute, Outcome.FERMENTER));
    assertThat(afterKg).isCloseTo(extractKg, within(0.01));
    assertThat(mean(dilute, Outcome.STRENGTH)).isCloseTo(wantedPlato, within(0.05));
  }

  @Test
  void whatIsSweetenedGainsWhatWasStirredIn() {
    double wantedPlato = middle(Outcome.STRENGTH) + 1;
    Lever add = lever(Levers.of(before, wantedPlato, 0), Lever.Kind.ADD_EXTRACT).orElseThrow();

    double gainedKg =
        extractKg(mean(add, Outcome.STRENGTH), mean(add, Outcome.FERMENTER))
            - extractKg(middle(Outcome.STRENGTH), middle(Outcome.FERMENTER));
    assertThat(gainedKg).isCloseTo(add.amountNumber(), within(0.01));
  }

  private static double extractKg(double plato, double litres) {
    return litres * WortDensity.wortKgPerL(plato / 100, 20) * plato / 100;
  }

  @Test
  void moreHopsComeToTheBitternessWanted() {
    double wantedMgPerL = 1.3 * middle(Outcome.BITTERNESS);
    Lever hops =
        lever(Levers.of(before, middle(Outcome.STRENGTH), wantedMgPerL), Lever.Kind.HOPS)
            .orElseThrow();

    assertThat(hops.amountNumber()).isBetween(1.1, 1.8);
    assertThat(mean(hops, Outcome.BITTERNESS) / wantedMgPerL).isCloseTo(1, within(0.04));
  }

  @Test
  void whatCannotBeReachedSaysSo() {
    Lever on =
        lever(Levers.of(before, middle(Outcome.STRENGTH) + 9, 0), Lever.Kind.BOIL_ON).orElseThrow();

    assertThat(on.reaches()).isFalse();
  }

  @Test
  void afterTheBoilNobodyIsToldToBoilOnOrToHop() {
    Belief late = before.copy();
    Twins twins = late.twins();
    double atSec = 60;
    while (late.underWay() && !twins.leg().key().equals("knockOut")) {
      late.ended(atSec);
      atSec += 1800;
    }

    assertThat(Levers.of(late, middle(Outcome.STRENGTH) + 1, 99))
        .extracting(Lever::kind)
        .contains(Lever.Kind.ACCEPT)
        .doesNotContain(
            Lever.Kind.BOIL_ON, Lever.Kind.STOP_EARLY, Lever.Kind.ADD_EXTRACT, Lever.Kind.HOPS);
  }
}
