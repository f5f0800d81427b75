package gylebook.science;

import gylebook.units.ExtractScale;

/// Final gravity from two refractometer readings by a published line through 68 samples.
public final class RefractometerRegression {
  /// Half-way through fermentation the line is 8 points too low.
  public static final Validity RANGE =
      new Validity(
          "apparent attenuation as a share",
          0.6,
          1.1,
          "the line holds only near the end; half-way it is 8 points too low");

  private RefractometerRegression() {}

  /// What the line gives.
  ///
  /// @param finalSg gravity of the beer
  /// @param attenuationFrac the apparent attenuation that this means
  public record Line(double finalSg, double attenuationFrac) {}

  /// Final gravity.
  ///
  /// `FG = 1.0000 - 0.00085683 B0 + 0.0034941 Bf`
  ///
  /// - Valid: an apparent attenuation above about 0.6; below, a caution.
  /// - Source: a regression on 68 samples, 2011.
  ///
  /// @param wortPlato the refractometer in the wort (Brix, its wort ratio taken off)
  /// @param beerPlato the refractometer in the beer (Brix, the wort ratio taken off)
  @Reckoned(
      name = "beer-refractometer-line",
      says = "The final gravity from refractometer readings of wort and beer, by a regression.",
      equation = "FG = 1.0000 - 0.00085683 B0 + 0.0034941 Bf",
      range = "apparent attenuation above 0.6; half-way it is 8 points too low")
  @Source(key = "refractometer-line-2011", trust = Trust.READ)
  public static Line line(double wortPlato, double beerPlato) {
    Require.within("wort in Brix", wortPlato, 1, 40);
    Require.within("beer in Brix", beerPlato, 0, wortPlato);
    double end = 1.0000 - 0.00085683 * wortPlato + 0.0034941 * beerPlato;
    double shown = ExtractScale.platoFromSg(end);
    return new Line(end, (wortPlato - shown) / wortPlato);
  }
}
