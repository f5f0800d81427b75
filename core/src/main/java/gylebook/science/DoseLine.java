package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;

/// Doses as a straight line: what each step adds to each row, and the best doses if the scale had
/// no steps.
///
/// Each row's regret is a parabola, and where an unasked ion passes its usual end a steeper one. A
/// row is therefore counted as one of three: below its end, over it, or held at the very end.
@AnyUnit("columns of ions and a pH, and doses in steps of any scale")
final class DoseLine {
  private static final int MOST_TURNS = 16;
  private static final double NOTHING_MG_PER_L = 1e-7;
  private static final double AT_END_WEIGHT = 30;
  private static final int MOST_ROUNDS = 6;
  private static final double MOST_STEPS = 1e6;

  private enum Side {
    BELOW,
    AT_END,
    OVER
  }

  private final LiquorRegret wish;
  private final double[] base;
  private final double[][] perStep;
  private final boolean spent;
  private final Side[] sides;
  private double[] relaxed;

  private DoseLine(LiquorRegret wish, double[] base, double[][] perStep, boolean spent) {
    this.wish = wish;
    this.base = base;
    this.perStep = perStep;
    this.spent = spent;
    this.sides = new Side[base.length];
    Arrays.fill(sides, Side.BELOW);
    this.relaxed = solved();
    for (int turn = 0; turn < MOST_TURNS && turned(); turn++) {
      relaxed = solved();
    }
  }

  /// The line through some doses.
  ///
  /// @param counts steps of everything there is
  /// @param house those of them that may be changed
  static DoseLine at(
      double[] counts,
      List<Integer> house,
      LiquorRegret wish,
      Function<double[], LiquorLevels> held) {
    double[] here = held.apply(counts).column();
    double[] base = here.clone();
    double[][] perStep = new double[house.size()][];
    double[] none = new double[counts.length];
    for (int j = 0; j < perStep.length; j++) {
      perStep[j] = moved(here, counts, house.get(j), held);
      // Where acid has used up the alkalinity a step more moves it no further: seen from nothing.
      perStep[j][LiquorLevels.BICARBONATE] =
          moved(wish.bare(), none, house.get(j), held)[LiquorLevels.BICARBONATE];
      for (int row = 0; row < base.length; row++) {
        base[row] -= counts[house.get(j)] * perStep[j][row];
      }
    }
    base[LiquorLevels.BICARBONATE] = wish.bare()[LiquorLevels.BICARBONATE];
    return new DoseLine(wish, base, perStep, false);
  }

  /// What one step more of one thing adds to each row; nothing to what is not known.
  private static double[] moved(
      double[] here, double[] counts, int of, Function<double[], LiquorLevels> held) {
    double[] more = counts.clone();
    more[of] += 1;
    double[] there = held.apply(more).column();
    return IntStream.range(0, here.length)
        .mapToDouble(row -> Double.isNaN(here[row]) ? 0 : there[row] - here[row])
        .toArray();
  }

  /// This line, and where alkalinity is wanted and something takes it away, the one on which none
  /// is left: none is the least there can be, so more acid does not move that row any further.
  List<DoseLine> both() {
    boolean takes =
        Arrays.stream(perStep).anyMatch(column -> column[LiquorLevels.BICARBONATE] < 0)
            && wish.wants(LiquorLevels.BICARBONATE);
    return takes ? List.of(this, new DoseLine(wish, base, perStep, true)) : List.of(this);
  }

  /// The best doses if the scale had no steps.
  double[] relaxed() {
    return relaxed.clone();
  }

  private boolean counts(int row) {
    return wish.counts(row) && !(spent && row == LiquorLevels.BICARBONATE);
  }

  private double got(int row) {
    double got = base[row];
    for (int j = 0; j < perStep.length; j++) {
      got += relaxed[j] * perStep[j][row];
    }
    return got;
  }

  /// Puts the first row that is counted on the wrong side on another; whether there was one.
  private boolean turned() {
    for (int row = 0; row < base.length; row++) {
      if (counts(row) && Double.isFinite(wish.end(row))) {
        Side side = side(row, got(row) - wish.end(row));
        if (side != sides[row]) {
          sides[row] = side;
          return true;
        }
      }
    }
    return false;
  }

  private Side side(int row, double overMgPerL) {
    return switch (sides[row]) {
      case BELOW -> overMgPerL > NOTHING_MG_PER_L ? Side.OVER : Side.BELOW;
      case OVER -> overMgPerL < -NOTHING_MG_PER_L ? Side.AT_END : Side.OVER;
      case AT_END ->
          overMgPerL < -NOTHING_MG_PER_L
              ? Side.BELOW
              : pull(overMgPerL) > pullOver(row) ? Side.OVER : Side.AT_END;
    };
  }

