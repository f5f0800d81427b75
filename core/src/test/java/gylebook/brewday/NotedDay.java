package gylebook.brewday;

import gylebook.estimate.HiddenDay;
import gylebook.estimate.Supposition;
import gylebook.journal.Event;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// A whole invented day as a brewer notes it who has a controller that sends, one hand-held
/// thermometer, a stick and a hydrometer: a hidden truth, read each minute and walked round each
/// quarter of an hour.
final class NotedDay {
  static final Instant START = Instant.parse("2026-03-14T08:00:00Z");
  private static final double WALK_SEC = 900;

  private final List<DayNote> notes = new ArrayList<>();
  private final HiddenDay hidden;

  private NotedDay(HiddenDay hidden) {
    this.hidden = hidden;
  }

  static List<DayNote> notes(
      Recipe recipe, Rig rig, Follower follower, Supposition wrong, long seed) {
    BrewDay day = Planner.day(recipe, rig, follower.plan().settings());
    NotedDay noted = new NotedDay(new HiddenDay(day, follower.instruments(), wrong, seed));
    noted.live();
    return noted.notes;
  }

  private void live() {
    note(0, new Event.DayStarted(1));
    double walkedSec = -WALK_SEC;
    while (hidden.underWay()) {
      String leg = hidden.leg();
      boolean ready = hidden.pass(hidden.clockSec() + 60);
      double nowSec = hidden.clockSec();
      if (ready) {
        note(nowSec, new Event.PointReached(leg));
        hidden.done();
        after(leg);
        continue;
      }
      if (leg.equals("cast") || leg.equals("knockOut")) {
        continue;
      }
      read(HiddenDay.DUTY, "KETTLE", "%", 100);
      read("controller", "SUCTION", "\u00b0C", 1);
      if (nowSec - walkedSec >= WALK_SEC) {
        walkedSec = nowSec;
        read(Follower.HAND_HELD, leg.startsWith("rest") ? "BED" : "KETTLE", "\u00b0C", 1);
      }
    }
  }

  private void after(String leg) {
    if (leg.equals("bagOut") || leg.equals("flameOut")) {
      read("dip-stick", "KETTLE", "L", 1);
      read("hydrometer", "KETTLE", "\u00b0P", 1);
    }
  }

  private void note(double sec, Event event) {
    Instant at = START.plusMillis(Math.round(1000 * sec));
    notes.add(new DayNote(notes.size() + 1, at, at, event, true));
  }

  private void read(String name, String place, String unit, double times) {
    String asRead = String.format(Locale.ROOT, "%.2f %s", hidden.shown(name) * times, unit);
    note(hidden.clockSec(), new Event.ReadingTaken(name, place, true, asRead, ""));
  }
}
