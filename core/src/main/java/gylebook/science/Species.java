package gylebook.science;

import static gylebook.science.Equilibrium.at25;

import gylebook.units.AnyUnit;
import org.jspecify.annotations.Nullable;

/// What a brewing liquor is made of, each species formed from hydrogen ion, one cation and one
/// anion.
///
/// Ion sizes, slopes, constants and diffusion coefficients from phreeqc.dat (2025). The pair of
/// calcium with HSO4, the second sulfates of sodium and magnesium, carbon dioxide in pairs,
/// potassium, iron and silica are left out: nothing of them shows at the strength of a brewing
/// liquor.
@AnyUnit("rows of a table: ion sizes in angstrom, logarithms, 1e-9 m2/s")
enum Species {
  H(null, null, 1, 9, 0, 9.31, Equilibrium.NONE),
  OH(null, null, -1, 3.5, 0, 5.27, Equilibrium.WATER),
  CA(Master.CALCIUM, null, 0, 5, 0.165, 0.792, Equilibrium.NONE),
  MG(Master.MAGNESIUM, null, 0, 5.5, 0.2, 0.705, Equilibrium.NONE),
  NA(Master.SODIUM, null, 0, 4.08, 0.082, 1.33, Equilibrium.NONE),
  CL(null, Master.CHLORIDE, 0, 3.63, 0.017, 2.033, Equilibrium.NONE),
  SO4(null, Master.SULFATE, 0, 5, -0.04, 1.07, Equilibrium.NONE),
  HSO4(null, Master.SULFATE, 1, 0, 0, 1.22, Equilibrium.HYDROGEN_SULFATE),
  CO3(null, Master.CARBON, 0, 5.4, 0, 0.955, Equilibrium.NONE),
  HCO3(null, Master.CARBON, 1, 5.4, 0.0078, 1.18, Equilibrium.BICARBONATE),
  CO2(null, Master.CARBON, 2, 0, 0.066, 0, Equilibrium.CARBON_DIOXIDE),
  CAOH(Master.CALCIUM, null, -1, 0, 0, 0, at25(-12.78, 0)),
  CACO3(Master.CALCIUM, Master.CARBON, 0, 0, 0.1, 0, Equilibrium.CALCIUM_CARBONATE),
  CAHCO3(Master.CALCIUM, Master.CARBON, 1, 6, 0, 0.506, Equilibrium.CALCIUM_BICARBONATE),
  CASO4(Master.CALCIUM, Master.SULFATE, 0, 0, 0.0445, 0, Equilibrium.CALCIUM_SULFATE),
  MGOH(Master.MAGNESIUM, null, -1, 6.5, 0, 0, at25(-11.44, 15.952)),
  MGCO3(Master.MAGNESIUM, Master.CARBON, 0, 0, 0.1, 0, Equilibrium.MAGNESIUM_CARBONATE),
  MGHCO3(Master.MAGNESIUM, Master.CARBON, 1, 4, 0, 0.478, Equilibrium.MAGNESIUM_BICARBONATE),
  MGSO4(Master.MAGNESIUM, Master.SULFATE, 0, 0, 0.2, 0, Equilibrium.MAGNESIUM_SULFATE),
  NAHCO3(Master.SODIUM, Master.CARBON, 1, 0, 0.151, 0, Equilibrium.SODIUM_BICARBONATE),
  NASO4(Master.SODIUM, Master.SULFATE, 0, 3.5, 0.1072, 0.509, Equilibrium.SODIUM_SULFATE),
  PO4(null, Master.PHOSPHATE, 0, 4, 0, 0.612, Equilibrium.NONE),
  HPO4(null, Master.PHOSPHATE, 1, 5, 0, 0.69, at25(12.346, -3.53)),
  H2PO4(null, Master.PHOSPHATE, 2, 5.4, 0, 0.846, at25(19.553, -4.52)),
  H3PO4(null, Master.PHOSPHATE, 3, 0, 0.1, 0, at25(21.721, -10.1 / 4.184)),
  NAHPO4(Master.SODIUM, Master.PHOSPHATE, 1, 5.4, 0, 0, at25(12.346 + 0.29, -3.53)),
  CAPO4(Master.CALCIUM, Master.PHOSPHATE, 0, 5.4, 0, 0, at25(6.459, 3.1)),
  CAHPO4(Master.CALCIUM, Master.PHOSPHATE, 1, 0, 0.1, 0, at25(12.346 + 2.739, -3.53 + 3.3)),
  CAH2PO4(Master.CALCIUM, Master.PHOSPHATE, 2, 5.4, 0, 0, at25(19.553 + 1.408, -4.52 + 3.4)),
  MGPO4(Master.MAGNESIUM, Master.PHOSPHATE, 0, 5.4, 0, 0, at25(6.589, 3.1)),
  MGHPO4(Master.MAGNESIUM, Master.PHOSPHATE, 1, 0, 0.1, 0, at25(12.346 + 2.87, -0.23)),
  MGH2PO4(Master.MAGNESIUM, Master.PHOSPHATE, 2, 5.4, 0, 0, at25(19.553 + 1.513, -1.12)),
  LACTATE(null, Master.LACTATE, 0, 4, 0, 1.03, Equilibrium.NONE),
  LACTIC(null, Master.LACTATE, 1, 0, 0.1, 0, Equilibrium.LACTIC);

  /// The components a total is known of.
  enum Master {
    CALCIUM(2),
    MAGNESIUM(2),
    SODIUM(1),
    CHLORIDE(-1),
    SULFATE(-2),
    CARBON(-2),
    PHOSPHATE(-3),
    LACTATE(-1);

    private final int charge;

    Master(int charge) {
      this.charge = charge;
    }
  }

  private final @Nullable Master cation;
  private final @Nullable Master anion;
  private final int hydrogen;
  private final int charge;
  private final double size;
  private final double slope;
  private final double diffusion;

  // A record of doubles: it cannot change, but the checker does not look inside.
  @SuppressWarnings("ImmutableEnumChecker")
  private final Equilibrium formation;

  Species(
      @Nullable Master cation,
      @Nullable Master anion,
      int hydrogen,
      double size,
      double slope,
      double diffusion,
      Equilibrium formation) {
    this.cation = cation;
    this.anion = anion;
    this.hydrogen = hydrogen;
    this.charge = chargeOf(cation) + chargeOf(anion) + hydrogen;
    this.size = size;
    this.slope = slope;
    this.diffusion = diffusion;
    this.formation = formation;
  }

  private static int chargeOf(@Nullable Master master) {
    return master == null ? 0 : master.charge;
  }

  boolean holds(Master master) {
    return cation == master || anion == master;
  }

  @Nullable Master cation() {
    return cation;
  }

  @Nullable Master anion() {
    return anion;
  }

  int hydrogen() {
    return hydrogen;
  }

  int charge() {
    return charge;
  }

  double size() {
    return size;
  }

  double slope() {
    return slope;
  }

  double diffusion() {
    return diffusion;
  }

  double log(double waterC) {
    return formation.log(waterC);
  }

  /// Equivalents of acid a mole takes up on the way to dissolved carbon dioxide and H2PO4.
  int alkalinity() {
    int base = anion == Master.CARBON || anion == Master.PHOSPHATE ? 2 : 0;
    return base - hydrogen;
  }
}
