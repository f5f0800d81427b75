package gylebook.science;

import java.util.ArrayList;
import java.util.List;

/// What suction head a pump wants, learnt from remarks that it rattled or ran quietly.
///
/// No sheet of a small pump gives it for hot wort. Each remark says on which side of the pump's
/// need the head was, give or take; together they narrow it.
public final class PumpNeed {
  /// Before any remark: 1.5 m, two thirds of the pumps within 0.9 and 2.5 m. Our assumption.
  private static final double MIDDLE_M = 1.5;

  private static final double SPREAD_NUMBER = 0.5;

  /// How blurred the border is, from a whisper to a rattle. Our assumption.
  private static final double BLUR_M = 0.3;

  private static final double LEAST_M = 0.02;
  private static final double MOST_M = 12;
  private static final double CELL_M = 0.01;
  private static final double SELDOM_FRAC = 0.05;

  private PumpNeed() {}

  /// What is then known of the pump.
  ///
  /// @param needM the head it wants
  /// @param doubtM its standard deviation
  /// @param quietM head at which it rattles once in twenty, all doubt counted
  public record Need(double needM, double doubtM, double quietM) {}

  /// The head a pump wants, from remarks.
  ///
  /// Posterior of `ln n ~ N(ln 1.5 m, 0.5)` under `P(rattle at h) = 1/(1 + exp((h - n)/0.3 m))`
  ///
  /// - Valid: heads by `suction-head`, the same flow each time; a rattle from air (a vortex, an
  ///   unprimed head) teaches nothing and must be left out. Refused outside -2 to 12 m.
  ///
  /// @param remarks head in m and what was heard, as `7.7:quiet 2.0:rattled`
  @Source(key = "bayes-rule", at = "cell by cell", trust = Trust.COMPUTED)
  @Reckoned(
      name = "pump-need",
      says = "What suction head does a pump want, from when it rattled and when it ran quietly?",
      equation = "P(rattle at h) = 1/(1 + exp((h - n)/0.3 m)); ln n before: N(ln 1.5 m, 0.5)",
      range = "heads of -2 to 12 m at one flow; rattles from air must be left out")
  public static Need need(String remarks) {
    List<Remark> heard = read(remarks);
    double weights = 0;
    double sum = 0;
    double squares = 0;
    for (double n = LEAST_M; n <= MOST_M; n += CELL_M) {
      double weight = weightRatio(n, heard);
      weights += weight;
      sum += weight * n;
      squares += weight * n * n;
    }
    double mean = sum / weights;
    double doubt = Math.sqrt(Math.max(0, squares / weights - mean * mean));
    return new Need(mean, doubt, quietM(heard, weights));
  }

  private static double quietM(List<Remark> heard, double allNumber) {
    return Root.between(-3, 2 * MOST_M, head -> rattlesFrac(head, heard, allNumber) - SELDOM_FRAC);
  }

  private static double rattlesFrac(double headM, List<Remark> heard, double allNumber) {
    double rattles = 0;
    for (double n = LEAST_M; n <= MOST_M; n += CELL_M) {
      rattles += weightRatio(n, heard) * rattleFrac(headM, n);
    }
    return rattles / allNumber;
  }

  private static double weightRatio(double needM, List<Remark> heard) {
    double off = Math.log(needM / MIDDLE_M) / SPREAD_NUMBER;
    double weight = Math.exp(-off * off / 2) / needM;
    for (Remark each : heard) {
      double rattle = rattleFrac(each.headM, needM);
      weight *= each.rattled ? rattle : 1 - rattle;
    }
    return weight;
  }

  private static double rattleFrac(double headM, double needM) {
    return 1 / (1 + Math.exp((headM - needM) / BLUR_M));
  }

  private record Remark(double headM, boolean rattled) {}

  private static List<Remark> read(String remarks) {
    List<Remark> found = new ArrayList<>();
    for (String pair : remarks.strip().split("[\\s;]+", -1)) {
      String[] parts = pair.split(":", -1);
      boolean rattled = parts.length == 2 && parts[1].startsWith("rattle");
      if (parts.length != 2 || !(rattled || parts[1].equals("quiet"))) {
        throw new IllegalArgumentException(
            "'" + pair + "' is no remark; write head and sound as 7.7:quiet 2.0:rattled.");
      }
      found.add(new Remark(Require.within("head in m", number(parts[0]), -2, 12), rattled));
    }
    if (found.size() > 200) {
      throw new IllegalArgumentException(
          "there are " + found.size() + " remarks; 1 to 200 can be weighed.");
    }
    return found;
  }

  private static double number(String text) {
    return Require.number(text, "remarks as 7.7:quiet 2.0:rattled");
  }
}
