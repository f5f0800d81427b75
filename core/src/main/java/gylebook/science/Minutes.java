package gylebook.science;

/// The minutes and hours of the literature in the seconds of the simulator.
final class Minutes {
  static final double SEC_PER_MIN = 60;
  static final double SEC_PER_HR = 3600;
  static final double MIN_PER_HR = 60;

  private Minutes() {}
}
