package gylebook.science;

import gylebook.units.ExtractScale;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/// Whether a fermentation is over, goes on, or is stuck.
///
/// The spindle alone never clears a beer for the bottle: the diacetyl test and the taste decide,
/// and after a dry hop it starts again.
public final class FermentationState {
  private static final double STEADY_SG = 0.001;
  private static final double STEADY_HR = 48;
  private static final double SURE_FRAC = 0.95;
  private static final double HIGH_RATIO = 2;
  private static final double STUCK_LEFT_FRAC = 0.15;
  private static final double STUCK_RATE_RATIO = 0.1;

  private FermentationState() {}

  /// What two readings say.
  ///
  /// @param leftFrac share of the fermentable extract that the later reading leaves
  /// @param rateRatio fall between the readings over the fall expected at that share
  /// @param steady the readings stand 48 h apart or more and within 0.001 of gravity
  /// @param stuck much is left and it hardly falls: look at warmth, pitch and oxygen; never package
  public record State(double leftFrac, double rateRatio, boolean steady, boolean stuck) {}

  /// Whether a fermentation is over.
  ///
  /// @param leftFrac share of the fermentable extract that is left at the last reading, in the
  ///   middle
  /// @param littleLeftChanceFrac chance that it is less than 2 %
  /// @param steady the hydrometer has stood within 0.001 of gravity for 48 h or longer
  /// @param endsHigh the curve ends more than two doubts above what was expected: a stuck beer
  ///   looks like that too
  /// @param done all of it: a chance above 95 %, steady, not high, and diacetyl smelt clean
  public record Over(
      double leftFrac,
      double littleLeftChanceFrac,
      boolean steady,
      boolean endsHigh,
      boolean done) {}

