package gylebook.simulate;

/// Moves one brew through a day: takes the step, chooses its length, finds where legs end.
///
/// Every member has its own step: a quarter of a second after something was switched, a minute in
/// the mash, five minutes elsewhere. Heat goes by [Thermal], chemistry on the same step by
/// [Chemistry]. Where a leg ends (a reading reached, the boil) is found by shortening the step.
public final class Simulator {
  /// Steps are chosen so that the heat errs by about this much in each.
  public static final double TOLERANCE_K = 0.03;

  private static final double FIRST_SEC = 0.25;
  private static final double SYRUP_FRAC = 0.5;
  private static final double LEAST_WATER_KG = 0.2;
  private static final double MASH_MOST_SEC = 60;
  private static final double MOST_SEC = 300;
  private static final double LEAST_SEC = 0.01;
  private static final double FOUND_K = 0.002;
  private static final double REFRESH_K = 2;
  private static final double REFRESH_FRAC = 0.005;

  private final double toleranceK;
  private final double stepFactor;
  private final Flows flows = new Flows();
  private final Deeds deeds = new Deeds(flows);
  private final Thermal thermal = new Thermal();
  private final Point before = new Point();
  private final double[] lineFromNumber = new double[DayLog.Line.values().length];
  private final double[] lineToNumber = new double[DayLog.Line.values().length];

  private Member member = new Member();
  private BrewState state = new BrewState();
  private DayLog log = new DayLog(0, 0);
  private double refreshedC;
  private double refreshedFrac;
  private double refreshedKg;
  private int steps;

  /// A simulator of the usual accuracy.
  public Simulator() {
    this(TOLERANCE_K, 1);
  }

  /// A simulator of another accuracy, for tests and tables of accuracy.
  ///
  /// @param toleranceK error of the heat allowed in one step
  /// @param stepFactor largest steps times this
  public Simulator(double toleranceK, double stepFactor) {
    this.toleranceK = toleranceK;
    this.stepFactor = stepFactor;
  }

  /// Runs actions one after another.
  public void run(
      Iterable<Action> actions,
      Member ofMember,
      BrewState ofState,
      DayLog toLog,
      boolean withLines) {
    takeUp(ofMember, ofState, toLog);
    log.clear(withLines);
    goOn(actions);
  }

  /// Takes up a brew where it stands, whatever happened before.
  void takeUp(Member ofMember, BrewState ofState, DayLog toLog) {
    member = ofMember;
    state = ofState;
    log = toLog;
    steps = 0;
    thermal.turnTo(member);
    flows.weigh(state, member);
    Look.at(state, member, flows, lineToNumber);
  }

  /// Goes on with these actions from where the brew stands.
  void goOn(Iterable<Action> actions) {
    for (Action action : actions) {
      switch (action) {
        case Leg leg -> leg(leg);
        case Action.Deed deed -> deed(deed);
      }
    }
  }

  /// Steps taken in the last run.
  public int steps() {
    return steps;
  }

  void deed(Action.Deed deed) {
    if (deed instanceof Action.BagOut) {
      flows.weigh(state, member);
      log.bagKg = state.solidsKg() + flows.bedKg;
    }
    deeds.apply(deed, state, member);
    switch (deed) {
      case Action.Mark mark -> log.milestone(mark.key(), state, member, flows);
      case Action.DoughIn _ -> log.doughInM = Views.restM(state, member);
      case Action.BagOut _ ->
          log.drippedKg = state.bagUndissolvedKg + state.bagWaterKg + state.bagExtractKg;
      case Action.TopUp _, Action.AddExtract _, Action.AddHops _ -> {}
      case Action.TakeOut _, Action.Dilute _ -> {}
    }
  }

  private void leg(Leg leg) {
    boolean ended = stretch(leg);
    if ((!ended && !(leg.until() instanceof Leg.Until.After)) || boiledDry()) {
      log.gaveUp = true;
      log.gaveUpAt = log.gaveUpAt.isEmpty() ? leg.key() : log.gaveUpAt;
    }
    milestone(leg.key());
  }

  /// Notes a milestone where the brew stands.
  void milestone(String key) {
    flows.weigh(state, member);
    log.milestone(key, state, member, flows);
  }

  /// Runs a leg, or what is left of it, and notes nothing; whether what ends it was reached.
  boolean stretch(Leg leg) {
    double startSec = state.clockSec;
    double endSec = startSec + mostSec(leg);
    refresh(leg, true);
    if (leg.drive() instanceof Leg.Drive.ByHand) {
      state.integralFrac = 0;
    }
    double stepSec = FIRST_SEC;
    boolean ended = reached(leg);
    while (!ended && state.clockSec < endSec - 1e-6 && !boiledDry()) {
      refresh(leg, false);
      double cappedSec = Math.min(stepSec, stepMostSec(leg));
      double takenSec = steppedSec(leg, Math.min(cappedSec, endSec - state.clockSec));
      ended = reached(leg);
      stepSec = Math.max(FIRST_SEC, Math.min(takenSec * growthFactor, 5 * takenSec));
      if (landed) {
        stepSec = FIRST_SEC;
      }
    }
    return ended;
  }

