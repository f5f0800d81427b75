package gylebook.science;

/// Growth of yeast in a starter.
public final class Starter {
  /// Above this no starter gets, whatever it is fed.
  static final double MOST_COUNT_PER_ML = 250e6;

  private static final double ML_PER_L = 1000;
  private static final double G_PER_KG = 1000;
  private static final double WORT_KG_PER_L = 1.04;
  private static final double REAL_PER_APPARENT_RATIO = 0.805;

  private Starter() {}

  /// Cells that grew for each degree Plato that was eaten.
  ///
  /// `YF = (final - initial)/drop`, cells per mL and degree of apparent drop
  ///
  /// - Valid: 5 to 15 million is usual; above about 20 million the yeast had much air. Refused
  ///   where the count fell or nothing was eaten.
  /// - Source: White and Zainasheff, Yeast (2010): 100 to 152 million in 1 L from 9 to 2 P.
  @Reckoned(
      name = "starter-yield",
      says = "How many cells a starter grew for each degree Plato eaten.",
      equation = "YF = (final - initial)/drop",
      range = "5 to 15 million is usual; above 20 million it grew with air")
  @Source(key = "white-zainasheff2010", at = "starter size", trust = Trust.READ)
  public static double yieldCountPerMl(
      double initialCountPerMl, double finalCountPerMl, double dropPlato) {
    Require.notBelow0("initial cells per mL", initialCountPerMl);
    Require.notBelow0("cells per mL grown", finalCountPerMl - initialCountPerMl);
    return (finalCountPerMl - initialCountPerMl) / Require.above0("drop in P", dropPlato);
  }

  /// Cells in a starter after it has worked.
  ///
  /// `N = N0 + YF V drop`, not above 250 million per mL
  ///
  /// - Valid: YF 8 million still, 14 million stirred, give or take 40 %. A start that is denser
  ///   than 250 million per mL does not grow.
  /// - Source: White and Zainasheff 2010 and counts of a home brewer (7 to 15 million).
  @Reckoned(
      name = "starter-cells",
      says = "How many cells a starter holds when it has worked.",
      equation = "N = N0 + YF V drop, not above 250e6 per mL",
      range = "YF 8e6 still, 14e6 stirred, give or take 40 %")
  @Source(key = "white-zainasheff2010", at = "starter size", trust = Trust.READ)
  @Source(key = "practice", at = "stirred starters, densest starter", trust = Trust.PRACTICE)
  public static double grownCount(
      double startCount,
      double starterL,
      double dropPlato,
      @Span(
              least = 5e6,
              most = 20e6,
              beyond = "starters were found to grow 5 to 20 million a mL and degree")
          @Usually(8e6)
          double yieldCountPerMl) {
    Require.notBelow0("cells at the start", startCount);
    Require.notBelow0("starter in L", starterL);
    Require.within("drop in P", dropPlato, 0, 40);
    Require.within("cells per mL and degree", yieldCountPerMl, 0, 60e6);
    double grown = startCount + yieldCountPerMl * dropPlato * starterL * ML_PER_L;
    double most = MOST_COUNT_PER_ML * starterL * ML_PER_L;
    return Math.max(startCount, Math.min(grown, most));
  }

  /// Cells in a starter by what its sugar weighs, the second opinion.
  ///
  /// `N = N0 + 0.0532 dRE rho V n`, the real drop 0.805 of the apparent one, not above 250 million
  /// per mL
  ///
  /// - Valid: yeast that ferments, with little air; n 20 thousand million cells in a gram of dry
  ///   matter, give or take half. Balling's yeast is a brewery's mean, not a starter's.
  /// - Source: Balling's yeast as quoted in 2007; cells in a gram from a teaching laboratory.
  ///
  /// @param dropPlato fall of the apparent extract
  /// @param heldCountPerG cells in a gram of dry matter
  @Reckoned(
      name = "starter-cells-by-mass",
      says = "How many cells a starter holds, by the yeast that its sugar makes.",
      equation = "N = N0 + 0.0532 x 0.805 drop rho V n, not above 250e6 per mL",
      range = "yeast with little air; 20e9 cells in a gram of dry matter, give or take half")
  @Source(key = "balling", at = "gas and yeast", trust = Trust.SECOND_HAND)
  @Source(key = "yeast-cell-mass", trust = Trust.SECOND_HAND)
  public static double byMassCount(
      double startCount,
      double starterL,
      double dropPlato,
      @Span(least = 10e9, most = 30e9, beyond = "a gram of dry yeast is remembered to be so many")
          @Usually(20e9)
          double heldCountPerG) {
    Require.notBelow0("cells at the start", startCount);
    Require.notBelow0("starter in L", starterL);
    Require.within("drop in P", dropPlato, 0, 40);
    Require.within("cells in a gram", heldCountPerG, 1e9, 100e9);
    double extract = starterL * WORT_KG_PER_L * REAL_PER_APPARENT_RATIO * (dropPlato / 100);
    double grown =
        startCount + extract * G_PER_KG * Balling.YEAST_PER_EXTRACT_RATIO * heldCountPerG;
    double most = MOST_COUNT_PER_ML * starterL * ML_PER_L;
    return Math.max(startCount, Math.min(grown, most));
  }

  /// Cells after each of two starters, one after the other.
  ///
  /// @param firstCount after the first, small one
  /// @param secondCount after the second, larger one
  /// @param singleCount what one starter of the second's size would have held
  public record Stepped(double firstCount, double secondCount, double singleCount) {}

  /// A starter in two steps: all the cells of the first go into the second's fresh wort.
  ///
  /// `N1 = N0 + YF V1 drop`, `N2 = N1 + YF V2 drop`, each not above 250 million per mL of its
  /// volume. Steps are worth their trouble where one starter of the larger size would begin too
  /// thin or the smaller one is full; the spent beer is poured off in between.
  @Source(key = "white-zainasheff2010", at = "starter size", trust = Trust.READ)
  @Source(key = "practice", at = "stirred starters, densest starter", trust = Trust.PRACTICE)
  @Reckoned(
      name = "starter-in-steps",
      says = "How many cells come of a small starter that goes into a larger one?",
      equation = "N1 = N0 + YF V1 drop, N2 = N1 + YF V2 drop, not above 250e6 per mL each",
      range = "YF 8e6 still, 14e6 stirred, give or take 40 %; both in wort of one strength")
  public static Stepped stepped(
      double startCount,
      double firstL,
      double secondL,
      @Usually(7) double dropPlato,
      @Span(
              least = 5e6,
              most = 20e6,
              beyond = "starters were found to grow 5 to 20 million a mL and degree")
          @Usually(8e6)
          double yieldCountPerMl) {
    double first = grownCount(startCount, firstL, dropPlato, yieldCountPerMl);
    return new Stepped(
        first,
        grownCount(first, secondL, dropPlato, yieldCountPerMl),
        grownCount(startCount, secondL, dropPlato, yieldCountPerMl));
  }
}
