package gylebook.science;

/// A refractometer in fermenting beer, where alcohol bends light as well as extract.
///
/// The refractometer is for wort; the spindle decides the final gravity. Here an apparent extract
/// is known to 0.3 P at the end of fermentation, and worse before.
public final class BeerRefractometer {
  /// Doubt of the apparent extract at the end of fermentation.
  static final double DOUBT_PLATO = 0.3;

  private static final double PERCENT_NUMBER = 100;

  private BeerRefractometer() {}

  /// What a reading means when the wort's strength is known.
  ///
  /// @param alcoholByMassFrac alcohol by mass
  /// @param alcoholByVolumeFrac alcohol by volume
  /// @param realExtractPlato real extract
  /// @param apparentExtractPlato what a spindle would show
  /// @param doubtPlato the doubt of the apparent extract at the end of fermentation
  public record Meaning(
      double alcoholByMassFrac,
      double alcoholByVolumeFrac,
      double realExtractPlato,
      double apparentExtractPlato,
      double doubtPlato) {}

  /// Alcohol and extracts from a reading in fermenting beer.
  ///
  /// `A = (OE - B/f)/(2.0665 - 0.010665 OE - k)`, `RE = OE - A (2.0665 - 0.010665 OE)`
  ///
  /// - Valid: beers without much caramel; k = 0.42, give or take 0.03. Refused where the reading is
  ///   above the wort's strength or so low that no extract would be left.
  /// - Source: increments of the refractive index by the table of the CRC Handbook.
  ///
  /// @param originalPlato strength of the wort
  /// @param readingPlato what the refractometer shows (Brix)
  /// @param wortRatio the wort's own Brix over Plato, noted on brew day; 1.00 to 1.06
  /// @param alcoholRatio Brix per per cent of alcohol by mass
  @Reckoned(
      name = "beer-refractometer",
      says = "What a refractometer reading in fermenting beer means.",
      equation = "A = (OE - B/f)/(2.0665 - 0.010665 OE - k); RE = OE - A (2.0665 - 0.010665 OE)",
      range = "near the end of fermentation 0.3 P, worse before; the spindle decides")
  @Source(key = "refractive-increments", trust = Trust.READ)
  @Source(key = "speers-calculations", at = "Balling's constants", trust = Trust.READ)
  public static Meaning meaning(
      double originalPlato,
      double readingPlato,
      @Span(
              least = 1,
              most = 1.06,
              beyond = "instruments read wort 1.00 to 1.06 times its strength")
          @Usually(1.04)
          double wortRatio,
      @Span(
              least = 0.39,
              most = 0.45,
              beyond = "alcohol bends light as 0.39 to 0.45 of its share of sugar")
          @Usually(0.42)
          double alcoholRatio) {
    Require.within("original extract in P", originalPlato, 0.1, 40);
    Require.within("Brix over Plato of the wort", wortRatio, 0.9, 1.2);
    Require.within("Brix per per cent of alcohol", alcoholRatio, 0.2, 0.6);
    double brix = Require.within("reading in Brix", readingPlato, 0, 50) / wortRatio;
    Require.within("reading over the wort's ratio", brix, 0, originalPlato);
    double perAlcohol = Balling.perAlcoholNumber(originalPlato);
    double percent = (originalPlato - brix) / (perAlcohol - alcoholRatio);
    double real =
        Require.notBelow0("real extract that follows in P", originalPlato - percent * perAlcohol);
    double alcohol = percent / PERCENT_NUMBER;
    return new Meaning(
        alcohol,
        Alcohol.volumeFrac(alcohol, Tabarie.beerSg(alcohol, real)),
        real,
        Tabarie.apparentPlato(alcohol, real),
        DOUBT_PLATO);
  }
}
