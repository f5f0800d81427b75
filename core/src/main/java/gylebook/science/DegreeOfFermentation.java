package gylebook.science;

/// How far a beer has fermented, of its extract.
public final class DegreeOfFermentation {
  /// More than all cannot ferment: real extract never falls below 0, the apparent one hardly.
  public static final Validity RANGE =
      new Validity(
          "degree of fermentation as a share",
          0,
          1,
          "so much cannot have fermented; look at both readings");

  private DegreeOfFermentation() {}

  /// Apparent degree of fermentation.
  ///
  /// `ADF = (OE - AE)/OE`
  ///
  /// - Valid: any wort with extract; above 1 for a very dry beer. Refused outside 0.1 to 60 P.
  /// - Source: a definition.
  @Reckoned(
      name = "attenuation-apparent",
      says = "The apparent degree of fermentation from original and present gravity.",
      equation = "ADF = (OE - AE)/OE",
      range = "original extract 0.1 to 60 P; refused outside")
  @Source(key = "mass-balance", at = "definition", trust = Trust.COMPUTED)
  public static double apparentFrac(double originalPlato, double apparentPlato) {
    Require.within("original extract in P", originalPlato, 0.1, 60);
    Require.within("apparent extract in P", apparentPlato, -10, originalPlato);
    return (originalPlato - apparentPlato) / originalPlato;
  }

  /// Real degree of fermentation, simple form.
  ///
  /// `RDF = (OE - RE)/OE`
  ///
  /// - Valid: as above.
  /// - Source: a definition.
  @Reckoned(
      name = "attenuation-real",
      says = "The real degree of fermentation from original and real extract.",
      equation = "RDF = (OE - RE)/OE",
      range = "original extract 0.1 to 60 P, real extract not above it; refused otherwise")
  @Source(key = "mass-balance", at = "definition", trust = Trust.COMPUTED)
  public static double realFrac(double originalPlato, double realExtractPlato) {
    Require.within("original extract in P", originalPlato, 0.1, 60);
    Require.within("real extract in P", realExtractPlato, 0, originalPlato);
    return (originalPlato - realExtractPlato) / originalPlato;
  }

  /// Real degree of fermentation as the American method counts it: for the beer's lost mass.
  ///
  /// `RDF = (OE - RE)/OE / (1 - 0.005161 RE)`
  ///
  /// - Valid: as above.
  /// - Source: Speers, after ASBC Beer-6.
  @Reckoned(
      name = "attenuation-real-corrected",
      says = "The real degree of fermentation, corrected for the mass that left as gas.",
      equation = "RDF = (OE - RE)/OE / (1 - 0.005161 RE)",
      range = "original extract 0.1 to 60 P, real extract not above it; refused otherwise")
  @Source(key = "speers-calculations", at = "after ASBC Beer-6", trust = Trust.READ)
  public static double correctedFrac(double originalPlato, double realExtractPlato) {
    return realFrac(originalPlato, realExtractPlato) / (1 - 0.005161 * realExtractPlato);
  }
}
