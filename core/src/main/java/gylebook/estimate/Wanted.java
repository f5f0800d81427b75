package gylebook.estimate;

import gylebook.plan.Forecast;
import gylebook.units.AnyUnit;

/// What has to come out of the day, as the fixed plan has it.
///
/// @param strengthPlato of the wort in the fermenter
/// @param fermenterL litres there
/// @param bitternessMgPerL of the beer
/// @param colourEbc of the beer
@AnyUnit("each goal has its own unit")
public record Wanted(
    double strengthPlato, double fermenterL, double bitternessMgPerL, double colourEbc) {

  /// The middles of a plan's forecast, which was solved for the recipe's aims.
  public static Wanted of(Forecast forecast) {
    return new Wanted(
        middle(forecast, Goal.STRENGTH),
        middle(forecast, Goal.LITRES),
        middle(forecast, Goal.BITTERNESS),
        middle(forecast, Goal.COLOUR));
  }

  private static double middle(Forecast forecast, Goal goal) {
    return forecast.figure(goal.outcome().key()).orElseThrow().band().middle();
  }

  /// What is wanted of one aim, in its unit.
  public double of(Goal goal) {
    return switch (goal) {
      case STRENGTH -> strengthPlato;
      case LITRES -> fermenterL;
      case BITTERNESS -> bitternessMgPerL;
      case COLOUR -> colourEbc;
    };
  }
}
