package gylebook.bench;

import gylebook.plan.Demo;
import gylebook.plan.LiquorSolver;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.science.LiquorLevels;
import gylebook.simulate.DemoDays;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Settings;
import gylebook.simulate.WholeDay;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
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

/// What a wanted liquor costs, in wall time: the salts and the acid for invented wishes, by the
/// tenth and by the hundredth of a gram, and the first of them on a fresh machine. Beside them, in
/// the same run, one day of one member, and what the page waits for anyway: a thousand warm days,
/// and the very first forecast.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(3)
public class DosesBench {
  private static final long SEED = Planner.USUAL_SEED;
  private static final int WISHES = 64;
  // 20 L in the mash at 70 C, 5 L held back for after the bag: two problems for one wish.
  private static final Settings SET = new Settings(20, 70, 5, 1, 1, 0.7, 0);

  private final Recipe soft =
      Demo.copperBitter()
          .withLiquor(new Liquor("tap", new Liquor.Ions(12, 2, 8, 10, 9, 120), List.of()));
  private final List<LiquorLevels> wishes = wishes();
  private final List<LiquorSolver.Stock> coarse = house(0.1);
  private final List<LiquorSolver.Stock> fine = house(0.01);
  private final WholeDay whole = new WholeDay(DemoDays.household(), SEED);
  private int turn;

  /// JMH makes one for each fork.
  public DosesBench() {}

  private static List<LiquorSolver.Stock> house(double stepNumber) {
    return List.of(
        new LiquorSolver.Stock("gypsum", Liquor.Agent.GYPSUM, stepNumber),
        new LiquorSolver.Stock(
            "calcium chloride", Liquor.Agent.CALCIUM_CHLORIDE_DIHYDRATE, stepNumber),
        new LiquorSolver.Stock("Epsom salt", Liquor.Agent.EPSOM_SALT, stepNumber),
        new LiquorSolver.Stock("table salt", Liquor.Agent.TABLE_SALT, stepNumber),
        new LiquorSolver.Stock("baking soda", Liquor.Agent.BAKING_SODA, stepNumber),
        new LiquorSolver.Stock("lactic acid 88 %", Liquor.Agent.LACTIC_ACID, stepNumber));
  }

  /// Every ion wanted in two wishes of three, a pH in all.
  private static List<LiquorLevels> wishes() {
    SplittableRandom luck = new SplittableRandom(SEED);
    List<LiquorLevels> wishes = new ArrayList<>();
    for (int i = 0; i < WISHES; i++) {
      wishes.add(
          new LiquorLevels(
              one(luck, 40, 150),
              one(luck, 3, 25),
              one(luck, 8, 60),
              one(luck, 20, 150),
              one(luck, 20, 300),
              Double.NaN,
              luck.nextDouble(5.25, 5.55)));
    }
    return wishes;
  }

  private static double one(SplittableRandom luck, double leastMgPerL, double mostMgPerL) {
    double wantedMgPerL = luck.nextDouble(leastMgPerL, mostMgPerL);
    return luck.nextInt(3) < 2 ? wantedMgPerL : Double.NaN;
  }

  private LiquorSolver.Treatment doses(List<LiquorSolver.Stock> house) {
    return LiquorSolver.solved(soft, SET, wishes.get(turn++ % WISHES), house);
  }

  /// The yardstick in one thread, as the doses are: one member, one day.
  @Benchmark
  public double oneMemberOneDay() {
    return whole.strengthPlato(turn++ & 1023);
  }

  /// The other yardstick: what an edit of the page waits for as well, on all processors.
  @Benchmark
  public Object thousandDays() {
    return Ensemble.of(DemoDays.household(), SEED, 1000, () -> false, _ -> {});
  }

  /// Salts and acid to the tenth of a gram.
  @Benchmark
  public LiquorSolver.Treatment dosesInTenths() {
    return doses(coarse);
  }

  /// The same wishes to the hundredth of a gram, ten times as many steps of each.
  @Benchmark
  public LiquorSolver.Treatment dosesInHundredths() {
    return doses(fine);
  }

  /// The first wish of a fresh machine.
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  @Fork(7)
  public LiquorSolver.Treatment firstDoses() {
    return doses(coarse);
  }

  /// The yardstick of the first wish: the very first forecast.
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  @Fork(7)
  public Planned firstForecast() {
    return Planner.plan(
        Demo.copperBitter(), DemoRigs.household(), 1000, SEED, () -> false, _ -> {});
  }

  /// Runs them all and writes one line each, and one a fork and iteration.
  public static void main(String[] words) throws RunnerException {
    ForecastBench.run(DosesBench.class);
  }
}
