package gylebook.science;

/// Heat that fermenting wort gives off.
///
/// 0.60 MJ a kilogram of real extract, give or take 0.05. A figure of 1.2 MJ/kg that is quoted as
/// the heat looks like the free energy, twice the heat.
public final class FermentationHeat {
  private static final double HEAT_J_PER_KG = 0.60e6;
  private static final double SEC_PER_HR = 3600;
  private static final double PERCENT_NUMBER = 100;

  private FermentationHeat() {}

  /// Heat of a whole fermentation.
  ///
  /// `Q = m dRE q`
  ///
  /// - Valid: any mass; a drop of real extract from 0 to 40 P; refused outside.
  /// - Source: enthalpies of formation from memory (0.563 for glucose, 0.604 MJ/kg for maltose);
  ///   trade figures 0.586 and 0.651; Williams 1982 reviews.
  ///
  /// @param realDropPlato fall of the real extract: 0.805 of the fall that a spindle shows
  @Reckoned(
      name = "fermentation-heat",
      says = "The heat that a fermentation gives off in all.",
      equation = "Q = m dRE q",
      range = "q 0.60 MJ/kg, give or take 0.05; real extract, 0.805 of the apparent drop")
  @Source(key = "williams1982", at = "abstract", trust = Trust.MEMORY)
  public static double heatJ(
      double wortKg,
      double realDropPlato,
      @Span(least = 550e3, most = 650e3, beyond = "0.55 to 0.65 MJ a kilogram were found")
          @Usually(HEAT_J_PER_KG)
          double heatJPerKg) {
    Require.notBelow0("wort in kg", wortKg);
    Require.within("drop of real extract in P", realDropPlato, 0, 40);
    Require.within("heat in J/kg", heatJPerKg, 0.3e6, 1.5e6);
    double share = realDropPlato / PERCENT_NUMBER;
    return wortKg * share * heatJPerKg;
  }

  /// Rise of temperature if no heat got out.
  ///
  /// `dT = dRE q / cp`
  ///
  /// - Valid: as above.
  /// - Source: as above, and a balance.
  @Reckoned(
      name = "fermentation-rise",
      says = "How much warmer a ferment would get if no heat got out.",
      equation = "dT = dRE q / cp",
      range = "an upper bound: vessels lose heat")
  @Source(key = "williams1982", at = "abstract", trust = Trust.MEMORY)
  @Source(key = "energy-balance", trust = Trust.COMPUTED)
  public static double riseK(double realDropPlato, @Usually(4050) double wortJPerKgK) {
    double heat = heatJ(1, realDropPlato, HEAT_J_PER_KG);
    return heat / Require.above0("heat capacity in J/(kg K)", wortJPerKgK);
  }

  /// Largest heating power, by the logistic curve of fermentation.
  ///
  /// `W = m q (0.805 dP) B (1 + s)^(-1 - 1/s)`; s = 1 gives a quarter of the rate
  ///
  /// - Valid: as the curve; refused for a skew outside 0.05 to 20.
  /// - Source: as above; the slope 0.805 from alcohol, real and apparent extract solved together.
  ///
  /// @param apparentDropPlato original less final extract, as a spindle shows them
  /// @param ratePerHr rate of the curve's clock at the temperature of the ferment
  @Reckoned(
      name = "fermentation-peak-power",
      says = "How much heat a ferment gives off at its most vigorous.",
      equation = "W = m q 0.805 dP B (1 + s)^(-1 - 1/s)",
      range = "logistic fermentations; give or take a tenth for the heat, more for the rate")
  @Source(key = "williams1982", at = "abstract", trust = Trust.MEMORY)
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  public static double peakW(
      double wortKg,
      double apparentDropPlato,
      @Usually(FermentationCurve.RATE_PER_HR) double ratePerHr,
      @Usually(1) double skewNumber,
      @Usually(0.805) double realPerApparentRatio) {
    double s = Require.within("skew", skewNumber, 0.05, 20);
    double steepest = Math.pow(1 + s, -1 - 1 / s);
    double all = heatJ(wortKg, apparentDropPlato * realPerApparentRatio, HEAT_J_PER_KG);
    return all * Require.notBelow0("rate per h", ratePerHr) * steepest / SEC_PER_HR;
  }

  /// How much warmer than its room a ferment stands, at a heating power that lasts.
  ///
  /// `dT = W/UA`
  ///
  /// - Valid: hours of one power, as at the peak; a fermenter of 20 L in still air loses about 2
  ///   W/K. The room's thermometer is not the beer's.
  /// - Source: a balance; the 2 W/K are from memory.
  @Reckoned(
      name = "fermentation-above-room",
      says = "How much warmer than its room a ferment stands at its most vigorous.",
      equation = "dT = W/UA",
      range = "hours of one power; 2 W/K for 20 L in still air, a guess to be measured")
  @Source(key = "energy-balance", trust = Trust.COMPUTED)
  public static double aboveRoomK(double powerW, @Usually(2) double lossWPerK) {
    return Require.notBelow0("heating power in W", powerW)
        / Require.within("loss in W/K", lossWPerK, 0.01, 1e6);
  }
}
