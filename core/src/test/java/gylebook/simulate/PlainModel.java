package gylebook.simulate;

import gylebook.rig.Chiller;
import gylebook.science.BedFlow;
import gylebook.science.BetaAmylase;
import gylebook.science.Brandam2003;
import gylebook.science.DimethylSulfide;
import gylebook.science.Evaporation;
import gylebook.science.Fermentability;
import gylebook.science.Gelatinisation;
import gylebook.science.HopIsomerisation;
import gylebook.science.LatentHeat;
import gylebook.science.WortDensity;
import gylebook.science.WortViscosity;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.ode.OrdinaryDifferentialEquation;

/// The model of the day written down once more, slowly: one system of ordinary differential
/// equations `dy/dt = f(y)`, straight from the functions of `science`, without tables, chains,
/// refreshes or splitting. Any integrator can be set on it. (Tables can be put in, to measure what
/// they alone are worth.)
///
/// Only the member's numbers and the legs are shared with the simulator.
public final class PlainModel implements OrdinaryDifferentialEquation {
  static final int KETTLE = 0;
  static final int BED = 1;
  static final int HEAD = 2;
  static final int WALL = 3;
  static final int HOSE = 4;
  static final int STUB = 5;
  static final int PROBE = 6;
  static final int INTEGRAL = 7;
  static final int WATER = 8;
  static final int KETTLE_EXTRACT = 9;
  static final int BED_EXTRACT = 10;
  static final int SOLUBLE = 11;
  static final int STARCH = 12;
  static final int PASTED = 13;
  static final int FERMENTABLE = 14;
  static final int ALPHA = 15;
  static final int BETA = 16;
  static final int PRECURSOR = 17;
  static final int SULFIDE = 18;
  static final int STEAM = 19;
  static final int ELEMENT_J = 20;
  static final int DOSE = 21;
  static final int CAST_WATER = 22;
  static final int CAST_EXTRACT = 23;
  static final int CAST_HEAT_J = 24;
  static final int CAST_FERMENTABLE = 25;
  static final int SET = 26;
  static final int FIRST_HOP = 27;

  // Cold air over a boil: the formula for quiet air ends a kelvin below it (as in the model).
  private static final double BELOW_BOIL_K = 1;
  private static final double MOST_C = 110;

  private final Member member;
  private final int hops;
  private final boolean tabled;

  // What holds during a leg.
  private Leg leg = Leg.idle("none", 0);
  private boolean bagIn;
  private boolean boiling;
  private boolean rising;
  private double grainKg;
  private double inertKg;
  private double hopWortKg;

  // What holds at one evaluation.
  private double kettleC;
  private double extractFrac;
  private double liquidKg;
  private double kettleKg;
  private double bedKg;
  private double headKg;
  private double wortJPerKgK;
  private double wortKgPerL;
  private double loopLPerSec;
  private double mixLPerSec;
  private double throughFrac;
  private double dutyFrac;
  private double surfaceKgPerSec;
  private double boilKgPerSec;
  private double spareW;
  private int evaluations;

  /// The rates, straight from their formulas and, for measurements, from tables like ours.
  private record Rate(DoubleUnaryOperator formula, RateTable table) {
    static final Rate PASTING = of(Gelatinisation::ratePerSec);
    static final Rate BETA_LOSS = of(BetaAmylase::labileDecayPerSec);
    static final Rate ALPHA_LOSS =
        of(mashC -> Brandam2003.alphaDenaturationPerSec(Math.max(30, mashC)));
    static final Rate APPROACH = of(Fermentability::approachPerSec);
    static final Rate ISO_FORMED = of(HopIsomerisation::formationPerSec);
    static final Rate ISO_LOST = of(HopIsomerisation::lossPerSec);
    static final Rate PRECURSOR_LOST = of(wortC -> DimethylSulfide.precursorPerSec(wortC, 5.3));
    static final Rate DOSE = of(wortC -> Math.pow(10, (wortC - 60) / 7) / 60);

