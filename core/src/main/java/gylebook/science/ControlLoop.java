package gylebook.science;

/// What a controller will do to a kettle with its settings and with the probe where it is.
///
/// The kettle integrates (full duty warms it at a known rate), some delay passes before the probe
/// notices, the probe itself lags. Gain and integral time either suit that or they do not. A probe
/// in a return hose adds delay, and reads low by the hose's loss: the kettle then stands that much
/// above the set point, and every change of flow is a disturbance.
public final class ControlLoop {
  private static final double TRIAL_SEC = 3 * 3600;
  private static final double STEP_SEC = 1;
  private static final double NEAR_K = 0.2;

  /// How fast the integral follows a clamped duty.
  private static final double TRACKING_SEC = 60;

  private static final double SWINGS_K = 0.3;

  /// An integral time this much above the delay still leaves a crossing to find.
  private static final double NO_SLACK_RATIO = 1.0001;

  // A mash kettle at rest: delay, lag and duty of the reference case.
  private static final double USUAL_DELAY_SEC = 20;
  private static final double USUAL_LAG_SEC = 10;
  private static final double USUAL_HOLDING_FRAC = 0.05;
  private static final double AFTERWARDS_SEC = 3600;

  private ControlLoop() {}

  /// How far the settings are from swinging for ever.
  ///
  /// @param gainRatio the gain may be this many times as large before the loop swings; below 1 it
  ///   swings already
  /// @param delaySec so much more delay may come in before it swings; negative: it swings already
  /// @param steady whether it comes to rest
  public record Margins(double gainRatio, double delaySec, boolean steady) {}

  /// Gain and delay margins of a kettle under proportional-integral control.
  ///
  /// `L = Kc k' (1 + 1/(s tauI)) exp(-theta s)/s`; the phase is -180 degrees where `w theta =
  /// atan(w tauI)`, the gain is 1 where `w^2 = (a^2 + sqrt(a^4 + 4 a^2/tauI^2))/2`, `a = Kc k'`.
  ///
  /// - Valid: linear, unclamped; a real kettle also loses heat, which helps. An integral time no
  ///   longer than the delay never comes to rest: the gain margin is 0.
  @Source(key = "skogestad-2003", at = "margins of the integrating case", trust = Trust.COMPUTED)
  @Reckoned(
      name = "controller-margins",
      says = "How far are a controller's settings from swinging for ever?",
      equation = "phase: w theta = atan(w tauI); gain 1: w^2 = (a^2 + sqrt(a^4 + 4 a^2/tauI^2))/2",
      range = "a kettle that integrates, with a delay; gain margin 2 to 4 is calm")
  public static Margins margins(
      double gainPerK, double integralSec, double rateKPerSec, @Usually(30) double delaySec) {
    double a =
        Require.above0("gain in duty per K", gainPerK)
            * Require.above0("heating rate", rateKPerSec);
    double integral = Require.above0("integral time", integralSec);
    double delay = Require.above0("delay", delaySec);
    double square = a * a + Math.sqrt(a * a * a * a + 4 * a * a / (integral * integral));
    double crossing = Math.sqrt(square / 2);
    double slack = (Math.atan(crossing * integral) - crossing * delay) / crossing;
    double gain = integral > NO_SLACK_RATIO * delay ? gainRatio(a, integral, delay) : 0;
    return new Margins(gain, slack, gain > 1 && slack > 0);
  }

  private static double gainRatio(double cornerPerSec, double integralSec, double delaySec) {
    // A touch beyond the last angle there can be, so that the ends have both signs.
    double most = 1.0001 * Math.PI / 2 / delaySec;
    // Near 0 the integral's phase leads by w^3; a start at a thousandth has the right sign.
    double least = most * 1e-3 * Math.sqrt(1 - delaySec / integralSec);
    double phase = Root.between(least, most, w -> Math.atan(w * integralSec) - w * delaySec);
    return phase / cornerPerSec / Math.sqrt(1 + 1 / Math.pow(phase * integralSec, 2));
  }

  /// How a change of the set point goes.
  ///
  /// @param overK how far the kettle goes above where it shall be
  /// @param nearSec until it is within 0.2 K for the first time
  /// @param settledSec after which it never leaves 0.2 K again; three hours where it does not
  /// @param swingK how far it still swings in the third hour, peak to peak
  /// @param steady whether that is less than 0.3 K
  public record Trial(
      double overK, double nearSec, double settledSec, double swingK, boolean steady) {}

  /// The set point goes up; three hours of the kettle, second by second.
  ///
  /// `dT/dt = k' (u(t - theta) - u_hold)`, `tau dS/dt = T - S`, `v = Kc e + I`, `u = v` within 0
  /// and 1, `dI/dt = Kc e/tauI + (u - v)/60 s`
  ///
  /// - Valid: a stirred kettle whose loss does not change in those kelvin; it begins at rest.
  ///   Refused for a delay above half an hour.
  @Source(key = "energy-balance", at = "kettle with a loss that stays", trust = Trust.COMPUTED)
  @Source(key = "skogestad-2003", at = "proportional-integral form", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "controller-trial",
      says = "What will your controller do with these settings when the set point goes up?",
      equation = "dT/dt = k' (u(t - theta) - u_hold); u = Kc e + I within 0 and 1, tracked in 60 s",
      range = "a stirred kettle, no derivative; three hours are simulated second by second")
  public static Trial trial(
      double gainPerK,
      double integralSec,
      double rateKPerSec,
      @Usually(20) double delaySec,
      @Usually(10) double probeLagSec,
      @Usually(0.05) double holdingFrac,
      @Usually(5) double riseK) {
    Require.within("rise in K", riseK, 0.5, 80);
    Loop loop = new Loop(gainPerK, integralSec, rateKPerSec, delaySec, probeLagSec, holdingFrac);
    double over = 0;
    double near = TRIAL_SEC;
    double settled = 0;
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (double t = 0; t < TRIAL_SEC; t += STEP_SEC) {
      loop.step(riseK, 0);
      double offK = loop.kettleK - riseK;
      over = Math.max(over, offK);
      near = Math.abs(offK) <= NEAR_K ? Math.min(near, t) : near;
      settled = Math.abs(offK) > NEAR_K ? t + STEP_SEC : settled;
      if (t >= TRIAL_SEC * 2 / 3) {
        lowest = Math.min(lowest, loop.kettleK);
        highest = Math.max(highest, loop.kettleK);
      }
    }
    double swing = highest - lowest;
    return new Trial(over, near, settled, swing, swing < SWINGS_K);
  }

