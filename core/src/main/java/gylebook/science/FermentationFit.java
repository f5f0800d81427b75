package gylebook.science;

import java.util.ArrayList;
import java.util.List;
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
/// is taken as known and the temperature as seen; where they are not, early readings can make the
/// forecast worse than none.
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

  private FermentationFit() {}

  /// One fermentation's curve.
  ///
  /// @param attenuationFrac where the apparent attenuation will end
  /// @param attenuationDoubtFrac its standard deviation
  /// @param finalPlato where the extract will end
  /// @param ratePerHr rate of the clock at 20 C
  /// @param midpointNumber thermal time of the middle
  /// @param skewNumber how lopsided it is
  public record Fitted(
      double attenuationFrac,
      double attenuationDoubtFrac,
      double finalPlato,
      double ratePerHr,
      double midpointNumber,
      double skewNumber) {}

  /// One reading of the apparent extract.
  ///
  /// @param clockHr hours since pitching, counted as hours at 20 C: the thermal time for a rate of
  ///   1
  /// @param extractPlato as read, degassed and at its temperature
  public record Reading(double clockHr, double extractPlato) {}

  /// The most probable curve at one temperature.
  ///
  /// Priors: attenuation 0.77 give or take 0.04, rate 0.10 per hour (35 %), midpoint 3.2 (25 %),
  /// skew 1 (40 %); Q10 2.2.
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
      @Usually(0.3) double doubtPlato) {
    double clock = FermentationCurve.ratePerHr(fermentC, 1, FermentationCurve.Q10_FACTOR);
    return fitted(originalPlato, read(readings, clock), doubtPlato);
  }

  /// The most probable curve for any temperature history.
  ///
  /// - Valid, Source: as above.
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "reid2021", at = "introduction", trust = Trust.READ)
  public static Fitted fitted(double originalPlato, List<Reading> readings, double doubtPlato) {
    Require.within("original extract in P", originalPlato, 1, 40);
    Require.within("doubt of a reading in P", doubtPlato, 0.01, 5);
    for (Reading reading : readings) {
      Require.notBelow0("time of a reading in h", reading.clockHr());
      Require.within("reading in P", reading.extractPlato(), -10, 45);
    }
    LeastSquaresOptimizer.Optimum best =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(PRIORS)
                    .target(new double[readings.size() + PRIORS.length])
                    .model(at -> model(at, originalPlato, readings, doubtPlato))
                    .maxEvaluations(ROUNDS)
                    .maxIterations(ROUNDS)
                    .build());
    RealVector at = best.getPoint();
    double end = at.getEntry(0);
    return new Fitted(
        end,
        best.getSigma(1e-12).getEntry(0),
        originalPlato * (1 - end),
        Math.exp(at.getEntry(1)),
        Math.exp(at.getEntry(2)),
        Math.exp(at.getEntry(3)));
  }

  private static Pair<RealVector, RealMatrix> model(
      RealVector at, double originalPlato, List<Reading> readings, double doubtPlato) {
    RealVector here = misses(at, originalPlato, readings, doubtPlato);
    RealMatrix slopes = MatrixUtils.createRealMatrix(here.getDimension(), at.getDimension());
    for (int i = 0; i < at.getDimension(); i++) {
      RealVector up = at.copy();
      up.addToEntry(i, STEP_NUMBER);
      RealVector down = at.copy();
      down.addToEntry(i, -STEP_NUMBER);
      slopes.setColumnVector(
          i,
          misses(up, originalPlato, readings, doubtPlato)
              .subtract(misses(down, originalPlato, readings, doubtPlato))
              .mapDivide(2 * STEP_NUMBER));
    }
    return new Pair<>(here, slopes);
  }

  /// Readings less curve, each in its own doubt; then the parameters less their priors.
  private static RealVector misses(
      RealVector at, double originalPlato, List<Reading> readings, double doubtPlato) {
    RealVector misses = new ArrayRealVector(readings.size() + PRIORS.length);
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
    try {
      return Double.parseDouble(text.replace(',', '.'));
    } catch (NumberFormatException odd) {
      throw new IllegalArgumentException(
          "'" + text + "' is no number; write readings as 24:9.1 48:4.7.", odd);
    }
  }
}
