package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/// Parts that nobody asks for by name: tables, fits, films.
class PartsReferenceTest {
  private static double worst(int pieces) {
    CubicTable table = new CubicTable(1, 5, pieces, x -> Math.exp(-x) * Math.sin(3 * x));
    double worst = 0;
    for (double x = 1.003; x < 5; x += 0.0137) {
      worst = Math.max(worst, Math.abs(table.at(x) - Math.exp(-x) * Math.sin(3 * x)));
    }
    return worst;
  }

  @Test
  void aTableFollowsItsFunctionAndTwiceTheKnotsErrASixteenthAsMuch() {
    assertThat(worst(50)).isLessThan(5e-6);
    assertThat(worst(50) / worst(100)).isBetween(13.0, 19.0);
  }

  @Test
  void aTableMeetsItsKnotsAndAsksTheFunctionOutside() {
    CubicTable table = new CubicTable(0, 4, 8, x -> x * x * x - 2 * x);
    // A cubic is its own table.
    for (double x = 0; x < 4; x += 0.0321) {
      assertThat(table.at(x)).isCloseTo(x * x * x - 2 * x, within(1e-9));
    }
    CubicTable steps = new CubicTable(0, 4, 4, Math::floor);
    assertThat(steps.at(-0.5)).isEqualTo(-1);
    assertThat(steps.at(4)).isEqualTo(4);
    assertThat(steps.at(9.7)).isEqualTo(9);
    assertThat(steps.at(Double.NaN)).isNaN();
  }

  @Test
  void aCalibrationLineIsThatOfLinearLeastSquares() {
    // Reckoned apart by the least-squares routine of a numerical library, covariance s^2 (A'A)^-1.
    CalibrationLine line =
        CalibrationLine.fit(
            new double[] {1, 10, 22, 31, 45}, new double[] {0.12, 0.2, 0.37, 0.5, 0.61}, 20);
    assertThat(line.offsetK()).isCloseTo(0.3389538, within(1e-7));
    assertThat(line.slopeRatio()).isCloseTo(0.01169233, within(1e-8));
    assertThat(line.offsetDoubtK()).isCloseTo(0.01179267, within(1e-8));
    assertThat(line.slopeDoubtRatio()).isCloseTo(0.00075775, within(1e-8));
    assertThat(line.correlationRatio()).isCloseTo(-0.11566060, within(1e-8));
    assertThat(line.correctionK(40)).isCloseTo(0.57280047, within(1e-8));
    assertThat(line.correctionDoubtK(40)).isCloseTo(0.01809418, within(1e-8));
  }

  @Test
  void aCalibrationLineWantsThreePointsThatDiffer() {
    double[] two = {1, 2};
    assertThatThrownBy(() -> CalibrationLine.fit(two, two, 20)).hasMessageContaining("three");
    double[] same = {5, 5, 5};
    assertThatThrownBy(() -> CalibrationLine.fit(same, same, 20)).hasMessageContaining("spread");
    double[] three = {1, 2, 3};
    assertThatThrownBy(() -> CalibrationLine.fit(three, two, 20)).hasMessageContaining("2");
    assertThat(CalibrationLine.fit(three, three, 0).slopeRatio()).isCloseTo(1, within(1e-12));
  }

  @Test
  void theFilmInAHoseIsThatOfTheCorrelations() {
    // Hausen below Reynolds 3000 and Gnielinski above it, carried out apart from the equations.
    HoseHeat.Hose hose = HoseHeat.Hose.silicone(0.0127, 0.01905, 2);
    HoseHeat.Liquid liquid = HoseHeat.Liquid.atMash();
    assertThat(HoseHeat.reynoldsNumber(hose, liquid, 0.1)).isCloseTo(22848.8327, within(1e-4));
    assertThat(HoseHeat.insideMKPerW(hose, liquid, 0.1)).isCloseTo(0.00431979363, within(1e-11));
    assertThat(HoseHeat.insideMKPerW(hose, liquid, 0.01)).isCloseTo(0.0887492649, within(1e-10));
    assertThatThrownBy(() -> HoseHeat.Hose.silicone(0.02, 0.02, 1)).hasMessageContaining("bore");
  }

  @Test
  void theLiftingLimitIsItsFactorsAtOnce() {
    // 23 kg, each factor by hand: HM 0.25/0.5, VM 1 - 0.3 0.5, DM 0.82 + 0.045/0.5, AM 1 - 0.0032
    // 45, FM 0.8, CM 0.95.
    double byHandKg = 23 * 0.5 * 0.85 * 0.91 * 0.856 * 0.8 * 0.95;
    assertThat(Lifting.limitKg(0.5, 1.25, 0.5, 45, 0.8, 0.95)).isCloseTo(byHandKg, within(1e-12));
    // Below the height of the knuckles it falls again, and a short travel counts as 0.25 m.
    assertThat(Lifting.limitKg(0.25, 0.25, 0.1, 0, 1, 1)).isCloseTo(23 * 0.85, within(1e-12));
    assertThat(Lifting.limitKg(0.63, 1.75, 1.75, 135, 1, 1)).isPositive();
    assertThat(Lifting.limitKg(0.6301, 0.75, 0.5, 0, 1, 1)).isZero();
    assertThat(Lifting.limitKg(0.4, 1.7501, 0.5, 0, 1, 1)).isZero();
    assertThat(Lifting.limitKg(0.4, 0.75, 1.7501, 0, 1, 1)).isZero();
    assertThat(Lifting.limitKg(0.4, 0.75, 0.5, 135.1, 1, 1)).isZero();
  }

  @Test
  void aDensityHasEveryTermOfTheSugarEquation() {
    // The printed equation carried out apart; what is added to water's density, in kg/m3.
    assertThat(excess(0.4, 80)).isCloseTo(excessApart(0.4, 80), within(1e-9));
    assertThat(excess(0.15, 5)).isCloseTo(excessApart(0.15, 5), within(1e-9));
    assertThat(excess(0.6, 50)).isCloseTo(excessApart(0.6, 50), within(1e-9));
  }

  private static double excess(double extractFrac, double wortC) {
    return 1000 * (WortDensity.wortKgPerL(extractFrac, wortC) - WaterDensity.waterKgPerL(wortC));
  }

  /// As a double sum over a table of coefficients, rows by powers of the temperature.
  private static double excessApart(double w, double wortC) {
    double[][] c = {
      {385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890},
      {-46.2720, -7.1720, 1.1597, 5.1126, 17.5254},
      {59.7712, 7.2491, 12.3630, -35.4791},
      {-47.2207, -21.6977, 27.6301},
      {18.3184, 12.3081}
    };
    double sum = 0;
    for (int j = 0; j < c.length; j++) {
      for (int i = 0; i < c[j].length; i++) {
        sum += c[j][i] * Math.pow(w, i + 1) * Math.pow((wortC - 20) / 100, j);
      }
    }
    return sum;
  }

  @Test
  void theBestOfSeveralThermometersIsTheLargestSetThatAgrees() {
    var good = new Thermometers.Reading(66.0, 0.3);
    var near = new Thermometers.Reading(66.2, 0.3);
    var off = new Thermometers.Reading(70.0, 0.3);
    assertThat(Thermometers.largestAgreeing(List.of(good, off, near))).containsExactly(good, near);
    assertThat(Thermometers.largestAgreeing(List.of(off))).containsExactly(off);
    // Of two pairs that agree the better one.
    var far = new Thermometers.Reading(66.8, 0.3);
    assertThat(Thermometers.largestAgreeing(List.of(good, near, off, far))).contains(good, near);
  }
}
