package gylebook.simulate;

/// A stretch of the day with the same things switched on, until something is reached.
///
/// @param key milestone at its end: `strikeReady`
/// @param drive what steers the element
/// @param pump how the wort moves
/// @param lidOn whether the lid is on
/// @param stirred whether somebody stirs
/// @param chilling whether cold water runs
/// @param runOff whether the kettle runs off into the fermenter
/// @param until what ends it
/// @param mostSec given up after this; the day says so
public record Leg(
    String key,
    Drive drive,
    Pump pump,
    boolean lidOn,
    boolean stirred,
    boolean chilling,
    boolean runOff,
    Until until,
    double mostSec)
    implements Action {

  /// How the wort moves.
  public enum Pump {
    OFF,
    MASH,
    WHIRLPOOL
  }

  /// What steers the element.
  public sealed interface Drive {
    /// The controller holds a set point.
    ///
    /// @param setC set point
    record Automatic(double setC) implements Drive {}

    /// The controller's set point climbs evenly and then stays.
    ///
    /// @param fromC where it begins, if it does not stand higher already
    /// @param setC where it stays
    /// @param setKPerSec how fast it climbs
    record Rising(double fromC, double setC, double setKPerSec) implements Drive {}

    /// A duty set by hand.
    ///
    /// @param dutyFrac share of the element's power
    record ByHand(double dutyFrac) implements Drive {}
  }

  /// What ends a leg.
  public sealed interface Until {
    /// Time.
    ///
    /// @param holdSec how long
    record After(double holdSec) implements Until {}

    /// The steering thermometer reads so much, rising.
    ///
    /// @param readC reading
    record Reads(double readC) implements Until {}

    /// The wort boils.
    record Boils() implements Until {}

    /// The kettle has cooled to this.
    ///
    /// @param wortC temperature
    record CooledTo(double wortC) implements Until {}

    /// The kettle has run off.
    record RunOff() implements Until {}
  }

  /// The same leg with another end.
  public Leg until(Until newUntil, double newMostSec) {
    return new Leg(key, drive, pump, lidOn, stirred, chilling, runOff, newUntil, newMostSec);
  }

  /// The same leg with other things switched on.
  public Leg switched(Drive newDrive, Pump newPump, boolean newLidOn) {
    return new Leg(key, newDrive, newPump, newLidOn, stirred, chilling, runOff, until, mostSec);
  }

  /// A leg with the element off and nothing running.
  public static Leg idle(String key, double holdSec) {
    return new Leg(
        key,
        new Drive.ByHand(0),
        Pump.OFF,
        false,
        false,
        false,
        false,
        new Until.After(holdSec),
        holdSec);
  }
}
