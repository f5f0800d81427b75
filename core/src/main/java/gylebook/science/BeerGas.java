package gylebook.science;

/// Carbon dioxide in beer by the form of the German literature: grams for a litre.
///
/// A constant that was measured in lager at 6 C lies 5 to 7 % below this form and below the
/// chart's.
public final class BeerGas {
  private static final double KPA_PER_BAR = 100;
  private static final double ML_PER_L = 1000;
  private static final double PERCENT_NUMBER = 100;

  /// What a closed package may still ferment.
  public static final Validity DROP_RANGE =
      new Validity(
          "apparent drop in P",
          0,
          0.258,
          "do not package: bottles burst; 0.001 of gravity is the limit");

  /// Where the literature's form is used.
  public static final Validity RANGE =
      new Validity("beer temperature in C", 0, 40, "the form is used there only; it goes on");

  /// What a gauge can ask for.
  public static final Validity GAUGE_RANGE = Carbonation.GAUGE_RANGE;

  /// Gas that priming brings.
  public static final Validity GAS_RANGE =
      new Validity(
          "gas in g", 0.01, 100_000, "below, the beer holds as much as is wanted already, or more");

  private BeerGas() {}

  /// Gas still in beer that stands open.
  ///
  /// @param heldGPerL in grams for a litre
  /// @param heldVol in volumes
  public record Residue(double heldGPerL, double heldVol) {}

  /// Sugar that carbonates a beer in bottle or cask.
  ///
  /// @param residueVol gas in the beer before
  /// @param gasG gas that must come
  /// @param sucroseG as table sugar
  /// @param glucoseG as glucose without water
  /// @param monohydrateG as glucose with its water (dextrose as it is sold)
  /// @param maltExtractG as dried malt extract, an estimate
  public record Sugars(
      double residueVol,
      double gasG,
      double sucroseG,
      double glucoseG,
      double monohydrateG,
      double maltExtractG) {}

  /// Carbon dioxide that beer holds under a pressure of the gas.
  ///
  /// `c = 10 p exp(-10.73797 + 2617.25/T)`, p in bar
  ///
  /// - Valid: beer of 12 P that fermented to 80 % (apparent), 0 to 40 C; goes on from -2 to 60 C
  ///   with a caution. It is about 1 % less for 3 P more. Give or take 7 %.
  /// - Source: the German literature, read in a maker's manual for gas meters.
  @Reckoned(
      name = "carbon-dioxide-in-beer",
      says = "How much carbon dioxide beer holds under a pressure of the gas.",
      equation = "c = 10 p exp(-10.73797 + 2617.25/T), p in bar",
      range = "ordinary beers of 0 to 40 C, give or take 7 %; goes on to 60 C")
  @Source(key = "german-carbonation", trust = Trust.SECOND_HAND)
  public static double heldGPerL(double beerC, @Usually(101.325) double absoluteKpa) {
    return perBarNumber(beerC) * Require.notBelow0("pressure in kPa", absoluteKpa) / KPA_PER_BAR;
  }

  /// Gauge pressure that holds a carbonation, by this form; the chart's is 2 to 4 kPa higher.
  ///
  /// `p = c/(10 exp(-10.73797 + 2617.25/T)) - p_air`
  ///
  /// - Valid: 0 to 40 C, goes on to 60 C; refused above 6 vol. Below 0 where open beer holds the
  ///   gas. Read the vessel's own marking; follow your local code; never pressurise glass.
  /// - Source: as above.
  @Reckoned(
      name = "carbonation-pressure-german",
      says = "The gauge pressure that brings beer to a carbonation, by the German form.",
      equation = "p = c/(10 exp(-10.73797 + 2617.25/T)) - p_air",
      range = "0 to 40 C, goes on to 60 C; never above what the vessel is marked for")
  @Source(key = "german-carbonation", trust = Trust.SECOND_HAND)
  public static double gaugeKpa(
      double beerC, @Usually(2.5) double wantedVol, @Usually(101.325) double airKpa) {
    Require.within("wanted volumes", wantedVol, 0, 6);
    Require.within("air pressure in kPa", airKpa, 50, 110);
    double held = wantedVol * CarbonDioxide.VOLUME_G_PER_L_VOL;
    return held / perBarNumber(beerC) * KPA_PER_BAR - airKpa;
  }