    private static Rate of(DoubleUnaryOperator formula) {
      return new Rate(formula, new RateTable(0.1, formula));
    }
  }

  /// A model by formulas, or with tables in place of the dear ones.
  PlainModel(Member member, int hops, boolean tabled) {
    this.member = member;
    this.hops = hops;
    this.tabled = tabled;
  }

  /// A trial step that is too long leaves the range of the formulas before it is thrown away.
  private double at(Rate rate, double wortC) {
    double inRangeC = Math.clamp(wortC, 0, MOST_C);
    return tabled ? rate.table.at(inRangeC) : rate.formula.applyAsDouble(inRangeC);
  }

  void turnTo(Leg newLeg, BrewState state) {
    leg = newLeg;
    bagIn = state.bagIn;
    boiling = state.boiling;
    grainKg = state.grainKg;
    inertKg = state.inertKg;
    hopWortKg = state.hopWortKg;
  }

  /// The set point, and for how long it still climbs.
  double risesSec(double[] y) {
    switch (leg.drive()) {
      case Leg.Drive.Automatic held -> y[SET] = held.setC();
      case Leg.Drive.Rising climbing -> {
        y[SET] = Math.max(y[SET], climbing.fromC());
        rising = climbing.setC() - y[SET] > 1e-9;
        y[SET] = rising ? y[SET] : climbing.setC();
        return rising ? (climbing.setC() - y[SET]) / climbing.setKPerSec() : 0;
      }
      case Leg.Drive.ByHand _ -> {}
    }
    rising = false;
    return 0;
  }

  private double risesKPerSec() {
    return leg.drive() instanceof Leg.Drive.Rising climbing ? climbing.setKPerSec() : 0;
  }

  boolean boils() {
    return boiling;
  }

  /// Evaluations of the right-hand side so far.
  public int evaluations() {
    return evaluations;
  }

  @Override
  public int getDimension() {
    return FIRST_HOP + 3 * hops;
  }

  @Override
  public double[] computeDerivatives(double t, double[] y) {
    evaluations++;
    double[] to = new double[y.length];
    takeStock(y);
    instruments(y, to);
    heat(y, to);
    if (bagIn) {
      mash(y, to);
    }
    hopsAndSulfide(y, to);
    if (leg.runOff()) {
      runOff(y, to);
    }
    return to;
  }

  /// Masses, capacities, flows.
  private void takeStock(double[] y) {
    double extractKg = y[KETTLE_EXTRACT] + y[BED_EXTRACT];
    liquidKg = y[WATER] + extractKg;
    extractFrac = Math.clamp(extractKg / liquidKg, 0, 0.69);
    kettleC = boiling ? member.boilsC(extractFrac) : y[KETTLE];
    wortJPerKgK =
        (1 - extractFrac) * Flows.WATER_J_PER_KG_K + extractFrac * Flows.EXTRACT_J_PER_KG_K;
    wortKgPerL = WortDensity.wortKgPerL(extractFrac, Math.clamp(kettleC, 0, 100));
    bedKg = bagIn ? Math.min(member.bedKgPerKg * grainKg, 0.5 * liquidKg) : 0;
    headKg = bagIn ? Math.min(3, 0.1 * liquidKg) : 0;
    kettleKg = liquidKg - bedKg - headKg;
    loopLPerSec =
        !member.hasPump || leg.pump() == Leg.Pump.OFF
            ? 0
            : leg.pump() == Leg.Pump.MASH ? member.mashLPerSec : member.whirlpoolLPerSec;
    mixLPerSec = bagIn && (leg.stirred() || !member.hasPump) ? member.mixingLPerSec : 0;
    throughFrac = bagIn && loopLPerSec > 0 ? throughFrac(y[BED]) : 0;
  }

