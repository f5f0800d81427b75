package gylebook.science;

/// How a rate grows with temperature, and the constants that every such law shares.
final class Arrhenius {
  /// Molar gas constant, exact since the SI of 2019.
  static final double GAS_J_PER_MOL_K = 8.314462618;

  private static final double ICE_POINT_KELVIN = 273.15;

  private Arrhenius() {}

  /// The absolute temperature, `T = t + 273.15`.
  static double absoluteKelvin(double celsiusC) {
    return celsiusC + ICE_POINT_KELVIN;
  }

  /// How many times faster at one temperature than at another, `exp(E/R (1/T0 - 1/T))`.
  static double speedRatio(double actualC, double referenceC, double activationJPerMol) {
    double t = absoluteKelvin(actualC);
    double t0 = absoluteKelvin(referenceC);
    return Math.exp(activationJPerMol / GAS_J_PER_MOL_K * (1 / t0 - 1 / t));
  }

  /// A rate from its two constants, `A exp(-E/(R T))`.
  static double ratePerSec(double factorPerSec, double activationJPerMol, double actualC) {
    double t = absoluteKelvin(actualC);
    return factorPerSec * Math.exp(-activationJPerMol / (GAS_J_PER_MOL_K * t));
  }
}
