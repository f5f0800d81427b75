package gylebook.science;

import gylebook.units.AnyUnit;

/// How the charge of ions around it lowers the activity of an ion in dilute water.
///
/// `log10 gamma = -A z^2 sqrt(I)/(1 + B a sqrt(I)) + b I` with an ion size and a slope of its own
/// (WATEQ form); where a species has none, Davies' `-A z^2 (sqrt(I)/(1 + sqrt(I)) - 0.3 I)`;
/// neutral species `b I`, b = 0.1 unless known. Good to about I = 0.5 mol/kg; brewing liquor has
/// 0.01.
@AnyUnit("coefficients of the activity law: roots of kg per mol, inverse lengths, logarithms")
final class DebyeHuckel {
  private final double a;
  private final double b;

  DebyeHuckel(double waterC) {
    double t = Arrhenius.absoluteKelvin(waterC);
    double density = WaterDensity.waterKgPerL(waterC);
    double product = dielectric(t) * t;
    a = 1.82483e6 * Math.sqrt(density) / Math.pow(product, 1.5);
    b = 50.2916 * Math.sqrt(density / product);
  }

  /// Dielectric constant of water at 1 bar, Bradley & Pitzer 1979.
  static double dielectric(double t) {
    double atKbar = 342.79 * Math.exp(t * (-5.0866e-3 + 9.469e-7 * t));
    double c = -2.0525 + 3115.9 / (t - 182.89);
    double shift = -8032.5 + 4.2142e6 / t + 2.1417 * t;
    return atKbar + c * Math.log((shift + 1) / (shift + 1000));
  }

  /// Logarithm to ten of the activity coefficient.
  double logGamma(Species species, double strength) {
    double root = Math.sqrt(strength);
    int z2 = species.charge() * species.charge();
    if (z2 == 0) {
      return species.slope() * strength;
    }
    if (species.size() == 0) {
      return -a * z2 * (root / (1 + root) - 0.3 * strength);
    }
    return -a * z2 * root / (1 + b * species.size() * root) + species.slope() * strength;
  }
}
