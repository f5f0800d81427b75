package gylebook.web;

import static gylebook.web.Html.escaped;

import gylebook.reckon.Amount;
import gylebook.reckon.Asked;
import gylebook.reckon.Calculation;
import gylebook.reckon.Input;
import gylebook.reckon.Opinion;
import gylebook.reckon.Origin;
import gylebook.reckon.Reckoner;
import gylebook.reckon.Reckoning;
import gylebook.reckon.Search;
import gylebook.reckon.SecondMethods;
import gylebook.reckon.Taken;
import gylebook.units.ReadingUnits;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/// The Reckoner: a line to ask in, the answer with its why, and every input as a field.
final class ReckonPage {
  private static final List<String> EXAMPLES =
      List.of(
          "boiling point at 1200 m",
          "ABV 1.064 1.012",
          "carbonate 2.4 at 4 C",
          "strike 4.4 kg 66 C 15 L",
          "ibu 30 g 5.5 % 20 L 60 min",
          "hydrometer 1.045 at 30 C",
          "prime 19 L 2.4 vol 20 C",
          "heat 30 L from 15 C to 68 C with 2500 W");

  private final String line;
  private final ReadingUnits units;
  private final StringBuilder html = new StringBuilder();

  ReckonPage(String line, ReadingUnits units) {
    this.line = line;
    this.units = units;
    html.append(back()).append("<h1>Reckoner</h1>");
    ask();
  }

  static String back() {
    return "<nav aria-label=\"Reckoner\"><a href=\"/gyles\">All gyles</a>"
        + " <a href=\"/reckon\">Reckoner</a>"
        + " <a href=\"/reckon/all\">Every calculation</a> <a href=\"/science\">The science</a></nav>";
  }

  private void ask() {
    html.append("<form method=\"get\" action=\"/reckon\" role=\"search\" class=\"ask\">")
        .append("<label for=\"q\">Ask in plain words, with your numbers</label>")
        .append("<span class=\"row\"><input id=\"q\" name=\"q\" type=\"search\" maxlength=\"300\"")
        .append(" autocomplete=\"off\" spellcheck=\"false\" value=\"")
        .append(escaped(line))
        .append("\"> <button>Reckon</button></span></form>");
  }

  /// Nothing was asked yet.
  String empty() {
    html.append("<p>For example:</p><ul class=\"examples\">");
    for (String example : EXAMPLES) {
      html.append("<li>").append(link(example, example)).append("</li>");
    }
    return html.append("</ul>").toString();
  }

  private static String link(String query, String shown) {
    return "<a href=\"/reckon?q=%s\">%s</a>"
        .formatted(URLEncoder.encode(query, StandardCharsets.UTF_8), escaped(shown));
  }

  /// The line was not understood, or not alone.
  String unclear(Asked.Unclear unclear) {
    html.append("<section id=\"answer\"><p class=\"unclear\" role=\"status\">")
        .append(escaped(unclear.sentence()))
        .append("</p>");
    choices("These are near:", unclear.near());
    return html.append("</section><p><a href=\"/reckon/all\">Every calculation</a></p>").toString();
  }

  private void choices(String says, List<Calculation> near) {
    if (near.isEmpty()) {
      return;
    }
    html.append("<p>").append(says).append("</p><ul>");
    for (Calculation each : near) {
      html.append(
          "<li><a href=\"/reckon/%s\">%s</a> %s</li>"
              .formatted(each.name(), each.name(), escaped(each.says())));
    }
    html.append("</ul>");
  }

  /// A calculation that was found: its answer if it can be given, else what is missing.
  String meant(Asked.Meant meant) {
    Calculation calculation = meant.calculation();
    html.append("<section id=\"answer\"><h2>").append(escaped(calculation.says())).append("</h2>");
    if (meant.missing().isEmpty()) {
      switch (calculation.reckon(meant.typed(), units)) {
        case Reckoning.Unanswered refused -> status(refused.sentence());
        case Reckoning.Answer answer -> answered(meant, answer);
      }
    } else {
      status(meant.missing());
      taken(meant);
    }
    meant.remarks().forEach(this::note);
    form(meant);
    html.append("</section>");
    others(meant);
    why(calculation);
    return html.toString();
  }

