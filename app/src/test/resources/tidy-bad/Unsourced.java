package gylebook.science;

public final class Unsourced {
  public static double heatJ(double powerW, double stepSec) { // FAULT source
    return powerW * stepSec;
  }

  @Source(key = "nobody-1900", trust = Trust.MEMORY) // FAULT source
  public static double lossW(double lossWPerK, double excessK) {
    return lossWPerK * excessK;
  }
}
