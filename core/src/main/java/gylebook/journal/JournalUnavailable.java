package gylebook.journal;

/// The book cannot be written or read now; nothing was added.
public final class JournalUnavailable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /// With the reason in words that a brewer can act on.
  public JournalUnavailable(String says, Throwable cause) {
    super(says, cause);
  }
}
