package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.Arrays;

/// How bad a liquor is against a wish: the sum over its rows of how far each lies off, squared.
///
/// An ion that nobody asked for may rise a little for the sake of the others, up to where brewing
/// liquors usually end. Alkalinity nobody asked for is free where a pH is wanted: it is what the pH
/// is made with.
@AnyUnit("columns of ions and a pH, and regret")
final class LiquorRegret {
  // How far off counts as one unit of regret: a tenth of a usual ion, a twentieth of a pH.
  private static final double ION_SCALE_MG_PER_L = 10;
  private static final double PH_SCALE = 0.03;
  // Of an ion that nobody asked for, three hundred mg/L are worth ten of one that is wanted.
  private static final double UNASKED_SCALE_MG_PER_L = 300;
  // Where brewing liquors usually end (common practice, no source): Ca, Mg, Na, Cl, SO4; sodium
  // bounds baking soda, so alkalinity has no end of its own.
  private static final double[] MOST = {
    200, 30, 100, 250, 400, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY
  };

  /// A dose in itself is a small nuisance: of two ways, the one with less to weigh.
  static final double OF_A_DOSE = 1e-4;

  private final double[] wanted;
  private final double[] bare;

  /// Of what is wanted of a liquor, and what it holds with nothing in it.
  LiquorRegret(LiquorLevels wanted, LiquorLevels bare) {
    this.wanted = wanted.column();
    this.bare = bare.column();
  }

  /// What the liquor holds with nothing in it.
  double[] bare() {
    return bare.clone();
  }

  boolean wants(int row) {
    return !Double.isNaN(wanted[row]);
  }

  /// All of it: what is off, and what there is to weigh.
  double of(double[] got, double[] stepCounts) {
    double sum = 0;
    for (int row = 0; row < got.length; row++) {
      double off = off(row, got[row]) + beyond(row, got[row]);
      sum += off * off;
    }
    return sum + OF_A_DOSE * Arrays.stream(stepCounts).filter(count -> count > 0).count();
  }

  /// How far a row is off, by its scale; 0 for what does not matter.
  double off(int row, double got) {
    return counts(row) && !Double.isNaN(got) ? (got - aim(row)) / scale(row) : 0;
  }

  /// By how much an unasked ion is over its usual end, each mg/L for one.
  double beyond(int row, double got) {
    return got > end(row) ? got - end(row) : 0;
  }

  /// Where an unasked ion usually ends, or what the tap has, if that is more; infinite for all
  /// else.
  double end(int row) {
    return wants(row) ? Double.POSITIVE_INFINITY : Math.max(bare[row], MOST[row]);
  }

  /// What a row should be: what was asked for, or else what it was.
  double aim(int row) {
    return wants(row) ? wanted[row] : bare[row];
  }

  /// Whether it matters at all.
  boolean counts(int row) {
    return Double.isFinite(scale(row)) && !Double.isNaN(bare[row]);
  }

  /// How far off is one of regret; infinite for what does not matter at all.
  double scale(int row) {
    if (row == LiquorLevels.PH) {
      return wants(row) ? PH_SCALE : Double.POSITIVE_INFINITY;
    }
    if (wants(row)) {
      return ION_SCALE_MG_PER_L;
    }
    boolean spent = row == LiquorLevels.BICARBONATE && wants(LiquorLevels.PH);
    return spent ? Double.POSITIVE_INFINITY : UNASKED_SCALE_MG_PER_L;
  }
}
