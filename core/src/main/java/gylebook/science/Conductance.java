package gylebook.science;

import gylebook.units.AnyUnit;

/// The electric conductance of a speciated liquor at 25 C, from the diffusion of its ions.
///
/// Every ion carries `lambda0 = |z| F^2 D/(R T)` per equivalent at infinite dilution. Its
/// neighbours slow it by two effects, after Debye and Onsager: the water that streams against it
/// with the cloud of opposite charge, and the cloud that lags behind,
///
/// `lambda = (lambda0 - B2 |z| sqrt(I)/(1 + k a)) (1 - B1 sqrt(I)/(1 + k a)^2)`
///
/// with `B2 = e^2 N k/(6 pi eta)`, `B1 = e^2 k z+ z- q/((1 + sqrt q) 12 pi eps k_B T)`, `k` the
/// reciprocal length of the cloud, `q` from the mobilities of both sides. The law is meant for one
/// salt; in a mixture the ions of one side count by their part in the ionic strength, as PHREEQC
/// does (Appelo 2017; the equations read in its source). No factor of our own: both of PHREEQC's
/// figures are met within 1 %. A meter of a kitchen is good to 2 %.
@AnyUnit("diffusion coefficients, molalities and a charge in one sum")
final class Conductance {
  private static final double FARADAY = 96485.33212;
  private static final double KELVIN_25 = 298.15;
  private static final double KG_PER_L = 0.99705;
  private static final double CM2_PER_M2 = 1e4;
  private static final double ELEMENTARY = 1.602176634e-19;
  private static final double BOLTZMANN = 1.380649e-23;
  private static final double AVOGADRO = 6.02214076e23;
  private static final double VACUUM = 8.8541878128e-12;

  /// Water at 25 C: relative permittivity and viscosity, and the cloud's reciprocal length for an
  /// ionic strength of 1.
  private static final double PERMITTIVITY = 78.38;

  private static final double VISCOSITY = 0.890e-3;
  private static final double PER_ANGSTROM = 0.3286;
  private static final double ANGSTROMS_PER_M = 1e10;

  /// Beside cations of two charges, anions come nearer by so many angstrom a charge.
  private static final double NEARER = 0.126;

  private static final double STOKES = ELEMENTARY * ELEMENTARY / (6 * Math.PI);
  private static final double COUNTERFLOW =
      STOKES * AVOGADRO / VISCOSITY * PER_ANGSTROM * ANGSTROMS_PER_M * CM2_PER_M2;
  private static final double RELAXATION =
      STOKES / (2 * VACUUM * PERMITTIVITY * BOLTZMANN * KELVIN_25) * PER_ANGSTROM * ANGSTROMS_PER_M;

  private Conductance() {}

  /// Microsiemens per cm.
  static double of(Speciation.Solution solution) {
    Side cations = side(solution, 1);
    Side anions = side(solution, -1);
    double root = Math.sqrt(solution.strength());
    double share = share(cations, anions);
    double lag =
        RELAXATION * cations.charge() * anions.charge() * share / (1 + Math.sqrt(share)) * root;
    double sum = 0;
    for (Species species : Species.values()) {
      int z = species.charge();
      if (z == 0) {
        continue;
      }
      Side own = z > 0 ? cations : anions;
      double size = size(species) + (z < 0 ? NEARER * z * (cations.charge() - 1) : 0);
      double cloud = 1 + PER_ANGSTROM * size * root;
      double free = Math.abs(z) * lambdaPerCharge(species);
      double slowed = free - COUNTERFLOW * Math.abs(z) * root / cloud;
      double lambda = Math.max(0, slowed * (1 - lag / (cloud * cloud)));
      sum += lambda * solution.of(species) * z * z / own.strength();
    }
    // mol/L times S cm2/mol is 1e-3 S/cm, or a thousand microsiemens per cm.
    return sum * (cations.equivalents() + anions.equivalents()) / 2 * KG_PER_L * 1000;
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

  /// All ions of one sign: their mean charge, mean conductance per equivalent, equivalents, and sum
  /// of `m z^2`.
  private record Side(double charge, double lambda, double equivalents, double strength) {}

  private static Side side(Speciation.Solution solution, int sign) {
    double ions = 0;
    double equivalents = 0;
    double strength = 0;
    double lambdas = 0;
    for (Species species : Species.values()) {
      int z = species.charge() * sign;
      if (z > 0) {
        ions += solution.of(species);
        equivalents += z * solution.of(species);
        strength += z * z * solution.of(species);
        lambdas += z * solution.of(species) * z * lambdaPerCharge(species);
      }
    }
    return ions > 0
        ? new Side(equivalents / ions, lambdas / equivalents, equivalents, strength)
        : new Side(1, 1, 0, 1);
  }

  /// Onsager's q; one half for a salt with ions of one charge.
  private static double share(Side cations, Side anions) {
    double charges = cations.charge() * anions.charge() / (cations.charge() + anions.charge());
    double crossed = cations.charge() * anions.lambda() + anions.charge() * cations.lambda();
    return charges * (cations.lambda() + anions.lambda()) / crossed;
  }
}
