package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import gylebook.estimate.Lever;
import gylebook.estimate.Levers;
import gylebook.estimate.Wanted;
import gylebook.journal.Event;
import gylebook.plan.Demo;
import gylebook.plan.Plan;
import gylebook.rig.DemoRigs;
import gylebook.simulate.Change;
import gylebook.simulate.Outcome;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// A way to put the day right is taken, and the day goes on by it. What is expected comes from the
/// lever that was offered and from the day before it, not from figures written here.
class TakenWayTest {
  private static final Instant START = Instant.parse("2026-03-14T08:00:00Z");
  private static final Wanted WANTED = new Wanted(11, 21, 30, 20);
  private static Follower follower;

  @BeforeAll
  static void plan() {
    follower = Follower.of(Demo.copperBitter(), DemoRigs.household(), 100, 20, START).orElseThrow();
  }

  private static Instant at(double min) {
    return START.plusMillis(Math.round(60_000 * min));
  }

  private static DayNote note(long seq, double min, Event event) {
    return new DayNote(seq, at(min), at(min), event, true);
  }

  private static DayNote taken(long seq, double min, PlanChange change) {
    return note(seq, min, new Event.PlanChanged("in words", change.text()));
  }

  /// It boils after 180 minutes, and is weaker than planned.
  private static List<DayNote> weakBoil() {
    return List.of(
        note(1, 0, new Event.DayStarted(9)),
        note(2, 150, new Event.PointReached("bagOut")),
        note(3, 152, new Event.ReadingTaken("hydrometer", "KETTLE", true, "8.0 \u00b0P", "")),
        note(4, 153, new Event.ReadingTaken("hydrometer", "KETTLE", true, "8.0 \u00b0P", "")),
        note(5, 154, new Event.ReadingTaken("hydrometer", "KETTLE", true, "8.0 \u00b0P", "")),
        note(6, 180, new Event.PointReached("boilReached")));
  }

  private static List<DayNote> with(List<DayNote> notes, DayNote... more) {
    List<DayNote> all = new ArrayList<>(notes);
    all.addAll(List.of(more));
    return all;
  }

  private static PlanChange change(Change change) {
    return new PlanChange(Lever.Kind.DILUTE, "liquorL", 1, List.of(change), WANTED);
  }

  private static double mean(Followed day, Outcome outcome) {
    return Objects.requireNonNull(day.outcomes().get(outcome)).mean();
  }

  private static Followed.Coming coming(Followed day, String key) {
    return day.coming().stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();
  }

