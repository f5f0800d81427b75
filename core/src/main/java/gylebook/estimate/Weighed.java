package gylebook.estimate;

import gylebook.units.AnyUnit;

/// What became of a reading. None is lost: one that is set aside still counts a little, and says
/// so.
@AnyUnit("expected and doubt have the unit of what was read")
public sealed interface Weighed {
  /// One reading in so many is a slip (assumed).
  double SLIP_FRAC = 0.05;

  /// A slip lands within about so many doubts (assumed).
  double SLIP_WIDE_RATIO = 10;

  /// The reading.
  Reading reading();

  /// What was expected before it.
  double expected();

  /// Standard deviation of that, the reading's own scatter included.
  double doubt();

  /// The miss in its own doubts.
  default double surpriseRatio() {
    return (reading().value() - expected()) / doubt();
  }

  /// How likely the reading is an honest one and no slip, before anything is done about it.
  ///
  /// `p = (1 - e) n(z) / ((1 - e) n(z) + e n(z/k)/k)`: one reading in twenty is a slip that lands
  /// anywhere within ten doubts (both assumed).
  default double believableFrac() {
    double z = surpriseRatio();
    double honest = (1 - SLIP_FRAC) * Math.exp(-z * z / 2);
    double slipZ = z / SLIP_WIDE_RATIO;
    double slip = SLIP_FRAC / SLIP_WIDE_RATIO * Math.exp(-slipZ * slipZ / 2);
    return honest / (honest + slip);
  }

  /// Believed, and followed by its share.
  ///
  /// @param reading the reading
  /// @param expected before it
  /// @param doubt of that
  record Used(Reading reading, double expected, double doubt) implements Weighed {}

  /// Too far off to be followed as it stands.
  ///
  /// @param reading the reading
  /// @param expected before it
  /// @param doubt of that
  /// @param countsFrac weight left to it
  /// @param inRowCount how many of this instrument in a row; from two on, ask the brewer
  record SetAside(Reading reading, double expected, double doubt, double countsFrac, int inRowCount)
      implements Weighed {}
}
