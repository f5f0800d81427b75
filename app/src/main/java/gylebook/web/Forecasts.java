package gylebook.web;

import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

/// Forecasts that are under way. A newer one for the same gyle stops the older; the last whole one
/// is remembered, so that reading it in other units costs nothing.
final class Forecasts {
  /// The first look at a changed gyle: soon rather than sharp.
  static final int FIRST_DAYS = 100;

  private final Map<String, AtomicLong> newest = new ConcurrentHashMap<>();
  private final Map<String, Remembered> last = new ConcurrentHashMap<>();

  private final Map<String, Planner.Before> whole = new ConcurrentHashMap<>();
  private final Map<String, Ahead> ahead = new ConcurrentHashMap<>();

  private record Remembered(Recipe recipe, Rig rig, int days, Planned planned) {
    boolean is(Recipe other, Rig otherRig, int otherDays) {
      return days == otherDays && recipe.equals(other) && rig.equals(otherRig);
    }
  }

  /// A first look that was begun before anybody asked for it.
  private record Ahead(Recipe recipe, Rig rig, FutureTask<Planned> look, AtomicBoolean stopped) {
    boolean is(Recipe other, Rig otherRig) {
      return !stopped.get() && recipe.equals(other) && rig.equals(otherRig);
    }
  }

  /// Says that a forecast begins; whatever ran for this gyle stops.
  ///
  /// @return its number
  long begin(String gyleId) {
    return number(gyleId).incrementAndGet();
  }

  /// Begins a first look that somebody may want next, while a change is still being typed, written
  /// or told of. It overtakes nothing but an older one of its kind, and one for just this goes on.
  /// Where nobody has looked at this gyle yet, nobody waits for it.
  ///
  /// @param then what else can be made ready before anybody asks
  synchronized void lookAhead(String gyleId, Recipe recipe, Rig rig, Consumer<Planned> then) {
    Ahead begun = ahead.get(gyleId);
    if ((begun != null && begun.is(recipe, rig)) || !whole.containsKey(gyleId)) {
      return;
    }
    if (begun != null) {
      begun.stopped().set(true);
    }
    AtomicBoolean stopped = new AtomicBoolean();
    FutureTask<Planned> look =
        new FutureTask<>(
            () -> {
              Planned planned = fresh(gyleId, recipe, rig, FIRST_DAYS, stopped::get, _ -> {});
              then.accept(planned);
              return planned;
            });
    ahead.put(gyleId, new Ahead(recipe, rig, look, stopped));
    Thread.ofPlatform().daemon().name("look ahead").start(look);
  }

  /// The first look that was begun ahead for just this, if it comes soon.
  Optional<Planned> soon(String gyleId, Recipe recipe, Rig rig, Duration patience) {
    Ahead begun = ahead.get(gyleId);
    if (begun == null || !begun.is(recipe, rig)) {
      return Optional.empty();
    }
    try {
      return Optional.of(begun.look().get(patience.toMillis(), TimeUnit.MILLISECONDS));
    } catch (TimeoutException | ExecutionException _) {
      // Who asks for it next waits for it, or hears what is wrong.
      return Optional.empty();
    } catch (InterruptedException _) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
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
    Ahead begun = ahead.get(gyleId);
    if (days == FIRST_DAYS && begun != null && begun.is(recipe, rig)) {
      return waited(begun.look());
    }
    Remembered before = last.get(gyleId);
    return before != null && before.is(recipe, rig, days)
        ? before.planned()
        : anew(gyleId, number, recipe, rig, days, progress);
  }

  private static Planned waited(FutureTask<Planned> look) {
    try {
      return look.get();
    } catch (ExecutionException failure) {
      throw failure.getCause() instanceof RuntimeException its
          ? its
          : new IllegalStateException("the first look failed", failure);
    } catch (InterruptedException _) {
      Thread.currentThread().interrupt();
      throw new CancellationException("the reader left");
    }
  }

  private Planned anew(
      String gyleId, long number, Recipe recipe, Rig rig, int days, IntConsumer progress) {
    BooleanSupplier stop = () -> overtaken(gyleId, number);
    Planned planned = fresh(gyleId, recipe, rig, days, stop, progress);
    last.put(gyleId, new Remembered(recipe, rig, days, planned));
    if (days == Planner.USUAL_DAYS && planned instanceof Planned.Feasible(Plan plan)) {
      whole.put(gyleId, new Planner.Before(recipe, rig, plan));
    }
    return planned;
  }

  /// The first look after an edit leans on the last whole plan.
  private Planned fresh(
      String gyleId, Recipe recipe, Rig rig, int days, BooleanSupplier stop, IntConsumer progress) {
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
