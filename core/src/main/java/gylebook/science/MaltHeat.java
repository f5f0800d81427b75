package gylebook.science;

/// Heat in malt: what warms it, and what it gives off when it is wetted.
public final class MaltHeat {
  private static final double WATER_J_PER_KG_K = 4184;
  private static final double TABLE_KG_PER_KG = 2.68;
  private static final double LAST_FRAC = 0.08;

  /// Malt moisture, and the rise of a thick mash in degrees Fahrenheit. The Celsius column printed
  /// beside it disagrees with it at 3 and 4 % and is not used.
  private static final double[][] RISES = {
    {0, 5.5}, {0.01, 5}, {0.02, 4}, {0.03, 3.5}, {0.04, 3}, {0.06, 2.5}, {0.08, 2}
  };

  private MaltHeat() {}

  /// Specific heat of malt.
  ///
  /// `c = 4184 (0.38 + 0.5 M)`, M the moisture
  ///
  /// - Valid: the table reaches 8 % moisture; carried on to 20 %; outside it refuses.
  /// - Source: a straight line through the table of Pauls and Whites; within 0.005 of each entry.
  @Reckoned(
      name = "malt-heat-capacity",
      says = "The heat that warms a kilogram of malt by one kelvin.",
      equation = "c = 4184 (0.38 + 0.5 M)",
      range = "0 to 8 % moisture; carried on to 20 %; refused outside")
  @Source(key = "pauls-whites-1984", at = "specific heat of malt", trust = Trust.SECOND_HAND)
  public static double maltJPerKgK(
      @Span(least = 0, most = 0.08, beyond = "the table ends at 8 %; its line goes on")
          @Usually(0.04)
          double moistureFrac) {
    return WATER_J_PER_KG_K * relativeRatio(moistureFrac);
  }

  /// Specific heat of malt as a part of that of water.
  ///
  /// `s = 0.38 + 0.5 M`
  ///
  /// - Valid: as above.
  /// - Source: as above.
  @Reckoned(
      name = "malt-heat-ratio",
      says = "The specific heat of malt as a part of that of water.",
      equation = "s = 0.38 + 0.5 M",
      range = "0 to 8 % moisture; carried on to 20 %; refused outside")
  @Source(key = "pauls-whites-1984", at = "specific heat of malt", trust = Trust.SECOND_HAND)
  public static double relativeRatio(
      @Span(least = 0, most = 0.08, beyond = "the table ends at 8 %; its line goes on")
          @Usually(0.04)
          double moistureFrac) {
    return 0.38 + 0.5 * Require.within("moisture as a share", moistureFrac, 0, 0.2);
  }

  /// The same by mixing: dry malt as the table has it, and water.
  ///
  /// `s = 0.38 (1 - M) + M`
  ///
  /// The table's line is flatter, as if bound water took up less heat than free; at 4 % the two are
  /// 1 % apart.
  ///
  /// - Valid: 0 to 20 % moisture; outside it refuses.
  /// - Source: a balance with the table's value for dry malt.
  @Reckoned(
      name = "malt-heat-ratio-mixed",
      says = "The specific heat of malt as a part of that of water, as dry malt mixed with water.",
      equation = "s = 0.38 (1 - M) + M",
      range = "0 to 20 % moisture; refused outside")
  @Source(key = "pauls-whites-1984", at = "specific heat of dry malt", trust = Trust.SECOND_HAND)
  @Source(key = "energy-balance", trust = Trust.COMPUTED)
  public static double mixedRatio(@Usually(0.04) double moistureFrac) {
    double water = Require.within("moisture as a share", moistureFrac, 0, 0.2);
    return 0.38 * (1 - water) + water;
  }

  /// Heat that malt gives off when it is wetted (slaking heat).
  ///
  /// `q = rise (2.68 x 4184 + c)`: the rise of the source's thick mash turned into heat
  ///
  /// - Valid: the table reaches 8 % moisture and is interpolated; from there to 20 % (raw grain) q
  ///   falls by the factor exp(-12.5 dM), which is our assumption; outside it refuses.
  /// - Source: the Fahrenheit column of Pauls and Whites; the ratio 2.68 L/kg is its example's.
  @Reckoned(
      name = "malt-wetting-heat",
      says = "The heat that a kilogram of malt gives off when it is wetted.",
      equation = "q = rise (2.68 x 4184 + c)",
      range = "0 to 8 % moisture; assumed to fall on to 20 %; refused outside")
  @Source(key = "pauls-whites-1984", at = "slaking heat", trust = Trust.SECOND_HAND)
  public static double wettingJPerKg(
      @Span(
              least = 0,
              most = 0.08,
              beyond = "the table ends at 8 %; from there it is assumed to fall on")
          @Usually(0.04)
          double moistureFrac) {
    Require.within("moisture as a share", moistureFrac, 0, 0.2);
    double inTable = Math.min(moistureFrac, LAST_FRAC);
    double tableJPerKg =
        tableRiseK(inTable) * (TABLE_KG_PER_KG * WATER_J_PER_KG_K + maltJPerKgK(inTable));
    return tableJPerKg * Math.exp(-12.5 * (moistureFrac - inTable));
  }

  /// Rise of a mash by the wetting of its malt.
  ///
  /// `dT = q / (R 4184 + c)`, R kg of liquor per kg of malt
  ///
  /// - Valid: moistures as above, R from 1 to 20; the source's table is for 2.68. In a thin bag
  ///   mash at 5 L/kg the same heat is only some 0.9 K.
  /// - Source: as above, and an energy balance.
  @Reckoned(
      name = "malt-wetting-rise",
      says = "How much the wetting of malt warms a mash.",
      equation = "dT = q / (R 4184 + c)",
      range = "0 to 20 % moisture, 1 to 20 kg liquor per kg malt; refused outside")
  @Source(key = "pauls-whites-1984", at = "slaking heat", trust = Trust.SECOND_HAND)
  @Source(key = "energy-balance", trust = Trust.COMPUTED)
  public static double wettingRiseK(
      @Span(
              least = 0,
              most = 0.08,
              beyond = "the table ends at 8 %; from there it is assumed to fall on")
          double moistureFrac,
      @Usually(TABLE_KG_PER_KG) double thicknessKgPerKg) {
    Require.within("thickness in kg/kg", thicknessKgPerKg, 1, 20);
    return wettingJPerKg(moistureFrac)
        / (thicknessKgPerKg * WATER_J_PER_KG_K + maltJPerKgK(moistureFrac));
  }

  private static double tableRiseK(double moistureFrac) {
    int i = 1;
    while (moistureFrac > RISES[i][0]) {
      i++;
    }
    double share = (moistureFrac - RISES[i - 1][0]) / (RISES[i][0] - RISES[i - 1][0]);
    double fahrenheit = RISES[i - 1][1] + share * (RISES[i][1] - RISES[i - 1][1]);
    return fahrenheit / 1.8;
  }
}
