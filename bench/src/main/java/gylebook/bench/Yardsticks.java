package gylebook.bench;

import gylebook.plan.Planner;
import gylebook.rig.DemoRigs;
import gylebook.simulate.BrewDay;
import gylebook.simulate.DayScript;
import gylebook.simulate.DemoDays;
import gylebook.simulate.Ensemble;
import gylebook.simulate.PlainDay;
import gylebook.simulate.Simulator;
import gylebook.simulate.WholeDay;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.nonstiff.AdamsMoultonIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/// The simulator beside its yardsticks, in one process, taking turns: the same scheme in plain C,
/// and general adaptive solvers set to the accuracy that the simulator has.
///
/// Times are processor time of one thread, so what else runs on the machine disturbs little.
public final class Yardsticks {
  private static final long SEED = 20;
  private static final int MEMBERS = 16;
  private static final int ROUNDS = 9;

  private final List<DemoDays.Ready> days = new ArrayList<>();
  private final Map<String, List<Double>> microseconds = new LinkedHashMap<>();
  private double[][] truth = {};

  private Yardsticks(BrewDay day) {
    for (int number = 0; number < MEMBERS; number++) {
      days.add(DemoDays.ready(day, SEED, number));
    }
  }

  /// Measures and tells.
  ///
  /// @param words the folder of the C sources
  public static void main(String[] words) throws IOException {
    Yardsticks sticks = new Yardsticks(DemoDays.household());
    Path folder = Files.createTempDirectory("plain-day");
    PlainC plainC = PlainC.built(Path.of(words[0]), folder, sticks.days);
    told(
        "Java %s, %s, %d processors",
        Runtime.version(),
        System.getProperty("os.arch"),
        Runtime.getRuntime().availableProcessors());
    told(
        "load average at the start: %.1f",
        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    told("C: gcc %s", PlainC.flags());
    told("demo household, %d drawn members; truth: DP853 at 1e-10, steps of at most 15 s", MEMBERS);
    sticks.compare(plainC);
    sticks.wholeForecasts();
    told(
        "load average at the end: %.1f",
        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
  }

  private void compare(PlainC plainC) {
    truth = rows(ready -> plain(ready, 1e-10, 15, false, Kind.DP853));
    double[] ours = worst(rows(ready -> DayScript.ran(ready, new Simulator())));
    told(
        "%nworst error against the truth%-17s %10s %10s %10s %10s %10s",
        "", "OG share", "iso mg/L", "ferm.share", "kettle K", "when s");
    table("the simulator (Java)", ours);
    table("the simulator (C)", worst(plainC.ends().toArray(double[][]::new)));
    Map<String, Supplier<Runnable>> general = new LinkedHashMap<>();
    for (boolean tabled : new boolean[] {false, true}) {
      for (Kind kind : Kind.values()) {
        double rtol = matching(kind, tabled, ours);
        String name =
            String.format(Locale.ROOT, "%s rtol %.0e%s", kind, rtol, tabled ? ", our tables" : "");
        table(name, worst(rows(ready -> plain(ready, rtol, 60, tabled, kind))));
        general.put(name, () -> () -> days.forEach(r -> plain(r, rtol, 60, tabled, kind)));
      }
    }
    general.put(
        "DP853 rtol 1e-10, 15 s",
        () -> () -> days.forEach(r -> plain(r, 1e-10, 15, false, Kind.DP853)));
    takeTurns(plainC, general);
  }

  private enum Kind {
    DP54,
    DP853,
    ADAMS_MOULTON_4
  }

  private static ODEIntegrator integrator(Kind kind, double rtol, double mostSec) {
    return switch (kind) {
      case DP54 -> new DormandPrince54Integrator(1e-6, mostSec, rtol, rtol);
      case DP853 -> new DormandPrince853Integrator(1e-6, mostSec, rtol, rtol);
      case ADAMS_MOULTON_4 -> new AdamsMoultonIntegrator(4, 1e-6, mostSec, rtol, rtol);
    };
  }

  /// The loosest power of ten (and half) at which this solver errs no more than we do in anything.
  private double matching(Kind kind, boolean tabled, double[] ours) {
    for (double rtol : new double[] {1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 3e-6, 1e-6}) {
      try {
        double[] theirs = worst(rows(ready -> plain(ready, rtol, 60, tabled, kind)));
        boolean asGood = true;
        for (int i = 0; i < ours.length; i++) {
          asGood &= theirs[i] <= ours[i];
        }
        if (asGood) {
          return rtol;
        }
      } catch (IllegalArgumentException | MathRuntimeException wild) {
        told("  %s at rtol %.0e leaves the range of the formulas", kind, rtol);
      }
    }
    return 1e-7;
  }

  private static double[] plain(
      DemoDays.Ready ready, double rtol, double mostSec, boolean tabled, Kind kind) {
    ODEIntegrator integrator = integrator(kind, rtol, mostSec);
    PlainDay day = new PlainDay(PlainDay.by(integrator, mostSec, 0.01), tabled);
    return DayScript.plain(ready, day);
  }

  private double[][] rows(java.util.function.Function<DemoDays.Ready, double[]> run) {
    return days.stream().map(run).toArray(double[][]::new);
  }

  /// Worst over members and milestones: strength share, iso-alpha acid, fermentable share, kettle,
  /// time of a milestone. The end of the run-off is left out of the kettle's: it is empty then.
  private double[] worst(double[][] rows) {
    double[] worst = new double[5];
    for (int d = 0; d < rows.length; d++) {
      double[] is = rows[d];
      double[] should = truth[d];
      int milestones = (int) should[1];
      int end = 2 + 6 * milestones;
      raise(worst, 0, share(is, end) - share(should, end));
      raise(worst, 1, isoMgPerL(is, end) - isoMgPerL(should, end));
      raise(worst, 2, is[end + 2] / is[end + 1] - should[end + 2] / should[end + 1]);
      for (int m = 0; m < milestones - 1; m++) {
        raise(worst, 3, is[2 + 6 * m + 1] - should[2 + 6 * m + 1]);
        raise(worst, 4, is[2 + 6 * m] - should[2 + 6 * m]);
      }
    }
    return worst;
  }

  private static void raise(double[] worst, int at, double error) {
    worst[at] = Math.max(worst[at], Math.abs(error));
  }

  private static double share(double[] row, int end) {
    return row[end + 1] / (row[end] + row[end + 1]);
  }

  private static double isoMgPerL(double[] row, int end) {
    return row[end + 9] / (row[end] + row[end + 1]);
  }

  private static void table(String name, double[] worst) {
    told(
        "  %-44s %10.1e %10.1e %10.1e %10.1e %10.1e",
        name, worst[0], worst[1], worst[2], worst[3], worst[4]);
  }

  private void takeTurns(PlainC plainC, Map<String, Supplier<Runnable>> general) {
    Simulator simulator = new Simulator();
    WholeDay whole = new WholeDay(DemoDays.household(), SEED);
    Runnable days1 = () -> days.forEach(ready -> DayScript.ran(ready, simulator));
    Runnable wholes =
        () -> {
          for (int i = 0; i < MEMBERS; i++) {
            whole.strengthPlato(i);
          }
        };
    for (int i = 0; i < 400; i++) {
      days1.run();
      wholes.run();
    }
    general.values().forEach(work -> repeat(work.get(), 6));
    for (int round = 0; round < ROUNDS; round++) {
      note("C, the day", () -> 1e6 * plainC.daySec(200));
      note("Java, the day", () -> perDay(days1, 200));
      note("Java, with draws and outcomes", () -> perDay(wholes, 200));
      general.forEach((name, work) -> note(name, () -> perDay(work.get(), 1)));
    }
    told(
        "%nprocessor time of one member's day, microseconds: median (least to most of %d rounds)",
        ROUNDS);
    List<Double> java = microseconds.getOrDefault("Java, the day", List.of());
    microseconds.forEach(
        (name, us) -> {
          double[] ratios = new double[us.size()];
          for (int i = 0; i < ratios.length; i++) {
            ratios[i] = us.get(i) / java.get(i);
          }
          told(
              "  %-44s %9.1f (%.1f to %.1f)  against Java, the day: %.2f (%.2f to %.2f)",
              name, median(us), least(us), most(us), median(ratios), least(ratios), most(ratios));
        });
    microseconds.forEach((name, us) -> told("raw %-44s %s", name, line(us)));
  }

  private void note(String name, DoubleSupplier us) {
    microseconds.computeIfAbsent(name, _ -> new ArrayList<>()).add(us.getAsDouble());
  }

  private static void repeat(Runnable work, int times) {
    for (int i = 0; i < times; i++) {
      work.run();
    }
  }

  private static double perDay(Runnable work, int times) {
    var threads = ManagementFactory.getThreadMXBean();
    long start = threads.getCurrentThreadCpuTime();
    repeat(work, times);
    return (threads.getCurrentThreadCpuTime() - start) / 1e3 / times / MEMBERS;
  }

  /// Wall time and processor time of all threads, so that a busy machine can be seen through.
  private void wholeForecasts() {
    BrewDay day = DemoDays.household();
    Map<String, Runnable> works = new LinkedHashMap<>();
    works.put("1000 days", () -> Ensemble.of(day, SEED, 1000, () -> false, _ -> {}));
    works.put("10000 days", () -> Ensemble.of(day, SEED, 10_000, () -> false, _ -> {}));
    works.put("edit: plan, 1000 days", () -> edit(1000));
    works.put("keystroke: plan, 100 days", () -> edit(100));
    works.put("keystroke: plan, 1 day", () -> edit(1));
    works.values().forEach(work -> repeat(work, 8));
    told("%nwarm, wall ms and processor ms of all threads: median (least to most of %d)", ROUNDS);
    var system =
        (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    works.forEach(
        (name, work) -> {
          List<Double> wall = new ArrayList<>();
          List<Double> processor = new ArrayList<>();
          for (int round = 0; round < ROUNDS; round++) {
            long wallStart = System.nanoTime();
            long processorStart = system.getProcessCpuTime();
            work.run();
            processor.add((system.getProcessCpuTime() - processorStart) / 1e6);
            wall.add((System.nanoTime() - wallStart) / 1e6);
          }
          told(
              "  %-28s wall %7.1f (%.1f to %.1f)  processor %7.1f (%.1f to %.1f)",
              name,
              median(wall),
              least(wall),
              most(wall),
              median(processor),
              least(processor),
              most(processor));
          told("raw %-28s wall %s", name, line(wall));
          told("raw %-28s processor %s", name, line(processor));
        });
  }

  private int turn;

  private void edit(int days) {
    Planner.plan(
        ForecastBench.edited(turn++), DemoRigs.household(), days, SEED, () -> false, _ -> {});
  }

  private static String line(List<Double> values) {
    StringBuilder line = new StringBuilder();
    values.forEach(value -> line.append(String.format(Locale.ROOT, " %.1f", value)));
    return line.toString();
  }

  private static double median(List<Double> values) {
    return median(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static double least(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
  }

  private static double most(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
  }

  private static double least(double[] values) {
    return Arrays.stream(values).min().orElseThrow();
  }

  private static double most(double[] values) {
    return Arrays.stream(values).max().orElseThrow();
  }

  @SuppressWarnings("AnnotateFormatMethod")
  private static void told(String form, Object... values) {
    System.out.println(String.format(Locale.ROOT, form, values));
  }
}