  /// A calculation that was only looked up.
  String explained(Asked.Meant meant) {
    Calculation calculation = meant.calculation();
    html.append("<section id=\"answer\"><h2>").append(escaped(calculation.says())).append("</h2>");
    form(meant);
    html.append("</section>");
    why(calculation);
    return html.toString();
  }

  private void status(String sentence) {
    html.append("<p class=\"unclear\" role=\"status\">").append(escaped(sentence)).append("</p>");
  }

  private void note(String sentence) {
    html.append("<p class=\"caution\">").append(escaped(sentence)).append("</p>");
  }

  private void answered(Asked.Meant meant, Reckoning.Answer answer) {
    html.append("<div role=\"status\">");
    for (Reckoning.Line result : answer.lines(meant.calculation())) {
      html.append("<p class=\"figure\"><b>").append(escaped(result.amount().shown()));
      html.append("</b> <span>").append(escaped(result.name()));
      result
          .giveOrTake()
          .ifPresent(doubt -> html.append(", give or take ").append(escaped(doubt.shown())));
      html.append("</span></p>");
    }
    answer.remarks().forEach(this::note);
    html.append("</div>");
    answer.cautions().forEach(caution -> note("Caution: " + caution));
    opinions(SecondMethods.beside(meant.calculation(), meant.typed(), answer, units));
    taken(meant);
    usual(meant, answer);
  }

  /// Which amount was taken for what: nothing is guessed in silence.
  private void taken(Asked.Meant meant) {
    if (meant.taken().isEmpty()) {
      return;
    }
    html.append("<p>Taken from what you typed: ")
        .append(meant.taken().stream().map(ReckonPage::said).collect(Collectors.joining("; ")))
        .append(".</p>");
  }

  private static String said(Taken taken) {
    String how = taken.how().isEmpty() ? "" : " (" + taken.how() + ")";
    return "<b>%s</b> %s%s"
        .formatted(escaped(taken.input().words()), escaped(taken.value()), escaped(how));
  }

  private void usual(Asked.Meant meant, Reckoning.Answer answer) {
    List<String> held = meant.taken().stream().map(taken -> taken.input().key()).toList();
    String usual =
        answer.inputs().stream()
            .filter(amount -> !held.contains(amount.name()))
            .map(amount -> named(meant.calculation(), amount))
            .collect(Collectors.joining("; "));
    if (!usual.isEmpty()) {
      html.append("<p>Usual values, because nothing else was said: ").append(usual).append(".</p>");
    }
  }

  private static String named(Calculation calculation, Amount amount) {
    String words =
        calculation.inputs().stream()
            .filter(input -> input.key().equals(amount.name()))
            .map(Input::words)
            .findFirst()
            .orElse(amount.name());
    return "<b>%s</b> %s".formatted(escaped(words), escaped(amount.shown()));
  }

  /// The spread between respected methods.
  private void opinions(List<Opinion> opinions) {
    if (opinions.isEmpty()) {
      return;
    }
    html.append("<h3>Other methods say</h3><div class=\"wide\" tabindex=\"0\" role=\"group\"")
        .append(" aria-label=\"Other methods\"><table><thead><tr><th scope=\"col\">What")
        .append("<th scope=\"col\">Here<th scope=\"col\">There<th scope=\"col\">By</tr></thead>")
        .append("<tbody>");
    for (Opinion opinion : opinions) {
      html.append(
          "<tr><td>%s<td>%s<td>%s<td><a href=\"/reckon/%s\">%s</a></tr>"
              .formatted(
                  escaped(opinion.question()),
                  escaped(opinion.own().shown()),
                  escaped(opinion.amount().shown()),
                  opinion.calculation().name(),
                  opinion.calculation().name()));
    }
    html.append("</tbody></table></div><p>The spread is doubt that no single equation shows.</p>");
  }

