package gylebook.science;

/// Oxygen that water and wort take up from air.
///
/// Sources disagree by a tenth about wort. Ale yeast is usually given 8 to 12 mg/L and lager yeast
/// 10 to 15 (practice); strains range from half of air's share to more than pure oxygen gives
/// (Kirsop 1974, second-hand). Dried yeast brings its own sterol and needs none (from memory).
public final class Oxygen {
  /// Where the saturation of water was measured.
  public static final Validity RANGE =
      new Validity(
          "liquid temperature in C", 0, 40, "the fit ends there; it goes on and is too high");

  private static final double SEA_LEVEL_KPA = 101.325;
  private static final double ZERO_KELVIN = 273.15;
  private static final double WEAK_PER_PLATO = 0.0105;
  private static final double MIDDLE_PER_PLATO = 0.016;
  private static final double STRONG_PER_PLATO = 0.0205;

  private Oxygen() {}

  /// Oxygen in fresh water under air.
  ///
  /// `ln DO = -139.34411 + 1.575701e5/T - 6.642308e7/T^2 + 1.2438e10/T^3 - 8.621949e11/T^4`, times
  /// `(p - p_w)/(101.325 - p_w)`
  ///
  /// - Valid: 0 to 40 C; goes on to 80 C with a caution, refused outside, and for a pressure
  ///   outside 50 to 110 kPa.
  /// - Source: Benson and Krause 1984, read in several codes.
  @Reckoned(
      name = "oxygen-in-water",
      says = "How much oxygen water takes up from air.",
      equation = "ln DO = -139.34411 + 1.575701e5/T - 6.642308e7/T^2 + 1.2438e10/T^3 - ...",
      range = "0 to 40 C; goes on to 80 C")
  @Source(key = "benson-krause1984", at = "fresh water", trust = Trust.READ)
  public static double waterMgPerL(double liquidC, @Usually(101.325) double airKpa) {
    Require.within("liquid temperature in C", liquidC, 0, 80);
    Require.within("air pressure in kPa", airKpa, 50, 110);
    double t = liquidC + ZERO_KELVIN;
    double ln =
        -139.34411 + (1.575701e5 + (-6.642308e7 + (1.2438e10 - 8.621949e11 / t) / t) / t) / t;
    double vapour = Saturation.saturationKpa(liquidC);
    return Math.exp(ln) * (airKpa - vapour) / (SEA_LEVEL_KPA - vapour);
  }

  /// Oxygen in wort under air: sugar salts it out.
  ///
  /// `DO = DO_water exp(-kappa P)`
  ///
  /// - Valid: 0 to 40 C, goes on to 80 C with a caution; 0 to 30 P; kappa 0.016 a degree Plato,
  ///   0.0105 to 0.0205 by different sources: a tenth of doubt at 15 P. Refused outside.
  /// - Source: anchored on the Oxford Companion to Beer, 2012 (15 P: 8.0 and 6.6 mg/L at 10 and 20
  ///   C); the middle value is our compromise.
  @Reckoned(
      name = "oxygen-in-wort",
      says = "How much oxygen wort takes up from air.",
      equation = "DO = DO_water exp(-kappa P)",
      range = "0 to 40 C, goes on to 80 C; 0 to 30 P; give or take a tenth")
  @Source(key = "benson-krause1984", at = "fresh water", trust = Trust.READ)
  @Source(key = "oxford-companion-2012", at = "oxygen", trust = Trust.READ)
  public static double wortMgPerL(
      double liquidC,
      double originalPlato,
      @Usually(101.325) double airKpa,
      @Span(
              least = WEAK_PER_PLATO,
              most = STRONG_PER_PLATO,
              beyond = "sources give 0.0105 to 0.0205 a degree Plato")
          @Usually(MIDDLE_PER_PLATO)
          double saltingPerPlato) {
    Require.within("original extract in P", originalPlato, 0, 30);
    Require.within("salting out per P", saltingPerPlato, 0, 0.05);
    return waterMgPerL(liquidC, airKpa) * Math.exp(-saltingPerPlato * originalPlato);
  }

  /// What the sources make of one wort under air.
  ///
  /// @param leastMgPerL by the strongest salting out, that of a reference work
  /// @param middleMgPerL by the compromise between them
  /// @param mostMgPerL by the weakest, that of salting-out physics and of the trade's habit
  public record Disputed(double leastMgPerL, double middleMgPerL, double mostMgPerL) {}

