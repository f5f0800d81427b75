package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.science.FermentationReading.Instrument;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.junit.jupiter.api.Test;

/// The posterior of a ferment, reckoned anew by another road: a simplex that knows no slopes finds
/// the most probable numbers, slopes are taken by small steps, matrices are inverted as they stand.
/// Only the curve itself is the program's.
class FermentationAnewTest {
  private static final FermentationFit.Brew BREW = FermentationFit.Brew.of(12.5, 0.2, 0.75, 0.05);

  /// Nothing odd among them; a float whose readings lie a degree high.
  private static final List<FermentationReading> READINGS =
      List.of(
          new FermentationReading(14, 11.6),
          new FermentationReading(30, 7.7),
          new FermentationReading(33, 7.9, Instrument.FLOAT),
          new FermentationReading(52, 4.9, Instrument.FLOAT),
          new FermentationReading(54, 3.9, Instrument.REFRACTOMETER));

  /// Attenuation, logarithms of rate, midpoint and skew, the start in its own doubts.
  private static final double[] PRIORS = {0.75, Math.log(0.10), Math.log(3.2), 0, 0};

  private static final double[] DOUBTS = {0.05, 0.35, 0.25, 0.8, 1};

  private final RealMatrix noise = MatrixUtils.createRealMatrix(READINGS.size(), READINGS.size());
  private final RealMatrix sure;
  private final double[] best;
  private final RealMatrix spread;
  private final RealMatrix slopes;

  FermentationAnewTest() {
    for (int i = 0; i < READINGS.size(); i++) {
      for (int j = 0; j < READINGS.size(); j++) {
        FermentationReading one = READINGS.get(i);
        FermentationReading other = READINGS.get(j);
        boolean floats = one.by() == Instrument.FLOAT && other.by() == Instrument.FLOAT;
        double own = i == j ? one.doubtPlato() * one.doubtPlato() : 0;
        noise.setEntry(i, j, together(one.clockHr(), other.clockHr()) + own + (floats ? 25.0 : 0));
      }
    }
    sure = new LUDecomposition(noise).getSolver().getInverse();
    best = best();
    slopes = MatrixUtils.createRealMatrix(READINGS.size(), PRIORS.length);
    for (int i = 0; i < READINGS.size(); i++) {
      FermentationReading reading = READINGS.get(i);
      slopes.setRowVector(i, slope(point -> curve(point, reading.clockHr())));
    }
    RealMatrix known = slopes.transpose().multiply(sure).multiply(slopes);
    for (int i = 0; i < PRIORS.length; i++) {
      known.addToEntry(i, i, 1 / (DOUBTS[i] * DOUBTS[i]));
    }
    spread = new LUDecomposition(known).getSolver().getInverse();
  }

  /// What the beer's distance from its curve has in common at two times: 0.25 P that fades within 6
  /// h, and 0.05 P by the root of days.
  private static double together(double oneHr, double otherHr) {
    return 0.0625 * Math.exp(-Math.abs(oneHr - otherHr) / 6)
        + 0.0025 * Math.min(oneHr, otherHr) / 24;
  }

  private static double start(double[] point) {
    return 12.5 + 0.2 * point[4];
  }

  private static double left(double[] point, double clockHr) {
    return FermentationCurve.fromPitchFrac(
        Math.exp(point[1]) * clockHr, Math.exp(point[2]), Math.exp(point[3]));
  }

  private static double curve(double[] point, double clockHr) {
    return start(point) * (1 - point[0] * (1 - left(point, clockHr)));
  }

  private static RealVector misses(double[] point) {
    return new ArrayRealVector(
        READINGS.stream()
            .mapToDouble(each -> each.extractPlato() - curve(point, each.clockHr()))
            .toArray());
  }

  private double cost(double[] point) {
    double cost = misses(point).dotProduct(sure.operate(misses(point)));
    for (int i = 0; i < PRIORS.length; i++) {
      cost += Math.pow((point[i] - PRIORS[i]) / DOUBTS[i], 2);
    }
    return cost;
  }

