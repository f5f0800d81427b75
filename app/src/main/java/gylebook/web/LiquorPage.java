package gylebook.web;

import static gylebook.web.Html.escaped;

import gylebook.brewday.Gyle;
import gylebook.recipe.Liquor;
import gylebook.telling.Filled;
import gylebook.telling.LiquorAnswer;
import gylebook.telling.LiquorWish;
import java.util.List;

/// Asks which liquor is wanted and what is in the house, and shows which amounts make it.
final class LiquorPage {
  private final Gyle gyle;
  private final LiquorForm form;
  private final StringBuilder html = new StringBuilder();

  LiquorPage(Gyle gyle, LiquorForm form) {
    this.gyle = gyle;
    this.form = form;
    String back = "/gyles/" + escaped(gyle.gyleId());
    html.append("<p class=\"back\"><a href=\"")
        .append(back)
        .append("\">Back to ")
        .append(escaped(gyle.name()))
        .append(
            "</a></p><h1>Salts and acid for a wanted liquor</h1><div id=\"liquor\" data-gyle=\"")
        .append(escaped(gyle.gyleId()))
        .append("\" data-seq=\"")
        .append(gyle.lastSeq())
        .append("\"><p id=\"state\" role=\"status\"></p>");
  }

  /// The form alone.
  ///
  /// @param now what the liquor holds now, in the order of what can be wanted
  String asked(List<String> now) {
    form(now);
    return whole();
  }

  /// Something in the form is unclear.
  String unclear(Filled.Unclear<LiquorWish> unclear, List<String> now) {
    html.append("<p class=\"unclear\" role=\"alert\">")
        .append(escaped(unclear.what() + " " + unclear.maybe()))
        .append("</p>");
    form(now);
    return whole();
  }

  /// Nothing can be reckoned before the beer can be brewed.
  String impossible(String says) {
    html.append("<p class=\"unclear\" role=\"status\">").append(escaped(says)).append("</p>");
    return whole();
  }

  /// What was found, and the form under it to ask again.
  String found(LiquorAnswer answer, List<String> now) {
    html.append("<section id=\"found\"><h2>What to add</h2>");
    answer.sentences().forEach(this::paragraph);
    if (answer.missed().isEmpty()) {
      paragraph("That reaches all that is wanted, within 10 mg/L and 0.05 of the pH.");
    }
    answer.missed().forEach(this::paragraph);
    if (!answer.caution().isEmpty()) {
      html.append("<p class=\"caution\">").append(escaped(answer.caution())).append("</p>");
    }
    table(answer);
    html.append("<p><button type=\"button\" id=\"take-liquor\" data-ask=\"")
        .append(escaped(Said.JSON.writeValueAsString(form.fields())))
        .append("\">Take these amounts into the recipe</button></p><p>They take the place of the")
        .append(" salts and acids that stand in it now; on the gyle's page that can be undone.</p>")
        .append("</section>");
    form(now);
    return whole();
  }

  private String whole() {
    return Html.page(gyle.name() + ": liquor", html.append("</div>").toString());
  }

  private void paragraph(String says) {
    html.append("<p>").append(escaped(says)).append("</p>");
  }

  /// Without liquor that is held back, all of it is in the mash: a column less on a narrow screen.
  private void table(LiquorAnswer answer) {
    boolean held =
        answer.rows().stream()
            .anyMatch(row -> !row.whole().isEmpty() && !row.whole().equals(row.mash()));
    html.append("<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"The liquor as a")
        .append(" table\"><table><thead><tr>");
    head("What", "wanted", "in the mash");
    if (held) {
      head("in all liquor");
    }
    head("before");
    html.append("</tr></thead><tbody>");
    for (LiquorAnswer.Row row : answer.rows()) {
      html.append(
          "<tr><th scope=\"row\">%s</th><td>%s</td><td>%s</td>%s<td>%s</td></tr>"
              .formatted(
                  escaped(row.says()),
                  Html.whole(row.wanted()),
                  Html.whole(row.mash()),
                  held ? "<td>" + Html.whole(row.whole()) + "</td>" : "",
                  Html.whole(row.before())));
    }
    html.append("</tbody></table></div>");
  }

  private void head(String... columns) {
    for (String column : columns) {
      html.append("<th scope=\"col\">").append(column).append("</th>");
    }
  }

  private void form(List<String> now) {
    html.append("<form method=\"get\" class=\"asked\" id=\"liquor-form\"><h2>What is wanted</h2>")
        .append("<p>Of the mash liquor, salts in. What you leave empty does not matter.</p>");
    for (LiquorWish.Line line : LiquorWish.Line.values()) {
      String says = Html.capital(line.words()) + " (now " + now.get(line.ordinal()) + ")";
      field(LiquorForm.name(line), says, form.lines().getOrDefault(line, ""));
    }
    html.append("<h2>What is in the house</h2><fieldset><legend>Salts</legend>");
    for (Liquor.Agent agent : LiquorForm.solids()) {
      html.append(
          "<label class=\"tick\"><input type=\"checkbox\" name=\"%s\" value=\"yes\"%s> %s</label>"
              .formatted(
                  LiquorForm.name(agent),
                  form.house().contains(agent) ? " checked" : "",
                  escaped(agent.words())));
    }
    html.append("</fieldset>");
    for (Liquor.Agent acid : LiquorForm.ACIDS) {
      String says = Html.capital(acid.words()) + ": the strength on its label (empty: none there)";
      field(LiquorForm.name(acid), says, form.acids().getOrDefault(acid, ""));
    }
    field("scale", "The scale shows steps of", form.scale());
    field("measure", "Acid is measured in steps of", form.measure());
    html.append("<p><button>Find the amounts</button></p></form>");
  }

  private void field(String name, String says, String typed) {
    html.append(
        "<label>%s <input name=\"%s\" value=\"%s\" maxlength=\"40\" autocomplete=\"off\"></label>"
            .formatted(escaped(says), name, escaped(typed)));
  }
}
