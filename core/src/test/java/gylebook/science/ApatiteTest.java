package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.science.Species.Master;
import gylebook.testing.Cases;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/// Calcium phosphate in a mash: its definition by hand, and which way it goes.
class ApatiteTest {
  /// phreeqc.dat (read): log K = -3.421 at 25 C for `Ca5(PO4)3OH + 4 H = 5 Ca + 3 HPO4 + H2O`, heat
  /// -36.155 kcal/mol. By van 't Hoff -6.556 at 65 C, worked apart: it dissolves less in the heat.
  @Test
  void theConstantIsThatOfTheDatabaseAndFallsWithHeat() {
    assertThat(Equilibrium.HYDROXYAPATITE.log(25)).isCloseTo(-3.421, within(1e-9));
    assertThat(Equilibrium.HYDROXYAPATITE.log(65)).isCloseTo(-6.556, within(0.001));
  }

  /// By hand from the definition, in thin water: 1e-5 mol/kg each of calcium and phosphate at pH
  /// 7.207, the second pK, where half the phosphate is HPO4: 5 (-5) + 3 (-5.301) + 4 x 7.207 +
  /// 3.421 = -8.654. The ions there are 3.5e-5 strong, which by the limiting law (0.509 at 25 C)
  /// takes 8 x 4 x 0.509 sqrt(3.5e-5) = 0.096 and gives back 0.014 by more of the phosphate as
  /// HPO4.
  @Test
  void inThinWaterTheIndexIsTheSumOfItsLogarithms() {
    double byHand = 5 * -5 + 3 * (-5 + Math.log10(0.5)) + 4 * 7.207 + 3.421;
    assertThat(byHand).isCloseTo(-8.654, within(0.001));
    assertThat(Apatite.index(25, 0.40078, 0.01, 7.207).indexNumber())
        .isCloseTo(byHand - 0.096 + 0.014, within(0.02));
  }

  /// In strong water by the molalities and activities of the speciation, multiplied out.
  @Test
  void theIndexIsTheProductOfTheReactionOverItsConstant() {
    Map<Master, Double> totals = new EnumMap<>(Master.class);
    totals.put(Master.CALCIUM, 2e-3);
    totals.put(Master.PHOSPHATE, 8e-3);
    totals.put(Master.SODIUM, 4e-3);
    Speciation.Solution solution = new Speciation(65).at(5.4, totals, Double.NaN);
    double calcium = activity(solution, Species.CA);
    double phosphate = activity(solution, Species.HPO4);
    double acid = Math.pow(10, -5.4);
    double product = Math.pow(calcium, 5) * Math.pow(phosphate, 3) / Math.pow(acid, 4);
    assertThat(solution.apatiteIndex()).isCloseTo(Math.log10(product) + 6.556, within(0.001));
  }

  private static double activity(Speciation.Solution solution, Species species) {
    return solution.of(species) * solution.gammas().getOrDefault(species, Double.NaN);
  }

  /// Falls with acid; rises with calcium, with heat, and with phosphate up to a mash's.
  @Test
  void acidDissolvesWhatCalciumPhosphateAndHeatBringDown() {
    Cases.each(
        40,
        random -> {
          double waterC = random.nextDouble(20, 80);
          double calcium = random.nextDouble(10, 200);
          double phosphate = random.nextDouble(0.5, 4);
          double ph = random.nextDouble(4.6, 6.4);
          double here = Apatite.index(waterC, calcium, phosphate, ph).indexNumber();
          assertThat(Apatite.index(waterC, calcium, phosphate, ph - 0.1).indexNumber())
              .isLessThan(here);
          assertThat(Apatite.index(waterC, calcium * 1.1, phosphate, ph).indexNumber())
              .isGreaterThan(here);
          assertThat(Apatite.index(waterC, calcium, phosphate * 1.1, ph).indexNumber())
              .isGreaterThan(here);
          assertThat(Apatite.index(waterC + 5, calcium, phosphate, ph).indexNumber())
              .isGreaterThan(here);
        });
  }

  /// More phosphate than calcium binds the calcium in pairs, and strengthens the water: past some
  /// 10 mmol/kg the index rises no more. Without the pairs it would rise on and on.
  @Test
  void muchPhosphateBindsTheCalciumItWouldBringDown() {
    double some = Apatite.index(65, 60, 10, 5.8).indexNumber();
    assertThat(some).isGreaterThan(Apatite.index(65, 60, 1, 5.8).indexNumber() + 1);
    assertThat(Apatite.index(65, 60, 40, 5.8).indexNumber()).isLessThan(some + 0.3);
  }

  /// The trap of the sheet: protons for each calcium stay far below stoichiometry. With phosphate
  /// as HPO4 four acid for five calcium would be 0.4 of an equivalent; at mash pH nearly all of it
  /// is H2PO4 and 0.7; Kolbach's divisor of 3.5 says 0.286, about two fifths.
  @Test
  void kolbachsCalciumWorksFarBelowItsStoichiometry() {
    double mash = Apatite.index(65, 60, 10, 5.4).acidPerCalciumRatio();
    assertThat(mash).isBetween(0.68, 0.70);
    double residual = 1 - ResidualAlkalinity.residualMeqPerL(1, 1, 0);
    assertThat(residual / mash).isBetween(0.40, 0.43);
    assertThat(Apatite.index(25, 60, 10, 9).acidPerCalciumRatio()).isCloseTo(0.4, within(0.01));
  }

  /// Soft mash water would dissolve apatite cold, a liquor rich in calcium throws it down hot: the
  /// index changes its sign within the waters and temperatures of a mash.
  @Test
  void aMashLiesOnBothSides() {
    assertThat(Apatite.index(25, 20, 10, 5.6).indexNumber()).isNegative();
    assertThat(Apatite.index(65, 120, 10, 5.6).indexNumber()).isPositive();
  }

  @Test
  void nonsenseIsRefusedWithItsName() {
    assertThatThrownBy(() -> Apatite.index(65, -1, 10, 5.4)).hasMessageContaining("calcium");
    assertThatThrownBy(() -> Apatite.index(65, 50, Double.NaN, 5.4))
        .hasMessageContaining("phosphate");
    assertThatThrownBy(() -> Apatite.index(65, 50, 10, 3)).hasMessageContaining("pH");
    assertThatThrownBy(() -> Apatite.index(120, 50, 10, 5.4)).hasMessageContaining("water in C");
  }
}
