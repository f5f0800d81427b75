package gylebook.web;

import gylebook.plan.Forecast;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.plan.Trace;
import gylebook.telling.Shown;
import gylebook.units.AnyUnit;
import java.util.Locale;
import java.util.Optional;

/// The day on one time axis: five strips, each a band with its middle line and a few single days.
@AnyUnit("draws every quantity in pixels")
final class DayChart {
  private static final int WIDTH = 900;
  private static final int LEFT = 8;
  private static final int STRIP = 110;
  private static final int GAP = 30;

  private record Strip(String key, String says, String kind, double least, double most) {}

  private static final java.util.List<Strip> STRIPS =
      java.util.List.of(
          new Strip("wortC", "Kettle temperature", "temperature", 0, 105),
          new Strip("grainC", "Grain temperature", "temperature", 0, 105),
          new Strip("levelM", "Level round the bag", "level", 0, 0.5),
          new Strip("dutyFrac", "Duty", "duty", 0, 1),
          new Strip("wortPlato", "Strength", "gravity", 0, 25));

  private final Forecast forecast;
  private final Shown shown;
  private final StringBuilder svg = new StringBuilder();
  private final int points;
  private final double elementTopM;

  private DayChart(Forecast forecast, Shown shown, double elementTopM) {
    this.elementTopM = elementTopM;
    this.forecast = forecast;
    this.shown = shown;
    this.points = forecast.traces().stream().mapToInt(t -> t.middle().length).max().orElse(1);
  }

  static String svg(Plan plan, Shown shown) {
    double elementTopM = plan.rig().element().topM().value();
    return new DayChart(plan.forecast(), shown, elementTopM).drawn();
  }

  private String drawn() {
    int height = STRIPS.size() * (STRIP + GAP) + GAP;
    svg.append(
        "<svg class=\"day\" viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"%s\">"
            .formatted(WIDTH, height, Pages.escaped(sentence())));
    for (int i = 0; i < STRIPS.size(); i++) {
      strip(STRIPS.get(i), GAP + i * (STRIP + GAP));
    }
    hours(height);
    return svg.append("</svg>").toString();
  }

  private String sentence() {
    Milestone end = forecast.milestones().getLast();
    return "The day in five strips; it ends after about " + Shown.clock(end.atSec().middle());
  }

  private double x(int point) {
    return LEFT + (double) point / Math.max(1, points - 1) * (WIDTH - 2 * LEFT);
  }

  private void strip(Strip strip, int top) {
    Optional<Trace> found =
        forecast.traces().stream().filter(t -> t.key().equals(strip.key())).findFirst();
    if (found.isEmpty()) {
      return;
    }
    Trace trace = found.get();
    double most = Math.max(1e-9, Math.min(strip.most(), highest(trace) * 1.1));
    svg.append("<g class=\"%s\">".formatted(strip.kind()));
    svg.append(
        "<text x=\"%d\" y=\"%d\">%s, up to %s</text>"
            .formatted(
                LEFT,
                top - 6,
                strip.says(),
                Pages.escaped(shown.value(strip.key(), highest(trace)))));
    svg.append(
        "<rect class=\"ground\" x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\"/>"
            .formatted(LEFT, top, WIDTH - 2 * LEFT, STRIP));
    if (strip.kind().equals("level")) {
      element(top, most);
    }
    svg.append("<path class=\"band\" d=\"").append(band(trace, top, most)).append("\"/>");
    for (double[] day : trace.days()) {
      svg.append("<path class=\"one\" d=\"").append(line(day, top, most)).append("\"/>");
    }
    svg.append("<path class=\"middle\" d=\"")
        .append(line(trace.middle(), top, most))
        .append("\"/></g>");
  }

  /// The line that must not be crossed while it heats.
  private void element(int top, double most) {
    double at = y(elementTopM, top, most);
    svg.append(
        String.format(
            Locale.ROOT,
            "<line class=\"element\" x1=\"%d\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\"/><text x=\"%d\""
                + " y=\"%.1f\">top of the element</text>",
            LEFT,
            WIDTH - LEFT,
            at,
            at,
            LEFT + 6,
            at - 5));
  }

  private static double highest(Trace trace) {
    double highest = 0;
    for (double value : trace.high()) {
      highest = Double.isFinite(value) ? Math.max(highest, value) : highest;
    }
    return highest;
  }

  private static double y(double value, int top, double most) {
    return top + STRIP * (1 - Math.clamp(value / most, 0, 1));
  }

  private String line(double[] values, int top, double most) {
    StringBuilder path = new StringBuilder();
    boolean open = false;
    for (int i = 0; i < values.length; i++) {
      if (!Double.isFinite(values[i])) {
        open = false;
        continue;
      }
      path.append(
          String.format(
              Locale.ROOT, "%s%.1f %.1f", open ? "L" : "M", x(i), y(values[i], top, most)));
      open = true;
    }
    return path.toString();
  }

  private String band(Trace trace, int top, double most) {
    StringBuilder path = new StringBuilder();
    int i = 0;
    while (i < trace.low().length) {
      int start = i;
      while (i < trace.low().length && Double.isFinite(trace.low()[i])) {
        i++;
      }
      if (i > start) {
        piece(path, trace, start, i, top, most);
      }
      i++;
    }
    return path.toString();
  }

  private void piece(StringBuilder path, Trace trace, int start, int end, int top, double most) {
    for (int i = start; i < end; i++) {
      path.append(
          String.format(
              Locale.ROOT,
              "%s%.1f %.1f",
              i == start ? "M" : "L",
              x(i),
              y(trace.high()[i], top, most)));
    }
    for (int i = end - 1; i >= start; i--) {
      path.append(String.format(Locale.ROOT, "L%.1f %.1f", x(i), y(trace.low()[i], top, most)));
    }
    path.append('Z');
  }

  private void hours(int height) {
    double hourPoints = 3600 / forecast.stepSec();
    for (int hour = 0; hour * hourPoints < points; hour++) {
      int at = (int) Math.round(hour * hourPoints);
      svg.append(
          String.format(
              Locale.ROOT,
              "<line class=\"hour\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%d\" y2=\"%d\"/><text x=\"%.1f\""
                  + " y=\"%d\">%d h</text>",
              x(at),
              x(at),
              GAP,
              height - GAP + 4,
              x(at) + 3,
              height - 8,
              hour));
    }
  }
}
