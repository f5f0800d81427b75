package gylebook.simulate;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// What one simulated day left behind: its milestones, its extremes, its lines on the time grid.
@AnyUnit("rows of several quantities; the columns are named in Column and Line")
public final class DayLog {
  /// What is noted at each milestone.
  public enum Column {
    AT_SEC,
    WORT_C,
    GRAIN_C,
    HOT_L,
    COLD_L,
    WORT_PLATO,
    ELEMENT_J,
    STEAM_KG
  }

  /// What is noted along the day.
  public enum Line {
    WORT_C,
    GRAIN_C,
    READ_C,
    OUTSIDE_M,
    DUTY_FRAC,
    WORT_PLATO
  }

  static final int MOST_MILESTONES = 128;
  static final int EXTREMES = 11;
  static final int GRAIN_MEAN_ROW = 8;

  private final List<String> keys = new ArrayList<>();
  private final double[][] rows = new double[MOST_MILESTONES][Column.values().length];
  private int milestones;

  private final double gridSec;
  private final double[][] lines;
  private int written;
  private boolean withLines;

  // Extremes, for the guards.
  double elementCoverM;
  double highestM;
  double doughInM;
  double breakM;
  double suctionM;
  double drainC;
  double bagKg;
  double drippedKg;
  double grainMeanC;
  double grainMeanSec;
  boolean gaveUp;
  String gaveUpAt = "";

  /// A log with a time grid; a spacing of 0 keeps no lines.
  public DayLog(double gridSec, double mostSec) {
    this.gridSec = gridSec;
    int count = gridSec > 0 ? (int) Math.ceil(mostSec / gridSec) + 1 : 0;
    this.lines = new double[Line.values().length][count];
  }

  void clear(boolean keepLines) {
    withLines = keepLines && gridSec > 0;
    milestones = 0;
    written = 0;
    keys.clear();
    if (withLines) {
      for (double[] line : lines) {
        Arrays.fill(line, Double.NaN);
      }
    }
    elementCoverM = Double.POSITIVE_INFINITY;
    suctionM = Double.POSITIVE_INFINITY;
    highestM = 0;
    doughInM = 0;
    breakM = 0;
    drainC = 0;
    bagKg = 0;
    drippedKg = 0;
    grainMeanC = 0;
    grainMeanSec = 0;
    gaveUp = false;
    gaveUpAt = "";
  }

  void milestone(String key, BrewState state, Member member, Flows flows) {
    double[] row = rows[milestones++];
    keys.add(key);
    row[Column.AT_SEC.ordinal()] = state.clockSec;
    row[Column.WORT_C.ordinal()] = state.kettleC;
    row[Column.GRAIN_C.ordinal()] = state.bagIn ? state.bedC : state.kettleC;
    row[Column.HOT_L.ordinal()] = Views.hotL(state, member);
    row[Column.COLD_L.ordinal()] = Views.coldL(state);
    row[Column.WORT_PLATO.ordinal()] = Views.wortPlato(state, flows);
    row[Column.ELEMENT_J.ordinal()] = state.elementJ;
    row[Column.STEAM_KG.ordinal()] = state.steamKg;
  }

  /// Writes the grid points that the step from `fromSec` has passed, on a straight line.
  void line(double fromSec, double[] from, double toSec, double[] to) {
    int count = lines[0].length;
    while (written < count && written * gridSec <= toSec) {
      double part = toSec > fromSec ? (written * gridSec - fromSec) / (toSec - fromSec) : 1;
      for (int i = 0; i < lines.length; i++) {
        lines[i][written] = from[i] + part * (to[i] - from[i]);
      }
      written++;
    }
  }

  /// How many numbers a kept log has.
  static int keptCount(int milestones) {
    return milestones * Column.values().length + EXTREMES;
  }

  /// Lays the log down into one column of a table, extremes first.
  void keep(double[][] table, int column) {
    double[] extremes = {
      elementCoverM,
      highestM,
      doughInM,
      breakM,
      suctionM,
      drainC,
      bagKg,
      drippedKg,
      grainMeanC,
      grainMeanSec,
      gaveUp ? 1 : 0
    };
    for (int i = 0; i < EXTREMES; i++) {
      table[i][column] = extremes[i];
    }
    int columns = Column.values().length;
    for (int i = 0; i < milestones; i++) {
      for (int k = 0; k < columns; k++) {
        table[EXTREMES + i * columns + k][column] = rows[i][k];
      }
    }
  }

  /// Takes up a log that was laid down; lines start anew at this time.
  void takeUp(double[][] table, int column, List<String> passed, double clockSec) {
    elementCoverM = table[0][column];
    highestM = table[1][column];
    doughInM = table[2][column];
    breakM = table[3][column];
    suctionM = table[4][column];
    drainC = table[5][column];
    bagKg = table[6][column];
    drippedKg = table[7][column];
    grainMeanC = table[8][column];
    grainMeanSec = table[9][column];
    gaveUp = table[10][column] > 0;
    int columns = Column.values().length;
    keys.addAll(passed);
    milestones = passed.size();
    for (int i = 0; i < milestones; i++) {
      for (int k = 0; k < columns; k++) {
        rows[i][k] = table[EXTREMES + i * columns + k][column];
      }
    }
    written = gridSec > 0 ? (int) Math.ceil(clockSec / gridSec - 1e-9) : 0;
  }

  boolean keepsLines() {
    return withLines;
  }

  /// The milestones' names, in the order they came.
  public List<String> keys() {
    return List.copyOf(keys);
  }

  /// How many milestones came.
  public int milestones() {
    return milestones;
  }

  /// What was noted at a milestone.
  public double at(int milestone, Column column) {
    return rows[milestone][column.ordinal()];
  }

  /// What was noted at a milestone of this name.
  public double at(String key, Column column) {
    int index = keys.indexOf(key);
    if (index < 0) {
      throw new IllegalArgumentException("The day has no milestone '" + key + "'.");
    }
    return at(index, column);
  }

  /// One line on the time grid; NaN after the day's end.
  public double[] line(Line line) {
    return lines[line.ordinal()];
  }
}
