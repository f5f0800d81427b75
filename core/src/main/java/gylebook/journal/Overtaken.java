package gylebook.journal;

/// Somebody else wrote on this gyle's page first; nothing was added. Look again and decide anew.
public final class Overtaken extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /// @param gyleId whose page
  /// @param afterSeq what the sender had seen
  /// @param lastSeq what stands there
  public Overtaken(String gyleId, long afterSeq, long lastSeq) {
    super(
        "gyle "
            + gyleId
            + " has entry "
            + lastSeq
            + "; the addition was decided on entry "
            + afterSeq
            + ".");
  }
}
