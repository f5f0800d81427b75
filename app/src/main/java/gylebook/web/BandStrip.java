package gylebook.web;

import gylebook.plan.Trace;
import gylebook.telling.Shown;
import gylebook.units.AnyUnit;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// One strip with a scale: where 9 days in 10 lie as a band, a few single days as thin lines, the
/// middle as a firm one. A gap stays a gap.
@AnyUnit("draws every quantity in pixels")
final class BandStrip {
  private static final double ROUND = 1e-9;
  private static final double TICK_PX = 24;

  private final TimeAxis axis;
  private final Shown shown;
  private final String key;
  private final int top;
  private final int height;
  private final double least;
  private final double most;
  private final StringBuilder svg = new StringBuilder();

  /// @param least at the strip's foot, in the unit of the key
  /// @param most at its head
  BandStrip(
      TimeAxis axis, Shown shown, String key, int top, int height, double least, double most) {
    this.axis = axis;
    this.shown = shown;
    this.key = key;
    this.top = top;
    this.height = height;
    this.least = least;
    this.most = Math.max(least + ROUND, most);
  }

  double y(double value) {
    return top + height * (1 - Math.clamp((value - least) / (most - least), 0, 1));
  }

  /// The largest finite value of some rows.
  static double highest(double[] values, double otherwise) {
    double highest = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      highest = Double.isFinite(value) ? Math.max(highest, value) : highest;
    }
    return Double.isFinite(highest) ? highest : otherwise;
  }

  /// Frame, and round values of the reader's unit at the left.
  void scale() {
    svg.append(
        String.format(
            Locale.ROOT,
            "<rect class=\"ground\" x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\"/>",
            TimeAxis.LEFT,
            top,
            TimeAxis.RIGHT - TimeAxis.LEFT,
            height));
    for (double value : ticks()) {
      double y = y(value);
      svg.append(
          String.format(
              Locale.ROOT,
              "<line class=\"hour\" x1=\"%d\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\"/>"
                  + "<text class=\"tick\" x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s</text>",
              TimeAxis.LEFT,
              TimeAxis.RIGHT,
              y,
              y,
              TimeAxis.LEFT - 6,
              y + 5,
              Html.escaped(tick(value))));
    }
  }

  private String tick(double value) {
    return shown.value(key, value).replaceFirst("[.]0+ ", " ");
  }

  /// A few values that are round in the reader's unit, far enough apart to be read.
  private List<Double> ticks() {
    Unit unit = shown.unit(key).orElse(null);
    double from = read(unit, least);
    double to = read(unit, most);
    double tightest = Math.abs(to - from) * TICK_PX / height;
    double power = Math.pow(10, Math.floor(Math.log10(tightest)));
    double step = 10 * power;
    for (double one : new double[] {5, 2, 1}) {
      if (one * power >= tightest) {
        step = one * power;
      }
    }
    List<Double> ticks = new ArrayList<>();
    double low = Math.min(from, to);
    for (double at = Math.ceil(low / step - ROUND) * step;
        at <= Math.max(from, to) + ROUND;
        at += step) {
      ticks.add(inside(unit, at));
    }
    return ticks;
  }

  private static double read(@org.jspecify.annotations.Nullable Unit unit, double value) {
    return unit == null ? value : unit.fromInside(value);
  }

  private static double inside(@org.jspecify.annotations.Nullable Unit unit, double value) {
    return unit == null ? value : unit.toInside(value);
  }

  /// Band, single days, middle.
  void trace(Trace trace, String kind) {
    svg.append("<g class=\"").append(kind).append("\">");
    svg.append("<path class=\"band\" d=\"").append(band(trace)).append("\"/>");
    for (double[] day : trace.days()) {
      svg.append("<path class=\"one\" d=\"").append(line(day)).append("\"/>");
    }
    svg.append("<path class=\"middle\" d=\"").append(line(trace.middle())).append("\"/></g>");
  }

  /// The middle alone.
  void middle(Trace trace, String kind) {
    svg.append("<g class=\"%s\"><path class=\"middle\" d=\"".formatted(kind))
        .append(line(trace.middle()))
        .append("\"/></g>");
  }

  /// The middle as an area down to the foot, hatched.
  void area(Trace trace, String kind) {
    Stroke path = new Stroke();
    double[] values = trace.middle();
    int i = 0;
    while (i < values.length) {
      int start = i;
      while (i < values.length && Double.isFinite(values[i])) {
        i++;
      }
      if (i > start) {
        path.to(axis.xOfPoint(start), y(least));
        for (int j = start; j < i; j++) {
          path.to(axis.xOfPoint(j), y(values[j]));
        }
        path.to(axis.xOfPoint(i - 1), y(least));
        path.close();
      }
      i++;
    }
    svg.append("<path class=\"hatched ")
        .append(kind)
        .append("\" d=\"")
        .append(path.drawn())
        .append("\"/>");
  }

  /// Grey bars, a bar a step of the grid; one path, because a page of a hundred boxes is slow.
  void bars(Trace trace) {
    Stroke path = new Stroke();
    double[] values = trace.middle();
    for (int i = 0; i < values.length; i++) {
      if (Double.isFinite(values[i]) && values[i] > 0) {
        double x = axis.xOfPoint(i);
        path.box(x, y(values[i]), Math.max(x + 1, axis.xOfPoint(i + 1) - 1.5), y(least));
      }
    }
    svg.append("<g class=\"duty\"><path class=\"bar\" d=\"")
        .append(path.drawn())
        .append("\"/></g>");
  }

  /// A level that must not be crossed.
  void limit(double value, String says) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<line class=\"element\" x1=\"%d\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\"/>"
                + "<text class=\"label\" x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s</text>",
            TimeAxis.LEFT,
            TimeAxis.RIGHT,
            y(value),
            y(value),
            TimeAxis.RIGHT - 6,
            y(value) - 6,
            Html.escaped(says)));
  }

  /// A dot with its whisker.
  void dot(double sec, double low, double middle, double high) {
    double x = axis.x(sec);
    svg.append(
        String.format(
            Locale.ROOT,
            "<g class=\"gravity\"><line class=\"whisker\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\""
                + " y2=\"%.1f\"/><circle class=\"dot\" cx=\"%.1f\" cy=\"%.1f\" r=\"5\"/></g>",
            x,
            x,
            y(high),
            y(low),
            x,
            y(middle)));
  }

  /// Words beside a line.
  void label(double sec, double value, int upPx, String says) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<text class=\"label\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%s</text>",
            axis.x(sec),
            y(value) - upPx,
            Html.escaped(says)));
  }

  private String line(double[] values) {
    Stroke path = new Stroke();
    for (int i = 0; i < values.length; i++) {
      if (Double.isFinite(values[i])) {
        path.to(axis.xOfPoint(i), y(values[i]));
      } else {
        path.lift();
      }
    }
    return path.drawn();
  }

  private String band(Trace trace) {
    Stroke path = new Stroke();
    int i = 0;
    while (i < trace.low().length) {
      int start = i;
      while (i < trace.low().length && Double.isFinite(trace.low()[i])) {
        i++;
      }
      for (int j = start; j < i; j++) {
        path.to(axis.xOfPoint(j), y(trace.high()[j]));
      }
      for (int j = i - 1; j >= start; j--) {
        path.to(axis.xOfPoint(j), y(trace.low()[j]));
      }
      if (i > start) {
        path.close();
      }
      i++;
    }
    return path.drawn();
  }

  String drawn() {
    return svg.toString();
  }
}
