package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.estimate.Belief;
import gylebook.estimate.Held;
import gylebook.journal.Event;
import gylebook.plan.Demo;
import gylebook.plan.Plan;
import gylebook.plan.Planner;
import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.simulate.DayLog;
import gylebook.simulate.Outcome;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Typed;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// Hops that go in when they should not: what is expected comes from a plan that has them in at
/// that moment.
class LateHopsTest {
  private static final Instant START = Instant.parse("2026-03-14T08:00:00Z");
  private static final double BOILS_MIN = 200;
  private static final Recipe RECIPE = Demo.copperBitter();
  private static Plan plan;

  private final List<DayNote> notes = new ArrayList<>();

  @BeforeAll
  static void plan() {
    plan = follower().plan();
  }

  private static Follower follower() {
    return Follower.of(RECIPE, DemoRigs.household(), 100, 20, START).orElseThrow();
  }

  private static Instant at(double min) {
    return START.plusMillis(Math.round(60_000 * min));
  }

  private void reached(double min, String milestone) {
    notes.add(
        new DayNote(notes.size() + 2, at(min), at(min), new Event.PointReached(milestone), true));
    notes.sort(Comparator.comparing(DayNote::at).thenComparingLong(DayNote::seq));
  }

  private void boils() {
    notes.add(new DayNote(1, START, START, new Event.DayStarted(9), true));
    reached(BOILS_MIN, "boilReached");
  }

  private static Entered minutes(int minutes) {
    if (Typed.parse(minutes + " min", Quantity.TIME.inside()) instanceof Typed.Read(Entered read)) {
      return read;
    }
    throw new AssertionError(minutes);
  }

  private static Recipe bitteringAt(int leftMin) {
    List<Hop> hops = new ArrayList<>(RECIPE.hops());
    Hop first = hops.getFirst();
    hops.set(
        0,
        new Hop(
            first.name(),
            first.lot(),
            first.form(),
            first.massG(),
            first.alphaFrac(),
            new Hop.When.InBoil(minutes(leftMin))));
    return RECIPE.with(RECIPE.grist(), hops);
  }

  /// A belief that saw the boil when the plan has it, and nothing else.
  private static Belief boiling(Recipe recipe) {
    Belief belief =
        Belief.atStart(
            Planner.day(recipe, DemoRigs.household(), plan.settings()),
            Follower.instruments(DemoRigs.household()),
            20,
            60);
    while (!DayOrder.inBoil(belief.leg().key())) {
      double plannedSec =
          plan.forecast().milestone(belief.leg().key()).orElseThrow().atSec().middle();
      belief.ended(Math.max(belief.clockSec(), plannedSec));
    }
    return belief;
  }

  private static double bitterness(Belief belief) {
    return Held.of(belief.ahead().outcome(Outcome.BITTERNESS)).mean();
  }

  private static double bitterness(Followed day) {
    return Objects.requireNonNull(day.outcomes().get(Outcome.BITTERNESS)).mean();
  }

  private static double flameOutSec(Belief belief) {
    return Held.of(belief.ahead().milestone("flameOut", DayLog.Column.AT_SEC)).mean();
  }

  @Test
  void hopsThatGoInTwentyMinutesLateAreWorthWhatAPlanGivesThatHasThemInThen() {
    Belief late = boiling(RECIPE);
    double boilSec = late.clockSec();
    new BoilClock().runOn(late, boilSec + 1500, Map.of("hop.0", boilSec + 1200), _ -> {});
    Belief planned = boiling(bitteringAt(40));
    new BoilClock().runOn(planned, boilSec + 1500, Map.of(), _ -> {});
    Belief onTime = boiling(RECIPE);
    new BoilClock().runOn(onTime, boilSec + 1500, Map.of(), _ -> {});

    assertThat(bitterness(late)).isCloseTo(bitterness(planned), within(0.05));
    assertThat(bitterness(late)).isLessThan(bitterness(onTime) - 1);
    assertThat(flameOutSec(late)).isCloseTo(flameOutSec(onTime), within(1.0));
  }

  @Test
  void hopsThatAreLaterThanTheNextOnesLeaveTheEndOfTheBoilWhereItIs() {
    Belief late = boiling(RECIPE);
    double boilSec = late.clockSec();
    new BoilClock().runOn(late, boilSec + 3300, Map.of("hop.0", boilSec + 3000), _ -> {});

    assertThat(late.leg().key()).isEqualTo("flameOut");
    assertThat(flameOutSec(late)).isCloseTo(boilSec + 3600, within(1.0));
  }

  @Test
  void hopsThatGoInEarlyLeaveTheEndOfTheBoilWhereItIs() {
    Belief early = boiling(RECIPE);
    double boilSec = early.clockSec();
    Belief onTime = early.copy();
    new BoilClock().runOn(early, boilSec + 3000, Map.of("hop.1", boilSec + 1500), _ -> {});
    new BoilClock().runOn(onTime, boilSec + 3000, Map.of(), _ -> {});

    assertThat(flameOutSec(early)).isCloseTo(boilSec + 3600, within(1.0));
    assertThat(bitterness(early)).isGreaterThan(bitterness(onTime));
  }

  @Test
  void aLateDoneAtTheKettleSaysWhatItCostInBitterness() {
    boils();
    Follower told = follower();
    double before = bitterness(told.at(notes, at(BOILS_MIN + 20)));
    reached(BOILS_MIN + 20, "hop.0");
    Followed after = told.at(notes, at(BOILS_MIN + 20.5));

    double lostMgPerL = before - bitterness(after);
    assertThat(lostMgPerL).isGreaterThan(1);
    assertThat(after.offTime()).hasSize(1);
    assertThat(after.offTime().getFirst().bySec()).isCloseTo(1200, within(1.0));
    assertThat(after.offTime().getFirst().bitternessMgPerL()).isCloseTo(-lostMgPerL, within(0.3));
  }

  @Test
  void doneOnTimeCostsNothing() {
    boils();
    reached(BOILS_MIN + 0.5, "hop.0");

    assertThat(follower().at(notes, at(BOILS_MIN + 20)).offTime()).isEmpty();
  }

  @Test
  void theSameNotesGiveTheSameDayInWhateverOrderTheyWereWritten() {
    Follower told = follower();
    boils();
    told.at(notes, at(BOILS_MIN + 30));
    reached(BOILS_MIN + 20, "hop.0");
    Followed late = told.at(notes, at(BOILS_MIN + 31));

    assertThat(late.outcomes()).isEqualTo(follower().at(notes, at(BOILS_MIN + 31)).outcomes());
    notes.removeLast();
    assertThat(told.at(notes, at(BOILS_MIN + 32)).outcomes())
        .isEqualTo(follower().at(notes, at(BOILS_MIN + 32)).outcomes());
  }
}
