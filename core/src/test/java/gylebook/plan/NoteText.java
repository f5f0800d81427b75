package gylebook.plan;

import gylebook.units.AnyUnit;
import java.util.List;

/// A sentence of notes as a test reads it: the figures are plain numbers, in the unit of their key.
@AnyUnit("a note shows any quantity")
final class NoteText {
  private NoteText() {}

  static String plain(List<Note> notes) {
    StringBuilder text = new StringBuilder();
    for (Note note : notes) {
      text.append(note.words());
      if (note.hasFigure()) {
        text.append(note.band().middle());
      }
    }
    return text.toString();
  }
}
