package gylebook.telling;

import gylebook.rig.Bounds;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;

/// Why a number cannot be one of a rig, in the reader's units.
@AnyUnit("numbers of every quantity; the path beside each names the unit")
public final class OutsideRig {
  private OutsideRig() {}

  /// What is wrong, without a full stop.
  public static String what(Bounds.Fault fault, ReadingUnits units) {
    String name = fault.path().substring(fault.path().lastIndexOf('.') + 1);
    if (fault.ofDoubt()) {
      return "a doubt of "
          + (fault.relative() ? Measured.percent(fault.value()) : doubt(name, fault.value(), units))
          + " is too wide; up to "
          + (fault.relative() ? Measured.percent(fault.most()) : doubt(name, fault.most(), units))
          + " can be forecast with";
    }
    return Amounts.shown(name, fault.value(), units)
        + " is outside what a rig has: "
        + Amounts.shown(name, fault.least(), units)
        + " to "
        + Amounts.shown(name, fault.most(), units);
  }

  /// What to try.
  public static String maybe(Bounds.Fault fault) {
    return fault.ofDoubt()
        ? "Measure it, or say how far off it may be."
        : "Maybe the unit is another one.";
  }

  private static String doubt(String name, double doubt, ReadingUnits units) {
    return Amounts.shown(Measured.doubtName(name), doubt, units);
  }
}
