package gylebook.science;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/// The curve of one fermentation, from its readings and from what is expected of any.
///
/// The most probable curve: least squares over readings and priors together, by Levenberg and
/// Marquardt; the doubt is that of a normal distribution about it (Laplace). The original extract
/// is free within its own doubt: fixed to a wrong one, early readings make the forecast worse than
/// none. A lag needs no number of its own: it only adds to the thermal time of the middle, which is
/// free. The temperature is taken as seen.
public final class FermentationFit {
  /// Attenuation; then the logarithms of rate, midpoint and skew.
  private static final double[] PRIORS = {
    0.77,
    Math.log(FermentationCurve.RATE_PER_HR),
    Math.log(FermentationCurve.MIDPOINT_NUMBER),
    Math.log(FermentationCurve.SKEW_NUMBER)
  };

  private static final double[] DOUBTS = {0.04, 0.35, 0.25, 0.4};
  private static final double STEP_NUMBER = 1e-6;
  private static final int ROUNDS = 1000;

  /// Doubts beyond which a reading does not belong to the curve.
  private static final double GATE_NUMBER = 3;

  private static final int LEAST_TO_JUDGE = 2;

  private FermentationFit() {}

  /// One fermentation's curve.
  ///
  /// @param attenuationFrac where the apparent attenuation will end
  /// @param attenuationDoubtFrac its standard deviation
  /// @param finalPlato where the extract will end
  /// @param ratePerHr rate of the clock at 20 C
  /// @param midpointNumber thermal time of the middle
  /// @param skewNumber how lopsided it is
  /// @param startPlato where it began, by the readings
  /// @param farOff a reading lies more than three of its doubts beside the curve: read it again
  /// @param slow the last two readings both lie more than three doubts above what the earlier ones
  ///   let expect: look at warmth, pitch and oxygen
  public record Fitted(
      double attenuationFrac,
      double attenuationDoubtFrac,
      double finalPlato,
      double ratePerHr,
      double midpointNumber,
      double skewNumber,
      double startPlato,
      boolean farOff,
      boolean slow) {}

  /// One reading of the apparent extract.
  ///
  /// @param clockHr hours since pitching, counted as hours at 20 C: the thermal time for a rate of
  ///   1
  /// @param extractPlato as read, degassed and at its temperature
  public record Reading(double clockHr, double extractPlato) {}

