package gylebook.simulate;

import gylebook.science.BetaAmylase;
import gylebook.science.Brandam2003;
import gylebook.science.DimethylSulfide;
import gylebook.science.Fermentability;
import gylebook.science.Gelatinisation;
import gylebook.science.HopIsomerisation;
import gylebook.science.MaltHeat;
import gylebook.science.Saturation;
import gylebook.units.AnyUnit;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/// Members and their days as plain numbers, for a yardstick in another language: the tables, then
/// each day's member, surface, kettle and actions. Doubles go out in hexadecimal, bit for bit.
@AnyUnit("writes numbers of every unit")
public final class DayScript {
  private final StringBuilder out = new StringBuilder();

  private DayScript() {}

  /// The script of these days.
  public static String of(List<DemoDays.Ready> days) {
    DayScript script = new DayScript();
    script.tables();
    script.put(days.size());
    days.forEach(script::day);
    return script.out.toString();
  }

  /// What a run ends with, in the order in which the yardstick tells it: steps, milestones, ends.
  public static double[] ran(DemoDays.Ready ready, Simulator simulator) {
    DayLog log = new DayLog(0, 0);
    BrewState s = ready.filled();
    simulator.run(ready.actions(), ready.member(), s, log, false);
    return told(simulator.steps(), s, log);
  }

  /// The same of the plain model; in place of the steps its evaluations.
  public static double[] plain(DemoDays.Ready ready, PlainDay day) {
    DayLog log = new DayLog(0, 0);
    BrewState s = ready.filled();
    day.run(ready.actions(), ready.member(), s, log);
    return told(day.evaluations(), s, log);
  }

  private static double[] told(int steps, BrewState s, DayLog log) {
    double[] told = new double[2 + 6 * log.milestones() + 11];
    int at = 0;
    told[at++] = steps;
    told[at++] = log.milestones();
    for (int i = 0; i < log.milestones(); i++) {
      told[at++] = log.at(i, DayLog.Column.AT_SEC);
      told[at++] = log.at(i, DayLog.Column.WORT_C);
      told[at++] = log.at(i, DayLog.Column.GRAIN_C);
      told[at++] = log.at(i, DayLog.Column.HOT_L);
      told[at++] = log.at(i, DayLog.Column.COLD_L);
      told[at++] = log.at(i, DayLog.Column.WORT_PLATO);
    }
    double[] ends = {
      s.castWaterKg,
      s.castExtractKg,
      s.castFermentableKg,
      s.castHeatJ,
      s.precursorFrac,
      s.sulfideFrac,
      s.loopDoseMin,
      s.elementJ,
      s.steamKg,
      s.castIsoMg[0],
      log.highestM
    };
    System.arraycopy(ends, 0, told, at, ends.length);
    return told;
  }

  private void put(double... values) {
    for (double value : values) {
      out.append(Double.toHexString(value)).append(' ');
    }
    out.append('\n');
  }

  private void tables() {
    table(0.1, Gelatinisation::ratePerSec);
    table(0.1, BetaAmylase::labileDecayPerSec);
    table(0.1, mashC -> Brandam2003.alphaDenaturationPerSec(Math.max(30, mashC)));
    table(0.1, Fermentability::approachPerSec);
    table(0.1, HopIsomerisation::formationPerSec);
    table(0.1, HopIsomerisation::lossPerSec);
    table(0.1, wortC -> DimethylSulfide.precursorPerSec(wortC, 5.3));
    table(0.1, wortC -> Math.pow(10, (wortC - 60) / 7) / 60);
    table(0.1, wortC -> Saturation.saturationKpa(Math.max(0.01, wortC)));
  }

