package gylebook.rig;

/// How a number of the rig came to be known.
public enum Origin {
  /// Nobody looked; a fair guess with an honest doubt.
  ASSUMED("assumed"),
  /// Read off a plate, a data sheet or a box.
  MAKERS_PLATE("maker's plate"),
  /// Measured by the brewer.
  MEASURED("measured"),
  /// Found from finished gyles.
  LEARNT("learnt");

  private final String words;

  Origin(String words) {
    this.words = words;
  }

  /// The same in words for the page.
  public String words() {
    return words;
  }
}
