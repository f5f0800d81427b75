package gylebook.science;

import gylebook.units.ExtractScale;

/// Gravity of beer from what is in it, after Tabarie: alcohol and extract shift it independently.
///
/// Each is taken as if it alone were in the same volume of water.
public final class Tabarie {
  /// Where the rule was found within the scatter of measurements (Hackbarth 2011).
  public static final Validity RANGE =
      new Validity(
          "real extract in P",
          0,
          5,
          "Tabarie's rule was verified to 5 % of sugar; above, it goes on with more doubt");

  private static final double PERCENT_NUMBER = 100;

  private Tabarie() {}

  /// Specific gravity 20/20 of a beer from its alcohol and real extract.
  ///
  /// `S = S_alcohol + S_extract - 1`
  ///
  /// - Valid: verified to 5 P and 18 % alcohol by mass; goes on above 5 P with a caution; refused
  ///   beyond 30 P or 18 %.
  /// - Source: Hackbarth (abstract); the gravities by OIML R22 and the brewers' scale.
  @Reckoned(
      name = "beer-gravity",
      says = "The present gravity of a beer from its alcohol and its real extract.",
      equation = "S = S_alcohol + S_extract - 1, each in the same volume of water",
      range = "to 5 P and 18 % by mass; more doubt above 5 P; refused beyond 30 P or 18 %")
  @Source(key = "hackbarth2011", at = "abstract", trust = Trust.READ)
  @Source(key = "oiml-r22", at = "general formula", trust = Trust.READ)
  @Source(key = "asbc-tables", trust = Trust.READ)
  public static double beerSg(double alcoholByMassFrac, double realExtractPlato) {
    Require.within("alcohol by mass as a share", alcoholByMassFrac, 0, 0.18);
    Require.within("real extract in P", realExtractPlato, 0, 30);
    return Root.between(
        0.8, 1.3, s -> sumSg(alcoholByMassFrac * s, realExtractPlato / PERCENT_NUMBER * s) - s);
  }

  /// Apparent extract of a beer: the same as the spindle shows it.
  ///
  /// `AE = P(S)`
  ///
  /// - Valid: as above.
  /// - Source: as above.
  @Reckoned(
      name = "apparent-extract",
      says = "The apparent extract of a beer from its alcohol and its real extract.",
      equation = "AE = P(S_alcohol + S_extract - 1)",
      range = "to 5 P and 18 % by mass; more doubt above 5 P; refused beyond 30 P or 18 %")
  @Source(key = "hackbarth2011", at = "abstract", trust = Trust.READ)
  @Source(key = "oiml-r22", at = "general formula", trust = Trust.READ)
  @Source(key = "asbc-tables", trust = Trust.READ)
  public static double apparentPlato(double alcoholByMassFrac, double realExtractPlato) {
    return ExtractScale.platoFromSg(beerSg(alcoholByMassFrac, realExtractPlato));
  }

  /// Gravity from the contents of a litre, each in kg per 0.9982 kg (a litre of water at 20 C).
  static double sumSg(double alcoholRatio, double extractRatio) {
    return alcoholSg(alcoholRatio) + extractSg(extractRatio) - 1;
  }

  private static double alcoholSg(double alcoholRatio) {
    double p = EthanolWater.holdingFrac(alcoholRatio * EthanolWater.WATER_KG_PER_M3);
    return EthanolWater.mixtureSg(p, 20, 20);
  }

  private static double extractSg(double extractRatio) {
    double held = PERCENT_NUMBER * extractRatio;
    return Root.between(0.95, 1.35, s -> ExtractScale.platoFromSg(s) * s - held);
  }
}
