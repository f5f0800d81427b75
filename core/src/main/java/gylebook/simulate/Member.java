package gylebook.simulate;

import gylebook.rig.Bag;
import gylebook.rig.Chiller;
import gylebook.rig.Controller;
import gylebook.rig.Element;
import gylebook.rig.Kettle;
import gylebook.rig.Loop;
import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.rig.Site;
import gylebook.rig.Working;
import gylebook.science.Atmosphere;
import gylebook.science.BoilingRise;
import gylebook.science.LatentHeat;
import gylebook.science.Saturation;
import java.util.List;

/// One rig of the ensemble: what its numbers are in this member, reckoned out for the inner loop.
///
/// A scratch object, filled anew for each member, so that no object graph hangs on a member.
public final class Member {
  // A tenth more than the losses shows as movement all over the surface (assumed).
  private static final double ROLLING_RATIO = 1.1;

  /// An empty one, to be filled.
  public Member() {}

  double pressureKpa;
  double waterBoilsC;
  double latentJPerKg;
  double riseKPerFrac;
  double riseKPerFrac2;
  double roomC;
  double roomHumidityFrac;
  double tapC;
  double goodsC;

  double surfaceM2;
  double heightM;
  double steelJPerK;
  double wallWPerK;
  double wortToWallWPerK;
  double lidOnWPerK;
  double lidOffWPerK;
  double lidLeakFrac;
  double steamKgPerSecFactor;
  double deadL;
  double headroomM;

  double elementW;
  double mainsV;
  double elementTopM;
  double elementCoverM;
  double breakerA;

  double bedM2;
  double permeabilityM2;
  double drainedKgPerKg;
  double squeezedKgPerKg;
  double bagWPerK;
  double bedKgPerKg;
  double crestM;
  double displacementLPerKg;

  boolean hasPump;
  double hoseL;
  double hoseWPerK;
  double mashLPerSec;
  double whirlpoolLPerSec;
  double suctionM;
  double suctionLossM;
  double wantedNpshM;

  Probe.Place place = Probe.Place.KETTLE;
  double probeLagSec;
  double probeBiasK;
  double gainFracPerK;
  double integralSec;
  double trackingSec;

  int gaugeCount;
  final Probe.Place[] gaugePlace = new Probe.Place[Gauge.MOST];
  final double[] gaugeLagSec = new double[Gauge.MOST];

  Chiller.Kind chiller = Chiller.Kind.NONE;
  double chillHotKPerW;
  double chillColdKPerW;
  double chillWortLPerSec;
  double chillWaterLPerSec;
  double chillHeldL;

  double doughInSec;
  double settleSec;
  double drainSec;
  boolean squeeze;
  double mashFrac;
  double mixingLPerSec;
  double fermenterLossL;

  final SurfaceLoss surfaceLoss = new SurfaceLoss();

  /// Reads the member's numbers of the rig.
  void read(Rig rig, Doubts doubts) {
    site(rig.site(), doubts);
    kettle(rig.kettle(), doubts);
    element(rig.element(), doubts);
    bag(rig.bag(), doubts);
    loop(rig.loop(), doubts);
    probe(rig, doubts);
    controller(rig.controller(), doubts);
    chiller(rig.chiller(), doubts);
    working(rig.working(), doubts);
    surfaceLoss.reckon(this);
  }

  /// Reads the member's numbers of thermometers that steer nothing.
  void read(List<Gauge> gauges, Doubts doubts) {
    gaugeCount = gauges.size();
    for (int i = 0; i < gaugeCount; i++) {
      Gauge gauge = gauges.get(i);
      gaugePlace[i] = gauge.place();
      gaugeLagSec[i] = doubts.of("gauge." + gauge.name() + ".lagSec", gauge.lagSec());
    }
  }

