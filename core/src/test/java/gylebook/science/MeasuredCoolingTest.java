package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.ReferenceRows;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;

/// A mug of near-boiling water that others watched cooling (measured-cooling; room about 22 C, mass
/// and area unknown, so both factors are fitted). It supports the shape of the evaporation law, not
/// its factor. The first three minutes warm the mug and are left out.
class MeasuredCoolingTest {
  private static final double ROOM_C = 22;
  private static final double ROOM_KPA = 0.5 * Saturation.saturationKpa(ROOM_C);
  private static final double STEP_MIN = 0.5;

  private record Point(double atMin, double waterC) {}

  @Test
  void evaporationAndWallTogetherFollowTheMugWithinAFewHundredthsOfAKelvin() {
    List<Point> all = points(3, 74);
    assertThat(rmsK(fit(all, true), all)).isLessThan(0.08);
    assertThat(rmsK(fit(all, false), all)).isGreaterThan(0.8);
  }

  @Test
  void theFirstFortyMinutesForecastTheRestFarBetterThanWithoutEvaporation() {
    List<Point> early = points(3, 40);
    List<Point> late = points(41, 74);
    double with = rmsK(fit(early, true), late);
    assertThat(with).isLessThan(0.3);
    assertThat(rmsK(fit(early, false), late)).isGreaterThan(8 * with);
  }

  private static List<Point> points(double fromMin, double toMin) {
    List<Point> points = new ArrayList<>();
    for (List<String> cells : ReferenceRows.cells("measured-cooling.csv")) {
      Point point = new Point(Double.parseDouble(cells.get(0)), Double.parseDouble(cells.get(1)));
      if (point.atMin >= fromMin && point.atMin <= toMin) {
        points.add(point);
      }
    }
    return points;
  }

  /// Start temperature at 4 min, wall factor, and (if wanted) evaporation factor.
  private static double[] fit(List<Point> points, boolean evaporates) {
    double[] start = evaporates ? new double[] {87, 0.01, 0.01} : new double[] {87, 0.02};
    MultivariateJacobianFunction model = at -> slopes(points, at);
    double[] wanted = points.stream().mapToDouble(Point::waterC).toArray();
    return new LevenbergMarquardtOptimizer()
        .optimize(
            LeastSquaresFactory.create(
                model,
                MatrixUtils.createRealVector(wanted),
                MatrixUtils.createRealVector(start),
                null,
                1000,
                1000))
        .getPoint()
        .toArray();
  }

  private static Pair<RealVector, RealMatrix> slopes(List<Point> points, RealVector at) {
    double[] here = forecast(points, at.toArray());
    double[][] jacobian = new double[here.length][at.getDimension()];
    for (int j = 0; j < at.getDimension(); j++) {
      double[] moved = at.toArray();
      double by = 1e-5 * Math.max(0.01, Math.abs(moved[j]));
      moved[j] += by;
      double[] there = forecast(points, moved);
      for (int i = 0; i < here.length; i++) {
        jacobian[i][j] = (there[i] - here[i]) / by;
      }
    }
    return new Pair<>(MatrixUtils.createRealVector(here), MatrixUtils.createRealMatrix(jacobian));
  }

  private static double rmsK(double[] at, List<Point> points) {
    double[] forecast = forecast(points, at);
    double squares = 0;
    for (int i = 0; i < forecast.length; i++) {
      squares += Math.pow(forecast[i] - points.get(i).waterC, 2);
    }
    return Math.sqrt(squares / forecast.length);
  }

  private static double[] forecast(List<Point> points, double[] at) {
    double[] forecast = new double[points.size()];
    double waterC = at[0];
    double atMin = 4;
    for (int i = 0; i < forecast.length; i++) {
      for (; atMin < points.get(i).atMin - 1e-9; atMin += STEP_MIN) {
        double half = waterC + STEP_MIN / 2 * rate(waterC, at);
        waterC += STEP_MIN * rate(half, at);
      }
      forecast[i] = waterC;
    }
    return forecast;
  }

  private static double rate(double waterC, double[] at) {
    double rate = -at[1] * (waterC - ROOM_C);
    if (at.length < 3) {
      return rate;
    }
    double kgPerM2Sec =
        Evaporation.openKgPerM2Sec(
            Saturation.saturationKpa(waterC), waterC, ROOM_KPA, ROOM_C, 101.325);
    return rate - at[2] * kgPerM2Sec * Evaporation.latentJPerKg(waterC) / 60;
  }
}
