package gylebook.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/// A rehearsal of a brew day that runs beside the page: one at a time, for everybody who looks.
public interface Practice {
  /// Whether one is under way.
  boolean underWay();

  /// What it has said so far, oldest first.
  List<String> said();

  /// Begins one.
  ///
  /// @param address where this page is, for the instruments to send to
  /// @param asked `pace`, `seed`, `wires` and `acts`, each as it was chosen; empty for the usual
  /// @return why not, if not
  Optional<String> begin(String address, Map<String, String> asked);

  /// What somebody does in it, as they would type it in a terminal.
  void act(String line);
}
