package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.function.ToDoubleFunction;

/// The best whole steps there are: branch and bound under a bowl that lies nowhere above the
/// regret.
///
/// Columns are turned into a triangle, so that the last thing's share of the bowl hangs on its own
/// dose alone, the next on two, and so on (Fincke and Pohst's way of going through the points of a
/// lattice in a ball, nearest first). Whatever already lies above the best doses that are known is
/// left with all that would follow.
@AnyUnit("steps of any scale, and whatever regret is counted in")
final class StepSearch {
  // Worth a tenth of a mg/L on one ion that is right: nobody weighs so exactly.
  static final double CLOSE_ENOUGH = 1e-4;
  // A few hundredths of a second, so that a hard wish on a fine scale keeps nobody waiting: what is
  // best by then is taken.
  private static final int MOST_TRIES = 300_000;
  private static final double NO_LENGTH = 1e-9;

  /// `regret(x) >= floor + slopes (x - centre) + |columns (x - centre)|^2`, for 0 <= x <= most.
  @AnyUnit("as the search")
  static final class Bowl {
    private final double floor;
    private final double[] centre;
    private final double[] slopes;
    private final double[][] columns;
    private final double[] most;

    /// A bowl.
    ///
    /// @param floor its depth at the centre
    /// @param centre the best doses without steps
    /// @param slopes one a thing; above 0 where it is best left out
    /// @param columns one a thing
    /// @param most no more steps of each can be of interest
    Bowl(double floor, double[] centre, double[] slopes, double[][] columns, double[] most) {
      this.floor = floor;
      this.centre = centre;
      this.slopes = slopes;
      this.columns = columns;
      this.most = most;
    }

    double floor() {
      return floor;
    }

    /// Its depth at some steps.
    double at(double[] counts) {
      double depth = floor;
      double[] off = new double[columns.length == 0 ? 0 : columns[0].length];
      for (int i = 0; i < counts.length; i++) {
        depth += slopes[i] * (counts[i] - centre[i]);
        for (int k = 0; k < off.length; k++) {
          off[k] += columns[i][k] * (counts[i] - centre[i]);
        }
      }
      return depth + dot(off, off);
    }

    /// The most steps of one thing that can be of interest.
    double most(int thing) {
      return most[thing];
    }
  }

  private final Bowl bowl;
  private final ToDoubleFunction<double[]> regret;
  private final int[] order;
  private final double[][] triangle;
  private final double[] tried;
  private double[] best;
  private double least;
  private int triesLeft = MOST_TRIES;

  private StepSearch(Bowl bowl, double[] start, ToDoubleFunction<double[]> regret) {
    this.bowl = bowl;
    this.regret = regret;
    this.best = start;
    this.least = regret.applyAsDouble(start);
    this.order = new int[start.length];
    this.triangle = new double[start.length][start.length];
    this.tried = new double[start.length];
    turn();
  }

  /// The best whole steps, or some that are worse by less than nobody would weigh.
  ///
  /// @param start steps that are good already
  /// @param regret how bad steps are; never below the bowl
  static double[] nearest(Bowl bowl, double[] start, ToDoubleFunction<double[]> regret) {
    StepSearch search = new StepSearch(bowl, start, regret);
    double bound = bowl.floor;
    for (int i = 0; i < start.length; i++) {
      bound += search.leastSloping(i);
    }
    search.descend(start.length - 1, bound);
    return search.best;
  }

  private double leastSloping(int i) {
    return Math.min(sloping(i, 0), sloping(i, bowl.most[i]));
  }

  private double sloping(int i, double count) {
    return bowl.slopes[i] * (count - bowl.centre[i]);
  }

  /// Gram and Schmidt, the longest column first: what hangs on all others comes to stand on top,
  /// where its doses are gone through once.
  private void turn() {
    int n = order.length;
    double[][] rest = new double[n][];
    for (int i = 0; i < n; i++) {
      rest[i] = bowl.columns[i].clone();
    }
    boolean[] taken = new boolean[n];
    double[][] along = new double[n][n];
    for (int level = 0; level < n; level++) {
      int next = longest(rest, taken);
      double length = Math.sqrt(dot(rest[next], rest[next]));
      order[level] = next;
      taken[next] = true;
      along[level][next] = length > NO_LENGTH ? length : 0;
      for (int i = 0; i < n && length > NO_LENGTH; i++) {
        if (!taken[i]) {
          along[level][i] = dot(rest[next], rest[i]) / length;
          for (int k = 0; k < rest[i].length; k++) {
            rest[i][k] -= along[level][i] / length * rest[next][k];
          }
        }
      }
    }
    for (int level = 0; level < n; level++) {
      for (int other = level; other < n; other++) {
        triangle[level][other] = along[level][order[other]];
      }
    }
  }

  private static int longest(double[][] columns, boolean[] taken) {
    int longest = -1;
    for (int i = 0; i < columns.length; i++) {
      if (!taken[i]
          && (longest < 0
              || dot(columns[i], columns[i]) > dot(columns[longest], columns[longest]))) {
        longest = i;
      }
    }
    return longest;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      sum += a[k] * b[k];
    }
    return sum;
  }

  /// Doses of the thing at this level, from the bottom of its parabola outwards on both sides.
  private void descend(int level, double bound) {
    if (level < 0) {
      double found = regret.applyAsDouble(tried);
      if (found < least) {
        least = found;
        best = tried.clone();
      }
      return;
    }
    int i = order[level];
    double open = bound - leastSloping(i);
    double carried = 0;
    for (int other = level + 1; other < order.length; other++) {
      carried += triangle[level][other] * (tried[order[other]] - bowl.centre[order[other]]);
    }
    double bottom = bottom(i, triangle[level][level], carried);
    double up = Math.rint(bottom);
    double down = up - 1;
    boolean upOpen = true;
    boolean downOpen = true;
    while (upOpen || downOpen) {
      boolean goUp = upOpen && (!downOpen || up - bottom <= bottom - down);
      tried[i] = goUp ? up++ : down--;
      double cost = open + cost(i, triangle[level][level], carried);
      boolean inside = tried[i] >= 0 && tried[i] <= bowl.most[i] && triesLeft-- > 0;
      if (inside && cost < least - CLOSE_ENOUGH) {
        descend(level - 1, cost);
      } else {
        upOpen &= !goUp;
        downOpen &= goUp;
      }
    }
    tried[i] = 0;
  }

  private double cost(int i, double length, double carried) {
    double off = length * (tried[i] - bowl.centre[i]) + carried;
    return off * off + sloping(i, tried[i]) + (tried[i] > 0 ? LiquorRegret.OF_A_DOSE : 0);
  }

  /// Where this thing's share of the bowl is least, within what is of interest.
  private double bottom(int i, double length, double carried) {
    double slope = bowl.slopes[i];
    double at =
        length > 0
            ? bowl.centre[i] - carried / length - slope / (2 * length * length)
            : slope > 0 ? 0 : slope < 0 ? bowl.most[i] : bowl.centre[i];
    return Math.clamp(at, 0, bowl.most[i]);
  }
}
