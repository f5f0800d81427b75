package gylebook.science;

import gylebook.science.Species.Master;
import gylebook.units.AnyUnit;
import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/// What is dissolved how in a liquor of known totals: free ions, pairs, pH.
///
/// Mass action for every species, a mass balance for every component, activities by {@link
/// DebyeHuckel}, and the charge balance gives the pH. All in mol per kg of water. The activity of
/// water is taken as 1.
@AnyUnit("molalities, their logarithms and activities of one table of species")
// Rows of the arrays are the species in their order; nothing outside this class sees the index.
@SuppressWarnings("EnumOrdinal")
final class Speciation {
  private static final double LEAST_PRODUCT = 1e-30;
  private static final int ROUND_COUNT = 3000;

  /// Rounds after which strong pairs are taken to swing, and the steps are halved.
  private static final int SWINGING_COUNT = 60;

  private static final double CLOSE = 1e-13;

  /// A liquor in equilibrium.
  record Solution(
      double ph,
      double strength,
      double charge,
      double alkalinity,
      double calciteIndex,
      double gypsumIndex,
      double apatiteIndex,
      Map<Species, Double> molalities,
      Map<Species, Double> gammas) {
    double of(Species species) {
      return molalities.getOrDefault(species, 0.0);
    }

    double total(Master master) {
      return molalities.entrySet().stream()
          .filter(entry -> entry.getKey().holds(master))
          .mapToDouble(Map.Entry::getValue)
          .sum();
    }
  }

  private final double waterC;
  private final DebyeHuckel activity;
  private final double[] logs = new double[Species.values().length];

  Speciation(double waterC) {
    this.waterC = waterC;
    this.activity = new DebyeHuckel(waterC);
    for (Species species : Species.values()) {
      logs[species.ordinal()] = species.log(waterC);
    }
  }

  /// The pH at which the charges of a closed liquor balance.
  Solution closed(Map<Master, Double> totals) {
    return balanced(ph -> at(ph, totals, Double.NaN));
  }

  /// The same with carbon dioxide of a partial pressure in the air, carbon free to come and go.
  Solution open(Map<Master, Double> totals, double pressureAtm) {
    double dissolved = pressureAtm * Math.pow(10, Equilibrium.CARBON_DIOXIDE_GAS.log(waterC));
    return balanced(ph -> at(ph, totals, dissolved));
  }

  /// Open to the air with calcite that has fallen out until nothing more does.
  Solution limed(Map<Master, Double> totals, double pressureAtm) {
    Solution before = open(totals, pressureAtm);
    if (before.calciteIndex() <= 0) {
      return before;
    }
    double calcium = totals.getOrDefault(Master.CALCIUM, 0.0);
    double fallen =
        new BracketingNthOrderBrentSolver(1e-12, 1e-12, 5)
            .solve(
                200,
                x -> open(without(totals, x), pressureAtm).calciteIndex(),
                0,
                calcium * (1 - 1e-9));
    return open(without(totals, fallen), pressureAtm);
  }

  private static Map<Master, Double> without(Map<Master, Double> totals, double calcium) {
    Map<Master, Double> less = new EnumMap<>(totals);
    less.merge(Master.CALCIUM, -calcium, Double::sum);
    return less;
  }

  private interface Trial {
    Solution at(double ph);
  }

  private static Solution balanced(Trial trial) {
    double ph =
        new BracketingNthOrderBrentSolver(1e-12, 1e-10, 5)
            .solve(200, x -> trial.at(x).charge(), 0.5, 13.5);
    return trial.at(ph);
  }

  /// The liquor at a given pH, its charges not yet balanced.
  ///
  /// @param dissolved activity of dissolved carbon dioxide when the air sets it, else NaN
  Solution at(double ph, Map<Master, Double> totals, double dissolved) {
    double[] free = new double[Master.values().length];
    totals.forEach((master, total) -> free[master.ordinal()] = Math.max(total, 0));
    if (!Double.isNaN(dissolved)) {
      // Any first guess: it is scaled to the air below.
      free[Master.CARBON.ordinal()] = 1e-6;
    }
    double[] gammas = new double[Species.values().length];
    double[] molalities = new double[Species.values().length];
    double strength = 0.005;
    for (int round = 0; round < ROUND_COUNT; round++) {
      double last = strength;
      react(ph, free, strength, gammas, molalities);
      double power = round < SWINGING_COUNT ? 1 : 0.5;
      double worst = rescale(totals, dissolved, power, free, gammas, molalities);
      strength = strength(molalities);
      if (worst < CLOSE && Math.abs(strength - last) < CLOSE) {
        break;
      }
    }
    return told(ph, strength, gammas, molalities);
  }

