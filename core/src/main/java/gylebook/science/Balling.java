package gylebook.science;

/// What fermentation makes of extract, after Balling.
///
/// 2.0665 g of extract become 1 g of alcohol, 0.9565 g of carbon dioxide and 0.11 g of dry yeast.
/// Against five means of measured beers the original extract comes out 0.10 P low to 0.23 P high,
/// in a survey of lager of 14.3 P 0.1 P high.
public final class Balling {
  static final double EXTRACT_PER_ALCOHOL_RATIO = 2.0665;
  static final double LOST_PER_ALCOHOL_RATIO = 1.0665;
  private static final double GAS_PER_ALCOHOL_RATIO = 0.9565;
  private static final double YEAST_PER_ALCOHOL_RATIO = 0.1100;

  /// Carbon dioxide from a kilogram of extract, growth of the yeast counted.
  static final double GAS_PER_EXTRACT_RATIO = GAS_PER_ALCOHOL_RATIO / EXTRACT_PER_ALCOHOL_RATIO;

  static final double ALCOHOL_PER_EXTRACT_RATIO = 1 / EXTRACT_PER_ALCOHOL_RATIO;

  static final double YEAST_PER_EXTRACT_RATIO = YEAST_PER_ALCOHOL_RATIO / EXTRACT_PER_ALCOHOL_RATIO;
  private static final double PERCENT_NUMBER = 100;

  private Balling() {}

  /// What a mass of extract ferments to.
  ///
  /// @param alcoholKg ethanol
  /// @param gasKg carbon dioxide
  /// @param yeastKg dry yeast
  public record Products(double alcoholKg, double gasKg, double yeastKg) {}

  /// Original extract of a beer from what is in it.
  ///
  /// `OE = 100 (2.0665 A + RE)/(100 + 1.0665 A)`
  ///
  /// - Valid: ordinary beers; checked from 11 to 18 P within 0.25 P. Refused for more than a
  ///   quarter of alcohol or an extract outside 0 to 60 P.
  /// - Source: Balling's constants as Speers gives them.
  @Reckoned(
      name = "original-extract",
      says = "The original extract of a beer from its alcohol and its real extract.",
      equation = "OE = 100 (2.0665 A + RE)/(100 + 1.0665 A)",
      range = "ordinary beers; within 0.25 P of measured means; refused beyond 25 % or 60 P")
  @Source(key = "speers-calculations", at = "Balling's constants", trust = Trust.READ)
  @Source(key = "nielsen-2007", at = "abstract", trust = Trust.READ)
  public static double originalPlato(double alcoholByMassFrac, double realExtractPlato) {
    Require.within("alcohol by mass as a share", alcoholByMassFrac, 0, 0.25);
    Require.within("real extract in P", realExtractPlato, 0, 60);
    double alcohol = PERCENT_NUMBER * alcoholByMassFrac;
    return PERCENT_NUMBER
        * (EXTRACT_PER_ALCOHOL_RATIO * alcohol + realExtractPlato)
        / (PERCENT_NUMBER + LOST_PER_ALCOHOL_RATIO * alcohol);
  }

  /// Alcohol of a beer from its original and real extract: the above, solved for the alcohol.
  ///
  /// `A = (OE - RE)/(2.0665 - 0.010665 OE)`
  ///
  /// - Valid: as above; refused where the real extract is above the original.
  /// - Source: as above.
  @Reckoned(
      name = "alcohol-from-real-extract",
      says = "The alcohol by mass of a beer from its original and its real extract.",
      equation = "A = (OE - RE)/(2.0665 - 0.010665 OE)",
      range = "original extract 0 to 60 P, real extract not above it; refused otherwise")
  @Source(key = "speers-calculations", at = "Balling's constants", trust = Trust.READ)
  public static double alcoholFrac(double originalPlato, double realExtractPlato) {
    Require.within("original extract in P", originalPlato, 0, 60);
    Require.within("real extract in P", realExtractPlato, 0, originalPlato);
    return (originalPlato - realExtractPlato) / perAlcoholNumber(originalPlato) / PERCENT_NUMBER;
  }

  /// Alcohol, carbon dioxide and yeast from a mass of extract that ferments.
  ///
  /// `alcohol = E/2.0665`, `gas = 0.9565 E/2.0665`, `yeast = 0.11 E/2.0665`
  ///
  /// - Valid: any mass. By weight others measured 0.467 kg of gas a kilogram of sugar (0.463 here):
  ///   4 % of doubt, 10 % for the alcohol.
  /// - Source: 2.0665 read in Speers; the shares of gas and yeast as quoted in 2007.
  @Reckoned(
      name = "fermentation-products",
      says = "The alcohol, carbon dioxide and yeast that come of fermented extract.",
      equation = "alcohol = E/2.0665, gas = 0.9565 E/2.0665, yeast = 0.11 E/2.0665",
      range = "any mass of real extract fermented; gas within 4 %, alcohol within 10 %")
  @Source(key = "speers-calculations", at = "Balling's constants", trust = Trust.READ)
  @Source(key = "balling", at = "gas and yeast", trust = Trust.SECOND_HAND)
  public static Products products(double extractKg) {
    double alcohol = Require.notBelow0("fermented extract in kg", extractKg);
    alcohol /= EXTRACT_PER_ALCOHOL_RATIO;
    return new Products(
        alcohol, GAS_PER_ALCOHOL_RATIO * alcohol, YEAST_PER_ALCOHOL_RATIO * alcohol);
  }

  /// Extract in per cent that vanishes for each per cent of alcohol in the beer.
  static double perAlcoholNumber(double originalPlato) {
    return EXTRACT_PER_ALCOHOL_RATIO - LOST_PER_ALCOHOL_RATIO / PERCENT_NUMBER * originalPlato;
  }
}
