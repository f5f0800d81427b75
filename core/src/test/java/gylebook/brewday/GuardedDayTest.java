package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import gylebook.estimate.HiddenDay;
import gylebook.estimate.LiveGuard;
import gylebook.estimate.Supposition;
import gylebook.estimate.Switched;
import gylebook.journal.Event;
import gylebook.plan.Demo;
import gylebook.plan.Guard;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// A hidden rig is noted minute by minute, as the tied instruments do it, and followed: what breaks
/// is said, an ordinary day is left in peace. The truth has the simulator's equations on another
/// geometry; no outside source.
class GuardedDayTest {
  private static final Instant START = Instant.parse("2026-03-14T08:00:00Z");
  private static final Recipe RECIPE = Demo.copperBitter();
  private static final Rig RIG = DemoRigs.household();
  private static final int LOOK_EVERY_MIN = 4;
  private static final int HAND_HELD_EVERY_MIN = 3;
  private static final Switched PUMP_OFF =
      new Switched(Optional.empty(), Optional.of(false), Optional.empty());
  private static Follower planned;

  private final Follower follower = follower();
  private final List<DayNote> notes = new ArrayList<>();
  private final List<LiveGuard> said = new ArrayList<>();
  private boolean dutyIsRead;
  private String standsIn = "";

  @BeforeAll
  static void plan() {
    planned = follower();
  }

  private static Follower follower() {
    return Follower.of(RECIPE, RIG, 100, 20, START).orElseThrow();
  }

  private static Instant at(double sec) {
    return START.plusMillis(Math.round(1000 * sec));
  }

  private void note(double sec, Event event) {
    notes.add(new DayNote(notes.size() + 1, at(sec), at(sec), event, true));
  }

  private static String steering() {
    return RIG.probes().stream().filter(probe -> probe.steers()).findFirst().orElseThrow().name();
  }

  private void read(HiddenDay hidden, String name, String place) {
    String shown = String.format(Locale.ROOT, "%.2f \u00b0C", hidden.shown(name));
    note(hidden.clockSec(), new Event.ReadingTaken(name, place, true, shown, ""));
  }

  /// Notes every minute and looks now and then until a leg has ended.
  private void live(Supposition wrong, String upTo) {
    BrewDay day = Planner.day(RECIPE, RIG, planned.plan().settings());
    HiddenDay hidden = new HiddenDay(day, follower.instruments(), wrong, 7);
    note(0, new Event.DayStarted(1));
    int minutes = 0;
    String ended = "";
    while (hidden.underWay() && !ended.equals(upTo)) {
      boolean stands = hidden.leg().equals(standsIn);
      hidden.switchTo(stands ? PUMP_OFF : Switched.asPlanned());
      boolean ready = hidden.pass(hidden.clockSec() + 60);
      double nowSec = hidden.clockSec();
      if (ready) {
        ended = hidden.leg();
        note(nowSec, new Event.PointReached(ended));
        hidden.done();
        continue;
      }
      String duty = String.format(Locale.ROOT, "%.1f %%", 100 * hidden.shown(HiddenDay.DUTY));
      note(
          nowSec,
          dutyIsRead
              ? new Event.ReadingTaken(Sighting.DUTY.says(), "KETTLE", true, duty, "")
              : new Event.SwitchSet("heater", duty));
      read(hidden, steering(), "SUCTION");
      if (stands && minutes % HAND_HELD_EVERY_MIN == 0) {
        read(hidden, Follower.HAND_HELD, "KETTLE");
      }
      // What breaks is looked at soon; on a day on which nothing does, half as many looks will do.
      int everyMin = wrong == Supposition.NOTHING ? 2 * LOOK_EVERY_MIN : LOOK_EVERY_MIN;
      if (++minutes % everyMin == 0) {
        said.addAll(follower.at(notes, at(nowSec), Set.of(steering())).guards());
      }
    }
  }

  @Test
  void onAnOrdinaryDayNothingSaysStop() {
    live(Supposition.NOTHING, "cast");

    assertThat(said).filteredOn(guard -> guard.level() == Guard.Level.STOP).isEmpty();
    assertThat(said).extracting(LiveGuard::kind).contains(LiveGuard.Kind.BOIL_OVER);
  }

