package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gylebook.science.Dilution;
import gylebook.science.WortDensity;
import gylebook.simulate.Ahead;
import gylebook.simulate.Change;
import gylebook.simulate.Outcome;
import gylebook.simulate.Sight;
import java.util.Comparator;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// What can still be done about a day off its plan.
class LeversTest {
  private static final int TWINS = 40;

  private static Belief at(String key, int twins) {
    Belief fresh = Belief.atStart(Rehearsal.day(), Rehearsal.instruments(), 5, twins);
    return UnderWay.at(fresh, key);
  }

  private static Wanted middles(Belief belief) {
    Lever.Comes comes = Lever.Comes.of(belief.ahead());
    return new Wanted(
        comes.strengthPlato().middle(),
        comes.fermenterL().middle(),
        comes.bitternessMgPerL().middle(),
        comes.colourEbc().middle());
  }

  private static Wanted off(Wanted from, double plato, double litres, double bitter) {
    return new Wanted(
        from.strengthPlato() + plato,
        from.fermenterL() + litres,
        from.bitternessMgPerL() + bitter,
        from.colourEbc());
  }

  private static Optional<Lever> offered(Levers levers, Lever.Kind kind) {
    return levers.offered().stream().filter(lever -> lever.kind() == kind).findFirst();
  }

  private static Lever of(Levers levers, Lever.Kind kind) {
    return offered(levers, kind).orElseThrow(() -> new AssertionError(kind + ": " + levers));
  }

  @Test
  void onPlanNothingIsOffAndNothingNeedsDoing() {
    Belief belief = at("boilReached", TWINS);
    Levers levers = Levers.of(belief, middles(belief));
    assertThat(levers.off()).isEmpty();
    assertThat(levers.refused()).isEmpty();
    assertThat(levers.offered()).extracting(Lever::kind).containsExactly(Lever.Kind.ACCEPT);
  }

  @Test
  void weakWortCanBeBoiledOnSweetenedOrHeldBackAndEachMeetsTheStrength() {
    Belief belief = at("boilReached", TWINS);
    Wanted wanted = off(middles(belief), 0.8, 0, 0);
    Levers levers = Levers.of(belief, wanted);
    assertThat(levers.off().getFirst().goal()).isEqualTo(Goal.STRENGTH);
    assertThat(levers.off().getFirst().chanceFrac()).isBetween(0.5, 1.0);
    for (Lever.Kind kind :
        new Lever.Kind[] {
          Lever.Kind.BOIL_ON, Lever.Kind.ADD_EXTRACT, Lever.Kind.ADD_SUGAR, Lever.Kind.HOLD_BACK
        }) {
      Lever lever = of(levers, kind);
      assertThat(lever.meets()).as(kind + " " + lever).isTrue();
      assertThat(lever.comes().strengthPlato().middle())
          .as(kind.says())
          .isCloseTo(wanted.strengthPlato(), within(0.25));
    }
    Lever boiled = of(levers, Lever.Kind.BOIL_ON);
    Lever accepted = of(levers, Lever.Kind.ACCEPT);
    assertThat(boiled.comes().fermenterL().middle())
        .isLessThan(accepted.comes().fermenterL().middle());
    assertThat(boiled.comes().endSec().middle() - accepted.comes().endSec().middle())
        .isCloseTo(boiled.amountNumber(), within(120.0));
    assertThat(boiled.comes().energyJ().middle())
        .isGreaterThan(accepted.comes().energyJ().middle());
    assertThat(levers.offered()).isSortedAccordingTo(Comparator.comparingDouble(Lever::missNumber));
  }

  @Test
  void strongWortIsDilutedAndBitterWortGetsFewerHops() {
    Belief belief = at("boilReached", TWINS);
    Wanted wanted = off(middles(belief), -0.9, 1.5, -5);
    Levers levers = Levers.of(belief, wanted);
    assertThat(of(levers, Lever.Kind.DILUTE).comes().strengthPlato().middle())
        .isCloseTo(wanted.strengthPlato(), within(0.25));
    assertThat(of(levers, Lever.Kind.FEWER_HOPS).comes().bitternessMgPerL().middle())
        .isCloseTo(wanted.bitternessMgPerL(), within(2.0));
    assertThat(offered(levers, Lever.Kind.ADD_EXTRACT)).isEmpty();
    assertThat(offered(levers, Lever.Kind.BOIL_ON)).isEmpty();
  }

