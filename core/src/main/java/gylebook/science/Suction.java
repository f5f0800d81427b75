package gylebook.science;

/// What the pump finds at its suction: pressure to spare above boiling, air, friction.
///
/// Throttle on the discharge side only. At the boil nothing but the static head remains.
public final class Suction {
  private Suction() {}

  /// Head to spare above boiling at the pump's eye, from pressures.
  ///
  /// `NPSH = (p - p_v)/(rho g) + z - h_f`; z is the level above the pump, h_f the suction side's
  /// loss. Liquid hotter than its boiling point does not stay: the vapour counts as at most the air
  /// pressure, which leaves `z - h_f` in any open boil.
  @Source(key = "bachus-custodio-2003", at = "chapter 2", trust = Trust.READ)
  @Reckoned(
      name = "suction-head-from-vapour",
      says = "How much head is to spare above boiling at the pump (vapour pressure known)?",
      equation = "NPSH = (p - p_v)/(rho g) + z - h_f",
      range = "an open kettle; a vapour pressure above the air's counts as boiling")
  public static double npshM(
      @Usually(101.325) double pressureKpa,
      double vapourKpa,
      double levelM,
      double lossM,
      @Usually(1.03) double densityKgPerL) {
    Require.notBelow0("air pressure", pressureKpa);
    Require.notBelow0("vapour pressure", vapourKpa);
    double spareKpa = Math.max(0, pressureKpa - vapourKpa);
    return spareKpa / (Require.above0("density", densityKgPerL) * Air.GRAVITY_M_PER_SEC2)
        + Require.finite("level", levelM)
        - Require.notBelow0("suction loss", lossM);
  }

  /// The same at a wort temperature, with the vapour pressure of water.
  @Source(key = "bachus-custodio-2003", at = "chapter 2", trust = Trust.READ)
  @Source(key = "iapws-if97", at = "region 4", trust = Trust.READ)
  @Reckoned(
      name = "suction-head",
      says = "How much head is to spare above boiling at the pump (net positive suction head)?",
      equation = "NPSH = (p - p_v(T))/(rho g) + z - h_f",
      range = "an open kettle; at and above the boil z - h_f; keep 1 m above the pump's need")
  public static double npshAtM(
      double wortC,
      @Usually(101.325) double pressureKpa,
      double levelM,
      @Usually(0.10) double lossM,
      @Usually(1.03) double densityKgPerL) {
    return npshM(pressureKpa, Saturation.saturationKpa(wortC), levelM, lossM, densityKgPerL);
  }

  /// The same when everything is already a height of liquid.
  @Source(key = "bachus-custodio-2003", at = "chapter 2, worked example", trust = Trust.READ)
  @Reckoned(
      name = "suction-head-from-heads",
      says = "How much head is to spare above boiling when all is given as heights of liquid?",
      equation = "NPSH = h_air + z - h_vapour - h_friction - h_safety",
      range = "any; a lift counts as a negative level")
  public static double npshFromHeadsM(
      double atmosphereM, double levelM, double vapourM, double frictionM, double safetyM) {
    Require.notBelow0("atmosphere", atmosphereM);
    Require.notBelow0("vapour", vapourM);
    Require.notBelow0("friction", frictionM);
    Require.notBelow0("safety", safetyM);
    return atmosphereM + Require.finite("level", levelM) - vapourM - frictionM - safetyM;
  }

  /// Cover over the outlet below which a vortex draws air into the pump.
  ///
  /// `S = D (1 + 2.3 v / sqrt(g D))`, v the speed in the port.
  @Source(key = "hi-9-8", at = "submergence", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "vortex-cover",
      says = "How much liquid must cover the outlet so that no vortex draws air?",
      equation = "S = D (1 + 2.3 v / sqrt(g D))",
      range = "one free-standing port; bore above 0; refused otherwise")
  public static double vortexM(double flowLPerSec, @Usually(0.0127) double portM) {
    double speed = speedMPerSec(flowLPerSec, portM);
    return portM * (1 + 2.3 * speed / Math.sqrt(Air.GRAVITY_M_PER_SEC2 * portM));
  }

  /// Head lost on the way to the pump (Darcy, Weisbach): `(f L/D + sum K) v^2 / (2g)`.
  @Source(key = "darcy-weisbach", at = "pipe friction", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "suction-loss",
      says = "How much head is lost between the kettle and the pump?",
      equation = "h = (f L/D + sum K) v^2 / (2g)",
      range = "a flow of 0 or more, a bore above 0; refused otherwise")
  public static double lossM(
      double flowLPerSec,
      @Usually(0.5) double lengthM,
      @Usually(0.0127) double boreM,
      @Usually(0.03) double frictionFactor,
      @Usually(2) double fittingsNumber) {
    double speed = speedMPerSec(flowLPerSec, boreM);
    double resistances =
        Require.notBelow0("friction factor", frictionFactor)
                * Require.notBelow0("length", lengthM)
                / boreM
            + Require.notBelow0("fittings", fittingsNumber);
    return resistances * speed * speed / (2 * Air.GRAVITY_M_PER_SEC2);
  }

  private static double speedMPerSec(double flowLPerSec, double boreM) {
    Require.above0("bore", boreM);
    return 1e-3 * Require.notBelow0("flow", flowLPerSec) / (Math.PI / 4 * boreM * boreM);
  }
}
