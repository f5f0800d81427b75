package gylebook.simulate;

import gylebook.rig.Parameter;
import gylebook.rig.Probe;

/// A thermometer that steers nothing: it sits in its place and follows it with a lag.
///
/// @param name what the brewer calls it
/// @param place where its tip is
/// @param lagSec its time constant there
public record Gauge(String name, Probe.Place place, Parameter lagSec) {
  /// So many can be followed beside the one that steers.
  public static final int MOST = 8;

  private static final double LEAST_LAG_SEC = 0.1;

  /// Each gauge follows its place over one step, taken as a straight ramp: `S = T1 - r tau + (S0 -
  /// T0 + r tau) exp(-h/tau)`.
  static void follow(BrewState state, Member member, Point from, double stepSec) {
    for (int i = 0; i < member.gaugeCount; i++) {
      Probe.Place place = member.gaugePlace[i];
      double startC = startC(place, from, state);
      double endC = placeC(place, state);
      double lagSec = Math.max(LEAST_LAG_SEC, member.gaugeLagSec[i]);
      double behindK = (endC - startC) / stepSec * lagSec;
      double leftFrac = Math.exp(-stepSec / lagSec);
      state.gaugeC[i] = endC - behindK + (state.gaugeC[i] - startC + behindK) * leftFrac;
    }
  }

  private static double startC(Probe.Place place, Point from, BrewState state) {
    return switch (place) {
      case SUCTION -> from.stub;
      case RETURN -> from.hose;
      case KETTLE -> from.kettle;
      case BED -> state.bagIn ? from.bed : from.kettle;
    };
  }

  /// What a thermometer without lag or error would show at a place.
  static double placeC(Probe.Place place, BrewState state) {
    return switch (place) {
      case SUCTION -> state.stubC;
      case RETURN -> state.hoseC;
      case KETTLE -> state.kettleC;
      case BED -> state.bagIn ? state.bedC : state.kettleC;
    };
  }
}
