package gylebook.terminal;

import gylebook.units.ReadingUnits;

/// The household sets of units, by the word for `--units`.
public enum ReadingSet {
  metric,
  us,
  imperial;

  /// The units themselves.
  public ReadingUnits units() {
    return switch (this) {
      case metric -> ReadingUnits.METRIC;
      case us -> ReadingUnits.US;
      case imperial -> ReadingUnits.IMPERIAL;
    };
  }
}
