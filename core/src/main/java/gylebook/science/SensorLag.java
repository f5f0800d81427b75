package gylebook.science;

/// A probe that follows its place with one time constant: `tau dS/dt = T - S`.
///
/// Time constants in moving water (published by a maker): a sheathed Pt100 of 6 mm about 10 s, of 3
/// mm about 5 s; in air 47 to 52 s: a probe that falls dry is known by its slowness.
public final class SensorLag {
  private SensorLag() {}

  /// Time until a share of a step shows: `t = -tau ln(1 - share)`.
  @Source(key = "energy-balance", at = "first-order lag", trust = Trust.COMPUTED)
  @Reckoned(
      name = "probe-response-time",
      says = "How long until a probe shows a share of a step?",
      equation = "t = -tau ln(1 - share)",
      range = "shares from 0 to below 1; refused otherwise")
  public static double responseSec(double lagSec, @Usually(0.9) double reachedFrac) {
    return Require.notBelow0("lag", lagSec) * -Math.log1p(-shownFrac(reachedFrac));
  }

  /// Time constant from a response time: `tau = t / -ln(1 - share)`.
  @Source(key = "energy-balance", at = "first-order lag", trust = Trust.COMPUTED)
  @Reckoned(
      name = "probe-lag",
      says = "What time constant has a probe that shows a share of a step after a time?",
      equation = "tau = t / -ln(1 - share)",
      range = "shares between 0 and 1; refused otherwise")
  public static double lagSec(double elapsedSec, @Usually(0.9) double reachedFrac) {
    Require.above0("share reached", reachedFrac);
    return Require.notBelow0("time", elapsedSec) / -Math.log1p(-shownFrac(reachedFrac));
  }

  /// Ratio of two response times; 3.32 for 90 % to 50 % shows that one time constant describes it.
  @Source(
      key = "probe-response-times",
      at = "water at 0.2 m/s, to compare with",
      trust = Trust.READ)
  @Reckoned(
      name = "probe-response-ratio",
      says = "How do two response times of a one-lag probe relate?",
      equation = "ratio = ln(1 - later) / ln(1 - sooner)",
      range = "shares between 0 and 1; refused otherwise")
  public static double responseRatio(
      @Usually(0.9) double laterFrac, @Usually(0.5) double soonerFrac) {
    Require.above0("sooner share", soonerFrac);
    return Math.log1p(-shownFrac(laterFrac)) / Math.log1p(-shownFrac(soonerFrac));
  }

  /// How far a reading lags behind a steady ramp: `rate tau`. Negative when cooling.
  @Source(key = "energy-balance", at = "first-order lag", trust = Trust.COMPUTED)
  @Reckoned(
      name = "probe-ramp-error",
      says = "How far does a probe lag behind a steady ramp?",
      equation = "error = rate tau",
      range = "after several time constants of a steady ramp")
  public static double rampErrorK(double rampKPerSec, @Usually(10) double lagSec) {
    return Require.within("ramp", rampKPerSec, -1e6, 1e6) * Require.notBelow0("lag", lagSec);
  }

  /// What a probe shows some time after it was put elsewhere.
  @Source(key = "energy-balance", at = "first-order lag", trust = Trust.COMPUTED)
  @Reckoned(
      name = "probe-reading",
      says = "What does a probe show some time after it was put elsewhere?",
      equation = "S = T + (S0 - T) exp(-t / tau)",
      range = "a steady place; a time constant above 0; refused otherwise")
  public static double readingC(
      double startC, double placeC, double elapsedSec, @Usually(10) double lagSec) {
    Require.temperatureC("start", startC);
    Require.temperatureC("place", placeC);
    return placeC
        + (startC - placeC)
            * Math.exp(-Require.notBelow0("time", elapsedSec) / Require.above0("lag", lagSec));
  }

  private static double shownFrac(double reachedFrac) {
    if (!(reachedFrac >= 0 && reachedFrac < 1)) {
      throw new IllegalArgumentException(
          "share reached is " + reachedFrac + "; it must lie from 0 to below 1.");
    }
    return reachedFrac;
  }
}
