package gylebook.web;

import gylebook.brewday.DayJudged;
import gylebook.brewday.Gyle;
import gylebook.brewday.HouseRecord;
import gylebook.brewday.Judged;
import gylebook.plan.Milestone;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.telling.ForecastWords;
import gylebook.telling.Shown;
import gylebook.units.AnyUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/// What was forecast and what came, as tables.
@AnyUnit("tells every quantity")
final class RecordPage {
  private static final String HOW =
      "<details><summary>How this is judged</summary><p>What came is the moment a point was ticked"
          + " off, or what was read near it; no forecast is held against a forecast. A reading has a"
          + " doubt of its own, so a range is told as wide as the reading should fall in nine times"
          + " in ten. Every number is as it was given; nothing is computed again.</p><p>The score is"
          + " the ranked probability score: how far off the forecast was with its doubt counted, in"
          + " the unit of the number. 0 is best; of a forecast without doubt it is the error. Better by"
          + " so many per cent: the mean score is so much smaller than that of the plainer forecast."
          + " Times are hours and minutes since the day began.</p></details>";

  private static final String LINK = "<a href=\"/record\">How good all forecasts were</a>";

  private final ForecastWords words;

  RecordPage(Shown shown) {
    this.words = new ForecastWords(shown);
  }

  private static String top(Gyle gyle) {
    return "<p class=\"back\"><a href=\"/gyles/%s\">%s</a></p><h1>What was forecast and what came</h1>"
        .formatted(Html.escaped(gyle.gyleId()), Html.escaped(gyle.name()));
  }

  private static String page(Gyle gyle, String body) {
    return Html.page(gyle.name() + ": what was forecast and what came", top(gyle) + body);
  }

  /// Before the day.
  String notBegun(Gyle gyle) {
    return page(
        gyle,
        "<p>The day has not begun. What is forecast when the plan is fixed is kept, and again at each"
            + " point of the day; here it is held against what came.</p>");
  }

  /// One day.
  String day(Gyle gyle, Optional<DayJudged> judged, Recipe recipe, Rig rig) {
    if (judged.isEmpty()) {
      return page(
          gyle,
          "<p>No forecast of this day was kept, so there is nothing to hold against what came. Days"
              + " since this edition keep theirs.</p>");
    }
    DayJudged day = judged.get();
    Function<String, String> point = key -> Milestone.says(key, recipe, rig);
    StringBuilder html = new StringBuilder(aside(gyle));
    String count = ForecastWords.count(day);
    html.append(
        count.isEmpty()
            ? "<p>Nothing has come yet that was ticked off or read.</p>"
            : "<p class=\"expect\">" + Html.escaped(count) + " Nine in ten should.</p>");
    html.append("<section>").append(table(day, point)).append("</section>");
    html.append(unmeasured(day)).append(HOW).append("<p>").append(LINK).append("</p>");
    return page(gyle, html.toString());
  }

  private static String aside(Gyle gyle) {
    if (gyle.practice().isPresent()) {
      return "<p class=\"invented\">This day is for practice: what is hidden in it is invented, so it never counts in the record.</p>";
    }
    return gyle.invented()
        ? "<p class=\"invented\">This gyle is invented, so it does not count in the record.</p>"
        : "";
  }

  private String table(DayJudged day, Function<String, String> point) {
    List<DayJudged.Row> rows =
        day.numbers().stream().filter(row -> !row.judged().isEmpty()).toList();
    if (rows.isEmpty()) {
      return "";
    }
    StringBuilder html = new StringBuilder(head("What was forecast and what came"));
    rows.forEach(row -> html.append(shortly(row, point)));
    html.append("</tbody></table></div>");
    html.append("<details><summary>Every forecast of the day</summary>")
        .append(head("Every forecast of the day"));
    rows.forEach(row -> row.judged().forEach(one -> html.append(line(row, one, point))));
    return html.append("</tbody></table></div></details>").toString();
  }

  private static String head(String label) {
    StringBuilder html = new StringBuilder(wide(label)).append("<th scope=\"col\">What</th>");
    for (String one : List.of("Given", "Nine times in ten", "Came", "Held", "Score")) {
      html.append("<th scope=\"col\">").append(one).append("</th>");
    }
    return html.append("</tr></thead><tbody>").toString();
  }

  private static String wide(String label) {
    return "<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"%s, table\"><table><thead><tr>"
        .formatted(label);
  }

