package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// Doses for a wanted liquor, in whole steps of the scale: the one place that solves for them.
///
/// Ions and the straight-buffered pH are linear in the doses, so the nearest liquor is a bounded
/// least-squares problem: `min sum ((A x + b - wanted)/scale)^2, x >= 0` (see [NonNegative]). Its
/// answer is put on the steps of the scale and walked there until no step helps (see [WholeSteps]);
/// what can be left out for nearly the same liquor is left out.
///
/// An ion that nobody asked for may rise a little for the sake of the others, up to where brewing
/// liquors usually end. Alkalinity nobody asked for is free where a pH is wanted: it is what the pH
/// is made with.
@AnyUnit("columns of ions and a pH, and doses in steps of any scale")
public final class LiquorDoses {
  // How far off counts as one unit of regret: a tenth of a usual ion, a twentieth of a pH.
  private static final double ION_SCALE_MG_PER_L = 10;
  private static final double PH_SCALE = 0.03;
  // Of an ion that nobody asked for, three hundred mg/L are worth ten of one that is wanted.
  private static final double UNASKED_SCALE_MG_PER_L = 300;
  private static final double BEYOND_SCALE_MG_PER_L = 1;
  // Where brewing liquors usually end (common practice, no source): Ca, Mg, Na, Cl, SO4; sodium
  // bounds baking soda, so alkalinity has no end of its own.
  private static final double[] MOST = {
    200, 30, 100, 250, 400, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY
  };
  // A dose in itself is a small nuisance: of two ways, the one with less to weigh.
  private static final double DOSE_REGRET = 1e-4;
  // Two mg/L on one ion: a tap wanders by more, and then a salt less to weigh is the better way.
  private static final double SPARED_REGRET = 0.04;
  private static final int MOST_LIMITS = 8;
  private static final double NOTHING_MG_PER_L = 1e-7;

  private final double[] wanted;
  private final Function<double[], LiquorLevels> held;
  private final double[] bare;
  private final double[][] perStep;

  private LiquorDoses(LiquorLevels wanted, int houseCount, Function<double[], LiquorLevels> held) {
    this.wanted = wanted.column();
    this.held = held;
    this.bare = held.apply(new double[houseCount]).column();
    this.perStep = new double[houseCount][];
    for (int i = 0; i < houseCount; i++) {
      double[] one = new double[houseCount];
      one[i] = 1;
      double[] moved = held.apply(one).column();
      perStep[i] = IntStream.range(0, bare.length).mapToDouble(k -> moved[k] - bare[k]).toArray();
    }
  }

  /// The steps of each thing in the house that come nearest to what is wanted.
  ///
  /// @param wanted NaN where it does not matter
  /// @param houseCount how many things there are to add
  /// @param held what the liquor holds with so many steps of each; nearly a straight line
  public static double[] stepCounts(
      LiquorLevels wanted, int houseCount, Function<double[], LiquorLevels> held) {
    LiquorDoses doses = new LiquorDoses(wanted, houseCount, held);
    double[] best = doses.nearest(IntStream.range(0, houseCount).boxed().toList());
    Optional<double[]> fewer = Optional.of(best);
    while (fewer.isPresent()) {
      best = fewer.get();
      fewer = doses.fewer(best);
    }
    return best;
  }

  /// One thing less to weigh, where that is hardly further off.
  private Optional<double[]> fewer(double[] best) {
    double mostRegret = regret(best) + SPARED_REGRET;
    List<Integer> used = IntStream.range(0, best.length).filter(i -> best[i] > 0).boxed().toList();
    return used.stream()
        .map(spared -> nearest(used.stream().filter(i -> !i.equals(spared)).toList()))
        .filter(doses -> regret(doses) < mostRegret)
        .min(Comparator.comparingDouble(this::regret));
  }

  private double[] nearest(List<Integer> house) {
    return WholeSteps.near(relaxed(house), house, this::regret);
  }