  /// A syrup is no wort any more: the day is given up before the formulas leave their range.
  private boolean boiledDry() {
    return state.extractFrac() > SYRUP_FRAC || state.waterKg < LEAST_WATER_KG;
  }

  private double growthFactor = 1;
  private boolean landed;
  private boolean rises;

  private static double mostSec(Leg leg) {
    return leg.until() instanceof Leg.Until.After after ? after.holdSec() : leg.mostSec();
  }

  private double stepMostSec(Leg leg) {
    double mostSec = stepFactor * (state.bagIn ? MASH_MOST_SEC : MOST_SEC);
    double fastest = Chemistry.fastestPerSec(state);
    if (fastest > 0) {
      mostSec = Math.min(mostSec, stepFactor * 0.35 / fastest);
    }
    if (leg.drive() instanceof Leg.Drive.Rising rising && Thermal.risesSec(state, rising) > 0) {
      mostSec = Math.min(mostSec, Thermal.risesSec(state, rising));
    }
    if (leg.runOff()) {
      double kgPerSec = Math.max(1e-9, flows.runOffKgPerSec);
      mostSec = Math.min(mostSec, Math.max(1, 0.05 * state.liquidKg() / kgPerSec));
    }
    return mostSec;
  }

  /// Takes over what the leg and the masses say; the dear parts only when something has changed.
  private void refresh(Leg leg, boolean always) {
    flows.weigh(state, member);
    double extractFrac = state.extractFrac();
    if (always
        || Math.abs(state.kettleC - refreshedC) > REFRESH_K
        || Math.abs(extractFrac - refreshedFrac) > REFRESH_FRAC
        || Math.abs(state.liquidKg() / refreshedKg - 1) > REFRESH_FRAC) {
      flows.run(state, member, leg);
      refreshedC = state.kettleC;
      refreshedFrac = extractFrac;
      refreshedKg = Math.max(0.01, state.liquidKg());
    }
    thermal.prepare(state, leg, flows);
  }

  /// One step, no longer than asked; shorter where the error or an event wants it.
  private double steppedSec(Leg leg, double askedSec) {
    boolean boiling = state.boiling;
    rises = rises(leg);
    before.load(state);
    thermal.start(state);
    double boilsC = member.boilsC(state.extractFrac());
    double stepSec = askedSec;
    double missK = gapK(leg, boilsC);
    landed = false;
    double errorRatio = 0;
    for (int tries = 0; tries < 60; tries++) {
      errorRatio = thermal.triedErrorRatio(stepSec, toleranceK, boiling);
      if (errorRatio > 1 && stepSec > LEAST_SEC) {
        stepSec *= Math.max(0.2, 0.85 / Math.sqrt(errorRatio));
        continue;
      }
      thermal.land(state, stepSec);
      double overK = gapK(leg, boilsC);
      if (missK < 0 && overK > FOUND_K && stepSec > LEAST_SEC) {
        before.store(state);
        stepSec *= Math.max(0.05, Math.min(0.98, -missK / (overK - missK)));
        landed = true;
        continue;
      }
      break;
    }
    growthFactor = errorRatio > 0 ? Math.min(5, 0.85 / Math.sqrt(errorRatio)) : 5;
    close(leg, stepSec, boilsC);
    return stepSec;
  }

  /// How far past its event the state is: negative before it, in kelvin.
  private double gapK(Leg leg, double boilsC) {
    double legK =
        switch (leg.until()) {
          // As long as the set point climbs, the leg goes on whatever is read.
          case Leg.Until.Reads _ when rises -> Double.NEGATIVE_INFINITY;
          case Leg.Until.Reads reads -> state.probeC + member.probeBiasK - reads.readC();
          case Leg.Until.CooledTo cooled -> cooled.wortC() - state.kettleC;
          case Leg.Until.After _, Leg.Until.Boils _, Leg.Until.RunOff _ -> Double.NEGATIVE_INFINITY;
        };
    double boilK = state.boiling ? Double.NEGATIVE_INFINITY : state.kettleC - boilsC;
    return Math.max(legK, boilK);
  }

