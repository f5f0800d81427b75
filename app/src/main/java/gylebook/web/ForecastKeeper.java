package gylebook.web;

import gylebook.brewday.Command;
import gylebook.brewday.FixedPlan;
import gylebook.brewday.GivenForecast;
import gylebook.brewday.Gyle;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/// Keeps what was forecast: when a plan was fixed, and again at each point of the day that was
/// reached.
///
/// It hears of what was written after that stands in the book, and works on a thread of its own, a
/// moment later, so that no note waits for it. A forecast that cannot be kept is tried again while
/// it is fresh. One that would come too late is left out: what is reckoned after the fact is no
/// forecast. Of points that were noted in one go only the last has one.
final class ForecastKeeper {
  /// The note is answered first.
  private static final Duration PAUSE = Duration.ofSeconds(1);

  private static final Duration AGAIN = Duration.ofSeconds(30);

  /// What is being reckoned when the program ends takes no longer.
  private static final Duration PATIENCE = Duration.ofSeconds(10);

  /// So long after its point was noted a forecast counts as given there (our judgement).
  private static final Duration FRESH = Duration.ofMinutes(10);

  private final Desk desk;
  private final Papers papers;
  private final Followers followers;
  private final Set<String> waiting = ConcurrentHashMap.newKeySet();
  private final Map<String, String> troubleByGyle = new ConcurrentHashMap<>();
  private final ScheduledExecutorService hand =
      Executors.newSingleThreadScheduledExecutor(
          Thread.ofPlatform().daemon().name("forecasts").factory());
  private Runnable deaf = () -> {};

  ForecastKeeper(Desk desk, Papers papers, Followers followers) {
    this.desk = desk;
    this.papers = papers;
    this.followers = followers;
  }

  /// After what a forecast is to be given.
  ///
  /// @param seq the plan or the point
  /// @param noted when that was written down
  /// @param atPoint whether it is a point of the day
  private record Due(long seq, Instant noted, boolean atPoint) {}

  /// Begins to listen, and makes up for what the program did not get to before it was ended.
  void begin() {
    deaf = desk.listen(this::soon);
    desk.book().gyles().forEach(gyle -> soon(gyle.gyleId()));
  }

  /// Listens no longer, and writes no more once this returns.
  void end() {
    deaf.run();
    hand.shutdownNow();
    try {
      var _ = hand.awaitTermination(PATIENCE.toSeconds(), TimeUnit.SECONDS);
    } catch (InterruptedException _) {
      Thread.currentThread().interrupt();
    }
  }

  /// Why the forecast that is due on a gyle's day is not kept, if it is not.
  Optional<String> trouble(String gyleId) {
    return Optional.ofNullable(troubleByGyle.get(gyleId));
  }

  private void soon(String gyleId) {
    boolean ofGyle = !gyleId.equals(Journal.FORECASTS) && !gyleId.equals(Journal.HOUSE);
    if (ofGyle && waiting.add(gyleId)) {
      later(
          PAUSE,
          () -> {
            waiting.remove(gyleId);
            look(gyleId);
          });
    }
  }

  private void later(Duration pause, Runnable work) {
    try {
      var _ = hand.schedule(work, pause.toMillis(), TimeUnit.MILLISECONDS);
    } catch (RejectedExecutionException _) {
      // The program ends; the next one looks when it starts.
      return;
    }
  }

  private void look(String gyleId) {
    Optional<Gyle> gyle = desk.book().gyle(gyleId);
    Optional<Due> due = gyle.flatMap(ForecastKeeper::due).filter(one -> missing(gyleId, one));
    if (gyle.isEmpty() || due.isEmpty()) {
      troubleByGyle.remove(gyleId);
      return;
    }
    Optional<String> trouble = kept(gyle.get(), due.get());
    if (trouble.isPresent()) {
      troubleByGyle.put(gyleId, trouble.get());
      later(AGAIN, () -> look(gyleId));
    } else {
      troubleByGyle.remove(gyleId);
    }
  }

  private boolean missing(String gyleId, Due due) {
    boolean fresh = Duration.between(due.noted(), desk.now()).compareTo(FRESH) <= 0;
    return fresh && desk.book().forecasts().after(gyleId, due.seq()).isEmpty();
  }

  /// The last point that was reached; before the first one, the plan.
  private static Optional<Due> due(Gyle gyle) {
    if (gyle.started().isEmpty()) {
      return gyle.plan().map(plan -> new Due(plan.seq(), plan.at(), false));
    }
    Instant began = gyle.started().get().noted();
    return gyle.happened().stream()
        .filter(note -> note.event() instanceof Event.PointReached)
        .reduce((_, last) -> last)
        .map(point -> new Due(point.seq(), point.noted(), true))
        .or(() -> gyle.brewedBy().map(plan -> new Due(plan.seq(), later(plan, began), false)));
  }

  private static Instant later(FixedPlan plan, Instant began) {
    return plan.at().isAfter(began) ? plan.at() : began;
  }

  /// Why it is not kept; empty when it is.
  private Optional<String> kept(Gyle gyle, Due due) {
    Optional<GivenForecast> forecast;
    try {
      forecast = due.atPoint() ? atPoint(gyle) : byPlan(gyle, due.seq());
    } catch (IllegalStateException | IllegalArgumentException failure) {
      return Optional.of("It cannot be reckoned: " + failure.getMessage());
    }
    if (forecast.isEmpty()) {
      // Nothing can be forecast; the page says why.
      return Optional.empty();
    }
    Command keep = new Command.KeepForecast(gyle.gyleId(), due.seq(), forecast.get().text());
    Desk.Answer answer =
        desk.note(Journal.FORECASTS, keep, "forecast-" + due.seq(), Optional.empty());
    return switch (answer) {
      case Desk.Answer.Written _ -> Optional.empty();
      case Desk.Answer.NotSaved(String says) -> Optional.of(says + " It is tried again.");
      case Desk.Answer.Refused(String because, String _) -> Optional.of(because);
      case Desk.Answer.Overtaken _ -> Optional.of("Something else was written just then.");
    };
  }

  private Optional<GivenForecast> atPoint(Gyle gyle) {
    return followers
        .of(gyle)
        .map(follower -> follower.given(gyle.happened(), gyle.now(desk.now())));
  }

  private Optional<GivenForecast> byPlan(Gyle gyle, long planSeq) {
    if (gyle.started().isPresent()) {
      return followers.of(gyle).map(follower -> GivenForecast.of(follower.plan()));
    }
    return gyle.plans().stream()
        .filter(plan -> plan.seq() == planSeq)
        .findFirst()
        .flatMap(this::plan)
        .map(GivenForecast::of);
  }

  private Optional<Plan> plan(FixedPlan fixed) {
    Planned planned =
        Planner.plan(
            papers.recipe(fixed.recipe()),
            papers.rig(fixed.rig()),
            fixed.days(),
            fixed.seed(),
            Thread.currentThread()::isInterrupted,
            _ -> {});
    return switch (planned) {
      case Planned.Feasible(Plan found) -> Optional.of(found);
      case Planned.Impossible impossible -> impossible.nearest();
    };
  }
}
