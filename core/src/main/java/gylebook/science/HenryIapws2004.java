package gylebook.science;

/// Henry's constants of gases in water after the guideline of IAPWS: pressure over mole share.
///
/// For carbon dioxide in cold beer prefer `carbon-dioxide-in-water`: this one is 2.5 % off at 10 C.
public final class HenryIapws2004 {
  private static final double CRITICAL_KELVIN = 647.096;
  private static final double CRITICAL_KPA = 22_064;
  private static final double ZERO_KELVIN = 273.15;
  private static final double[] VAPOUR = {
    -7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502
  };
  private static final double[] POWERS = {1, 1.5, 3, 3.5, 4, 7.5};

  private HenryIapws2004() {}

  /// Henry's constant of carbon dioxide.
  ///
  /// `ln(k/p_w) = A/Tr + B tau^0.355/Tr + C Tr^-0.41 exp(tau)`
  ///
  /// - Valid: 1 to 99 C; refused outside 0 to 100 C.
  /// - Source: IAPWS G7-04; coefficients alike in ten open codes; the value at 20 C is a library's.
  @Reckoned(
      name = "carbon-dioxide-henry",
      says = "Henry's constant of carbon dioxide in water, pressure over mole share.",
      equation = "ln(k/p_w) = A/Tr + B tau^0.355/Tr + C Tr^-0.41 exp(tau)",
      range = "0 to 100 C; refused outside")
  @Source(key = "iapws-g7-04", trust = Trust.SECOND_HAND)
  public static double carbonDioxideKpa(double waterC) {
    return henryKpa(waterC, -8.55445, 4.01195, 9.52345);
  }

  /// Henry's constant of oxygen.
  ///
  /// - Valid, Source: as above.
  @Reckoned(
      name = "oxygen-henry",
      says = "Henry's constant of oxygen in water, pressure over mole share.",
      equation = "ln(k/p_w) = A/Tr + B tau^0.355/Tr + C Tr^-0.41 exp(tau)",
      range = "0 to 100 C; refused outside")
  @Source(key = "iapws-g7-04", trust = Trust.SECOND_HAND)
  public static double oxygenKpa(double waterC) {
    return henryKpa(waterC, -9.44833, 4.43822, 11.42005);
  }

  private static double henryKpa(
      double waterC, double firstNumber, double secondNumber, double thirdNumber) {
    Require.within("water temperature in C", waterC, 0, 100);
    double reduced = (waterC + ZERO_KELVIN) / CRITICAL_KELVIN;
    double tau = 1 - reduced;
    double ln =
        firstNumber / reduced
            + secondNumber * Math.pow(tau, 0.355) / reduced
            + thirdNumber * Math.pow(reduced, -0.41) * Math.exp(tau);
    return vapourKpa(reduced, tau) * Math.exp(ln);
  }

  /// The guideline asks for this older equation of the vapour pressure, not for IF97's: they differ
  /// by a hundred-thousandth.
  private static double vapourKpa(double reducedNumber, double tauNumber) {
    double sum = 0;
    for (int i = 0; i < VAPOUR.length; i++) {
      sum += VAPOUR[i] * Math.pow(tauNumber, POWERS[i]);
    }
    return CRITICAL_KPA * Math.exp(sum / reducedNumber);
  }
}
