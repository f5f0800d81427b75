package gylebook.estimate;

import gylebook.rig.Bag;
import gylebook.rig.Kettle;
import gylebook.rig.Loop;
import gylebook.rig.Parameter;
import gylebook.rig.Rig;
import gylebook.units.AnyUnit;
import java.util.random.RandomGenerator;

/// The rig of a hidden truth: never the geometry that the belief knows. Vessel, steel, wall, bag
/// and bed are scattered by more than their doubts say, the hose by what nobody doubts.
@AnyUnit("scatters numbers of every unit")
final class HiddenRig {
  private static final double SCATTER_RATIO = 0.15;
  private static final double SIZE_RATIO = 0.03;

  private HiddenRig() {}

  static Rig of(Rig rig, RandomGenerator random) {
    return new Rig(
        "hidden",
        true,
        rig.site(),
        kettle(rig.kettle(), random),
        rig.element(),
        bag(rig.bag(), random),
        loop(rig.loop(), random),
        rig.probes(),
        rig.controller(),
        rig.chiller(),
        rig.working());
  }

  private static Parameter times(Parameter of, double ratio, RandomGenerator random) {
    double factor = Math.exp(ratio * random.nextGaussian());
    return new Parameter(
        of.value() * factor, of.doubt(), of.spread(), of.origin(), of.basis(), of.asTyped());
  }

  private static Kettle kettle(Kettle k, RandomGenerator random) {
    return new Kettle(
        times(k.diameterM(), SIZE_RATIO, random),
        times(k.heightM(), SIZE_RATIO, random),
        times(k.steelKg(), SCATTER_RATIO, random),
        times(k.steelJPerKgK(), SIZE_RATIO, random),
        times(k.wallWPerM2K(), SCATTER_RATIO, random),
        times(k.wortToWallWPerK(), SCATTER_RATIO, random),
        times(k.lidOnWPerM2K(), SCATTER_RATIO, random),
        times(k.lidOffWPerM2K(), SCATTER_RATIO, random),
        k.lidLeakFrac(),
        k.evaporationFactor(),
        k.deadL(),
        k.headroomM());
  }

  private static Bag bag(Bag b, RandomGenerator random) {
    return new Bag(
        times(b.diameterM(), SIZE_RATIO, random),
        b.floorM(),
        b.permeabilityM2(),
        b.drainedKgPerKg(),
        b.squeezedKgPerKg(),
        times(b.wallWPerK(), SCATTER_RATIO, random),
        times(b.bedKgPerKg(), SCATTER_RATIO, random),
        b.crestM(),
        times(b.displacementLPerKg(), SIZE_RATIO, random));
  }

  private static Loop loop(Loop l, RandomGenerator random) {
    return new Loop(
        l.present(),
        times(l.hoseM(), SCATTER_RATIO, random),
        l.boreM(),
        l.outerM(),
        l.hoseWPerK(),
        l.mashLPerSec(),
        l.whirlpoolLPerSec(),
        l.suctionM(),
        l.suctionLossM(),
        l.wantedNpshM());
  }
}