  /// Carbon dioxide that is still in the beer before priming.
  ///
  /// `c(T, p_air)` at the warmest temperature since gas stopped coming
  ///
  /// - Valid: as above; beer that never rested open may hold more.
  /// - Source: as above.
  @Reckoned(
      name = "residual-carbonation",
      says = "How much carbon dioxide is in open beer: by the warmest it was since it worked.",
      equation = "c = 10 p exp(-10.73797 + 2617.25/T), p of the air in bar",
      range = "0 to 40 C, goes on to 60 C; beer kept closed holds more")
  @Source(key = "german-carbonation", trust = Trust.SECOND_HAND)
  public static Residue residue(double warmestC, @Usually(101.325) double airKpa) {
    Require.within("air pressure in kPa", airKpa, 50, 110);
    double held = heldGPerL(warmestC, airKpa);
    return new Residue(held, held / CarbonDioxide.VOLUME_G_PER_L_VOL);
  }

  /// Sugar for priming.
  ///
  /// `m = (wanted - residual) V / y`, y = 0.51429 sucrose, 0.48857 glucose, 0.44416 its
  /// monohydrate, 0.30 dried malt extract
  ///
  /// - Valid: finished beer only: a further 0.001 of gravity adds half a volume. The yields are
  ///   stoichiometric; 0.92 to 1.0 of them comes. Nothing is needed where the residue is enough.
  ///   Wants above 5 vol are refused: bottles burst. Use bottles made for the pressure.
  /// - Source: stoichiometry; malt extract an estimate.
  @Reckoned(
      name = "priming-sugar",
      says = "How much sugar carbonates a beer in the bottle.",
      equation = "m = (wanted - residual) V / y; y 0.51429, 0.48857, 0.44416, 0.30",
      range = "finished beer, to 5 vol, refused above; only bottles made for the pressure")
  @Source(key = "german-carbonation", at = "the residue", trust = Trust.SECOND_HAND)
  @Source(key = "mass-balance", at = "stoichiometry", trust = Trust.COMPUTED)
  public static Sugars priming(
      double beerL,
      @Usually(2.4) double wantedVol,
      @Usually(20) double warmestC,
      @Usually(101.325) double airKpa) {
    Require.notBelow0("beer in L", beerL);
    Require.within("wanted volumes", wantedVol, 0, 5);
    Residue residue = residue(warmestC, airKpa);
    double missing = wantedVol * CarbonDioxide.VOLUME_G_PER_L_VOL - residue.heldGPerL();
    double gas = Math.max(0, missing) * beerL;
    return new Sugars(
        residue.heldVol(), gas, gas / 0.51429, gas / 0.48857, gas / 0.44416, gas / 0.30);
  }

  /// Carbonation that further fermentation adds in a closed package.
  ///
  /// `dV = dAE 0.805 rho 0.4629 / 1.9768`
  ///
  /// - Valid: any small drop. 0.001 of gravity (0.258 P) adds half a volume: never package beer
  ///   that may still drop by more, and never in glass that was not made for it.
  /// - Source: Balling; the slope from alcohol and extract solved together.
  @Reckoned(
      name = "over-carbonation",
      says = "How much carbonation a further drop of gravity adds in a closed package.",
      equation = "dV = dAE 0.805 rho 0.4629 / 1.9768",
      range = "any drop; above 0.001 of gravity do not package: bottles burst")
  @Source(key = "balling", at = "gas and yeast", trust = Trust.SECOND_HAND)
  @Source(key = "speers-calculations", at = "Balling's constants", trust = Trust.READ)
  public static double addedVol(
      double apparentDropPlato,
      @Usually(1.01) double beerKgPerL,
      @Usually(0.805) double realPerApparentRatio,
      @Usually(0.46286) double gasPerExtractRatio) {
    Require.within("apparent drop in P", apparentDropPlato, 0, 40);
    Require.within("density of the beer in kg/L", beerKgPerL, 0.9, 1.2);
    Require.within("real over apparent drop", realPerApparentRatio, 0.7, 1);
    Require.within("gas from extract", gasPerExtractRatio, 0.3, 0.52);
    double fermented = apparentDropPlato / PERCENT_NUMBER * realPerApparentRatio;
    double gas = fermented * gasPerExtractRatio * beerKgPerL * ML_PER_L;
    return gas / CarbonDioxide.VOLUME_G_PER_L_VOL;
  }

  /// Grams for a litre and bar.
  static double perBarNumber(double beerC) {
    Require.within("beer temperature in C", beerC, -2, 60);
    return 10 * Math.exp(-10.73797 + 2617.25 / (beerC + CarbonDioxide.ZERO_KELVIN));
  }
}