  @Test
  void theControllersWordForItsDutyIsLookedAtLikeASwitch() {
    dutyIsRead = true;
    live(Supposition.HEATER_STUCK_ON, "rest.0");

    assertThat(said)
        .filteredOn(guard -> guard.level() == Guard.Level.STOP)
        .extracting(LiveGuard::kind)
        .contains(LiveGuard.Kind.HEATS_AT_ZERO);
  }

  @Test
  void onAnOrdinaryDayTheControllersWordForItsDutyRaisesNoStop() {
    dutyIsRead = true;
    live(Supposition.NOTHING, "bagOut");

    assertThat(said).filteredOn(guard -> guard.level() == Guard.Level.STOP).isEmpty();
  }

  @Test
  void aRelayThatSticksIsSaidFromTheNotes() {
    live(Supposition.HEATER_STUCK_ON, "rest.0");

    assertThat(said)
        .filteredOn(guard -> guard.level() == Guard.Level.STOP)
        .extracting(LiveGuard::kind)
        .contains(LiveGuard.Kind.HEATS_AT_ZERO);
  }

  /// Nobody says that the pump stands, and no flow is measured: the probe sits in a dead leg while
  /// the wort is heated to mash-out, and only the bank of suppositions can tell.
  @Test
  void aPumpThatStandsOnTheWayToMashOutIsSaidByTheThermometersAlone() {
    standsIn = "toRest.1";
    live(Supposition.NOTHING, standsIn);

    assertThat(said)
        .filteredOn(guard -> guard.kind() == LiveGuard.Kind.SCORCHING)
        .isNotEmpty()
        .allSatisfy(guard -> assertThat(guard.level()).isEqualTo(Guard.Level.SOON))
        .allSatisfy(guard -> assertThat(guard.chanceFrac()).isBetween(0.5, 0.999999));
  }

  @Test
  void anInstrumentThatStopsSendingIsMissed() {
    live(Supposition.NOTHING, "strikeReady");
    double laterSec = 60 * 60;

    assertThat(follower.at(notes, at(laterSec), Set.of(steering())).guards())
        .extracting(LiveGuard::kind)
        .contains(LiveGuard.Kind.DEVICE_SILENT);
    assertThat(follower.at(notes, at(laterSec)).guards())
        .extracting(LiveGuard::kind)
        .doesNotContain(LiveGuard.Kind.DEVICE_SILENT);
  }

  private static DayNote warm(long seq, double min, String asRead) {
    Instant at = at(60 * min);
    return new DayNote(
        seq, at, at, new Event.ReadingTaken(steering(), "SUCTION", true, asRead, ""), true);
  }

  @Test
  void anElementThatDoesNotHeatIsSaidThoughNobodyLoggedADuty() {
    List<DayNote> cold = new ArrayList<>();
    cold.add(new DayNote(1, START, START, new Event.DayStarted(1), true));
    for (int i = 0; i < 6; i++) {
      cold.add(warm(2 + i, 4 + i, "12.0 \u00b0C"));
    }

    assertThat(planned.at(cold, at(600)).guards())
        .extracting(LiveGuard::kind)
        .contains(LiveGuard.Kind.NO_HEAT);
  }

  @Test
  void whatIsMeasuredByJugAndByRuleIsLookedAt() {
    List<DayNote> mash = new ArrayList<>();
    mash.add(new DayNote(1, START, START, new Event.DayStarted(1), true));
    Instant mashing = at(60 * 60);
    mash.add(new DayNote(2, mashing, mashing, new Event.PointReached("settled"), true));
    Instant later = at(70 * 60);
    String jug = Sighting.FLOW.says();
    assertThat(planned.at(mash, later).guards()).isEmpty();
    mash.add(
        new DayNote(
            3, later, later, new Event.ReadingTaken(jug, "KETTLE", true, "0.3 L/min", ""), true));

    assertThat(planned.at(mash, later).guards())
        .extracting(LiveGuard::kind, LiveGuard::level)
        .contains(tuple(LiveGuard.Kind.DRY_PUMP, Guard.Level.STOP));
    // Half an hour later the jug says nothing any more.
    assertThat(planned.at(mash, at(100 * 60)).guards())
        .extracting(LiveGuard::kind)
        .doesNotContain(LiveGuard.Kind.DRY_PUMP);
  }
}
