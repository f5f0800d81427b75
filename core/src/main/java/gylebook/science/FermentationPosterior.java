package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/// The most probable curve of one fermentation and the doubt about it (Laplace).
///
/// Numbers of the curve: attenuation; logarithms of rate, midpoint and skew; the start in its own
/// doubts. What readings and curve differ by has three parts: the instrument's doubt (a float's
/// offset is common to all its readings), the model's error, which fades within hours, and a slow
/// wander. A reading more than three doubts beside what all the others let expect is not dropped:
/// its doubt grows until it is three beside.
@AnyUnit("numbers of a curve, each in a unit of its own")
final class FermentationPosterior {
  private static final int START = 4;
  private static final int NUMBERS = 5;
  private static final int ROUNDS = 1000;
  private static final int WEIGHINGS = 60;
  private static final double SETTLED_RATIO = 1e-6;
  private static final double SINGULAR_RATIO = 1e-12;
  private static final double HR_PER_DAY = 24;

  /// Logarithms of rate, midpoint and skew are held within these.
  private static final double[] LEAST = {
    -20, -20, Math.log(FermentationCurve.LEAST_SKEW_NUMBER) + 1e-9
  };

  private static final double[] MOST = {
    5,
    Math.log(FermentationCurve.MOST_MIDPOINT_NUMBER) - 1e-9,
    Math.log(FermentationCurve.MOST_SKEW_NUMBER) - 1e-9
  };

  private final FermentationFit.Brew brew;
  private final FermentationReading[] readings;
  private final double[] priors;
  private final double[] doubts;
  private final RealMatrix noise;
  private final double[] extra;
  private RealVector at;
  private RealMatrix spread;

  private FermentationPosterior(FermentationFit.Brew brew, List<FermentationReading> all) {
    this.brew = brew;
    // Sums differ in their last digits by the order: one order, whichever they came in.
    this.readings =
        all.stream()
            .sorted(
                Comparator.comparingDouble(FermentationReading::clockHr)
                    .thenComparingDouble(FermentationReading::extractPlato)
                    .thenComparing(FermentationReading::by)
                    .thenComparingDouble(FermentationReading::doubtPlato))
            .toArray(FermentationReading[]::new);
    this.priors =
        new double[] {
          brew.attenuationFrac(),
          Math.log(FermentationCurve.RATE_PER_HR),
          Math.log(FermentationCurve.MIDPOINT_NUMBER),
          Math.log(FermentationCurve.SKEW_NUMBER),
          0
        };
    this.doubts =
        new double[] {
          brew.attenuationDoubtFrac(),
          FermentationFit.RATE_DOUBT_RATIO,
          FermentationFit.MIDPOINT_DOUBT_RATIO,
          brew.form().skewDoubtRatio(),
          1
        };
    this.noise = noise();
    this.extra = new double[readings.length];
    this.at = new ArrayRealVector(priors);
    this.spread = priorSpread();
  }

  /// The posterior of some readings, none of which is let bend the curve from afar.
  static FermentationPosterior of(FermentationFit.Brew brew, List<FermentationReading> readings) {
    FermentationPosterior found = new FermentationPosterior(brew, readings);
    if (found.readings.length > 0) {
      found.solve();
      found.weighDown();
    }
    return found;
  }

  double number(int index) {
    return at.getEntry(index);
  }

  double attenuationDoubtFrac() {
    return Math.sqrt(spread.getEntry(0, 0));
  }

  double startPlato() {
    return startPlato(at);
  }

  private double startPlato(RealVector point) {
    return brew.originalPlato() + brew.originalDoubtPlato() * point.getEntry(START);
  }

  double finalDoubtPlato() {
    double[] slope = new double[NUMBERS];
    slope[0] = -startPlato();
    slope[START] = brew.originalDoubtPlato() * (1 - at.getEntry(0));
    return sd(new ArrayRealVector(slope), spread);
  }

  boolean anyFarOff() {
    return Arrays.stream(extra).anyMatch(each -> each > 0);
  }

  private static double sd(RealVector slope, RealMatrix spread) {
    return Math.sqrt(Math.max(0, slope.dotProduct(spread.operate(slope))));
  }

  /// The beer's own extract at a time: what the curve, the last readings beside it and the doubt of
  /// both let expect. An instrument's doubt is not in it.
  FermentationFit.Ahead ahead(double clockHr) {
    return ahead(clockHr, each -> 0, 0);
  }

  /// What a further reading is expected to show: with the offset of its float, if it is one, and
  /// without the doubt of this one reading.
  FermentationFit.Ahead ahead(FermentationReading further) {
    return ahead(
        further.clockHr(),
        each -> Math.pow(further.sharedPlato(each), 2),
        Math.pow(further.sharedPlato(further), 2));
  }

