package gylebook.brewday;

import gylebook.journal.Event;
import java.util.List;

/// What the book says to a command.
public sealed interface Verdict {

  /// It may happen; these are the entries to write.
  ///
  /// @param events in order
  record Accepted(List<Event> events) implements Verdict {
    /// Copies the list.
    public Accepted {
      events = List.copyOf(events);
    }
  }

  /// It makes no sense now.
  ///
  /// @param because why, in one sentence
  /// @param maybe what to try
  record Refused(String because, String maybe) implements Verdict {}

  /// Accepts one event.
  static Verdict accept(Event event) {
    return new Accepted(List.of(event));
  }
}
