package gylebook.rig;

/// A thermometer and where it sits.
///
/// @param name what the brewer calls it
/// @param kind what it is
/// @param place where its tip is
/// @param lagSec time constant in wort
/// @param biasK reads high by this much
/// @param steers whether the controller listens to it
public record Probe(
    String name, Kind kind, Place place, Parameter lagSec, Parameter biasK, boolean steers) {

  /// What a thermometer is.
  public enum Kind {
    PT100("platinum resistance"),
    DIGITAL_CHIP("digital chip"),
    THERMISTOR("thermistor"),
    THERMOCOUPLE("thermocouple"),
    DIAL("dial"),
    HAND_HELD("hand-held");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }
  }

  /// Where the tip is.
  public enum Place {
    SUCTION("in the pump's suction"),
    RETURN("in the return hose"),
    KETTLE("in the kettle"),
    BED("in the grain");

    private final String words;

    Place(String words) {
      this.words = words;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }
  }
}
