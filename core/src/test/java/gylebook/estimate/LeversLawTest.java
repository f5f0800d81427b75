package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.simulate.Ahead;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Change;
import gylebook.simulate.Outcome;
import gylebook.simulate.Settings;
import gylebook.simulate.Sight;
import gylebook.testing.Cases;
import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/// No advice asks for the impossible: a law over seeded days, places in them, and wants.
class LeversLawTest {
  private static final int TWINS = 12;
  private static final int CASES = Boolean.getBoolean("long") ? 300 : 20;
  private static final String[] PLACES = {
    "strikeReady", "rest.0", "bagOut", "boilReached", "hop.0", "flameOut", "knockOut", "cast"
  };

  private static BrewDay day(RandomGenerator random) {
    double fill = random.nextDouble(0.75, 1.25);
    return random.nextBoolean()
        ? new BrewDay(
            Demo.copperBitter(),
            DemoRigs.household(),
            new Settings(27 * fill, 70.5, 0.4, 1, 1, 0.75, 0))
        : new BrewDay(
            Demo.wheatBeer(), DemoRigs.smallFlat(), new Settings(14 * fill, 69, 0.4, 1, 1, 0.9, 0));
  }

  private static double away(RandomGenerator random, double from) {
    return from * random.nextDouble(0.6, 1.4);
  }

  @Test
  void noAdviceAsksForTheImpossible() {
    Cases.each(
        CASES,
        random -> {
          BrewDay day = day(random);
          Belief belief = Belief.atStart(day, Rehearsal.instruments(), random.nextLong(), TWINS);
          UnderWay.at(belief, PLACES[random.nextInt(PLACES.length)]);
          Lever.Comes comes = Lever.Comes.of(belief.ahead());
          Wanted wanted =
              new Wanted(
                  away(random, comes.strengthPlato().middle()),
                  away(random, comes.fermenterL().middle()),
                  away(random, comes.bitternessMgPerL().middle()),
                  comes.colourEbc().middle());
          Levers levers = Levers.of(belief, wanted);
          assertThat(levers.offered()).anyMatch(lever -> lever.kind() == Lever.Kind.ACCEPT);
          levers.offered().forEach(lever -> possible(belief, lever, day.rig()));
        });
    System.out.printf("levers of %d days, seeds from 1: nothing impossible is advised%n", CASES);
  }

  private static void possible(Belief belief, Lever lever, Rig rig) {
    String what = lever.kind() + " " + lever.amountNumber() + " at " + belief.leg().key();
    Belief done = belief.copy();
    for (Change change : lever.changes()) {
      done.change(change);
      if (change instanceof Change.Pours pours) {
        poured(belief.copy(), pours, what);
      }
    }
    Ahead before = belief.ahead();
    Ahead after = done.ahead();
    assertThat(Arrays.stream(after.outcome(Outcome.GAVE_UP)).sum())
        .as(what + ": days given up")
        .isLessThanOrEqualTo(Arrays.stream(before.outcome(Outcome.GAVE_UP)).sum());
    double cover = -most(after.outcome(Outcome.COVER), -1);
    assertThat(cover)
        .as(what + ": element's cover")
        .isGreaterThan(Math.min(-0.02, -most(before.outcome(Outcome.COVER), -1) - 1e-9));
    if (lever.kind() == Lever.Kind.ACCEPT) {
      return;
    }
    assertThat(lever.amountNumber()).as(what).isNotNegative().isFinite();
    assertThat(lever.comes().strengthPlato().high()).as(what).isLessThan(34);
    assertThat(lever.comes().endSec().low()).as(what).isGreaterThan(belief.clockSec());
    assertThat(lever.comes().fermenterL().low()).as(what).isNotNegative();
    if (lever.kind() == Lever.Kind.DILUTE) {
      assertThat(lever.comes().fermenterL().high())
          .as(what)
          .isLessThan(rig.working().fermenterL().value());
    }
    for (Change change : lever.changes()) {
      if (change instanceof Change.Lasts lasts) {
        assertThat(belief.left().toString()).as(what).contains("key=" + lasts.key());
      }
    }
  }

  /// When the time has come, the wort stands below the rim in every twin.
  private static void poured(Belief belief, Change.Pours pours, String what) {
    if (!pours.after().isEmpty()) {
      belief = UnderWay.at(belief, pours.after());
      belief.ended(Lever.band(belief.twins().endsSec(leg -> leg)).middle());
    }
    belief.change(new Change.Pours("", pours.liquorL()));
    assertThat(most(belief.column(Sight.ROOM_M), -1)).as(what + ": room").isLessThan(0);
  }

  private static double most(double[] column, double sign) {
    return Arrays.stream(column).map(value -> sign * value).max().orElseThrow();
  }
}
