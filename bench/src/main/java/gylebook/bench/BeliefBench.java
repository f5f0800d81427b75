package gylebook.bench;

import gylebook.brewday.DayNote;
import gylebook.brewday.Followed;
import gylebook.brewday.Follower;
import gylebook.estimate.Belief;
import gylebook.estimate.Reading;
import gylebook.estimate.Weighed;
import gylebook.journal.Event;
import gylebook.plan.Demo;
import gylebook.plan.Milestone;
import gylebook.rig.DemoRigs;
import gylebook.rig.Probe;
import gylebook.simulate.Ahead;
import gylebook.simulate.BrewDay;
import gylebook.simulate.DemoDays;
import gylebook.simulate.Ensemble;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.RunnerException;

/// What a reading costs, in wall time: the twins moved on and corrected, the rest of their day
/// looked at anew, all of it as the page asks for it, and a long day folded from its notes. Beside
/// them a plain forecast of the day by as many members, from cold liquor.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(3)
public class BeliefBench {
  private static final long SEED = 20;
  private static final int NOTES = 25_000;
  private static final double HEATED_SEC = 900;
  private static final double APART_SEC = 60;
  private static final Instant START = Instant.parse("2026-03-14T08:00:00Z");

  private final BrewDay day = DemoDays.household();
  private final Belief heated = heated();
  private final Follower follower = follower();
  private final List<DayNote> notes = notes(follower);
  private final List<DayNote> heating = new ArrayList<>(notes.subList(0, 400));
  private Belief belief = heated.copy();
  private int lates;

  /// JMH makes one for each fork.
  public BeliefBench() {}

  private Belief heated() {
    Belief belief = Belief.atStart(day, Follower.instruments(day.rig()), SEED, Belief.USUAL_COUNT);
    belief.advance(HEATED_SEC);
    return belief;
  }

  private static Follower follower() {
    return Follower.of(Demo.copperBitter(), DemoRigs.household(), 100, SEED, START).orElseThrow();
  }

  private static Instant at(double sec) {
    return START.plusMillis(Math.round(1000 * sec));
  }

  /// A whole day as planned: every point noted, and the steering thermometer as the plan has it, so
  /// often that there are so many notes.
  private static List<DayNote> notes(Follower follower) {
    List<Milestone> points = follower.plan().forecast().milestones();
    List<DayNote> notes = new ArrayList<>();
    notes.add(note(0, 0, new Event.DayStarted(1)));
    for (Milestone point : points) {
      notes.add(note(notes.size(), point.atSec().middle(), new Event.PointReached(point.key())));
    }
    double wholeSec = points.getLast().atSec().middle();
    int readings = NOTES - notes.size();
    for (int i = 0; i < readings; i++) {
      double sec = wholeSec * (i + 0.5) / readings;
      notes.add(note(notes.size(), sec, warm(wortC(points, sec))));
    }
    notes.sort(Comparator.comparing(DayNote::at).thenComparingLong(DayNote::seq));
    return notes;
  }

  private static DayNote note(long seq, double sec, Event event) {
    return new DayNote(seq, at(sec), at(sec), event, true);
  }

  private static Event warm(double wortC) {
    Probe probe =
        DemoRigs.household().probes().stream().filter(Probe::steers).findFirst().orElseThrow();
    String shown = String.format(Locale.ROOT, "%.1f \u00b0C", wortC);
    return new Event.ReadingTaken(probe.name(), probe.place().name(), true, shown, "");
  }

  private static double wortC(List<Milestone> points, double sec) {
    Milestone before = points.getFirst();
    for (Milestone point : points) {
      double toSec = point.atSec().middle();
      double fromSec = before.atSec().middle();
      if (toSec >= sec && toSec > fromSec) {
        double shareFrac = Math.clamp((sec - fromSec) / (toSec - fromSec), 0, 1);
        double fromC = before.wortC().middle();
        return fromC + shareFrac * (point.wortC().middle() - fromC);
      }
      before = point;
    }
    return before.wortC().middle();
  }

  /// The yardstick: as many days as there are twins, from cold liquor.
  @Benchmark
  public Object plainForecast() {
    return Ensemble.of(day, SEED, Belief.USUAL_COUNT, () -> false, _ -> {});
  }

  /// A minute later one thermometer is read: all twins are moved on and corrected.
  @Benchmark
  public Weighed oneReading() {
    if (belief.clockSec() > 2 * HEATED_SEC) {
      belief = heated.copy();
    }
    Probe probe = day.rig().probes().getFirst();
    double atSec = belief.clockSec() + APART_SEC;
    return belief.weigh(Reading.temperature(probe.name(), probe.place(), 45, atSec));
  }

  /// The rest of the day from where every twin stands.
  @Benchmark
  public Ahead restOfTheDay() {
    return heated.ahead();
  }

  /// All that the page asks after a reading: belief, bank of suppositions, forecast, witnesses,
  /// guards.
  @Benchmark
  public Followed pageAfterReading() {
    if (heating.size() > 800) {
      heating.subList(400, heating.size()).clear();
    }
    heating.add(notes.get(heating.size()));
    return follower.at(heating, heating.getLast().at());
  }

  /// A day of so many notes, told from nothing to its end by a program that just started.
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  @Fork(5)
  public Followed foldOfLongDay() {
    return follower.at(notes, notes.getLast().at());
  }

  /// The same day once told: one more note that happened ten minutes before the last.
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 2)
  @Measurement(iterations = 6)
  @Fork(2)
  public Followed lateNoteOnLongDay() {
    List<DayNote> late = new ArrayList<>(notes);
    double sec = (notes.getLast().at().toEpochMilli() - START.toEpochMilli()) / 1000.0 - 600;
    lates++;
    late.add(note(NOTES + lates, sec + lates, warm(60)));
    late.sort(Comparator.comparing(DayNote::at).thenComparingLong(DayNote::seq));
    return follower.at(late, notes.getLast().at());
  }

  /// Runs them all and writes one line each, and one a fork and iteration.
  public static void main(String[] words) throws RunnerException {
    ForecastBench.run(BeliefBench.class);
  }
}