  /// Twice, so that a simplex that shrank too soon begins again.
  private double[] best() {
    double[] found = PRIORS;
    for (int round = 0; round < 3; round++) {
      found =
          new SimplexOptimizer(1e-15, 1e-15)
              .optimize(
                  new MaxEval(20_000),
                  new ObjectiveFunction(this::cost),
                  GoalType.MINIMIZE,
                  new InitialGuess(found),
                  new NelderMeadSimplex(new double[] {0.02, 0.2, 0.2, 0.3, 0.5}))
              .getPoint();
    }
    return found;
  }

  private RealVector slope(ToDoubleFunction<double[]> of) {
    double step = 1e-5;
    double[] slope = new double[PRIORS.length];
    for (int i = 0; i < slope.length; i++) {
      double[] more = best.clone();
      double[] less = best.clone();
      more[i] += step;
      less[i] -= step;
      slope[i] = (of.applyAsDouble(more) - of.applyAsDouble(less)) / (2 * step);
    }
    return new ArrayRealVector(slope);
  }

  private double doubt(RealVector slope) {
    return Math.sqrt(slope.dotProduct(spread.operate(slope)));
  }

  @Test
  void theMostProbableCurveAndItsDoubtsAreFoundBothWays() {
    FermentationFit.Fitted fitted = FermentationFit.fitted(BREW, READINGS);
    assertThat(fitted.farOff()).isFalse();
    assertThat(fitted.attenuationFrac()).isCloseTo(best[0], within(1e-5));
    assertThat(fitted.ratePerHr()).isCloseTo(Math.exp(best[1]), within(1e-5));
    assertThat(fitted.midpointNumber()).isCloseTo(Math.exp(best[2]), within(1e-4));
    assertThat(fitted.skewNumber()).isCloseTo(Math.exp(best[3]), within(1e-3));
    assertThat(fitted.startPlato()).isCloseTo(start(best), within(1e-4));
    assertThat(fitted.attenuationDoubtFrac())
        .isCloseTo(Math.sqrt(spread.getEntry(0, 0)), within(1e-5));
    assertThat(fitted.finalPlato()).isCloseTo(start(best) * (1 - best[0]), within(1e-4));
    RealVector end = slope(point -> start(point) * (1 - point[0]));
    assertThat(fitted.finalDoubtPlato()).isCloseTo(doubt(end), within(1e-4));
  }

  /// Before, between and after the readings: the curve, what the readings' distance from it passes
  /// on, and the doubt of both.
  @Test
  void theBeerAheadIsFoundBothWays() {
    for (double clockHr : new double[] {2, 20, 31, 55, 60, 90}) {
      RealVector shared =
          new ArrayRealVector(
              READINGS.stream().mapToDouble(each -> together(clockHr, each.clockHr())).toArray());
      RealVector weights = sure.operate(shared);
      double middle = curve(best, clockHr) + weights.dotProduct(misses(best));
      RealVector slope =
          slope(point -> curve(point, clockHr)).subtract(slopes.preMultiply(weights));
      double own = together(clockHr, clockHr) - weights.dotProduct(shared);
      FermentationFit.Ahead ahead = FermentationFit.ahead(BREW, READINGS, clockHr);
      assertThat(ahead.extractPlato()).as("at " + clockHr).isCloseTo(middle, within(1e-3));
      assertThat(ahead.doubtPlato())
          .as("at " + clockHr)
          .isCloseTo(Math.sqrt(own + Math.pow(doubt(slope), 2)), within(1e-4));
      assertThat(ahead.leftFrac()).isCloseTo(left(best, clockHr), within(1e-4));
    }
  }

