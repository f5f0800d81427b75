package gylebook.science;

/// Specific gravity from densities, weighed in air or as if in a vacuum.
public final class SpecificGravity {
  private static final double AIR_KG_PER_L = 0.0012;
  private static final double SCALE_C = 20;
  private static final double STEP_FRAC = 0.001;

  private SpecificGravity() {}

  /// Specific gravity as weighing in air shows it.
  ///
  /// `S = (rho - rho_air) / (rho_water - rho_air)`
  ///
  /// - Valid: any liquid heavier than air; an air density of 0 gives the gravity in a vacuum.
  /// - Source: buoyancy.
  @Reckoned(
      name = "gravity-from-densities",
      says = "Specific gravity from the densities of wort, water and air.",
      equation = "S = (rho - rho_air) / (rho_water - rho_air)",
      range = "liquids heavier than air; refused otherwise")
  @Source(key = "hydrostatics", trust = Trust.COMPUTED)
  public static double gravitySg(
      double wortKgPerL, double waterKgPerL, @Usually(AIR_KG_PER_L) double airKgPerL) {
    Require.notBelow0("air in kg/L", airKgPerL);
    double wort = Require.above0("wortKgPerL less airKgPerL", wortKgPerL - airKgPerL);
    return wort / Require.above0("waterKgPerL less airKgPerL", waterKgPerL - airKgPerL);
  }

  /// Specific gravity 20/20 of wort of a strength, from the density of sugar solutions.
  ///
  /// `S = (rho(w,20) - rho_air) / (rho(0,20) - rho_air)`
  ///
  /// - Valid: as `wort-density`; 10 % is 1.03998 in a vacuum and 1.04003 in air of 1.2 kg/m3.
  /// - Source: as `wort-density`, and buoyancy.
  @Reckoned(
      name = "gravity-of-sugar-solution",
      says = "Specific gravity 20/20 of wort from the density of a sugar solution.",
      equation = "S = (rho(w, 20) - rho_air) / (rho(0, 20) - rho_air)",
      range = "-5 to 70 % extract; refused outside")
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  @Source(key = "hydrostatics", trust = Trust.COMPUTED)
  public static double solutionSg(double extractFrac, @Usually(AIR_KG_PER_L) double airKgPerL) {
    double wortKgPerL = WortDensity.wortKgPerL(extractFrac, SCALE_C);
    return gravitySg(wortKgPerL, WaterDensity.waterKgPerL(SCALE_C), airKgPerL);
  }

  /// How far the brewers' scale and the density of sugar solutions disagree at most.
  ///
  /// `max over w of |P(S_air(w)) - 100 w|`, in steps of 0.001
  ///
  /// - Valid: strengths from 0 to 0.34; from 5 to 20 % it is 0.0114 P. Outside it refuses.
  /// - Source: both equations.
  @Reckoned(
      name = "scale-disagreement",
      says = "How far the Plato scale and the density of sugar solutions disagree at most.",
      equation = "max |P(S_air(w)) - 100 w|, in steps of 0.001",
      range = "0 to 34 %; refused outside")
  @Source(key = "asbc-tables", trust = Trust.READ)
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  public static double largestGapPlato(
      @Usually(0.05) double extractLeastFrac,
      @Usually(0.20) double extractMostFrac,
      @Usually(AIR_KG_PER_L) double airKgPerL) {
    Require.within("extract least as a share", extractLeastFrac, 0, 0.34);
    Require.within("extract most as a share", extractMostFrac, extractLeastFrac, 0.34);
    long steps = Math.round((extractMostFrac - extractLeastFrac) / STEP_FRAC);
    double largest = 0;
    for (long step = 0; step <= steps; step++) {
      double w = extractLeastFrac + step * STEP_FRAC;
      double scale = PlatoScale.extractPlato(solutionSg(w, airKgPerL));
      largest = Math.max(largest, Math.abs(scale - 100 * w));
    }
    return largest;
  }
}
