package gylebook.science;

/// Settings of a temperature controller from what the kettle does (Skogestad's simple rules).
///
/// The gain of the process is in kelvin per full duty, so the controller's is in duty per kelvin.
public final class ControllerTuning {
  private ControllerTuning() {}

  /// Settings of a controller in series form.
  ///
  /// @param gainPerK duty per kelvin
  /// @param integralSec integral time
  /// @param derivativeSec derivative time, 0 for none
  public record Settings(double gainPerK, double integralSec, double derivativeSec) {}

  /// A process reduced to two lags and a delay.
  ///
  /// @param lagSec the larger lag
  /// @param secondLagSec the smaller, 0 for none
  /// @param delaySec what is left of everything else
  public record Reduced(double lagSec, double secondLagSec, double delaySec) {}

  /// Settings for a process with one or two lags and a delay.
  ///
  /// `Kc = tau1/(k (tau_c + theta))`, `tauI = min(tau1, 4 (tau_c + theta))`, `tauD = tau2`.
  @Source(key = "skogestad-2003", at = "SIMC rules and worked example", trust = Trust.READ)
  @Reckoned(
      name = "controller-settings",
      says = "How should a controller be set for a process with lags and a delay?",
      equation = "Kc = tau1/(k (tau_c + theta)), tauI = min(tau1, 4 (tau_c + theta)), tauD = tau2",
      range = "gain, first lag and tau_c + theta above 0; refused otherwise")
  public static Settings settings(
      double gainK,
      double lagSec,
      double delaySec,
      double wantedSec,
      @Usually(0) double secondLagSec) {
    double slack = slackSec(delaySec, wantedSec);
    return new Settings(
        Require.above0("lag", lagSec) / (Require.above0("process gain", gainK) * slack),
        Math.min(lagSec, 4 * slack),
        Require.notBelow0("second lag", secondLagSec));
  }

  /// Settings for a kettle, which integrates: `Kc = 1/(k' (tau_c + theta))`, `tauI = 4 (tau_c +
  /// theta)`.
  @Source(key = "skogestad-2003", at = "integrating process", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "kettle-controller-settings",
      says = "How should a controller be set for a kettle that heats at a known rate?",
      equation = "Kc = 1/(k' (tau_c + theta)), tauI = 4 (tau_c + theta)",
      range = "rate at full duty and tau_c + theta above 0; refused otherwise")
  public static Settings kettleSettings(
      double rateKPerSec, @Usually(20) double delaySec, @Usually(60) double wantedSec) {
    double slack = slackSec(delaySec, wantedSec);
    return new Settings(1 / (Require.above0("heating rate", rateKPerSec) * slack), 4 * slack, 0);
  }

  /// Reduces a chain of lags, small zeros and delay to one lag and a delay by the half rule.
  ///
  /// Half the largest neglected lag goes to the lag kept, half to the delay; all smaller lags and
  /// inverse responses add to the delay, small positive zeros take from it.
  @Source(key = "skogestad-2003", at = "half rule", trust = Trust.READ)
  public static Reduced firstOrder(double[] lagSec, double[] zeroSec, double pureDelaySec) {
    double[] largest = fallingSec(lagSec);
    double half = largest.length > 1 ? largest[1] / 2 : 0;
    return new Reduced(largest[0] + half, 0, half + restSec(largest, 2, zeroSec, pureDelaySec));
  }

  /// The same with two lags kept.
  @Source(key = "skogestad-2003", at = "half rule", trust = Trust.READ)
  public static Reduced secondOrder(double[] lagSec, double[] zeroSec, double pureDelaySec) {
    double[] largest = fallingSec(lagSec);
    double half = largest.length > 2 ? largest[2] / 2 : 0;
    double second = largest.length > 1 ? largest[1] : 0;
    return new Reduced(
        largest[0], second + half, half + restSec(largest, 3, zeroSec, pureDelaySec));
  }

  private static double restSec(
      double[] largestSec, int from, double[] zeroSec, double pureDelaySec) {
    double rest = Require.notBelow0("delay", pureDelaySec);
    for (int i = from; i < largestSec.length; i++) {
      rest += largestSec[i];
    }
    for (double zero : zeroSec) {
      rest -= zero;
    }
    return rest;
  }

  private static double[] fallingSec(double[] lagSec) {
    Require.above0("number of lags", lagSec.length);
    double[] rising = lagSec.clone();
    java.util.Arrays.sort(rising);
    double[] falling = new double[rising.length];
    for (int i = 0; i < rising.length; i++) {
      falling[i] = Require.above0("lag", rising[rising.length - 1 - i]);
    }
    return falling;
  }

  private static double slackSec(double delaySec, double wantedSec) {
    return Require.above0(
        "delay and wanted time constant together",
        Require.notBelow0("delay", delaySec) + Require.notBelow0("wanted", wantedSec));
  }
}
