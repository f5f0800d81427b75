package gylebook.brewday;

import gylebook.journal.Event;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// Points of a day by their names, in the order of the plan.
///
/// @param began when the day began
/// @param keys the points
/// @param plannedSecByKey when each is planned, since the day began
record DayOrder(Instant began, List<String> keys, Map<String, Double> plannedSecByKey) {
  static final String FLAME_OUT = "flameOut";
  static final String BAG_OUT = "bagOut";

  DayOrder {
    keys = List.copyOf(keys);
    plannedSecByKey = Map.copyOf(plannedSecByKey);
  }

  /// Whether a point lies inside the boil, before its end.
  static boolean inBoil(String key) {
    return key.startsWith("hop.") || key.equals("sugarIn");
  }

  /// Whether the grain is in the kettle on the way to a point.
  static boolean inBag(String key) {
    return key.equals("settled") || key.startsWith("rest.") || key.startsWith("toRest.");
  }

  /// Whether a temperature of the mash is held on the way to a point.
  static boolean inRest(String key) {
    return key.startsWith("rest.");
  }

  /// Whether nobody noted this; it follows from what was noted later.
  static boolean unseen(DayNote note) {
    return note.seq() < 0;
  }

  /// The notes with the points that nobody noted: whoever sees the boil has passed all that lies
  /// before it. Their times share what lies between as the plan has it.
  List<DayNote> withUnseen(List<DayNote> happened) {
    List<DayNote> whole = new ArrayList<>(happened);
    int last = -1;
    Instant lastAt = began;
    for (DayNote note : happened) {
      if (note.event() instanceof Event.PointReached(String key) && keys.indexOf(key) > last) {
        int here = keys.indexOf(key);
        for (int i = last + 1; i < here; i++) {
          whole.add(unseen(i, lastAt, note.at(), shareFrac(last, i, here)));
        }
        last = here;
        lastAt = note.at();
      }
    }
    if (whole.size() > happened.size()) {
      whole.sort(Comparator.comparing(DayNote::at).thenComparingLong(DayNote::seq));
    }
    return whole;
  }

  /// When points inside the boil were noted to have been, since the day began.
  Map<String, Double> seenInBoil(List<DayNote> happened) {
    Map<String, Double> seen = new HashMap<>();
    for (DayNote note : happened) {
      if (note.event() instanceof Event.PointReached(String key) && !unseen(note) && inBoil(key)) {
        seen.putIfAbsent(key, Telling.sec(began, note.at()));
      }
    }
    return Map.copyOf(seen);
  }

  private double plannedSec(int index) {
    return index < 0 ? 0 : plannedSecByKey.getOrDefault(keys.get(index), 0.0);
  }

  /// How far a point lies between two others by plan.
  private double shareFrac(int from, int at, int to) {
    double wholeSec = plannedSec(to) - plannedSec(from);
    return wholeSec > 0 ? Math.clamp((plannedSec(at) - plannedSec(from)) / wholeSec, 0, 1) : 1;
  }

  private DayNote unseen(int index, Instant from, Instant to, double shareFrac) {
    long ms = Math.round(Duration.between(from, to).toMillis() * shareFrac);
    Instant at = from.plusMillis(Math.max(0, ms));
    return new DayNote(
        -1 - keys.size() + index, at, at, new Event.PointReached(keys.get(index)), true);
  }
}
