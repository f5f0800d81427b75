package gylebook.simulate;

/// Heat and control over one step: a linearly implicit, L-stable pair of second order.
///
/// The method is the two-stage Rosenbrock scheme with `gamma = 1 - 1/sqrt(2)`: `(I - gamma h J) k1
/// = f(y)`, `(I - gamma h J) k2 = f(y + h k1) - 2 k1`, `y' = y + h (3 k1 + k2)/2`, and `h (k1 +
/// k2)/2` estimates the error of the first-order member of the pair. It keeps its order with an
/// inexact Jacobian, so the kinks of clamps cost steps, not truth. Every chain of zones starts from
/// the kettle and comes back to it; hence each unknown is an affine function of the kettle's, and
/// the elimination is a handful of lines, no matrix.
final class Thermal {
  /// `1 - 1/sqrt(2)`, which makes the pair L-stable.
  static final double GAMMA_NUMBER = 1 - Math.sqrt(0.5);

  private static final double STUB_ON_SEC = 5;
  private static final double STUB_OFF_SEC = 240;
  private static final double STUB_LOSS_FRAC = 0.03;
  private static final double HOSE_OFF_SEC = 600;
  private static final double SAME_K = 1e-6;
  // The silicone's own heat capacity stretches the hose's delay.
  private static final double HOSE_STRETCH_FACTOR = 1.4;

  private Member member = new Member();

  // Couplings of the present leg and masses, set by prepare().
  private double kettleJPerK;
  private double bedJPerK;
  private double headJPerK;
  private double bagWPerK;
  private double bedFlowWPerK;
  private double spillWPerK;
  private double loopWPerK;
  private double returnWPerK;
  private double mixWPerK;
  private double surfaceWPerK;
  private double steamFrac;
  private double chillWPerK;
  private double chillC;
  private double hoseKeepsFrac;
  private double hosePerSec;
  private double stubPerSec;
  private double stubKeepsFrac;
  private boolean bagIn;
  private boolean automatic;
  private double setKPerSec;
  private double handFrac;

  // Where the state stands and the slopes of both stages.
  private final Point at = new Point();
  private final Point trial = new Point();
  private final Point k1 = new Point();
  private final Point k2 = new Point();
  private final Point rate = new Point();
  private final Point rate2 = new Point();
  private final Chain chain = new Chain();
  private double dutyStartFrac;
  private double dutyEndFrac;
  private boolean saturated;

  void turnTo(Member newMember) {
    member = newMember;
  }

  /// Takes over the couplings that hold until masses or the leg change.
  void prepare(BrewState state, Leg leg, Flows flows) {
    bagIn = state.bagIn;
    kettleJPerK = flows.kettleJPerK;
    bedJPerK = flows.bedJPerK;
    headJPerK = flows.headJPerK;
    bagWPerK = bagIn ? member.bagWPerK : 0;
    bedFlowWPerK = flows.bedWPerK;
    spillWPerK = flows.spillWPerK;
    loopWPerK = bagIn ? flows.loopWPerK : 0;
    returnWPerK = bagIn ? 0 : flows.loopWPerK;
    mixWPerK = flows.mixWPerK;
    surfaceWPerK = leg.lidOn() ? member.lidOnWPerK : member.lidOffWPerK;
    steamFrac = leg.lidOn() ? member.lidLeakFrac : 1;
    chillWPerK = flows.chillWPerK;
    chillC = member.tapC;
    instruments(flows);
    steer(state, leg.drive());
  }

  private void steer(BrewState state, Leg.Drive drive) {
    automatic = !(drive instanceof Leg.Drive.ByHand);
    setKPerSec = 0;
    handFrac = 0;
    switch (drive) {
      case Leg.Drive.Automatic held -> state.setC = held.setC();
      case Leg.Drive.Rising rising -> {
        state.setC = Math.max(state.setC, rising.fromC());
        setKPerSec = risesSec(state, rising) > 0 ? rising.setKPerSec() : 0;
        state.setC = setKPerSec > 0 ? state.setC : rising.setC();
      }
      case Leg.Drive.ByHand hand -> handFrac = hand.dutyFrac();
    }
  }

  /// How long the set point still climbs; 0 when it is there.
  static double risesSec(BrewState state, Leg.Drive.Rising rising) {
    double leftK = rising.setC() - Math.max(state.setC, rising.fromC());
    return leftK > SAME_K ? leftK / rising.setKPerSec() : 0;
  }

