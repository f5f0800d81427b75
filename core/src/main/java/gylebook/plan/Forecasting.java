package gylebook.plan;

import gylebook.simulate.BrewDay;
import gylebook.simulate.DayLog;
import gylebook.simulate.Engine;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/// Makes the forecast of an ensemble: milestones, figures, guards, lines.
@AnyUnit("columns of every quantity")
final class Forecasting {
  private static final int SINGLE_DAYS = 9;

  private static final Band ENDED = new Band(Double.NaN, Double.NaN, Double.NaN);

  private Forecasting() {}

  static Forecast of(BrewDay day, Ensemble ensemble, long seed) {
    Movers movers = new Movers(ensemble);
    List<Milestone> milestones = milestones(day, ensemble);
    // Figures do not look at each other, so they are the same in any order.
    List<Figure> cold = ColdFigures.of(day, ensemble, movers, seed);
    List<Figure> figures =
        new ArrayList<>(
            Arrays.stream(Outcome.values())
                .parallel()
                .filter(outcome -> outcome != Outcome.GAVE_UP)
                .map(outcome -> figure(outcome, ensemble.outcome(outcome), movers))
                .toList());
    figures.addAll(cold);
    List<Trace> traces =
        Arrays.stream(DayLog.Line.values()).map(line -> trace(line, ensemble)).toList();
    return new Forecast(
        Engine.REVISION,
        seed,
        ensemble.days(),
        milestones,
        figures,
        Guards.of(day, ensemble, cold),
        Ensemble.GRID_SEC,
        traces,
        movers.worthMeasuring(day.rig()));
  }

  private static Figure figure(Outcome outcome, double[] column, Movers movers) {
    Explained explained = Explained.of(outcome);
    Figure.Why why =
        new Figure.Why(
            explained.equation(), explained.inputs(), explained.sources(), movers.of(column));
    return new Figure(outcome.key(), explained.says(), Bands.of(column), why);
  }

  private static List<Milestone> milestones(BrewDay day, Ensemble ensemble) {
    List<Milestone> found = new ArrayList<>();
    List<String> keys = ensemble.milestoneKeys();
    for (int i = 0; i < keys.size(); i++) {
      Naming named = Naming.of(keys.get(i), day.recipe(), day.rig());
      found.add(
          new Milestone(
              keys.get(i),
              named.says(),
              band(ensemble, i, DayLog.Column.AT_SEC),
              band(ensemble, i, DayLog.Column.WORT_C),
              band(ensemble, i, DayLog.Column.GRAIN_C),
              band(ensemble, i, DayLog.Column.HOT_L),
              band(ensemble, i, DayLog.Column.COLD_L),
              band(ensemble, i, DayLog.Column.WORT_PLATO),
              named.hands(),
              named.doing()));
    }
    return found;
  }

  private static Band band(Ensemble ensemble, int milestone, DayLog.Column column) {
    return Bands.of(ensemble.milestone(milestone, column));
  }

  private static Trace trace(DayLog.Line line, Ensemble ensemble) {
    List<double[]> days = ensemble.lines(line);
    int points = longest(days);
    double[] low = new double[points];
    double[] middle = new double[points];
    double[] high = new double[points];
    // Each moment is a matter of its own, so they are the same in any order.
    IntStream.range(0, points)
        .parallel()
        .forEach(
            t -> {
              Band band = atMoment(days, t);
              low[t] = band.low();
              middle[t] = band.middle();
              high[t] = band.high();
            });
    List<double[]> single =
        days.stream().limit(SINGLE_DAYS).map(one -> Arrays.copyOf(one, points)).toList();
    return new Trace(key(line), low, middle, high, single);
  }

  private static Band atMoment(List<double[]> days, int moment) {
    double[] column = new double[days.size()];
    int running = 0;
    for (double[] day : days) {
      if (Double.isFinite(day[moment])) {
        column[running++] = day[moment];
      }
    }
    // After half the days have ended, what is left is no picture of the day any more.
    return 2 * running >= column.length ? Bands.sorted(Arrays.copyOf(column, running)) : ENDED;
  }

  /// Points up to the end of the longest day.
  private static int longest(List<double[]> days) {
    int points = 0;
    for (double[] day : days) {
      int end = day.length;
      while (end > points && !Double.isFinite(day[end - 1])) {
        end--;
      }
      points = Math.max(points, end);
    }
    return points;
  }

  private static String key(DayLog.Line line) {
    return switch (line) {
      case WORT_C -> "wortC";
      case GRAIN_C -> "grainC";
      case READ_C -> "readC";
      case OUTSIDE_M -> "levelM";
      case DUTY_FRAC -> "dutyFrac";
      case WORT_PLATO -> "wortPlato";
    };
  }
}
