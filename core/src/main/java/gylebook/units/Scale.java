package gylebook.units;

/// How a unit's numbers turn into those of the inside unit. Every scale rises, so it can be undone.
@AnyUnit("converts numbers of any unit")
public sealed interface Scale {
  /// The number in the inside unit.
  double inside(double value);

  /// The number in the unit itself.
  double outside(double inside);

  /// A ruler: inside = (value - zero) factor. `zero` is the reading at which the inside unit is 0.
  record Straight(double factor, double zero) implements Scale {
    /// Refuses a ruler that cannot be undone.
    public Straight {
      if (!(factor > 0) || !Double.isFinite(factor) || !Double.isFinite(zero)) {
        throw new IllegalArgumentException("factor is " + factor + "; it must be above 0.");
      }
    }

    @Override
    public double inside(double value) {
      return (value - zero) * factor;
    }

    @Override
    public double outside(double inside) {
      return inside / factor + zero;
    }
  }

  /// Specific gravity to Plato by [ExtractScale]; `points` counts thousandths above water.
  record Spindle(boolean points) implements Scale {
    private static final double POINTS_IN_ONE = 1000;

    @Override
    public double inside(double value) {
      return ExtractScale.platoFromSg(points ? 1 + value / POINTS_IN_ONE : value);
    }

    @Override
    public double outside(double inside) {
      double sg = ExtractScale.sgFromPlato(inside);
      return points ? (sg - 1) * POINTS_IN_ONE : sg;
    }
  }

  /// Malt colour in degrees Lovibond to EBC.
  ///
  /// `EBC = 2.65 L - 1.2`; below 2 L a straight line through zero, so that sugar of 0 L has no
  /// colour (an assumption of ours: the published line would give it less than none).
  record MaltColour() implements Scale {
    private static final double SLOPE = 2.65;
    private static final double OFFSET = -1.2;
    private static final double BEND = 2;
    private static final double PALE_SLOPE = (SLOPE * BEND + OFFSET) / BEND;

    @Override
    public double inside(double value) {
      return value < BEND ? PALE_SLOPE * value : SLOPE * value + OFFSET;
    }

    @Override
    public double outside(double inside) {
      double pale = inside / PALE_SLOPE;
      return pale < BEND ? pale : (inside - OFFSET) / SLOPE;
    }
  }
}