  private void instruments(Flows flows) {
    boolean hoseRuns = flows.loopWPerK > 0;
    hoseKeepsFrac = hoseRuns ? flows.hoseKeepsFrac : 0;
    hosePerSec =
        hoseRuns
            ? flows.loopLPerSec / (HOSE_STRETCH_FACTOR * Math.max(0.01, member.hoseL))
            : 1 / HOSE_OFF_SEC;
    stubPerSec = 1 / (hoseRuns ? STUB_ON_SEC : STUB_OFF_SEC);
    stubKeepsFrac = hoseRuns ? 1 : 1 - STUB_LOSS_FRAC;
  }

  /// Starts a step from the state: its rates, and which clamp holds.
  void start(BrewState state) {
    at.load(state);
    dutyStartFrac = ratesAndDutyFrac(at, state.boiling, rate);
    double askedFrac = askedFrac(at);
    saturated = !automatic || askedFrac <= 0 || askedFrac >= 1;
  }

  /// Tries a step of this length; gives the error estimate as a multiple of the tolerance.
  double triedErrorRatio(double stepSec, double toleranceK, boolean boiling) {
    double implicitSec = GAMMA_NUMBER * stepSec;
    eliminate(implicitSec);
    solve(rate, implicitSec, boiling, k1);
    trial.sum(at, stepSec, k1);
    dutyEndFrac = ratesAndDutyFrac(trial, boiling, rate2);
    rate2.sum(rate2, -2, k1);
    solve(rate2, implicitSec, boiling, k2);
    return errorK(stepSec) / toleranceK;
  }

  /// Writes the end of the tried step into the state.
  void land(BrewState state, double stepSec) {
    trial.sum(at, 1.5 * stepSec, k1);
    trial.sum(trial, 0.5 * stepSec, k2);
    trial.store(state);
  }

  /// Books what the landed step cost.
  void book(BrewState state, double stepSec) {
    double topStartC = bagIn ? at.head : at.kettle;
    double topEndC = bagIn ? state.headC : state.kettleC;
    double wallMeanC = (at.wall + state.wallC) / 2;
    double kettleMeanC = (at.kettle + state.kettleC) / 2;
    double hoseMeanC = (at.hose + state.hoseC) / 2;
    state.dutyFrac = (dutyStartFrac + dutyEndFrac) / 2;
    state.dutySec += state.dutyFrac * stepSec;
    state.elementJ += state.dutyFrac * member.elementW * stepSec;
    state.wallLossJ += member.wallWPerK * (wallMeanC - member.roomC) * stepSec;
    state.surfaceLossJ += (surfaceW(topStartC) + surfaceW(topEndC)) / 2 * stepSec;
    state.hoseLossJ += (loopWPerK + returnWPerK) * (kettleMeanC - hoseMeanC) * stepSec;
    state.chilledJ += chillWPerK * (kettleMeanC - chillC) * stepSec;
  }

  /// Steam that leaves past the lid, averaged over the tried step; the boil's own comes on top.
  double steamKgPerSec(BrewState end) {
    double startC = bagIn ? at.head : at.kettle;
    double endC = bagIn ? end.headC : end.kettleC;
    return steamFrac
        * (member.surfaceLoss.steamKgPerSec(startC) + member.surfaceLoss.steamKgPerSec(endC))
        / 2;
  }

  /// Heat left over for the boil's own steam at this state; negative when it does not boil.
  double surplusW(BrewState state) {
    trial.load(state);
    double dutyFrac = dutyFrac(trial);
    return kettleW(trial, dutyFrac);
  }

  private double askedFrac(Point p) {
    return member.gainFracPerK * (p.set - p.probe - member.probeBiasK) + p.integral;
  }

  private double dutyFrac(Point p) {
    return automatic ? Math.max(0, Math.min(1, askedFrac(p))) : handFrac;
  }

  private double surfaceW(double topC) {
    return steamFrac * member.surfaceLoss.steamW(topC) + surfaceWPerK * (topC - member.roomC);
  }

  private double surfaceSlopeWPerK(double topC) {
    return steamFrac * member.surfaceLoss.steamWPerK(topC) + surfaceWPerK;
  }

  private double kettleW(Point p, double dutyFrac) {
    double k = p.kettle;
    double netW =
        dutyFrac * member.elementW
            - member.wortToWallWPerK * (k - p.wall)
            - (bagWPerK + bedFlowWPerK + mixWPerK) * (k - p.bed)
            - spillWPerK * (k - p.head)
            - returnWPerK * (k - p.hose)
            - chillWPerK * (k - chillC);
    return bagIn ? netW : netW - surfaceW(k);
  }

