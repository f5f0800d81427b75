package gylebook.reckon;

import java.util.List;

/// What came of looking for a calculation by name.
public sealed interface Search {
  /// It exists.
  record Hit(Calculation calculation) implements Search {}

  /// It does not; these names are near.
  record Miss(String sentence, List<String> nearest) implements Search {
    /// Keeps the list from being changed.
    public Miss {
      nearest = List.copyOf(nearest);
    }
  }
}