  private void site(Site site, Doubts doubts) {
    // Weather moves the station pressure by 2 to 3 kPa about the height's (from memory).
    double heightM = doubts.of("site.altitudeM", site.altitudeM());
    double weatherKpa = doubts.around("site.weatherKpa", 0, site.stationKpa().isPresent() ? 0 : 1);
    pressureKpa =
        site.stationKpa().isPresent()
            ? doubts.of("site.stationKpa", site.stationKpa().get())
            : Atmosphere.stationKpa(heightM) + weatherKpa;
    waterBoilsC = Saturation.boilingC(pressureKpa);
    latentJPerKg = LatentHeat.latentJPerKg(waterBoilsC);
    double rise10K = BoilingRise.riseK(0.10, pressureKpa);
    double rise20K = BoilingRise.riseK(0.20, pressureKpa);
    // A parabola through 0, 10 and 20 P: the exact form needs a root search at each step.
    riseKPerFrac2 = (rise20K - 2 * rise10K) / 0.02;
    riseKPerFrac = rise10K / 0.10 - riseKPerFrac2 * 0.10;
    roomC = doubts.of("site.roomC", site.roomC());
    roomHumidityFrac = doubts.of("site.roomHumidityFrac", site.roomHumidityFrac());
    tapC = Math.max(0.5, doubts.of("site.tapC", site.tapC()));
    goodsC = doubts.of("site.goodsC", site.goodsC());
  }

  private void kettle(Kettle kettle, Doubts doubts) {
    double diameterM = doubts.of("kettle.diameterM", kettle.diameterM());
    heightM = doubts.of("kettle.heightM", kettle.heightM());
    surfaceM2 = Math.PI * diameterM * diameterM / 4;
    double wallM2 = surfaceM2 + Math.PI * diameterM * heightM;
    steelJPerK =
        doubts.of("kettle.steelKg", kettle.steelKg())
            * doubts.of("kettle.steelJPerKgK", kettle.steelJPerKgK());
    wallWPerK = wallM2 * doubts.of("kettle.wallWPerM2K", kettle.wallWPerM2K());
    wortToWallWPerK = doubts.of("kettle.wortToWallWPerK", kettle.wortToWallWPerK());
    lidOnWPerK = surfaceM2 * doubts.of("kettle.lidOnWPerM2K", kettle.lidOnWPerM2K());
    lidOffWPerK = surfaceM2 * doubts.of("kettle.lidOffWPerM2K", kettle.lidOffWPerM2K());
    lidLeakFrac = doubts.of("kettle.lidLeakFrac", kettle.lidLeakFrac());
    steamKgPerSecFactor = doubts.of("kettle.evaporationFactor", kettle.evaporationFactor());
    deadL = doubts.of("kettle.deadL", kettle.deadL());
    headroomM = doubts.of("kettle.headroomM", kettle.headroomM());
  }

  private void element(Element element, Doubts doubts) {
    double plateW = doubts.of("element.plateW", element.plateW());
    double plateV = doubts.of("element.plateV", element.plateV());
    mainsV = doubts.of("element.mainsV", element.mainsV());
    elementW = gylebook.science.Element.powerW(plateW, plateV, mainsV);
    elementTopM = doubts.of("element.topM", element.topM());
    elementCoverM = doubts.of("element.coverM", element.coverM());
    breakerA = doubts.of("element.breakerA", element.breakerA());
  }

  private void bag(Bag bag, Doubts doubts) {
    double diameterM = doubts.of("bag.diameterM", bag.diameterM());
    bedM2 = Math.min(Math.PI * diameterM * diameterM / 4, 0.98 * surfaceM2);
    permeabilityM2 = doubts.of("bag.permeabilityM2", bag.permeabilityM2());
    drainedKgPerKg = doubts.of("bag.drainedKgPerKg", bag.drainedKgPerKg());
    squeezedKgPerKg = doubts.of("bag.squeezedKgPerKg", bag.squeezedKgPerKg());
    bagWPerK = doubts.of("bag.wallWPerK", bag.wallWPerK());
    bedKgPerKg = doubts.of("bag.bedKgPerKg", bag.bedKgPerKg());
    crestM = doubts.of("bag.crestM", bag.crestM());
    displacementLPerKg = doubts.of("bag.displacementLPerKg", bag.displacementLPerKg());
  }

