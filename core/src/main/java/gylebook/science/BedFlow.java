package gylebook.science;

/// Wort through a bed of grain.
///
/// No published permeability of a malt bed could be read; the bounds come from the grain's size and
/// the rig learns its own from one dip-stick reading at a known flow.
public final class BedFlow {
  private static final double ONE_M2 = 1;

  private BedFlow() {}

  /// Head the bed needs to let a flow through (Darcy).
  ///
  /// `dh = (Q/A) mu L / (k rho g)`. At brewing velocities the inertia term is negligible.
  @Source(key = "darcy-1856", at = "law of the sand filter", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "bed-head",
      says = "How much head does the grain bed need for a flow?",
      equation = "dh = (Q/A) mu L / (k rho g)",
      range = "slow flow; everything above 0 (the flow may be 0); refused otherwise")
  public static double headM(
      double flowLPerSec,
      @Usually(0.20) double depthM,
      @Usually(0.113) double areaM2,
      @Usually(2e-10) double permeabilityM2,
      @Usually(0.7e-3) double viscosityPaSec,
      @Usually(1.05) double densityKgPerL) {
    Require.notBelow0("flow", flowLPerSec);
    Require.notBelow0("bed depth", depthM);
    Require.above0("bed area", areaM2);
    Require.above0("permeability", permeabilityM2);
    Require.above0("viscosity", viscosityPaSec);
    Require.above0("density", densityKgPerL);
    return flowLPerSec
        / Air.L_PER_M3
        / areaM2
        * viscosityPaSec
        * depthM
        / (permeabilityM2 * Air.L_PER_M3 * densityKgPerL * Air.GRAVITY_M_PER_SEC2);
  }

  /// Permeability that explains a measured head: the same law read backwards.
  @Source(key = "darcy-1856", at = "law of the sand filter", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "bed-permeability-measured",
      says = "How permeable is the bed that needs this head at this flow?",
      equation = "k = (Q/A) mu L / (dh rho g)",
      range = "slow flow; everything above 0; refused otherwise")
  public static double measuredPermeabilityM2(
      double flowLPerSec,
      double headM,
      @Usually(0.20) double depthM,
      @Usually(0.113) double areaM2,
      @Usually(0.7e-3) double viscosityPaSec,
      @Usually(1.05) double densityKgPerL) {
    Require.above0("head", headM);
    double headAtOneM = headM(flowLPerSec, depthM, areaM2, ONE_M2, viscosityPaSec, densityKgPerL);
    return ONE_M2 * headAtOneM / headM;
  }

  /// Permeability of a bed of equal grains: `k = d^2 eps^3 / (180 (1 - eps)^2)` (Kozeny, Carman).
  ///
  /// For crushed malt an order of magnitude only: it did not match measured beds of other crops.
  @Source(key = "carman-1937", at = "Kozeny's constant 180", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "bed-permeability",
      says = "How permeable is a bed of grains of one size?",
      equation = "k = d^2 eps^3 / (180 (1 - eps)^2)",
      range = "pores between 0 and 1 of the volume; for crushed malt an order of magnitude")
  public static double permeabilityM2(double grainM, @Usually(0.40) double poresFrac) {
    Require.above0("grain size", grainM);
    poresInside(poresFrac);
    double solid = 1 - poresFrac;
    return grainM * grainM * poresFrac * poresFrac * poresFrac / (180 * solid * solid);
  }

