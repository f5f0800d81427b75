package gylebook.app;

import gylebook.brewday.Book;
import gylebook.brewday.Command;
import gylebook.brewday.Verdict;
import gylebook.journal.Addition;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.JournalUnavailable;
import gylebook.journal.Overtaken;
import gylebook.web.Desk;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;

/// The one hand that writes in the book.
///
/// Whoever reads gets the last whole book without waiting. After a failure the book is read again
/// before anything is decided, because a disk may have kept what it did not acknowledge.
final class Clerk implements Desk {
  private final Journal journal;
  private final InstantSource clock;
  private volatile Book book;

  Clerk(Journal journal, InstantSource clock) {
    this.journal = journal;
    this.clock = clock;
    this.book = Book.EMPTY.after(journal.entries(0));
  }

  @Override
  public Book book() {
    return book;
  }

  @Override
  public synchronized Answer write(String gyleId, long afterSeq, Command command, String once) {
    try {
      catchUp();
      return switch (book.decide(gyleId, command)) {
        case Verdict.Refused(String because, String maybe) -> new Answer.Refused(because, maybe);
        case Verdict.Accepted(List<Event> events) when events.isEmpty() -> new Answer.Written(book);
        case Verdict.Accepted(List<Event> events) -> {
          Instant now = clock.instant();
          journal.append(new Addition(gyleId, afterSeq, once, now, now, events));
          catchUp();
          yield new Answer.Written(book);
        }
      };
    } catch (Overtaken _) {
      return new Answer.Overtaken(book);
    } catch (JournalUnavailable failure) {
      return new Answer.NotSaved(Objects.requireNonNullElse(failure.getMessage(), ""));
    }
  }

  private void catchUp() {
    book = book.after(journal.entries(book.lastSeq()));
  }
}
