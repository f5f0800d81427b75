package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/// Ferments whose truth is known: drawn from the priors of the fit, or run by a published model of
/// another kind, whose sugar is taken for the share that is left.
@AnyUnit("test helper")
final class InventedFerments {
  /// Readings of one ferment, evenly from pitching to a while after its end.
  static final int READ = 9;

  private static final Map<List<Double>, Course> RUN = new ConcurrentHashMap<>();
  private static final double LONGEST_HR = 500;
  private static final double WARMS_HR = 36;

  /// No reading comes so many times as late as 2 % are left.
  private static final double LOOKED_AT_RATIO = 2.2;

  private InventedFerments() {}

  enum Kind {
    /// The fit's own curve and priors, and an error of the model that fades as the fit believes.
    PRIORS,
    /// The same, pitched up to 6 K colder than it is told and a day and a half in warming.
    COLD_PITCH,
    /// De Andres-Toro 1998 at 12 to 14 C: a lag, then an almost even fall that ends abruptly.
    LATENT_YEAST,
    /// Gee and Ramirez 1988 at 16 to 20 C: no lag, and a slow tail of maltotriose.
    THREE_SUGARS
  }

  /// What was told wrong.
  ///
  /// @param warmerK the beer was told so much warmer than it was
  /// @param strongerPlato the start was told so much stronger
  record Told(double warmerK, double strongerPlato) {}

  /// One ferment and its readings.
  ///
  /// @param brew as it was told
  /// @param points the beer itself at each reading
  /// @param endPlato where it really ends
  /// @param readings of a hydrometer
  record Ferment(
      FermentationFit.Brew brew,
      List<Point> points,
      double endPlato,
      List<FermentationReading> readings) {}

  /// The beer itself at one reading.
  ///
  /// @param clockHr by the temperature that was told
  /// @param beerPlato its own extract
  /// @param leftFrac what is left
  record Point(double clockHr, double beerPlato, double leftFrac) {}

  private record Course(double fermentC, DoubleUnaryOperator leftFrac, double endHr) {}

  static RandomGenerator random(long seed) {
    return RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
  }

  static Ferment ferment(Kind kind, Told told, long seed) {
    return ferment(kind, told, 1.15, seed);
  }

  /// @param spanRatio the last reading comes so many times as late as 2 % are left
  static Ferment ferment(Kind kind, Told told, double spanRatio, long seed) {
    RandomGenerator random = random(seed);
    double start = 12 + 0.15 * random.nextGaussian();
    double attenuation = 0.77 + 0.04 * random.nextGaussian();
    Course course = own(kind) ? logistic(kind, random) : modelled(kind, random);
    double clock = FermentationFit.clockRatio(course.fermentC + told.warmerK);
    double apartHr = spanRatio * course.endHr / READ;
    double keeps = Math.exp(-apartHr * FermentationFit.clockRatio(course.fermentC) / 6);
    List<Point> points = new ArrayList<>();
    List<FermentationReading> readings = new ArrayList<>();
    double beside = 0.25 * random.nextGaussian();
    for (int i = 0; i < READ; i++) {
      double hr = apartHr * (i + 1);
      beside = keeps * beside + 0.25 * Math.sqrt(1 - keeps * keeps) * random.nextGaussian();
      double left = course.leftFrac.applyAsDouble(hr);
      double curve = start * (1 - attenuation * (1 - left));
      double beer = curve + (own(kind) ? beside : 0);
      points.add(new Point(hr * clock, beer, left));
      readings.add(new FermentationReading(hr * clock, beer + 0.2 * random.nextGaussian()));
    }
    return new Ferment(
        FermentationFit.Brew.of(12 + told.strongerPlato, 0.15),
        List.copyOf(points),
        start * (1 - attenuation),
        List.copyOf(readings));
  }

  private static boolean own(Kind kind) {
    return kind == Kind.PRIORS || kind == Kind.COLD_PITCH;
  }

  private static Course logistic(Kind kind, RandomGenerator random) {
    double rate = 0.1 * Math.exp(0.35 * random.nextGaussian());
    double middle = 3.2 * Math.exp(0.25 * random.nextGaussian());
    double skew = Math.exp(0.4 * random.nextGaussian());
    double fermentC = random.nextDouble(14, 24);
    double here = FermentationCurve.ratePerHr(fermentC, rate, 2.2);
    if (kind == Kind.PRIORS) {
      return new Course(
          fermentC,
          hr -> FermentationCurve.fromPitchFrac(here * hr, middle, skew),
          FermentationCurve.timeHr(0.02, fermentC, rate, middle, skew, 2.2));
    }
    double[] atHr = {0, WARMS_HR};
    double[] warmingC = {fermentC - random.nextDouble(0, 6), fermentC};
    double lostNumber =
        WARMS_HR * here - FermentationCurve.thermalNumber(atHr, warmingC, WARMS_HR, rate, 2.2);
    return new Course(
        fermentC,
        hr -> {
          double tau = FermentationCurve.thermalNumber(atHr, warmingC, hr, rate, 2.2);
          return FermentationCurve.fromPitchFrac(tau, middle, skew);
        },
        FermentationCurve.timeHr(0.02, fermentC, rate, middle, skew, 2.2) + lostNumber / here);
  }

