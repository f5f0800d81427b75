package gylebook.rig;

import gylebook.units.AnyUnit;

/// Sanity limits of what a newcomer says: beyond them it is a slip, most often of the unit.
@AnyUnit("guards any quantity; the caller names its unit")
final class Limits {
  private Limits() {}

  static void within(String what, double value, double least, double most, String unit) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          what
              + " is "
              + value
              + " "
              + unit
              + "; we expect "
              + least
              + " to "
              + most
              + " "
              + unit
              + ". Maybe the unit is another one.");
    }
  }
}
