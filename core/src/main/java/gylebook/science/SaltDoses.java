package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Salts from what is in the house for wanted ions in a liquor.
///
/// [LiquorDoses] does the solving, the same as for the liquor of a plan; here the pH of the mash is
/// left out of the wish, and salts and ions are read from texts.
@AnyUnit("columns of ions, in the order of their names, and of doses")
public final class SaltDoses {
  private static final List<String> IONS = List.of("Ca", "Mg", "Na", "Cl", "SO4", "HCO3");
  private static final List<Salt> SALTS =
      List.of(
          Salt.GYPSUM,
          Salt.CALCIUM_CHLORIDE_DIHYDRATE,
          Salt.EPSOM,
          Salt.MAGNESIUM_CHLORIDE,
          Salt.TABLE_SALT,
          Salt.SODA);
  private static final List<String> NAMES =
      List.of(
          "gypsum",
          "calcium chloride",
          "epsom salt",
          "magnesium chloride",
          "table salt",
          "baking soda");
  // Reading a formula is dear and a dose is a straight line: a gram of each, once.
  private static final List<double[]> OF_A_GRAM =
      SALTS.stream().map(salt -> ionsMgPerL(salt.ionsOf(1))).toList();
  private static final Pattern ION = Pattern.compile("([A-Za-z]+\\d?)\\s*[=:]?\\s*([0-9.,]+)");

  private static final double FINEST = 1e6;
  private static final double MOST_MG_PER_L = 3000;

  private SaltDoses() {}

  /// What to weigh, and what the liquor then holds.
  ///
  /// @param calciumChlorideG as flakes, CaCl2.2H2O
  /// @param missedMgPerL how far the ion that is furthest off lies from what was wanted
  public record Doses(
      double gypsumG,
      double calciumChlorideG,
      double epsomG,
      double magnesiumChlorideG,
      double tableSaltG,
      double sodaG,
      double calciumMgPerL,
      double magnesiumMgPerL,
      double sodiumMgPerL,
      double chlorideMgPerL,
      double sulfateMgPerL,
      double bicarbonateMgPerL,
      double missedMgPerL) {}

  /// The doses that come nearest to wanted ions.
  ///
  /// `min sum ((water_i + sum_j a_ij x_j/V - wanted_i)/scale_i)^2`, x a whole number of steps, none
  /// below 0; scale 10 mg/L for a wanted ion, 300 for one that is not named
  ///
  /// - Valid: salts that dissolve: to 3000 mg/L of an ion. An ion not named in the wish stays near
  ///   what the water has, and under where brewing liquors usually end. A salt that brings the
  ///   whole nearer by less than two mg/L of one ion is left out. Chalk and lime are left out: they
  ///   deliver less than they hold.
  ///
  /// @param water ions in mg/L, as `Ca 50 Mg 10 HCO3 100`; one not named is 0
  /// @param wanted the same for what is wanted
  /// @param house salts by name, as `gypsum, calcium chloride, epsom salt`
  @Source(key = "iupac-weights", at = "abridged table", trust = Trust.COMPUTED)
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  @Reckoned(
      name = "salts-for-liquor",
      says = "Which salts of those in the house bring a liquor to wanted ions?",
      equation =
          "min sum ((water + sum a x/V - wanted)/scale)^2, x in steps of the scale, none below 0",
      range = "dissolving salts, to 3000 mg/L of an ion; the pH of the mash is not in here")
  public static Doses doses(
      double liquorL, String water, String wanted, String house, @Usually(0.1) double stepG) {
    Require.within("liquor in L", liquorL, 0.1, 100_000);
    Require.within("step of the scale in g", stepG, 1e-4, 1000);
    double[] waterMgPerL =
        Arrays.stream(namedMgPerL(water)).map(held -> Double.isNaN(held) ? 0 : held).toArray();
    double[] wantedMgPerL = namedMgPerL(wanted);
    List<Integer> salts = salts(house);
    double[] counts =
        LiquorDoses.stepCounts(
            levels(wantedMgPerL),
            salts.size(),
            steps -> levels(heldMgPerL(waterMgPerL, salts, times(steps, stepG / liquorL))));
    double[] held = heldMgPerL(waterMgPerL, salts, times(counts, stepG / liquorL));
    double[] doseG = new double[SALTS.size()];
    for (int j = 0; j < counts.length; j++) {
      // Steps of a tenth do not add up exactly; nobody weighs the rest.
      doseG[salts.get(j)] = Math.rint(counts[j] * stepG * FINEST) / FINEST;
    }
    return told(doseG, held, missedMgPerL(held, wantedMgPerL));
  }

