package gylebook.science;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.special.Gamma;

/// Several thermometers that read one place: their mean, and whether they may be averaged at all.
///
/// The test presumes independent errors: instruments calibrated against each other are not.
public final class Thermometers {
  private static final double ACCEPTED_FRAC = 0.05;

  private Thermometers() {}

  /// One reading and its standard uncertainty.
  public record Reading(double readC, double doubtK) {
    /// Refuses a reading without a doubt.
    public Reading {
      Require.above0("doubt of the reading", doubtK);
      Require.within("doubt of the reading in K", doubtK, 1e-9, 1e9);
      Require.within("reading", readC, -273.15, 2000);
    }
  }

  /// What readings make together.
  ///
  /// @param meanC the mean, weighted by the inverse squares of the doubts
  /// @param doubtK its standard uncertainty
  /// @param chiSquareNumber squared deviations over squared doubts
  /// @param probabilityFrac chance of that much or more if all doubts are honest
  /// @param birgeRatio root of chi-square over its freedom; well above 1 means disagreement
  public record Together(
      double meanC,
      double doubtK,
      double chiSquareNumber,
      double probabilityFrac,
      double birgeRatio) {
    /// Whether they may be averaged, at the usual 5 %.
    @Source(key = "cox-2002", at = "procedure A", trust = Trust.MEMORY)
    public boolean agree() {
      return probabilityFrac >= ACCEPTED_FRAC;
    }
  }

  /// Weighted mean of two thermometers and their agreement.
  @Source(key = "cox-2002", at = "procedure A", trust = Trust.MEMORY)
  @Source(key = "cox-2007", at = "abstract: weighted mean", trust = Trust.READ)
  @Reckoned(
      name = "two-thermometers",
      says = "What do two thermometers say together, and do they agree?",
      equation = "x = sum(x_i/u_i^2) / sum(1/u_i^2), chi2 = sum((x_i - x)^2/u_i^2)",
      range = "independent errors; below a probability of 0.05 do not average")
  public static Together ofTwo(
      double firstC, double firstDoubtK, double secondC, double secondDoubtK) {
    return of(List.of(new Reading(firstC, firstDoubtK), new Reading(secondC, secondDoubtK)));
  }

  /// Weighted mean of three thermometers and their agreement.
  @Source(key = "cox-2002", at = "procedure A", trust = Trust.MEMORY)
  @Source(key = "cox-2007", at = "abstract: weighted mean", trust = Trust.READ)
  @Reckoned(
      name = "three-thermometers",
      says = "What do three thermometers say together, and do they agree?",
      equation = "x = sum(x_i/u_i^2) / sum(1/u_i^2), chi2 = sum((x_i - x)^2/u_i^2)",
      range = "independent errors; below a probability of 0.05 do not average")
  public static Together ofThree(
      double firstC,
      double firstDoubtK,
      double secondC,
      double secondDoubtK,
      double thirdC,
      double thirdDoubtK) {
    return of(
        List.of(
            new Reading(firstC, firstDoubtK),
            new Reading(secondC, secondDoubtK),
            new Reading(thirdC, thirdDoubtK)));
  }

  /// The same for any number of readings; one alone agrees with itself.
  @Source(key = "cox-2002", at = "procedure A", trust = Trust.MEMORY)
  public static Together of(List<Reading> readings) {
    double weights = 0;
    double weighted = 0;
    for (Reading each : readings) {
      double weight = 1 / (each.doubtK * each.doubtK);
      weights += weight;
      weighted += weight * each.readC;
    }
    double mean = weighted / Require.above0("sum of weights", weights);
    double chi = 0;
    for (Reading each : readings) {
      chi += Math.pow((each.readC - mean) / each.doubtK, 2);
    }
    int freedom = readings.size() - 1;
    return new Together(
        mean,
        Math.sqrt(1 / weights),
        chi,
        freedom == 0 ? 1 : Gamma.regularizedGammaQ(freedom / 2.0, chi / 2),
        freedom == 0 ? 0 : Math.sqrt(chi / freedom));
  }

  /// The largest set of readings that agree; of equally large ones the one that agrees best.
  @Source(key = "cox-2007", at = "abstract: largest consistent subset", trust = Trust.READ)
  public static List<Reading> largestAgreeing(List<Reading> readings) {
    if (readings.isEmpty() || readings.size() > 16) {
      throw new IllegalArgumentException(
          "there are " + readings.size() + " readings; 1 to 16 can be compared.");
    }
    List<Reading> best = List.of();
    double bestFrac = 0;
    for (int set = 1; set < 1 << readings.size(); set++) {
      List<Reading> some = chosen(readings, set);
      Together together = of(some);
      boolean better =
          some.size() > best.size()
              || (some.size() == best.size() && together.probabilityFrac > bestFrac);
      if (together.agree() && better) {
        best = some;
        bestFrac = together.probabilityFrac;
      }
    }
    return best;
  }

  /// How far two readings differ in units of their joint expanded doubt (k = 2); 1 or less passes.
  @Source(key = "iso-13528", at = "normalised error", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "thermometer-difference",
      says = "Do two thermometers differ by more than their doubts allow?",
      equation = "E_n = (x_a - x_b) / sqrt((2 u_a)^2 + (2 u_b)^2)",
      range = "independent errors; between -1 and 1 passes")
  public static double normalisedErrorRatio(
      double firstC, double firstDoubtK, double secondC, double secondDoubtK) {
    double doubt =
        Math.hypot(
            Require.above0("doubt of the first", firstDoubtK),
            Require.above0("doubt of the second", secondDoubtK));
    return (Require.temperatureC("first", firstC) - Require.temperatureC("second", secondC))
        / (2 * doubt);
  }

  private static List<Reading> chosen(List<Reading> readings, int set) {
    List<Reading> some = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      if ((set >> i & 1) == 1) {
        some.add(readings.get(i));
      }
    }
    return some;
  }
}
