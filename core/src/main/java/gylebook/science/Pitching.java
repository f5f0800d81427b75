package gylebook.science;

/// How much yeast to pitch. Habits of the trade, not laws.
public final class Pitching {
  private static final String PITCHED = "brewers pitch 0.75 to 1.5 million a mL and degree Plato";
  private static final String HELD =
      "dried yeasts were found to hold 6 to 18 thousand million living cells a gram";
  private static final double ML_PER_L = 1000;

  private static final double ALE_COUNT_PER_ML = 0.75e6;
  private static final double EITHER_COUNT_PER_ML = 1e6;
  private static final double LAGER_COUNT_PER_ML = 1.5e6;

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
      double wortL,
      double originalPlato,
      @Span(least = 0.5e6, most = 1.5e6, beyond = PITCHED) @Usually(0.75e6) double rateCountPerMl) {
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
      double cellsCount,
      @Span(least = 5e9, most = 20e9, beyond = HELD) @Usually(10e9) double heldCountPerG,
      @Usually(0.95) double viableFrac) {
    Require.notBelow0("cells", cellsCount);
    Require.within("living cells a gram", heldCountPerG, 1e9, 40e9);
    return cellsCount
        / heldCountPerG
        / Require.within("living share after pitching", viableFrac, 0.05, 1);
  }

  /// Cells by the three habits of the trade.
  ///
  /// @param aleCount for ales, 0.75 million per mL and degree Plato
  /// @param eitherCount for either, 1 million
  /// @param lagerCount for lagers, 1.5 million
  public record Habit(double aleCount, double eitherCount, double lagerCount) {}

  /// Living cells to pitch, by each of the three habits.
  ///
  /// `N = r V OE`
  ///
  /// - Valid: 0 to 40 P; refused outside. Habits, not laws.
  /// - Source: trade consensus, from memory.
  @Reckoned(
      name = "cells-to-pitch-by-habit",
      says = "How many living yeast cells ales and lagers are pitched with.",
      equation = "N = r V OE with r = 0.75e6, 1.0e6 and 1.5e6",
      range = "0 to 40 P, refused outside; habits, not laws")
  @Source(key = "practice", at = "pitching rates", trust = Trust.PRACTICE)
  public static Habit habits(double wortL, double originalPlato) {
    return new Habit(
        cellsCount(wortL, originalPlato, ALE_COUNT_PER_ML),
        cellsCount(wortL, originalPlato, EITHER_COUNT_PER_ML),
        cellsCount(wortL, originalPlato, LAGER_COUNT_PER_ML));
  }

  /// Dried yeast for a wort.
  ///
  /// `m = r V OE/(n v)`
  ///
  /// - Valid: as the two it is made of.
  /// - Source: as above.
  @Reckoned(
      name = "dried-yeast-for-wort",
      says = "How much dried yeast a wort wants.",
      equation = "m = r V OE/(n v)",
      range = "r 0.75e6 (ale) to 1.5e6 (lager); 6e9 to 16e9 living cells a gram; a habit")
  @Source(key = "vandenberg2003", at = "table 1", trust = Trust.SECOND_HAND)
  @Source(key = "practice", at = "pitching rates", trust = Trust.PRACTICE)
  public static double driedForWortG(
      double wortL,
      double originalPlato,
      @Span(least = 0.5e6, most = 1.5e6, beyond = PITCHED) @Usually(0.75e6) double rateCountPerMl,
      @Span(least = 5e9, most = 20e9, beyond = HELD) @Usually(10e9) double heldCountPerG,
      @Usually(0.95) double viableFrac) {
    return driedG(cellsCount(wortL, originalPlato, rateCountPerMl), heldCountPerG, viableFrac);
  }

  /// Share of dried yeast that lives on, by how it goes in.
  ///
  /// @param rehydratedFrac stirred into ten times its weight of water of 35 to 41 C for 15 to 30
  ///   min
  /// @param strewnFrac strewn into wort below 16 P
  /// @param strewnLeastFrac the same on a bad day
  /// @param strewnMostFrac the same on a good one; makers now say that strewing is fine
  /// @param coldWaterFrac stirred into water of 15 C: the trap
  public record Alive(
      double rehydratedFrac,
      double strewnFrac,
      double strewnLeastFrac,
      double strewnMostFrac,
      double coldWaterFrac) {}

  /// Share of dried yeast that lives on after pitching.
  ///
  /// - Valid: dried ale and lager yeast. Water that is too cold is worse than none: as little as 40
  ///   % live on after 15 C. Older advice is to wet it warm, makers now say strew it: both stand
  ///   here.
  /// - Source: 35 to 41 C, and 40 % in cold water, read in a brewer's article of 2005; the other
  ///   shares are from memory.
  @Reckoned(
      name = "dried-yeast-alive",
      says = "What share of dried yeast lives on, by how it is pitched.",
      equation = "0.95 in water of 35 to 41 C; 0.75 (0.5 to 0.95) into wort; 0.40 in 15 C water",
      range = "wort below 16 P; priors: count under the microscope where it matters")
  @Source(key = "rehydration2005", at = "cold water", trust = Trust.READ)
  @Source(key = "practice", at = "living shares of dried yeast", trust = Trust.PRACTICE)
  public static Alive alive() {
    return new Alive(0.95, 0.75, 0.5, 0.95, 0.40);
  }
}
