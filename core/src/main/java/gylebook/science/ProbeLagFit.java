package gylebook.science;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/// The time constant of a probe, found from what it read after it was put elsewhere.
///
/// For a lag that is tried, start and end of the course follow by a straight line through
/// `exp(-t/tau)`; so one number alone is searched. A sheathed probe has a second, shorter lag of
/// its sheath: of 6 mm in moving water half the step takes 10.4 s and nine tenths 23.2 s, where a
/// single lag would have 3.3 times as much. One lag is then a middle way, and the misfit says so.
public final class ProbeLagFit {
  private static final int LEAST_COUNT = 4;
  private static final int GRID_COUNT = 60;
  private static final double SHORTEST_RATIO = 0.2;
  private static final double LONGEST_RATIO = 5;
  private static final double LEAST_SIGMA_NUMBER = 3;

  private ProbeLagFit() {}

  /// A lag from readings.
  ///
  /// @param lagSec time constant
  /// @param doubtSec its standard deviation
  /// @param startC where the course begins, at the first reading
  /// @param placeC where it goes to
  /// @param missK root mean square of what the readings lie beside the curve
  public record Found(double lagSec, double doubtSec, double startC, double placeC, double missK) {}

  private record Reading(double atSec, double readC) {}

  /// The line through `exp(-t/tau)`: its two ends and what is left over.
  private record Line(double placeC, double stepK, double squaresK2) {}

  /// The lag that fits readings after a step best.
  ///
  /// `min sum (S_i - T - (S0 - T) exp(-t_i/tau))^2` over T, S0 and tau; doubt from its curvature
  ///
  /// - Valid: a probe put at once from one steady place to another; four readings or more, closer
  ///   together than the lag and over some lags of time. Refused where the readings show no bend:
  ///   at one a minute a lag of 10 s leaves nothing to see. The doubt counts the larger of the
  ///   reading's own and the scatter that is seen.
  /// - Source: first-order lag; published response times to compare with.
  ///
  /// @param course seconds and degrees, as `0:20.0 10:49.1 20:59.8 40:65.2`
  @Source(key = "energy-balance", at = "first-order lag", trust = Trust.COMPUTED)
  @Source(
      key = "probe-response-times",
      at = "water at 0.2 m/s and air, to compare with",
      trust = Trust.READ)
  @Reckoned(
      name = "probe-lag-from-readings",
      says = "What time constant has a probe, by what it read after it was put elsewhere?",
      equation = "min sum (S - T - (S0 - T) exp(-t/tau))^2 over T, S0 and tau",
      range = "a step between steady places; four readings or more that show a bend")
  public static Found lag(String course, @Usually(0.1) double readingDoubtK) {
    Require.above0("doubt of a reading", readingDoubtK);
    List<Reading> read = read(course);
    double spanSec = read.getLast().atSec;
    double shortest = Math.log(SHORTEST_RATIO * spanSec / (read.size() - 1));
    double longest = Math.log(LONGEST_RATIO * spanSec);
    double step = (longest - shortest) / GRID_COUNT;
    int best = 0;
    for (int i = 1; i <= GRID_COUNT; i++) {
      double tried = line(read, Math.exp(shortest + i * step)).squaresK2;
      best = tried < line(read, Math.exp(shortest + best * step)).squaresK2 ? i : best;
    }
    if (best == 0 || best == GRID_COUNT) {
      throw noBend(spanSec);
    }
    double at = shortest + best * step;
    double lagSec =
        Math.exp(
            new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                    new UnivariateObjectiveFunction(log -> line(read, Math.exp(log)).squaresK2),
                    GoalType.MINIMIZE,
                    new SearchInterval(at - step, at + step, at),
                    MaxEval.unlimited())
                .getPoint());
    return found(read, lagSec, readingDoubtK, spanSec);
  }

  private static Found found(
      List<Reading> read, double lagSec, double readingDoubtK, double spanSec) {
    Line line = line(read, lagSec);
    double seenK2 = line.squaresK2 / (read.size() - 3.0);
    double sigmaK = Math.max(readingDoubtK, Math.sqrt(seenK2));
    // By how much the curve moves for a second of lag, less what its two ends make good.
    List<Reading> moved =
        read.stream()
            .map(
                each ->
                    new Reading(
                        each.atSec,
                        line.stepK
                            * each.atSec
                            / (lagSec * lagSec)
                            * Math.exp(-each.atSec / lagSec)))
            .toList();
    double doubt = sigmaK / Math.sqrt(line(moved, lagSec).squaresK2);
    if (!(lagSec > LEAST_SIGMA_NUMBER * doubt)) {
      throw noBend(spanSec);
    }
    return new Found(
        lagSec,
        doubt,
        line.placeC + line.stepK,
        line.placeC,
        Math.sqrt(line.squaresK2 / read.size()));
  }

  private static IllegalArgumentException noBend(double spanSec) {
    return new IllegalArgumentException(
        "the readings over "
            + spanSec
            + " s show no bend that a lag could be told from; read more often right after the step,"
            + " and until it has settled.");
  }

  private static Line line(List<Reading> read, double lagSec) {
    double n = read.size();
    double meanNumber = 0;
    double meanC = 0;
    for (Reading each : read) {
      meanNumber += Math.exp(-each.atSec / lagSec) / n;
      meanC += each.readC / n;
    }
    double together = 0;
    double own = 0;
    double all = 0;
    for (Reading each : read) {
      double off = Math.exp(-each.atSec / lagSec) - meanNumber;
      together += off * (each.readC - meanC);
      own += off * off;
      all += (each.readC - meanC) * (each.readC - meanC);
    }
    double stepK = own > 0 ? together / own : 0;
    return new Line(meanC - stepK * meanNumber, stepK, Math.max(0, all - stepK * together));
  }

  private static List<Reading> read(String readings) {
    List<Reading> found = new ArrayList<>();
    double first = Double.NaN;
    for (String pair : readings.strip().split("[\\s;]+", -1)) {
      String[] parts = pair.split(":", -1);
      if (parts.length != 2) {
        throw new IllegalArgumentException(
            "'" + pair + "' is no reading; write seconds and degrees C as 0:20.0 10:49.1.");
      }
      double at = number(parts[0]);
      double shown = number(parts[1]);
      first = found.isEmpty() ? at : first;
      double since = at - first;
      if (!found.isEmpty() && !(since > found.getLast().atSec)) {
        throw new IllegalArgumentException(
            "the reading at " + at + " s is not after the one before it; write them in order.");
      }
      Require.within("reading in C", shown, -273.15, 1000);
      found.add(new Reading(since, shown));
    }
    Require.within("number of readings", found.size(), LEAST_COUNT, 10_000);
    return found;
  }

  private static double number(String text) {
    return Require.finite("number", Require.number(text, "readings as 0:20.0 10:49.1"));
  }
}