  @Test
  void theChanceThatLittleIsLeftIsFoundBothWays() {
    for (double clockHr : new double[] {40, 70, 110}) {
      ToDoubleFunction<double[]> odds =
          point -> Math.log(left(point, clockHr) / (1 - left(point, clockHr)));
      double chance =
          new NormalDistribution(odds.applyAsDouble(best), doubt(slope(odds)))
              .cumulativeProbability(Math.log(0.02 / 0.98));
      assertThat(FermentationFit.ahead(BREW, READINGS, clockHr).littleLeftChanceFrac())
          .isCloseTo(chance, within(1e-4));
    }
  }

  /// Half the hours at the warmth in which the clock runs twice as fast: 20 C and ln 2/ln 2.2 of 10
  /// K.
  @Test
  void warmHoursCountByTheClock() {
    double warmC = 20 + 10 * Math.log(2) / Math.log(2.2);
    FermentationFit.Ahead at20 =
        FermentationFit.ahead(12, 20, "24:9.1 48:4.7", 72, 0.15, 0.77, 0.04);
    FermentationFit.Ahead warm =
        FermentationFit.ahead(12, warmC, "12:9.1 24:4.7", 36, 0.15, 0.77, 0.04);
    assertThat(warm.extractPlato()).isCloseTo(at20.extractPlato(), within(1e-9));
    assertThat(warm.doubtPlato()).isCloseTo(at20.doubtPlato(), within(1e-9));
  }

  /// A further reading of the float is expected where its offset puts it.
  @Test
  void aFurtherReadingOfTheFloatLiesWhereItsOffsetPutsIt() {
    FermentationReading further = new FermentationReading(70, 4, Instrument.FLOAT);
    double[] shared = new double[READINGS.size()];
    for (int i = 0; i < shared.length; i++) {
      boolean floats = READINGS.get(i).by() == Instrument.FLOAT;
      shared[i] = together(70, READINGS.get(i).clockHr()) + (floats ? 25 : 0);
    }
    RealVector weights = sure.operate(new ArrayRealVector(shared));
    double middle = curve(best, 70) + weights.dotProduct(misses(best));
    double own = together(70, 70) + 25 - weights.dotProduct(new ArrayRealVector(shared));
    RealVector slope = slope(point -> curve(point, 70)).subtract(slopes.preMultiply(weights));
    FermentationFit.Ahead ahead = FermentationPosterior.of(BREW, READINGS).ahead(further);
    assertThat(ahead.extractPlato()).isCloseTo(middle, within(1e-3));
    assertThat(ahead.doubtPlato())
        .isCloseTo(Math.sqrt(own + Math.pow(doubt(slope), 2)), within(1e-4));
  }

  /// A wild reading counts as one whose doubt is so large that it lies three doubts beside what the
  /// others let expect: told so large from the start, it is not flagged and says the same.
  @Test
  void aWildReadingIsOneOfALargeDoubt() {
    FermentationReading wild = new FermentationReading(60, 8.5);
    List<FermentationReading> with = new ArrayList<>(READINGS);
    with.add(wild);
    FermentationFit.Ahead others = FermentationPosterior.of(BREW, READINGS).ahead(wild);
    double miss = wild.extractPlato() - others.extractPlato();
    double grown = Math.sqrt(miss * miss / 9 - Math.pow(others.doubtPlato(), 2));
    List<FermentationReading> doubtful = new ArrayList<>(READINGS);
    doubtful.add(new FermentationReading(60, 8.5, 1.01 * grown, Instrument.HYDROMETER));
    FermentationFit.Fitted far = FermentationFit.fitted(BREW, with);
    FermentationFit.Fitted told = FermentationFit.fitted(BREW, doubtful);
    assertThat(far.farOff()).isTrue();
    assertThat(told.farOff()).isFalse();
    assertThat(far.finalPlato()).isCloseTo(told.finalPlato(), within(0.02));
    assertThat(far.ratePerHr()).isCloseTo(told.ratePerHr(), within(0.002));
    assertThat(far.finalDoubtPlato()).isCloseTo(told.finalDoubtPlato(), within(0.02));
  }
}
