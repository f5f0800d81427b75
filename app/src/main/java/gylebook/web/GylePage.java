package gylebook.web;

import gylebook.brewday.Book;
import gylebook.brewday.Gyle;
import gylebook.rig.Newcomer;
import gylebook.rig.Rig;
import gylebook.telling.NewcomerWords;
import gylebook.telling.RecipeWords;
import gylebook.telling.RigWords;
import gylebook.telling.Section;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The page of one gyle: its sentences are the form; the forecast is fetched beside them.
final class GylePage {
  private static final List<List<String>> PARTS =
      List.of(
          List.of("words", "In words"),
          List.of("weigh", "To weigh"),
          List.of("todo", "To do"),
          List.of("day", "Day chart"),
          List.of("guards", "What could go wrong"),
          List.of("why", "Why"),
          List.of("rig", "The rig"));

  private static final String ELSEWHERE =
      "<a href=\"/instruments\">Instruments</a>"
          + " <a href=\"/reckon\">Reckoner: one number, with its why</a>"
          + " <a href=\"/rehearsal\">Rehearsal: a brew day for practice</a>"
          + " <a href=\"/record\">Record: how good the forecasts were</a>"
          + " <a href=\"/screens\">Other screens</a>";

  private GylePage() {}

  static String list(Book book, Papers papers) {
    StringBuilder html = new StringBuilder("<h1>Gylebook</h1><ul class=\"gyles\">");
    List<Gyle> practised = new ArrayList<>();
    for (Gyle gyle : book.gyles()) {
      if (gyle.practice().isPresent()) {
        practised.add(gyle);
      } else {
        html.append(line(gyle, papers, gyle.invented() ? " <small>invented</small>" : ""));
      }
    }
    html.append("</ul>").append(practised(practised, papers));
    html.append("<p>").append(ELSEWHERE).append("</p>");
    html.append(bringing(book));
    return Html.page("Gylebook", html.toString());
  }

  private static String line(Gyle gyle, Papers papers, String mark) {
    return "<li><a href=\"/gyles/%s\">%s</a>, on %s%s<br>%s</li>"
        .formatted(
            Html.escaped(gyle.gyleId()),
            Html.escaped(gyle.name()),
            Html.escaped(papers.rig(gyle.rig().document()).name()),
            mark,
            Html.escaped(papers.recipe(gyle.recipe().document()).wanted()));
  }

  /// Days for practice, newest first, folded away: nothing is ever taken out of the book.
  private static String practised(List<Gyle> days, Papers papers) {
    if (days.isEmpty()) {
      return "";
    }
    StringBuilder html =
        new StringBuilder("<details class=\"practised\"><summary>Days for practice (")
            .append(days.size())
            .append(")</summary><ul>");
    days.reversed().forEach(gyle -> html.append(line(gyle, papers, "")));
    return html.append("</ul></details>").toString();
  }

  /// How a new gyle begins: from a file of a recipe, or from a gyle that is there.
  private static String bringing(Book book) {
    StringBuilder rigs = new StringBuilder();
    for (Gyle gyle : book.gyles()) {
      if (gyle.practice().isEmpty()) {
        rigs.append(
            "<option value=\"%s\">the rig of %s</option>"
                .formatted(Html.escaped(gyle.gyleId()), Html.escaped(gyle.name())));
      }
    }
    return "<section id=\"bring\"><h2>A new gyle</h2>"
        + "<p>Bring a recipe file: Gylebook's own, or one of the two open recipe standards."
        + " You see what was understood, guessed or lost before anything is kept.</p>"
        + "<p><label>Recipe file <input type=\"file\" id=\"recipe-file\"></label>"
        + " <label>brewed on <select id=\"rig-of\">"
        + rigs
        + "</select></label></p><div id=\"preview\" role=\"status\"></div></section>";
  }

