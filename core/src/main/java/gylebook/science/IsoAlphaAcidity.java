package gylebook.science;

/// What the pH of the wort does to the breakdown of iso-alpha acid, as far as two abstracts tell.
///
/// Huang, Tippmann and Becker 2013 (pH 4.5 to 6.5, 90 to 130 C): for each unit of pH the energy of
/// activation falls by about 20 kJ/mol. That alone would make a **less** sour wort lose more, 630
/// times more a unit at 100 C. Kappler and others 2010 (pH 4 to 7, 80 to 110 C) saw the opposite:
/// the sourer, the more is lost. Both hold only if the factor before the exponential falls as well,
/// so that the laws of all pH meet at one temperature below the boil. Neither abstract says where,
/// nor gives a rate at any pH; that temperature is asked for here.
///
/// The anchor in pH is the buffer of Malowicki and Shellhammer, whose rate {@link HopIsomerisation}
/// has. They saw no effect of pH 4.8 to 6.0 on what forms, which is the near end. At 80 C, the
/// coldest that Kappler looked at, the laws meet for the far end: our assumption, kept because a
/// meeting far colder would have changed what Malowicki and Shellhammer measured too much to miss.
public final class IsoAlphaAcidity {
  private static final double ANCHOR_PH = 5.2;

  /// For one unit of pH.
  private static final double FALL_J_PER_MOL = 20_000;

  private IsoAlphaAcidity() {}

  /// What is lost, between the two ends.
  public record Lost(double leastFrac, double mostFrac) {}

  /// Share of dosed iso-alpha acid that hot wort of a pH destroys, between pH of no effect and an
  /// effect whose laws meet at a temperature.
  ///
  /// `lost = 1 - exp(-r k2 t)`, r from 1 to `exp((5.2 - pH) 20 kJ/mol/R (1/T0 - 1/T))`
  ///
  /// - Valid: pH 4.5 to 6.5 and 90 to 110 C, where the ranges of all three works overlap. Answered
  ///   for pH 4 to 7 and from the meeting temperature to 135 C; refused below it, where the sign
  ///   would turn and nobody measured.
  /// - Source: abstracts of Malowicki and Shellhammer 2005, Huang and others 2013, Kappler and
  ///   others 2010. Strong wort and magnesium add to the loss (Kappler); by how much is not there.
  @Source(key = "malowicki2005", at = "abstract: the rate at pH 5.2", trust = Trust.READ)
  @Source(key = "huang2013", at = "abstract: 20 kJ/mol a unit of pH", trust = Trust.READ)
  @Source(key = "kappler2010", at = "abstract: more is lost at low pH", trust = Trust.READ)
  @Reckoned(
      name = "iso-alpha-lost-by-ph",
      says = "How much ready iso-alpha acid is destroyed in wort of a pH: least and most.",
      equation = "lost = 1 - exp(-r k2 t), r from 1 to exp((5.2 - pH) 20 kJ/mol/R (1/T0 - 1/T))",
      range = "pH 4.5 to 6.5, 90 to 110 C; from where on it tells (T0) is assumed, not measured")
  public static Lost lost(
      @Span(
              least = 90,
              most = 110,
              beyond = "the works on pH and on the rate overlap only there; beyond it is a guess")
          @Usually(100)
          double wortC,
      @Usually(60) double heldMin,
      @Span(
              least = 4.5,
              most = 6.5,
              beyond = "the energies of activation were measured there only; beyond it is a guess")
          @Usually(5.2)
          double wortPh,
      @Span(
              least = 60,
              most = 100,
              beyond = "an effect of pH that begins so cold would have shown in the measurements")
          @Usually(80)
          double effectFromC) {
    double farRatio = farRatio(wortC, wortPh, effectFromC);
    double heldSec = Require.notBelow0("time in min", heldMin) * Minutes.SEC_PER_MIN;
    double near = HopIsomerisation.isoLostFrac(wortC, heldMin);
    double far = -Math.expm1(-farRatio * HopIsomerisation.lossPerSec(wortC) * heldSec);
    return new Lost(Math.min(near, far), Math.max(near, far));
  }

  /// The rate of loss beside that at pH 5.2, at the far end; at the near end it is 1.
  static double farRatio(double wortC, double wortPh, double effectFromC) {
    Require.within("temperature from which the pH tells in C", effectFromC, 0, 100);
    Require.within("wort temperature in C", wortC, effectFromC, 135);
    double offPh = ANCHOR_PH - Require.within("pH of the wort", wortPh, 4, 7);
    return Arrhenius.speedRatio(wortC, effectFromC, offPh * FALL_J_PER_MOL);
  }
}
