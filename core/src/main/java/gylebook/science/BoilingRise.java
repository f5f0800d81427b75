package gylebook.science;

/// How much hotter wort boils than water.
public final class BoilingRise {
  private static final double GAS_J_PER_MOL_K = 8.314462618;
  private static final double ZERO_KELVIN = 273.15;
  private static final double SUCROSE_G_PER_MOL = 342.2965;
  private static final double WATER_G_PER_MOL = 18.015268;
  private static final double PA_PER_KPA = 1000;
  private static final double GRAVITY_M_PER_SEC2 = 9.80665;

  private BoilingRise() {}

  /// Rise of the boiling point by dissolved extract, taken as sucrose.
  ///
  /// `psat(T) (1 - x) gamma = p`, `ln gamma = Q/(R T) x^2 (1 + a x + b x^2)`, x the mole fraction
  ///
  /// - Valid: 0 to 0.6 extract and 5 to 1000 kPa; outside it refuses. Wort's mean molar mass is not
  ///   that of sucrose: 0.2 K at 12 P is good to 0.05 K.
  /// - Source: Starzak and Peacock; constants read in an abstract, the form is that of Margules.
  @Reckoned(
      name = "boiling-rise",
      says = "How much hotter wort boils than water under the same pressure.",
      equation = "psat(T) (1 - x) gamma = p, ln gamma = Q/(R T) x^2 (1 + a x + b x^2)",
      range = "0 to 60 % extract, 5 to 1000 kPa; refused outside")
  @Source(key = "starzak-peacock-1997", trust = Trust.SECOND_HAND)
  @Source(key = "iapws-if97", at = "equation 31", trust = Trust.READ)
  public static double riseK(double extractFrac, @Usually(101.325) double pressureKpa) {
    Require.within("extract as a share", extractFrac, 0, 0.6);
    Require.within("pressure in kPa", pressureKpa, 5, 1000);
    double sugar = extractFrac / SUCROSE_G_PER_MOL;
    double x = sugar / (sugar + (1 - extractFrac) / WATER_G_PER_MOL);
    double waterC = Saturation.boilingC(pressureKpa);
    double wortC = waterC;
    // The activity hardly depends on temperature, so each round gains two digits.
    for (int round = 0; round < 5; round++) {
      wortC = Saturation.boilingC(pressureKpa / activityFrac(x, wortC));
    }
    return wortC - waterC;
  }

  /// Temperature at which wort boils.
  ///
  /// `T = Tsat(p) + rise(w, p)`
  ///
  /// - Valid: as the rise.
  /// - Source: as the rise.
  @Reckoned(
      name = "wort-boiling-point",
      says = "The temperature at which wort boils under a pressure.",
      equation = "T = Tsat(p) + rise(w, p)",
      range = "0 to 60 % extract, 5 to 1000 kPa; refused outside; good to 0.05 K at 12 %")
  @Source(key = "starzak-peacock-1997", trust = Trust.SECOND_HAND)
  @Source(key = "iapws-if97", at = "equation 31", trust = Trust.READ)
  public static double wortC(double extractFrac, @Usually(101.325) double pressureKpa) {
    return riseK(extractFrac, pressureKpa) + Saturation.boilingC(pressureKpa);
  }

  /// The ideal rise, with all extract counted as one sugar: a check on the fuller form.
  ///
  /// `dT = Kb m`, m = mol of sugar in a kilogram of water
  ///
  /// - Valid: dilute; 1 to 5 % low at 10 to 20 P against the sugar industry's form.
  ///
  /// @param molarGPerMol molar mass of the sugar; maltose 342.3
  @Source(key = "crc-ebullioscopic", at = "water, 0.513 K kg/mol", trust = Trust.READ)
  @Reckoned(
      name = "ideal-boiling-rise",
      says = "How much the sugar of a wort raises its boiling point, as an ideal solution.",
      equation = "dT = 0.513 m",
      range = "0 to 20 P; a few per cent low above 10 P")
  public static double idealRiseK(
      @Span(
              least = 0,
              most = 0.2,
              beyond = "the ideal law falls more and more short of the measured rise")
          double extractFrac,
      @Usually(342.3) double molarGPerMol) {
    Require.within("extract as a share", extractFrac, 0, 0.6);
    Require.above0("molar mass in g/mol", molarGPerMol);
    double molality = 1000 * extractFrac / molarGPerMol / (1 - extractFrac);
    return 0.513 * molality;
  }

  /// How much hotter wort must be to boil at a depth than at its surface.
  ///
  /// `dT = T(p + rho g h) - T(p)`; for every 10 cm 0.26 K in water and 0.27 K in wort of 12 %
  ///
  /// - Valid: 0 to 5 m deep; otherwise as the rise.
  /// - Source: hydrostatics, with the density of wort at 100 C.
  @Reckoned(
      name = "boiling-rise-at-depth",
      says = "How much hotter wort must be to boil at a depth than at its surface.",
      equation = "dT = T(p + rho g h) - T(p)",
      range = "0 to 5 m, 0 to 60 % extract, 5 to 900 kPa; refused outside")
  @Source(key = "hydrostatics", trust = Trust.COMPUTED)
  @Source(key = "iapws-if97", at = "equation 31", trust = Trust.READ)
  public static double depthRiseK(
      double depthM, double extractFrac, @Usually(101.325) double pressureKpa) {
    Require.within("depth in m", depthM, 0, 5);
    Require.within("pressure in kPa", pressureKpa, 5, 900);
    double densityKgPerM3 = WortDensity.wortKgPerL(extractFrac, 100) * Air.L_PER_M3;
    double headKpa = densityKgPerM3 * GRAVITY_M_PER_SEC2 * depthM / PA_PER_KPA;
    return wortC(extractFrac, pressureKpa + headKpa) - wortC(extractFrac, pressureKpa);
  }

  private static double activityFrac(double sugarFrac, double wortC) {
    double x = sugarFrac;
    double heat = -17638 / (GAS_J_PER_MOL_K * (wortC + ZERO_KELVIN));
    return (1 - x) * Math.exp(heat * x * x * (1 + x * (-1.0038 + x * -0.24653)));
  }
}