  private void react(
      double ph, double[] free, double strength, double[] gammas, double[] molalities) {
    for (Species species : Species.values()) {
      gammas[species.ordinal()] = Math.pow(10, activity.logGamma(species, strength));
    }
    for (Species species : Species.values()) {
      int i = species.ordinal();
      double log = logs[i] - ph * species.hydrogen();
      double product = Math.pow(10, log);
      product *= activityOf(species.cation(), free, gammas);
      product *= activityOf(species.anion(), free, gammas);
      molalities[i] = product / gammas[i];
    }
  }

  private static double activityOf(@Nullable Master master, double[] free, double[] gammas) {
    return master == null ? 1 : free[master.ordinal()] * gammas[ion(master).ordinal()];
  }

  private static Species ion(Master master) {
    return switch (master) {
      case CALCIUM -> Species.CA;
      case MAGNESIUM -> Species.MG;
      case SODIUM -> Species.NA;
      case CHLORIDE -> Species.CL;
      case SULFATE -> Species.SO4;
      case CARBON -> Species.CO3;
      case PHOSPHATE -> Species.PO4;
      case LACTATE -> Species.LACTATE;
    };
  }

  /// Scales every free ion so that its total would come right; how far the worst one was off.
  private static double rescale(
      Map<Master, Double> totals,
      double dissolved,
      double power,
      double[] free,
      double[] gammas,
      double[] molalities) {
    double worst = 0;
    for (Master master : Master.values()) {
      boolean aired = master == Master.CARBON && !Double.isNaN(dissolved);
      double want =
          aired ? dissolved / gammas[Species.CO2.ordinal()] : totals.getOrDefault(master, 0.0);
      double have = aired ? molalities[Species.CO2.ordinal()] : sum(master, molalities);
      if (!(want > 0) || !(have > 0)) {
        free[master.ordinal()] = 0;
        continue;
      }
      worst = Math.max(worst, Math.abs(want / have - 1));
      free[master.ordinal()] *= power == 1 ? want / have : Math.pow(want / have, power);
    }
    return worst;
  }

  private static double sum(Master master, double[] molalities) {
    double sum = 0;
    for (Species species : Species.values()) {
      if (species.holds(master)) {
        sum += molalities[species.ordinal()];
      }
    }
    return sum;
  }

  private static double strength(double[] molalities) {
    double sum = 0;
    for (Species species : Species.values()) {
      sum += 0.5 * molalities[species.ordinal()] * species.charge() * species.charge();
    }
    // A trial pH far from the answer may ask for more ions than water can hold.
    return Math.min(sum, 2);
  }

  private Solution told(double ph, double strength, double[] gammas, double[] molalities) {
    double charge = 0;
    double alkalinity = 0;
    Map<Species, Double> amounts = new EnumMap<>(Species.class);
    Map<Species, Double> coefficients = new EnumMap<>(Species.class);
    for (Species species : Species.values()) {
      double molality = molalities[species.ordinal()];
      charge += molality * species.charge();
      alkalinity += molality * species.alkalinity();
      amounts.put(species, molality);
      coefficients.put(species, gammas[species.ordinal()]);
    }
    double calcium = molalities[Species.CA.ordinal()] * gammas[Species.CA.ordinal()];
    double carbonate = molalities[Species.CO3.ordinal()] * gammas[Species.CO3.ordinal()];
    double sulfate = molalities[Species.SO4.ordinal()] * gammas[Species.SO4.ordinal()];
    return new Solution(
        ph,
        strength,
        charge,
        alkalinity,
        index(calcium * carbonate, Equilibrium.CALCITE),
        index(calcium * sulfate, Equilibrium.GYPSUM),
        apatiteIndex(ph, calcium, gammas, molalities),
        amounts,
        coefficients);
  }

  /// Logarithm of how often a mineral is oversaturated; its water of crystallisation counts as 1.
  private double index(double product, Equilibrium mineral) {
    // Water without any calcium has an index too: far below what could fall out.
    return Math.log10(Math.max(LEAST_PRODUCT, product)) - mineral.log(waterC);
  }

  /// The same for hydroxyapatite, whose product holds five calcium, three HPO4 and four acid.
  private double apatiteIndex(double ph, double calcium, double[] gammas, double[] molalities) {
    int at = Species.HPO4.ordinal();
    double phosphate = Math.max(LEAST_PRODUCT, molalities[at] * gammas[at]);
    return 5 * Math.log10(Math.max(LEAST_PRODUCT, calcium))
        + 3 * Math.log10(phosphate)
        + 4 * ph
        - Equilibrium.HYDROXYAPATITE.log(waterC);
  }
}