  private static Course modelled(Kind kind, RandomGenerator random) {
    double pitched = Math.exp(0.3 * random.nextGaussian());
    boolean latent = kind == Kind.LATENT_YEAST;
    double fermentC = latent ? random.nextDouble(12, 14) : random.nextDouble(16, 20);
    double[] tank =
        latent
            ? new double[] {1.92 * pitched, 0.08 * pitched, 2, 130, 0, 0, 0}
            : new double[] {random.nextDouble(50, 100), 220, 40, 125 * pitched, 0};
    List<Double> began = new ArrayList<>(List.of(fermentC));
    Arrays.stream(tank).forEach(began::add);
    return RUN.computeIfAbsent(List.copyOf(began), _ -> run(latent, fermentC, tank));
  }

  /// Other models take long to be carried out; what is told of a ferment does not change it.
  private static Course run(boolean latent, double fermentC, double[] began) {
    double[] tank = began;
    FixedStep.Slope slope =
        latent ? DeAndresToro1998.slope(fermentC, 130) : GeeRamirez1988.slope(fermentC);
    double[] left = new double[(int) LONGEST_HR + 1];
    double all = sugar(latent, tank);
    double endHr = LONGEST_HR;
    for (int hr = 0; hr < left.length; hr++) {
      if (hr > LOOKED_AT_RATIO * endHr) {
        left[hr] = left[hr - 1];
        continue;
      }
      left[hr] = Math.max(0, sugar(latent, tank) / all);
      endHr = left[hr] < 0.02 ? Math.min(endHr, hr) : endHr;
      tank = FixedStep.after(tank, 1, latent ? 0.02 : 0.005, slope);
    }
    return new Course(
        fermentC,
        hr -> {
          int whole = (int) Math.min(LONGEST_HR - 1, hr);
          return left[whole] + (left[whole + 1] - left[whole]) * (hr - whole);
        },
        endHr);
  }

  /// In glucose: maltose counts twice, maltotriose three times.
  private static double sugar(boolean latent, double[] tank) {
    return latent ? tank[3] : tank[0] + 2 * tank[1] + 3 * tank[2];
  }

  /// How good forecasts were with so many readings.
  ///
  /// @param endPlato root mean square miss of the final extract
  /// @param endHeldFrac share of 80 % ranges of it that held
  /// @param restPlato root mean square miss of all later readings' true extract
  /// @param latePlato the same of the last third alone: the same moments for any number of readings
  /// @param lateHeldFrac share of 80 % ranges of these that held
  record Score(
      double endPlato,
      double endHeldFrac,
      double restPlato,
      double latePlato,
      double lateHeldFrac) {
    @Override
    public String toString() {
      return String.format(
          java.util.Locale.ROOT,
          "end %.2f P (%.2f held), rest %.2f P, last third %.2f P (%.2f held)",
          endPlato,
          endHeldFrac,
          restPlato,
          latePlato,
          lateHeldFrac);
    }
  }

  /// Scores after 0 to 9 readings; seeds 1 to `brews`.
  static List<Score> scores(Kind kind, Told told, int brews) {
    double[][] sums = new double[READ + 1][5];
    for (int seed = 1; seed <= brews; seed++) {
      Ferment ferment = ferment(kind, told, seed);
      for (int count = 0; count <= READ; count++) {
        add(sums[count], ferment, count);
      }
    }
    List<Score> scores = new ArrayList<>();
    for (double[] sum : sums) {
      scores.add(
          new Score(
              Math.sqrt(sum[0] / brews),
              sum[1] / brews,
              Math.sqrt(sum[2] / brews),
              Math.sqrt(sum[3] / brews),
              sum[4] / brews));
    }
    return scores;
  }

  private static void add(double[] sum, Ferment ferment, int count) {
    FermentationPosterior fitted =
        FermentationPosterior.of(ferment.brew, ferment.readings.subList(0, count));
    double end = fitted.startPlato() * (1 - fitted.number(0));
    double endMiss = end - ferment.endPlato;
    sum[0] += endMiss * endMiss;
    sum[1] += Math.abs(endMiss) < 1.2816 * fitted.finalDoubtPlato() ? 1 : 0;
    int late = READ - READ / 3;
    for (int i = 0; i < READ; i++) {
      FermentationFit.Ahead ahead = fitted.ahead(ferment.points.get(i).clockHr());
      double miss = ahead.extractPlato() - ferment.points.get(i).beerPlato();
      if (i >= count) {
        sum[2] += miss * miss / (READ - count);
      }
      if (i >= late && count <= late) {
        sum[3] += miss * miss / (READ - late);
        sum[4] += (Math.abs(miss) < 1.2816 * ahead.doubtPlato() ? 1.0 : 0) / (READ - late);
      }
    }
  }
}
