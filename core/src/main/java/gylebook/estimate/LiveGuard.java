package gylebook.estimate;

import gylebook.plan.Guard;
import gylebook.plan.Note;
import java.util.List;

/// Something that goes wrong now, or soon.
///
/// @param kind what
/// @param level how loud
/// @param what what is seen, in a sentence with its figures
/// @param bySec by when something has to be done, since the day began; now, where it is the time
///   believed in
/// @param chanceFrac how likely it is: a share of the twins, or 1 where it was measured
public record LiveGuard(
    Kind kind, Guard.Level level, List<Note> what, double bySec, double chanceFrac) {

  /// Copies the sentence.
  public LiveGuard {
    what = List.copyOf(what);
  }

  /// What can go wrong at the kettle.
  public enum Kind {
    BARE_ELEMENT(
        "The element comes out of the wort.",
        "Heater to zero, then pump off. Lift the bag a little, or add liquor.",
        "The pump draws the wort round the bag down, or too little is in the kettle.",
        "A bare element scorches and can start a fire. Isolate it at the plug."),
    STUCK_BED(
        "The bed lets too little through.",
        "Heater to zero, pump off, stir the bottom of the bag, start again at half the flow.",
        "A fine crush, a bed that was sucked down, or too much flow.",
        "Hot wort: keep hands and sleeves out of it."),
    SCORCHING(
        "Wort stands still over a hot element while the grain is in.",
        "Heater to zero, then see to the pump. Stir up what has settled before you heat again.",
        "The pump is off, or the bed lets nothing through: malt dust and starch burn on.",
        "Isolate the element at the plug before you touch it; hot wort scalds."),
    DRY_PUMP(
        "The pump runs but hardly moves anything.",
        "Heater to zero, then pump off. See that its suction is open and full.",
        "Air in the head, a blocked outlet or hose, a closed valve.",
        "A pump that runs dry wears out its seal. Depressurise before you open a coupling."),
    AIR_IN_PUMP(
        "The level is so low that the outlet can draw air.",
        "Throttle the pump on its outlet side, or add liquor.",
        "A vortex over the outlet.",
        "Never throttle the suction side."),
    CAVITATION(
        "The wort is so near the boil that the pump's suction can boil.",
        "Pump off, or throttle it on its outlet side, until the wort is cooler.",
        "At the boil only the level above the pump presses the wort into it.",
        "Boiling wort in a hose scalds when a coupling lets go."),
    BOIL_OVER(
        "The hot break comes: it foams over in seconds.",
        "Stay at the kettle, lid off; cut the duty to half before the foam rises.",
        "Protein foams as the wort first boils, and again when hops go in.",
        "Boiling wort over the rim scalds; keep children and pets away."),
    HEATS_AT_ZERO(
        "It heats though the controller gives nothing.",
        "Pull the plug or open the breaker: the controller cannot switch it off.",
        "A relay that is stuck: solid-state relays fail closed.",
        "Have it repaired by a licensed electrician before you go on; follow your local code."),
    NO_HEAT(
        "It does not heat though the controller gives all.",
        "Look at the plug, the breaker and the element's lead, with the power off.",
        "A tripped breaker or ground-fault protector, a broken element, a loose plug.",
        "Do not reset a ground-fault protector twice; wiring is for a licensed electrician."),
    CHILLER_WARM(
        "The chiller cools less than it should.",
        "Throttle the wort; look at the water's tap and hose. Do not pitch before it is cool.",
        "Less water than usual, warmer water, or a fouled chiller.",
        "The water that leaves it can scald."),
    DEVICE_SILENT(
        "An instrument sends nothing any more.",
        "Look at it. Until it sends, read another thermometer every few minutes.",
        "Its power, its cable or the network.",
        "If it steers the heater, set the heater by hand."),
    DRY_PROBE(
        "The thermometer that steers answers as slowly as in air.",
        "Look whether its tip sits in wort. Until it does, set the controller to hand and zero.",
        "A level below the probe, an outlet that is stuffed, a tip that was drawn out.",
        "A controller that reads air can heat without end. Hot wort scalds: heater off first."),
    BREAKER_LOAD(
        "The circuit carries more than it should.",
        "Switch something else off that hangs on it.",
        "The element and something else together.",
        "Continuous loads belong at no more than four fifths of the breaker in many codes; yours"
            + " decides.");

    private final String says;
    private final String doThis;
    private final String cause;
    private final String caution;

    Kind(String says, String doThis, String cause, String caution) {
      this.says = says;
      this.doThis = doThis;
      this.cause = cause;
      this.caution = caution;
    }

    /// The same in words.
    public String says() {
      return says;
    }

    /// What to do.
    public String doThis() {
      return doThis;
    }

    /// What brings it about.
    public String cause() {
      return cause;
    }

    /// The usual caution.
    public String caution() {
      return caution;
    }
  }
}
