package gylebook.science;

/// How hot the liquor must be so that the mash comes out right.
///
/// Heat goes into the malt and, where the balance is closed before the mash is up, into losses; the
/// wetting of the malt gives some back. Left out, with a vessel left out too, the answer is about
/// 1.1 K too hot in a kettle at 5 L/kg.
public final class Strike {
  private static final double WATER_J_PER_KG_K = 4184;
  private static final double MOST_C = 120;

  /// What an open kettle can hold as liquor; see also the cautions of the mash temperature.
  public static final Validity LIQUOR_RANGE =
      new Validity(
          "strike temperature in C",
          5,
          99,
          "no liquor in an open kettle is so; take more or less liquor, or see whether two amounts"
              + " changed places");

  private Strike() {}

  /// Strike temperature with the malt's wetting heat given.
  ///
  /// `Ts = Tm + (mg cg (Tm - Tg) - mg q + Q_loss) / (mw cw + Ck)`
  ///
  /// - Valid: temperatures of -20 to 120 C going in; cg is malt of 4 % moisture (1674 J/(kg K)), cw
  ///   4184. The answer may lie above the boiling point: then it cannot be done so. The vessel is
  ///   what already stands at strike temperature: 500 J/K for each kg of steel. When nobody says
  ///   otherwise it is 5 kg of steel, an assumption of ours; 0 for a vessel that keeps no heat. A
  ///   part that is still cold when it goes in is a loss instead: its `m c (Tm - T)`.
  /// - Source: an energy balance; malt as in `malt-heat-capacity` and `malt-wetting-heat`.
  @Reckoned(
      name = "strike",
      says = "How hot the liquor must be for a wanted mash temperature.",
      equation = "Ts = Tm + (mg cg (Tm - Tg) - mg q + Q_loss) / (mw cw + Ck)",
      range = "masses above 0, -20 to 120 C; refused outside; malt of 4 % moisture")
  @Source(key = "energy-balance", trust = Trust.COMPUTED)
  @Source(key = "pauls-whites-1984", trust = Trust.SECOND_HAND)
  public static double strikeC(
      double liquorKg,
      double maltKg,
      @Usually(20) double maltC,
      double mashC,
      @Usually(2500) double vesselJPerK,
      @Usually(21_500) double wettingJPerKg,
      @Usually(0) double lossJ) {
    double maltJPerK = Require.notBelow0("malt in kg", maltKg) * MaltHeat.maltJPerKgK(0.04);
    double givenJ = maltKg * Require.notBelow0("wetting in J/kg", wettingJPerKg);
    return balancedC(maltJPerK, maltC, mashC, givenJ - lossJ, hotJPerK(liquorKg, vesselJPerK));
  }

  /// Strike temperature with both heats of the malt taken from its moisture.
  ///
  /// `Ts = Tm + (mg c(M) (Tm - Tg) - mg q(M) + Q_loss) / (mw cw + Ck)`
  ///
  /// - Valid: as above, moisture 0 to 0.2.
  /// - Source: as above.
  @Reckoned(
      name = "strike-from-moisture",
      says = "How hot the liquor must be, with the malt's heats taken from its moisture.",
      equation = "Ts = Tm + (mg c(M) (Tm - Tg) - mg q(M) + Q_loss) / (mw cw + Ck)",
      range = "masses above 0, -20 to 120 C, 0 to 20 % moisture; refused outside")
  @Source(key = "energy-balance", trust = Trust.COMPUTED)
  @Source(key = "pauls-whites-1984", trust = Trust.SECOND_HAND)
  public static double moistMaltStrikeC(
      double liquorKg,
      double maltKg,
      @Usually(20) double maltC,
      double mashC,
      @Usually(2500) double vesselJPerK,
      @Usually(0.04) double moistureFrac,
      @Usually(0) double lossJ) {
    double maltJPerK = Require.notBelow0("malt in kg", maltKg) * MaltHeat.maltJPerKgK(moistureFrac);
    double givenJ = maltKg * MaltHeat.wettingJPerKg(moistureFrac);
    return balancedC(maltJPerK, maltC, mashC, givenJ - lossJ, hotJPerK(liquorKg, vesselJPerK));
  }

