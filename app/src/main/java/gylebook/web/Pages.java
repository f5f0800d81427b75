package gylebook.web;

import gylebook.plan.Figure;
import gylebook.plan.Forecast;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.telling.Nearest;
import gylebook.telling.Shown;
import gylebook.telling.ToWeigh;
import gylebook.units.ReadingUnits;
import java.util.List;
import java.util.Optional;

/// A forecast as HTML: what to do, the day, what could go wrong, and why.
final class Pages {
  private static final List<String> OUT =
      List.of(
          "fermenterL",
          "strengthPlato",
          "alcoholByVolumeFrac",
          "bitternessMgPerL",
          "tinsethMgPerL",
          "colourEbc",
          "preBoilL",
          "preBoilPlato",
          "boilOffLPerHr",
          "mashPh",
          "mashResidualMeqPerL",
          "mashCalciumMgPerL",
          "mashMagnesiumMgPerL",
          "mashSodiumMgPerL",
          "mashChlorideMgPerL",
          "mashSulfateMgPerL",
          "mashBicarbonateMgPerL",
          "castC",
          "kegL",
          "cellsWantedNumber",
          "cellsBroughtNumber",
          "driedYeastWantedG",
          "oxygenFromAirMgPerL",
          "fermentGasKg",
          "fermentGasPeakLPerHr",
          "closedRoomM3",
          "daySec",
          "energyJ",
          "waterL");

  private final ReadingUnits units;
  private final Shown shown;
  private final StringBuilder html = new StringBuilder();

  private Pages(ReadingUnits units) {
    this.units = units;
    this.shown = new Shown(units);
  }

  /// What follows from recipe and rig: what to do, the day, what could go wrong, and why.
  static String forecast(Planned planned, ReadingUnits units) {
    return new Pages(units).rendered(planned);
  }

  /// The one line that a brewer looks for first.
  static String expect(Planned planned, ReadingUnits units) {
    return switch (planned) {
      case Planned.Feasible(Plan plan) -> new Pages(units).expect(plan.forecast());
      case Planned.Impossible _ ->
          "It cannot be brewed as wanted; see below what stands in the way.";
    };
  }

  private String rendered(Planned planned) {
    switch (planned) {
      case Planned.Feasible feasible -> plan(feasible.plan());
      case Planned.Impossible impossible -> {
        html.append("<section><h2>It cannot be brewed as wanted</h2><p>")
            .append(escaped(shown.sentence(impossible.says())))
            .append("</p><p>")
            .append(escaped(impossible.maybe()))
            .append("</p>");
        Nearest.says(impossible, units)
            .ifPresent(says -> html.append("<p>").append(escaped(says)).append("</p>"));
        html.append("</section>");
        impossible.nearest().ifPresent(this::plan);
      }
    }
    return html.toString();
  }

  private void plan(Plan plan) {
    Forecast forecast = plan.forecast();
    weigh(plan);
    html.append("<section id=\"todo\"><h2>To do</h2><ol>");
    for (Plan.PlannedStep step : plan.steps()) {
      String figure =
          step.key().isEmpty()
              ? ""
              : " <b>" + escaped(shown.value(step.key(), step.amountNumber())) + "</b>";
      html.append("<li>").append(escaped(step.does())).append(figure).append("</li>");
    }
    html.append("</ol></section>");
    html.append("<section id=\"day\"><h2>Day chart</h2>")
        .append(DayChart.html(plan, shown))
        .append("</section>");
    day(forecast);
    guards(forecast);
    out(forecast);
    worth(forecast);
    html.append(
        "<p class=\"caution\">From %d simulated days; 9 in 10 lie in the range given. Gylebook"
                .formatted(forecast.days())
            + " advises; it never switches anything. Follow your local code; wiring, gas and"
            + " pressure are work for licensed people.</p>");
  }

  /// What the rig needs, not what the recipe says: masses are scaled, hops follow the bitterness.
  private void weigh(Plan plan) {
    html.append("<section id=\"weigh\"><h2>To weigh</h2><table><thead><tr><th>How much<th>What")
        .append("<th>When</tr></thead><tbody>");
    for (ToWeigh.Thing thing : ToWeigh.of(plan, units)) {
      html.append(
          "<tr><td><b>%s</b><td>%s<td>%s</tr>"
              .formatted(escaped(thing.amount()), escaped(thing.name()), escaped(thing.moment())));
    }
    html.append("</tbody></table></section>");
  }

