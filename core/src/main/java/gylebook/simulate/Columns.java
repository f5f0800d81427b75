package gylebook.simulate;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// The numbers of many twins: a row a quantity, a column a twin, and the moment that all share.
@AnyUnit("columns of every quantity")
final class Columns {
  final BrewDay day;
  final List<Gauge> gauges;
  final long seed;
  final int count;
  final List<String> doubts;
  final double[][] draws;
  final List<Rows.Row> kinds;
  final double[][] state;
  final double[][] log;
  final List<String> passed;
  final List<Change> changes;
  int at;
  double legFromSec;
  double clockSec;
  private double wanders;

  Columns(Columns from, BrewDay day) {
    this(from, day, from.count);
  }

  /// The first of them alone.
  Columns first(int firstCount) {
    return new Columns(this, day, firstCount);
  }

  private Columns(Columns from, BrewDay day, int count) {
    this.day = day;
    this.gauges = from.gauges;
    this.seed = from.seed;
    this.count = count;
    this.doubts = from.doubts;
    this.draws = copied(from.draws, count);
    this.kinds = from.kinds;
    this.state = copied(from.state, count);
    this.log = copied(from.log, count);
    this.passed = new ArrayList<>(from.passed);
    this.changes = new ArrayList<>(from.changes);
    this.at = from.at;
    this.legFromSec = from.legFromSec;
    this.clockSec = from.clockSec;
    this.wanders = from.wanders;
  }

  Columns(BrewDay day, List<Gauge> gauges, long seed, int count) {
    this.day = day;
    this.gauges = List.copyOf(gauges);
    this.seed = seed;
    this.count = count;
    Doubts names = new Doubts(seed);
    names.turnTo(-1);
    Member member = new Member();
    Lots lots = new Lots();
    member.read(day.rig(), names);
    lots.read(day.recipe(), day.settings(), names);
    member.read(this.gauges, names);
    this.doubts = names.doubtfulNames();
    this.draws = new double[doubts.size()][count];
    for (int i = 0; i < draws.length; i++) {
      long stream = Luck.stream(seed, doubts.get(i));
      Arrays.setAll(draws[i], j -> Luck.z(stream, j));
    }
    this.kinds = Rows.of(day.recipe().hops().size());
    this.state = new double[kinds.size()][count];
    this.log = new double[DayLog.keptCount(day.actions(member, lots).size())][count];
    this.passed = new ArrayList<>();
    this.changes = new ArrayList<>();
  }

  /// The same draws before the day: nothing has been done yet, nothing was decided.
  Columns backAtStart() {
    Columns start = new Columns(day, gauges, seed, count);
    for (int i = 0; i < draws.length; i++) {
      System.arraycopy(draws[i], 0, start.draws[i], 0, count);
    }
    return start;
  }

  private static double[][] copied(double[][] rows, int count) {
    return Arrays.stream(rows).map(row -> Arrays.copyOf(row, count)).toArray(double[][]::new);
  }

  static Leg lasting(Leg leg, double forSec) {
    return leg.until(new Leg.Until.After(forSec), forSec);
  }

  /// What is left of the leg under way by its own end.
  Leg rest(Leg whole) {
    double goneSec = clockSec - legFromSec;
    double leftSec = Math.max(0, whole.mostSec() - goneSec);
    return whole.until() instanceof Leg.Until.After after
        ? lasting(whole, Math.max(0, after.holdSec() - goneSec))
        : whole.until(whole.until(), leftSec);
  }

  /// A row of the state by its name, live.
  double[] row(String name) {
    for (int i = 0; i < kinds.size(); i++) {
      if (kinds.get(i).name().equals(name)) {
        return state[i];
      }
    }
    throw new IllegalArgumentException("The state has no row '" + name + "'.");
  }

  /// Every row that a reading may correct, live: draws, state, and what was noted so far.
  List<double[]> correctable() {
    List<double[]> rows = new ArrayList<>(Arrays.asList(draws));
    for (int i = 0; i < state.length; i++) {
      if (kinds.get(i).kind() != Rows.Kind.KEPT) {
        rows.add(state[i]);
      }
    }
    rows.add(log[DayLog.GRAIN_MEAN_ROW]);
    int columns = DayLog.Column.values().length;
    for (int i = 0; i < passed.size() * columns; i++) {
      if (i % columns != DayLog.Column.AT_SEC.ordinal()) {
        rows.add(log[DayLog.EXTREMES + i]);
      }
    }
    return rows;
  }

  /// Brings corrected rows back to what can be: no mass below nothing.
  void settle() {
    for (int i = 0; i < state.length; i++) {
      if (kinds.get(i).kind() == Rows.Kind.MASS) {
        double[] row = state[i];
        for (int j = 0; j < count; j++) {
          row[j] = Math.max(0, row[j]);
        }
      }
    }
  }

  /// Lets the twins drift apart by what the model leaves out.
  void wander(double kettleK, double bedK) {
    wanders++;
    drift("kettleC", kettleK);
    drift("bedC", bedK);
  }

  private void drift(String name, double sigma) {
    double[] row = row(name);
    long stream = Luck.stream(seed, "wander." + name + "." + wanders);
    for (int j = 0; j < count; j++) {
      row[j] += sigma * Luck.z(stream, j);
    }
  }
}