  /// The share of the loop that the bed lets through under the highest head that it can have.
  private double throughFrac(double bedC) {
    double bedL = member.bedKgPerKg * grainKg + member.displacementLPerKg * grainKg;
    double depthM = bedL / 1000 / member.bedM2;
    double wantedM =
        BedFlow.headM(
            loopLPerSec,
            depthM,
            member.bedM2,
            member.permeabilityM2,
            WortViscosity.wortPaSec(extractFrac, Math.clamp(bedC, 0, 95)),
            wortKgPerL);
    double mostM =
        Math.max(0.005, member.crestM) * member.surfaceM2 / (member.surfaceM2 - member.bedM2);
    return Math.min(1, mostM / wantedM);
  }

  private double placeC(double[] y) {
    return switch (member.place) {
      case SUCTION -> y[STUB];
      case RETURN -> y[HOSE];
      case KETTLE -> kettleC;
      case BED -> bagIn ? y[BED] : kettleC;
    };
  }

  private void instruments(double[] y, double[] to) {
    boolean runs = loopLPerSec > 0;
    double loopWPerK = loopLPerSec * wortKgPerL * wortJPerKgK;
    double hoseKeepsFrac = runs ? Math.exp(-member.hoseWPerK / loopWPerK) : 0;
    double hoseSec = runs ? 1.4 * Math.max(0.01, member.hoseL) / loopLPerSec : 600;
    double overRoomK = kettleC - member.roomC;
    to[HOSE] = (member.roomC + hoseKeepsFrac * overRoomK - y[HOSE]) / hoseSec;
    to[STUB] = (member.roomC + (runs ? 1 : 0.97) * overRoomK - y[STUB]) / (runs ? 5 : 240);
    to[PROBE] = (placeC(y) - y[PROBE]) / member.probeLagSec;
    switch (leg.drive()) {
      case Leg.Drive.ByHand hand -> dutyFrac = hand.dutyFrac();
      case Leg.Drive.Automatic _, Leg.Drive.Rising _ -> {
        double errorK = y[SET] - (y[PROBE] + member.probeBiasK);
        to[SET] = rising ? risesKPerSec() : 0;
        double askedFrac = member.gainFracPerK * errorK + y[INTEGRAL];
        dutyFrac = Math.clamp(askedFrac, 0, 1);
        to[INTEGRAL] =
            member.gainFracPerK * errorK / member.integralSec
                + (dutyFrac - askedFrac) / member.trackingSec;
      }
    }
    if (runs) {
      to[DOSE] = at(Rate.DOSE, y[HOSE]);
    }
  }

  private void heat(double[] y, double[] to) {
    double loopWPerK = loopLPerSec * wortKgPerL * wortJPerKgK;
    double mixWPerK = mixLPerSec * wortKgPerL * wortJPerKgK;
    double bedWPerK = throughFrac * loopWPerK;
    double wallW = member.wortToWallWPerK * (kettleC - y[WALL]);
    to[WALL] = (wallW - member.wallWPerK * (y[WALL] - member.roomC)) / member.steelJPerK;
    double netW = dutyFrac * member.elementW - wallW - chillWPerK() * (kettleC - member.tapC);
    double topC = bagIn ? y[HEAD] : kettleC;
    double topW = surfaceW(topC);
    if (bagIn) {
      double bagW = member.bagWPerK * (kettleC - y[BED]);
      double stirredW = mixWPerK * (kettleC - y[BED]);
      double throughW = bedWPerK * (y[HEAD] - y[BED]);
      double backW = bedWPerK * (kettleC - y[BED]) + (loopWPerK - bedWPerK) * (kettleC - y[HEAD]);
      double headMixW = mixWPerK * (y[HEAD] - y[BED]);
      netW -= bagW + stirredW + backW;
      to[BED] =
          (bagW + stirredW + throughW + headMixW)
              / (bedKg * wortJPerKgK
                  + (inertKg + y[SOLUBLE] + y[STARCH] + y[PASTED]) * Flows.SOLIDS_J_PER_KG_K);
      to[HEAD] = (loopWPerK * (y[HOSE] - y[HEAD]) - headMixW - topW) / (headKg * wortJPerKgK);
    } else {
      netW -= loopWPerK * (kettleC - y[HOSE]) + topW;
    }
    double kettleJPerK = Math.max(kettleKg, 0.05) * wortJPerKgK;
    boilKgPerSec = boiling ? boilKgPerSec(netW, kettleJPerK) : 0;
    double steamKgPerSec = surfaceKgPerSec + boilKgPerSec;
    double stronger = extractFrac / liquidKg * steamKgPerSec;
    to[KETTLE] = boiling ? riseSlopeK() * stronger : netW / kettleJPerK;
    to[WATER] = -steamKgPerSec;
    to[STEAM] = steamKgPerSec;
    to[ELEMENT_J] = dutyFrac * member.elementW;
    spareW = netW;
  }

