package gylebook.bench;

import gylebook.plan.Demo;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import gylebook.simulate.DemoDays;
import gylebook.simulate.Ensemble;
import gylebook.simulate.WholeDay;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.Collection;
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
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/// What the page waits for, in wall time: one day, a thousand, ten thousand, a plan, an edit.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(3)
public class ForecastBench {
  private static final long SEED = Planner.USUAL_SEED;

  private final BrewDay day = DemoDays.household();
  private final Rig rig = DemoRigs.household();
  private final WholeDay whole = new WholeDay(day, SEED);
  private int turn;

  /// What a keystroke comes after; apart, so that a first forecast finds nothing loaded.
  @State(Scope.Benchmark)
  public static class Whole {
    private final Planner.Before before;

    /// Plans once.
    public Whole() {
      Recipe recipe = Demo.copperBitter();
      Rig rig = DemoRigs.household();
      Planned planned = Planner.plan(recipe, rig, 1000, SEED, () -> false, _ -> {});
      before = new Planner.Before(recipe, rig, ((Planned.Feasible) planned).plan());
    }
  }

  /// JMH makes one for each fork.
  public ForecastBench() {}

  /// One member, one day, warm: draws, kettle, day, outcomes.
  @Benchmark
  public double oneMemberOneDay() {
    return whole.strengthPlato(turn++ & 1023);
  }

  /// A thousand days, warm, all processors.
  @Benchmark
  public Object thousandDays() {
    return Ensemble.of(day, SEED, 1000, () -> false, _ -> {});
  }

  /// Ten thousand days, warm, all processors.
  @Benchmark
  public Object tenThousandDays() {
    return Ensemble.of(day, SEED, 10_000, () -> false, _ -> {});
  }

  /// An edit: the recipe asks for another length, settings are solved, a thousand days follow.
  @Benchmark
  public Planned edit() {
    return planned(edited(turn++), 1000);
  }

  /// A keystroke: the first look at the same, a hundred days that lean on the plan before.
  @Benchmark
  public Planned keystroke(Whole planned) {
    return Planner.look(edited(turn++), rig, 100, SEED, planned.before, () -> false);
  }

  /// The very first forecast of a fresh machine: nothing is compiled or loaded yet.
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  @Fork(7)
  public Planned firstForecast() {
    return planned(Demo.copperBitter(), 1000);
  }

  private Planned planned(Recipe recipe, int days) {
    return Planner.plan(recipe, rig, days, SEED, () -> false, _ -> {});
  }

  static Recipe edited(int turn) {
    Recipe recipe = Demo.copperBitter();
    double massG = 28 + turn % 5;
    Entered mass = Entered.of(massG, Unit.known(Quantity.SMALL_MASS, "g"));
    return recipe.with(
        recipe.grist(), recipe.hops().stream().map(hop -> hop.withMass(mass)).toList());
  }

  /// Runs them all and writes one line each, and one a fork and iteration.
  public static void main(String[] words) throws RunnerException {
    run(ForecastBench.class);
    run(BeliefBench.class);
    run(DosesBench.class);
  }

  /// Runs one class of them.
  static void run(Class<?> bench) throws RunnerException {
    OptionsBuilder options = new OptionsBuilder();
    options.include(bench.getSimpleName());
    options.verbosity(VerboseMode.SILENT);
    options.jvmArgsAppend("-XX:+UseSerialGC", "--sun-misc-unsafe-memory-access=allow");
    Collection<RunResult> results = new Runner(options.build()).run();
    for (RunResult result : results) {
      String name = result.getParams().getBenchmark();
      name = name.substring(name.lastIndexOf('.') + 1);
      var all = result.getPrimaryResult().getStatistics();
      System.out.printf(
          Locale.ROOT,
          "jmh %-16s ms: median %.4g, least %.4g, p95 %.4g, p99 %.4g, most %.4g, n %d%n",
          name,
          all.getPercentile(50),
          all.getMin(),
          all.getPercentile(95),
          all.getPercentile(99),
          all.getMax(),
          all.getN());
      int fork = 0;
      for (var run : result.getBenchmarkResults()) {
        StringBuilder line = new StringBuilder();
        for (var iteration : run.getIterationResults()) {
          double ms = iteration.getPrimaryResult().getStatistics().getPercentile(50);
          line.append(String.format(Locale.ROOT, " %.4g", ms));
        }
        System.out.printf("raw %-16s fork %d, median of each iteration:%s%n", name, ++fork, line);
      }
    }
  }
}
