package gylebook.science;

/// How long a keg takes to carbonate on the gas, standing still.
public final class CarbonationTime {
  private static final double SEC_PER_HR = 3600;
  private static final double L_PER_M3 = 1000;

  private CarbonationTime() {}

  /// Times of carbonating.
  ///
  /// @param constantHr in which the gap to the end falls to 0.37
  /// @param reachedHr until the share asked for is reached
  public record Times(double constantHr, double reachedHr) {}

  /// Time to carbonate through the surface of the beer.
  ///
  /// `dc/dt = (k_L A/V)(c* - c)`
  ///
  /// - Valid: a still keg; k_L 1.5e-6 m/s is a prior to be learnt, shaking raises it 30 to 100
  ///   times. Refused for a share outside 0 to 0.9999.
  /// - Source: from memory; deLange says weeks for a large keg.
  @Reckoned(
      name = "carbonation-time",
      says = "How long a keg takes to carbonate on the gas.",
      equation = "dc/dt = (k_L A/V)(c* - c)",
      range = "a still keg; k_L a prior; shaking is 30 to 100 times as fast")
  @Source(key = "carbonation-transfer", trust = Trust.MEMORY)
  public static Times times(
      @Usually(19) double beerL,
      @Usually(0.040) double surfaceM2,
      @Usually(1.5e-6) double transferMPerSec,
      @Usually(0.95) double reachedFrac) {
    Require.above0("beer in L", beerL);
    Require.above0("surface in m2", surfaceM2);
    Require.above0("transfer in m/s", transferMPerSec);
    Require.within("share reached", reachedFrac, 0, 0.9999);
    double tau = beerL / L_PER_M3 / (transferMPerSec * surfaceM2) / SEC_PER_HR;
    return new Times(tau, -tau * Math.log1p(-reachedFrac));
  }
}