  /// The state of a fermentation from two readings.
  ///
  /// `w = (P - P_end)/(P0 - P_end)`; expected of w1 after a time t: `1/(1 + (1/w1 - 1) e^(B t))`
  ///
  /// - Valid: 8 to 26 C at one temperature between the readings, after the start (w below 0.9). The
  ///   limits (steady over 48 h; a tenth of the rate with 0.15 left) are this program's rules, not
  ///   measurements. The end is a forecast too: a forced test is better.
  /// - Source: the logistic of Speers 2003 with the rate of {@link FermentationCurve}.
  ///
  /// @param endPlato the extract it is expected to end at
  /// @param betweenHr hours between the readings
  @Reckoned(
      name = "ferment-state",
      says = "Whether a fermentation goes on, stands or is stuck, by two readings.",
      equation = "w = (P - Pend)/(P0 - Pend); fall against w1 - 1/(1 + (1/w1 - 1) e^(B t))",
      range = "8 to 26 C, w below 0.9; never package by it: diacetyl test, two steady readings")
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "practice", at = "limits of steady and stuck", trust = Trust.PRACTICE)
  public static State state(
      double originalPlato,
      double endPlato,
      double earlierPlato,
      double laterPlato,
      @Usually(48) double betweenHr,
      @Span(
              least = 8,
              most = 26,
              beyond = "no fermentation that the priors rest on was so cold or so warm")
          @Usually(20)
          double fermentC) {
    Require.within("original extract in P", originalPlato, 0.1, 40);
    double fermentable = Require.above0("original above the end in P", originalPlato - endPlato);
    Require.within("earlier reading in P", earlierPlato, -5, originalPlato);
    Require.within("later reading in P", laterPlato, -5, originalPlato);
    Require.above0("hours between the readings", betweenHr);
    double left = Math.max(0, (laterPlato - endPlato) / fermentable);
    double before = Math.max(0, (earlierPlato - endPlato) / fermentable);
    double ratio =
        (earlierPlato - laterPlato) / expectedPlato(before, fermentable, betweenHr, fermentC);
    boolean steady = betweenHr >= STEADY_HR && together(earlierPlato, laterPlato);
    boolean stuck = left > STUCK_LEFT_FRAC && ratio < STUCK_RATE_RATIO;
    return new State(left, ratio, steady, stuck);
  }

  /// Whether a fermentation is over, by all its readings.
  ///
  /// `P(w < 0.02) > 0.95` at the last reading, by the doubt of the fitted curve; and the hydrometer
  /// within 0.001 of gravity over 48 h or longer; and a clean diacetyl test. A curve that ends more
  /// than two doubts above the expected one is never called done: a forced ferment tells whether
  /// that is the end.
  ///
  /// - Valid: 8 to 26 C at one temperature; the limits are this program's rules, not measurements.
  ///   A refractometer or float never makes it steady. After a dry hop begin anew.
  /// - Source: the logistic of Speers 2003; Laplace's approximation.
  ///
  /// @param readings hours and degrees Plato, as `24:9.1 96:3.0 144:3.0`
  /// @param diacetyl how a warm forced sample smelt: clean, buttery or untested
  @Reckoned(
      name = "ferment-done",
      says = "Whether a fermentation is over: by its curve, two steady readings and the diacetyl.",
      equation = "P(w < 0.02) > 0.95; two readings 48 h apart within 0.001; diacetyl clean",
      range = "8 to 26 C at one temperature; after a dry hop begin anew; never shut in live beer")
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "practice", at = "limits of steady and done", trust = Trust.PRACTICE)
  public static Over over(
      double originalPlato,
      @Span(
              least = 8,
              most = 26,
              beyond = "no fermentation that the priors rest on was so cold or so warm")
          @Usually(20)
          double fermentC,
      String readings,
      String diacetyl,
      @Usually(0.15) double originalDoubtPlato,
      @Usually(FermentationFit.ATTENUATION_FRAC) double attenuationFrac,
      @Usually(FermentationFit.ATTENUATION_DOUBT_FRAC) double attenuationDoubtFrac) {
    double clock = FermentationFit.clockRatio(fermentC);
    List<FermentationReading> all =
        FermentationReading.read(
            readings, clock, FermentationReading.Instrument.HYDROMETER.doubtPlato());
    FermentationFit.Brew brew =
        FermentationFit.Brew.of(
            originalPlato, originalDoubtPlato, attenuationFrac, attenuationDoubtFrac);
    double lastHr = all.stream().mapToDouble(FermentationReading::clockHr).max().orElse(0);
    FermentationFit.Ahead now = FermentationFit.ahead(brew, all, lastHr);
    double end = FermentationFit.fitted(brew, all).attenuationFrac();
    boolean high = attenuationFrac - end > HIGH_RATIO * attenuationDoubtFrac;
    boolean steady = steady(all, clock);
    boolean little = now.littleLeftChanceFrac() > SURE_FRAC;
    boolean clean = clean(diacetyl);
    return new Over(
        now.leftFrac(),
        now.littleLeftChanceFrac(),
        steady,
        high,
        little && steady && !high && clean);
  }

  private static boolean clean(String diacetyl) {
    return switch (diacetyl.strip().toLowerCase(Locale.ROOT)) {
      case "clean" -> true;
      case "buttery", "untested" -> false;
      default ->
          throw new IllegalArgumentException(
              "'" + diacetyl + "' is no smell of diacetyl; write clean, buttery or untested.");
    };
  }

  /// Whether every reading of the hydrometer since one of at least 48 h before the last stands with
  /// the last.
  private static boolean steady(List<FermentationReading> all, double clockRatio) {
    List<FermentationReading> latestFirst =
        all.stream()
            .filter(each -> each.by() == FermentationReading.Instrument.HYDROMETER)
            .sorted(Comparator.comparingDouble(FermentationReading::clockHr).reversed())
            .toList();
    for (FermentationReading each : latestFirst) {
      FermentationReading last = latestFirst.getFirst();
      if (!together(each.extractPlato(), last.extractPlato())) {
        return false;
      }
      // Hours of the clock and back: the last bit must not decide.
      if ((last.clockHr() - each.clockHr()) / clockRatio >= STEADY_HR - 1e-6) {
        return true;
      }
    }
    return false;
  }

  /// A spindle is read to 0.001: the rounding of a conversion must not decide.
  private static boolean together(double onePlato, double otherPlato) {
    double moved =
        Math.abs(ExtractScale.sgFromPlato(onePlato) - ExtractScale.sgFromPlato(otherPlato));
    return moved <= STEADY_SG + 1e-6;
  }

  /// The fall that the logistic expects from an earlier share on. In closed form: over two days the
  /// pace changes too much to be taken at one moment.
  private static double expectedPlato(
      double beforeFrac, double fermentablePlato, double betweenHr, double fermentC) {
    double rate =
        FermentationCurve.ratePerHr(
            fermentC, FermentationCurve.RATE_PER_HR, FermentationCurve.Q10_FACTOR);
    double before = Math.clamp(beforeFrac, 0.001, 0.999);
    double grown = Math.expm1(Math.min(700, rate * betweenHr));
    // w1 - w2, written so that a short time keeps its digits.
    double fallen = before * (1 - before) * grown / (1 + (1 - before) * grown);
    return fermentablePlato * fallen;
  }
}
