package gylebook.science;

import gylebook.units.AnyUnit;

/// The electric conductance of a speciated liquor at 25 C, from the diffusion of its ions.
///
/// Every ion carries `lambda0 = |z| F^2 D/(R T)` per equivalent at infinite dilution. Its
/// neighbours slow it by two effects, after Onsager and Falkenhagen: the cloud of opposite charge
/// it drags along and the water that streams against it,
///
/// `lambda = lambda0 - (0.785 |z| z' q/(1 + sqrt q) lambda0 + 30.2 |z|) sqrt(I)/(1 + B a sqrt(I))`
///
/// in S cm2/mol for water at 25 C, `z'` the mean charge of the opposite ions, `q` from the
/// mobilities of both sides. The law is meant for one salt; in mixtures it slows too much. **Our
/// own factor** of 1.036 is the mean by which PHREEQC's two figures exceed it (5.6 % in a
/// bicarbonate water, 1.6 % in gypsum and calcium chloride): believe the result to 2-3 %.
@AnyUnit("diffusion coefficients, molalities and a charge in one sum")
final class Conductance {
  private static final double FARADAY = 96485.33212;
  private static final double KELVIN_25 = 298.15;
  private static final double KG_PER_L = 0.99705;
  private static final double CM2_PER_M2 = 1e4;
  private static final double RELAXATION = 0.785;
  private static final double COUNTERFLOW = 30.2;
  private static final double PER_ANGSTROM = 0.3286;
  private static final double CALIBRATION = 1.036;

  private Conductance() {}

  /// Microsiemens per cm.
  static double of(Speciation.Solution solution) {
    double root = Math.sqrt(solution.strength());
    Side cations = side(solution, 1);
    Side anions = side(solution, -1);
    double share = share(cations, anions);
    double drag = RELAXATION * share / (1 + Math.sqrt(share));
    double sum = 0;
    for (Species species : Species.values()) {
      int z = Math.abs(species.charge());
      if (z == 0) {
        continue;
      }
      double lambda = z * lambdaPerCharge(species);
      double other = (species.charge() > 0 ? anions : cations).charge();
      double crowd = root / (1 + PER_ANGSTROM * size(species) * root);
      lambda -= (drag * z * other * lambda + COUNTERFLOW * z) * crowd;
      // mol/L times S cm2/mol is 1e-3 S/cm, or a thousand microsiemens per cm.
      sum += z * solution.of(species) * KG_PER_L * Math.max(lambda, 0) * 1000;
    }
    return sum * CALIBRATION;
  }

  private static double lambdaPerCharge(Species species) {
    double diffusion = species.diffusion() * 1e-9 * CM2_PER_M2;
    return diffusion * FARADAY * FARADAY / (Arrhenius.GAS_J_PER_MOL_K * KELVIN_25);
  }

  /// Sizes of the conducting ions in angstrom, from phreeqc.dat; 4 where none is given.
  private static double size(Species species) {
    return switch (species) {
      case H -> 6.96;
      case NA -> 3.627;
      case MG -> 5.543;
      case CA -> 5.411;
      case CL -> 3.16;
      case CO3 -> 1.992;
      case HCO3 -> 6;
      case SO4 -> 15.1;
      default -> 4;
    };
  }

  /// All ions of one sign: their mean charge and mean conductance per equivalent.
  private record Side(double charge, double lambda) {}

  private static Side side(Speciation.Solution solution, int sign) {
    double ions = 0;
    double equivalents = 0;
    double lambdas = 0;
    for (Species species : Species.values()) {
      int z = species.charge() * sign;
      if (z > 0) {
        ions += solution.of(species);
        equivalents += z * solution.of(species);
        lambdas += z * solution.of(species) * z * lambdaPerCharge(species);
      }
    }
    return ions > 0 ? new Side(equivalents / ions, lambdas / equivalents) : new Side(1, 1);
  }

  /// Onsager's q; one half for a salt with ions of one charge.
  private static double share(Side cations, Side anions) {
    double charges = cations.charge() * anions.charge() / (cations.charge() + anions.charge());
    double crossed = cations.charge() * anions.lambda() + anions.charge() * cations.lambda();
    return charges * (cations.lambda() + anions.lambda()) / crossed;
  }
}
