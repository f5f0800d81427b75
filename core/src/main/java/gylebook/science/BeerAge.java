package gylebook.science;

/// How fast packaged beer ages: faster when warm and with air. No date is promised.
public final class BeerAge {
  /// Cellar to room; accelerated tests went to 60 C.
  public static final Validity RANGE =
      new Validity(
          "storage temperature in C", 0, 40, "another chemistry may rule there; the law goes on");

  private static final double STEP_K = 10;

  private BeerAge() {}

  /// Factor for 10 K from two rates.
  ///
  /// `Q10 = (r2/r1)^(10/dT)`
  ///
  /// - Valid: rates above 0, a rise above 0; refused otherwise.
  /// - Source: a definition; measured 2.11 from 40 to 50 C and 1.97 from 50 to 60 C (World Brewing
  ///   Congress 2012).
  @Reckoned(
      name = "ageing-factor",
      says = "By what factor 10 K speed ageing up, from two rates.",
      equation = "Q10 = (r2/r1)^(10/dT)",
      range = "rates and rise above 0; refused otherwise")
  @Source(key = "wbc2012", at = "abstract 260", trust = Trust.READ)
  public static double tenKelvinFactor(
      double coolerRatio, double warmerRatio, @Usually(10) double warmerK) {
    Require.above0("rate when cooler", coolerRatio);
    Require.above0("rise in K", warmerK);
    return Math.pow(
        Require.above0("rate when warmer", warmerRatio) / coolerRatio, STEP_K / warmerK);
  }

  /// Days at another temperature that age a beer alike.
  ///
  /// `t' = t Q10^((T - T')/10)`
  ///
  /// - Valid: 0 to 40 C; goes on with a caution; refused outside -5 to 70 C. Q10 2.5, give or take
  ///   0.5; the example of 30 C uses 3.
  /// - Source: Bamforth and Lentini 2009, second-hand.
  @Reckoned(
      name = "equivalent-age",
      says = "How many days at another temperature age a beer as much.",
      equation = "t' = t Q10^((T - T')/10)",
      range = "0 to 40 C, Q10 2 to 3; a comparison, not a date")
  @Source(key = "bamforth-lentini2009", trust = Trust.SECOND_HAND)
  public static double equivalentDay(
      double heldDay,
      double storageC,
      @Usually(4) double referenceC,
      @Usually(2.5) double tenKelvinFactor) {
    Require.notBelow0("time in days", heldDay);
    Require.within("storage temperature in C", storageC, -5, 70);
    Require.within("reference temperature in C", referenceC, -5, 70);
    Require.within("factor for 10 K", tenKelvinFactor, 1, 6);
    return heldDay * Math.pow(tenKelvinFactor, (storageC - referenceC) / STEP_K);
  }
}