  private FermentationFit.Ahead ahead(
      double clockHr, ToDoubleFunction<FermentationReading> offset, double ownOffset) {
    double left = left(at, clockHr).leftFrac();
    double middle = curvePlato(at, clockHr);
    RealVector slope = slope(clockHr);
    double own = commonVariance(clockHr, clockHr) + ownOffset;
    if (readings.length > 0) {
      RealVector shared = new ArrayRealVector(readings.length);
      for (int i = 0; i < readings.length; i++) {
        double common = commonVariance(clockHr, readings[i].clockHr());
        shared.setEntry(i, common + offset.applyAsDouble(readings[i]));
      }
      RealVector weights = covariance().solve(shared);
      middle += weights.dotProduct(misses(at));
      slope = slope.subtract(slopes().preMultiply(weights));
      own -= weights.dotProduct(shared);
    }
    double doubt = Math.sqrt(Math.max(0, own) + Math.pow(sd(slope, spread), 2));
    return new FermentationFit.Ahead(middle, doubt, left, chanceBelowFrac(clockHr));
  }

  /// By a normal distribution of `ln(w/(1 - w))`, which knows no limits.
  private double chanceBelowFrac(double clockHr) {
    Left here = left(at, clockHr);
    double left = Math.clamp(here.leftFrac(), 1e-300, 1 - 1e-12);
    RealVector slope = here.slope().mapDivide(left * (1 - left));
    double doubt = sd(slope, spread);
    double limit = Math.log(FermentationFit.LITTLE_FRAC / (1 - FermentationFit.LITTLE_FRAC));
    double odds = Math.log(left) - Math.log1p(-left);
    return doubt > 0 ? new NormalDistribution(odds, doubt).cumulativeProbability(limit) : 0;
  }

  /// The share that is left, and its slopes by the numbers of the curve.
  private record Left(double leftFrac, RealVector slope) {}

  /// Numbers that no beer has are held at the edge, where they have no slope.
  private Left left(RealVector point, double clockHr) {
    double[] held = new double[3];
    boolean[] free = new boolean[3];
    for (int i = 0; i < 3; i++) {
      held[i] = Math.clamp(point.getEntry(i + 1), LEAST[i], MOST[i]);
      free[i] = held[i] == point.getEntry(i + 1);
    }
    double tau = Math.exp(held[0]) * clockHr;
    double middle = Math.exp(held[1]);
    double s = Math.exp(held[2]);
    boolean fromPitch = brew.form().fromPitch();
    double w =
        fromPitch
            ? FermentationCurve.fromPitchFrac(tau, middle, s)
            : FermentationCurve.leftFrac(tau, middle, s);
    // ln(exp(tau) - 1) rises with tau by 1/(1 - exp(-tau)).
    double begun = fromPitch ? Math.max(1e-300, -Math.expm1(-tau)) : 1;
    double grown = s * begun * Math.exp(Math.min(600, tau - middle));
    double byGrowth = -w / s * grown / (1 + grown);
    double bySkew = w / s * (Math.log1p(grown) - grown / (1 + grown));
    double[] slope = new double[NUMBERS];
    slope[1] = free[0] ? byGrowth * tau / begun : 0;
    slope[2] = free[1] ? -byGrowth * middle : 0;
    slope[3] = free[2] ? bySkew : 0;
    return new Left(w, new ArrayRealVector(slope));
  }

  private double curvePlato(RealVector point, double clockHr) {
    double start = startPlato(point);
    double fall = start * point.getEntry(0);
    double fallen = fall * (1 - left(point, clockHr).leftFrac());
    return start - fallen;
  }

  private RealVector slope(double clockHr) {
    Left here = left(at, clockHr);
    double fermented = 1 - here.leftFrac();
    RealVector slope = here.slope().mapMultiply(startPlato() * at.getEntry(0));
    slope.setEntry(0, -startPlato() * fermented);
    slope.setEntry(START, brew.originalDoubtPlato() * (1 - at.getEntry(0) * fermented));
    return slope;
  }

  private RealMatrix slopes() {
    RealMatrix slopes = new Array2DRowRealMatrix(readings.length, NUMBERS);
    for (int i = 0; i < readings.length; i++) {
      slopes.setRowVector(i, slope(readings[i].clockHr()));
    }
    return slopes;
  }

  private RealVector misses(RealVector point) {
    RealVector misses = new ArrayRealVector(readings.length);
    for (int i = 0; i < readings.length; i++) {
      double curve = curvePlato(point, readings[i].clockHr());
      misses.setEntry(i, readings[i].extractPlato() - curve);
    }
    return misses;
  }

  /// What the beer's distance from the curve has in common at two times.
  private double commonVariance(double oneHr, double otherHr) {
    double model = Math.pow(brew.form().modelDoubtPlato(), 2);
    double wander = Math.pow(brew.form().wanderInDayPlato(), 2);
    return model * Math.exp(-Math.abs(oneHr - otherHr) / FermentationFit.FADES_HR)
        + wander * Math.min(oneHr, otherHr) / HR_PER_DAY;
  }