  private double placeC(Point p) {
    return switch (member.place) {
      case SUCTION -> p.stub;
      case RETURN -> p.hose;
      case KETTLE -> p.kettle;
      case BED -> bagIn ? p.bed : p.kettle;
    };
  }

  /// The rates of change at a point; gives the duty there.
  private double ratesAndDutyFrac(Point p, boolean boiling, Point to) {
    double dutyFrac = dutyFrac(p);
    to.kettle = boiling ? 0 : kettleW(p, dutyFrac) / kettleJPerK;
    if (bagIn) {
      to.head =
          (loopWPerK * (p.hose - p.head) + mixWPerK * (p.bed - p.head) - surfaceW(p.head))
              / headJPerK;
      to.bed =
          ((bagWPerK + mixWPerK) * (p.kettle - p.bed)
                  + (bedFlowWPerK + mixWPerK) * (p.head - p.bed))
              / bedJPerK;
    } else {
      to.head = 0;
      to.bed = 0;
    }
    to.wall =
        (member.wortToWallWPerK * (p.kettle - p.wall) - member.wallWPerK * (p.wall - member.roomC))
            / member.steelJPerK;
    double hoseTargetC = member.roomC + hoseKeepsFrac * (p.kettle - member.roomC);
    to.hose = hosePerSec * (hoseTargetC - p.hose);
    double stubTargetC = member.roomC + stubKeepsFrac * (p.kettle - member.roomC);
    to.stub = stubPerSec * (stubTargetC - p.stub);
    to.probe = (placeC(p) - p.probe) / member.probeLagSec;
    to.integral = integralPerSec(p, dutyFrac);
    to.set = setKPerSec;
    return dutyFrac;
  }

  private double integralPerSec(Point p, double dutyFrac) {
    if (!automatic) {
      return 0;
    }
    double errorK = p.set - p.probe - member.probeBiasK;
    return member.gainFracPerK * errorK / member.integralSec
        + (dutyFrac - askedFrac(p)) / member.trackingSec;
  }

  /// The gains of every chain for `s = gamma h`.
  private void eliminate(double implicitSec) {
    Chain c = chain;
    c.hoseDivFactor = 1 / (1 + implicitSec * hosePerSec);
    c.hoseGainFactor = implicitSec * hosePerSec * hoseKeepsFrac * c.hoseDivFactor;
    c.wallDivFactor =
        1 / (1 + implicitSec * (member.wortToWallWPerK + member.wallWPerK) / member.steelJPerK);
    c.wallGainFactor = implicitSec * member.wortToWallWPerK / member.steelJPerK * c.wallDivFactor;
    c.stubDivFactor = 1 / (1 + implicitSec * stubPerSec);
    c.stubGainFactor = implicitSec * stubPerSec * stubKeepsFrac * c.stubDivFactor;
    eliminateBed(implicitSec);
    double placeGain =
        switch (member.place) {
          case SUCTION -> c.stubGainFactor;
          case RETURN -> c.hoseGainFactor;
          case KETTLE -> 1;
          case BED -> bagIn ? c.bedGainFactor : 1;
        };
    c.probeDivFactor = 1 / (1 + implicitSec / member.probeLagSec);
    c.probeGainFactor = implicitSec / member.probeLagSec * placeGain * c.probeDivFactor;
    eliminateControl(implicitSec);
    double topWPerK = bagIn ? 0 : surfaceSlopeWPerK(at.kettle);
    double couplingWPerK =
        member.wortToWallWPerK * (1 - c.wallGainFactor)
            + (bagWPerK + bedFlowWPerK + mixWPerK) * (1 - c.bedGainFactor)
            + spillWPerK * (1 - c.headGainFactor)
            + returnWPerK * (1 - c.hoseGainFactor)
            + chillWPerK
            + topWPerK
            - member.elementW * c.dutyGainFracPerK;
    c.kettleDivFactor = 1 / (1 + implicitSec * couplingWPerK / kettleJPerK);
  }