  /// Boiling wort gets stronger and hence hotter: `latent m = W - C b'(x) x (m + m0) / M`.
  private double boilKgPerSec(double netW, double kettleJPerK) {
    double hotterJPerKg = kettleJPerK * riseSlopeK() * extractFrac / liquidKg;
    return (netW - hotterJPerKg * surfaceKgPerSec) / (member.latentJPerKg + hotterJPerKg);
  }

  private double riseSlopeK() {
    return member.riseKPerFrac + 2 * extractFrac * member.riseKPerFrac2;
  }

  private double surfaceW(double topC) {
    double openFrac = leg.lidOn() ? member.lidLeakFrac : 1;
    double dryW = (leg.lidOn() ? member.lidOnWPerK : member.lidOffWPerK) * (topC - member.roomC);
    if (tabled) {
      surfaceKgPerSec = openFrac * member.surfaceLoss.steamKgPerSec(topC);
      return openFrac * member.surfaceLoss.steamW(topC) + dryW;
    }
    double wetC = Math.clamp(topC, 0.01, member.waterBoilsC - BELOW_BOIL_K);
    double kgPerM2Sec =
        Evaporation.openKgPerM2Sec(wetC, member.roomC, member.roomHumidityFrac, member.pressureKpa);
    surfaceKgPerSec =
        openFrac * Math.max(0, kgPerM2Sec) * member.surfaceM2 * member.steamKgPerSecFactor;
    return surfaceKgPerSec * LatentHeat.latentJPerKg(wetC) + dryW;
  }

  private double chillWPerK() {
    boolean coil = leg.chilling() && !leg.runOff() && member.chiller != Chiller.Kind.NONE;
    return coil ? passedWPerK(wortKgPerL) : 0;
  }

  private double passedWPerK(double atKgPerL) {
    double waterWPerK = member.chillWaterLPerSec * Flows.WATER_J_PER_KG_K;
    double wortWPerK = member.chillWortLPerSec * atKgPerL * wortJPerKgK;
    double uaWPerK =
        gylebook.science.Chiller.uaWPerK(
            1.03 * member.chillWortLPerSec,
            member.chillWaterLPerSec,
            member.chillHotKPerW,
            member.chillColdKPerW);
    if (member.chiller == Chiller.Kind.IMMERSION) {
      return waterWPerK * (1 - Math.exp(-uaWPerK / waterWPerK));
    }
    double leastWPerK = Math.min(waterWPerK, wortWPerK);
    return leastWPerK
        * gylebook.science.Chiller.effectivenessFrac(
            gylebook.science.Chiller.Passing.COUNTERFLOW,
            uaWPerK / leastWPerK,
            leastWPerK / Math.max(waterWPerK, wortWPerK));
  }

