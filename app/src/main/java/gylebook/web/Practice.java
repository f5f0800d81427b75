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
  /// @param asked `gyle`, `pace`, `seed`, `wires` and `acts`, each as it was chosen; empty for the
  ///   usual. With a gyle, its plan is played and noted on a page of its own
  /// @return why not, if not
  Optional<String> begin(String address, Map<String, String> asked);

  /// What somebody does in it, as they would type it in a terminal.
  ///
  /// @return why not, if not
  Optional<String> act(String line);

  /// The page on which the rehearsal under way is noted.
  Optional<String> notedOn();
}
