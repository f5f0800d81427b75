package gylebook.science;

/// Wort shrinks as it cools, and the kettle with it.
public final class Shrinkage {
  private static final double BOIL_C = 100;
  private static final double COLD_C = 20;
  private static final double STEEL_PER_K = 16.5e-6;

  private Shrinkage() {}

  /// Cold volume as a part of the hot one.
  ///
  /// `V_cold/V_hot = rho(w,hot) / rho(w,cold)`
  ///
  /// - Valid: as `wort-density`. From 100 to 20 C it is 0.960 for any wort from 0 to 20 P; from
  ///   mash temperature it depends on strength.
  /// - Source: the density of sugar solutions.
  @Reckoned(
      name = "shrinkage",
      says = "What part of its hot volume wort keeps when it cools.",
      equation = "V_cold/V_hot = rho(w, hot) / rho(w, cold)",
      range = "-5 to 110 C, -5 to 70 % extract; refused outside")
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  public static double keptRatio(
      double extractFrac, @Usually(BOIL_C) double hotC, @Usually(COLD_C) double coldC) {
    return WortDensity.wortKgPerL(extractFrac, hotC) / WortDensity.wortKgPerL(extractFrac, coldC);
  }

  /// Hot volume that becomes a cold one.
  ///
  /// `V_hot = V_cold rho(w,cold) / rho(w,hot)`
  ///
  /// - Valid: as above.
  /// - Source: as above.
  @Reckoned(
      name = "hot-volume",
      says = "The hot volume that becomes a cold one.",
      equation = "V_hot = V_cold rho(w, cold) / rho(w, hot)",
      range = "-5 to 110 C, -5 to 70 % extract; refused outside")
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  public static double hotL(
      double coldL,
      double extractFrac,
      @Usually(BOIL_C) double hotC,
      @Usually(COLD_C) double coldC) {
    return Require.notBelow0("cold in L", coldL) / keptRatio(extractFrac, hotC, coldC);
  }

  /// Cold volume that a hot one becomes.
  ///
  /// `V_cold = V_hot rho(w,hot) / rho(w,cold)`
  ///
  /// - Valid: as above.
  /// - Source: as above.
  @Reckoned(
      name = "cold-volume",
      says = "The cold volume that a hot one becomes.",
      equation = "V_cold = V_hot rho(w, hot) / rho(w, cold)",
      range = "-5 to 110 C, -5 to 70 % extract; refused outside")
  @Source(key = "bubnik-1995", at = "p. 164", trust = Trust.SECOND_HAND)
  public static double coldL(
      double hotL,
      double extractFrac,
      @Usually(BOIL_C) double hotC,
      @Usually(COLD_C) double coldC) {
    return Require.notBelow0("hot in L", hotL) * keptRatio(extractFrac, hotC, coldC);
  }

  /// True volume behind the mark of a steel kettle, or a wooden dip stick, read hot.
  ///
  /// `V = V_read (1 + 2 g (t - t0))`: the cross-section widens
  ///
  /// - Valid: 0 to 110 C; at 100 C a stick understates by 0.26 %, below most dip errors. A mark in
  ///   the wall rises with the wall as well, which this leaves out.
  /// - Source: steel's expansion from handbooks, 16 to 17e-6 per K.
  @Reckoned(
      name = "kettle-growth",
      says = "The true volume behind a dip-stick reading in a hot steel kettle.",
      equation = "V = V_read (1 + 2 g (t - t0))",
      range = "0 to 110 C; refused outside")
  @Source(key = "glass-and-steel", trust = Trust.READ)
  public static double dippedL(
      double readL,
      double wortC,
      @Usually(COLD_C) double markedC,
      @Usually(STEEL_PER_K) double steelPerK) {
    Require.within("wort in C", wortC, 0, WaterDensity.MOST_C);
    Require.within("marked in C", markedC, 0, WaterDensity.MOST_C);
    Require.within("steel per K", steelPerK, 0, 1e-4);
    return Require.notBelow0("read in L", readL) * (1 + 2 * steelPerK * (wortC - markedC));
  }
}