  private void mash(double[] y, double[] to) {
    double pasting = at(Rate.PASTING, y[BED]) * y[STARCH];
    double thinning = y[PASTED] * y[ALPHA] / 60;
    double dissolving = y[SOLUBLE] / 180;
    to[STARCH] = -pasting;
    to[PASTED] = pasting - thinning;
    to[SOLUBLE] = -dissolving;
    to[ALPHA] = -at(Rate.ALPHA_LOSS, y[BED]) * y[ALPHA];
    double kettleSideKg = kettleKg + headKg;
    double exchangedKgPerSec = (throughFrac * loopLPerSec + mixLPerSec) * wortKgPerL;
    double moving = exchangedKgPerSec * (y[BED_EXTRACT] / bedKg - y[KETTLE_EXTRACT] / kettleSideKg);
    to[BED_EXTRACT] = thinning + dissolving - moving;
    to[KETTLE_EXTRACT] = moving;
    double meanC = (bedKg * y[BED] + kettleSideKg * kettleC) / liquidKg;
    to[BETA] = -at(Rate.BETA_LOSS, meanC) * y[BETA];
    double lasting = BetaAmylase.STABLE_SHARE_FRAC;
    double reachKg = Fermentability.CEILING_FRAC * (y[KETTLE_EXTRACT] + y[BED_EXTRACT]);
    to[FERMENTABLE] =
        at(Rate.APPROACH, meanC) * (lasting + (1 - lasting) * y[BETA]) * (reachKg - y[FERMENTABLE]);
  }

  private void hopsAndSulfide(double[] y, double[] to) {
    double formed = at(Rate.ISO_FORMED, kettleC);
    double lost = at(Rate.ISO_LOST, kettleC);
    for (int i = FIRST_HOP; i < y.length; i += 3) {
      to[i] = -formed * y[i];
      to[i + 1] = formed * y[i] - lost * y[i + 1];
    }
    double made = at(Rate.PRECURSOR_LOST, kettleC) * y[PRECURSOR];
    double evaporationFracPerHr =
        Math.max(0, surfaceKgPerSec + boilKgPerSec) * 3600 / Math.max(1, liquidKg);
    to[PRECURSOR] = -made;
    to[SULFIDE] = made - DimethylSulfide.strippingPerSec(evaporationFracPerHr) * y[SULFIDE];
  }

  private void runOff(double[] y, double[] to) {
    double kgPerSec = member.chillWortLPerSec * wortKgPerL;
    double perSec = kgPerSec / liquidKg;
    double kgPerLAt60C = WortDensity.wortKgPerL(extractFrac, 60);
    boolean onePass =
        member.chiller == Chiller.Kind.COUNTERFLOW || member.chiller == Chiller.Kind.PLATE;
    double coolingK =
        onePass
            ? passedWPerK(kgPerLAt60C)
                / (member.chillWortLPerSec * kgPerLAt60C * wortJPerKgK)
                * (kettleC - member.tapC)
            : 0;
    to[WATER] -= perSec * y[WATER];
    to[KETTLE_EXTRACT] -= perSec * y[KETTLE_EXTRACT];
    to[FERMENTABLE] -= perSec * y[FERMENTABLE];
    to[CAST_WATER] = perSec * y[WATER];
    to[CAST_EXTRACT] = perSec * y[KETTLE_EXTRACT];
    to[CAST_FERMENTABLE] = perSec * y[FERMENTABLE];
    to[CAST_HEAT_J] = kgPerSec * wortJPerKgK * (kettleC - coolingK);
    for (int i = FIRST_HOP; i < y.length; i += 3) {
      to[i] -= perSec * y[i];
      to[i + 1] -= perSec * y[i + 1];
      to[i + 2] = perSec * y[i + 1];
    }
  }

  /// Negative until something happens: the leg ends, the boil begins or ends.
  double gapNumber(double[] y) {
    computeDerivatives(0, y);
    evaluations--;
    return Math.max(legGapNumber(y), boilGapNumber());
  }

  /// Negative until the leg ends, for what is not a time.
  double legGapNumber(double[] y) {
    return switch (leg.until()) {
      case Leg.Until.Reads _ when rising -> -1e3;
      case Leg.Until.Reads reads -> y[PROBE] + member.probeBiasK - reads.readC();
      case Leg.Until.CooledTo cooled -> cooled.wortC() - y[KETTLE];
      case Leg.Until.RunOff _ -> leftBehindKg(y) - (y[WATER] + y[KETTLE_EXTRACT]);
      case Leg.Until.Boils _ -> boiling ? 1 : -1e3;
      case Leg.Until.After _ -> -1e3;
    };
  }