  /// What the kettle suffers while the pump is off.
  ///
  /// @param deafK how far the probe has fallen below the kettle when the pump starts again
  /// @param heatJ what the element gave until then
  /// @param hottestK the kettle at its hottest, above where it shall be
  public record PumpOff(double deafK, double heatJ, double hottestK) {}

  /// The pump stops, the probe outside the kettle cools, and the controller is left in automatic.
  ///
  /// `S' = T - fall (1 - exp(-t/tau))` while the pump stands; the rest as in controller-trial with
  /// a delay of 20 s after it
  ///
  /// - Valid: the probe sits in a stub at the suction (falls 1 to 2 K, time constant about 240 s,
  ///   assumed) or in the return hose (falls to the room, about 600 s, assumed). The kettle's rate
  ///   counts without the grain: nothing flows through it. **Couple pump and controller**: pump off
  ///   means controller by hand at 0 %.
  @Source(key = "energy-balance", at = "kettle with a loss that stays", trust = Trust.COMPUTED)
  @Reckoned(
      name = "controller-pump-off",
      says = "What does a controller left in automatic do while the pump is off?",
      equation = "S = T - fall (1 - exp(-t/tau)); u = Kc e + I within 0 and 1",
      range = "fall 1 to 2 K and 240 s for a stub, the room and 600 s for a hose; both assumed")
  public static PumpOff pumpOff(
      double gainPerK,
      double integralSec,
      double powerW,
      double heatJPerK,
      @Usually(6) double offMin,
      @Usually(1.4) double fallK,
      @Usually(240) double fallingSec) {
    Require.above0("power", powerW);
    Require.above0("heat capacity", heatJPerK);
    Require.within("pump off in min", offMin, 0, 60);
    Require.within("fall in K", fallK, 0, 100);
    Require.above0("time constant of the fall", fallingSec);
    Loop loop =
        new Loop(
            gainPerK,
            integralSec,
            powerW / heatJPerK,
            USUAL_DELAY_SEC,
            USUAL_LAG_SEC,
            USUAL_HOLDING_FRAC);
    double offSec = offMin * Minutes.SEC_PER_MIN;
    double deaf = 0;
    double given = 0;
    double hottest = 0;
    for (double t = 0; t < offSec + AFTERWARDS_SEC; t += STEP_SEC) {
      boolean off = t < offSec;
      deaf = off ? fallK * -Math.expm1(-t / fallingSec) : deaf;
      loop.step(0, off ? deaf : 0);
      given += off ? loop.dutyFrac * powerW * STEP_SEC : 0;
      hottest = Math.max(hottest, loop.kettleK);
    }
    return new PumpOff(deaf, given, hottest);
  }

  /// Kettle, delay, probe and controller, all as differences from where they were at rest.
  private static final class Loop {
    private final double gainPerK;
    private final double integralSec;
    private final double rateKPerSec;
    private final double lagSec;
    private final double holdingFrac;
    private final double[] sentFrac;
    private int at;
    private double kettleK;
    private double probeK;
    private double integralFrac;
    private double dutyFrac;

    Loop(
        double gainPerK,
        double integralSec,
        double rateKPerSec,
        double delaySec,
        double lagSec,
        double holdingFrac) {
      this.gainPerK = Require.within("gain in duty per K", gainPerK, 0, 100);
      this.integralSec = Require.within("integral time in s", integralSec, 1, 1e7);
      this.rateKPerSec = Require.within("heating rate in K/s", rateKPerSec, 0, 1);
      this.lagSec = Require.within("lag of the probe in s", lagSec, 0, 1800);
      this.holdingFrac = Require.within("duty that holds", holdingFrac, 0, 1);
      Require.within("delay in s", delaySec, 0, 1800);
      sentFrac = new double[(int) Math.rint(delaySec / STEP_SEC) + 1];
      java.util.Arrays.fill(sentFrac, holdingFrac);
      integralFrac = holdingFrac;
      dutyFrac = holdingFrac;
    }

    void step(double setK, double deafK) {
      double error = setK - probeK;
      double wanted = gainPerK * error + integralFrac;
      dutyFrac = Math.clamp(wanted, 0, 1);
      integralFrac +=
          STEP_SEC * (gainPerK * error / integralSec + (dutyFrac - wanted) / TRACKING_SEC);
      sentFrac[at] = dutyFrac;
      at = (at + 1) % sentFrac.length;
      kettleK += STEP_SEC * rateKPerSec * (sentFrac[at] - holdingFrac);
      probeK += (kettleK - deafK - probeK) * -Math.expm1(-STEP_SEC / Math.max(lagSec, 1e-3));
    }
  }
}
