package gylebook.rig;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/// Where each number of a rig has to lie to be one of a rig at all.
///
/// Beyond is a slip, most often of the unit: hectopascal for kilopascal, inches for metres. The
/// limits are assumptions of ours, wide on purpose, and inside what the models bear; so is the
/// doubt: five of it to either side still lie there, or a simulated day would not be one.
@AnyUnit("guards any quantity; the end of each path names its unit")
public final class Bounds {
  private static final double DOUBTS = 5;
  // By more than a factor of e either way nothing is known; type what is.
  private static final double MOST_LOG_DOUBT = 1;

  private static final List<Bound> ALL = new ArrayList<>();

  private Bounds() {}

  /// One number's limits.
  ///
  /// @param path as in the rig's file, its unit at the end; thermometers without their number
  /// @param least the smallest value
  /// @param most the largest value
  /// @param bornLeast the smallest that the models bear
  /// @param bornMost the largest that the models bear
  /// @param of where it stands in a rig
  private record Bound(
      String path,
      double least,
      double most,
      double bornLeast,
      double bornMost,
      Function<Rig, List<Parameter>> of) {}

  /// A number that lies outside.
  ///
  /// @param path where, as in the rig's file; the unit of the numbers stands at its end
  /// @param value what is there
  /// @param least the smallest that may be
  /// @param most the largest that may be
  /// @param ofDoubt whether it is the doubt that is too wide; it has no least then
  /// @param relative whether that doubt is a share of the value
  public record Fault(
      String path, double value, double least, double most, boolean ofDoubt, boolean relative) {}

  static {
    site();
    kettle();
    element();
    bag();
    loop();
    rest();
  }

  /// The first number of a rig that lies outside.
  public static Optional<Fault> fault(Rig rig) {
    return ALL.stream()
        .flatMap(bound -> bound.of().apply(rig).stream().flatMap(p -> fault(bound, p).stream()))
        .findFirst();
  }

  /// The first number that lies outside and is not the same in the rig before: what was wrong
  /// already is not held against a change of something else.
  public static Optional<Fault> fault(Rig rig, Rig before) {
    return ALL.stream()
        .flatMap(
            bound ->
                bound.of().apply(rig).stream()
                    .filter(parameter -> !bound.of().apply(before).contains(parameter))
                    .flatMap(parameter -> fault(bound, parameter).stream()))
        .findFirst();
  }

  private static Optional<Fault> fault(Bound bound, Parameter parameter) {
    double value = parameter.value();
    if (!(value >= bound.least() && value <= bound.most())) {
      return Optional.of(new Fault(bound.path(), value, bound.least(), bound.most(), false, false));
    }
    boolean relative = parameter.spread() == Spread.LOG_NORMAL;
    double roomToEnd = Math.min(value - bound.bornLeast(), bound.bornMost() - value);
    double mostDoubt = relative ? MOST_LOG_DOUBT : roomToEnd / DOUBTS;
    return parameter.doubt() <= mostDoubt * (1 + 1e-9)
        ? Optional.empty()
        : Optional.of(new Fault(bound.path(), parameter.doubt(), 0, mostDoubt, true, relative));
  }

  private static void add(String path, double least, double most, Function<Rig, Parameter> of) {
    born(path, least, most, least, most, of);
  }

  private static void born(
      String path,
      double least,
      double most,
      double bornLeast,
      double bornMost,
      Function<Rig, Parameter> of) {
    ALL.add(new Bound(path, least, most, bornLeast, bornMost, of.andThen(List::of)));
  }

  private static void site() {
    born("site.altitudeM", -420, 6000, -500, 9000, rig -> rig.site().altitudeM());
    ALL.add(
        new Bound(
            "site.stationKpa", 40, 110, 30, 130, rig -> rig.site().stationKpa().stream().toList()));
    born("site.roomC", -10, 50, -30, 90, rig -> rig.site().roomC());
    born("site.roomHumidityFrac", 0, 1, -2, 3, rig -> rig.site().roomHumidityFrac());
    born("site.tapC", 0, 60, -200, 90, rig -> rig.site().tapC());
    born("site.goodsC", -20, 60, -60, 95, rig -> rig.site().goodsC());
  }

  private static void kettle() {
    add("kettle.diameterM", 0.05, 3, rig -> rig.kettle().diameterM());
    add("kettle.heightM", 0.05, 3, rig -> rig.kettle().heightM());
    add("kettle.steelKg", 0.1, 1000, rig -> rig.kettle().steelKg());
    add("kettle.steelJPerKgK", 100, 2000, rig -> rig.kettle().steelJPerKgK());
    add("kettle.wallWPerM2K", 0.05, 200, rig -> rig.kettle().wallWPerM2K());
    add("kettle.wortToWallWPerK", 1, 50_000, rig -> rig.kettle().wortToWallWPerK());
    born("kettle.lidOnWPerM2K", 0, 200, -50, 1000, rig -> rig.kettle().lidOnWPerM2K());
    born("kettle.lidOffWPerM2K", 0, 200, -50, 1000, rig -> rig.kettle().lidOffWPerM2K());
    add("kettle.lidLeakFrac", 0, 1, rig -> rig.kettle().lidLeakFrac());
    add("kettle.evaporationFactor", 0.02, 20, rig -> rig.kettle().evaporationFactor());
    add("kettle.deadL", 0, 500, rig -> rig.kettle().deadL());
    born("kettle.headroomM", 0, 1, -1, 2, rig -> rig.kettle().headroomM());
  }

