package gylebook.science;

/// Hot water to the drain.
public final class Drain {
  private Drain() {}

  /// Cold water that tempers hot water before it goes to the drain.
  ///
  /// `(T_hot - T_limit)/(T_limit - T_cold)`
  ///
  /// - Valid: any; 0 where the water is not above the limit; refused where cold water is not below
  ///   it. 60 C (140 F) is the model codes' figure; local rules from 49 to 66 C were found: follow
  ///   your local code. Plastic pipe softens.
  /// - Source: mixing; the model plumbing codes as a trade paper and an exam text tell them.
  @Reckoned(
      name = "drain-tempering",
      says = "How much cold water tempers a litre of hot water for the drain.",
      equation = "(T_hot - T_limit)/(T_limit - T_cold)",
      range = "60 C is the model codes' figure; follow your local code (49 to 66 C were found)")
  @Source(key = "plumbing-codes", trust = Trust.SECOND_HAND)
  @Source(key = "energy-balance", at = "mixing", trust = Trust.COMPUTED)
  public static double coldRatio(
      double hotC,
      @Span(
              least = 49,
              most = 66,
              beyond = "no local rule that was found asks for that; look up your own")
          @Usually(60)
          double limitC,
      @Usually(15) double coldC) {
    Require.within("hot water in C", hotC, 0, 110);
    Require.within("limit in C", limitC, 20, 100);
    Require.within("cold water in C", coldC, 0, 60);
    double below = Require.above0("limit less cold water in K", limitC - coldC);
    return Math.max(0, hotC - limitC) / below;
  }
}
