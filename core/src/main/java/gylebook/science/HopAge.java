package gylebook.science;

/// Alpha acid that is left in stored hops.
///
/// First order in time; the rate halves for every 15 K colder (Garetz 1994 after Green 1978). Foil,
/// nitrogen and pellets do better: read the loss as an upper bound.
public final class HopAge {
  private static final double HALVING_K = 15;

  private HopAge() {}

  /// The share of the alpha acid left after a time in store.
  ///
  /// `left = (1 - known loss)^(t/known time * 2^((T - known T)/15) * packing)`
  ///
  /// @param knownLossFrac what the variety loses in a known time, unprotected
  /// @param packingFactor 1 for open bags down to 0.5 for sealed ones; from memory
  @Source(key = "garetz1994", at = "after Green 1978", trust = Trust.READ)
  @Source(key = "garetz1994", at = "packing factor", trust = Trust.MEMORY)
  @Reckoned(
      name = "hop-alpha-left",
      says = "The share of the alpha acid left after a time in store.",
      equation = "left = (1 - L)^(t/t0 2^((T - T0)/15 K) packing)",
      range = "-30 to 40 C; an upper bound of the loss for sealed pellets")
  public static double leftFrac(
      @Usually(0.35) double knownLossFrac,
      @Usually(180) double knownDay,
      @Usually(20) double knownC,
      double storeC,
      double storedDay,
      @Usually(1) double packingFactor) {
    Require.within("known loss as a share", knownLossFrac, 0, 0.999);
    Require.above0("known time in days", knownDay);
    Require.within("known store in C", knownC, -30, 40);
    Require.within("store in C", storeC, -30, 40);
    Require.notBelow0("time in store in days", storedDay);
    Require.within("packing factor", packingFactor, 0.1, 1);
    double slowing = Math.pow(2, (storeC - knownC) / HALVING_K);
    return Math.pow(1 - knownLossFrac, storedDay / knownDay * slowing * packingFactor);
  }
}
