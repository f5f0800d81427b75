package gylebook.web;

import gylebook.plan.Forecast;
import gylebook.plan.Guard;
import gylebook.telling.GuardWords;
import gylebook.telling.Shown;
import gylebook.units.AnyUnit;
import java.util.Locale;

/// What may go wrong, as plates that differ by shape and word, not by colour alone: an octagon
/// STOP, a triangle SOON, a rounded box NOTE.
@AnyUnit("sizes in pixels")
final class Plates {
  /// Side of a mark on the chart.
  static final int SIDE = 28;

  private Plates() {}

  /// All of them, loudest first.
  static String html(Forecast forecast, Shown shown) {
    StringBuilder html = new StringBuilder();
    for (Guard guard : forecast.guards()) {
      html.append(
          "<article class=\"plate %s\"><h3>%s %s</h3><p>%s %s.</p><p>%s</p><p>%s <i>At: %s.</i></p>%s</article>"
              .formatted(
                  guard.level().name().toLowerCase(Locale.ROOT),
                  sign(guard.level()),
                  guard.level().name(),
                  Html.escaped(shown.sentence(guard.what())),
                  Html.escaped(Shown.odds(guard.chanceFrac())),
                  Html.escaped(guard.cause()),
                  Html.escaped(guard.doThis()),
                  Html.escaped(GuardWords.moment(forecast, guard)),
                  guard.caution().isEmpty()
                      ? ""
                      : "<p class=\"caution\">" + Html.escaped(guard.caution()) + "</p>"));
    }
    return html.toString();
  }

  static String sign(Guard.Level level) {
    return "<svg class=\"sign\" viewBox=\"-1 -1 30 30\" aria-hidden=\"true\">"
        + shape(level, 0, 0, "plate-mark")
        + "</svg>";
  }

  /// The shape of a level with its first letters, at a corner.
  static String shape(Guard.Level level, double x, double y, String kind) {
    String outline =
        switch (level) {
          case STOP -> "<path d=\"M8 0H20L28 8V20L20 28H8L0 20V8Z\"/>";
          case SOON -> "<path d=\"M14 1L28 27H0Z\"/>";
          case NOTE -> "<rect x=\"1\" y=\"3\" width=\"26\" height=\"22\" rx=\"8\"/>";
        };
    String letter =
        switch (level) {
          case STOP -> "×";
          case SOON -> "!";
          case NOTE -> "i";
        };
    return String.format(
        Locale.ROOT,
        "<g class=\"%s %s\" transform=\"translate(%.1f %.1f)\">%s<text x=\"14\" y=\"%d\""
            + " text-anchor=\"middle\">%s</text></g>",
        kind,
        level.name().toLowerCase(Locale.ROOT),
        x,
        y,
        outline,
        level == Guard.Level.SOON ? 24 : 21,
        letter);
  }
}
