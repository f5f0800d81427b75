package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.plan.Demo;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.science.SaltDoses;
import gylebook.simulate.Settings;
import gylebook.testing.Cases;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/// A liquor is asked for at two doors, a plan's and that of the single calculation.
class LiquorDoorsTest {
  private static final List<String> SALTS =
      List.of(
          "gypsum",
          "calcium chloride",
          "epsom salt",
          "magnesium chloride",
          "table salt",
          "baking soda");
  private static final List<String> IONS = List.of("Ca", "Mg", "Na", "Cl", "SO4", "HCO3");
  private static final double[] MOST_MG_PER_L = {180, 30, 80, 180, 300, 200};
  private static final double[] STEPS_G = {0.01, 0.1, 0.5, 1, 2};

  @Test
  void bothDoorsGiveTheSameAmountsForTheSameWish() {
    Cases.each(
        80,
        luck -> {
          double liquorL = 4 + 40 * luck.nextDouble();
          double[] water = new double[IONS.size()];
          for (int i = 0; i < water.length; i++) {
            water[i] = Math.rint(0.4 * MOST_MG_PER_L[i] * luck.nextDouble());
          }
          List<String> wish = some(luck, wishes(luck));
          List<String> house = some(luck, SALTS);
          double stepG = STEPS_G[luck.nextInt(STEPS_G.length)];
          SaltDoses.Doses one =
              SaltDoses.doses(
                  liquorL,
                  waterText(water),
                  String.join(" ", wish),
                  String.join(", ", house),
                  stepG);
          LiquorAnswer other = plan(liquorL, water, wish, house, stepG);
          double[] doseG = {
            one.gypsumG(),
            one.calciumChlorideG(),
            one.epsomG(),
            one.magnesiumChlorideG(),
            one.tableSaltG(),
            one.sodaG()
          };
          for (int i = 0; i < doseG.length; i++) {
            assertThat(amountG(other, SALTS.get(i)))
                .as("%s of %s for %s", SALTS.get(i), house, wish)
                .isCloseTo(doseG[i], within(1e-9));
          }
        });
  }

  private static List<String> wishes(RandomGenerator luck) {
    List<String> wishes = new ArrayList<>();
    for (int i = 0; i < MOST_MG_PER_L.length; i++) {
      wishes.add(IONS.get(i) + " " + Math.rint(MOST_MG_PER_L[i] * luck.nextDouble()));
    }
    return wishes;
  }

  private static List<String> some(RandomGenerator luck, List<String> of) {
    List<String> some = new ArrayList<>();
    some.add(of.get(luck.nextInt(of.size())));
    of.stream().filter(one -> luck.nextInt(3) > 0 && !some.contains(one)).forEach(some::add);
    return some;
  }

  private static String waterText(double[] mgPerL) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < mgPerL.length; i++) {
      text.append(IONS.get(i)).append(' ').append(mgPerL[i]).append(' ');
    }
    return text.toString();
  }

  private static LiquorAnswer plan(
      double liquorL, double[] water, List<String> wish, List<String> house, double stepG) {
    Liquor.Ions ions = new Liquor.Ions(water[0], water[1], water[2], water[3], water[4], water[5]);
    Recipe recipe = Demo.copperBitter().withLiquor(new Liquor("tap", ions, List.of()));
    LiquorWish read =
        ((Filled.Done<LiquorWish>)
                LiquorWish.read(
                    String.join(", ", wish),
                    String.join(", ", house),
                    String.format(Locale.ROOT, "%s g", stepG),
                    "0.1 mL"))
            .thing();
    Settings allIn = new Settings(liquorL, 70, 0, 1, 1, 0.7, 0);
    return LiquorAnswer.of(recipe, allIn, read, ReadingUnits.METRIC);
  }

  private static double amountG(LiquorAnswer answer, String salt) {
    return answer.recipe().liquor().additions().stream()
        .filter(addition -> addition.name().equals(salt))
        .mapToDouble(addition -> addition.amountNumber().value())
        .sum();
  }
}