  private void table(double stepK, DoubleUnaryOperator function) {
    int count = (int) Math.round(110 / stepK) + 1;
    put(count, 1 / stepK);
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = function.applyAsDouble(Math.min(110, i * stepK));
    }
    put(values);
  }

  private void day(DemoDays.Ready ready) {
    member(ready.member());
    double[] steamKgPerSec = new double[109];
    double[] steamW = new double[109];
    for (int i = 0; i < 109; i++) {
      steamKgPerSec[i] = ready.member().surfaceLoss.steamKgPerSec(i);
      steamW[i] = ready.member().surfaceLoss.steamW(i);
    }
    put(steamKgPerSec);
    put(steamW);
    put(ready.start().waterKg, ready.start().kettleC, ready.actions().size());
    ready.actions().forEach(this::action);
  }

  private void member(Member m) {
    put(
        m.waterBoilsC,
        m.latentJPerKg,
        m.riseKPerFrac,
        m.riseKPerFrac2,
        m.roomC,
        m.tapC,
        m.pressureKpa,
        m.surfaceM2,
        m.steelJPerK,
        m.wallWPerK,
        m.wortToWallWPerK,
        m.lidOnWPerK,
        m.lidOffWPerK,
        m.lidLeakFrac,
        m.deadL,
        m.elementW,
        m.elementTopM,
        m.bedM2,
        m.permeabilityM2,
        m.bagWPerK,
        m.bedKgPerKg,
        m.crestM,
        m.displacementLPerKg,
        m.hasPump ? 1 : 0,
        m.hoseL,
        m.hoseWPerK,
        m.mashLPerSec,
        m.whirlpoolLPerSec,
        m.suctionM,
        m.suctionLossM,
        m.wantedNpshM,
        place(m),
        m.probeLagSec,
        m.probeBiasK,
        m.gainFracPerK,
        m.integralSec,
        m.trackingSec,
        chiller(m),
        m.chillHotKPerW,
        m.chillColdKPerW,
        m.chillWortLPerSec,
        m.chillWaterLPerSec,
        m.chillHeldL,
        m.mashFrac,
        m.mixingLPerSec);
  }

  private static int place(Member member) {
    return switch (member.place) {
      case KETTLE -> 0;
      case SUCTION -> 1;
      case RETURN -> 2;
      case BED -> 3;
    };
  }

  private static int chiller(Member member) {
    return switch (member.chiller) {
      case NONE -> 0;
      case IMMERSION -> 1;
      case COUNTERFLOW -> 2;
      case PLATE -> 3;
    };
  }

  private void action(Action action) {
    switch (action) {
      case Leg leg -> leg(leg);
      case Action.DoughIn malt ->
          put(
              1,
              malt.grainKg(),
              malt.moistureFrac(),
              malt.extractFrac(),
              malt.grainC(),
              malt.grainKg() * MaltHeat.wettingJPerKg(malt.moistureFrac()) * malt.wettingFactor());
      case Action.BagOut bag -> put(2, bag.keptKgPerKg(), 0, 0, 0, 0);
      case Action.TopUp liquor -> put(3, liquor.waterKg(), liquor.waterC(), 0, 0, 0);
      case Action.AddExtract added ->
          put(4, added.extractKg(), added.waterKg(), added.fermentableFrac(), 0, 0);
      case Action.AddHops hops -> put(5, hops.hopNumber(), hops.alphaMg(), hops.wortKg(), 0, 0);
      case Action.TakeOut _, Action.Dilute _ ->
          throw new IllegalArgumentException("No planned day has " + action);
      case Action.Mark _ -> put(6, 0, 0, 0, 0, 0);
    }
  }

  private void leg(Leg leg) {
    boolean automatic = !(leg.drive() instanceof Leg.Drive.ByHand);
    double[] rises =
        leg.drive() instanceof Leg.Drive.Rising rising
            ? new double[] {rising.fromC(), rising.setKPerSec()}
            : new double[] {0, 0};
    double drive =
        switch (leg.drive()) {
          case Leg.Drive.Automatic held -> held.setC();
          case Leg.Drive.Rising rising -> rising.setC();
          case Leg.Drive.ByHand hand -> hand.dutyFrac();
        };
    double[] until =
        switch (leg.until()) {
          case Leg.Until.After after -> new double[] {0, after.holdSec()};
          case Leg.Until.Reads reads -> new double[] {1, reads.readC()};
          case Leg.Until.Boils _ -> new double[] {2, 0};
          case Leg.Until.CooledTo cooled -> new double[] {3, cooled.wortC()};
          case Leg.Until.RunOff _ -> new double[] {4, 0};
        };
    put(
        0,
        automatic ? 1 : 0,
        drive,
        rises[0],
        rises[1],
        leg.pump().ordinal(),
        leg.lidOn() ? 1 : 0,
        leg.stirred() ? 1 : 0,
        leg.chilling() ? 1 : 0,
        leg.runOff() ? 1 : 0,
        until[0],
        until[1],
        leg.mostSec());
  }
}
