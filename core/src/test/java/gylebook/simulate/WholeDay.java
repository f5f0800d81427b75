package gylebook.simulate;

import gylebook.units.AnyUnit;

/// One member's whole day as the ensemble does it: draws, kettle, day, outcomes.
@AnyUnit("fills a row of every outcome")
public final class WholeDay {
  private final BrewDay day;
  private final Doubts doubts;
  private final Member member = new Member();
  private final Lots lots = new Lots();
  private final Simulator simulator = new Simulator();
  private final DayLog log = new DayLog(0, 0);
  private final double[] out = new double[Outcome.values().length];

  /// Days of this luck.
  public WholeDay(BrewDay day, long seed) {
    this.day = day;
    this.doubts = new Doubts(seed);
  }

  /// The strength of the wort of one member.
  public double strengthPlato(int number) {
    doubts.turnTo(number);
    member.read(day.rig(), doubts);
    lots.read(day.recipe(), day.settings(), doubts);
    BrewState state = new BrewState();
    Deeds.fill(state, day.settings().liquorL() * lots.liquorFactor, member.tapC);
    simulator.run(day.actions(member, lots), member, state, log, false);
    Harvest.gather(day, member, lots, state, log, out);
    return out[Outcome.STRENGTH.ordinal()];
  }
}
