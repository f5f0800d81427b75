package gylebook.brewday;

import gylebook.estimate.Instrument;
import gylebook.journal.Event;
import gylebook.units.AnyUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What was forecast on one day and what came.
///
/// @param began when the day began
/// @param numbers each number that the plan foresaw and somebody could see come
@AnyUnit("each number's key names its unit")
public record DayJudged(Instant began, List<Row> numbers) {

  /// Copies the list.
  public DayJudged {
    numbers = List.copyOf(numbers);
  }

  /// One number of the day.
  ///
  /// @param point the point it belongs to
  /// @param key its key
  /// @param came what came; empty when nobody measured it
  /// @param judged every forecast of it that was given before it came, in the order of the day
  public record Row(String point, String key, Optional<Came> came, List<Judged> judged) {
    /// Copies the list.
    public Row {
      judged = List.copyOf(judged);
    }

    /// As the plan had it.
    public Optional<Judged> byPlan() {
      return judged.stream().filter(Judged::byPlan).findFirst();
    }

    /// As it was foreseen last, at a point of the day.
    public Optional<Judged> last() {
      return judged.stream().filter(one -> !one.byPlan()).reduce((_, last) -> last);
    }
  }

  /// A forecast that counts, and after what it was given.
  private record Given(long seq, String after, GivenForecast forecast) {}

  /// Judges the day of a gyle; empty when it has none, or no forecast of it was kept.
  ///
  /// @param instruments what can be read on its rig
  public static Optional<DayJudged> of(
      Gyle gyle, ForecastsGiven forecasts, List<Instrument> instruments) {
    List<Given> given = given(gyle, forecasts);
    if (given.isEmpty() || gyle.started().isEmpty()) {
      return Optional.empty();
    }
    Instant began = gyle.started().get().at();
    WhatCame whatCame = new WhatCame(began, gyle.happened(), instruments);
    List<Foreseen> asked = new ArrayList<>();
    for (Given one : given) {
      for (Foreseen foreseen : one.forecast().foreseen()) {
        boolean there = asked.stream().anyMatch(a -> a.isOf(foreseen.point(), foreseen.key()));
        boolean time = foreseen.key().equals(Foreseen.AT);
        if (!there && (!time || WhatCame.waitedFor(foreseen.point()))) {
          asked.add(foreseen);
        }
      }
    }
    return Optional.of(
        new DayJudged(
            began,
            asked.stream().map(one -> number(one.point(), one.key(), given, whatCame)).toList()));
  }

  private static Row number(String point, String key, List<Given> given, WhatCame whatCame) {
    Optional<Came> came = whatCame.of(point, key);
    List<Judged> judged = new ArrayList<>();
    for (Given one : given) {
      one.forecast()
          .held(point, key)
          .flatMap(
              held ->
                  came.filter(seen -> seen.seq() > one.seq())
                      .map(
                          seen ->
                              new Judged(
                                  new Foreseen(point, key, held),
                                  one.after(),
                                  one.forecast().atSec(),
                                  seen)))
          .ifPresent(judged::add);
    }
    return new Row(point, key, came, judged);
  }

  /// Those of the plan that was brewed by, and of points that stand.
  private static List<Given> given(Gyle gyle, ForecastsGiven forecasts) {
    List<Given> given = new ArrayList<>();
    for (ForecastsGiven.Kept kept : forecasts.of(gyle.gyleId())) {
      after(gyle, kept.afterSeq())
          .ifPresent(
              point ->
                  GivenForecast.read(kept.document())
                      .ifPresent(read -> given.add(new Given(kept.seq(), point, read))));
    }
    return given;
  }

  private static Optional<String> after(Gyle gyle, long seq) {
    if (gyle.brewedBy().filter(plan -> plan.seq() == seq).isPresent()) {
      return Optional.of("");
    }
    return gyle.happened().stream()
        .filter(note -> note.seq() == seq)
        .map(DayNote::event)
        .filter(Event.PointReached.class::isInstance)
        .map(event -> ((Event.PointReached) event).milestone())
        .findFirst();
  }
}
