package gylebook.simulate;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/// Many simulated days of one brew, each with its own luck: a column of numbers a quantity.
///
/// Days are independent and each depends on its own number only, so the columns are the same at any
/// thread count and the first hundred of a thousand are the hundred alone.
@AnyUnit("columns of every quantity")
public final class Ensemble {
  /// The lines of the day chart are kept for so many days; their bands need no more.
  public static final int DAYS_WITH_LINES = 200;

  /// Spacing of the time grid of the lines.
  public static final double GRID_SEC = 120;

  private static final int BLOCK = 25;

  private final int days;
  private final double[][] outcomes;
  private final double[][][] milestones;
  private final double[][] draws;
  private final double[][][] lines;
  private final List<String> keys;
  private final List<String> doubts;

  private Ensemble(Trial first, int days, List<String> doubts) {
    this.days = days;
    this.keys = first.log.keys();
    this.doubts = doubts;
    int columns = DayLog.Column.values().length;
    this.outcomes = new double[Outcome.values().length][days];
    this.milestones = new double[keys.size()][columns][days];
    this.draws = new double[doubts.size()][days];
    this.lines = new double[DayLog.Line.values().length][Math.min(days, DAYS_WITH_LINES)][];
  }

  /// One day with every number at its middle.
  public static Ensemble nominal(BrewDay day) {
    Trial trial = new Trial(day, 0);
    trial.run(-1, true);
    Ensemble single = new Ensemble(trial, 1, List.of());
    single.take(trial, 0, true);
    return single;
  }

  /// The outcomes of the day without luck alone: what the planner asks again and again.
  public static double[] nominalOutcomes(BrewDay day) {
    Trial trial = new Trial(day, 0);
    trial.run(-1, false);
    return trial.out;
  }

  /// Many days.
  ///
  /// @param day what is brewed
  /// @param seed of all draws
  /// @param days how many
  /// @param stop asked now and then; when it says so the result is empty
  /// @param progress told how many days are done
  public static Optional<Ensemble> of(
      BrewDay day, long seed, int days, BooleanSupplier stop, IntConsumer progress) {
    Trial first = new Trial(day, seed);
    first.run(0, true);
    Ensemble ensemble = new Ensemble(first, days, first.doubts.doubtfulNames());
    int blocks = (days + BLOCK - 1) / BLOCK;
    AtomicInteger done = new AtomicInteger();
    ThreadLocal<Trial> trials = ThreadLocal.withInitial(() -> new Trial(day, seed));
    IntStream.range(0, blocks)
        .parallel()
        .forEach(
            block -> {
              if (!stop.getAsBoolean()) {
                ensemble.block(trials.get(), block);
                progress.accept(done.addAndGet(BLOCK));
              }
            });
    return stop.getAsBoolean() ? Optional.empty() : Optional.of(ensemble);
  }

  private void block(Trial trial, int block) {
    int end = Math.min(days, (block + 1) * BLOCK);
    for (int member = block * BLOCK; member < end; member++) {
      boolean withLines = member < DAYS_WITH_LINES;
      trial.run(member, withLines);
      take(trial, member, withLines);
    }
  }

  private void take(Trial trial, int member, boolean withLines) {
    if (trial.log.milestones() != keys.size()) {
      throw new IllegalStateException(
          "day " + member + " has " + trial.log.milestones() + " milestones, not " + keys.size());
    }
    for (int i = 0; i < outcomes.length; i++) {
      outcomes[i][member] = trial.out[i];
    }
    for (int i = 0; i < keys.size(); i++) {
      for (DayLog.Column column : DayLog.Column.values()) {
        milestones[i][column.ordinal()][member] = trial.log.at(i, column);
      }
    }
    for (int i = 0; i < draws.length; i++) {
      draws[i][member] = trial.doubts.lastDrawn(i);
    }
    if (withLines) {
      for (DayLog.Line line : DayLog.Line.values()) {
        lines[line.ordinal()][member] = trial.log.line(line).clone();
      }
    }
  }

  /// How many days.
  public int days() {
    return days;
  }

  /// One outcome over all days.
  public double[] outcome(Outcome outcome) {
    return outcomes[outcome.ordinal()];
  }

  /// The milestones' names, in the order of the day.
  public List<String> milestoneKeys() {
    return keys;
  }

  /// What was noted at a milestone, over all days.
  public double[] milestone(int number, DayLog.Column column) {
    return milestones[number][column.ordinal()];
  }

  /// One line on the time grid, for each of the first days.
  public List<double[]> lines(DayLog.Line line) {
    return new ArrayList<>(List.of(lines[line.ordinal()]));
  }

  /// The names of the uncertain numbers.
  public List<String> doubts() {
    return doubts;
  }

  /// The draws of one uncertain number, over all days.
  public double[] draws(int doubt) {
    return draws[doubt];
  }

  /// What one thread needs to run one day after another without making garbage.
  private static final class Trial {
    final BrewDay day;
    final Doubts doubts;
    final Member member = new Member();
    final Lots lots = new Lots();
    final Simulator simulator = new Simulator();
    final DayLog log = new DayLog(GRID_SEC, 12 * 3600);
    final double[] out = new double[Outcome.values().length];

    Trial(BrewDay day, long seed) {
      this.day = day;
      this.doubts = new Doubts(seed);
    }

    void run(int number, boolean withLines) {
      doubts.turnTo(number);
      member.read(day.rig(), doubts);
      lots.read(day.recipe(), day.settings(), doubts);
      BrewState state = new BrewState();
      Deeds.fill(state, day.settings().liquorL() * lots.liquorFactor, member.tapC);
      simulator.run(day.actions(member, lots), member, state, log, withLines);
      Harvest.gather(day, member, lots, state, log, out);
    }
  }
}
