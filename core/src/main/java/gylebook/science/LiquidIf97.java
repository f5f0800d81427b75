package gylebook.science;

/// Liquid water by region 1 of the international steam formulation of 1997.
///
/// One function of pressure and temperature (a dimensionless Gibbs energy) yields density, enthalpy
/// and specific heat by its slopes. Table 2 of the release holds the 34 terms: powers of pressure
/// and temperature, and a factor.
final class LiquidIf97 {
  static final double GAS_J_PER_KG_K = 461.526;
  private static final double ZERO_KELVIN = 273.15;
  private static final double PRESSURE_KPA = 16530;
  private static final double TEMPERATURE_KELVIN = 1386;
  private static final int COLDEST = -41;
  private static final double[][] TERMS = {
    {0, -2, 0.14632971213167},
    {0, -1, -0.84548187169114},
    {0, 0, -3.756360367204},
    {0, 1, 3.3855169168385},
    {0, 2, -0.95791963387872},
    {0, 3, 0.15772038513228},
    {0, 4, -0.016616417199501},
    {0, 5, 8.1214629983568E-4},
    {1, -9, 2.8319080123804E-4},
    {1, -7, -6.0706301565874E-4},
    {1, -1, -0.018990068218419},
    {1, 0, -0.032529748770505},
    {1, 1, -0.021841717175414},
    {1, 3, -5.283835796993E-5},
    {2, -3, -4.7184321073267E-4},
    {2, 0, -3.0001780793026E-4},
    {2, 1, 4.7661393906987E-5},
    {2, 3, -4.4141845330846E-6},
    {2, 17, -7.2694996297594E-16},
    {3, -4, -3.1679644845054E-5},
    {3, 0, -2.8270797985312E-6},
    {3, 6, -8.5205128120103E-10},
    {4, -5, -2.2425281908E-6},
    {4, -2, -6.5171222895601E-7},
    {4, 10, -1.4341729937924E-13},
    {5, -8, -4.0516996860117E-7},
    {8, -11, -1.2734301741641E-9},
    {8, -6, -1.7424871230634E-10},
    {21, -29, -6.8762131295531E-19},
    {23, -31, 1.4478307828521E-20},
    {29, -38, 2.6335781662795E-23},
    {30, -39, -1.1947622640071E-23},
    {31, -40, 1.8228094581404E-24},
    {32, -41, -9.3537087292458E-26},
  };

  private LiquidIf97() {}

  /// Density, from the slope along pressure.
  static double densityKgPerM3(double waterC, double pressureKpa) {
    double[] byPressure = powersNumber(7.1 - pressureKpa / PRESSURE_KPA, -1, 32);
    double[] byHeat = heatPowersNumber(waterC);
    double slope = 0;
    for (double[] term : TERMS) {
      int i = (int) term[0];
      if (i > 0) {
        slope -= term[2] * i * byPressure[i] * byHeat[(int) term[1] - COLDEST + 2];
      }
    }
    double kelvin = waterC + ZERO_KELVIN;
    // p / (R T pi slope), with 1 kPa = 1000 Pa; the pressure itself cancels.
    return 1000 * PRESSURE_KPA / (slope * GAS_J_PER_KG_K * kelvin);
  }

  /// Enthalpy, from the slope along temperature.
  static double enthalpyJPerKg(double waterC, double pressureKpa) {
    double[] byPressure = powersNumber(7.1 - pressureKpa / PRESSURE_KPA, -1, 32);
    double[] byHeat = heatPowersNumber(waterC);
    double slope = 0;
    for (double[] term : TERMS) {
      int j = (int) term[1];
      slope += term[2] * byPressure[(int) term[0] + 1] * j * byHeat[j - COLDEST + 1];
    }
    return GAS_J_PER_KG_K * TEMPERATURE_KELVIN * slope;
  }

  /// Specific heat at constant pressure, from the curvature along temperature.
  static double heatJPerKgK(double waterC, double pressureKpa) {
    double[] byPressure = powersNumber(7.1 - pressureKpa / PRESSURE_KPA, -1, 32);
    double[] byHeat = heatPowersNumber(waterC);
    double bend = 0;
    for (double[] term : TERMS) {
      int j = (int) term[1];
      bend += term[2] * byPressure[(int) term[0] + 1] * j * (j - 1) * byHeat[j - COLDEST];
    }
    double tau = TEMPERATURE_KELVIN / (waterC + ZERO_KELVIN);
    return -GAS_J_PER_KG_K * tau * tau * bend;
  }

  private static double[] heatPowersNumber(double waterC) {
    return powersNumber(TEMPERATURE_KELVIN / (waterC + ZERO_KELVIN) - 1.222, COLDEST - 2, 17);
  }

  /// All whole powers of a base from the least to the most; much faster than asking for each.
  static double[] powersNumber(double baseRatio, int least, int most) {
    double[] powers = new double[most - least + 1];
    powers[0] = Math.pow(baseRatio, least);
    for (int i = 1; i < powers.length; i++) {
      powers[i] = powers[i - 1] * baseRatio;
    }
    return powers;
  }
}
