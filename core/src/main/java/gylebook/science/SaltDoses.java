package gylebook.science;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/// Salts from what is in the house for wanted ions in a liquor.
///
/// Ions are linear in the doses, so the nearest liquor is a least-squares problem with no dose
/// below nought; with so few salts every selection of them is tried, and the best one is exact. The
/// doses are then put on the steps of the scale and walked one step at a time until none helps. The
/// pH of the mash is not in here: the plan of a recipe solves both together.
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
  private static final Pattern ION = Pattern.compile("([A-Za-z]+\\d?)\\s*[=:]?\\s*([0-9.,]+)");

  /// An ion nobody named shall stay as the water has it, at a tenth of the weight of a wanted one.
  private static final double UNNAMED_RATIO = 0.1;

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
  /// `min sum w_i (water_i + sum_j a_ij x_j/V - wanted_i)^2`, x a whole number of steps, none below
  /// 0
  ///
  /// - Valid: salts that dissolve: to 3000 mg/L of an ion. An ion not named in the wish stays near
  ///   what the water has. Chalk and lime are left out: they deliver less than they hold.
  ///
  /// @param water ions in mg/L, as `Ca 50 Mg 10 HCO3 100`; one not named is 0
  /// @param wanted the same for what is wanted
  /// @param house salts by name, as `gypsum, calcium chloride, epsom salt`
  @Source(key = "iupac-weights", at = "abridged table", trust = Trust.COMPUTED)
  @Source(key = "mass-balance", trust = Trust.COMPUTED)
  @Reckoned(
      name = "salts-for-liquor",
      says = "Which salts of those in the house bring a liquor to wanted ions?",
      equation = "min sum w (water + sum a x/V - wanted)^2, x in steps of the scale, none below 0",
      range = "dissolving salts, to 3000 mg/L of an ion; the pH of the mash is not in here")
  public static Doses doses(
      double liquorL, String water, String wanted, String house, @Usually(0.1) double stepG) {
    Require.within("liquor in L", liquorL, 0.1, 100_000);
    Require.within("step of the scale in g", stepG, 1e-4, 1000);
    Wish wish = new Wish(namedMgPerL(water), namedMgPerL(wanted), salts(house), liquorL, stepG);
    return wish.told(WholeSteps.near(wish.relaxedCount(), wish::regretNumber));
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

  private static double[] ionsMgPerL(Salt salt) {
    Salt.Ions one = salt.ionsOf(1);
    return new double[] {
      one.calciumMgPerL(),
      one.magnesiumMgPerL(),
      one.sodiumMgPerL(),
      one.chlorideMgPerL(),
      one.sulfateMgPerL(),
      one.bicarbonateMgPerL()
    };
  }

  /// One liquor, one wish, and what is in the house.
  private static final class Wish {
    private final double[] waterMgPerL;
    private final double[] wantedMgPerL;
    private final double[] weightRatio;
    private final List<Integer> house;
    private final double[][] stepMgPerL;
    private final double stepG;

    Wish(
        double[] waterMgPerL,
        double[] wantedMgPerL,
        List<Integer> house,
        double liquorL,
        double stepG) {
      this.waterMgPerL =
          Arrays.stream(waterMgPerL).map(held -> Double.isNaN(held) ? 0 : held).toArray();
      this.wantedMgPerL = this.waterMgPerL.clone();
      this.weightRatio = new double[IONS.size()];
      for (int i = 0; i < IONS.size(); i++) {
        boolean named = !Double.isNaN(wantedMgPerL[i]);
        weightRatio[i] = named ? 1 : UNNAMED_RATIO;
        this.wantedMgPerL[i] = named ? wantedMgPerL[i] : this.waterMgPerL[i];
      }
      this.house = List.copyOf(house);
      this.stepG = stepG;
      this.stepMgPerL =
          house.stream()
              .map(
                  at ->
                      Arrays.stream(ionsMgPerL(SALTS.get(at)))
                          .map(per -> per * stepG / liquorL)
                          .toArray())
              .toArray(double[][]::new);
    }

    /// Ions with so many steps of each salt.
    private double[] heldMgPerL(double[] stepCount) {
      double[] held = waterMgPerL.clone();
      for (int j = 0; j < stepCount.length; j++) {
        for (int i = 0; i < held.length; i++) {
          held[i] += stepCount[j] * stepMgPerL[j][i];
        }
      }
      return held;
    }

    private double regretNumber(double[] stepCount) {
      double[] held = heldMgPerL(stepCount);
      double sum = 0;
      for (int i = 0; i < held.length; i++) {
        sum += Math.pow(weightRatio[i] * (held[i] - wantedMgPerL[i]), 2);
      }
      return sum;
    }

    /// The best of all selections, without the steps.
    private double[] relaxedCount() {
      double[] best = new double[house.size()];
      double least = regretNumber(best);
      for (int chosen = 1; chosen < 1 << house.size(); chosen++) {
        double[] tried = solvedCount(chosen);
        if (Arrays.stream(tried).allMatch(count -> count >= 0) && regretNumber(tried) < least) {
          best = tried;
          least = regretNumber(tried);
        }
      }
      return best;
    }

    private double[] solvedCount(int chosen) {
      int[] at =
          java.util.stream.IntStream.range(0, house.size())
              .filter(j -> (chosen >> j & 1) == 1)
              .toArray();
      RealMatrix slopes = MatrixUtils.createRealMatrix(IONS.size(), at.length);
      double[] gaps = new double[IONS.size()];
      for (int i = 0; i < IONS.size(); i++) {
        gaps[i] = weightRatio[i] * (wantedMgPerL[i] - waterMgPerL[i]);
        for (int j = 0; j < at.length; j++) {
          slopes.setEntry(i, j, weightRatio[i] * stepMgPerL[at[j]][i]);
        }
      }
      double[] counts = new double[house.size()];
      QRDecomposition parted = new QRDecomposition(slopes);
      if (!parted.getSolver().isNonSingular()) {
        counts[at[0]] = -1;
        return counts;
      }
      double[] solved = parted.getSolver().solve(new ArrayRealVector(gaps)).toArray();
      for (int j = 0; j < at.length; j++) {
        counts[at[j]] = solved[j];
      }
      return counts;
    }

    Doses told(double[] stepCount) {
      double[] grams = new double[SALTS.size()];
      for (int j = 0; j < stepCount.length; j++) {
        grams[house.get(j)] = stepCount[j] * stepG;
      }
      double[] held = heldMgPerL(stepCount);
      double missed = 0;
      for (int i = 0; i < held.length; i++) {
        double off = weightRatio[i] == 1 ? Math.abs(held[i] - wantedMgPerL[i]) : 0;
        missed = Math.max(missed, off);
      }
      return new Doses(
          grams[0], grams[1], grams[2], grams[3], grams[4], grams[5], held[0], held[1], held[2],
          held[3], held[4], held[5], missed);
    }
  }
}
