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
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/// The one hand that writes in the book.
///
/// Whoever reads gets the last whole book without waiting. After a failure the book is read again
/// before anything is decided, because a disk may have kept what it did not acknowledge.
final class Clerk implements Desk {
  /// Clocks of a household are held to agree so far.
  private static final Duration CLOCKS_APART = Duration.ofMinutes(2);

  private final Journal journal;
  private final InstantSource clock;
  private final List<Consumer<String>> ears = new CopyOnWriteArrayList<>();
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
  public Instant now() {
    return clock.instant();
  }

  /// The time by the clock of one gyle's day.
  private Instant now(String gyleId) {
    Instant wall = clock.instant();
    return book.gyle(gyleId).map(gyle -> gyle.now(wall)).orElse(wall);
  }

  @Override
  public boolean has(String once) {
    try {
      return journal.has(once);
    } catch (JournalUnavailable _) {
      // Whoever asks goes on to write, and hears then what is wrong.
      return false;
    }
  }

  @Override
  public Runnable listen(Consumer<String> ear) {
    ears.add(ear);
    return () -> ears.remove(ear);
  }

  @Override
  public Answer write(String gyleId, long afterSeq, Command command, String once) {
    return told(gyleId, added(gyleId, OptionalLong.of(afterSeq), command, once, Optional.empty()));
  }

  @Override
  public Answer note(String gyleId, Command command, String once, Optional<Instant> at) {
    Instant latest = now(gyleId).plus(CLOCKS_APART);
    if (at.isPresent() && at.get().isAfter(latest)) {
      return new Answer.Refused(
          "That lies ahead: " + at.get() + ".", "Give a time that has been, or set the clock.");
    }
    return told(gyleId, added(gyleId, OptionalLong.empty(), command, once, at));
  }

  private synchronized Answer added(
      String gyleId, OptionalLong afterSeq, Command command, String once, Optional<Instant> at) {
    try {
      catchUp();
      if (journal.has(once)) {
        // Its acknowledgement was lost on the way; decided again it might make no sense any more.
        return new Answer.Written(book);
      }
      return switch (book.decide(gyleId, command)) {
        case Verdict.Refused(String because, String maybe) -> new Answer.Refused(because, maybe);
        case Verdict.Accepted(List<Event> events) when events.isEmpty() -> new Answer.Written(book);
        case Verdict.Accepted(List<Event> events) -> {
          Instant now = clock.instant();
          long after = afterSeq.orElseGet(() -> book.seen(gyleId));
          Instant then = at.orElseGet(() -> now(gyleId));
          journal.append(new Addition(gyleId, after, once, then, now, events));
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

  private Answer told(String gyleId, Answer answer) {
    if (answer instanceof Answer.Written) {
      ears.forEach(ear -> ear.accept(gyleId));
    }
    return answer;
  }

  private void catchUp() {
    book = book.after(journal.entries(book.lastSeq()));
  }
}
