package gylebook.web;

import gylebook.units.ReadingUnits;
import gylebook.web.Instruments.Arrival;
import gylebook.web.Instruments.Dial;
import gylebook.web.Instruments.Sight;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// The instruments: what each says now, and everything odd as what it is.
final class InstrumentPage {
  private InstrumentPage() {}

  /// The list, and the ways to tie one more.
  static String list(long seq, List<Dial> dials, ReadingUnits units) {
    StringBuilder html =
        new StringBuilder(
            "<p class=\"back\"><a href=\"/gyles\">All gyles</a></p><h1>Instruments</h1>");
    html.append(
        "<p>Gylebook listens to them and never writes to one: nothing here can switch anything."
            + "</p><p id=\"state\" role=\"status\"></p>");
    html.append("<div id=\"live\" data-live=\"/api/instruments\" data-seq=\"%d\">".formatted(seq))
        .append(dials(dials, units))
        .append("</div><section id=\"tie\"><h2>Tie another</h2><ul>");
    for (TieFields kind : TieFields.ALL) {
      html.append(
          "<li><a href=\"/instruments/tie/%s\">%s</a></li>"
              .formatted(kind.kind(), Html.escaped(kind.words())));
    }
    html.append(
            "</ul></section><section><h2>Practise</h2><p><a href=\"/rehearsal\">A rehearsal with")
        .append(" invented instruments</a></p></section>");
    return page("Instruments", html.toString());
  }

  static String dials(List<Dial> dials, ReadingUnits units) {
    if (dials.isEmpty()) {
      return "<p>None is tied yet. A brew day goes without: readings can be typed.</p>";
    }
    StringBuilder html = new StringBuilder();
    for (Dial dial : dials) {
      html.append(
              "<article class=\"dial\"><h2><a href=\"/instruments/%s\">%s</a></h2>"
                  .formatted(path(dial.name()), Html.escaped(dial.name())))
          .append(head(dial, units))
          .append("</article>");
    }
    return html.toString();
  }

  private static String head(Dial dial, ReadingUnits units) {
    String value =
        dial.value()
            .map(
                amount ->
                    "<b>%s</b> <span>%s</span>"
                        .formatted(
                            Html.escaped(units.shown(amount)), ago(dial.valueAgeSec().orElse(0))))
            .orElse("No value yet.");
    return "<p class=\"value\">%s</p><p>%s%s</p>%s%s%s"
        .formatted(
            value,
            Html.escaped(dial.place().isEmpty() ? "" : dial.place() + "; "),
            Html.escaped(dial.reach()),
            dial.up() ? "" : plate("Not on the line", dial.lineSays() + ". It is tried again."),
            dial.silentSec().isPresent()
                ? plate("Silent", "Nothing came for " + span(dial.silentSec().getAsLong()) + ".")
                : "",
            counts(dial));
  }

  /// A sign for what is wrong with an instrument; it differs by its words, not by its colour.
  private static String plate(String what, String says) {
    return "<div class=\"plate soon\"><p><strong>%s.</strong> %s</p></div>"
        .formatted(Html.escaped(what), Html.escaped(says));
  }

  private static String counts(Dial dial) {
    StringBuilder html = new StringBuilder("<p>" + dial.heardCount() + " heard");
    dial.counts()
        .forEach(one -> html.append("; %d %s".formatted(one.count(), Html.escaped(one.words()))));
    return html.append(".</p>").toString();
  }

  /// One instrument, with what arrives.
  static String one(long seq, Dial dial, ReadingUnits units) {
    String name = Html.escaped(dial.name());
    return page(
        dial.name(),
        "<p class=\"back\"><a href=\"/instruments\">All instruments</a></p><h1>"
            + name
            + "</h1><p id=\"state\" role=\"status\"></p><div id=\"live\""
            + " data-live=\"/api/instruments/%s\" data-seq=\"%d\">"
                .formatted(path(dial.name()), seq)
            + arrivals(dial, units)
            + "</div><p><button type=\"button\" id=\"loose\" data-name=\"%s\">".formatted(name)
            + "Listen to it no longer</button></p>");
  }

  static String arrivals(Dial dial, ReadingUnits units) {
    StringBuilder html = new StringBuilder(head(dial, units));
    html.append(
        "<h2>What arrives</h2><div class=\"wide\" tabindex=\"0\" role=\"group\""
            + " aria-label=\"What arrives as a table\"><table><thead><tr><th>When<th>Sent<th>Read as"
            + "<th>Remark</tr></thead><tbody>");
    for (Arrival one : dial.recent()) {
      html.append(
          "<tr><td>%s<td><code>%s</code><td>%s<td>%s</tr>"
              .formatted(
                  ago(one.agoSec()),
                  Html.escaped(one.sent()),
                  one.value().map(amount -> Html.escaped(units.shown(amount))).orElse("nothing"),
                  Html.escaped(String.join("; ", one.remarks()))));
    }
    return html.append("</tbody></table></div>").toString();
  }

  /// What is seen at a place: groups beside one another as rows of a table, else a list.
  static String sights(String lineSays, List<Sight> sights) {
    StringBuilder html = new StringBuilder();
    if (!lineSays.isEmpty()) {
      html.append(plate("Nobody answers yet", lineSays + "."));
    } else if (sights.isEmpty()) {
      html.append("<p>Nothing has come yet.</p>");
    }
    Map<String, StringBuilder> groups = new LinkedHashMap<>();
    for (Sight sight : sights) {
      groups.computeIfAbsent(sight.group(), _ -> new StringBuilder()).append(sight(sight));
    }
    groups.forEach(
        (group, items) ->
            html.append(group.isEmpty() ? "" : "<h2>" + Html.escaped(group) + "</h2>")
                .append("<ul class=\"sights\">")
                .append(items)
                .append("</ul>"));
    return html.toString();
  }

  private static String sight(Sight sight) {
    String words =
        "%s%s%s"
            .formatted(
                sight.where().isEmpty() ? "" : "<b>" + Html.escaped(sight.where()) + "</b> ",
                Html.escaped(sight.says()),
                sight.fits() ? " <strong>this is what it shows</strong>" : "");
    String fill = Html.escaped(Said.JSON.writeValueAsString(sight.fill()));
    return sight.fill().isEmpty()
        ? "<li><code>" + words + "</code></li>"
        : "<li><button type=\"button\" class=\"sight\" data-fill=\"%s\">%s</button></li>"
            .formatted(fill, words);
  }

  static String page(String title, String body) {
    return Html.page(title, body + "<script type=\"module\" src=\"/instruments.js\"></script>");
  }

  private static String ago(long agoSec) {
    return span(agoSec) + " ago";
  }

  private static String span(long spanSec) {
    Duration span = Duration.ofSeconds(spanSec);
    if (span.toHours() > 0) {
      return span.toHours() + " h " + span.toMinutesPart() + " min";
    }
    return span.toMinutes() > 0 ? span.toMinutes() + " min" : spanSec + " s";
  }

  /// A name as a part of an address.
  private static String path(String name) {
    return java.net.URLEncoder.encode(name, java.nio.charset.StandardCharsets.UTF_8)
        .replace("+", "%20");
  }
}
