package gylebook.plan;

import gylebook.simulate.BrewDay;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;

/// What comes out of one day without luck.
@AnyUnit("each outcome names its own unit")
final class Outcomes {
  private final double[] row;

  private Outcomes(double[] row) {
    this.row = row;
  }

  static Outcomes of(BrewDay day) {
    return new Outcomes(Ensemble.nominalOutcomes(day));
  }

  double at(Outcome outcome) {
    return row[outcome.ordinal()];
  }
}
