package gylebook.estimate;

import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;

/// What a lever can bring nearer to what is wanted.
@AnyUnit("each goal has its own unit, which its outcome's key names")
public enum Goal {
  STRENGTH("strength", Outcome.STRENGTH, 0.25),
  LITRES("litres into the fermenter", Outcome.FERMENTER, 0.5),
  BITTERNESS("bitterness", Outcome.BITTERNESS, 2),
  COLOUR("colour", Outcome.COLOUR, 2);

  private final String says;
  private final Outcome outcome;
  private final double tolerance;

  Goal(String says, Outcome outcome, double tolerance) {
    this.says = says;
    this.outcome = outcome;
    this.tolerance = tolerance;
  }

  /// The same in words.
  public String says() {
    return says;
  }

  /// The number of the day that it speaks of; its key ends in the unit.
  public Outcome outcome() {
    return outcome;
  }

  /// Nobody tastes less than this (our judgement: a gravity point, half a litre, 2 mg/L, 2 EBC).
  double tolerance() {
    return tolerance;
  }
}