  private static double pull(double overMgPerL) {
    return 2 * AT_END_WEIGHT * AT_END_WEIGHT * overMgPerL;
  }

  /// By how much the regret gets steeper at the end.
  private double pullOver(int row) {
    return 2 * wish.off(row, wish.end(row));
  }

  private double[] solved() {
    List<double[]> rows = new ArrayList<>();
    List<Double> gaps = new ArrayList<>();
    for (int row = 0; row < base.length; row++) {
      if (counts(row)) {
        boolean over = sides[row] == Side.OVER;
        double weight = 1 / wish.scale(row) + (over ? 1 : 0);
        rows.add(weighed(row, weight));
        gaps.add(-wish.off(row, base[row]) - (over ? base[row] - wish.end(row) : 0));
        if (sides[row] == Side.AT_END) {
          rows.add(weighed(row, AT_END_WEIGHT));
          gaps.add(AT_END_WEIGHT * (wish.end(row) - base[row]));
        }
      }
    }
    if (rows.isEmpty()) {
      return new double[perStep.length];
    }
    return NonNegative.solved(
        MatrixUtils.createRealMatrix(rows.toArray(double[][]::new)),
        new ArrayRealVector(gaps.stream().mapToDouble(x -> x).toArray()));
  }

  private double[] weighed(int row, double weight) {
    return Arrays.stream(perStep).mapToDouble(column -> weight * column[row]).toArray();
  }

  /// A bowl that lies nowhere above the regret and touches it at the best doses without steps.
  ///
  /// @param mostRegret doses that are worse are of no interest
  StepSearch.Bowl bowl(double mostRegret) {
    double[] most = most(mostRegret);
    double floor = spent ? square(wish.off(LiquorLevels.BICARBONATE, 0)) : 0;
    double[] slopes = new double[perStep.length];
    double[][] columns = new double[perStep.length][base.length];
    for (int row = 0; row < base.length; row++) {
      if (!counts(row)) {
        continue;
      }
      double got = got(row);
      double off = wish.off(row, got);
      double over = sides[row] == Side.OVER ? wish.beyond(row, got) : 0;
      double pull = sides[row] == Side.AT_END ? pullAtEnd(row, got) : 0;
      double steep = 2 * (off + over) * (1 / wish.scale(row) + (over > 0 ? 1 : 0)) + pull;
      floor += square(off + over) + (pull > 0 ? pull * (got - wish.end(row)) : 0);
      double bend = square(1 / wish.scale(row)) + (over > 0 ? bendOver(row, over, most) : 0);
      for (int j = 0; j < perStep.length; j++) {
        slopes[j] += steep * perStep[j][row];
        columns[j][row] = Math.sqrt(bend) * perStep[j][row];
      }
    }
    return new StepSearch.Bowl(floor, relaxed, slopes, columns, most);
  }

  private double pullAtEnd(int row, double got) {
    return Math.clamp(pull(got - wish.end(row)), 0, pullOver(row));
  }

  /// `c h (h + 2 D)/(h + D)^2`: so much may a parabola through h over the end bend and still lie
  /// below nought as far as D under it, the least that this row can be.
  private double bendOver(int row, double over, double[] most) {
    double least = base[row];
    for (int j = 0; j < perStep.length; j++) {
      least += Math.min(0, perStep[j][row]) * most[j];
    }
    double under = Math.max(0, wish.end(row) - least);
    return (1 + 2 / wish.scale(row)) * over * (over + 2 * under) / square(over + under);
  }

  /// The most steps of each that leave no row off by more than the regret allows.
  private double[] most(double mostRegret) {
    double[] most = new double[perStep.length];
    Arrays.fill(most, MOST_STEPS);
    double root = Math.sqrt(mostRegret);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      for (int row = 0; row < base.length; row++) {
        if (counts(row)) {
          double far = root * wish.scale(row);
          double high = Math.min(wish.aim(row) + far, wish.end(row) + root) - base[row];
          bound(most, row, high, wish.aim(row) - far - base[row]);
        }
      }
    }
    return most;
  }

  private void bound(double[] most, int row, double high, double low) {
    double up = sum(most, row, 1);
    double down = sum(most, row, -1);
    for (int j = 0; j < perStep.length; j++) {
      double step = perStep[j][row];
      if (step != 0) {
        double room = step > 0 ? high - down : low - up;
        most[j] = Math.clamp(Math.floor(room / step + NOTHING_MG_PER_L), 0, most[j]);
      }
    }
  }

  private double sum(double[] most, int row, int sign) {
    return IntStream.range(0, perStep.length)
        .mapToDouble(j -> sign * Math.max(0, sign * perStep[j][row]) * most[j])
        .sum();
  }

  private static double square(double x) {
    return x * x;
  }
}