  private String expect(Forecast forecast) {
    StringBuilder line = new StringBuilder();
    expected(line, forecast, "alcoholByVolumeFrac", "Expect ", " alcohol");
    expected(line, forecast, "bitternessMgPerL", ", bitterness about ", "");
    expected(line, forecast, "fermenterL", ", ", " into the fermenter");
    expected(line, forecast, "daySec", ", in ", " from the first heat to the end");
    return line.append(".").toString();
  }

  private void expected(
      StringBuilder line, Forecast forecast, String key, String before, String after) {
    forecast
        .figure(key)
        .ifPresent(
            figure ->
                line.append(before)
                    .append("<b>")
                    .append(escaped(shown.value(key, figure.band().middle())))
                    .append("</b>")
                    .append(after)
                    .append(line.indexOf("times in") < 0 ? " (9 times in 10: " : " (")
                    .append(escaped(shown.range(key, figure.band())))
                    .append(")"));
  }

  private void worth(Forecast forecast) {
    if (forecast.worthMeasuring().isEmpty()) {
      return;
    }
    html.append(
        "<section id=\"worth\"><h2>What would pay most to measure</h2><p>The forecast is this wide"
            + " because some numbers of the rig are only assumed. In order of what measuring them"
            + " would gain:</p><ol>");
    for (Figure.Mover mover : forecast.worthMeasuring()) {
      html.append("<li>%s: %s</li>".formatted(escaped(mover.says()), share(mover)));
    }
    html.append("</ol></section>");
  }

  /// A share as a bar with its number beside it.
  private static String share(Figure.Mover mover) {
    long percent = Math.round(100 * mover.shareFrac());
    return "<meter min=\"0\" max=\"100\" value=\"%d\">%d %%</meter> %d %% of the doubt"
        .formatted(percent, percent, percent);
  }

  private void day(Forecast forecast) {
    html.append(
        "<section><h2>The day</h2><div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"The day as a table\"><table><thead><tr><th>After<th>Earliest,"
            + " latest<th>What<th>Kettle<th>In it<th>Strength<th>Hands</tr></thead><tbody>");
    for (Milestone milestone : forecast.milestones()) {
      html.append(
          "<tr><td>%s<td>%s, %s<td>%s<td>%s<td>%s<td>%s<td>%s</tr>"
              .formatted(
                  Shown.clock(milestone.atSec().middle()),
                  Shown.clock(milestone.atSec().low()),
                  Shown.clock(milestone.atSec().high()),
                  escaped(milestone.says()),
                  Html.whole(shown.value("wortC", milestone.wortC().middle())),
                  Html.whole(shown.value("hotL", milestone.hotL().middle())),
                  Html.whole(shown.value("wortPlato", milestone.wortPlato().middle())),
                  milestone.hands() == 0 ? "" : escaped(milestone.doing())));
    }
    html.append("</tbody></table></div></section>");
  }

  private void guards(Forecast forecast) {
    html.append("<section id=\"guards\"><h2>What could go wrong</h2>")
        .append(Plates.html(forecast, shown))
        .append("</section>");
  }

  private void out(Forecast forecast) {
    html.append("<section id=\"why\"><h2>What comes out, and why</h2>");
    for (String key : OUT) {
      Optional<Figure> figure = forecast.figure(key);
      figure.ifPresent(this::figure);
    }
    html.append("</section>");
  }

  private void figure(Figure figure) {
    html.append(
        "<details><summary>%s <b>%s</b> <span>%s</span></summary>"
            .formatted(
                escaped(figure.says()),
                escaped(shown.value(figure.key(), figure.band().middle())),
                escaped(shown.range(figure.key(), figure.band()))));
    html.append(
        "<p>%s</p><p>From: %s.</p>"
            .formatted(
                escaped(figure.why().equation()),
                escaped(String.join("; ", figure.why().inputs()))));
    if (!figure.why().movers().isEmpty()) {
      html.append("<ul>");
      for (Figure.Mover mover : figure.why().movers()) {
        html.append("<li>%s: %s</li>".formatted(escaped(mover.says()), share(mover)));
      }
      html.append("</ul>");
    }
    html.append(
        "<p class=\"source\">Sources: %s</p></details>"
            .formatted(escaped(String.join(", ", figure.why().sources()))));
  }

  static String escaped(String text) {
    return Html.escaped(text);
  }
}
