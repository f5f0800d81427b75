package gylebook.science;

/// How sticky wort is, taken as a sugar solution.
public final class WortViscosity {
  private WortViscosity() {}

  /// Viscosity of a sucrose solution of the same strength (Mathlouthi and Genotelle).
  ///
  /// `log10(mu / mPa s) = 22.46 X - 0.114 + Y (1.1 + 43.1 X^1.25)`, `X = S/(1900 - 18 S)` with S in
  /// per cent, `Y = (30 - t)/(91 + t)`. About 1 % for sugar. Mash wort with its glucans is thicker:
  /// a lower bound. Refused outside 0 to 0.7 and 0 to 110 C.
  @Source(
      key = "mathlouthi-genotelle",
      at = "viscosity of sucrose solutions",
      trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "wort-viscosity",
      says = "How viscous is wort (as a sugar solution of its strength)?",
      equation = "log10 mu = 22.46 X - 0.114 + Y (1.1 + 43.1 X^1.25), mPa s",
      range = "0 to 70 % extract, 0 to 110 C; refused outside; mash wort is thicker")
  public static double wortPaSec(double extractFrac, double wortC) {
    Require.within("extract", extractFrac, 0, 0.7);
    Require.within("wort temperature", wortC, 0, 110);
    double percent = 100 * extractFrac;
    double sugar = percent / (1900 - 18 * percent);
    double cold = (30 - wortC) / (91 + wortC);
    double exponent = 22.46 * sugar - 0.114 + cold * (1.1 + 43.1 * Math.pow(sugar, 1.25));
    return 1e-3 * Math.exp(Math.log(10) * exponent);
  }
}
