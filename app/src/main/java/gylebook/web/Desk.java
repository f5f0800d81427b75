package gylebook.web;

import gylebook.brewday.Book;
import gylebook.brewday.Command;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;

/// The book as the page reads it and writes in it; one hand writes at a time.
public interface Desk {
  /// The book as it stands.
  Book book();

  /// Writes what comes of a command, on the disk, before it answers.
  ///
  /// @param gyleId on whose page
  /// @param afterSeq the last entry of that page which the sender had seen
  /// @param once the sender's name for this note, so that a second sending adds nothing; may be
  ///   empty
  Answer write(String gyleId, long afterSeq, Command command, String once);

  /// Writes what was noted on a day. Notes of several people do not get in each other's way, so it
  /// does not matter what the sender had seen.
  ///
  /// @param gyleId on whose page
  /// @param command a matter of the day
  /// @param once the sender's name for this note
  /// @param at when it happened; empty for now
  Answer note(String gyleId, Command command, String once, Optional<Instant> at);

  /// Whether a note that its sender named so stands in the book already.
  boolean has(String once);

  /// The time by the clock that notes are written by.
  Instant now();

  /// Tells somebody which page was written on, after it was; until the returned end is run.
  Runnable listen(Consumer<String> ear);

  /// What came of it.
  sealed interface Answer {
    /// It stands in the book.
    record Written(Book book) implements Answer {}

    /// It makes no sense now; nothing was written.
    record Refused(String because, String maybe) implements Answer {}

    /// Somebody else wrote on the page first; nothing was written.
    record Overtaken(Book book) implements Answer {}

    /// The disk refused; nothing was written.
    record NotSaved(String says) implements Answer {}
  }
}
