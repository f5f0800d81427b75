package gylebook.science;

/// Heat that a warm surface radiates to the room.
public final class Radiation {
  /// Stefan and Boltzmann's constant, exact since 2019.
  private static final double SIGMA_NUMBER = 5.670374419e-8;

  private Radiation() {}

  /// Radiated heat per area and kelvin of difference, to be added to the convection coefficient.
  ///
  /// `h = eps sigma (Ts^2 + Ta^2)(Ts + Ta)`, kelvin. A small body in a large room of one
  /// temperature. Usual emissivities: polished stainless 0.15 to 0.3, oxidised 0.5 to 0.85,
  /// silicone 0.9 (from memory), water 0.96. Refused outside 0 to 1.
  @Source(key = "bergman-2011", at = "radiation coefficient", trust = Trust.COMPUTED)
  @Reckoned(
      name = "radiation-coefficient",
      says = "How much heat does a warm surface radiate per area and kelvin?",
      equation = "h = eps sigma (Ts^2 + Ta^2) (Ts + Ta), kelvin",
      range = "emissivity 0 to 1; a small body in a large room; refused outside")
  public static double coefficientWPerM2K(
      @Usually(0.25) double emissivityFrac, double surfaceC, @Usually(20) double roomC) {
    Require.within("emissivity", emissivityFrac, 0, 1);
    double surface = Air.kelvin(surfaceC);
    double room = Air.kelvin(roomC);
    return emissivityFrac * SIGMA_NUMBER * (surface * surface + room * room) * (surface + room);
  }
}
