package gylebook.plan;

import gylebook.units.AnyUnit;

/// What a figure may come to: 9 times in 10 between low and high.
///
/// @param low 5 of 100 simulated days come out below
/// @param middle half of them
/// @param high 95 of 100
@AnyUnit("a band of any quantity; what holds it names the unit")
public record Band(double low, double middle, double high) {

  /// Half the width of the band, for "give or take".
  public double giveOrTake() {
    return (high - low) / 2;
  }
}