  private static double[] times(double[] counts, double per) {
    return Arrays.stream(counts).map(count -> count * per).toArray();
  }

  /// Ions of a text, NaN for those not in it.
  private static double[] namedMgPerL(String text) {
    double[] found = new double[IONS.size()];
    Arrays.fill(found, Double.NaN);
    Matcher ion = ION.matcher(text);
    int named = 0;
    while (ion.find()) {
      int at = IONS.indexOf(ion.group(1));
      if (at < 0) {
        throw new IllegalArgumentException(
            "'" + ion.group(1) + "' is no ion here; write them as Ca 50 Mg 10 Na 5 Cl 40 SO4 80.");
      }
      found[at] = Require.within(ion.group(1) + " in mg/L", number(ion.group(2)), 0, MOST_MG_PER_L);
      named++;
    }
    if (named == 0) {
      throw new IllegalArgumentException(
          "'" + text + "' names no ion; write them as Ca 50 Mg 10 Na 5 Cl 40 SO4 80.");
    }
    return found;
  }

  private static double number(String text) {
    return Require.number(text, "ions as Ca 50 Mg 10");
  }

  private static List<Integer> salts(String house) {
    List<Integer> found = new ArrayList<>();
    for (String part : house.split("[,;]", -1)) {
      String name = part.strip().toLowerCase(java.util.Locale.ROOT);
      int at = NAMES.indexOf(name);
      for (int i = 0; at < 0 && i < SALTS.size(); i++) {
        at = SALTS.get(i).formula().equalsIgnoreCase(name) ? i : at;
      }
      if (at < 0) {
        throw new IllegalArgumentException(
            "'" + part.strip() + "' is no salt here; known are " + String.join(", ", NAMES) + ".");
      }
      if (!found.contains(at)) {
        found.add(at);
      }
    }
    return found;
  }

  private static double[] ionsMgPerL(Salt.Ions one) {
    return new double[] {
      one.calciumMgPerL(),
      one.magnesiumMgPerL(),
      one.sodiumMgPerL(),
      one.chlorideMgPerL(),
      one.sulfateMgPerL(),
      one.bicarbonateMgPerL()
    };
  }

  private static LiquorLevels levels(double[] mgPerL) {
    return new LiquorLevels(
        mgPerL[0], mgPerL[1], mgPerL[2], mgPerL[3], mgPerL[4], mgPerL[5], Double.NaN);
  }

  /// What the liquor holds with doses of a house's salts.
  private static double[] heldMgPerL(double[] water, List<Integer> house, double[] doseGPerL) {
    double[] held = water.clone();
    for (int j = 0; j < doseGPerL.length; j++) {
      double[] perG = OF_A_GRAM.get(house.get(j));
      for (int i = 0; i < held.length; i++) {
        held[i] += perG[i] * doseGPerL[j];
      }
    }
    return held;
  }

  private static double missedMgPerL(double[] held, double[] wanted) {
    double missed = 0;
    for (int i = 0; i < held.length; i++) {
      double off = Double.isNaN(wanted[i]) ? 0 : Math.abs(held[i] - wanted[i]);
      missed = Math.max(missed, off);
    }
    return missed;
  }

  private static Doses told(double[] doseG, double[] held, double missedMgPerL) {
    return new Doses(
        doseG[0],
        doseG[1],
        doseG[2],
        doseG[3],
        doseG[4],
        doseG[5],
        held[0],
        held[1],
        held[2],
        held[3],
        held[4],
        held[5],
        missedMgPerL);
  }
}
