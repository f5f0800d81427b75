package gylebook.simulate;

import gylebook.units.AnyUnit;
import java.util.List;

/// What lies ahead of each twin: milestones to come and what will come out, a column a quantity.
@AnyUnit("columns of every quantity")
public final class Ahead {
  private final List<String> keys;
  private final double[][] outcomes;
  private final double[][][] milestones;

  Ahead(List<String> keys, int count) {
    this.keys = List.copyOf(keys);
    this.outcomes = new double[Outcome.values().length][count];
    this.milestones = new double[keys.size()][DayLog.Column.values().length][count];
  }

  void take(int twin, double[] out, DayLog log) {
    if (log.milestones() != keys.size()) {
      throw new IllegalStateException(
          "A day has " + log.milestones() + " milestones, not " + keys.size() + ".");
    }
    for (int i = 0; i < outcomes.length; i++) {
      outcomes[i][twin] = out[i];
    }
    for (int i = 0; i < milestones.length; i++) {
      for (DayLog.Column column : DayLog.Column.values()) {
        milestones[i][column.ordinal()][twin] = log.at(i, column);
      }
    }
  }

  /// The milestones' names, passed ones first.
  public List<String> keys() {
    return keys;
  }

  /// One outcome over all twins.
  public double[] outcome(Outcome outcome) {
    return outcomes[outcome.ordinal()].clone();
  }

  /// What is noted at a milestone, over all twins.
  public double[] milestone(String key, DayLog.Column column) {
    int index = keys.indexOf(key);
    if (index < 0) {
      throw new IllegalArgumentException("The day has no milestone '" + key + "'.");
    }
    return milestones[index][column.ordinal()].clone();
  }
}