  static String gyle(Book book, Gyle gyle, Papers papers) {
    StringBuilder html =
        new StringBuilder("<p class=\"back\"><a href=\"/gyles\">All gyles</a></p>");
    html.append("<h1>").append(Html.escaped(gyle.name())).append("</h1>");
    if (gyle.invented()) {
      html.append(
          "<p class=\"invented\">Recipe and rig are invented, to look round with. Change what you"
              + " like: every value below can be pressed, and every change can be undone.</p>");
    }
    if (gyle.practice().isPresent()) {
      html.append("<p class=\"invented\">This page is for practice: its day is a rehearsal.</p>");
    }
    html.append("<nav aria-label=\"On this page\">");
    for (List<String> part : PARTS) {
      html.append("<a href=\"#%s\">%s</a> ".formatted(part.getFirst(), part.getLast()));
    }
    html.append("</nav><div id=\"gyle\" data-gyle=\"%s\">".formatted(Html.escaped(gyle.gyleId())))
        .append("<p class=\"expect\" id=\"expect\"></p><p id=\"state\" role=\"status\"></p>")
        .append("<progress id=\"progress\" max=\"100\" value=\"0\" aria-label=\"Forecast\" hidden>")
        .append("</progress><div id=\"papers\">")
        .append(words(book, gyle, papers))
        .append("</div>");
    html.append(
        "<noscript><p><a href=\"/gyles/%s/forecast\">Show the forecast</a></p></noscript>"
            .formatted(Html.escaped(gyle.gyleId())));
    html.append("<div id=\"forecast\"></div><div id=\"rig-papers\">")
        .append(rig(book, gyle, papers))
        .append("</div>")
        .append(describing(book.units()))
        .append("</div>")
        .append(carrying(gyle))
        .append(reading(book.units()))
        .append("<p>")
        .append(ELSEWHERE)
        .append("</p>");
    return Html.page(gyle.name(), html.toString());
  }

  /// What an answer brings back after a change: both papers as they are now.
  static Map<String, Object> changed(Book book, String gyleId, Papers papers) {
    return changed(book, gyleId, Optional.empty(), papers);
  }

  /// What an answer brings back to somebody who saw how the gyle stood: what is other now.
  static Map<String, Object> changed(
      Book book, String gyleId, Optional<Gyle> stood, Papers papers) {
    Optional<Gyle> found = book.gyle(gyleId);
    if (found.isEmpty()) {
      return Map.of();
    }
    Gyle gyle = found.get();
    Map<String, Object> other = new HashMap<>();
    other.put("seq", gyle.lastSeq());
    // Its words carry the entry they stand at, so they always come.
    other.put("papers", words(book, gyle, papers));
    if (!stood.map(Gyle::rig).equals(Optional.of(gyle.rig()))) {
      other.put("rig", rig(book, gyle, papers));
    }
    return other;
  }

  private static String words(Book book, Gyle gyle, Papers papers) {
    List<Section> sections = RecipeWords.of(papers.recipe(gyle.recipe().document()), book.units());
    String undo =
        gyle.undoable()
            .map(
                last ->
                    "<button type=\"button\" id=\"undo\">Undo: %s</button>"
                        .formatted(Html.escaped(last.because())))
            .orElse("");
    return "<section id=\"words\" data-seq=\""
        + gyle.lastSeq()
        + "\"><h2>In words</h2>"
        + sentences(gyle, sections.subList(0, sections.size() - 1))
        + "<details><summary>What sacks and packets say, and notes</summary>"
        + Html.form("recipe", sections.subList(sections.size() - 1, sections.size()))
        + "</details><p>"
        + undo
        + "</p></section>";
  }

  /// The way to the amounts for another liquor stands under the sentences of this one.
  private static String sentences(Gyle gyle, List<Section> sections) {
    StringBuilder html = new StringBuilder();
    for (Section section : sections) {
      html.append(Html.form("recipe", List.of(section)));
      if (section.heading().equals(RecipeWords.LIQUOR)) {
        html.append(
            "<p><a href=\"/gyles/%s/liquor\">Find salts and acid for a wanted liquor</a></p>"
                .formatted(Html.escaped(gyle.gyleId())));
      }
    }
    return html.toString();
  }