  /// The most probable curve at one temperature.
  ///
  /// Priors: attenuation 0.77 give or take 0.04, rate 0.10 per hour (35 %), midpoint 3.2 (25 %),
  /// skew 1 (40 %); Q10 2.2; original extract as gauged, give or take 0.15 P.
  ///
  /// - Valid: 8 to 26 C. Take 0.3 P for the doubt of a reading, not a spindle's 0.2: bands with 0.2
  ///   were found too narrow late, because the curve is not the beer.
  /// - Source: the form by Speers 2003 and Reid 2021; the priors are an engineer's.
  ///
  /// @param readings hours and degrees Plato, as `24:9.1 48:4.7 60:3.5`
  @Reckoned(
      name = "ferment-fit",
      says = "Where a fermentation will end, from its readings so far.",
      equation = "least squares of readings and priors on P = P_end + (P0 - P_end) w",
      range = "8 to 26 C at one temperature; the spindle decides, never package by it")
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "reid2021", at = "introduction", trust = Trust.READ)
  public static Fitted fitted(
      double originalPlato,
      @Span(
              least = 8,
              most = 26,
              beyond = "no fermentation that the priors rest on was so cold or so warm")
          @Usually(20)
          double fermentC,
      String readings,
      @Usually(0.3) double doubtPlato,
      @Usually(0.15) double originalDoubtPlato) {
    double clock = FermentationCurve.ratePerHr(fermentC, 1, FermentationCurve.Q10_FACTOR);
    return fitted(originalPlato, originalDoubtPlato, read(readings, clock), doubtPlato);
  }

  /// The same with an original extract that is known for certain.
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  public static Fitted fitted(
      double originalPlato, double fermentC, String readings, double doubtPlato) {
    return fitted(originalPlato, fermentC, readings, doubtPlato, 0);
  }

  /// The most probable curve for any temperature history.
  ///
  /// - Valid, Source: as above.
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "reid2021", at = "introduction", trust = Trust.READ)
  public static Fitted fitted(double originalPlato, List<Reading> readings, double doubtPlato) {
    return fitted(originalPlato, 0, readings, doubtPlato);
  }

  /// The same with a doubt of the original extract; 0 takes it as known.
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  public static Fitted fitted(
      double originalPlato, double originalDoubtPlato, List<Reading> readings, double doubtPlato) {
    Require.within("original extract in P", originalPlato, 1, 40);
    Require.within("doubt of the original extract in P", originalDoubtPlato, 0, 5);
    Require.within("doubt of a reading in P", doubtPlato, 0.01, 5);
    for (Reading reading : readings) {
      Require.notBelow0("time of a reading in h", reading.clockHr());
      Require.within("reading in P", reading.extractPlato(), -10, 45);
    }
    Start start = new Start(originalPlato, originalDoubtPlato);
    LeastSquaresOptimizer.Optimum best = best(start, readings, doubtPlato);
    RealVector at = best.getPoint();
    double end = at.getEntry(0);
    double startPlato = start.startPlato(at);
    return new Fitted(
        end,
        best.getSigma(1e-12).getEntry(0),
        startPlato * (1 - end),
        Math.exp(at.getEntry(1)),
        Math.exp(at.getEntry(2)),
        Math.exp(at.getEntry(3)),
        startPlato,
        farOff(misses(at, start, readings, doubtPlato), readings.size()),
        slow(start, readings, doubtPlato));
  }

  private static LeastSquaresOptimizer.Optimum best(
      Start start, List<Reading> readings, double doubtPlato) {
    return new LevenbergMarquardtOptimizer()
        .optimize(
            new LeastSquaresBuilder()
                .start(Arrays.copyOf(PRIORS, PRIORS.length + 1))
                .target(new double[readings.size() + PRIORS.length + 1])
                .model(at -> model(at, start, readings, doubtPlato))
                .maxEvaluations(ROUNDS)
                .maxIterations(ROUNDS)
                .build());
  }

  private static boolean farOff(RealVector misses, int readingsCount) {
    return IntStream.range(0, readingsCount)
        .anyMatch(i -> Math.abs(misses.getEntry(i)) > GATE_NUMBER);
  }

  /// Whether the last two readings lie high against the curve of those before them. Both doubts
  /// count, the readings' and the curve's: two readings hardly tell yet where a third will be.
  private static boolean slow(Start start, List<Reading> readings, double doubtPlato) {
    if (readings.size() < LEAST_TO_JUDGE + 2) {
      return false;
    }
    List<Reading> inTime =
        readings.stream().sorted(Comparator.comparingDouble(Reading::clockHr)).toList();
    List<Reading> before = inTime.subList(0, inTime.size() - 2);
    List<Reading> last = inTime.subList(inTime.size() - 2, inTime.size());
    LeastSquaresOptimizer.Optimum best = best(start, before, doubtPlato);
    Pair<RealVector, RealMatrix> ahead = model(best.getPoint(), start, last, doubtPlato);
    RealMatrix spread = best.getCovariances(1e-12);
    return IntStream.range(0, 2)
        .allMatch(
            i -> {
              RealVector slope = ahead.getSecond().getRowVector(i);
              double doubt = Math.sqrt(1 + slope.dotProduct(spread.operate(slope)));
              return ahead.getFirst().getEntry(i) > GATE_NUMBER * doubt;
            });
  }

  /// The original extract as gauged, and its doubt; the last parameter counts it in doubts.
  private record Start(double gaugedPlato, double doubtPlato) {
    double startPlato(RealVector at) {
      return gaugedPlato + doubtPlato * at.getEntry(PRIORS.length);
    }
  }

  private static Pair<RealVector, RealMatrix> model(
      RealVector at, Start start, List<Reading> readings, double doubtPlato) {
    RealVector here = misses(at, start, readings, doubtPlato);
    RealMatrix slopes = MatrixUtils.createRealMatrix(here.getDimension(), at.getDimension());
    for (int i = 0; i < at.getDimension(); i++) {
      RealVector up = at.copy();
      up.addToEntry(i, STEP_NUMBER);
      RealVector down = at.copy();
      down.addToEntry(i, -STEP_NUMBER);
      slopes.setColumnVector(
          i,
          misses(up, start, readings, doubtPlato)
              .subtract(misses(down, start, readings, doubtPlato))
              .mapDivide(2 * STEP_NUMBER));
    }
    return new Pair<>(here, slopes);
  }

  /// Readings less curve, each in its own doubt; then the parameters less their priors.
  private static RealVector misses(
      RealVector at, Start start, List<Reading> readings, double doubtPlato) {
    RealVector misses = new ArrayRealVector(readings.size() + PRIORS.length + 1);
    double originalPlato = start.startPlato(at);
    double fall = originalPlato * at.getEntry(0);
    double middle = Math.min(FermentationCurve.MOST_MIDPOINT_NUMBER, Math.exp(at.getEntry(2)));
    double skew =
        Math.clamp(
            Math.exp(at.getEntry(3)),
            FermentationCurve.LEAST_SKEW_NUMBER,
            FermentationCurve.MOST_SKEW_NUMBER);
    for (int i = 0; i < readings.size(); i++) {
      double tau = Math.exp(at.getEntry(1)) * readings.get(i).clockHr();
      double fallen = fall * (1 - FermentationCurve.leftFrac(tau, middle, skew));
      double curve = originalPlato - fallen;
      misses.setEntry(i, (readings.get(i).extractPlato() - curve) / doubtPlato);
    }
    for (int i = 0; i < PRIORS.length; i++) {
      misses.setEntry(readings.size() + i, (at.getEntry(i) - PRIORS[i]) / DOUBTS[i]);
    }
    misses.setEntry(readings.size() + PRIORS.length, at.getEntry(PRIORS.length));
    return misses;
  }

  private static List<Reading> read(String readings, double clockRatio) {
    List<Reading> found = new ArrayList<>();
    for (String pair : readings.strip().split("[\\s;]+", -1)) {
      String[] parts = pair.split(":", -1);
      if (parts.length != 2) {
        throw new IllegalArgumentException(
            "'" + pair + "' is no reading; write hours and degrees Plato as 24:9.1 48:4.7.");
      }
      double held = number(parts[0]);
      double extract = number(parts[1]);
      found.add(new Reading(held * clockRatio, extract));
    }
    return found;
  }

  private static double number(String text) {
    return Require.number(text, "readings as 24:9.1 48:4.7");
  }
}
