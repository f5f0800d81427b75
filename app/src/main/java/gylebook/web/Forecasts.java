package gylebook.web;

import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

/// Forecasts that are under way. A newer one for the same gyle stops the older; the last whole one
/// is remembered, so that reading it in other units costs nothing.
final class Forecasts {
  private final Map<String, AtomicLong> newest = new ConcurrentHashMap<>();
  private final Map<String, Remembered> last = new ConcurrentHashMap<>();

  private final Map<String, Planner.Before> whole = new ConcurrentHashMap<>();

  private record Remembered(Recipe recipe, Rig rig, int days, Planned planned) {}

  /// Says that a forecast begins; whatever ran for this gyle stops.
  ///
  /// @return its number
  long begin(String gyleId) {
    return number(gyleId).incrementAndGet();
  }

  /// Whether a newer one has begun.
  boolean overtaken(String gyleId, long number) {
    return number(gyleId).get() != number;
  }

  /// Plans, or remembers.
  ///
  /// @throws CancellationException when a newer one began, or the reader left
  Planned planned(
      String gyleId, long number, Recipe recipe, Rig rig, int days, IntConsumer progress) {
    Remembered before = last.get(gyleId);
    if (before != null
        && before.days() == days
        && before.recipe().equals(recipe)
        && before.rig().equals(rig)) {
      return before.planned();
    }
    Planned planned = fresh(gyleId, number, recipe, rig, days, progress);
    last.put(gyleId, new Remembered(recipe, rig, days, planned));
    if (days == Planner.USUAL_DAYS && planned instanceof Planned.Feasible(Plan plan)) {
      whole.put(gyleId, new Planner.Before(recipe, rig, plan));
    }
    return planned;
  }

  /// The first look after an edit leans on the last whole plan.
  private Planned fresh(
      String gyleId, long number, Recipe recipe, Rig rig, int days, IntConsumer progress) {
    BooleanSupplier stop = () -> overtaken(gyleId, number);
    Planner.Before before = whole.get(gyleId);
    return before == null || days == Planner.USUAL_DAYS
        ? Planner.plan(recipe, rig, days, Planner.USUAL_SEED, stop, progress)
        : Planner.look(recipe, rig, days, Planner.USUAL_SEED, before, stop);
  }

  /// Stops whatever runs for this gyle, because nobody reads it any more.
  void leave(String gyleId, long number) {
    number(gyleId).compareAndSet(number, number + 1);
  }

  private AtomicLong number(String gyleId) {
    return newest.computeIfAbsent(gyleId, _ -> new AtomicLong());
  }
}
