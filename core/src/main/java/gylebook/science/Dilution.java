package gylebook.science;

/// Water added to wort, or taken from it: extract stays, mass adds up, volumes do not.
public final class Dilution {
  private static final double PERCENT_NUMBER = 100;
  private static final double SCALE_C = 20;

  private Dilution() {}

  /// Wort after water was added.
  ///
  /// @param extractPlato strength
  /// @param wortL volume at 20 C
  public record Diluted(double extractPlato, double wortL) {}

  /// Strength and volume after water is added (or, below zero, taken away).
  ///
  /// `P2 = P1 m1 / (m1 + water)`, `V2 = (m1 + water) / rho(P2,20)`
  ///
  /// - Valid: volumes at 20 C, results up to 70 P; outside it refuses.
  /// - Source: a balance, with the density of sugar solutions.
  @Reckoned(
      name = "dilution",
      says = "The strength and volume of wort after water is added or boiled away.",
      equation = "P2 = P1 m1 / (m1 + water), V2 = (m1 + water) / rho(P2, 20)",
      range = "0 to 70 P, volumes at 20 C; water below 0 is water taken away; refused outside")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  public static Diluted diluted(double wortL, double extractPlato, double waterKg) {
    double massKg = massKg(wortL, extractPlato);
    double laterKg = Require.above0("wort and water together in kg", massKg + waterKg);
    double laterPlato = extractPlato * massKg / laterKg;
    return new Diluted(
        laterPlato, WortDensity.wortL(laterKg, laterPlato / PERCENT_NUMBER, SCALE_C));
  }

  /// Water that brings wort to a wanted strength; below zero it must be boiled away.
  ///
  /// `water = m1 (P1/P2 - 1)`
  ///
  /// - Valid: as above, wanted strength above 0.
  /// - Source: as above.
  @Reckoned(
      name = "dilution-water",
      says = "How much water brings wort to a wanted strength; below 0, to be boiled away.",
      equation = "water = m1 (P1/P2 - 1)",
      range = "0 to 70 P, volumes at 20 C; refused outside")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  public static double waterKg(double wortL, double extractPlato, double wantedPlato) {
    Require.within("wanted in P", wantedPlato, 0.1, 70);
    return massKg(wortL, extractPlato) * (extractPlato / wantedPlato - 1);
  }

  private static double massKg(double wortL, double extractPlato) {
    Require.notBelow0("wort in L", wortL);
    Require.within("extract in P", extractPlato, 0, 70);
    return wortL * WortDensity.wortKgPerL(extractPlato / PERCENT_NUMBER, SCALE_C);
  }
}