  private static Lever boilOn() {
    return follower.levers(weakBoil(), at(182)).offered().stream()
        .filter(lever -> lever.kind() == Lever.Kind.BOIL_ON)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theDayGoesOnByTheWayThatWasTaken() {
    Lever lever = boilOn();
    Followed before = follower.at(weakBoil(), at(182));
    Followed after = follower.at(with(weakBoil(), taken(7, 182, PlanChange.of(lever))), at(182));

    double later =
        coming(after, "flameOut").atSec().mean() - coming(before, "flameOut").atSec().mean();
    assertThat(later).isCloseTo(lever.amountNumber(), within(1.0));
    assertThat(coming(after, "flameOut").plannedSec())
        .isCloseTo(coming(after, "flameOut").atSec().mean(), within(1.0));
    assertThat(after.planned().get(Outcome.FERMENTER))
        .isEqualTo(lever.comes().fermenterL().middle())
        .isLessThan(before.planned().get(Outcome.FERMENTER));
    assertThat(mean(after, Outcome.STRENGTH)).isGreaterThan(mean(before, Outcome.STRENGTH));
    assertThat(after.tooLate()).isEmpty();
  }

  @Test
  void nothingIsOffThePlanThatWasTaken() {
    Lever lever = boilOn();
    Levers after = follower.levers(with(weakBoil(), taken(7, 182, PlanChange.of(lever))), at(182));

    assertThat(follower.levers(weakBoil(), at(182)).off()).isNotEmpty();
    assertThat(after.off()).isEmpty();
  }

  @Test
  void aStruckWayLeavesTheDayAsItWas() {
    Followed before = follower.at(weakBoil(), at(182));
    follower.at(with(weakBoil(), taken(7, 182, PlanChange.of(boilOn()))), at(183));
    Followed struck = follower.at(weakBoil(), at(182));

    assertThat(struck.outcomes()).isEqualTo(before.outcomes());
    assertThat(struck.planned()).isEqualTo(before.planned());
    assertThat(struck.endsSec()).isEqualTo(before.endsSec());
  }

  @Test
  void whatIsToBePouredInIsTheNextThingToDoAtItsPoint() {
    List<DayNote> poured =
        with(weakBoil(), taken(7, 182, change(new Change.Pours("flameOut", 1.5))));
    // The hops of this beer are in by then.
    Followed late = follower.at(poured, at(238));

    assertThat(late.leg()).isEqualTo("flameOut");
    assertThat(late.doNow())
        .extracting(Plan.PlannedStep::key, Plan.PlannedStep::amountNumber)
        .contains(tuple("liquorL", 1.5));
    assertThat(follower.at(weakBoil(), at(238)).doNow())
        .extracting(Plan.PlannedStep::key)
        .doesNotContain("liquorL");
    double moreL =
        mean(late, Outcome.FERMENTER) - mean(follower.at(weakBoil(), at(238)), Outcome.FERMENTER);
    assertThat(moreL).isBetween(1.2, 1.6);
  }

  @Test
  void hopsToComeAreWeighedAsTheChangedPlanHasThem() {
    List<DayNote> more = with(weakBoil(), taken(7, 182, change(new Change.HopsTimes(1.5))));
    double plannedG = hopG(follower.at(weakBoil(), at(182)));

    assertThat(hopG(follower.at(more, at(182)))).isCloseTo(1.5 * plannedG, within(1e-9));
  }

  private static double hopG(Followed day) {
    return day.doNow().stream()
        .filter(step -> step.key().equals("hopG"))
        .mapToDouble(Plan.PlannedStep::amountNumber)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void additionsThatAreShiftedSayHowMuchOfTheBoilIsLeftThen() {
    Followed before = follower.at(weakBoil(), at(182));
    String leg = before.leg();
    PlanChange earlier =
        new PlanChange(
            Lever.Kind.HOPS_EARLIER,
            "earlierSec",
            300,
            List.of(new Change.Lasts(leg, -300), new Change.Lasts("flameOut", 300)),
            WANTED);
    Followed after = follower.at(with(weakBoil(), taken(7, 182, earlier)), at(182));

    assertThat(after.doNow().getFirst().does()).isNotEqualTo(before.doNow().getFirst().does());
    long leftMin =
        Math.round(
            (coming(after, "flameOut").atSec().mean() - coming(after, leg).atSec().mean()) / 60);
    assertThat(after.doNow().getFirst().does()).startsWith("With " + leftMin + " min of the boil");
    assertThat(coming(after, "flameOut").atSec().mean())
        .isCloseTo(coming(before, "flameOut").atSec().mean(), within(1.0));
  }

  @Test
  void aWayThatComesTooLateCountsNowhereAndStopsNothing() {
    List<DayNote> done = with(weakBoil(), note(7, 250, new Event.PointReached("flameOut")));
    PlanChange longer = change(new Change.Lasts("flameOut", 600));
    assertThat(follower.canTake(done, at(251), longer)).isFalse();
    Followed day = follower.at(with(done, taken(8, 251, longer)), at(252));

    assertThat(day.tooLate()).containsExactly(8L);
    assertThat(day.outcomes()).isEqualTo(follower.at(done, at(252)).outcomes());
    PlanChange takes = change(new Change.TakesOut("", 1));
    List<DayNote> mash = List.of(note(1, 0, new Event.DayStarted(9)), taken(2, 30, takes));
    assertThat(follower.at(mash, at(31)).tooLate()).containsExactly(2L);
  }

  @Test
  void twoWaysOneAfterTheOtherBothCount() {
    Followed one =
        follower.at(with(weakBoil(), taken(7, 182, change(new Change.HopsTimes(1.5)))), at(184));
    Followed both =
        follower.at(
            with(
                weakBoil(),
                taken(7, 182, change(new Change.HopsTimes(1.5))),
                taken(8, 183, change(new Change.Lasts("flameOut", 600)))),
            at(184));

    assertThat(hopG(both)).isEqualTo(hopG(one));
    assertThat(coming(both, "flameOut").atSec().mean())
        .isCloseTo(coming(one, "flameOut").atSec().mean() + 600, within(1.0));
  }
}