  /// By the plan, and as it was foreseen last.
  private String shortly(DayJudged.Row row, Function<String, String> point) {
    StringBuilder html = new StringBuilder();
    row.byPlan().ifPresent(one -> html.append(line(row, one, point)));
    row.last().ifPresent(one -> html.append(line(row, one, point)));
    return html.toString();
  }

  private String line(DayJudged.Row row, Judged one, Function<String, String> point) {
    String key = row.key();
    String given =
        one.byPlan() ? "by the plan" : point.apply(one.after()) + ", " + Shown.clock(one.atSec());
    String by =
        one.came().by().isEmpty() ? "" : " <small>" + Html.escaped(one.came().by()) + "</small>";
    return "<tr><th scope=\"row\">%s</th><td>%s</td><td>%s</td><td>%s%s</td><td>%s</td><td>%s</td></tr>"
        .formatted(
            Html.escaped(Html.capital(ForecastWords.says(row.point(), key))),
            Html.escaped(given),
            Html.escaped(words.range(key, one.range())),
            Html.whole(words.value(key, one.came().value())),
            by,
            one.held() ? ForecastWords.held(one) : "<b>" + ForecastWords.held(one) + "</b>",
            Html.whole(words.score(one)));
  }

  private String unmeasured(DayJudged day) {
    List<String> items =
        day.numbers().stream()
            .filter(row -> row.came().isEmpty())
            .map(row -> ForecastWords.says(row.point(), row.key()))
            .toList();
    return Html.list(
        "Nobody ticked these off or measured them near their point, so they are not judged:",
        items);
  }

  /// All real days.
  ///
  /// @param leftOut days that do not count
  String all(HouseRecord record, int leftOut) {
    StringBuilder html =
        new StringBuilder("<p class=\"back\"><a href=\"/gyles\">All gyles</a></p>")
            .append("<h1>How good the forecasts were</h1>");
    if (record.byPlan().isEmpty() && record.last().isEmpty()) {
      html.append(
          "<p>No gyle of yours has been brewed since forecasts are kept, or nothing was ticked off and"
              + " read on its day. Tick off the points at the kettle, and read litres, warmth and"
              + " strength near them: then this page says how many ranges held.</p>");
    } else {
      html.append(
          "<p>%s. Ranges of one day hang together: one that runs late misses several. So whether as many held as should is said of each number by itself, where each gyle counts once.</p>"
              .formatted(record.gyles() == 1 ? "One gyle" : record.gyles() + " gyles"));
      html.append(
          part(
              "By the plan",
              "as it was fixed before the day",
              record.byPlan(),
              "Against what came last time on the same rig"));
      html.append(
          part(
              "On the day",
              "as it was given last, at a point of the day, before the thing came",
              record.last(),
              "Against the plan"));
    }
    if (leftOut > 0) {
      html.append(
          "<p>%s not counted: practice, or an invented gyle.</p>"
              .formatted(leftOut == 1 ? "One day is" : leftOut + " days are"));
    }
    return Html.page("How good the forecasts were", html.append(HOW).toString());
  }

  private String part(String heading, String when, List<HouseRecord.Line> lines, String against) {
    if (lines.isEmpty()) {
      return "";
    }
    int ranges = HouseRecord.ranges(lines);
    StringBuilder html =
        new StringBuilder(
            "<section><h2>%s</h2><p class=\"expect\">Of %d ranges that should hold nine times in ten, <b>%d held</b>: %s.</p>"
                .formatted(heading, ranges, HouseRecord.held(lines), when));
    html.append(wide(heading));
    for (String head :
        List.of("What", "Held", "Is that like nine in ten?", "Mean score", against)) {
      html.append("<th scope=\"col\">").append(head).append("</th>");
    }
    html.append("</tr></thead><tbody>");
    lines.forEach(line -> html.append(line(line)));
    return html.append("</tbody></table></div></section>").toString();
  }

  private String line(HouseRecord.Line line) {
    return "<tr><th scope=\"row\">%s</th><td>%d&nbsp;of&nbsp;%d</td><td>%s</td><td>%s</td><td>%s</td></tr>"
        .formatted(
            Html.escaped(Html.capital(ForecastWords.says(line.point(), line.key()))),
            line.held(),
            line.ranges(),
            Html.escaped(ForecastWords.verdict(line)),
            Html.whole(words.score(line.key(), line.cameMean(), line.score())),
            Html.escaped(ForecastWords.skill(line)));
  }
}