  private RealMatrix noise() {
    int count = readings.length;
    RealMatrix noise = new Array2DRowRealMatrix(Math.max(1, count), Math.max(1, count));
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < count; j++) {
        double common = commonVariance(readings[i].clockHr(), readings[j].clockHr());
        common += Math.pow(readings[i].sharedPlato(readings[j]), 2);
        noise.setEntry(i, j, common + (i == j ? Math.pow(readings[i].doubtPlato(), 2) : 0));
      }
    }
    return noise;
  }

  private RealMatrix weighedNoise() {
    return noise.add(MatrixUtils.createRealDiagonalMatrix(extra));
  }

  private DecompositionSolver covariance() {
    return new CholeskyDecomposition(weighedNoise(), 1e-10, 1e-14).getSolver();
  }

  private RealMatrix priorSpread() {
    double[] squares = Arrays.stream(doubts).map(doubt -> doubt * doubt).toArray();
    return MatrixUtils.createRealDiagonalMatrix(squares);
  }

  /// Least squares of the readings, in doubts that are independent (whitened), and of the priors;
  /// always from the priors, so that no earlier answer leads it.
  private void solve() {
    RealMatrix root = new CholeskyDecomposition(weighedNoise(), 1e-10, 1e-14).getL();
    LeastSquaresOptimizer.Optimum best =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(priors)
                    .target(new double[readings.length + NUMBERS])
                    .model(point -> model(point, root))
                    .maxEvaluations(ROUNDS)
                    .maxIterations(ROUNDS)
                    .build());
    at = best.getPoint();
    spread = best.getCovariances(SINGULAR_RATIO);
  }

  private Pair<RealVector, RealMatrix> model(RealVector point, RealMatrix root) {
    at = point;
    RealVector misses = misses(point);
    RealMatrix slopes = slopes();
    MatrixUtils.solveLowerTriangularSystem(root, misses);
    RealMatrix all = new Array2DRowRealMatrix(readings.length + NUMBERS, NUMBERS);
    for (int i = 0; i < NUMBERS; i++) {
      RealVector column = slopes.getColumnVector(i);
      MatrixUtils.solveLowerTriangularSystem(root, column);
      all.setColumnVector(i, column.mapMultiply(-1).append(new ArrayRealVector(NUMBERS)));
      all.setEntry(readings.length + i, i, 1 / doubts[i]);
    }
    RealVector off = new ArrayRealVector(NUMBERS);
    for (int i = 0; i < NUMBERS; i++) {
      off.setEntry(i, (point.getEntry(i) - priors[i]) / doubts[i]);
    }
    return new Pair<>(misses.append(off), all);
  }

  /// Lets the doubt of a reading grow until it lies three doubts beside what all others let expect.
  /// The farthest first: one wild reading makes its honest neighbours look odd.
  private void weighDown() {
    boolean[] far = new boolean[extra.length];
    for (int round = 0; round < WEIGHINGS; round++) {
      double[] wanted = wanted();
      int farthest = -1;
      double most = 0;
      boolean settled = true;
      for (int i = 0; i < extra.length; i++) {
        if (far[i]) {
          settled &= Math.abs(wanted[i] - extra[i]) <= SETTLED_RATIO * (1 + wanted[i]);
          extra[i] = wanted[i];
        } else if (wanted[i] > most) {
          farthest = i;
          most = wanted[i];
        }
      }
      if (farthest >= 0) {
        far[farthest] = true;
        extra[farthest] = most;
      } else if (settled) {
        return;
      }
      solve();
    }
  }

  /// What must be added to the variance of each reading, by leaving it out: with the covariance K
  /// of all readings under the priors, `[K^-1 e]/[K^-1]` is its miss of what the others let expect
  /// and `1/[K^-1]` the variance of that.
  private double[] wanted() {
    RealMatrix slopes = slopes();
    RealVector fromPriors = at.subtract(new ArrayRealVector(priors));
    RealVector misses = misses(at).add(slopes.operate(fromPriors));
    RealMatrix all =
        weighedNoise().add(slopes.multiply(priorSpread()).multiply(slopes.transpose()));
    RealMatrix inverse = new CholeskyDecomposition(all, 1e-10, 1e-14).getSolver().getInverse();
    RealVector weighed = inverse.operate(misses);
    double[] wanted = new double[extra.length];
    for (int i = 0; i < wanted.length; i++) {
      double variance = 1 / inverse.getEntry(i, i);
      double miss = weighed.getEntry(i) * variance;
      double plain = variance - extra[i];
      wanted[i] = Math.max(0, miss * miss / Math.pow(FermentationFit.GATE_RATIO, 2) - plain);
    }
    return wanted;
  }
}
