package gylebook.science;

/// Dry air as the kettle's wall and the hose feel it.
///
/// Between freezing and the boil at the pressures where people live: the two fits hold far wider
/// (about 170 to 1900 K), so no more is refused than what is no temperature at all.
public final class Air {
  /// Specific gas constant of dry air, from the US Standard Atmosphere 1976.
  static final double GAS_J_PER_KG_K = 287.055;

  /// Ratio of momentum to heat diffusion; it moves from 0.72 to 0.70 between 0 and 100 C.
  static final double PRANDTL_NUMBER = 0.71;

  static final double L_PER_M3 = 1000;
  static final double ZERO_C_KELVIN = 273.15;
  static final double GRAVITY_M_PER_SEC2 = 9.80665;

  private Air() {}

  /// How sticky air is (Sutherland's law).
  ///
  /// `mu = 1.458e-6 T^1.5 / (T + 110.4)`, T in kelvin. Below -270 C it is refused.
  @Source(key = "us-atmosphere-1976", at = "viscosity (Sutherland)", trust = Trust.READ)
  @Reckoned(
      name = "air-viscosity",
      says = "How viscous is dry air?",
      equation = "mu = 1.458e-6 T^1.5 / (T + 110.4), T in kelvin",
      range = "above -270 C; refused below")
  public static double viscosityPaSec(@Usually(20) double airC) {
    double kelvin = kelvin(airC);
    return 1.458e-6 * Math.pow(kelvin, 1.5) / (kelvin + 110.4);
  }

  /// How well still air conducts heat.
  ///
  /// `k = 2.64638e-3 T^1.5 / (T + 245.4 10^(-12/T))`, T in kelvin. Below -270 C it is refused.
  @Source(key = "us-atmosphere-1976", at = "thermal conductivity", trust = Trust.READ)
  @Reckoned(
      name = "air-conductivity",
      says = "How well does still air conduct heat?",
      equation = "k = 2.64638e-3 T^1.5 / (T + 245.4 10^(-12/T)), T in kelvin",
      range = "above -270 C; refused below")
  public static double conductivityWPerMK(@Usually(20) double airC) {
    double kelvin = kelvin(airC);
    return 2.64638e-3
        * Math.pow(kelvin, 1.5)
        / (kelvin + 245.4 * Math.exp(-12 * Math.log(10) / kelvin));
  }

  /// Mass of a cubic metre of dry air, as an ideal gas: `rho = p / (287.055 T)`.
  @Source(key = "us-atmosphere-1976", at = "gas constant", trust = Trust.READ)
  @Reckoned(
      name = "air-density",
      says = "How heavy is dry air?",
      equation = "rho = p / (287.055 T), T in kelvin",
      range = "above -270 C and a pressure above 0; refused outside")
  public static double densityKgPerM3(
      @Usually(20) double airC, @Usually(101.325) double pressureKpa) {
    return 1000 * Require.above0("pressure", pressureKpa) / (GAS_J_PER_KG_K * kelvin(airC));
  }

  /// Buoyancy against friction of air beside something warm (Rayleigh's number).
  ///
  /// `Ra = g (Ts - Ta) L^3 Pr rho^2 / (Tf mu^2)`, everything at the film temperature Tf halfway.
  /// The sign of the difference does not matter here.
  static double rayleighNumber(double lengthM, double wallC, double roomC, double pressureKpa) {
    double filmC = (wallC + roomC) / 2;
    double kinematic = viscosityPaSec(filmC) / densityKgPerM3(filmC, pressureKpa);
    return GRAVITY_M_PER_SEC2
        / kelvin(filmC)
        * Math.abs(wallC - roomC)
        * lengthM
        * lengthM
        * lengthM
        * PRANDTL_NUMBER
        / (kinematic * kinematic);
  }

  static double kelvin(double airC) {
    if (!(airC > -270) || Double.isInfinite(airC)) {
      throw new IllegalArgumentException(
          "temperature is " + airC + " C; it must lie above -270 C.");
    }
    return airC + ZERO_C_KELVIN;
  }
}
