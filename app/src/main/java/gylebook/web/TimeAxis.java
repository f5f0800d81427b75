package gylebook.web;

import gylebook.plan.Forecast;
import gylebook.plan.Milestone;
import gylebook.plan.Trace;
import gylebook.units.AnyUnit;
import java.util.Locale;
import java.util.Optional;

/// The one time axis that all strips of the day chart share, in pixels of the drawing.
@AnyUnit("pixels and times")
final class TimeAxis {
  static final int WIDTH = 960;
  static final int LEFT = 74;
  static final int RIGHT = WIDTH - 10;
  private static final double SEC_PER_HR = 3600;

  private final Forecast forecast;
  private final double daySec;

  TimeAxis(Forecast forecast) {
    this.forecast = forecast;
    double longest = forecast.stepSec();
    for (Trace trace : forecast.traces()) {
      longest = Math.max(longest, lastFinite(trace.middle()) * forecast.stepSec());
    }
    for (Milestone milestone : forecast.milestones()) {
      longest = Math.max(longest, milestone.atSec().high());
    }
    this.daySec = longest;
  }

  private static int lastFinite(double[] values) {
    int last = values.length - 1;
    while (last > 0 && !Double.isFinite(values[last])) {
      last--;
    }
    return last;
  }

  double x(double sec) {
    return LEFT + Math.clamp(sec / daySec, 0, 1) * (RIGHT - LEFT);
  }

  /// Where a point of a trace stands.
  double xOfPoint(int point) {
    return x(point * forecast.stepSec());
  }

  /// The point of a trace at a time.
  int point(double sec, Trace trace) {
    int point = (int) Math.round(sec / forecast.stepSec());
    return Math.clamp(point, 0, Math.max(0, trace.middle().length - 1));
  }

  Optional<Trace> trace(String key) {
    return forecast.traces().stream().filter(trace -> trace.key().equals(key)).findFirst();
  }

  /// Faint lines at whole hours from top to bottom, named below.
  String hours(int top, int bottom) {
    StringBuilder svg = new StringBuilder();
    for (int hour = 0; hour * SEC_PER_HR <= daySec; hour++) {
      double x = x(hour * SEC_PER_HR);
      svg.append(
          String.format(
              Locale.ROOT,
              "<line class=\"hour\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%d\" y2=\"%d\"/>"
                  + "<text class=\"tick\" x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%d h</text>",
              x,
              x,
              top,
              bottom,
              x,
              bottom + 18,
              hour));
    }
    return svg.toString();
  }
}
