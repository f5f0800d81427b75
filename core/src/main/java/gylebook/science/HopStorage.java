package gylebook.science;

/// What the hop storage index says: two absorbances of a hop extract, 275 nm over 325 nm.
public final class HopStorage {
  /// Index of fresh hops, where the loss starts.
  private static final double FRESH_RATIO = 0.25;

  private HopStorage() {}

  /// The storage index from its two absorbances.
  @Source(key = "nickerson-likens1979", at = "definition", trust = Trust.READ)
  @Reckoned(
      name = "hop-storage-index",
      says = "The hop storage index from two absorbances of an extract.",
      equation = "HSI = A275/A325",
      range = "absorbances above 0")
  public static double indexRatio(double absorbance275Number, double absorbance325Number) {
    Require.above0("absorbance at 275 nm", absorbance275Number);
    Require.above0("absorbance at 325 nm", absorbance325Number);
    return absorbance275Number / absorbance325Number;
  }

  /// Alpha and beta acid lost since the harvest.
  ///
  /// `lost = slope log10(HSI/0.25)`; the slope was 1.018 to 1.146 for crops of 1969-77, usually
  /// 1.10.
  ///
  /// - Below 0.25 nothing is lost yet: 0. Above 1 everything would be: 1.
  @Source(key = "nickerson-likens1979", at = "form and slopes", trust = Trust.READ)
  @Reckoned(
      name = "hop-storage-loss",
      says = "The share of alpha and beta acid lost, from the hop storage index.",
      equation = "lost = slope log10(HSI/0.25)",
      range = "HSI 0.25 to about 1; 0 below 0.25")
  public static double lostFrac(
      @Span(
              least = 0.25,
              most = 1,
              beyond = "the measured hops lay between a fresh index of 0.25 and about 1")
          double indexRatio,
      @Usually(1.10) double slopeRatio) {
    Require.within("hop storage index", indexRatio, 0.1, 5);
    Require.within("slope as a share per decade", slopeRatio, 0.5, 2);
    double lost = slopeRatio * Math.log10(indexRatio / FRESH_RATIO);
    return Math.clamp(lost, 0, 1);
  }
}
