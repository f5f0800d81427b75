package gylebook.plan;

import gylebook.units.AnyUnit;
import gylebook.units.Entered;

/// Amounts times a factor, kept in the unit they were typed in.
@AnyUnit("scales any amount")
final class Scaling {
  private Scaling() {}

  static Entered times(Entered amount, double factor) {
    return Math.abs(factor - 1) < 1e-9
        ? amount
        : Entered.of(amount.value() * factor, amount.unit());
  }
}
