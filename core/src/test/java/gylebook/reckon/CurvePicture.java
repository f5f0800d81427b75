package gylebook.reckon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/// Lines on two axes, as an SVG that is legible on light and dark and without colour.
final class CurvePicture {
  private static final int WIDE = 740;
  private static final int HIGH = 380;
  private static final int LEFT = 70;
  private static final int RIGHT = 500;
  private static final int TOP = 44;
  private static final int BOTTOM = 320;
  private static final List<String> DASHES = List.of("none", "9 5", "2 4", "12 4 2 4", "5 3");
  private static final String STYLE =
      "<style>text{font:13px sans-serif;fill:#222}.t{font-weight:bold;font-size:14px}"
          + ".g{stroke:#ddd}.a{stroke:#444}.l{fill:none;stroke:#7a3b0c;stroke-width:2.2}"
          + "@media(prefers-color-scheme:dark){text{fill:#eee}.g{stroke:#444}.a{stroke:#bbb}"
          + ".l{stroke:#f0b070}}</style>\n";

  /// One line: its name and its points, across and up.
  record Line(String label, List<double[]> points) {}

  /// What stands beside the axes, and whether the upright one is logarithmic.
  record Axes(String title, String across, String up, boolean log) {}

  private final Axes axes;
  private final List<Line> lines;
  private final double least;
  private final double most;
  private final double low;
  private final double high;

  CurvePicture(Axes axes, List<Line> lines) {
    this.axes = axes;
    this.lines = lines;
    this.least = extreme(0, true);
    this.most = extreme(0, false);
    double bottom = extreme(1, true);
    double top = extreme(1, false);
    double room = top > bottom ? 0.04 * (top - bottom) : Math.max(1e-9, 0.1 * Math.abs(top));
    this.low =
        axes.log() || (bottom >= 0 && bottom < 0.3 * top) ? Math.min(bottom, 0) : bottom - room;
    this.high = top + room;
  }

  String svg() {
    StringBuilder svg = new StringBuilder();
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\">%n",
            WIDE,
            HIGH));
    svg.append("<title>").append(plain(axes.title())).append("</title>\n").append(STYLE);
    text(svg, LEFT, 24, "start", "t", axes.title());
    upright(svg);
    across(svg);
    for (int i = 0; i < lines.size(); i++) {
      path(svg, lines.get(i), DASHES.get(i % DASHES.size()));
    }
    labels(svg);
    return svg.append("</svg>\n").toString().replace("\r", "");
  }

  private void upright(StringBuilder svg) {
    for (double at : axes.log() ? decades() : ticks(low, high)) {
      double y = y(at);
      line(svg, "g", LEFT, y, RIGHT, y);
      text(svg, LEFT - 6, y + 4, "end", "", written(at));
    }
    text(svg, LEFT, TOP - 4, "start", "", axes.up());
    line(svg, "a", LEFT, TOP, LEFT, BOTTOM);
  }

  private void across(StringBuilder svg) {
    for (double at : ticks(least, most)) {
      line(svg, "a", x(at), BOTTOM, x(at), BOTTOM + 5);
      text(svg, x(at), BOTTOM + 20, "middle", "", written(at));
    }
    text(svg, (LEFT + RIGHT) / 2.0, BOTTOM + 42, "middle", "", axes.across());
    line(svg, "a", LEFT, BOTTOM, RIGHT, BOTTOM);
  }

  private void path(StringBuilder svg, Line line, String dash) {
    StringBuilder at = new StringBuilder();
    for (double[] point : line.points()) {
      at.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(point[0]), y(point[1])));
    }
    svg.append("<polyline class=\"l\" stroke-dasharray=\"")
        .append(dash)
        .append("\" points=\"")
        .append(at.toString().strip())
        .append("\"/>\n");
  }

  /// Names at the lines' ends, moved apart where they would lie on each other.
  private void labels(StringBuilder svg) {
    List<Line> byEnd = new ArrayList<>(lines);
    byEnd.sort(Comparator.comparingDouble(CurvePicture.this::endY));
    double free = TOP;
    for (Line line : byEnd) {
      double y = Math.max(free, endY(line) + 4);
      free = y + 15;
      text(svg, RIGHT + 6, y, "start", "", line.label());
    }
  }

  private double endY(Line line) {
    return y(line.points().getLast()[1]);
  }

  private double extreme(int part, boolean smallest) {
    var values = lines.stream().flatMap(l -> l.points().stream()).mapToDouble(p -> p[part]);
    return (smallest ? values.min() : values.max()).orElseThrow();
  }

  private double x(double value) {
    return LEFT + (value - least) / (most - least) * (RIGHT - LEFT);
  }

  private double y(double value) {
    double share =
        axes.log()
            ? Math.log(value / floor()) / Math.log(high / floor())
            : (value - low) / (high - low);
    return BOTTOM - share * (BOTTOM - TOP);
  }

  private double floor() {
    return Math.pow(10, Math.floor(Math.log10(extreme(1, true))));
  }

  private List<Double> decades() {
    List<Double> ticks = new ArrayList<>();
    for (double at = floor(); at <= high; at *= 10) {
      ticks.add(at);
    }
    return ticks;
  }

  private static List<Double> ticks(double from, double to) {
    double rough = (to - from) / 6;
    double ten = Math.pow(10, Math.floor(Math.log10(rough)));
    double step =
        ten * (rough / ten < 1.5 ? 1 : rough / ten < 3.5 ? 2 : rough / ten < 7.5 ? 5 : 10);
    List<Double> ticks = new ArrayList<>();
    for (long n = (long) Math.ceil(from / step - 1e-9); n * step <= to + 1e-9 * step; n++) {
      ticks.add(n * step);
    }
    return ticks;
  }

  private static String written(double value) {
    double size = Math.abs(value);
    if (size >= 1e5 || (size > 0 && size < 1e-3)) {
      return String.format(Locale.ROOT, "%.0e", value);
    }
    String digits = String.format(Locale.ROOT, "%.4f", value);
    String short0 = digits.replaceAll("0+$", "").replaceAll("\\.$", "");
    return short0.equals("-0") ? "0" : short0;
  }

  private static void line(
      StringBuilder svg, String look, double x1, double y1, double x2, double y2) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<line class=\"%s\" x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\"/>%n",
            look,
            x1,
            y1,
            x2,
            y2));
  }

  private static void text(
      StringBuilder svg, double x, double y, String anchor, String look, String words) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<text class=\"%s\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n",
            look,
            x,
            y,
            anchor,
            plain(words)));
  }

  private static String plain(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
