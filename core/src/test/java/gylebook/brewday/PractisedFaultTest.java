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
import gylebook.simulate.Outcome;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/// What goes wrong in a rehearsal as it is played: noted minute by minute with the rig's own
/// instruments, followed, and asked for just before it mends itself. No outside source: a twin
/// experiment. What breaks does so in the middle of a rest, so ten sound minutes speak against it.
///
/// Seeds 1 to 10 showed what was wrong with the bank, 101 to 120 served to mend it; these here were
/// not looked at before. A wrong height is counted only where it moves the boiling point by more
/// than two of the doubts that hide it: a thermometer that was never tried in ice (0.7 K) and the
/// weather (1 kPa, 0.28 K) leave 1.5 K open.
class PractisedFaultTest {
  private static final boolean LONG = Boolean.getBoolean("long");
  private static final int SEEDS = LONG ? 10 : 1;
  private static final int FIRST_SEED = 301;
  private static final double TOLD_APART_K = 1.5;
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
  private int looks;
  private int quiet;
  private double wrongByK;
  private double shownMissK;
  private double soundMissK;

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
  ///
  /// @param lookEvery looks in between after so many minutes of a rest
  private Suspicion.Share leads(Supposition wrong, int seed, int lookEvery) {
    notes.clear();
    int minutes = 0;
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
        wrongByK = boilsC(follower) - hidden.grainC();
        Followed asked = follower.at(notes, at(nowSec));
        shownMissK = Math.abs(asked.grainC().mean() - hidden.grainC());
        soundMissK = Math.abs(asked.soundC().mean() - hidden.grainC());
        return asked.shares().getFirst();
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
      if (rest && ++minutes % lookEvery == 0) {
        Suspicion.Share led = follower.at(notes, at(nowSec)).shares().getFirst();
        looks++;
        quiet += led.supposition() == Supposition.NOTHING ? 1 : 0;
      }
    }
  }

  private static double boilsC(Follower follower) {
    return follower.plan().forecast().figure(Outcome.BOILS_AT.key()).orElseThrow().band().middle();
  }

  @Test
  void nineInTenFaultsThatArePractisedAreNamed() {
    int right = 0;
    int all = 0;
    StringBuilder missed = new StringBuilder();
    StringBuilder hidden = new StringBuilder();
    for (Supposition wrong : FAULTS) {
      for (int seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
        Supposition led = leads(wrong, seed, Integer.MAX_VALUE).supposition();
        if (wrong == Supposition.HEIGHT_WRONG && wrongByK < TOLD_APART_K) {
          hidden.append(String.format(Locale.ROOT, "%d (%.2f K): %s; ", seed, wrongByK, led));
          continue;
        }
        all++;
        right += led == wrong ? 1 : 0;
        missed.append(led == wrong ? "" : wrong + " " + seed + ": " + led + "; ");
      }
    }
    System.out.printf(
        "practised faults, seeds %d to %d: %d of %d led; missed: %s not counted, heights: %s%n",
        FIRST_SEED, FIRST_SEED + SEEDS - 1, right, all, missed, hidden);
    assertThat(right).as("of %d; missed: %s", all, missed).isGreaterThanOrEqualTo(9 * all / 10);
  }

  /// The belief that all is well is dragged along by a probe in a dead leg, and knows of no heat
  /// that a stuck relay gives.
  @Test
  void theGrainIsShownAsWhatLeadsHasIt() {
    double shownK = 0;
    double soundK = 0;
    List<Supposition> heats = List.of(Supposition.PUMP_OFF, Supposition.HEATER_STUCK_ON);
    for (Supposition wrong : heats) {
      for (int seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
        leads(wrong, seed, Integer.MAX_VALUE);
        shownK += shownMissK;
        soundK += soundMissK;
        System.out.printf(
            Locale.ROOT,
            "grain under %s, seed %d: shown %.2f K off, if all were well %.2f K%n",
            wrong,
            seed,
            shownMissK,
            soundMissK);
      }
    }
    assertThat(shownK).isLessThan(soundK);
  }

  @Test
  void whereNothingIsWrongNothingIsSupposed() {
    for (int seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
      assertThat(leads(Supposition.NOTHING, seed, 2).supposition()).isEqualTo(Supposition.NOTHING);
    }
    System.out.printf("sound rests: nothing supposed at %d of %d looks%n", quiet, looks);
    assertThat(quiet).isGreaterThanOrEqualTo(95 * looks / 100);
  }
}
