package gylebook.science;

import gylebook.units.AnyUnit;

/// An equilibrium constant over temperature: `log10 K = a1 + a2 T + a3/T + a4 log10 T + a5/T^2 + a6
/// T^2`, T absolute.
///
/// Figures from phreeqc.dat of the U.S. Geological Survey as of 2025; most were fitted from 0 to 90
/// C or more. Older editions bind sulfate otherwise: calcium by 2.25 for 2.14, magnesium by 2.37
/// for 2.42.
@AnyUnit("coefficients of a logarithm over powers of the temperature")
record Equilibrium(double a1, double a2, double a3, double a4, double a5, double a6) {
  private static final double REFERENCE = 298.15;
  private static final double PER_DECADE = Math.log(10) * Arrhenius.GAS_J_PER_MOL_K;
  private static final double KCAL = 4184;

  static final Equilibrium WATER =
      new Equilibrium(293.29227, 0.1360833, -10576.913, -123.73158, 0, -6.996455e-5);
  static final Equilibrium BICARBONATE =
      new Equilibrium(107.8871, 0.03252849, -5151.79, -38.92561, 563713.9, 0);
  static final Equilibrium CARBON_DIOXIDE =
      new Equilibrium(464.1965, 0.09344813, -26986.16, -165.75951, 2248628.9, 0);
  static final Equilibrium CARBON_DIOXIDE_GAS =
      new Equilibrium(10.5624, -2.3547e-2, -3972.8, 0, 5.8746e5, 1.9194e-5);
  static final Equilibrium CALCITE = new Equilibrium(-67.87, -5.1813e-2, 0, 30.25746, 0, 0);
  static final Equilibrium GYPSUM = new Equilibrium(72.244, -1.474e-2, -4040, -23.7823, 0, 0);
  static final Equilibrium HYDROGEN_SULFATE =
      new Equilibrium(-56.889, 0.006473, 2307.9, 19.8858, 0, 0);
  static final Equilibrium CALCIUM_CARBONATE =
      new Equilibrium(-1228.732, -0.29944, 35512.75, 485.818, 0, 0);
  static final Equilibrium CALCIUM_BICARBONATE =
      new Equilibrium(56.273, -4.1779e-2, -11194, 0, 0, 0);
  static final Equilibrium MAGNESIUM_CARBONATE = new Equilibrium(0.991, 0.00667, 0, 0, 0, 0);
  static final Equilibrium MAGNESIUM_BICARBONATE =
      new Equilibrium(48.6721, 0.03252849, -2614.335, -18.00263, 563713.9, 0);
  static final Equilibrium MAGNESIUM_SULFATE = new Equilibrium(0, 9.64e-3, -136, 0, 0, 0);
  static final Equilibrium CALCIUM_SULFATE = new Equilibrium(1.478, 8.29e-3, -538.2, 0, 0, 0);
  static final Equilibrium SODIUM_SULFATE = new Equilibrium(-0.304, 4.51e-3, -28.9, 0, 0, 0);

  /// The pair of sodium with bicarbonate, written from carbonate.
  static final Equilibrium SODIUM_BICARBONATE =
      new Equilibrium(
          107.8871 - 3.589, 0.03252849 + 7.94e-3, -5151.79 + 273, -38.92561, 563713.9, 0);

  static final Equilibrium LACTIC = at25(3.8629, 0);

  /// `Ca5(PO4)3OH + 4 H = 5 Ca + 3 HPO4 + H2O`.
  static final Equilibrium HYDROXYAPATITE = at25(-3.421, -36.155);

  /// A constant known at 25 C with its heat of reaction in kcal/mol.
  static Equilibrium at25(double log, double kcal) {
    double slope = kcal * KCAL / PER_DECADE;
    return new Equilibrium(log + slope / REFERENCE, 0, -slope, 0, 0, 0);
  }

  static final Equilibrium NONE = new Equilibrium(0, 0, 0, 0, 0, 0);

  double log(double waterC) {
    Require.within("water temperature in C", waterC, 0, 100);
    double t = Arrhenius.absoluteKelvin(waterC);
    return a1 + a2 * t + a3 / t + a4 * Math.log10(t) + a5 / (t * t) + a6 * t * t;
  }
}
