package gylebook.web;

import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/// The instruments of the house as the page shows, ties and looses them.
public interface Instruments {
  /// How every instrument stands now, in the order they were tied.
  List<Dial> dials();

  /// Ties an instrument as a form describes it.
  ///
  /// @param form the fields of the form; `name` and `place` among them
  Tied tie(Map<String, String> form, long afterSeq, String once);

  /// Looses one.
  Desk.Answer loose(String name, long afterSeq, String once);

  /// Looks at the place that a form names, before anything is tied there.
  Looked look(Map<String, String> form);

  /// Takes what a board posted.
  Taken post(Optional<String> authorization, byte[] body);

  /// The rehearsal, whose invented instruments are tied like real ones.
  Practice practice();

  /// How one instrument stands.
  ///
  /// @param reach the way to it, in words
  /// @param up whether it is on the line
  /// @param lineSays why it is not
  /// @param value the last value that could be read
  /// @param valueAgeSec how old that is
  /// @param silentSec how long it has been silent, where that is longer than is usual for it
  /// @param counts what happened how often, the odd things only
  /// @param recent the last that arrived, newest first
  @AnyUnit("an instrument measures whatever it measures")
  record Dial(
      String name,
      String place,
      String reach,
      boolean up,
      String lineSays,
      Optional<Entered> value,
      OptionalLong valueAgeSec,
      OptionalLong silentSec,
      long heardCount,
      List<Count> counts,
      List<Arrival> recent) {}

  /// Something odd, and how often it happened.
  record Count(String words, long count) {}

  /// One thing that arrived.
  ///
  /// @param sent as it was sent
  /// @param value what was read of it; empty when it is garbled
  /// @param remarks what is wrong or odd about it
  record Arrival(long agoSec, String sent, Optional<Entered> value, List<String> remarks) {}

  /// What came of tying.
  sealed interface Tied {
    /// The book has answered.
    ///
    /// @param token for a board that posts: its token, shown this once and kept nowhere
    record Answered(Desk.Answer answer, Optional<String> token) implements Tied {}

    /// A field does not fit; nothing was written.
    record Unfit(String field, String value, String maybe) implements Tied {}
  }

  /// What there is to see at a place.
  sealed interface Looked {
    /// Looking.
    ///
    /// @param lineSays why nobody answers; empty when the line is up
    record Seen(String lineSays, List<Sight> sights) implements Looked {}

    /// The form does not say where to look.
    record Unfit(String field, String value, String maybe) implements Looked {}
  }

  /// One thing that is seen.
  ///
  /// @param group what it is one of
  /// @param fits whether it is the number that the controller is said to show
  /// @param fill the fields that choosing it fills
  record Sight(String group, String where, String says, boolean fits, Map<String, String> fill) {}

  /// What to answer to a board: an HTTP status and a sentence.
  record Taken(int status, String words) {}
}