  /// Oxygen in wort under air by each of the sources that disagree.
  ///
  /// `DO = DO_water exp(-kappa P)` with kappa 0.0205, 0.016 and 0.0105 a degree Plato
  ///
  /// - Valid: as {@link #wortMgPerL}. The primary measurements (Baker and Morton 1977) were not
  ///   seen; until somebody measures, the truth is somewhere between the ends.
  /// - Source: the Oxford Companion to Beer, 2012, gives the strongest; 7.5 to 8 mg/L for 15 P at
  ///   20 C, salting-out physics and practice, the weakest.
  @Reckoned(
      name = "oxygen-in-wort-disputed",
      says = "How much oxygen wort takes up from air, by sources that disagree.",
      equation = "DO = DO_water exp(-kappa P), kappa 0.0205, 0.016 and 0.0105",
      range = "0 to 40 C, goes on to 80 C; 0 to 30 P; the truth lies somewhere between")
  @Source(key = "benson-krause1984", at = "fresh water", trust = Trust.READ)
  @Source(key = "oxford-companion-2012", at = "oxygen", trust = Trust.READ)
  @Source(key = "practice", at = "oxygen in wort", trust = Trust.PRACTICE)
  public static Disputed disputed(
      double liquidC, double originalPlato, @Usually(101.325) double airKpa) {
    return new Disputed(
        wortMgPerL(liquidC, originalPlato, airKpa, STRONG_PER_PLATO),
        wortMgPerL(liquidC, originalPlato, airKpa, MIDDLE_PER_PLATO),
        wortMgPerL(liquidC, originalPlato, airKpa, WEAK_PER_PLATO));
  }

  /// How much more oxygen dissolves under pure oxygen than under air.
  ///
  /// `1/0.20946`
  ///
  /// - Valid: equilibrium; a short bubbling stays far below it.
  /// - Source: composition of air, from handbooks.
  @Reckoned(
      name = "pure-oxygen-over-air",
      says = "How much more oxygen dissolves under pure oxygen than under air.",
      equation = "1/x",
      range = "equilibrium at one pressure; too much oxygen harms, measure the dose")
  @Source(key = "air-composition", trust = Trust.READ)
  public static double pureOverAirRatio(@Usually(0.20946) double oxygenFrac) {
    return 1 / Require.within("share of oxygen in air", oxygenFrac, 0.01, 1);
  }

  /// Oxygen that yeast asks of the wort.
  ///
  /// @param frugalMgPerL strains content with half of air's share
  /// @param ordinaryMgPerL strains content with air
  /// @param demandingMgPerL strains that want pure oxygen; a fourth class wants more still
  /// @param aleLeastMgPerL what ales are usually given, at least
  /// @param aleMostMgPerL at most
  /// @param lagerLeastMgPerL what lagers are usually given, at least
  /// @param lagerMostMgPerL at most
  public record Demand(
      double frugalMgPerL,
      double ordinaryMgPerL,
      double demandingMgPerL,
      double aleLeastMgPerL,
      double aleMostMgPerL,
      double lagerLeastMgPerL,
      double lagerMostMgPerL) {}

  /// Oxygen that ale strains ask for, in Kirsop's classes, and what is usually given.
  ///
  /// - Valid: ale strains; dried yeast brings its own sterol and needs none (from memory). Too much
  ///   harms: measure it. Oxygen feeds fire.
  /// - Source: Kirsop 1974 as told by Boulton and Quain; practice.
  @Reckoned(
      name = "oxygen-demand",
      says = "How much oxygen yeasts ask of the wort, by class, and what is usually given.",
      equation =
          "4, 8 and 40 mg/L or more by class of strain; 8 to 12 for ales, 10 to 15 for lagers",
      range = "wort before the yeast has grown; dried yeast needs none")
  @Source(key = "kirsop1974", at = "four classes, as quoted", trust = Trust.SECOND_HAND)
  @Source(key = "practice", at = "usual doses", trust = Trust.PRACTICE)
  public static Demand demand() {
    return new Demand(4, 8, 40, 8, 12, 10, 15);
  }
}
