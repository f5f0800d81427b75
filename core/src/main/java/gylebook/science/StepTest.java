package gylebook.science;

/// What one step of the heater tells about a process.
public final class StepTest {
  private StepTest() {}

  /// A lag and a delay.
  public record LagAndDelay(double lagSec, double delaySec) {}

  /// Lag and delay from the times to 28.3 % and 63.2 % of the whole change (Smith).
  ///
  /// `tau = 1.5 (t63 - t28)`, `theta = t63 - tau`. A negative delay is a sign that the process is
  /// no single lag; it is answered as it comes.
  @Source(key = "smith-two-point", at = "two-point rule", trust = Trust.COMPUTED)
  @Reckoned(
      name = "step-test",
      says = "What lag and delay does a heater step show?",
      equation = "tau = 1.5 (t63 - t28), theta = t63 - tau",
      range = "the later time after the earlier; refused otherwise")
  public static LagAndDelay lagAndDelay(double early28Sec, double late63Sec) {
    Require.notBelow0("time to 28.3 %", early28Sec);
    double lag = 1.5 * Require.above0("time from 28.3 to 63.2 %", late63Sec - early28Sec);
    return new LagAndDelay(lag, late63Sec - lag);
  }

  /// Heating rate at full duty of a kettle: `k' = P / C`, C the heat of water and grain.
  @Source(key = "energy-balance", at = "heat of a kettle without losses", trust = Trust.COMPUTED)
  @Reckoned(
      name = "heating-rate",
      says = "How fast does a kettle heat at full duty, without losses?",
      equation = "k' = P / (m_w c_w + m_g c_g)",
      range = "water above 0; losses and steel left out")
  public static double rateKPerSec(
      double powerW,
      double waterKg,
      @Usually(0) double grainKg,
      @Usually(4186) double waterJPerKgK,
      @Usually(1650) double grainJPerKgK) {
    double heat =
        Require.above0("water", waterKg) * Require.above0("water's heat", waterJPerKgK)
            + Require.notBelow0("grain", grainKg) * Require.above0("grain's heat", grainJPerKgK);
    return Require.notBelow0("power", powerW) / heat;
  }

  /// Swing of the temperature by switching the heater: `P u (1 - u) Tw / C`, peak to peak.
  @Source(key = "energy-balance", at = "heat of one window", trust = Trust.COMPUTED)
  @Reckoned(
      name = "duty-ripple",
      says = "How far does the temperature swing because the heater is switched?",
      equation = "swing = P u (1 - u) Tw / C",
      range = "a duty of 0 to 1; the whole heat is stirred")
  public static double rippleK(
      double powerW,
      @Usually(0.5) double dutyFrac,
      @Usually(2) double windowSec,
      double heatJPerK) {
    Require.within("duty", dutyFrac, 0, 1);
    return Require.notBelow0("power", powerW)
        * dutyFrac
        * (1 - dutyFrac)
        * Require.notBelow0("window", windowSec)
        / Require.above0("heat capacity", heatJPerK);
  }
}
