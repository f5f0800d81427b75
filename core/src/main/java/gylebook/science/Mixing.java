package gylebook.science;

/// Heat brought together, and heat brought in, without losses.
public final class Mixing {
  /// Liquid water and what is stirred into it.
  public static final Validity RANGE =
      new Validity(
          "warmth of the liquid in C",
          -5,
          105,
          "water is ice or steam there, and their heats are not counted");

  private Mixing() {}

  /// Temperature of two things put together: `T = (m1 c1 T1 + m2 c2 T2)/(m1 c1 + m2 c2)`.
  ///
  /// No heat of wetting and no kettle: a mash from malt and water alone comes out somewhat warmer.
  @Source(key = "energy-balance", at = "enthalpies add", trust = Trust.COMPUTED)
  @Reckoned(
      name = "mixing-temperature",
      says = "How warm do two things get when they are put together?",
      equation = "T = (m1 c1 T1 + m2 c2 T2) / (m1 c1 + m2 c2)",
      range = "no losses, no heat of wetting, no kettle; the first mass above 0")
  public static double mixedC(
      double firstKg,
      double firstC,
      double secondKg,
      double secondC,
      @Usually(4186) double firstJPerKgK,
      @Usually(1650) double secondJPerKgK) {
    Require.temperatureC("first", firstC);
    Require.temperatureC("second", secondC);
    double first = Require.above0("first mass", firstKg) * Require.above0("heat", firstJPerKgK);
    double second =
        Require.notBelow0("second mass", secondKg) * Require.above0("heat", secondJPerKgK);
    // A weighted mean: temperatures may be averaged, never added.
    return firstC + (secondC - firstC) * second / (first + second);
  }

  /// Time to heat without losses: `t = m c (T2 - T1) / P`.
  @Source(key = "energy-balance", at = "heat of a kettle without losses", trust = Trust.COMPUTED)
  @Reckoned(
      name = "heating-time",
      says = "How long does heating take at a power, without losses?",
      equation = "t = m c (T2 - T1) / P",
      range = "T2 not below T1; losses left out")
  public static double heatingSec(
      double massKg,
      @Usually(15) double fromC,
      double toC,
      double powerW,
      @Usually(4186) double heatJPerKgK) {
    return Require.above0("mass", massKg)
        * Require.above0("heat", heatJPerKgK)
        * Require.notBelow0("rise", toC - fromC)
        / Require.above0("power", powerW);
  }
}
