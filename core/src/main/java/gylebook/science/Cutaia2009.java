package gylebook.science;

import gylebook.units.ExtractScale;

/// Alcohol and real extract by regression on 532 pilot and commercial brews.
///
/// One excerpt prints the third intercept as a tenth of what the paper's own means need.
public final class Cutaia2009 {
  /// The worts of the regression.
  public static final Validity RANGE =
      new Validity(
          "original extract in P",
          9.4,
          18,
          "the regression goes on beyond the brews it was made of");

  private static final double PERCENT_NUMBER = 100;

  private Cutaia2009() {}

  /// The coefficients for one strength of wort.
  ///
  /// @param apparentDropRatio a, alcohol over original less apparent extract
  /// @param realDropRatio b, alcohol over original less real extract
  /// @param differenceRatio c, alcohol over real less apparent extract
  /// @param attenuationRatio real over apparent degree of fermentation
  public record Coefficients(
      double apparentDropRatio,
      double realDropRatio,
      double differenceRatio,
      double attenuationRatio) {}

  /// The four coefficients.
  ///
  /// `a = 0.372 + 0.00357 OE`, `b = 0.459 + 0.00469 OE`, `c = 1.99 + 0.0134 OE`, `RDF/ADF = 0.814 +
  /// 0.000862 OE`
  ///
  /// - Valid: 9.4 to 18 P; goes on to 40 P with a caution; refused beyond.
  /// - Source: Cutaia and others 2009, table VI.
  @Reckoned(
      name = "alcohol-regression-coefficients",
      says = "The coefficients of the regression of alcohol on the extracts of a beer.",
      equation = "a = 0.372 + 0.00357 OE; b = 0.459 + 0.00469 OE; c = 1.99 + 0.0134 OE",
      range = "9.4 to 18 P; goes on to 40 P; refused beyond")
  @Source(key = "cutaia2009", at = "table VI", trust = Trust.READ)
  public static Coefficients coefficients(double originalPlato) {
    double oe = Require.within("original extract in P", originalPlato, 0, 40);
    return new Coefficients(
        0.372 + 0.00357 * oe, 0.459 + 0.00469 * oe, 1.99 + 0.0134 * oe, 0.814 + 0.000862 * oe);
  }

  /// Alcohol and real extract by the regression.
  ///
  /// `A = a (OE - AE)`, `RE = AE + A/c`
  ///
  /// - Valid: as above; refused where the apparent extract is above the original.
  /// - Source: as above.
  @Reckoned(
      name = "alcohol-regression",
      says = "The alcohol of a beer by a published regression on 532 brews.",
      equation = "A = (0.372 + 0.00357 OE)(OE - AE); RE = AE + A/(1.99 + 0.0134 OE)",
      range = "9.4 to 18 P; goes on to 40 P; refused beyond")
  @Source(key = "cutaia2009", at = "table VI", trust = Trust.READ)
  public static Alcohol.Strength strength(double originalPlato, double apparentPlato) {
    Coefficients fitted = coefficients(originalPlato);
    Require.within("apparent extract in P", apparentPlato, -10, originalPlato);
    double a = fitted.apparentDropRatio() * (originalPlato - apparentPlato);
    double alcohol = a / PERCENT_NUMBER;
    return new Alcohol.Strength(
        alcohol,
        Alcohol.volumeFrac(alcohol, ExtractScale.sgFromPlato(apparentPlato)),
        apparentPlato + a / fitted.differenceRatio());
  }
}
