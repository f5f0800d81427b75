package gylebook.estimate;

import java.util.Optional;

/// What one instrument is worth.
///
/// @param instrument which
/// @param verdict in a word
/// @param because why
/// @param readsHigh by how much, give or take, in the instrument's unit
/// @param settles the cheap test that would shrink that doubt most; empty when none would
public record Witness(
    String instrument,
    Verdict verdict,
    Reason because,
    Held readsHigh,
    Optional<WorthDoing> settles) {

  /// What to make of it.
  public enum Verdict {
    /// It may be taken as it reads.
    TRUST,
    /// It is off by a known amount: take that off.
    CORRECT,
    /// It cannot be told.
    CANNOT_TELL,
    /// Its readings do not fit.
    DOUBT
  }

  /// Why.
  public enum Reason {
    CLOSE("What it reads agrees with everything else, and little doubt is left."),
    KNOWN_OFF("It reads off by more than twice the doubt that is left."),
    NOTHING_SEEN("Nothing read so far tells more than was known before."),
    STILL_WIDE("Some was learnt, but the doubt left is still wide."),
    DOES_NOT_FIT("Two or more of its readings in a row could not be true with all else.");

    private final String says;

    Reason(String says) {
      this.says = says;
    }

    /// The same in words.
    public String says() {
      return says;
    }
  }

  /// A test and what it would leave of a doubt.
  ///
  /// @param test what to do
  /// @param instrument with which instrument; empty when none matters
  /// @param leftRatio doubt left after it over doubt now
  public record WorthDoing(CheapTest test, String instrument, double leftRatio) {}
}
