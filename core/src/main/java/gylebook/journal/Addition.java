package gylebook.journal;

import java.time.Instant;
import java.util.List;

/// Events that go into the book together or not at all.
///
/// @param gyleId the gyle they belong to
/// @param afterSeq the last entry of this gyle that whoever decided them had seen; 0 for none
/// @param once a name that the sender gave; a second addition of that name adds nothing. Empty for
///   none
/// @param at when they happened
/// @param noted when we heard of them
/// @param events what happened, in order
public record Addition(
    String gyleId, long afterSeq, String once, Instant at, Instant noted, List<Event> events) {

  /// Checks what every book needs.
  public Addition {
    if (gyleId.isBlank()) {
      throw new IllegalArgumentException("gyleId is blank; an addition belongs to a gyle.");
    }
    if (afterSeq < 0) {
      throw new IllegalArgumentException("afterSeq is " + afterSeq + "; it must be 0 or more.");
    }
    if (events.isEmpty()) {
      throw new IllegalArgumentException("events is empty; an addition adds something.");
    }
    events = List.copyOf(events);
  }
}
