package gylebook.science;

/// Colour of malt, wort and beer.
///
/// Absorbances at 430 nm of bright worts add and dilute in proportion (Lambert and Beer). The
/// recipe estimate from malt is a fitted power law and does not add.
public final class Colour {
  private static final double SRM_PER_ABSORBANCE_NUMBER = 12.7;
  private static final double EBC_PER_ABSORBANCE_NUMBER = 25;

  /// Pounds in a kilogram times litres in a US gallon.
  private static final double MALT_UNITS_PER_KG_L = 2.20462262 * 3.785411784;

  private static final double POWER_FACTOR = 1.4922;
  private static final double POWER_EXPONENT_NUMBER = 0.6859;

  private static final double HAZE_LIMIT_RATIO = 0.039;

  /// Beers for which the power law is stated. It was fitted to older rules, not to beers, over 0 to
  /// 37 malt colour units only, which is 18 SRM.
  public static final Validity RANGE =
      new Validity(
          "colour in SRM", 0, 50, "the estimate of colour from malt is stated below 50 SRM only");

  private Colour() {}

  /// SRM of a sample, 1 cm path at 430 nm.
  @Source(key = "asbc-beer10", at = "definition", trust = Trust.READ)
  @Reckoned(
      name = "srm-from-absorbance",
      says = "Colour in SRM from an absorbance at 430 nm.",
      equation = "SRM = 12.7 A430",
      range = "1 cm path, bright sample")
  public static double absorbedSrm(double absorbance430Number) {
    return SRM_PER_ABSORBANCE_NUMBER * Require.notBelow0("absorbance", absorbance430Number);
  }

  /// EBC colour of a sample, 1 cm path at 430 nm.
  @Source(key = "ebc-9-6", at = "definition", trust = Trust.READ)
  @Reckoned(
      name = "ebc-from-absorbance",
      says = "Colour in EBC from an absorbance at 430 nm.",
      equation = "EBC = 25 A430",
      range = "1 cm path, bright sample")
  public static double absorbedEbc(double absorbance430Number) {
    return EBC_PER_ABSORBANCE_NUMBER * Require.notBelow0("absorbance", absorbance430Number);
  }

  /// SRM of a sample that lets a share of the light pass.
  @Source(key = "asbc-beer10", at = "worked example", trust = Trust.READ)
  @Reckoned(
      name = "srm-from-light-passed",
      says = "Colour in SRM from the share of the light at 430 nm that passes 1 cm.",
      equation = "SRM = -12.7 log10(passed)",
      range = "1 cm path, bright sample; a share above 0, at most 1")
  public static double passedSrm(double passedFrac) {
    Require.above0("light passed as a share", passedFrac);
    Require.within("light passed as a share", passedFrac, 0, 1);
    return absorbedSrm(0 - Math.log10(passedFrac));
  }

  /// SRM as EBC colour: both are multiples of one absorbance.
  @Source(key = "asbc-beer10", at = "definitions of both", trust = Trust.COMPUTED)
  @Reckoned(
      name = "ebc-from-srm",
      says = "Beer colour in EBC from SRM.",
      equation = "EBC = 25/12.7 SRM",
      range = "any beer colour")
  public static double beerEbc(double beerSrm) {
    return absorbedEbc(Require.notBelow0("colour in SRM", beerSrm) / SRM_PER_ABSORBANCE_NUMBER);
  }

  /// EBC colour as SRM.
  @Source(key = "asbc-beer10", at = "definitions of both", trust = Trust.COMPUTED)
  @Reckoned(
      name = "srm-from-ebc",
      says = "Beer colour in SRM from EBC.",
      equation = "SRM = 12.7/25 EBC",
      range = "any beer colour")
  public static double beerSrm(double beerEbc) {
    return absorbedSrm(Require.notBelow0("colour in EBC", beerEbc) / EBC_PER_ABSORBANCE_NUMBER);
  }

  /// Malt colour from EBC to Lovibond: `(EBC/1.97 + 0.6)/1.3546`.
  @Source(key = "brewers-practice", at = "malt colour scales", trust = Trust.MEMORY)
  @Reckoned(
      name = "lovibond-from-ebc",
      says = "Malt colour in Lovibond from EBC.",
      equation = "L = (EBC/1.97 + 0.6)/1.3546",
      range = "any malt colour; a rule of the trade, from memory")
  public static double maltLovibond(double maltEbc) {
    return (Require.notBelow0("malt colour in EBC", maltEbc) / 1.97 + 0.6) / 1.3546;
  }

  /// Malt colour from Lovibond to EBC, the other way round; never below 0.
  @Source(key = "brewers-practice", at = "malt colour scales", trust = Trust.MEMORY)
  @Reckoned(
      name = "ebc-from-lovibond",
      says = "Malt colour in EBC from Lovibond.",
      equation = "EBC = 1.97 (1.3546 L - 0.6)",
      range = "0.443 Lovibond and more; 0 below")
  public static double maltEbc(double maltLovibond) {
    Require.notBelow0("malt colour in Lovibond", maltLovibond);
    return Math.max(0, 1.97 * (1.3546 * maltLovibond - 0.6));
  }

  /// Malt colour units of a grist: pounds times Lovibond per US gallon.
  ///
  /// @param lovibondKgPerL sum of kg times Lovibond over the malts, per litre of wort
  @Source(key = "brewers-practice", at = "definition of the unit", trust = Trust.COMPUTED)
  @Reckoned(
      name = "malt-colour-units",
      says = "Malt colour units of a grist, from metric measure.",
      equation = "MCU = 8.3454 sum(kg L)/litres",
      range = "any grist; litres cold, in the fermenter")
  public static double maltUnitsNumber(double lovibondKgPerL) {
    return MALT_UNITS_PER_KG_L * Require.notBelow0("kg Lovibond per L", lovibondKgPerL);
  }