  private void form(Asked.Meant meant) {
    Calculation calculation = meant.calculation();
    if (calculation.inputs().isEmpty()) {
      html.append(
          "<p><a href=\"/reckon/%s?now=yes\">Show it</a></p>".formatted(calculation.name()));
      return;
    }
    html.append(
        "<form method=\"get\" action=\"/reckon/%s\" class=\"inputs\">"
            .formatted(calculation.name()));
    calculation.inputs().forEach(input -> field(meant, input));
    html.append("<p><button>Reckon with these</button></p></form>");
  }

  private void field(Asked.Meant meant, Input input) {
    Optional<String> typed =
        meant.taken().stream()
            .filter(taken -> taken.input().equals(input))
            .map(Taken::value)
            .findFirst();
    String usual = input.usualTyped(units);
    String unit = input.unit().isEmpty() ? "" : " (" + input.unit() + ")";
    String hint = usual.isEmpty() ? "" : " <small>usually " + escaped(usual) + "</small>";
    boolean needed = usual.isEmpty();
    html.append(
        "<p><label for=\"in-%s\">%s%s%s</label> <input id=\"in-%s\" name=\"%s\" value=\"%s\"%s></p>"
            .formatted(
                input.key(),
                escaped(input.words()),
                escaped(unit),
                hint,
                input.key(),
                input.key(),
                escaped(typed.orElse(usual)),
                needed ? " required" : ""));
  }

  private void others(Asked.Meant meant) {
    if (meant.others().isEmpty()) {
      return;
    }
    String amounts = meant.taken().stream().map(Taken::typed).collect(Collectors.joining(" "));
    html.append("<section><h2>Or did you mean</h2><ul>");
    for (Calculation other : meant.others()) {
      html.append("<li>")
          .append(link((other.name() + " " + amounts).strip(), other.name()))
          .append(" ")
          .append(escaped(other.says()))
          .append("</li>");
    }
    html.append("</ul></section>");
  }

  private void why(Calculation calculation) {
    html.append("<section id=\"why\"><h2>Why</h2><p><code>")
        .append(escaped(calculation.equation()))
        .append("</code></p><p>Holds: ")
        .append(escaped(calculation.range()))
        .append(".</p><ul>");
    for (Origin source : calculation.sources()) {
      html.append(
          "<li>Source: <a href=\"/science/sources#%s\">%s</a>%s (%s)</li>"
              .formatted(
                  escaped(source.key()),
                  escaped(source.key()),
                  source.at().isEmpty() ? "" : ", " + escaped(source.at()),
                  escaped(source.trust())));
    }
    html.append("</ul>");
    ScienceText.text()
        .pageOf(calculation.name())
        .ifPresent(
            page ->
                html.append(
                    "<p>In words: <a href=\"/science/%s\">%s</a></p>"
                        .formatted(page, escaped(ScienceText.text().title(page)))));
    html.append("</section>");
  }

  /// Every calculation, by the phenomenon it belongs to.
  static String all() {
    StringBuilder html = new StringBuilder(back() + "<h1>Every calculation</h1>");
    for (Map.Entry<String, String> page : ScienceText.text().titles().entrySet()) {
      html.append(
          "<h2><a href=\"/science/%s\">%s</a></h2><ul>"
              .formatted(page.getKey(), escaped(page.getValue())));
      for (String name : ScienceText.text().calculations(page.getKey())) {
        if (Reckoner.find(name) instanceof Search.Hit(Calculation calculation)) {
          html.append(
              "<li><a href=\"/reckon/%s\">%s</a> %s</li>"
                  .formatted(name, name, escaped(calculation.says())));
        }
      }
      html.append("</ul>");
    }
    return html.toString();
  }

  /// The pages of the science.
  static String science() {
    StringBuilder html = new StringBuilder(back() + "<h1>The science</h1><ul>");
    ScienceText.text()
        .titles()
        .forEach(
            (page, title) ->
                html.append(
                    "<li><a href=\"/science/%s\">%s</a></li>".formatted(page, escaped(title))));
    return html.append("</ul><p><a href=\"/science/sources\">Sources</a></p>").toString();
  }
}
