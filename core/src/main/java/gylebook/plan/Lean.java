package gylebook.plan;

import gylebook.simulate.BrewDay;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.Arrays;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/// By how much the middle of many days lies off the day without luck.
///
/// What can only go one way (a drop left behind, heat that escapes, a sweep of the bag that takes
/// long) and what bends (evaporation, isomerisation) draws the middle day away from the day with
/// every number at its middle: by a third of a litre of twenty, say. A brewer who asks for 20 L
/// wants 20 L to be the middle of what can come, so the solver aims the middle and not that day.
@AnyUnit("each outcome names its own unit")
final class Lean {
  /// Nothing is known of it yet.
  static final Lean NONE = new Lean(new double[Outcome.values().length]);

  // The middle of so many days wanders by a fifteenth of their spread, and they cost a quarter of a
  // forecast.
  private static final int DAYS = 240;

  private final double[] row;

  private Lean(double[] row) {
    this.row = row;
  }

  /// The lean of a brew near the one that is looked for.
  ///
  /// @param seed the luck of the days, that of the forecast to come
  static Lean of(BrewDay day, long seed, BooleanSupplier stop) {
    Ensemble days =
        Ensemble.of(day, seed, DAYS, stop, _ -> {})
            .orElseThrow(() -> new CancellationException("overtaken"));
    double[] single = Ensemble.nominalOutcomes(day);
    double[] row = new double[single.length];
    Arrays.setAll(
        row,
        i -> {
          double off = Bands.of(days.outcome(Outcome.values()[i])).middle() - single[i];
          return Double.isFinite(off) ? off : 0;
        });
    return new Lean(row);
  }

  /// The lean of a plan that is there, read off its forecast; for a brew near it.
  static Lean of(Planner.Before before) {
    Plan plan = before.plan();
    double[] single =
        Ensemble.nominalOutcomes(Planner.day(before.recipe(), before.rig(), plan.settings()));
    double[] row = new double[single.length];
    Arrays.setAll(
        row,
        i ->
            plan.forecast()
                .figure(Outcome.values()[i].key())
                .map(figure -> figure.band().middle() - single[i])
                .filter(Double::isFinite)
                .orElse(0.0));
    return new Lean(row);
  }

  /// Where the middle of many days comes out, by the day without luck.
  double middle(Outcomes single, Outcome outcome) {
    return single.at(outcome) + row[outcome.ordinal()];
  }
}
