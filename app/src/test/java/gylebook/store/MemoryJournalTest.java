package gylebook.store;

import gylebook.journal.Journal;
import gylebook.journal.MemoryJournal;

class MemoryJournalTest extends JournalContract {
  private final Journal journal = new MemoryJournal();

  @Override
  Journal journal() {
    return journal;
  }
}
