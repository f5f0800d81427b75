package gylebook.units;

/// The two ways to say how strong a wort is: specific gravity and per cent extract by mass (Plato).
///
/// `P = 135.997 S^3 - 630.272 S^2 + 1111.14 S - 616.868`, `S` the apparent specific gravity 20/20.
///
/// - Valid: SG 1.000 to 1.083, the range of the table it was fitted to (worst 0.0038 P at 1.000,
///   0.0006 P root mean square). Outside it is an extrapolation, smooth and still rising; for a dry
///   beer below 1.000 it gives the apparent extract below zero that brewers expect.
/// - At SG 1 the fit leaves -0.003 P where the table has 0. That remainder is faded out within
///   0.005 of SG 1, so that water is 0 P and a reading of 0 comes back as 0.
/// - Source: the cubic of the American Society of Brewing Chemists, its constants read in two
///   places.
public final class ExtractScale {
  private static final double CUBE_FACTOR = 135.997;
  private static final double SQUARE_FACTOR = -630.272;
  private static final double LINEAR_FACTOR = 1111.14;
  private static final double REST_FACTOR = -616.868;
  private static final double LEFT_AT_ONE_FACTOR =
      CUBE_FACTOR + SQUARE_FACTOR + LINEAR_FACTOR + REST_FACTOR;
  private static final double FADE_FACTOR = 0.005;
  private static final double FIRST_SLOPE_FACTOR = 258.6;
  private static final int ROUNDS = 60;

  private ExtractScale() {}

  /// Extract of a wort from its specific gravity 20/20, in Plato.
  public static double platoFromSg(double wortSg) {
    if (!(wortSg > 0) || Double.isInfinite(wortSg)) {
      throw new IllegalArgumentException("wortSg is " + wortSg + "; it must be above 0.");
    }
    double cubic =
        ((CUBE_FACTOR * wortSg + SQUARE_FACTOR) * wortSg + LINEAR_FACTOR) * wortSg + REST_FACTOR;
    double near = 1 - Math.abs(wortSg - 1) / FADE_FACTOR;
    return near > 0 ? cubic - LEFT_AT_ONE_FACTOR * near : cubic;
  }

  /// Specific gravity 20/20 of a wort from its extract, by Newton's rule on the cubic.
  public static double sgFromPlato(double wortPlato) {
    if (!(wortPlato > -100 && wortPlato < 500)) {
      throw new IllegalArgumentException(
          "wortPlato is " + wortPlato + "; it must lie between -100 and 500.");
    }
    double s = 1;
    double slope = FIRST_SLOPE_FACTOR;
    for (int i = 0; i < ROUNDS; i++) {
      double missing = wortPlato - platoFromSg(s);
      double step = missing / slope;
      s += step;
      if (Math.abs(step) < 1e-15) {
        break;
      }
      slope = (3 * CUBE_FACTOR * s + 2 * SQUARE_FACTOR) * s + LINEAR_FACTOR;
    }
    return s;
  }
}
