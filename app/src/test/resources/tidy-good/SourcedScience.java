package gylebook.science;

public final class SourcedScience {
  @Source(key = "known-2000", trust = Trust.READ)
  public static double heatJ(double powerW, double stepSec) {
    return powerW * stepSec;
  }

  /// The same over a minute.
  public static double heatJ(double powerW) {
    return heatJ(powerW, 60);
  }

  static double insideJ(double powerW, double stepSec) {
    return powerW * stepSec;
  }
}
