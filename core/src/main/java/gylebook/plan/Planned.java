package gylebook.plan;

import java.util.List;
import java.util.Optional;

/// The planner's answer.
public sealed interface Planned {

  /// It can be brewed so.
  ///
  /// @param plan how
  record Feasible(Plan plan) implements Planned {}

  /// It cannot be brewed as wanted.
  ///
  /// @param limit which limit binds: `kettleTooSmall`, `elementTooWeak`, `boilsTooCool` ...
  /// @param says the same in words, with the figures
  /// @param maybe what to try
  /// @param nearest the nearest plan that can be brewed, if there is one
  record Impossible(String limit, List<Note> says, String maybe, Optional<Plan> nearest)
      implements Planned {
    /// Copies the sentence.
    public Impossible {
      says = List.copyOf(says);
    }
  }
}
