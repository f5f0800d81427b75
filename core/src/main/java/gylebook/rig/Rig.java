package gylebook.rig;

import java.util.List;

/// A brewer's own electric single-vessel rig.
///
/// @param name what the brewer calls it
/// @param invented whether it is a made-up example
/// @param site where it stands
/// @param kettle the vessel
/// @param element the heating element
/// @param bag bag or basket
/// @param loop pump and hose
/// @param probes the thermometers; at most one steers
/// @param controller what drives the element
/// @param chiller what cools the wort
/// @param working how the brewer works
public record Rig(
    String name,
    boolean invented,
    Site site,
    Kettle kettle,
    Element element,
    Bag bag,
    Loop loop,
    List<Probe> probes,
    Controller controller,
    Chiller chiller,
    Working working) {

  /// Copies the probes; more than one that steers is refused.
  public Rig {
    probes = List.copyOf(probes);
    if (probes.stream().filter(Probe::steers).count() > 1) {
      throw new IllegalArgumentException("Only one thermometer can steer the controller.");
    }
  }
}
