package gylebook.science;

/// The minutes and hours of the literature in the seconds of the simulator.
final class Minutes {
  static final double SEC_PER_MIN = 60;

  private Minutes() {}
}
