package gylebook.rig;

/// Two made-up rigs, for the first look and for practice. Nobody owns them.
public final class DemoRigs {
  private DemoRigs() {}

  /// A metric household near the sea, 230 V, pump and counterflow chiller.
  public static Rig household() {
    return invented(
        new Newcomer(
            "the household's kettle",
            36,
            3300,
            230,
            228,
            12,
            true,
            1.8,
            0.0127,
            true,
            false,
            Probe.Place.SUCTION,
            Chiller.Kind.COUNTERFLOW,
            27,
            19));
  }

  /// A small flat at 120 V: a five-gallon kettle, no pump, a coil to chill.
  public static Rig smallFlat() {
    return invented(
        new Newcomer(
            "the flat's kettle",
            21,
            1500,
            120,
            117,
            180,
            false,
            0,
            0.0127,
            true,
            false,
            Probe.Place.KETTLE,
            Chiller.Kind.IMMERSION,
            13,
            9.5));
  }

  private static Rig invented(Newcomer newcomer) {
    Rig rig = newcomer.rig();
    return new Rig(
        rig.name(),
        true,
        rig.site(),
        rig.kettle(),
        rig.element(),
        rig.bag(),
        rig.loop(),
        rig.probes(),
        rig.controller(),
        rig.chiller(),
        rig.working());
  }
}