  private double boilGapNumber() {
    if (boiling) {
      return -1e3 * boilKgPerSec;
    }
    return bagIn ? -1e3 : Math.min(kettleC - member.boilsC(extractFrac), spareW / 1e3);
  }

  private double leftBehindKg(double[] y) {
    double strengthFrac = Math.clamp(y[KETTLE_EXTRACT] / (y[WATER] + y[KETTLE_EXTRACT]), 0, 0.69);
    return (member.deadL + member.chillHeldL) * WortDensity.wortKgPerL(strengthFrac, 20)
        + hopWortKg;
  }

  /// Turns the boil on or off where the state says so.
  void switchBoil(double[] y) {
    computeDerivatives(0, y);
    evaluations--;
    if (boiling) {
      boiling = boilKgPerSec > 0;
    } else {
      boiling = boilGapNumber() > -1e-7;
    }
  }

  double[] read(BrewState s) {
    double[] y = new double[getDimension()];
    double[] plain = {
      s.kettleC,
      s.bedC,
      s.headC,
      s.wallC,
      s.hoseC,
      s.stubC,
      s.probeC,
      s.integralFrac,
      s.waterKg,
      s.kettleExtractKg,
      s.bedExtractKg,
      s.solubleKg,
      s.starchKg,
      s.pastedKg,
      s.fermentableKg,
      s.alphaFrac,
      s.betaFrac,
      s.precursorFrac,
      s.sulfideFrac,
      s.steamKg,
      s.elementJ,
      s.loopDoseMin,
      s.castWaterKg,
      s.castExtractKg,
      s.castHeatJ,
      s.castFermentableKg,
      s.setC
    };
    System.arraycopy(plain, 0, y, 0, plain.length);
    for (int i = 0; i < hops; i++) {
      y[FIRST_HOP + 3 * i] = s.alphaMg[i];
      y[FIRST_HOP + 3 * i + 1] = s.isoMg[i];
      y[FIRST_HOP + 3 * i + 2] = s.castIsoMg[i];
    }
    return y;
  }

  void write(double[] y, BrewState s) {
    s.kettleC = y[KETTLE];
    s.bedC = y[BED];
    s.headC = y[HEAD];
    s.wallC = y[WALL];
    s.hoseC = y[HOSE];
    s.stubC = y[STUB];
    s.probeC = y[PROBE];
    s.integralFrac = y[INTEGRAL];
    s.waterKg = y[WATER];
    s.kettleExtractKg = y[KETTLE_EXTRACT];
    s.bedExtractKg = y[BED_EXTRACT];
    s.solubleKg = y[SOLUBLE];
    s.starchKg = y[STARCH];
    s.pastedKg = y[PASTED];
    s.fermentableKg = y[FERMENTABLE];
    s.alphaFrac = y[ALPHA];
    s.betaFrac = y[BETA];
    s.precursorFrac = y[PRECURSOR];
    s.sulfideFrac = y[SULFIDE];
    s.steamKg = y[STEAM];
    s.elementJ = y[ELEMENT_J];
    s.loopDoseMin = y[DOSE];
    s.castWaterKg = y[CAST_WATER];
    s.castExtractKg = y[CAST_EXTRACT];
    s.castHeatJ = y[CAST_HEAT_J];
    s.castFermentableKg = y[CAST_FERMENTABLE];
    s.setC = y[SET];
    for (int i = 0; i < hops; i++) {
      s.alphaMg[i] = y[FIRST_HOP + 3 * i];
      s.isoMg[i] = y[FIRST_HOP + 3 * i + 1];
      s.castIsoMg[i] = y[FIRST_HOP + 3 * i + 2];
    }
    s.boiling = boiling;
  }
}