  private void loop(Loop loop, Doubts doubts) {
    hasPump = loop.present();
    hoseL = loop.hoseL();
    hoseWPerK = doubts.of("loop.hoseWPerK", loop.hoseWPerK());
    mashLPerSec = doubts.of("loop.mashLPerSec", loop.mashLPerSec());
    whirlpoolLPerSec = doubts.of("loop.whirlpoolLPerSec", loop.whirlpoolLPerSec());
    suctionM = doubts.of("loop.suctionM", loop.suctionM());
    suctionLossM = doubts.of("loop.suctionLossM", loop.suctionLossM());
    wantedNpshM = doubts.of("loop.wantedNpshM", loop.wantedNpshM());
  }

  private void probe(Rig rig, Doubts doubts) {
    Probe steering = steering(rig);
    place = steering.place();
    probeLagSec = doubts.of("probe.lagSec", steering.lagSec());
    probeBiasK = doubts.of("probe.biasK", steering.biasK());
  }

  /// The thermometer that steers.
  static Probe steering(Rig rig) {
    return rig.probes().stream().filter(Probe::steers).findFirst().orElseGet(Member::handHeld);
  }

  /// Who has no controller reads a thermometer in the kettle and sets the duty by hand.
  private static Probe handHeld() {
    return new Probe(
        "by hand",
        Probe.Kind.HAND_HELD,
        Probe.Place.KETTLE,
        Parameter.assumedPositive(10, 0.3, "hand-held"),
        Parameter.assumed(0, 0.5, "hand-held"),
        true);
  }

  private void controller(Controller controller, Doubts doubts) {
    gainFracPerK = doubts.of("controller.gainFracPerK", controller.gainFracPerK());
    integralSec = doubts.of("controller.integralSec", controller.integralSec());
    trackingSec = doubts.of("controller.trackingSec", controller.trackingSec());
  }

  private void chiller(Chiller chiller, Doubts doubts) {
    this.chiller = chiller.kind();
    chillHotKPerW = doubts.of("chiller.hotKPerW", chiller.hotKPerW());
    chillColdKPerW = doubts.of("chiller.coldKPerW", chiller.coldKPerW());
    chillWortLPerSec = doubts.of("chiller.wortLPerSec", chiller.wortLPerSec());
    chillWaterLPerSec = doubts.of("chiller.waterLPerSec", chiller.waterLPerSec());
    chillHeldL = Math.max(0, doubts.of("chiller.heldL", chiller.heldL()));
  }

  private void working(Working working, Doubts doubts) {
    doughInSec = doubts.of("working.doughInSec", working.doughInSec());
    settleSec = doubts.of("working.settleSec", working.settleSec());
    drainSec = doubts.of("working.drainSec", working.drainSec());
    squeeze = working.squeeze();
    mashFrac = Math.clamp(doubts.of("working.mashFrac", working.mashFrac()), 0, 1);
    mixingLPerSec = doubts.of("working.mixingLPerSec", working.mixingLPerSec());
    fermenterLossL = doubts.of("working.fermenterLossL", working.fermenterLossL());
  }

  /// Least duty at which this kettle rolls, open or under its lid, and does not merely steam.
  double rollingDutyFrac(boolean lidOn) {
    double boilsC = waterBoilsC;
    double overRoomK = boilsC - roomC;
    double wallThroughWPerK = 1 / (1 / wortToWallWPerK + 1 / wallWPerK);
    double steamW = (lidOn ? lidLeakFrac : 1) * surfaceLoss.steamW(boilsC);
    double topWPerK = lidOn ? lidOnWPerK : lidOffWPerK;
    double lossW = steamW + (topWPerK + wallThroughWPerK) * overRoomK;
    return Math.min(1, ROLLING_RATIO * lossW / elementW);
  }

  /// Boiling point of wort of this strength under the day's pressure.
  double boilsC(double extractFrac) {
    return waterBoilsC + extractFrac * (riseKPerFrac + extractFrac * riseKPerFrac2);
  }
}