  @Test
  void bitternessIsRaisedByMoreHopsEarlierHopsOrALongerStand() {
    Belief belief = at("hop.1", TWINS);
    Wanted wanted = off(middles(belief), 0, 0, 3);
    Levers levers = Levers.of(belief, wanted);
    double now = of(levers, Lever.Kind.ACCEPT).comes().bitternessMgPerL().middle();
    for (Lever.Kind kind :
        new Lever.Kind[] {Lever.Kind.MORE_HOPS, Lever.Kind.HOPS_EARLIER, Lever.Kind.LONGER_STAND}) {
      assertThat(of(levers, kind).comes().bitternessMgPerL().middle())
          .as(kind.says())
          .isGreaterThan(now + 0.3);
    }
    assertThat(of(levers, Lever.Kind.MORE_HOPS).amountNumber()).isGreaterThan(1);
  }

  @Test
  void afterFlameOutTheBoilIsPastAndLiquorGoesIntoTheFermenter() {
    Belief belief = at("stood.0", TWINS);
    Levers weak = Levers.of(belief, off(middles(belief), 0.8, 0, 0));
    assertThat(weak.refused())
        .contains(new Levers.Refused(Lever.Kind.BOIL_ON, Lever.Limit.TIME_PAST))
        .contains(new Levers.Refused(Lever.Kind.ADD_EXTRACT, Lever.Limit.TIME_PAST));
    Levers strong = Levers.of(belief, off(middles(belief), -0.8, 0, 0));
    assertThat(of(strong, Lever.Kind.DILUTE).changes().getFirst())
        .isInstanceOf(Change.Dilutes.class);
  }

  @Test
  void aRestCanBeCutAndLengthenedAgainAndSaysWhenThatIsNoRemedy() {
    Belief belief = at("rest.0", TWINS);
    belief.advance(belief.legFromSec() + 600);
    Wanted wanted = off(middles(belief), 0.4, 0, 0);
    Levers levers = Levers.of(belief, wanted);
    // After ten minutes at the heat nearly all has dissolved: it says so, and offers it no more.
    assertThat(levers.refused())
        .contains(new Levers.Refused(Lever.Kind.LONGER_REST, Lever.Limit.HARDLY_HELPS));
    Belief cut = belief.copy();
    cut.change(new Change.Lasts("rest.0", -2400));
    Belief longer = cut.copy();
    longer.change(new Change.Lasts("rest.0", 2400));
    assertThat(middles(longer).strengthPlato())
        .isCloseTo(middles(belief).strengthPlato(), within(1e-9));
    assertThat(middles(longer)).isNotEqualTo(middles(cut));
  }

