package gylebook.estimate;

import gylebook.units.AnyUnit;

/// What became of a reading. None is lost: one that is set aside still counts a little, and says
/// so.
@AnyUnit("expected and doubt have the unit of what was read")
public sealed interface Weighed {
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
