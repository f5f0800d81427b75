package gylebook.science;

import gylebook.units.ExtractScale;

/// Whether a fermentation is over, goes on, or is stuck, by two readings of the spindle.
///
/// The spindle alone never clears a beer for the bottle: the diacetyl test and the taste decide,
/// and after a dry hop it starts again.
public final class FermentationState {
  private static final double STEADY_SG = 0.001;
  private static final double STEADY_HR = 48;
  private static final double DONE_FRAC = 0.02;
  private static final double STUCK_LEFT_FRAC = 0.15;
  private static final double STUCK_RATE_RATIO = 0.1;

  private FermentationState() {}

  /// What two readings say.
  ///
  /// @param leftFrac share of the fermentable extract that the later reading leaves
  /// @param rateRatio fall between the readings over the fall expected at that share
  /// @param steady the readings stand 48 h apart or more and within 0.001 of gravity
  /// @param done little is left and the readings are steady; the diacetyl test is still to come
  /// @param stuck much is left and it hardly falls: look at warmth, pitch and oxygen; never package
  public record State(
      double leftFrac, double rateRatio, boolean steady, boolean done, boolean stuck) {}

  /// The state of a fermentation from two readings.
  ///
  /// `w = (P - P_end)/(P0 - P_end)`; expected of w1 after a time t: `1/(1 + (1/w1 - 1) e^(B t))`
  ///
  /// - Valid: 8 to 26 C at one temperature between the readings, after the start (w below 0.9). The
  ///   limits (0.02 left and steady over 48 h; a tenth of the rate with 0.15 left) are this
  ///   program's rules, not measurements. The end is a forecast too: a forced test is better.
  /// - Source: the logistic of Speers 2003 with the rate of {@link FermentationCurve}.
  ///
  /// @param endPlato the extract it is expected to end at
  /// @param betweenHr hours between the readings
  @Reckoned(
      name = "ferment-state",
      says = "Whether a fermentation goes on, is over or is stuck, by two readings.",
      equation = "w = (P - Pend)/(P0 - Pend); fall against w1 - 1/(1 + (1/w1 - 1) e^(B t))",
      range = "8 to 26 C, w below 0.9; never package by it: diacetyl test, two steady readings")
  @Source(key = "speers2003", at = "abstract", trust = Trust.READ)
  @Source(key = "practice", at = "limits of steady, done and stuck", trust = Trust.PRACTICE)
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
    double moved =
        Math.abs(ExtractScale.sgFromPlato(earlierPlato) - ExtractScale.sgFromPlato(laterPlato));
    // A spindle is read to 0.001: the rounding of a conversion must not decide.
    boolean steady = betweenHr >= STEADY_HR && moved <= STEADY_SG + 1e-6;
    boolean stuck = left > STUCK_LEFT_FRAC && ratio < STUCK_RATE_RATIO;
    return new State(left, ratio, steady, steady && left < DONE_FRAC, stuck);
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
