package gylebook.science;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/// Density of wort, taken as a sucrose solution of the same strength.
///
/// Wort is not sucrose: its sugars lie within a few parts in ten thousand, proteins and salts are
/// unknown. 0.05 P is an honest error of the model.
public final class WortDensity {
  /// Thinnest liquid answered for: beer with alcohol shows less than no extract.
  public static final double LEAST_FRAC = -0.05;

  /// Strongest syrup answered for.
  public static final double MOST_FRAC = 0.7;

  private WortDensity() {}

  /// Density of wort from strength and temperature.
  ///
  /// `rho(w,t) = rho_water(t) + sum_j th^j sum_i c_ji w^(i+1)`, `th = (t - 20)/100`
  ///
  /// - Valid: 0 to 100 C; checked against handbook tables from 5 to 40 %. Strength from -0.05 (beer
  ///   that shows less than none) to 0.7 and -5 to 110 C are carried on; outside it refuses.
  /// - Source: ICUMSA's density equation in Bubnik and others 1995, page 164, read in two copies
  ///   that differ in the fourth digit of one coefficient (below 1e-6).
  @Reckoned(
      name = "wort-density",
      says = "How heavy a litre of wort is from its strength and temperature.",
      equation = "rho = rho_water(t) + sum_j th^j sum_i c_ji w^(i+1), th = (t - 20)/100",
      range = "0 to 100 C and up to 40 %; carried on to -5 to 110 C and -5 to 70 %; else refused")
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  @Source(key = "bettin-spieweck-1990", trust = Trust.SECOND_HAND)
  public static double wortKgPerL(
      @Span(least = 0, most = 0.4, beyond = "measured values to compare with end there")
          double extractFrac,
      @Span(least = 0, most = 100, beyond = "the published fit ends there; it is carried on")
          double wortC) {
    Require.within("extract as a share", extractFrac, LEAST_FRAC, MOST_FRAC);
    double w = extractFrac;
    double th = (wortC - 20) / 100;
    double c0 =
        385.1761 + w * (135.3705 + w * (40.9299 + w * (-3.9643 + w * (13.4853 + w * -17.2890))));
    double c1 = -46.2720 + w * (-7.1720 + w * (1.1597 + w * (5.1126 + w * 17.5254)));
    double c2 = 59.7712 + w * (7.2491 + w * (12.3630 + w * -35.4791));
    double c3 = -47.2207 + w * (-21.6977 + w * 27.6301);
    double c4 = 18.3184 + w * 12.3081;
    double excess = w * (c0 + th * (c1 + th * (c2 + th * (c3 + th * c4))));
    return WaterDensity.waterKgPerL(wortC) + excess / 1000;
  }

  /// Strength of wort from its density: the equation above, solved backwards.
  ///
  /// `rho(w,t) = rho`, solved for w
  ///
  /// - Valid: as the density; a density that no strength from -0.05 to 0.7 explains is refused.
  /// - Source: as the density.
  @Reckoned(
      name = "extract-from-density",
      says = "How strong wort is from its density and temperature.",
      equation = "rho(w, t) = rho, solved for w",
      range = "densities of -5 to 70 % extract at -5 to 110 C; refused outside")
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  public static double extractFrac(double wortKgPerL, double wortC) {
    double least = wortKgPerL(LEAST_FRAC, wortC);
    double most = wortKgPerL(MOST_FRAC, wortC);
    Require.within("wort in kg/L", wortKgPerL, least, most);
    return new BracketingNthOrderBrentSolver(1e-14, 1e-13, 1e-15, 5)
        .solve(100, w -> wortKgPerL(w, wortC) - wortKgPerL, LEAST_FRAC, MOST_FRAC);
  }

  /// Volume that a mass of wort takes up.
  ///
  /// `V = m / rho(w,t)`
  ///
  /// - Valid: as the density.
  /// - Source: a definition.
  @Reckoned(
      name = "wort-volume",
      says = "How many litres a mass of wort takes up at a temperature.",
      equation = "V = m / rho(w, t)",
      range = "as wort-density")
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  public static double wortL(
      double wortKg,
      @Span(least = 0, most = 0.4, beyond = "measured values to compare with end there")
          double extractFrac,
      @Span(least = 0, most = 100, beyond = "the published fit ends there; it is carried on")
          @Usually(20)
          double wortC) {
    return Require.notBelow0("wort in kg", wortKg) / wortKgPerL(extractFrac, wortC);
  }
}
