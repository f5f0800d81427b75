package gylebook.science;

/// How much extract a volume of wort holds, and what it adds to the gravity.
public final class ExtractMass {
  private static final double PERCENT_NUMBER = 100;
  private static final double SCALE_C = 20;
  private static final double POUND_KG = 0.45359237;
  private static final double GALLON_L = 3.785411784;

  private ExtractMass() {}

  /// Gravity points (thousandths of SG) that a mass of extract gives a volume.
  ///
  /// @param pointsLPerKg points times litres per kilogram
  /// @param customaryNumber the same in points times US gallons per pound
  public record Points(double pointsLPerKg, double customaryNumber) {}

  /// Mass of extract in a volume of wort.
  ///
  /// `E = V rho(w,20) w`
  ///
  /// - Valid: as `plato` and `wort-density`; the volume is taken at 20 C. Keep masses as the truth;
  ///   a volume is a view of them at a temperature.
  /// - Source: a definition with both.
  @Reckoned(
      name = "extract-mass",
      says = "How much extract a volume of wort at 20 C holds.",
      equation = "E = V rho(w, 20) w, w = P(S)/100",
      range = "SG 1.000 to 1.083; carried on to 1.15; refused outside")
  @Source(key = "asbc-tables", trust = Trust.READ)
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  public static double extractKg(
      double wortL,
      @Span(
              least = 1,
              most = 1.083,
              beyond = "the table of the scale ends there; its cubic goes on")
          double gravitySg) {
    double w = PlatoScale.extractPlato(gravitySg) / PERCENT_NUMBER;
    return Require.notBelow0("wort in L", wortL) * WortDensity.wortKgPerL(w, SCALE_C) * w;
  }

  /// Gravity points that extract gives wort of a strength.
  ///
  /// `points = 1000 (S - 1) / (rho(w,20) w)`
  ///
  /// - Valid: above 0 to 34 P; it falls slowly with strength (385.6 at 10 P, 383.8 at 20 P);
  ///   outside it refuses.
  /// - Source: the Plato scale and the density of sugar solutions.
  @Reckoned(
      name = "gravity-points",
      says = "How many gravity points a mass of extract gives a volume of wort.",
      equation = "points = 1000 (S - 1) / (rho(w, 20) w)",
      range = "0.1 to 34 P; refused outside")
  @Source(key = "asbc-tables", trust = Trust.READ)
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  public static Points points(@Usually(12) double extractPlato) {
    Require.within("extract in P", extractPlato, 0.1, 34);
    double w = extractPlato / PERCENT_NUMBER;
    double extractKgPerL = WortDensity.wortKgPerL(w, SCALE_C) * w;
    double points = 1000 * (PlatoScale.gravitySg(extractPlato) - 1) / extractKgPerL;
    return new Points(points, points * POUND_KG / GALLON_L);
  }
}
