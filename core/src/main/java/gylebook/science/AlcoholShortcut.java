package gylebook.science;

import gylebook.units.ExtractScale;

/// The shortcuts in common use for the real extract, kept to compare with: both are biased.
///
/// Against Balling, Tabarie and the alcohol table solved together the first is 0.10 to 0.19 P low
/// in real extract and 0.07 % by mass high in alcohol.
public final class AlcoholShortcut {
  private AlcoholShortcut() {}

  /// Real extract and alcohol by the one fixed share.
  ///
  /// `RE = 0.1808 OE + 0.8192 AE`, `A = (OE - RE)/(2.0665 - 0.010665 OE)`
  ///
  /// - Valid: fitted near 12 P; biased everywhere: use `alcohol` instead. Refused where the
  ///   apparent extract is above the original, or so low that no real extract is left.
  /// - Source: from memory (Balling).
  @Reckoned(
      name = "alcohol-shortcut",
      says = "The alcohol of a beer by the usual shortcut, which is biased; to compare only.",
      equation = "RE = 0.1808 OE + 0.8192 AE; A = (OE - RE)/(2.0665 - 0.010665 OE)",
      range = "biased: real extract 0.10 to 0.19 P low; use alcohol instead")
  @Source(key = "balling", at = "factor near 12 P", trust = Trust.MEMORY)
  public static Alcohol.Strength fixedShare(double originalPlato, double apparentPlato) {
    checked(originalPlato, apparentPlato);
    return strength(originalPlato, apparentPlato, 0.1808 * originalPlato + 0.8192 * apparentPlato);
  }

  /// The same with a share that moves with the wort's strength: less biased.
  ///
  /// `q = 0.22 + 0.001 OE`, `RE = (q OE + AE)/(1 + q)`
  ///
  /// - Valid: 10 to 18 P within 0.1 P; biased by -0.01 to -0.09 P against measured means.
  /// - Source: quoted by Cutaia and others as the straight line `1/(1 + q) = 0.820 - 0.00066 OE`.
  @Reckoned(
      name = "alcohol-shortcut-moving",
      says = "The alcohol of a beer by a shortcut whose share moves with the wort's strength.",
      equation = "q = 0.22 + 0.001 OE; RE = (q OE + AE)/(1 + q)",
      range = "10 to 18 P, real extract 0.01 to 0.09 P low; use alcohol instead")
  @Source(key = "cutaia2009", at = "table VI, older factors", trust = Trust.SECOND_HAND)
  public static Alcohol.Strength movingShare(
      @Span(least = 10, most = 18, beyond = "the bias was found for these worts only; it goes on")
          double originalPlato,
      double apparentPlato) {
    checked(originalPlato, apparentPlato);
    double q = 0.22 + 0.001 * originalPlato;
    return strength(originalPlato, apparentPlato, (q * originalPlato + apparentPlato) / (1 + q));
  }

  private static void checked(double originalPlato, double apparentPlato) {
    Require.within("original extract in P", originalPlato, 0, 40);
    Require.within("apparent extract in P", apparentPlato, -10, originalPlato);
  }

  private static Alcohol.Strength strength(
      double originalPlato, double apparentPlato, double realPlato) {
    double alcohol = Balling.alcoholFrac(originalPlato, realPlato);
    double beer = ExtractScale.sgFromPlato(apparentPlato);
    return new Alcohol.Strength(alcohol, Alcohol.volumeFrac(alcohol, beer), realPlato);
  }
}
