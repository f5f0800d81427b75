package gylebook.science;

/// How sticky water is.
public final class WaterViscosity {
  private static final double[] SIZES = {280.68, 511.45, 61.131, 0.45903};
  private static final double[] POWERS = {-1.9, -7.7, -19.6, -40.0};
  private static final double ZERO_KELVIN = 273.15;
  private static final double SCALE_KELVIN = 300;

  private WaterViscosity() {}

  /// Viscosity of water near one atmosphere.
  ///
  /// `mu = 1e-6 sum a_i (T/300)^b_i`
  ///
  /// - Valid: 0 to 100 C; refused outside.
  /// - Source: the equation for 0.1 MPa of the IAPWS, second-hand; checked against a steam library.
  @Reckoned(
      name = "water-viscosity",
      says = "How viscous water is.",
      equation = "mu = 1e-6 sum a_i (T/300)^b_i",
      range = "0 to 100 C near one atmosphere; refused outside")
  @Source(key = "iapws-viscosity", trust = Trust.SECOND_HAND)
  public static double waterPaSec(double waterC) {
    Require.within("water temperature in C", waterC, 0, 100);
    double reduced = (waterC + ZERO_KELVIN) / SCALE_KELVIN;
    double sum = 0;
    for (int i = 0; i < SIZES.length; i++) {
      sum += SIZES[i] * Math.pow(reduced, POWERS[i]);
    }
    return 1e-6 * sum;
  }

  /// Viscosity of water by a short fit.
  ///
  /// `mu = 2.414e-5 10^(247.8/(T + 133.15))`, T in C
  ///
  /// - Valid: 0 to 100 C within 2.5 %; refused outside.
  /// - Source: a fit that several open codes have alike.
  @Reckoned(
      name = "water-viscosity-fit",
      says = "How viscous water is, by a short fit.",
      equation = "mu = 2.414e-5 10^(247.8/(T + 133.15))",
      range = "0 to 100 C within 2.5 %; refused outside")
  @Source(key = "steam-tables", at = "a short fit", trust = Trust.SECOND_HAND)
  public static double fitPaSec(double waterC) {
    Require.within("water temperature in C", waterC, 0, 100);
    return 2.414e-5 * Math.pow(10, 247.8 / (waterC + 133.15));
  }
}
