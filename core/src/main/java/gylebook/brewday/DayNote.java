package gylebook.brewday;

import gylebook.journal.Entry;
import gylebook.journal.Event;
import java.time.Instant;
import java.util.List;

/// One thing noted on the day.
///
/// @param seq its entry
/// @param at when it happened
/// @param noted when it was written down
/// @param event what happened
/// @param stands whether it counts; a struck note stays, struck through
public record DayNote(long seq, Instant at, Instant noted, Event event, boolean stands) {

  static DayNote of(Entry entry) {
    return new DayNote(entry.seq(), entry.at(), entry.noted(), entry.event(), true);
  }

  static List<DayNote> struck(List<DayNote> notes, long seq) {
    return notes.stream().map(note -> note.seq() == seq ? note.struck() : note).toList();
  }

  private DayNote struck() {
    return new DayNote(seq, at, noted, event, false);
  }
}
