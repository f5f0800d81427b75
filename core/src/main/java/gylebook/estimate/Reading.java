package gylebook.estimate;

import gylebook.rig.Probe;
import gylebook.units.AnyUnit;

/// One reading, as data.
///
/// @param instrument which one, by name
/// @param place where it was taken
/// @param mixed whether the wort was stirred or pumped round before
/// @param sampleC temperature of the sample; NaN when it does not matter or is not known
/// @param value what it showed: C, L, or Plato on the scale's own temperature
/// @param atSec when, since the day began
@AnyUnit("the instrument says what was read")
public record Reading(
    String instrument,
    Probe.Place place,
    boolean mixed,
    double sampleC,
    double value,
    double atSec) {

  /// Refuses what is no number or has no time.
  public Reading {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(instrument + " read " + value + "; that is no number.");
    }
    if (!(atSec >= 0) || Double.isInfinite(atSec)) {
      throw new IllegalArgumentException(
          instrument + " was read at " + atSec + " s; the day begins at 0.");
    }
  }

  /// A temperature.
  public static Reading temperature(
      String instrument, Probe.Place place, double readC, double atSec) {
    return new Reading(instrument, place, true, Double.NaN, readC, atSec);
  }
}
