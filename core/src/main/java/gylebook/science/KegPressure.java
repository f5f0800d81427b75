package gylebook.science;

/// Pressure in a closed keg or bottle that gets warm.
///
/// Read the vessel's own marking: there is no usual value. Relief valve at or below it, the
/// regulator's relief below that, both tried by hand. **Never pressurise glass** that was not made
/// for it, and never chill a closed thin vessel: it caves in. Follow your local code.
public final class KegPressure {
  /// Where the solubility is used.
  public static final Validity RANGE = BeerGas.RANGE;

  private static final double KPA_PER_BAR = 100;

  private KegPressure() {}

  /// Gauge pressure in a full closed package: no room for gas to go.
  ///
  /// `p = c / (10 exp(-10.73797 + 2617.25/T))`, less the air's
  ///
  /// - Valid: 0 to 40 C; goes on from -2 to 60 C with a caution. With headspace it is less: see
  ///   `keg-pressure-warmed`.
  /// - Source: the German form of solubility, read second-hand.
  @Reckoned(
      name = "bottle-pressure",
      says = "The gauge pressure in a closed package of carbonated beer at a temperature.",
      equation = "p = c / (10 exp(-10.73797 + 2617.25/T)) - p_air",
      range = "0 to 40 C, goes on to 60 C; read the vessel's marking, follow your local code")
  @Source(key = "german-carbonation", trust = Trust.SECOND_HAND)
  public static double sealedKpa(double heldVol, double beerC, @Usually(101.325) double airKpa) {
    Require.within("volumes in the beer", heldVol, 0, 10);
    Require.within("air pressure in kPa", airKpa, 50, 110);
    double held = heldVol * CarbonDioxide.VOLUME_G_PER_L_VOL;
    double absolute = held / BeerGas.perBarNumber(beerC) * KPA_PER_BAR;
    return absolute - airKpa;
  }

  /// Absolute pressure in a closed keg that was filled cold and got warm.
  ///
  /// `n = k(T) p V_L/M + p V_g/(R T)` stays the same
  ///
  /// - Valid: 0 to 40 C, carbon dioxide alone as an ideal gas; goes on from -2 to 60 C with a
  ///   caution.
  /// - Source: a balance with the German form of solubility.
  ///
  /// @param fillKpa gauge pressure at filling
  @Reckoned(
      name = "keg-pressure-warmed",
      says = "The absolute pressure in a closed keg that was filled cold and got warm.",
      equation = "n = k(T) p V_L/M + p V_g/(R T) stays the same",
      range = "0 to 40 C, goes on to 60 C; read the vessel's marking, follow your local code")
  @Source(key = "german-carbonation", trust = Trust.SECOND_HAND)
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  public static double warmedKpa(
      double beerL,
      double gasL,
      double fillC,
      double fillKpa,
      double laterC,
      @Usually(101.325) double airKpa) {
    Require.above0("beer in L", beerL);
    Require.notBelow0("headspace in L", gasL);
    Require.notBelow0("gauge pressure at filling in kPa", fillKpa);
    Require.within("air pressure in kPa", airKpa, 50, 110);
    double held = molesPerKpaNumber(beerL, gasL, fillC);
    return (fillKpa + airKpa) * held / molesPerKpaNumber(beerL, gasL, laterC);
  }

  private static double molesPerKpaNumber(double beerL, double gasL, double atC) {
    double dissolved = BeerGas.perBarNumber(atC) / KPA_PER_BAR * beerL / CarbonDioxide.G_PER_MOL;
    double kelvin = atC + CarbonDioxide.ZERO_KELVIN;
    double above = gasL / (CarbonDioxide.GAS_J_PER_MOL_K * kelvin);
    return dissolved + above;
  }
}
