package gylebook.science;

import gylebook.units.ExtractScale;

/// Alcohol from the strength of the wort and of the beer.
///
/// Two relations hold at once: Balling's, how much extract gives how much alcohol, and the measured
/// one between real extract, apparent extract and alcohol. Both are solved together; the usual
/// shortcut for the real extract is 0.10 to 0.19 P too low and is not used.
public final class Alcohol {
  private static final double EXTRACT_PER_ALCOHOL_RATIO = 2.0665;
  private static final double LOST_PER_ALCOHOL_RATIO = 1.0665;
  // Density of pure ethanol at 20 C (OIML R22).
  private static final double ETHANOL_KG_PER_L = 0.78924;

  private Alcohol() {}

  /// What the beer holds.
  ///
  /// @param byMassFrac alcohol by mass
  /// @param byVolumeFrac alcohol by volume at 20 C
  /// @param realExtractPlato extract left, freed of the alcohol's lightness
  public record Strength(double byMassFrac, double byVolumeFrac, double realExtractPlato) {}

  /// Alcohol and real extract.
  ///
  /// `OE = 100 (2.0665 A + RE)/(100 + 1.0665 A)` and `A = (1.99 + 0.0134 OE)(RE - AE)`
  ///
  /// - Valid: wort 5 to 25 P, any attenuation. Measured beers scatter by 0.1 % round it.
  /// - An apparent extract above the original gives no alcohol.
  ///
  /// @param originalPlato strength of the wort, 0 to 40 P
  /// @param apparentPlato what the spindle shows in the beer
  @Source(key = "cutaia2009", at = "table VI", trust = Trust.READ)
  @Source(key = "speers-calculations", at = "Balling's constants", trust = Trust.READ)
  @Reckoned(
      name = "alcohol",
      says = "The alcohol of a beer from its original and its present gravity.",
      equation = "OE = 100 (2.0665 A + RE)/(100 + 1.0665 A); A = (1.99 + 0.0134 OE)(RE - AE)",
      range = "5 to 25 P; give or take 0.1 % by mass")
  public static Strength fromExtracts(double originalPlato, double apparentPlato) {
    Require.within("original extract in P", originalPlato, 0, 40);
    Require.within("apparent extract in P", apparentPlato, -10, 40);
    double ratio = 1.99 + 0.0134 * originalPlato;
    // Both relations are linear in the alcohol once the real extract is replaced.
    double alcohol =
        Math.max(
            0,
            (originalPlato - apparentPlato)
                / (EXTRACT_PER_ALCOHOL_RATIO
                    + 1 / ratio
                    - LOST_PER_ALCOHOL_RATIO * originalPlato / 100));
    double beerKgPerL = ExtractScale.sgFromPlato(apparentPlato) * WaterDensity.waterKgPerL(20);
    return new Strength(
        alcohol / 100,
        alcohol / 100 * beerKgPerL / ETHANOL_KG_PER_L,
        apparentPlato + alcohol / ratio);
  }
}
