package gylebook.estimate;

import gylebook.units.AnyUnit;
import java.util.List;
import java.util.Optional;

/// How fast what an instrument shows rises, and how sure that is: a straight line by least squares.
///
/// @param perSec rise
/// @param doubtPerSec its standard deviation, from the instrument's scatter
/// @param spanSec from the first reading to the last
@AnyUnit("a rise has the unit of what the instrument shows")
record Trend(double perSec, double doubtPerSec, double spanSec) {
  private static final int LEAST_COUNT = 3;

  /// The trend of what was read since a time; empty when there is too little to tell.
  static Optional<Trend> of(List<Reading> readings, Instrument instrument, double sinceSec) {
    List<Reading> used =
        readings.stream()
            .filter(read -> read.instrument().equals(instrument.name()) && read.atSec() >= sinceSec)
            .toList();
    if (used.size() < LEAST_COUNT) {
      return Optional.empty();
    }
    double meanSec = used.stream().mapToDouble(Reading::atSec).average().orElseThrow();
    double mean = used.stream().mapToDouble(Reading::value).average().orElseThrow();
    double together = 0;
    double squares = 0;
    for (Reading read : used) {
      double offSec = read.atSec() - meanSec;
      together += offSec * (read.value() - mean);
      squares += offSec * offSec;
    }
    double spanSec = used.getLast().atSec() - used.getFirst().atSec();
    return squares > 0
        ? Optional.of(
            new Trend(together / squares, instrument.noise() / Math.sqrt(squares), spanSec))
        : Optional.empty();
  }
}
