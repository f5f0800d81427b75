package gylebook.telling;

import gylebook.plan.Forecast;
import gylebook.plan.Guard;

/// When a guard matters, the same for every face.
public final class GuardWords {
  private GuardWords() {}

  /// The point of the day: `boil reached, about 2:31`.
  public static String moment(Forecast forecast, Guard guard) {
    return forecast
        .milestone(guard.byWhen())
        .map(at -> at.says() + ", about " + Shown.clock(at.atSec().middle()))
        .orElse("the whole day");
  }
}