  @Test
  void whatIsPastCannotBeChanged() {
    Belief belief = at("boilReached", 2);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> belief.change(new Change.Lasts("rest.0", 60)))
        .withMessageContaining("rest.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> belief.change(new Change.Pours("strikeReady", 1)));
    assertThatIllegalArgumentException().isThrownBy(() -> new Change.Pours("", -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Change.HopsTimes(Double.NaN));
  }

  /// Balance of extract and mass with the density of sugar solutions: Bubnik 1995, p. 164 (as
  /// [Dilution] has it, checked there against the table).
  @Test
  void liquorInTheFermenterIsTheBalancesToTheLitre() {
    Belief belief = at("cast", 1);
    Ahead before = belief.ahead();
    double plato = before.outcome(Outcome.STRENGTH)[0];
    double litres = before.outcome(Outcome.FERMENTER)[0];
    Lever lever = of(Levers.of(belief, off(middles(belief), -1, 2, 0)), Lever.Kind.DILUTE);
    double pouredKg = lever.amountNumber() * WortDensity.wortKgPerL(0, 20);
    Dilution.Diluted balance = Dilution.diluted(litres, plato, pouredKg);
    assertThat(lever.comes().strengthPlato().middle())
        .isCloseTo(balance.extractPlato(), within(0.02));
    assertThat(lever.comes().fermenterL().middle()).isCloseTo(balance.wortL(), within(0.03));
    double byHandL = Dilution.waterKg(litres, plato, plato - 1) / WortDensity.wortKgPerL(0, 20);
    assertThat(lever.amountNumber()).isCloseTo(byHandL, within(0.15));
  }

  /// 12 P wort has SG 1.0484 (Plato's table, 20/20): 20 L hold 20.93 kg, of it 2.511 kg extract. A
  /// kilogram of dry extract with 3 % water makes `(2.511 + 0.97)/(20.93 + 1)` = 15.87 P.
  @Test
  void theBalanceByHandHoldsForTheNumbersOfPlatosTable() {
    double massKg = 20 * 1.0484 * 0.9982;
    double sweetenedPlato = 100 * (0.12 * massKg + 0.97) / (massKg + 1);
    assertThat(sweetenedPlato).isCloseTo(15.87, within(0.02));
    assertThat(20 * WortDensity.wortKgPerL(0.12, 20)).isCloseTo(massKg, within(0.005));
  }

  /// Extract adds up and mass adds up: a balance by hand on what the twin sees before and after.
  @Test
  void extractAndWortTakenOutAddUpInTheKettle() {
    Belief belief = at("boilReached", 1);
    double plato = belief.column(Sight.MIXED_PLATO)[0];
    double massKg = belief.column(Sight.COLD_L)[0] * WortDensity.wortKgPerL(plato / 100, 20);
    Belief sweet = belief.copy();
    sweet.change(new Change.Sweetens("", 1, 0.03, 0.75));
    assertThat(sweet.column(Sight.MIXED_PLATO)[0])
        .isCloseTo(100 * (plato / 100 * massKg + 0.97) / (massKg + 1), within(1e-6));
    Belief less = belief.copy();
    double hotL = less.column(Sight.HOT_L)[0];
    less.change(new Change.TakesOut("", 3));
    assertThat(less.column(Sight.HOT_L)[0]).isCloseTo(hotL - 3, within(0.02));
    assertThat(less.column(Sight.MIXED_PLATO)[0]).isCloseTo(plato, within(1e-9));
    Belief more = belief.copy();
    more.change(new Change.Pours("", 3));
    double waterKg =
        more.column(Sight.COLD_L)[0]
                * WortDensity.wortKgPerL(more.column(Sight.MIXED_PLATO)[0] / 100, 20)
            - massKg;
    assertThat(waterKg).isCloseTo(3 * 0.998, within(0.06));
  }

  @Test
  void everyLeverIsTriedWithTheSameDraws() {
    Belief belief = at("boilReached", TWINS);
    Ahead asItIs = belief.ahead();
    Belief same = belief.copy();
    same.change(new Change.HopsTimes(1));
    for (Outcome outcome : Outcome.values()) {
      assertThat(same.ahead().outcome(outcome)).isEqualTo(asItIs.outcome(outcome));
    }
    Levers levers = Levers.of(belief, off(middles(belief), 0, 0, 6));
    Belief hopped = belief.copy();
    of(levers, Lever.Kind.MORE_HOPS).changes().forEach(hopped::change);
    double[] bitter = hopped.ahead().outcome(Outcome.BITTERNESS);
    for (int j = 0; j < TWINS; j++) {
      assertThat(bitter[j]).isGreaterThan(asItIs.outcome(Outcome.BITTERNESS)[j]);
    }
    assertThat(belief.ahead().outcome(Outcome.DAY)).isEqualTo(asItIs.outcome(Outcome.DAY));
    assertThat(Levers.of(belief, off(middles(belief), 0, 0, 6))).isEqualTo(levers);
  }

  /// By hand: 0.95 n(z) against 0.05 n(z/10)/10, n without its constant.
  @Test
  void aSurprisingReadingIsLessBelievableThanAnExpectedOne() {
    assertThat(surprised(0).believableFrac()).isCloseTo(0.95 / 0.955, within(1e-9));
    assertThat(surprised(2).believableFrac()).isCloseTo(0.963, within(1e-3));
    assertThat(surprised(3).believableFrac()).isCloseTo(0.688, within(1e-3));
    assertThat(surprised(-6).believableFrac()).isLessThan(1e-3);
  }

  private static Weighed surprised(double zRatio) {
    Reading reading =
        Reading.temperature("hand", gylebook.rig.Probe.Place.KETTLE, 60 + zRatio / 2, 10);
    return new Weighed.Used(reading, 60, 0.5);
  }
}
