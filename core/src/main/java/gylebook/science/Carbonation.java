package gylebook.science;

/// Pressure that carbonates a keg: the brewers' chart as an equation.
///
/// The chart belongs to a beer of 4.2 % alcohol by mass and 5.8 P of real extract; where it comes
/// from nobody knows (Speers and MacIntosh 2013). It is met within 0.22 psi; another form sets 0.3
/// to 0.5 psi lower, and the one measured constant 5 to 7 % higher.
public final class Carbonation {
  /// Where the chart has numbers.
  public static final Validity RANGE =
      new Validity("beer temperature in C", -1, 16, "the chart has no numbers there; it goes on");

  /// What a gauge can ask for.
  public static final Validity GAUGE_RANGE =
      new Validity(
          "gauge pressure in kPa",
          0,
          400,
          "below, open beer holds more than that; above, few vessels are marked for it");

  private static final double KPA_PER_PSI = 6.894757293168361;
  private static final double F_PER_K = 1.8;
  private static final double LAGER_C = 6;
  private static final double LAGER_G_PER_L_BAR = 2.4;

  private Carbonation() {}

  /// What three sources set for the same carbonation: they do not agree, and nobody knows better.
  ///
  /// @param chartKpa by the brewers' chart
  /// @param germanKpa by the form of the German literature
  /// @param lagerKpa by the one constant that was measured in a lager
  public record Compared(double chartKpa, double germanKpa, double lagerKpa) {}

  /// Volumes of carbon dioxide that beer takes up in the end.
  ///
  /// `V = p (0.01821 + 0.090115 exp(-(t_F - 32)/43.11)) - 0.003342`, p absolute in psi
  ///
  /// - Valid: 0 to 16 C; goes on with a caution; refused outside -2 to 50 C. It takes days to
  ///   weeks.
  /// - Source: A. J. deLange 2011 (note read, coefficients from memory); met by a brewery's chart.
  ///
  /// @param gaugeKpa what the gauge shows, above the air outside
  @Reckoned(
      name = "carbonation",
      says = "The volumes of carbon dioxide that beer takes up in the end under a pressure.",
      equation = "V = p (0.01821 + 0.090115 exp(-(t_F - 32)/43.11)) - 0.003342, p abs. psi",
      range = "-1 to 16 C, goes on to 50 C; never above what the vessel is marked for")
  @Source(key = "delange2011", trust = Trust.MEMORY)
  @Source(key = "speers-macintosh-2013", at = "abstract", trust = Trust.READ)
  public static double heldVol(double beerC, double gaugeKpa, @Usually(101.325) double airKpa) {
    Require.notBelow0("gauge pressure in kPa", gaugeKpa);
    Require.within("air pressure in kPa", airKpa, 50, 110);
    return (gaugeKpa + airKpa) / KPA_PER_PSI * perPsiNumber(beerC) - 0.003342;
  }

  /// Gauge pressure that brings beer to so many volumes.
  ///
  /// `p = (V + 0.003342)/(0.01821 + 0.090115 exp(-(t_F - 32)/43.11))`, less the air's
  ///
  /// - Valid: as above. Below 0 where the beer holds the gas open. Read the vessel's own marking
  ///   and set relief below it; follow your local code; never pressurise glass.
  /// - Source: as above.
  @Reckoned(
      name = "carbonation-pressure",
      says = "The gauge pressure that brings beer to a carbonation.",
      equation = "p = (V + 0.003342)/(0.01821 + 0.090115 exp(-(t_F - 32)/43.11)) - p_air",
      range = "-1 to 16 C, goes on to 50 C; never above what the vessel is marked for")
  @Source(key = "delange2011", trust = Trust.MEMORY)
  @Source(key = "speers-macintosh-2013", at = "abstract", trust = Trust.READ)
  public static double gaugeKpa(
      double beerC, @Usually(2.5) double wantedVol, @Usually(101.325) double airKpa) {
    Require.within("wanted volumes", wantedVol, 0, 6);
    Require.within("air pressure in kPa", airKpa, 50, 110);
    double absolute = (wantedVol + 0.003342) / perPsiNumber(beerC) * KPA_PER_PSI;
    return absolute - airKpa;
  }

  /// Gauge pressures that three sources set for the same carbonation.
  ///
  /// The chart; `p = c/(10 exp(-10.73797 + 2617.25/T))`; and the same with 2.4 g/(L bar) at 6 C
  ///
  /// - Valid: 0 to 16 C; goes on with a caution to 50 C. The measured constant is good to 7 % and
  ///   belongs to one lager at 6 C; its change with temperature is taken from the German form.
  /// - Source: deLange 2011; the German form, second-hand; a measured lager.
  @Reckoned(
      name = "carbonation-pressures-compared",
      says = "What three sources set for the same carbonation: how sure the gauge pressure is.",
      equation = "the chart; c/(10 exp(-10.73797 + 2617.25/T)); the same by 2.4 g/(L bar) at 6 C",
      range = "-1 to 16 C, goes on to 50 C; never above what the vessel is marked for")
  @Source(key = "delange2011", trust = Trust.MEMORY)
  @Source(key = "german-carbonation", trust = Trust.SECOND_HAND)
  @Source(key = "measured-lager-gas", at = "table 1", trust = Trust.READ)
  public static Compared compared(
      double beerC, @Usually(2.5) double wantedVol, @Usually(101.325) double airKpa) {
    double chart = gaugeKpa(beerC, wantedVol, airKpa);
    double german = BeerGas.gaugeKpa(Math.max(0, beerC), wantedVol, airKpa);
    double weaker = BeerGas.perBarNumber(LAGER_C) / LAGER_G_PER_L_BAR;
    return new Compared(chart, german, (german + airKpa) * weaker - airKpa);
  }

  /// How much more the gauge must show at an altitude for the same carbonation.
  ///
  /// `101.325 - p_air(altitude)`
  ///
  /// - Valid: -500 to 11000 m in standard weather; refused outside.
  /// - Source: US Standard Atmosphere; a brewery's chart says 2.5 psi at 5000 ft.
  @Reckoned(
      name = "carbonation-altitude",
      says = "How much more the gauge must show at an altitude for the same carbonation.",
      equation = "101.325 - p_air(altitude)",
      range = "-500 to 11000 m, standard weather; refused outside")
  @Source(key = "us-atmosphere-1976", trust = Trust.READ)
  public static double altitudeKpa(double altitudeM) {
    return CarbonDioxide.SEA_LEVEL_KPA - Atmosphere.stationKpa(altitudeM);
  }

  private static double perPsiNumber(double beerC) {
    Require.within("beer temperature in C", beerC, -2, 50);
    return 0.01821 + 0.090115 * Math.exp(-beerC * F_PER_K / 43.11);
  }
}
