package gylebook.science;

/// How we came to know a figure or an equation.
public enum Trust {
  /// Read in the named source.
  READ("read in the source"),
  /// Read in somebody's quotation of the source.
  SECOND_HAND("read second-hand"),
  /// Remembered, not read again.
  MEMORY("from memory, not read again"),
  /// Follows from a definition or a balance; no measured constant in it.
  COMPUTED("follows from a definition or a balance"),
  /// What brewers do; nobody published it.
  PRACTICE("common practice, no source");

  private final String words;

  Trust(String words) {
    this.words = words;
  }

  /// The same in words for the page.
  public String words() {
    return words;
  }
}
