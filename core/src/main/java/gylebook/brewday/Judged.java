package gylebook.brewday;

import gylebook.estimate.Held;
import gylebook.science.ForecastScore;
import gylebook.units.AnyUnit;

/// One number as it was foreseen, held against what came.
///
/// What came is seen with a doubt of its own, so what is judged is the forecast of what would be
/// seen: its doubt and its range are as much wider.
///
/// @param foreseen the number, point and key and all
/// @param after the point after which it was given; empty for the plan
/// @param atSec when that was, since the day began; below 0 for the plan
/// @param came what came
@AnyUnit("in the unit that the number's key names")
public record Judged(Foreseen foreseen, String after, double atSec, Came came) {
  /// Whether the plan said so.
  public boolean byPlan() {
    return after.isEmpty();
  }

  /// Ranked probability score, in the unit of the number: the plain error of a forecast that is
  /// sure, and less the better.
  public double score() {
    return ForecastScore.normalNumber(foreseen.held().mean(), doubt(), came.value());
  }

  /// Where in the forecast it fell: even between 0 and 1 when forecasts are honest.
  public double placeFrac() {
    return ForecastScore.placeFrac(foreseen.held().mean(), doubt(), came.value());
  }

  private double doubt() {
    return Math.hypot(foreseen.held().doubt(), came.doubt());
  }

  /// The range that what is seen should lie in nine times in ten.
  public Held range() {
    Held held = foreseen.held();
    double seen = Held.NINE_IN_TEN * came.doubt();
    double low = held.mean() - Math.hypot(Math.max(0, held.mean() - held.low()), seen);
    double high = held.mean() + Math.hypot(Math.max(0, held.high() - held.mean()), seen);
    return new Held(held.mean(), doubt(), low, high);
  }

  /// Whether it did.
  public boolean held() {
    return range().holds(came.value());
  }
}
