package gylebook.estimate;

/// A test that costs minutes and may save a guess.
public enum CheapTest {
  ICE_POINT("Put it in stirred crushed ice with a little water.", 300),
  BOILING_WATER("Put it in boiling water; know the day's pressure.", 600),
  HAND_HELD_IN_CENTRE("Hold the hand-held thermometer in the middle of the grain.", 60),
  PUMP_ON("Run the pump for a minute and watch the probe.", 60),
  DIP("Dip the kettle with the marked stick.", 30),
  JUG_AND_CLOCK("Time how long the return fills a jug.", 60);

  private final String says;
  private final double costSec;

  CheapTest(String says, double costSec) {
    this.says = says;
    this.costSec = costSec;
  }

  /// What to do.
  public String says() {
    return says;
  }

  /// How long it takes, about (our judgement).
  public double costSec() {
    return costSec;
  }
}