  private double regret(double[] stepCounts) {
    double[] got = held.apply(stepCounts).column();
    double sum = 0;
    for (int row = 0; row < got.length; row++) {
      double off = off(row, bare[row], wanted, got[row]) + beyond(row, bare[row], wanted, got[row]);
      sum += off * off;
    }
    return sum + DOSE_REGRET * Arrays.stream(stepCounts).filter(count -> count > 0).count();
  }

  private static double off(int row, double bare, double[] wanted, double got) {
    double scale = scale(row, wanted);
    double aim = Double.isNaN(wanted[row]) ? bare : wanted[row];
    return Double.isInfinite(scale) || Double.isNaN(got) ? 0 : (got - aim) / scale;
  }

  private static double beyond(int row, double bare, double[] wanted, double got) {
    boolean limited = Double.isNaN(wanted[row]) && Double.isFinite(MOST[row]);
    return limited ? Math.max(0, got - Math.max(bare, MOST[row])) / BEYOND_SCALE_MG_PER_L : 0;
  }

  /// Infinite for what does not matter at all.
  private static double scale(int row, double[] wanted) {
    if (row == LiquorLevels.PH) {
      return Double.isNaN(wanted[row]) ? Double.POSITIVE_INFINITY : PH_SCALE;
    }
    if (!Double.isNaN(wanted[row])) {
      return ION_SCALE_MG_PER_L;
    }
    boolean spent = row == LiquorLevels.BICARBONATE && !Double.isNaN(wanted[LiquorLevels.PH]);
    return spent ? Double.POSITIVE_INFINITY : UNASKED_SCALE_MG_PER_L;
  }

  /// The doses, in steps, without the steps: none below 0, and solved again until no ion is over
  /// its usual end that was not counted as such.
  private double[] relaxed(List<Integer> house) {
    List<double[]> rows = new ArrayList<>();
    List<Double> gaps = new ArrayList<>();
    for (int row = 0; row < bare.length; row++) {
      double scale = scale(row, wanted);
      if (Double.isFinite(scale) && !Double.isNaN(bare[row])) {
        rows.add(row(house, row, scale));
        gaps.add(-off(row, bare[row], wanted, bare[row]));
      }
    }
    double[] found = solved(house, rows, gaps);
    boolean[] counted = new boolean[bare.length];
    for (int limit = 0; limit < MOST_LIMITS; limit++) {
      int over = over(found, counted);
      if (over < 0) {
        break;
      }
      counted[over] = true;
      rows.add(row(house, over, BEYOND_SCALE_MG_PER_L));
      gaps.add((Math.max(bare[over], MOST[over]) - bare[over]) / BEYOND_SCALE_MG_PER_L);
      found = solved(house, rows, gaps);
    }
    return found;
  }

  private double[] row(List<Integer> house, int row, double scale) {
    return house.stream().mapToDouble(i -> perStep[i][row] / scale).toArray();
  }

  private int over(double[] stepCounts, boolean[] counted) {
    for (int row = 0; row < bare.length; row++) {
      double got = bare[row];
      for (int i = 0; i < stepCounts.length; i++) {
        got += stepCounts[i] * perStep[i][row];
      }
      if (!counted[row] && beyond(row, bare[row], wanted, got) > NOTHING_MG_PER_L) {
        return row;
      }
    }
    return -1;
  }

  private double[] solved(List<Integer> house, List<double[]> rows, List<Double> gaps) {
    double[] stepCounts = new double[perStep.length];
    if (house.isEmpty() || rows.isEmpty()) {
      return stepCounts;
    }
    RealMatrix slopes = MatrixUtils.createRealMatrix(rows.toArray(double[][]::new));
    RealVector gap = new ArrayRealVector(gaps.stream().mapToDouble(x -> x).toArray());
    double[] found = NonNegative.solved(slopes, gap);
    for (int i = 0; i < found.length; i++) {
      stepCounts[house.get(i)] = found[i];
    }
    return stepCounts;
  }
}
