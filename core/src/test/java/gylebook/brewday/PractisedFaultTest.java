package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.estimate.HiddenDay;
import gylebook.estimate.Supposition;
import gylebook.estimate.Suspicion;
import gylebook.journal.Event;
import gylebook.plan.Demo;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/// What goes wrong in a rehearsal as it is played: noted minute by minute with the rig's own
/// instruments, followed, and asked for just before it mends itself. No outside source: a twin
/// experiment. What breaks does so in the middle of a rest, so ten sound minutes speak against it.
///
/// Nine in ten are wanted and not reached (docs/rehearsals.md); the bound here only keeps what is.
class PractisedFaultTest {
  private static final boolean LONG = Boolean.getBoolean("long");
  private static final int SEEDS = LONG ? 10 : 1;
  private static final Instant START = Instant.parse("2026-03-14T08:00:00Z");
  private static final Recipe RECIPE = Demo.copperBitter();
  private static final Rig RIG = DemoRigs.household();
  private static final double ASKED_SEC = 1750;
  private static final double WALK_SEC = 900;
  private static final String AS_PLANNED = "rest.0";
  private static final List<Supposition> FAULTS =
      List.of(
          Supposition.PUMP_OFF,
          Supposition.HEIGHT_WRONG,
          Supposition.HEATER_STUCK_ON,
          Supposition.HEATER_DEAD,
          Supposition.LID_OTHERWISE);

  private final List<DayNote> notes = new ArrayList<>();

  private static Instant at(double sec) {
    return START.plusMillis(Math.round(1000 * sec));
  }

  private void note(double sec, Event event) {
    notes.add(new DayNote(notes.size() + 1, at(sec), at(sec), event, true));
  }

  private void read(HiddenDay hidden, String name, String place) {
    boolean duty = name.equals(HiddenDay.DUTY);
    double shown = hidden.shown(name) * (duty ? 100 : 1);
    String asRead = String.format(Locale.ROOT, "%.2f ", shown) + (duty ? "%" : "\u00b0C");
    note(hidden.clockSec(), new Event.ReadingTaken(name, place, true, asRead, ""));
  }

  /// What leads when it is asked for, with its share.
  private Suspicion.Share leads(Supposition wrong, int seed) {
    notes.clear();
    Follower follower = Follower.of(RECIPE, RIG, 100, 20, START).orElseThrow();
    BrewDay day = Planner.day(RECIPE, RIG, follower.plan().settings());
    HiddenDay hidden = new HiddenDay(day, follower.instruments(), wrong, seed);
    String askedIn = wrong == Supposition.HEIGHT_WRONG ? "hop.1" : AS_PLANNED;
    note(0, new Event.DayStarted(1));
    double legSec = 0;
    double walkedSec = -WALK_SEC;
    while (true) {
      boolean ready = hidden.pass(hidden.clockSec() + 60);
      double nowSec = hidden.clockSec();
      boolean rest = hidden.leg().startsWith("rest");
      double askSec = rest ? ASKED_SEC : 1;
      if (hidden.leg().equals(askedIn) && nowSec - legSec >= askSec && (rest || ready)) {
        return follower.at(notes, at(nowSec)).shares().getFirst();
      }
      if (ready) {
        note(nowSec, new Event.PointReached(hidden.leg()));
        hidden.done();
        legSec = nowSec;
        continue;
      }
      read(hidden, HiddenDay.DUTY, "KETTLE");
      read(hidden, "controller", "SUCTION");
      if (nowSec - walkedSec >= WALK_SEC) {
        walkedSec = nowSec;
        read(hidden, Follower.HAND_HELD, rest ? "BED" : "KETTLE");
      }
    }
  }

  @Test
  void mostFaultsThatArePractisedAreNamed() {
    int right = 0;
    int all = 0;
    StringBuilder missed = new StringBuilder();
    for (Supposition wrong : FAULTS) {
      for (int seed = 1; seed <= SEEDS; seed++) {
        Supposition led = leads(wrong, seed).supposition();
        all++;
        right += led == wrong ? 1 : 0;
        missed.append(led == wrong ? "" : wrong + " " + seed + ": " + led + "; ");
      }
    }
    System.out.printf("practised faults: %d of %d led; missed: %s%n", right, all, missed);
    assertThat(right).as("of %d; missed: %s", all, missed).isGreaterThanOrEqualTo(3 * all / 4);
  }

  @Test
  void whereNothingIsWrongNothingIsSupposed() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      assertThat(leads(Supposition.NOTHING, seed).supposition()).isEqualTo(Supposition.NOTHING);
    }
  }
}
