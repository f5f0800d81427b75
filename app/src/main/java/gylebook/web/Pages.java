package gylebook.web;

import gylebook.plan.Figure;
import gylebook.plan.Forecast;
import gylebook.plan.Guard;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.telling.RecipeWords;
import gylebook.telling.Shown;
import gylebook.units.ReadingUnits;
import java.util.List;
import java.util.Optional;

/// The page as HTML: sentences first, then the day, what could go wrong, and why.
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
          "castC",
          "kegL",
          "daySec",
          "energyJ",
          "waterL");

  private final Shown shown;
  private final ReadingUnits units;
  private final StringBuilder html = new StringBuilder();

  private Pages(ReadingUnits units) {
    this.units = units;
    this.shown = new Shown(units);
  }

  static String list(List<Gyle> gyles) {
    StringBuilder items = new StringBuilder();
    for (Gyle gyle : gyles) {
      String invented = gyle.recipe().invented() ? " <small>invented</small>" : "";
      items.append(
          "<li><a href=\"/gyles/%s\">%s</a>, on %s%s<br>%s</li>"
              .formatted(
                  escaped(gyle.gyleId()),
                  escaped(gyle.recipe().name()),
                  escaped(gyle.rig().name()),
                  invented,
                  escaped(gyle.recipe().wanted())));
    }
    return page("Gylebook", "<h1>Gylebook</h1><ul class=\"gyles\">" + items + "</ul>");
  }

  static String gyle(Gyle gyle, Planned planned, ReadingUnits units) {
    return new Pages(units).rendered(gyle, planned);
  }

  private String rendered(Gyle gyle, Planned planned) {
    html.append("<p class=\"back\"><a href=\"/\">All gyles</a></p><h1>")
        .append(escaped(gyle.recipe().name()))
        .append("</h1>");
    if (gyle.recipe().invented()) {
      html.append("<p class=\"invented\">Recipe and rig are invented, to look round with.</p>");
    }
    reading(gyle);
    words(gyle);
    switch (planned) {
      case Planned.Feasible feasible -> plan(feasible.plan());
      case Planned.Impossible impossible -> {
        html.append("<section><h2>It cannot be brewed as wanted</h2><p>")
            .append(escaped(shown.sentence(impossible.says())))
            .append("</p><p>")
            .append(escaped(impossible.maybe()))
            .append("</p></section>");
        impossible.nearest().ifPresent(this::plan);
      }
    }
    return page(gyle.recipe().name(), html.toString());
  }

  private void reading(Gyle gyle) {
    html.append("<p class=\"units\">Read in:");
    for (String set : List.of("metric", "us", "imperial")) {
      html.append(
          " <a href=\"/gyles/%s?units=%s\">%s</a>"
              .formatted(escaped(gyle.gyleId()), set, set.equals("us") ? "US" : set));
    }
    html.append("</p>");
  }

  private void words(Gyle gyle) {
    html.append("<section><h2>In words</h2><dl>");
    for (RecipeWords.Part part : RecipeWords.of(gyle.recipe(), units)) {
      html.append(
          "<dt>%s</dt><dd>%s</dd>".formatted(escaped(part.heading()), escaped(part.text())));
    }
    html.append("</dl></section>");
  }

  private void plan(Plan plan) {
    Forecast forecast = plan.forecast();
    html.append("<section><h2>To do</h2><ol>");
    for (Plan.PlannedStep step : plan.steps()) {
      String figure =
          step.key().isEmpty()
              ? ""
              : " <b>" + escaped(shown.value(step.key(), step.amountNumber())) + "</b>";
      html.append("<li>").append(escaped(step.does())).append(figure).append("</li>");
    }
    html.append("</ol></section>");
    html.append("<section><h2>Day chart</h2><div class=\"wide\">")
        .append(DayChart.svg(plan, shown))
        .append("</div></section>");
    day(forecast);
    guards(forecast);
    out(forecast);
    html.append(
        "<p class=\"caution\">From %d simulated days; 9 in 10 lie in the range given. Gylebook"
                .formatted(forecast.days())
            + " advises; it never switches anything. Follow your local code; wiring, gas and"
            + " pressure are work for licensed people.</p>");
  }

  private void day(Forecast forecast) {
    html.append(
        "<section><h2>The day</h2><div class=\"wide\"><table><thead><tr><th>After<th>Earliest,"
            + " latest<th>What<th>Kettle<th>In it<th>Strength<th>Hands</tr></thead><tbody>");
    for (Milestone milestone : forecast.milestones()) {
      html.append(
          "<tr><td>%s<td>%s, %s<td>%s<td>%s<td>%s<td>%s<td>%s</tr>"
              .formatted(
                  Shown.clock(milestone.atSec().middle()),
                  Shown.clock(milestone.atSec().low()),
                  Shown.clock(milestone.atSec().high()),
                  escaped(milestone.says()),
                  escaped(shown.value("wortC", milestone.wortC().middle())),
                  escaped(shown.value("hotL", milestone.hotL().middle())),
                  escaped(shown.value("wortPlato", milestone.wortPlato().middle())),
                  milestone.hands() == 0 ? "" : escaped(milestone.doing())));
    }
    html.append("</tbody></table></div></section>");
  }

  private void guards(Forecast forecast) {
    html.append("<section><h2>What could go wrong</h2>");
    for (Guard guard : forecast.guards()) {
      String level = guard.level().name();
      html.append(
          "<article class=\"plate %s\"><h3>%s</h3><p>%s %s.</p><p>%s <i>At: %s.</i></p><p class=\"caution\">%s</p></article>"
              .formatted(
                  level.toLowerCase(java.util.Locale.ROOT),
                  level,
                  escaped(shown.sentence(guard.what())),
                  escaped(Shown.odds(guard.chanceFrac())),
                  escaped(guard.doThis()),
                  escaped(byWhen(forecast, guard)),
                  escaped(guard.caution())));
    }
    html.append("</section>");
  }

  private static String byWhen(Forecast forecast, Guard guard) {
    return forecast
        .milestone(guard.byWhen())
        .map(m -> m.says() + ", about " + Shown.clock(m.atSec().middle()))
        .orElse(guard.byWhen());
  }

  private void out(Forecast forecast) {
    html.append("<section><h2>What comes out, and why</h2>");
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
        html.append(
            "<li>%s moves it: %d %% of its doubt</li>"
                .formatted(escaped(mover.says()), Math.round(100 * mover.shareFrac())));
      }
      html.append("</ul>");
    }
    html.append(
        "<p class=\"source\">Sources: %s</p></details>"
            .formatted(escaped(String.join(", ", figure.why().sources()))));
  }

  private static String page(String title, String body) {
    return "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\">"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">"
        + "<title>"
        + escaped(title)
        + "</title><link rel=\"stylesheet\" href=\"/page.css\">"
        + "</head><body><main>"
        + body
        + "</main></body></html>";
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
