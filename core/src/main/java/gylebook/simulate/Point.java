package gylebook.simulate;

import gylebook.units.AnyUnit;

/// The nine quantities that the scheme moves; also used for their rates, per second.
@AnyUnit("holds temperatures, and in other hands their rates per second")
final class Point {
  double kettle;
  double bed;
  double head;
  double wall;
  double hose;
  double stub;
  double probe;
  double integral;
  double set;

  /// Takes over what the state says.
  void load(BrewState state) {
    kettle = state.kettleC;
    bed = state.bedC;
    head = state.headC;
    wall = state.wallC;
    hose = state.hoseC;
    stub = state.stubC;
    probe = state.probeC;
    integral = state.integralFrac;
    set = state.setC;
  }

  /// Hands over to the state.
  void store(BrewState state) {
    state.kettleC = kettle;
    state.bedC = bed;
    state.headC = head;
    state.wallC = wall;
    state.hoseC = hose;
    state.stubC = stub;
    state.probeC = probe;
    state.integralFrac = integral;
    state.setC = set;
  }

  /// `from + a slope`.
  void sum(Point from, double a, Point slope) {
    kettle = from.kettle + a * slope.kettle;
    bed = from.bed + a * slope.bed;
    head = from.head + a * slope.head;
    wall = from.wall + a * slope.wall;
    hose = from.hose + a * slope.hose;
    stub = from.stub + a * slope.stub;
    probe = from.probe + a * slope.probe;
    integral = from.integral + a * slope.integral;
    set = from.set + a * slope.set;
  }
}
