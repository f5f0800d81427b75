package gylebook.estimate;

import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.units.AnyUnit;

/// What is read, how far off it may be, and how it scatters.
///
/// A thermometer reads `T + bias + gain (T - 65)`, with a lag when it stays in its place.
///
/// @param name what the brewer calls it
/// @param measures what it shows
/// @param place where its tip is when a reading names no other
/// @param bias reads high by this much at 65 C; in the unit of what it shows
/// @param gainPerK reads high by this much more for each kelvin above 65 C
/// @param lagSec time constant; no doubt and 0 for what is read when it has settled
/// @param noise scatter of one reading, place included; in the unit of what it shows
/// @param role whether it steers, stays in its place or is carried about
@AnyUnit("bias and noise have the unit of what the instrument measures")
public record Instrument(
    String name,
    Measures measures,
    Probe.Place place,
    Parameter bias,
    Parameter gainPerK,
    Parameter lagSec,
    double noise,
    Role role) {

  // Scatter with the error of place, and spans: the rig sheet's table, span errors from memory.
  private static final double PROBE_NOISE_K = 0.10;
  private static final double CARRIED_NOISE_K = 0.25;
  private static final double DIAL_NOISE_K = 0.5;
  private static final double DIP_NOISE_L = 0.3;
  private static final double GRAVITY_NOISE_PLATO = 0.25;
  private static final double PROBE_SPAN_PER_K = 0.003;
  private static final double DIAL_SPAN_PER_K = 0.010;

  /// What an instrument shows.
  public enum Measures {
    /// A temperature, in C.
    TEMPERATURE,
    /// Wort and goods as they stand, in L.
    HOT_VOLUME,
    /// Strength, in Plato.
    STRENGTH
  }

  /// How an instrument is used.
  public enum Role {
    STEERS,
    STAYS,
    CARRIED
  }

  /// Refuses a reading without scatter.
  public Instrument {
    if (!(noise > 0)) {
      throw new IllegalArgumentException(
          name + " scatters by " + noise + "; that must be above 0.");
    }
  }

  /// The same with another belief about its bias.
  public Instrument withBias(Parameter newBias) {
    return new Instrument(name, measures, place, newBias, gainPerK, lagSec, noise, role);
  }

  /// A thermometer of the rig.
  public static Instrument of(Probe probe) {
    boolean dial = probe.kind() == Probe.Kind.DIAL;
    boolean carried = probe.kind() == Probe.Kind.HAND_HELD && !probe.steers();
    double noiseK = dial ? DIAL_NOISE_K : carried ? CARRIED_NOISE_K : PROBE_NOISE_K;
    return new Instrument(
        probe.name(),
        Measures.TEMPERATURE,
        probe.place(),
        probe.biasK(),
        Parameter.assumed(0, dial ? DIAL_SPAN_PER_K : PROBE_SPAN_PER_K, "span error"),
        carried ? Parameter.exact(0) : probe.lagSec(),
        noiseK,
        probe.steers() ? Role.STEERS : carried ? Role.CARRIED : Role.STAYS);
  }

  /// A hand-held thermometer, read when it has settled.
  public static Instrument handHeld(String name, double biasDoubtK) {
    return of(
        new Probe(
            name,
            Probe.Kind.HAND_HELD,
            Probe.Place.KETTLE,
            Parameter.exact(0),
            Parameter.assumed(0, biasDoubtK, "never tried in ice"),
            false));
  }

  /// A marked stick in the kettle.
  public static Instrument dipStick() {
    return new Instrument(
        "dip-stick",
        Measures.HOT_VOLUME,
        Probe.Place.KETTLE,
        Parameter.assumed(0, 0.15, "its marks; our judgement"),
        Parameter.exact(0),
        Parameter.exact(0),
        DIP_NOISE_L,
        Role.CARRIED);
  }

  /// A hydrometer or refractometer, corrected to 20 C.
  public static Instrument hydrometer() {
    return new Instrument(
        "hydrometer",
        Measures.STRENGTH,
        Probe.Place.KETTLE,
        Parameter.assumed(0, 0.12, "half a gravity point; our judgement"),
        Parameter.exact(0),
        Parameter.exact(0),
        GRAVITY_NOISE_PLATO,
        Role.CARRIED);
  }
}
