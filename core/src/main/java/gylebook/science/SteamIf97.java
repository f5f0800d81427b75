package gylebook.science;

/// Steam by region 2 of the international steam formulation of 1997, as far as brewers need it.
///
/// The enthalpy is the slope along temperature of an ideal-gas part (table 10 of the release: power
/// of temperature, factor) and a rest (table 11: powers of pressure and temperature, factor).
final class SteamIf97 {
  private static final double ZERO_KELVIN = 273.15;
  private static final double TEMPERATURE_KELVIN = 540;
  private static final double PRESSURE_KPA = 1000;
  private static final double[][] IDEAL = {
    {0, -9.6927686500217},
    {1, 10.086655968018},
    {-5, -0.005608791128302},
    {-4, 0.071452738081455},
    {-3, -0.40710498223928},
    {-2, 1.4240819171444},
    {-1, -4.383951131945},
    {2, -0.28408632460772},
    {3, 0.021268463753307},
  };
  private static final double[][] REST = {
    {1, 0, -0.0017731742473213},
    {1, 1, -0.017834862292358},
    {1, 2, -0.045996013696365},
    {1, 3, -0.057581259083432},
    {1, 6, -0.05032527872793},
    {2, 1, -3.3032641670203E-5},
    {2, 2, -1.8948987516315E-4},
    {2, 4, -0.0039392777243355},
    {2, 7, -0.043797295650573},
    {2, 36, -2.6674547914087E-5},
    {3, 0, 2.0481737692309E-8},
    {3, 1, 4.3870667284435E-7},
    {3, 3, -3.227767723857E-5},
    {3, 6, -0.0015033924542148},
    {3, 35, -0.040668253562649},
    {4, 1, -7.8847309559367E-10},
    {4, 2, 1.2790717852285E-8},
    {4, 3, 4.8225372718507E-7},
    {5, 7, 2.2922076337661E-6},
    {6, 3, -1.6714766451061E-11},
    {6, 16, -0.0021171472321355},
    {6, 35, -23.895741934104},
    {7, 0, -5.905956432427E-18},
    {7, 11, -1.2621808899101E-6},
    {7, 25, -0.038946842435739},
    {8, 8, 1.1256211360459E-11},
    {8, 36, -8.2311340897998},
    {9, 13, 1.9809712802088E-8},
    {10, 4, 1.0406965210174E-19},
    {10, 10, -1.0234747095929E-13},
    {10, 14, -1.0018179379511E-9},
    {16, 29, -8.0882908646985E-11},
    {16, 50, 0.10693031879409},
    {18, 57, -0.33662250574171},
    {20, 20, 8.9185845355421E-25},
    {20, 35, 3.0629316876232E-13},
    {20, 48, -4.2002467698208E-6},
    {21, 21, -5.9056029685639E-26},
    {22, 53, 3.7826947613457E-6},
    {23, 39, -1.2768608934681E-15},
    {24, 26, 7.3087610595061E-29},
    {24, 40, 5.5414715350778E-17},
    {24, 58, -9.436970724121E-7},
  };

  private SteamIf97() {}

  /// Enthalpy of steam that is saturated or hotter.
  static double enthalpyJPerKg(double steamC, double pressureKpa) {
    double tau = TEMPERATURE_KELVIN / (steamC + ZERO_KELVIN);
    double[] byIdeal = LiquidIf97.powersNumber(tau, -6, 2);
    double[] byHeat = LiquidIf97.powersNumber(tau - 0.5, -1, 57);
    double[] byPressure = LiquidIf97.powersNumber(pressureKpa / PRESSURE_KPA, 0, 24);
    double slope = 0;
    for (double[] term : IDEAL) {
      int j = (int) term[0];
      slope += term[1] * j * byIdeal[j + 5];
    }
    for (double[] term : REST) {
      int j = (int) term[1];
      slope += term[2] * byPressure[(int) term[0]] * j * byHeat[j];
    }
    return LiquidIf97.GAS_J_PER_KG_K * TEMPERATURE_KELVIN * slope;
  }
}
