package gylebook.units;

/// What a person typed: the amount in the inside unit, the unit they used, and their own
/// characters.
@AnyUnit("carries what was typed, in whatever unit")
public record Entered(double inside, Unit unit, String asTyped) {
  /// Refuses an amount that is none.
  public Entered {
    if (!Double.isFinite(inside)) {
      throw new IllegalArgumentException("inside is " + inside + "; it must be a finite number.");
    }
  }

  /// An amount that the program itself enters, written as a person would.
  public static Entered of(double value, Unit unit) {
    double inside = unit.toInside(value);
    return new Entered(inside, unit, unit.withSymbol(Figures.shown(unit, value)));
  }

  /// The amount in the unit it was typed in.
  public double value() {
    return unit.fromInside(inside);
  }
}
