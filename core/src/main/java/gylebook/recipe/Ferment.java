package gylebook.recipe;

import gylebook.units.Entered;
import java.util.List;

/// The course of the ferment.
///
/// @param steps one after another
public record Ferment(List<Step> steps) {

  /// Copies the steps.
  public Ferment {
    steps = List.copyOf(steps);
  }

  /// One step of the ferment.
  ///
  /// @param name in the brewer's words; may be empty
  /// @param startC beer at its start
  /// @param endC beer at its end
  /// @param holdSec how long
  /// @param freeRise whether it may warm by itself
  public record Step(
      String name, Entered startC, Entered endC, Entered holdSec, boolean freeRise) {}
}