  /// Pressure drop per metre of packed bed (Carman).
  ///
  /// `(180 + 2.871 (Re/(1-eps))^0.9) (1-eps)^2 rho v^2 / (eps^3 Re d)`, `Re = d rho v / mu`.
  @Source(key = "carman-1937", at = "with his inertia term", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "bed-pressure-carman",
      says = "What pressure drives a flow through a metre of packed grains (Carman)?",
      equation = "dP/L = (180 + 2.871 (Re/(1-eps))^0.9) (1-eps)^2 rho v^2 / (eps^3 Re d)",
      range = "equal round grains, flow above 0; refused otherwise")
  public static double carmanPaPerM(
      double grainM,
      @Usually(0.40) double poresFrac,
      double speedMPerSec,
      @Usually(1000) double densityKgPerM3,
      @Usually(1e-3) double viscosityPaSec) {
    bedOf(grainM, poresFrac, speedMPerSec, densityKgPerM3, viscosityPaSec);
    double reynolds = grainM * densityKgPerM3 * speedMPerSec / viscosityPaSec;
    double solid = 1 - poresFrac;
    return (180 + 2.871 * Math.pow(reynolds / solid, 0.9))
        * solid
        * solid
        * densityKgPerM3
        * speedMPerSec
        * speedMPerSec
        / (poresFrac * poresFrac * poresFrac * reynolds * grainM);
  }

  /// The same by Ergun: `150 mu (1-eps)^2 v / (eps^3 d^2) + 1.75 (1-eps) rho v^2 / (eps^3 d)`.
  @Source(key = "ergun-1952", at = "equation of packed columns", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "bed-pressure-ergun",
      says = "What pressure drives a flow through a metre of packed grains (Ergun)?",
      equation = "dP/L = 150 mu (1-eps)^2 v/(eps^3 d^2) + 1.75 (1-eps) rho v^2/(eps^3 d)",
      range = "equal round grains, flow above 0; refused otherwise")
  public static double ergunPaPerM(
      double grainM,
      @Usually(0.40) double poresFrac,
      double speedMPerSec,
      @Usually(1000) double densityKgPerM3,
      @Usually(1e-3) double viscosityPaSec) {
    bedOf(grainM, poresFrac, speedMPerSec, densityKgPerM3, viscosityPaSec);
    double pores = poresFrac * poresFrac * poresFrac;
    double solid = 1 - poresFrac;
    double friction =
        150 * viscosityPaSec * solid * solid * speedMPerSec / (pores * grainM * grainM);
    return friction
        + 1.75 * solid * densityKgPerM3 * speedMPerSec * speedMPerSec / (pores * grainM);
  }

  /// Time in which a recirculated bed follows the kettle: `C_bed / (m c)`.
  @Source(key = "energy-balance", at = "heat of a bed heated by flow alone", trust = Trust.COMPUTED)
  @Reckoned(
      name = "bed-time-constant",
      says = "How slowly does the grain bed follow the kettle under recirculation?",
      equation = "tau = (m_g c_g + m_w c_w) / (Q rho c)",
      range = "a bed heated by flow alone; a flow above 0; refused otherwise")
  public static double timeConstantSec(
      double grainKg,
      @Usually(1650) double grainJPerKgK,
      double heldKg,
      @Usually(4000) double heldJPerKgK,
      double flowLPerSec,
      @Usually(0.98) double densityKgPerL,
      @Usually(4186) double streamJPerKgK) {
    double bed =
        Require.notBelow0("grain", grainKg) * Require.above0("grain's heat", grainJPerKgK)
            + Require.notBelow0("held wort", heldKg) * Require.above0("wort's heat", heldJPerKgK);
    return bed
        / (Require.above0("flow", flowLPerSec)
            * Require.above0("density", densityKgPerL)
            * Require.above0("stream's heat", streamJPerKgK));
  }

  private static void bedOf(
      double grainM,
      double poresFrac,
      double speedMPerSec,
      double densityKgPerM3,
      double viscosityPaSec) {
    Require.above0("grain size", grainM);
    poresInside(poresFrac);
    Require.above0("speed", speedMPerSec);
    Require.above0("density", densityKgPerM3);
    Require.above0("viscosity", viscosityPaSec);
  }

  private static void poresInside(double poresFrac) {
    if (!(poresFrac > 0 && poresFrac < 1)) {
      throw new IllegalArgumentException(
          "pores are " + poresFrac + " of the volume; it must lie between 0 and 1.");
    }
  }
}
