package gylebook.science;

import gylebook.units.ExtractScale;

/// Alcohol from the strength of the wort and of the beer.
///
/// Two laws hold at once: Balling's (how much extract gives how much alcohol) and Tabarie's (how
/// alcohol and extract make up the gravity), the latter with the international alcohol table. The
/// usual shortcut for the real extract is 0.10 to 0.19 P too low and is not used. Against 14 beers
/// of 1911-12 the alcohol by mass is 0.14 off (root mean square, per cent by mass): claim a quarter
/// of a per cent for one beer.
public final class Alcohol {
  /// The worts that tables and measured beers vouch for.
  public static final Validity RANGE =
      new Validity(
          "original extract in P",
          9,
          20,
          "there is no table or measured beer to judge the solution by; it goes on");

  /// What a ferment leaves.
  public static final Validity FERMENTED_RANGE =
      new Validity(
          "alcohol by mass as a share",
          0.001,
          0.18,
          "below, nothing has fermented or the two gravities are swapped; above, none was measured");

  private static final double PERCENT_NUMBER = 100;

  private Alcohol() {}

  /// What the beer holds.
  ///
  /// @param byMassFrac alcohol by mass
  /// @param byVolumeFrac alcohol by volume at 20 C
  /// @param realExtractPlato extract left, freed of the alcohol's lightness
  public record Strength(double byMassFrac, double byVolumeFrac, double realExtractPlato) {}

  /// Alcohol and real extract.
  ///
  /// `OE = 100 (2.0665 A + RE)/(100 + 1.0665 A)` and `S_beer = S_alcohol + S_extract - 1`
  ///
  /// - Valid: wort of 9 to 20 P; goes on to 40 P with a caution. An apparent extract at or above
  ///   the original gives no alcohol; one lower than a beer without any extract left is refused.
  /// - Source: Balling (Speers), Tabarie (Hackbarth), OIML R22, the brewers' scale; solved
  ///   together.
  ///
  /// @param originalPlato strength of the wort, 0 to 40 P
  /// @param apparentPlato what the spindle shows in the beer, degassed and at its temperature
  @Source(key = "speers-calculations", at = "Balling's constants", trust = Trust.READ)
  @Source(key = "hackbarth2011", at = "abstract", trust = Trust.READ)
  @Source(key = "oiml-r22", at = "general formula", trust = Trust.READ)
  @Source(key = "asbc-tables", trust = Trust.READ)
  @Source(key = "tolman-riley-1917", at = "tables that it is checked by", trust = Trust.READ)
  @Reckoned(
      name = "alcohol",
      says = "The alcohol of a beer from its original and its present gravity.",
      equation = "OE = 100 (2.0665 A + RE)/(100 + 1.0665 A); S = S_alcohol + S_extract - 1",
      range = "9 to 20 P, give or take 0.25 % by mass; goes on to 40 P")
  public static Strength fromExtracts(double originalPlato, double apparentPlato) {
    Require.within("original extract in P", originalPlato, 0, 40);
    Require.within("apparent extract in P", apparentPlato, -10, 40);
    if (apparentPlato >= originalPlato) {
      return new Strength(0, 0, apparentPlato);
    }
    double perAlcohol = Balling.perAlcoholNumber(originalPlato);
    double most = originalPlato / perAlcohol;
    double beer = ExtractScale.sgFromPlato(apparentPlato);
    double driestPlato = driestPlato(most);
    if (apparentPlato < driestPlato) {
      throw new IllegalArgumentException(
          "apparent extract in P is "
              + apparentPlato
              + "; a wort of "
              + originalPlato
              + " P cannot ferment below "
              + driestPlato
              + " P.");
    }
    double a = Root.between(0, most, p -> gapSg(originalPlato, perAlcohol, p, beer));
    return new Strength(
        a / PERCENT_NUMBER,
        volumeFrac(a / PERCENT_NUMBER, beer),
        Math.max(0, originalPlato - a * perAlcohol));
  }

  /// Alcohol by volume of a beer from its alcohol by mass and its gravity.
  ///
  /// `ABV = A S_beer / 0.790661`
  ///
  /// - Valid: any beer at 20 C; refused for a gravity outside 0.75 to 1.3.
  /// - Source: a definition, with the density of pure alcohol from OIML R22.
  @Reckoned(
      name = "beer-alcohol-by-volume",
      says = "The alcohol by volume of a beer from its alcohol by mass and its gravity.",
      equation = "ABV = A S_beer / 0.790661",
      range = "any beer at 20 C; gravity 0.75 to 1.3, refused outside")
  @Source(key = "oiml-r22", at = "density of pure alcohol", trust = Trust.READ)
  public static double volumeFrac(double byMassFrac, double beerSg) {
    Require.within("alcohol by mass as a share", byMassFrac, 0, 1);
    Require.within("gravity of the beer", beerSg, 0.75, 1.3);
    return byMassFrac * beerSg * EthanolWater.WATER_KG_PER_M3 / EthanolWater.ETHANOL_KG_PER_M3;
  }

  private static double gapSg(
      double originalPlato, double perAlcoholNumber, double percentNumber, double beerSg) {
    double lost = percentNumber * perAlcoholNumber;
    double real = Math.max(0, originalPlato - lost);
    double alcohol = percentNumber / PERCENT_NUMBER;
    return Tabarie.sumSg(alcohol * beerSg, real / PERCENT_NUMBER * beerSg) - beerSg;
  }

  /// What the spindle shows when no extract is left at all.
  private static double driestPlato(double mostNumber) {
    double s = Root.between(0.7, 1.01, g -> Tabarie.sumSg(mostNumber / PERCENT_NUMBER * g, 0) - g);
    return ExtractScale.platoFromSg(s);
  }
}
