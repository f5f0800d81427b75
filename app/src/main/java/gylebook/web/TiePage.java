package gylebook.web;

import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;

/// The form that ties an instrument, and what is seen at the place while it is filled in.
final class TiePage {
  /// What instruments of a brewery measure; the other quantities would only make the list long.
  private static final List<Quantity> MEASURED =
      List.of(
          Quantity.TEMPERATURE,
          Quantity.GRAVITY,
          Quantity.VOLUME,
          Quantity.FLOW,
          Quantity.LENGTH,
          Quantity.SHARE,
          Quantity.PRESSURE,
          Quantity.POWER,
          Quantity.CURRENT,
          Quantity.VOLTAGE,
          Quantity.MASS,
          Quantity.PH);

  private TiePage() {}

  static String html(TieFields kind, long seq, List<String> boards) {
    StringBuilder html =
        new StringBuilder("<p class=\"back\"><a href=\"/instruments\">All instruments</a></p>");
    html.append(
            "<h1>Tie an instrument</h1><p>%s. %s</p>"
                .formatted(Html.escaped(kind.words()), Html.escaped(kind.says())))
        .append("<p id=\"state\" role=\"status\"></p><form id=\"tie-form\" class=\"asked\"")
        .append(
            " data-seq=\"%d\"><input type=\"hidden\" name=\"kind\" value=\"%s\">"
                .formatted(seq, kind.kind()))
        .append(input(TieFields.Field.needed("name", "What you call it", "suction probe")))
        .append(input(TieFields.Field.maybe("place", "Where it sits", "at the pump's suction")))
        .append(measures());
    kind.fields().forEach(field -> html.append(input(field)));
    if (kind.kind().equals("post") && !boards.isEmpty()) {
      html.append(boards(boards));
    }
    html.append("<p>");
    if (kind.canLook()) {
      html.append("<button type=\"button\" id=\"look-there\">Look what is there</button> ");
    }
    html.append("<button type=\"submit\">Tie it</button></p></form>")
        .append("<div id=\"sights\" role=\"group\" aria-label=\"What is there\"></div>");
    return InstrumentPage.page("Tie an instrument", html.toString());
  }

  private static String measures() {
    StringBuilder html = new StringBuilder("<label>It measures <select name=\"measures\">");
    for (Quantity quantity : MEASURED) {
      for (Unit unit : quantity.units()) {
        html.append(
            "<option value=\"%s %s\">%s, in %s</option>"
                .formatted(
                    quantity.name(),
                    Html.escaped(unit.symbol()),
                    Html.escaped(quantity.words()),
                    Html.escaped(unit.symbol().isEmpty() ? "plain numbers" : unit.symbol())));
      }
    }
    return html.append("</select></label>").toString();
  }

  private static String boards(List<String> boards) {
    StringBuilder html =
        new StringBuilder(
            "<label>Its token <select name=\"board\"><option value=\"\">a new one</option>");
    for (String board : boards) {
      html.append(
          "<option value=\"%s\">the same as %s, which is on the same board</option>"
              .formatted(Html.escaped(board), Html.escaped(board)));
    }
    return html.append("</select></label>").toString();
  }

  private static String input(TieFields.Field field) {
    if (!field.choices().isEmpty()) {
      StringBuilder html =
          new StringBuilder(
              "<label>%s <select name=\"%s\">"
                  .formatted(Html.escaped(field.label()), field.name()));
      for (String choice : field.choices()) {
        String[] parts = choice.split("\\|", 2);
        html.append("<option value=\"%s\">%s</option>".formatted(parts[0], Html.escaped(parts[1])));
      }
      return html.append("</select></label>").toString();
    }
    return "<label>%s <input name=\"%s\" type=\"%s\" value=\"%s\" placeholder=\"%s\"%s autocomplete=\"off\" spellcheck=\"false\"></label>"
        .formatted(
            Html.escaped(field.label()),
            field.name(),
            field.secret() ? "password" : "text",
            Html.escaped(field.usual()),
            Html.escaped(field.like()),
            field.needed() ? " aria-required=\"true\"" : "");
  }
}