  /// Temperature of a mash from liquor and malt: the balance read forwards.
  ///
  /// `Tm = ((mw cw + Ck) Tl + mg cg Tg + mg q - Q_loss) / (mw cw + Ck + mg cg)`
  ///
  /// - Valid: as `strike`.
  /// - Source: as `strike`.
  @Reckoned(
      name = "mash-temperature",
      says = "How warm a mash comes out from liquor and malt.",
      equation = "Tm = ((mw cw + Ck) Tl + mg cg Tg + mg q - Q_loss) / (mw cw + Ck + mg cg)",
      range = "masses above 0, -20 to 120 C; refused outside; malt of 4 % moisture")
  @Source(key = "energy-balance", trust = Trust.COMPUTED)
  @Source(key = "pauls-whites-1984", trust = Trust.SECOND_HAND)
  public static double mashC(
      double liquorKg,
      double liquorC,
      double maltKg,
      @Usually(20) double maltC,
      @Usually(2500) double vesselJPerK,
      @Usually(21_500) double wettingJPerKg,
      @Usually(0) double lossJ) {
    Require.within("liquor in C", liquorC, 0, MOST_C);
    Require.within("malt in C", maltC, -20, MOST_C);
    double maltJPerK = Require.notBelow0("malt in kg", maltKg) * MaltHeat.maltJPerKgK(0.04);
    double hotJPerK = hotJPerK(liquorKg, vesselJPerK);
    double givenJ = maltKg * Require.notBelow0("wetting in J/kg", wettingJPerKg);
    double changeK =
        (maltJPerK * (maltC - liquorC) + givenJ - finiteJ("lossJ", lossJ)) / (hotJPerK + maltJPerK);
    return liquorC + changeK;
  }

  /// Temperature of a mash from liquor and malt alone, as the old brewing books balance it.
  ///
  /// `T = (s Tg + R Tl) / (s + R)`, s the malt's heat as a part of water's, R liquor per malt
  ///
  /// - Valid: no wetting heat, no vessel, so it is too cold by 2 F and more in a thick mash.
  /// - Source: the brewing room book's form (R there in barrels per quarter, used as a mass ratio).
  @Reckoned(
      name = "two-body-mash",
      says = "How warm liquor and malt become, with nothing else in the balance.",
      equation = "T = (s Tg + R Tl) / (s + R)",
      range = "0.1 to 1 for s, 0.5 to 20 for R, -20 to 120 C; refused outside")
  @Source(key = "pauls-whites-1984", at = "mash-in example", trust = Trust.SECOND_HAND)
  public static double twoBodyC(
      @Usually(0.40) double relativeHeatRatio,
      double maltC,
      double liquorC,
      double thicknessRatio) {
    Require.within("relative heat", relativeHeatRatio, 0.1, 1);
    Require.within("thickness", thicknessRatio, 0.5, 20);
    Require.within("malt in C", maltC, -20, MOST_C);
    Require.within("liquor in C", liquorC, -20, MOST_C);
    double share = relativeHeatRatio / (relativeHeatRatio + thicknessRatio);
    return liquorC - share * (liquorC - maltC);
  }

  private static double balancedC(
      double maltJPerK, double maltC, double mashC, double netJ, double hotJPerK) {
    Require.within("malt in C", maltC, -20, MOST_C);
    Require.within("mash in C", mashC, 0, MOST_C);
    return mashC + (maltJPerK * (mashC - maltC) - finiteJ("lossJ", netJ)) / hotJPerK;
  }

  private static double hotJPerK(double liquorKg, double vesselJPerK) {
    return Require.above0("liquor in kg", liquorKg) * WATER_J_PER_KG_K
        + Require.notBelow0("vessel j per K", vesselJPerK);
  }

  private static double finiteJ(String what, double heatJ) {
    return Require.within(what, heatJ, -1e12, 1e12);
  }
}
