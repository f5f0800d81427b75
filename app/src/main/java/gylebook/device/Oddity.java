package gylebook.device;

/// What is odd about a reading that could be read. It is told, never hidden, and stops nothing.
public enum Oddity {
  STORED("kept by the broker from earlier; its age is not known"),
  REPEATED("the same value with the same time has been heard before"),
  POWER_ON_VALUE(
      "85.0 °C is what a digital chip says before its first conversion; no reading near it"
          + " came before"),
  CLAIMED_AHEAD("the instrument's own clock is ahead; its time is not used"),
  CLAIMED_OLD("measured more than a minute before it arrived, says the instrument"),
  CLOCK_WENT_BACK("this computer's clock was set back since the reading before");

  private final String words;

  Oddity(String words) {
    this.words = words;
  }

  /// The same in words for the page.
  public String words() {
    return words;
  }
}