  private void eliminateBed(double implicitSec) {
    Chain c = chain;
    if (!bagIn) {
      c.headGainFactor = 0;
      c.bedGainFactor = 0;
      return;
    }
    double headWPerK = loopWPerK + mixWPerK + surfaceSlopeWPerK(at.head);
    c.headDivFactor = 1 / (1 + implicitSec * headWPerK / headJPerK);
    c.headHoseFactor = implicitSec * loopWPerK / headJPerK * c.headDivFactor;
    c.headBedFactor = implicitSec * mixWPerK / headJPerK * c.headDivFactor;
    double bedWPerK = bagWPerK + bedFlowWPerK + 2 * mixWPerK;
    c.bedKettleFactor = implicitSec * (bagWPerK + mixWPerK) / bedJPerK;
    c.bedHeadFactor = implicitSec * (bedFlowWPerK + mixWPerK) / bedJPerK;
    c.bedDivFactor =
        1 / (1 + implicitSec * bedWPerK / bedJPerK - c.bedHeadFactor * c.headBedFactor);
    c.bedGainFactor =
        (c.bedKettleFactor + c.bedHeadFactor * c.headHoseFactor * c.hoseGainFactor)
            * c.bedDivFactor;
    c.headGainFactor = c.headHoseFactor * c.hoseGainFactor + c.headBedFactor * c.bedGainFactor;
  }

  private void eliminateControl(double implicitSec) {
    Chain c = chain;
    double gain = member.gainFracPerK;
    if (saturated) {
      c.integralDivFactor = automatic ? 1 / (1 + implicitSec / member.trackingSec) : 1;
      c.integralProbeFactor =
          automatic ? implicitSec * gain * (1 / member.trackingSec - 1 / member.integralSec) : 0;
      c.dutyProbeFracPerK = 0;
      c.dutyGainFracPerK = 0;
    } else {
      c.integralDivFactor = 1;
      c.integralProbeFactor = -implicitSec * gain / member.integralSec;
      c.dutyProbeFracPerK = -gain * (1 + implicitSec / member.integralSec);
      c.dutyGainFracPerK = c.dutyProbeFracPerK * c.probeGainFactor;
    }
  }

  /// Solves `(I - gamma h J) k = r` down the chains and back.
  private void solve(Point r, double implicitSec, boolean boiling, Point k) {
    Chain c = chain;
    double hose = r.hose * c.hoseDivFactor;
    double wall = r.wall * c.wallDivFactor;
    double stub = r.stub * c.stubDivFactor;
    double head = 0;
    double bed = 0;
    if (bagIn) {
      double headAlone = r.head * c.headDivFactor + c.headHoseFactor * hose;
      bed = (r.bed + c.bedHeadFactor * headAlone) * c.bedDivFactor;
      head = headAlone + c.headBedFactor * bed;
    }
    double place =
        switch (member.place) {
          case SUCTION -> stub;
          case RETURN -> hose;
          case KETTLE -> 0;
          case BED -> bed;
        };
    double probe = (r.probe + implicitSec / member.probeLagSec * place) * c.probeDivFactor;
    double duty = saturated ? 0 : r.integral + c.dutyProbeFracPerK * (probe - r.set);
    double kettle =
        boiling
            ? 0
            : (r.kettle
                    + implicitSec
                        / kettleJPerK
                        * (member.elementW * duty
                            + member.wortToWallWPerK * wall
                            + (bagWPerK + bedFlowWPerK + mixWPerK) * bed
                            + spillWPerK * head
                            + returnWPerK * hose))
                * c.kettleDivFactor;
    k.kettle = kettle;
    k.hose = hose + c.hoseGainFactor * kettle;
    k.wall = wall + c.wallGainFactor * kettle;
    k.stub = stub + c.stubGainFactor * kettle;
    k.head = head + c.headGainFactor * kettle;
    k.bed = bed + c.bedGainFactor * kettle;
    k.probe = probe + c.probeGainFactor * kettle;
    k.set = r.set;
    k.integral = (r.integral + c.integralProbeFactor * (k.probe - k.set)) * c.integralDivFactor;
  }

  /// Largest estimated error of the temperatures that steer anything, in kelvin.
  private double errorK(double stepSec) {
    double half = stepSec / 2;
    double worst = Math.abs(k1.kettle + k2.kettle);
    worst = Math.max(worst, Math.abs(k1.bed + k2.bed));
    worst = Math.max(worst, Math.abs(k1.head + k2.head));
    worst = Math.max(worst, Math.abs(k1.wall + k2.wall) / 4);
    if (automatic) {
      worst = Math.max(worst, Math.abs(k1.probe + k2.probe));
    }
    return half * worst;
  }
}