  private static String rig(Book book, Gyle gyle, Papers papers) {
    Rig rig = papers.rig(gyle.rig().document());
    return "<section id=\"rig\"><h2>The rig: "
        + Html.escaped(rig.name())
        + "</h2><details><summary>The rig in words: type over a number when you have measured it"
        + "</summary>"
        + Html.form("rig", RigWords.of(rig, book.units()))
        + "</details></section>";
  }

  /// The questions to somebody whose rig is not known yet.
  private static String describing(ReadingUnits units) {
    Newcomer usual = Newcomer.usual();
    return "<section id=\"describe\"><h2>Your own rig</h2><details><summary>Describe it in two"
        + " minutes</summary><p>Say what you know. Everything else starts as an assumption with an"
        + " honest doubt; what would pay most to measure is listed with the forecast.</p>"
        + "<div id=\"newcomer\" data-answers=\""
        + Html.escaped(Said.JSON.writeValueAsString(usual))
        + "\">"
        + newcomer(usual, units)
        + "</div><p><button type=\"button\" id=\"use-rig\">Use this rig for this gyle</button></p>"
        + "</details></section>";
  }

  /// A newcomer's answers in their sentences.
  static String newcomer(Newcomer newcomer, ReadingUnits units) {
    return Html.form("newcomer", NewcomerWords.of(newcomer, units));
  }

  private static String carrying(Gyle gyle) {
    String at = "/gyles/" + Html.escaped(gyle.gyleId());
    String fixed =
        gyle.plan().isPresent() ? "<a href=\"%s/plan\">The plan of the day</a> ".formatted(at) : "";
    return "<section id=\"carry\"><h2>To carry away</h2><p>"
        + "<button type=\"button\" id=\"fix\">Make this the plan of the day</button> "
        + "<a href=\"/gyles/"
        + Html.escaped(gyle.gyleId())
        + "/kettle\">At the kettle</a> "
        + fixed
        + (gyle.started().isPresent()
            ? ("<a href=\"%s/forecasts\">What was forecast and what came</a> "
                    + "<a href=\"%s/learnt\">Looking back: what the day says of the rig</a> ")
                .formatted(at, at)
            : "")
        + "<a href=\"%s/sheet\">Wall sheet to print</a> ".formatted(at)
        + "<a href=\"%s/recipe.json\">Recipe, own file</a> ".formatted(at)
        + "<a href=\"%s/standard\">Recipe by the open standard</a> ".formatted(at)
        + "<a href=\"%s/rig.json\">Rig, own file</a></p>".formatted(at)
        + "<p><label>Bring a rig file <input type=\"file\" id=\"rig-file\"></label></p></section>";
  }

  private static String reading(ReadingUnits units) {
    StringBuilder html =
        new StringBuilder(
            "<section id=\"units\"><h2>How it is read</h2><p>Read everything in"
                + " <button type=\"button\" data-set=\"metric\">metric</button>"
                + " <button type=\"button\" data-set=\"us\">US</button>"
                + " <button type=\"button\" data-set=\"imperial\">imperial</button> units, or each"
                + " quantity by itself:</p><p class=\"choices\">");
    for (Quantity quantity : Quantity.values()) {
      if (quantity.units().size() < 2) {
        continue;
      }
      html.append(
          "<label>%s <select data-quantity=\"%s\">"
              .formatted(Html.escaped(quantity.words()), quantity.name()));
      for (Unit unit : quantity.units()) {
        html.append(
            "<option%s value=\"%s\">%s</option>"
                .formatted(
                    unit.equals(units.unit(quantity)) ? " selected" : "",
                    Html.escaped(unit.symbol()),
                    Html.escaped(unit.symbol())));
      }
      html.append("</select></label> ");
    }
    return html.append(
            "</p><p><label>Look <select id=\"look\"><option value=\"\">as the system has it</option>"
                + "<option value=\"light\">light</option><option value=\"dark\">dark</option>"
                + "<option value=\"bright\">bright sun</option></select></label>"
                + " <button type=\"button\" id=\"keys\">Keys</button></p></section>")
        .toString();
  }
}
