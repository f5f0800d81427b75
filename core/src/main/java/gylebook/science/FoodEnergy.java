package gylebook.science;

import gylebook.units.ExtractScale;

/// What a beer nourishes.
public final class FoodEnergy {
  private static final double KJ_PER_KCAL = 4.184;
  private static final double PERCENT_NUMBER = 100;
  private static final double ML_PER_L = 1000;

  private static final double USUAL_ASH_FRAC = 0.001;

  private FoodEnergy() {}

  /// Energy of a beer.
  ///
  /// @param glassKcal of the glass asked for
  /// @param glassKj the same
  /// @param beerKjPerKg of a kilogram
  /// @param beerKjPerL of a litre
  public record Energy(double glassKcal, double glassKj, double beerKjPerKg, double beerKjPerL) {}

  /// Energy of a glass of beer.
  ///
  /// `kcal per 100 g = 6.9 A + 4 (RE - ash)`, times the gravity for 100 mL
  ///
  /// - Valid: ordinary beers; ash 0.1 % when unknown. Refused below 0, and for a gravity outside
  ///   0.9 to 1.2.
  /// - Source: the practice of the American Society of Brewing Chemists.
  @Reckoned(
      name = "food-energy",
      says = "The food energy of a glass of beer.",
      equation = "kcal per 100 g = 6.9 A + 4 (RE - ash); per 100 mL times the gravity",
      range = "ordinary beers; a US 12 oz glass when no size is given")
  @Source(key = "oxford-companion-2012", at = "calories", trust = Trust.READ)
  public static Energy energy(
      double alcoholByMassFrac,
      double realExtractPlato,
      double beerSg,
      @Usually(0.001) double ashFrac,
      @Usually(355) double glassMl) {
    Require.within("alcohol by mass as a share", alcoholByMassFrac, 0, 0.25);
    Require.within("real extract in P", realExtractPlato, 0, 40);
    Require.within("gravity of the beer", beerSg, 0.9, 1.2);
    Require.within("ash as a share", ashFrac, 0, 0.01);
    Require.notBelow0("glass in mL", glassMl);
    double ash = PERCENT_NUMBER * ashFrac;
    double solid = Math.max(0, realExtractPlato - ash);
    double kcal = 6.9 * PERCENT_NUMBER * alcoholByMassFrac + 4 * solid;
    double glass = kcal * beerSg * glassMl / PERCENT_NUMBER;
    return new Energy(
        glass,
        glass * KJ_PER_KCAL,
        kcal * KJ_PER_KCAL * 10,
        kcal * beerSg * KJ_PER_KCAL * ML_PER_L / PERCENT_NUMBER);
  }

  /// Energy of a glass of beer from its gravities.
  ///
  /// `A and RE by Balling and Tabarie`, then as above
  ///
  /// - Valid: as {@link Alcohol#fromExtracts}, with 0.1 % of ash.
  /// - Source: as above.
  @Reckoned(
      name = "food-energy-from-gravities",
      says = "The food energy of a glass of beer, from its original and present gravity.",
      equation = "alcohol and real extract as in alcohol; kcal per 100 g = 6.9 A + 4 (RE - ash)",
      range = "ordinary beers of 9 to 20 P; a US 12 oz glass when no size is given")
  @Source(key = "oxford-companion-2012", at = "calories", trust = Trust.READ)
  @Source(key = "speers-calculations", at = "Balling's constants", trust = Trust.READ)
  public static Energy fromGravities(
      @Span(least = 9, most = 20, beyond = "there is no measured beer to judge the alcohol by")
          double originalPlato,
      double apparentPlato,
      @Usually(355) double glassMl) {
    Alcohol.Strength beer = Alcohol.fromExtracts(originalPlato, apparentPlato);
    double gravity = ExtractScale.sgFromPlato(apparentPlato);
    return energy(beer.byMassFrac(), beer.realExtractPlato(), gravity, USUAL_ASH_FRAC, glassMl);
  }
}
