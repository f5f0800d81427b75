package gylebook.science;

/// A glass hydrometer read at another temperature than it was made for.
///
/// It displaces a constant mass, and its volume grows with the glass. Below about 60 C that is the
/// whole story; above, the sample cools while it is read, and that error dominates.
public final class Hydrometer {
  private static final double GLASS_PER_K = 25e-6;
  private static final double SCALE_C = 20;
  private static final double PERCENT_NUMBER = 100;

  private Hydrometer() {}

  /// What the wort really is.
  ///
  /// @param gravitySg specific gravity 20/20
  /// @param extractPlato per cent of extract by mass
  public record Corrected(double gravitySg, double extractPlato) {}

  /// True strength from a gravity spindle that was read hot or cold.
  ///
  /// `rho(w,t) = S_read rho_water(t0) / (1 + g (t - t0))`, solved for w
  ///
  /// - Valid: 0 to 100 C, gravities of -5 to 70 % extract; solid to 60 C, above it the cooling of
  ///   the sample adds an error that is not in it; outside it refuses.
  /// - Source: a floating body in the density of sugar solutions; the glass from tables (23e-6
  ///   instead of 25e-6 changes the SG by 0.0001 at 67 C).
  @Reckoned(
      name = "hydrometer",
      says = "The true strength of wort from a hydrometer read at another temperature.",
      equation = "rho(w, t) = S_read rho_water(t0) / (1 + g (t - t0)), solved for w",
      range = "0 to 100 C; above 60 C the cooling of the sample adds an error; refused outside")
  @Source(key = "hydrostatics", trust = Trust.COMPUTED)
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  @Source(key = "glass-and-steel", trust = Trust.READ)
  public static Corrected corrected(
      double indicatedSg,
      @Span(
              least = 0,
              most = 60,
              beyond = "above 60 C the sample cools while it is read, which is a larger error")
          double sampleC,
      @Usually(SCALE_C) double calibratedC,
      @Usually(GLASS_PER_K) double glassPerK) {
    Require.above0("indicated as a gravity", indicatedSg);
    double shownKgPerL = indicatedSg * WaterDensity.waterKgPerL(calibratedC);
    double w = strengthFrac(shownKgPerL, sampleC, calibratedC, glassPerK);
    double trueKgPerL = WortDensity.wortKgPerL(w, SCALE_C);
    double gravity = trueKgPerL / WaterDensity.waterKgPerL(SCALE_C);
    return new Corrected(gravity, PERCENT_NUMBER * w);
  }

  /// What to add to a Plato spindle that was read hot or cold.
  ///
  /// `rho(w,t) = rho(w_read,t0) / (1 + g (t - t0))`, solved for w; the correction is `100 w - read`
  ///
  /// - Valid: as above; readings of 0 to 60 P. The rows of the sugar table from 15 to 30 C, as far
  ///   as remembered, agree within 0.02.
  /// - Source: as above. A refractometer needs another correction.
  @Reckoned(
      name = "spindle-correction",
      says = "What to add to a Plato spindle that was read hot or cold.",
      equation = "rho(w, t) = rho(w_read, t0) / (1 + g (t - t0)); correction = 100 w - read",
      range = "0 to 100 C, 0 to 60 P; above 60 C the cooling of the sample adds an error")
  @Source(key = "hydrostatics", trust = Trust.COMPUTED)
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  @Source(key = "glass-and-steel", trust = Trust.READ)
  public static double correctionPlato(
      double readingPlato,
      @Span(
              least = 0,
              most = 60,
              beyond = "above 60 C the sample cools while it is read, which is a larger error")
          double sampleC,
      @Usually(SCALE_C) double calibratedC,
      @Usually(GLASS_PER_K) double glassPerK) {
    double w = Require.within("reading in P", readingPlato, 0, 60) / PERCENT_NUMBER;
    double shownKgPerL = WortDensity.wortKgPerL(w, calibratedC);
    return PERCENT_NUMBER * (strengthFrac(shownKgPerL, sampleC, calibratedC, glassPerK) - w);
  }

  /// What a hydrometer will show in wort of a known strength.
  ///
  /// `S_read = rho(w,t) (1 + g (t - t0)) / rho_water(t0)`
  ///
  /// - Valid: as above.
  /// - Source: as above.
  @Reckoned(
      name = "hydrometer-reading",
      says = "What a hydrometer shows in wort of a known strength and temperature.",
      equation = "S_read = rho(w, t) (1 + g (t - t0)) / rho_water(t0)",
      range = "0 to 100 C, -5 to 70 % extract; refused outside")
  @Source(key = "hydrostatics", trust = Trust.COMPUTED)
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  @Source(key = "glass-and-steel", trust = Trust.READ)
  public static double indicatedSg(
      double extractFrac,
      @Span(
              least = 0,
              most = 60,
              beyond = "above 60 C the sample cools while it is read, which is a larger error")
          double sampleC,
      @Usually(SCALE_C) double calibratedC,
      @Usually(GLASS_PER_K) double glassPerK) {
    double growth = growthRatio(sampleC, calibratedC, glassPerK);
    return WortDensity.wortKgPerL(extractFrac, sampleC)
        * growth
        / WaterDensity.waterKgPerL(calibratedC);
  }

  private static double strengthFrac(
      double shownKgPerL, double sampleC, double calibratedC, double glassPerK) {
    double wortKgPerL = shownKgPerL / growthRatio(sampleC, calibratedC, glassPerK);
    return WortDensity.extractFrac(wortKgPerL, sampleC);
  }

  private static double growthRatio(double sampleC, double calibratedC, double glassPerK) {
    Require.within("sample in C", sampleC, 0, 100);
    Require.within("calibrated in C", calibratedC, 0, 40);
    Require.within("glass per K", glassPerK, 0, 1e-3);
    return 1 + glassPerK * (sampleC - calibratedC);
  }
}
