package gylebook.science;

/// Heat that creeps along a probe's stem: a short probe in still liquid reads towards its head.
///
/// Rule of thumb (published by a maker): immerse seven sheath diameters in liquids, ten in gas.
public final class StemConduction {
  private StemConduction() {}

  /// Share of the head's difference that reaches the tip of a thin tube.
  ///
  /// `(T_tip - T_fluid)/(T_head - T_fluid) = 1/cosh(m L)`, `m = sqrt(h P/(k A))`, adiabatic tip, A
  /// the metal of the tube. Moving liquid has h about 1000, still liquid or grain about 100.
  @Source(key = "bergman-2011", at = "fin with adiabatic tip", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "stem-error-tube",
      says = "What share of the head's difference reaches the tip of a tubular probe?",
      equation = "share = 1/cosh(L sqrt(h / (k s))), the wall taken as thin",
      range = "a bare tube, wall up to half its diameter; refused otherwise")
  public static double tubeFrac(
      @Usually(0.006) double diameterM,
      @Usually(0.0005) double wallM,
      double immersedM,
      @Usually(100) double filmWPerM2K,
      @Usually(16) double stemWPerMK) {
    Require.above0("diameter", diameterM);
    Require.within("wall", wallM, 0, diameterM / 2);
    Require.above0("wall", wallM);
    return shareFrac(diameterM, Math.PI * diameterM * wallM, immersedM, filmWPerM2K, stemWPerMK);
  }

  /// The same for a stem of which a share of the section is metal (a dial's is about half).
  @Source(key = "bergman-2011", at = "fin with adiabatic tip", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "stem-error-solid",
      says = "What share of the head's difference reaches the tip of a solid stem?",
      equation = "share = 1/cosh(L sqrt(h pi d / (k A))), A = share pi d^2 / 4",
      range = "a metal share between 0 and 1; refused otherwise")
  public static double stemFrac(
      @Usually(0.006) double diameterM,
      @Usually(0.5) double metalFrac,
      double immersedM,
      @Usually(300) double filmWPerM2K,
      @Usually(16) double stemWPerMK) {
    Require.above0("diameter", diameterM);
    Require.within("metal share", metalFrac, 0, 1);
    Require.above0("metal share", metalFrac);
    double metalM2 = metalFrac * Math.PI / 4 * diameterM * diameterM;
    return shareFrac(diameterM, metalM2, immersedM, filmWPerM2K, stemWPerMK);
  }

  /// What the tip reads when a share of the head's difference reaches it.
  @Source(key = "energy-balance", at = "definition of the share", trust = Trust.COMPUTED)
  @Reckoned(
      name = "stem-reading",
      says = "What does a probe's tip read when its stem conducts?",
      equation = "T_tip = T_fluid + share (T_head - T_fluid)",
      range = "a share of 0 to 1; refused otherwise")
  public static double tipC(double fluidC, @Usually(20) double headC, double shareFrac) {
    Require.temperatureC("fluid", fluidC);
    Require.temperatureC("head", headC);
    return fluidC + Require.within("share", shareFrac, 0, 1) * (headC - fluidC);
  }

  private static double shareFrac(
      double diameterM, double metalM2, double immersedM, double filmWPerM2K, double stemWPerMK) {
    Require.notBelow0("immersion", immersedM);
    Require.notBelow0("film", filmWPerM2K);
    Require.above0("stem conductivity", stemWPerMK);
    double perMetre = Math.sqrt(filmWPerM2K * Math.PI * diameterM / (stemWPerMK * metalM2));
    return 1 / Math.cosh(perMetre * immersedM);
  }
}
