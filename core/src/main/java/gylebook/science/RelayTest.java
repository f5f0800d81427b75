package gylebook.science;

/// A controller that only switches, tried on a process with one lag and a delay.
///
/// Not advised in a mash, whose temperature it swings: try it in plain water.
public final class RelayTest {
  private RelayTest() {}

  /// Amplitude of the swing, exact: `a = K d (1 - exp(-theta/tau))`, d half the relay's stroke.
  @Source(key = "relay-oscillation", at = "first order with delay", trust = Trust.COMPUTED)
  @Reckoned(
      name = "relay-amplitude",
      says = "How far does the temperature swing in a relay test?",
      equation = "a = K d (1 - exp(-theta/tau))",
      range = "one lag and a delay, both above 0; refused otherwise")
  public static double amplitudeK(
      double gainK, double lagSec, double delaySec, @Usually(0.5) double relayFrac) {
    return -Require.above0("process gain", gainK)
        * Require.within("relay amplitude", relayFrac, 0, 1)
        * Math.expm1(-ratio(lagSec, delaySec));
  }

  /// Period of the swing, exact: `P = 2 tau ln(2 exp(theta/tau) - 1)`.
  @Source(key = "relay-oscillation", at = "first order with delay", trust = Trust.COMPUTED)
  @Reckoned(
      name = "relay-period",
      says = "How long does one swing of a relay test take?",
      equation = "P = 2 tau ln(2 exp(theta/tau) - 1)",
      range = "one lag and a delay, both above 0; refused otherwise")
  public static double periodSec(double lagSec, double delaySec) {
    // log(2 e^x - 1), written so that a long delay does not overflow.
    double delays = ratio(lagSec, delaySec);
    return 2 * lagSec * (delays + Math.log(2 - Math.exp(-delays)));
  }

  /// Ultimate gain from the swing seen, by the describing function: `Ku = 4 d / (pi a)`.
  ///
  /// It reads low on a process with one lag and a delay: by 18 % at a delay of 15 s on 100 s.
  @Source(key = "astrom-hagglund-1984", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "relay-gain-from-swing",
      says = "What ultimate gain does a relay test's swing suggest?",
      equation = "Ku = 4 d / (pi a)",
      range = "an approximation; low by about a sixth on a lag with a delay")
  public static double describedGainPerK(double swingK, @Usually(0.5) double relayFrac) {
    return 4
        * Require.within("relay amplitude", relayFrac, 0, 1)
        / (Math.PI * Require.above0("swing", swingK));
  }

  /// The same for a process that is known: the swing it would show, judged that way.
  @Source(key = "astrom-hagglund-1984", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "relay-gain-described",
      says = "What ultimate gain would a relay test suggest for a known lag and delay?",
      equation = "Ku = 4 d / (pi a), a = K d (1 - exp(-theta/tau))",
      range = "an approximation; low by about a sixth on a lag with a delay")
  public static double describedGainPerK(double gainK, double lagSec, double delaySec) {
    return describedGainPerK(amplitudeK(gainK, lagSec, delaySec, 1), 1);
  }

  /// Ultimate gain, exact: `Ku = sqrt(1 + (w tau)^2)/K` where `atan(w tau) + w theta = pi`.
  @Source(key = "energy-balance", at = "phase of a lag and a delay", trust = Trust.COMPUTED)
  @Reckoned(
      name = "ultimate-gain",
      says = "At what gain does a controlled lag with a delay begin to swing by itself?",
      equation = "Ku = sqrt(1 + (w tau)^2) / K where atan(w tau) + w theta = pi",
      range = "one lag and a delay, both above 0; refused otherwise")
  public static double ultimateGainPerK(double gainK, double lagSec, double delaySec) {
    double swing = ultimatePerSec(lagSec, delaySec) * lagSec;
    return Math.hypot(1, swing) / Require.above0("process gain", gainK);
  }

  /// Period of that swing: `2 pi / w`.
  @Source(key = "energy-balance", at = "phase of a lag and a delay", trust = Trust.COMPUTED)
  @Reckoned(
      name = "ultimate-period",
      says = "With what period does a controlled lag with a delay begin to swing?",
      equation = "P = 2 pi / w where atan(w tau) + w theta = pi",
      range = "one lag and a delay, both above 0; refused otherwise")
  public static double ultimatePeriodSec(double lagSec, double delaySec) {
    return 2 * Math.PI / ultimatePerSec(lagSec, delaySec);
  }

  private static double ultimatePerSec(double lagSec, double delaySec) {
    ratio(lagSec, delaySec);
    // The phase rises with w, and lies below pi at pi/(2 theta) and above it at pi/theta.
    double low = Math.PI / (2 * delaySec);
    double high = Math.PI / delaySec;
    for (int halving = 0; halving < 60; halving++) {
      double middle = (low + high) / 2;
      if (Math.atan(middle * lagSec) + middle * delaySec < Math.PI) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static double ratio(double lagSec, double delaySec) {
    return Require.above0("delay", delaySec) / Require.above0("lag", lagSec);
  }
}