  private static void element() {
    add("element.plateW", 50, 200_000, rig -> rig.element().plateW());
    add("element.plateV", 10, 1000, rig -> rig.element().plateV());
    add("element.mainsV", 10, 1000, rig -> rig.element().mainsV());
    born("element.topM", 0, 2, -1, 3, rig -> rig.element().topM());
    born("element.coverM", 0, 1, -1, 2, rig -> rig.element().coverM());
    add("element.breakerA", 1, 1000, rig -> rig.element().breakerA());
  }

  private static void bag() {
    add("bag.diameterM", 0.03, 3, rig -> rig.bag().diameterM());
    born("bag.floorM", 0, 1, -1, 2, rig -> rig.bag().floorM());
    add("bag.permeabilityM2", 1e-14, 1e-5, rig -> rig.bag().permeabilityM2());
    add("bag.drainedKgPerKg", 0.02, 10, rig -> rig.bag().drainedKgPerKg());
    add("bag.squeezedKgPerKg", 0.02, 10, rig -> rig.bag().squeezedKgPerKg());
    add("bag.wallWPerK", 0, 10_000, rig -> rig.bag().wallWPerK());
    add("bag.bedKgPerKg", 0.05, 20, rig -> rig.bag().bedKgPerKg());
    born("bag.crestM", 0, 2, -1, 3, rig -> rig.bag().crestM());
    add("bag.displacementLPerKg", 0.2, 2, rig -> rig.bag().displacementLPerKg());
  }

  private static void loop() {
    add("loop.hoseM", 0, 100, rig -> rig.loop().hoseM());
    add("loop.boreM", 0.001, 0.2, rig -> rig.loop().boreM());
    add("loop.outerM", 0.001, 0.3, rig -> rig.loop().outerM());
    add("loop.hoseWPerK", 0, 1000, rig -> rig.loop().hoseWPerK());
    add("loop.mashLPerSec", 0, 10, rig -> rig.loop().mashLPerSec());
    add("loop.whirlpoolLPerSec", 0, 10, rig -> rig.loop().whirlpoolLPerSec());
    born("loop.suctionM", -5, 5, -20, 20, rig -> rig.loop().suctionM());
    add("loop.suctionLossM", 0, 20, rig -> rig.loop().suctionLossM());
    add("loop.wantedNpshM", 0, 20, rig -> rig.loop().wantedNpshM());
  }

  private static void rest() {
    ALL.add(
        new Bound(
            "probes.lagSec",
            0,
            3600,
            0,
            3600,
            rig -> rig.probes().stream().map(Probe::lagSec).toList()));
    ALL.add(
        new Bound(
            "probes.biasK",
            -20,
            20,
            -100,
            100,
            rig -> rig.probes().stream().map(Probe::biasK).toList()));
    add("controller.gainFracPerK", 0, 100, rig -> rig.controller().gainFracPerK());
    add("controller.integralSec", 1, 1e6, rig -> rig.controller().integralSec());
    add("controller.trackingSec", 1, 1e6, rig -> rig.controller().trackingSec());
    add("chiller.hotKPerW", 1e-7, 1, rig -> rig.chiller().hotKPerW());
    add("chiller.coldKPerW", 1e-7, 1, rig -> rig.chiller().coldKPerW());
    add("chiller.wortLPerSec", 0, 10, rig -> rig.chiller().wortLPerSec());
    add("chiller.waterLPerSec", 0, 50, rig -> rig.chiller().waterLPerSec());
    born("chiller.heldL", 0, 100, -100, 200, rig -> rig.chiller().heldL());
    add("working.doughInSec", 1, 36_000, rig -> rig.working().doughInSec());
    add("working.settleSec", 0, 36_000, rig -> rig.working().settleSec());
    add("working.drainSec", 0, 36_000, rig -> rig.working().drainSec());
    born("working.mashFrac", 0, 1, -5, 5, rig -> rig.working().mashFrac());
    add("working.mixingLPerSec", 0, 10, rig -> rig.working().mixingLPerSec());
    born("working.fermenterL", 0.5, 5000, -5000, 10_000, rig -> rig.working().fermenterL());
    add("working.fermenterLossL", 0, 500, rig -> rig.working().fermenterLossL());
    born("working.kegL", 0.1, 5000, -5000, 10_000, rig -> rig.working().kegL());
    born("working.liftReachM", 0, 2, -5, 5, rig -> rig.working().liftReachM());
  }
}