  /// Books the step: chemistry, steam, the boil, run-off, lines and extremes.
  private void close(Leg leg, double stepSec, double boilsC) {
    double startSec = state.clockSec;
    if (log.keepsLines() && startSec == 0) {
      Look.at(state, member, flows, lineToNumber);
    }
    System.arraycopy(lineToNumber, 0, lineFromNumber, 0, lineToNumber.length);
    steps++;
    thermal.book(state, stepSec);
    double kettleMidC = (before.kettle + state.kettleC) / 2;
    double bedMidC = (before.bed + state.bedC) / 2;
    double steamKgPerSec = thermal.steamKgPerSec(state);
    steamKgPerSec += boilKgPerSec(stepSec, boilsC);
    if (state.bagIn) {
      double heldJ = solidsAndExtractJ();
      Chemistry.mash(state, flows, stepSec, bedMidC, kettleMidC);
      state.carriedJ += heldJ - solidsAndExtractJ();
      log.grainMeanC += bedMidC * stepSec;
      log.grainMeanSec += stepSec;
    }
    Chemistry.hops(state, stepSec, kettleMidC);
    Chemistry.sulfide(state, stepSec, kettleMidC, steamKgPerSec);
    if (leg.pump() != Leg.Pump.OFF && member.hasPump) {
      state.loopDoseMin += Chemistry.doseMin(stepSec, before.hose, state.hoseC);
    }
    double steamKg = Math.min(steamKgPerSec * stepSec, 0.5 * state.waterKg);
    state.waterKg -= steamKg;
    state.steamKg += steamKg;
    state.carriedJ +=
        steamKg * Flows.WATER_J_PER_KG_K * (state.bagIn ? state.headC : state.kettleC);
    state.chillWaterKg += flows.chillWaterKgPerSec * stepSec;
    if (leg.runOff()) {
      Casting.runOff(state, member, flows, stepSec);
    }
    state.clockSec = startSec + stepSec;
    Gauge.follow(state, member, before, stepSec);
    watch(leg);
    if (log.keepsLines()) {
      Look.at(state, member, flows, lineToNumber);
      log.line(startSec, lineFromNumber, state.clockSec, lineToNumber);
    }
  }

  /// Solids that dissolve change the heat capacity at a given temperature; the account is told.
  private double solidsAndExtractJ() {
    return state.bedC
            * (state.solidsKg() * Flows.SOLIDS_J_PER_KG_K
                + state.bedExtractKg * Flows.EXTRACT_J_PER_KG_K)
        + state.kettleC * state.kettleExtractKg * Flows.EXTRACT_J_PER_KG_K;
  }

  /// Holds the kettle at its boiling point and turns what is left over into steam.
  private double boilKgPerSec(double stepSec, double boilsC) {
    if (!state.boiling) {
      if (state.kettleC >= boilsC - FOUND_K && !state.bagIn) {
        state.boiling = thermal.surplusW(state) > 0;
      }
      return 0;
    }
    double surplusW = thermal.surplusW(state);
    double driftW = flows.kettleJPerK * (boilsC - state.kettleC) / stepSec;
    state.kettleC = boilsC;
    if (surplusW - driftW <= 0) {
      state.boiling = false;
      return 0;
    }
    double steamKgPerSec = (surplusW - driftW) / member.latentJPerKg;
    state.surfaceLossJ += (surplusW - driftW) * stepSec;
    return steamKgPerSec;
  }

  private boolean rises(Leg leg) {
    return leg.drive() instanceof Leg.Drive.Rising rising && Thermal.risesSec(state, rising) > 0;
  }

  private boolean reached(Leg leg) {
    return switch (leg.until()) {
      case Leg.Until.After _ -> false;
      case Leg.Until.Reads reads ->
          !rises(leg) && state.probeC + member.probeBiasK >= reads.readC() - FOUND_K;
      case Leg.Until.Boils _ -> state.boiling;
      case Leg.Until.CooledTo cooled -> state.kettleC <= cooled.wortC() + FOUND_K;
      case Leg.Until.RunOff _ -> Casting.dry(state, member);
    };
  }

  /// Keeps the extremes that the guards speak of.
  private void watch(Leg leg) {
    double levelM = Views.restM(state, member);
    log.highestM = Math.max(log.highestM, levelM);
    if (state.boiling && log.breakM == 0) {
      log.breakM = levelM;
    }
    if (state.dutyFrac > 0.02) {
      double coverM = levelM - Views.fallM(member, flows) - member.elementTopM;
      log.elementCoverM = Math.min(log.elementCoverM, coverM);
    }
    if (flows.loopLPerSec > 0) {
      log.suctionM = Math.min(log.suctionM, Views.suctionM(state, member));
    }
    if (leg.chilling() && flows.chillWaterKgPerSec > 0) {
      double overTapK = state.kettleC - member.tapC;
      log.drainC = Math.max(log.drainC, member.tapC + flows.drainShareFrac * overTapK);
    }
  }
}
