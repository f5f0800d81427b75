package gylebook.science;

import gylebook.units.AnyUnit;

/// The electric conductance of a speciated liquor at 25 C, from the diffusion of its ions.
@AnyUnit("diffusion coefficients, molalities and a charge in one sum")
final class Conductance {
  private static final double FARADAY = 96485.33212;
  private static final double KELVIN_25 = 298.15;
  private static final double KG_PER_M3 = 997.05;
  private static final double US_PER_CM_IN_SIEMENS_PER_M = 1e4;

  private Conductance() {}

  /// `sum F^2/(R T) D z^2 m gamma^(0.6/sqrt|z|)`, in microsiemens per cm (Appelo 2010).
  static double of(Speciation.Solution solution) {
    double sum = 0;
    for (Species species : Species.values()) {
      int z = Math.abs(species.charge());
      if (z == 0) {
        continue;
      }
      double gamma = solution.gammas().getOrDefault(species, 1.0);
      double strength = solution.strength();
      double power = strength < 0.36 * z ? 0.6 / Math.sqrt(z) : Math.sqrt(strength) / z;
      sum +=
          species.diffusion() * 1e-9 * z * z * solution.of(species) * Math.pow(gamma, power);
    }
    double perM = sum * KG_PER_M3 * FARADAY * FARADAY / (Arrhenius.GAS_J_PER_MOL_K * KELVIN_25);
    return perM * US_PER_CM_IN_SIEMENS_PER_M;
  }
}
