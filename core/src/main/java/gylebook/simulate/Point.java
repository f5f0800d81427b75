package gylebook.simulate;

/// The eight quantities that the scheme moves; also used for their rates, per second.
final class Point {
  double kettleC;
  double bedC;
  double headC;
  double wallC;
  double hoseC;
  double stubC;
  double probeC;
  double integralFrac;

  /// Takes over what the state says.
  void load(BrewState state) {
    kettleC = state.kettleC;
    bedC = state.bedC;
    headC = state.headC;
    wallC = state.wallC;
    hoseC = state.hoseC;
    stubC = state.stubC;
    probeC = state.probeC;
    integralFrac = state.integralFrac;
  }

  /// Hands over to the state.
  void store(BrewState state) {
    state.kettleC = kettleC;
    state.bedC = bedC;
    state.headC = headC;
    state.wallC = wallC;
    state.hoseC = hoseC;
    state.stubC = stubC;
    state.probeC = probeC;
    state.integralFrac = integralFrac;
  }

  /// `from + a slope`.
  void sum(Point from, double aSec, Point slope) {
    kettleC = from.kettleC + aSec * slope.kettleC;
    bedC = from.bedC + aSec * slope.bedC;
    headC = from.headC + aSec * slope.headC;
    wallC = from.wallC + aSec * slope.wallC;
    hoseC = from.hoseC + aSec * slope.hoseC;
    stubC = from.stubC + aSec * slope.stubC;
    probeC = from.probeC + aSec * slope.probeC;
    integralFrac = from.integralFrac + aSec * slope.integralFrac;
  }
}
