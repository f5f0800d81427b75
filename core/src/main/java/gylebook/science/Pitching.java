package gylebook.science;

/// How much yeast to pitch. Habits of the trade, not laws.
public final class Pitching {
  private static final double ML_PER_L = 1000;

  private Pitching() {}

  /// Living cells to pitch.
  ///
  /// `N = r V OE`
  ///
  /// - Valid: r of 0.75 million (ale), 1 million (either), 1.5 million (lager) living cells per mL
  ///   and degree Plato. Refused outside 0.1 to 10 million and 0 to 40 P.
  /// - Source: trade consensus, from memory.
  ///
  /// @param rateCountPerMl living cells per mL of wort for each degree Plato
  @Reckoned(
      name = "cells-to-pitch",
      says = "How many living yeast cells a wort wants.",
      equation = "N = r V OE",
      range = "r 0.75e6 (ale) to 1.5e6 (lager) per mL and degree Plato; a habit, not a law")
  @Source(key = "practice", at = "pitching rates", trust = Trust.PRACTICE)
  public static double cellsCount(
      double wortL, double originalPlato, @Usually(0.75e6) double rateCountPerMl) {
    Require.notBelow0("wort in L", wortL);
    Require.within("original extract in P", originalPlato, 0, 40);
    Require.within("cells per mL and degree Plato", rateCountPerMl, 1e5, 1e7);
    return rateCountPerMl * wortL * ML_PER_L * originalPlato;
  }

  /// Dried yeast that brings so many living cells into the wort.
  ///
  /// `m = N / (n v)`
  ///
  /// - Valid: six commercial strains held 8 to 18e9 living cells a gram; 10e9 (6 to 16e9) is a
  ///   cautious guess. v is 0.95 when rehydrated and 0.75 (0.5 to 0.95) straight into wort below 16
  ///   P: the latter from memory. Refused outside 1e9 to 40e9 a gram.
  /// - Source: Van den Berg and Van Landschoot 2003, second-hand.
  @Reckoned(
      name = "dried-yeast",
      says = "How much dried yeast brings so many living cells into the wort.",
      equation = "m = N / (n v)",
      range = "6e9 to 16e9 living cells a gram; v 0.95 rehydrated, 0.5 to 0.95 straight in")
  @Source(key = "vandenberg2003", at = "table 1", trust = Trust.SECOND_HAND)
  public static double driedG(
      double cellsCount, @Usually(10e9) double heldCountPerG, @Usually(0.95) double viableFrac) {
    Require.notBelow0("cells", cellsCount);
    Require.within("living cells a gram", heldCountPerG, 1e9, 40e9);
    return cellsCount
        / heldCountPerG
        / Require.within("living share after pitching", viableFrac, 0.05, 1);
  }
}
