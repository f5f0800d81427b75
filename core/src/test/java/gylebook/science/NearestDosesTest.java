package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/// Doses for invented wishes against all doses there are, gone through one by one; the regret is
/// written here a second time.
class NearestDosesTest {
  private static final int MOST_COUNT = 22;
  private static final double[] USUAL_END = {200, 30, 100, 250, 400};
  private static final double MG_PER_MEQ = 61.017;
  // How far the pH goes for a meq/L of residual alkalinity: 4 L/kg of malt that buffers 33 meq.
  private static final double PH_PER_MEQ_PER_L = 4 / 33.0;

  /// An invented liquor, a wish and a house.
  private static final class Wish {
    private final double[] bare;
    private final double[] wanted;
    private final double[][] perStep;
    private final double bendFrac;

    /// A wish whose acid is so much weaker a whole pH further down.
    Wish(double[] bare, double[] wanted, double[][] perStep, double bendFrac) {
      this.bare = bare;
      this.wanted = wanted;
      this.perStep = perStep;
      this.bendFrac = bendFrac;
    }

    LiquorLevels held(double[] counts) {
      double[] got = got(counts);
      return new LiquorLevels(got[0], got[1], got[2], got[3], got[4], got[5], got[6]);
    }

    double[] got(double[] counts) {
      double[] got = bare.clone();
      for (int i = 0; i < counts.length; i++) {
        for (int k = 0; k < got.length; k++) {
          got[k] += counts[i] * perStep[i][k];
        }
      }
      double fallPh = bare[6] - got[6];
      got[6] = bare[6] - fallPh * (1 - bendFrac * fallPh);
      got[5] = Math.max(0, got[5]);
      return got;
    }

    double regret(double[] counts) {
      double[] got = got(counts);
      double sum = 0;
      for (int k = 0; k < 6; k++) {
        boolean asked = !Double.isNaN(wanted[k]);
        boolean free = k == 5 && !asked && !Double.isNaN(wanted[6]);
        double off = asked ? (got[k] - wanted[k]) / 10 : free ? 0 : (got[k] - bare[k]) / 300;
        double over = asked || k == 5 ? 0 : Math.max(0, got[k] - Math.max(bare[k], USUAL_END[k]));
        sum += (off + over) * (off + over);
      }
      double offPh = Double.isNaN(wanted[6]) ? 0 : (got[6] - wanted[6]) / 0.03;
      return sum + offPh * offPh + 1e-4 * Arrays.stream(counts).filter(count -> count > 0).count();
    }

    /// The least regret of each selection of the house, by going through all doses.
    double[] leastOfEach() {
      double[] least = new double[1 << perStep.length];
      Arrays.fill(least, Double.POSITIVE_INFINITY);
      double[] counts = new double[perStep.length];
      boolean more = true;
      while (more) {
        int used = 0;
        for (int i = 0; i < counts.length; i++) {
          used |= counts[i] > 0 ? 1 << i : 0;
        }
        least[used] = Math.min(least[used], regret(counts));
        more = false;
        for (int i = 0; i < counts.length && !more; i++) {
          more = counts[i] < MOST_COUNT;
          counts[i] = more ? counts[i] + 1 : 0;
        }
      }
      for (int of = 0; of < least.length; of++) {
        for (int i = 0; i < perStep.length; i++) {
          least[of] = (of >> i & 1) == 1 ? Math.min(least[of], least[of ^ 1 << i]) : least[of];
        }
      }
      return least;
    }
  }

  private static final Salt[] SALTS = {
    Salt.GYPSUM, Salt.CALCIUM_CHLORIDE_DIHYDRATE, Salt.EPSOM, Salt.TABLE_SALT, Salt.SODA
  };

  private static Wish wish(RandomGenerator luck, boolean acid, double bendFrac) {
    double stepGPerL = 0.04 + 0.08 * luck.nextDouble();
    List<double[]> perStep = new ArrayList<>();
    for (Salt salt : SALTS) {
      if (luck.nextInt(2) == 0 && perStep.size() < 3) {
        Salt.Ions ions = salt.ionsOf(stepGPerL);
        double residual =
            ions.bicarbonateMgPerL() / MG_PER_MEQ
                - ions.calciumMgPerL() / 20.039 / 3.5
                - ions.magnesiumMgPerL() / 12.1525 / 7;
        perStep.add(
            new double[] {
              ions.calciumMgPerL(),
              ions.magnesiumMgPerL(),
              ions.sodiumMgPerL(),
              ions.chlorideMgPerL(),
              ions.sulfateMgPerL(),
              ions.bicarbonateMgPerL(),
              PH_PER_MEQ_PER_L * residual
            });
      }
    }
    if (acid || perStep.isEmpty()) {
      double takesMeqPerL = 0.2 + 0.4 * luck.nextDouble();
      perStep.add(
          new double[] {
            0, 0, 0, 0, 0, -MG_PER_MEQ * takesMeqPerL, -PH_PER_MEQ_PER_L * takesMeqPerL
          });
    }
    double[] most = {160, 25, 70, 160, 260, 150};
    double[] bare = new double[7];
    double[] wanted = new double[7];
    Arrays.fill(wanted, Double.NaN);
    for (int k = 0; k < 6; k++) {
      bare[k] = 0.3 * most[k] * luck.nextDouble();
      wanted[k] = luck.nextInt(3) < (k == 5 ? 1 : 2) ? most[k] * luck.nextDouble() : Double.NaN;
    }
    bare[6] = 5.5 + 0.4 * luck.nextDouble();
    wanted[6] = acid ? 5.2 + 0.3 * luck.nextDouble() : Double.NaN;
    return new Wish(bare, wanted, perStep.toArray(double[][]::new), bendFrac);
  }

  private static double ours(Wish wish) {
    double[] w = wish.wanted;
    double[] counts =
        LiquorDoses.stepCounts(
            new LiquorLevels(w[0], w[1], w[2], w[3], w[4], w[5], w[6]),
            wish.perStep.length,
            wish::held);
    return wish.regret(counts);
  }

  /// The rule that leaves out what hardly helps, on the regrets of all doses.
  private static double spared(double[] leastOfEach) {
    int of = leastOfEach.length - 1;
    boolean fewer = true;
    while (fewer) {
      int next = of;
      for (int i = 0; 1 << i < leastOfEach.length; i++) {
        int without = of & ~(1 << i);
        boolean better = next == of || leastOfEach[without] < leastOfEach[next];
        next = without != of && better ? without : next;
      }
      fewer = next != of && leastOfEach[next] < leastOfEach[of] + 0.04;
      of = fewer ? next : of;
    }
    return leastOfEach[of];
  }

  private static void asGoodAsAllDoses(boolean acid, double bendFrac) {
    Cases.each(
        40,
        luck -> {
          Wish wish = wish(luck, acid, bendFrac);
          assertThat(ours(wish)).isCloseTo(spared(wish.leastOfEach()), within(3e-4));
        });
  }

  @Test
  void saltsAreTheBestOfAllThereAre() {
    asGoodAsAllDoses(false, 0);
  }

  @Test
  void saltsAndAnAcidAreTheBestOfAllThereAre() {
    asGoodAsAllDoses(true, 0);
  }

  /// Lactic acid gives about a twentieth less a whole pH further down (pK 3.86).
  @Test
  void thePhMayBendALittle() {
    asGoodAsAllDoses(true, 0.05);
  }
}