  /// Beer colour expected of a grist, Morey's power law.
  ///
  /// `SRM = 1.4922 MCU^0.6859`
  ///
  /// A curve through three older rules, not through beers: colour as many units up to 10.5,
  /// Daniels' line from there to 37, Mosher's up to 37.
  ///
  /// - Valid: stated below 50 SRM, with a caution above; above 37 units (18 SRM) nothing supports
  ///   it. The boil's own colour is in it as it was in the beers behind those rules.
  @Source(key = "morey", at = "power law and how it was made", trust = Trust.READ)
  @Reckoned(
      name = "beer-colour",
      says = "Beer colour expected of the malt colour units of a grist.",
      equation = "SRM = 1.4922 MCU^0.6859",
      range = "below 50 SRM as stated; made for less than 18 SRM")
  public static double maltUnitsSrm(double maltUnitsNumber) {
    Require.notBelow0("malt colour units", maltUnitsNumber);
    return POWER_FACTOR * Math.pow(maltUnitsNumber, POWER_EXPONENT_NUMBER);
  }

  /// Beer colour of a grist whose malts have one mean colour, by the same law.
  ///
  /// `SRM = 1.4922 (8.3454 m L/V)^0.6859`
  ///
  /// - Valid: as the power law; a grist's mean colour is weighted by mass.
  @Source(key = "morey", at = "power law", trust = Trust.READ)
  @Reckoned(
      name = "beer-colour-of-malt",
      says = "Beer colour expected of a mass of malt of one mean colour.",
      equation = "SRM = 1.4922 (8.3454 m L/V)^0.6859",
      range = "below 50 SRM as stated, made for less than 18 SRM; volume cold, in the fermenter")
  public static double ofMaltSrm(double maltKg, double maltLovibond, double wortL) {
    Require.notBelow0("malt in kg", maltKg);
    Require.notBelow0("malt colour in Lovibond", maltLovibond);
    return maltUnitsSrm(unitsOfMaltNumber(maltKg, maltLovibond, wortL));
  }

  private static double unitsOfMaltNumber(double maltKg, double maltLovibond, double wortL) {
    return maltUnitsNumber(maltKg * maltLovibond / Require.above0("wort in L", wortL));
  }

  /// Beer colour by the two older straight lines.
  ///
  /// @param mosherSrm Mosher's, from commercial beers
  /// @param danielsSrm Daniels', from beers brewed at home, which came out darker
  public record Lines(double mosherSrm, double danielsSrm) {}

  /// Beer colour expected of the malt colour units of a grist, by two straight lines.
  ///
  /// `SRM = 0.3 MCU + 4.7` (Mosher), `SRM = 0.2 MCU + 8.4` (Daniels)
  ///
  /// - Valid: amber to brown beers, 11 to 37 units; neither line knows a pale beer. Where they and
  ///   the power law part is the doubt of them all.
  @Source(key = "mosher-daniels", at = "both lines", trust = Trust.MEMORY)
  @Source(key = "morey", at = "ranges of both", trust = Trust.READ)
  @Reckoned(
      name = "beer-colour-lines",
      says = "Beer colour expected of malt colour units, by two older straight lines.",
      equation = "SRM = 0.3 MCU + 4.7 and SRM = 0.2 MCU + 8.4",
      range = "amber to brown beers, 11 to 37 malt colour units")
  public static Lines lines(
      @Span(least = 10.5, most = 37, beyond = "the two lines were drawn for amber and brown beers")
          double maltUnitsNumber) {
    Require.notBelow0("malt colour units", maltUnitsNumber);
    double mosher = 0.3 * maltUnitsNumber + 4.7;
    double daniels = 0.2 * maltUnitsNumber + 8.4;
    return new Lines(mosher, daniels);
  }

  /// The same for a mass of malt of one mean colour.
  ///
  /// - Valid: as the lines, 11 to 37 units.
  @Source(key = "mosher-daniels", at = "both lines", trust = Trust.MEMORY)
  @Reckoned(
      name = "beer-colour-of-malt-lines",
      says = "Beer colour expected of a mass of malt, by two older straight lines.",
      equation = "MCU = 8.3454 m L/V; SRM = 0.3 MCU + 4.7 and SRM = 0.2 MCU + 8.4",
      range = "amber to brown beers, 11 to 37 malt colour units; volume cold, in the fermenter")
  public static Lines ofMaltLines(double maltKg, double maltLovibond, double wortL) {
    Require.notBelow0("malt in kg", maltKg);
    Require.notBelow0("malt colour in Lovibond", maltLovibond);
    return lines(unitsOfMaltNumber(maltKg, maltLovibond, wortL));
  }

  /// Haze in a colour sample: above 1 the reading at 430 nm is not to be trusted.
  @Source(key = "asbc-beer10", at = "turbidity rule", trust = Trust.READ)
  @Reckoned(
      name = "colour-haze",
      says = "Whether haze spoils a colour reading: above 1 it does.",
      equation = "A700/(0.039 A430)",
      range = "1 cm path")
  public static double hazeRatio(double absorbance700Number, double absorbance430Number) {
    Require.notBelow0("absorbance at 700 nm", absorbance700Number);
    Require.above0("absorbance at 430 nm", absorbance430Number);
    return absorbance700Number / (HAZE_LIMIT_RATIO * absorbance430Number);
  }
}
