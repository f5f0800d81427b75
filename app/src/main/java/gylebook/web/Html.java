package gylebook.web;

import gylebook.telling.Piece;
import gylebook.telling.Section;
import gylebook.telling.Sentence;
import java.util.List;

/// Pieces of HTML that every page is made of. Whatever a person typed goes through [#escaped].
final class Html {
  private Html() {}

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  /// An amount whose number and unit stay on one line.
  static String whole(String amount) {
    return escaped(amount).replace(" ", "&nbsp;");
  }

  /// A whole page.
  static String page(String title, String body) {
    return "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\">"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">"
        + "<title>"
        + escaped(title)
        + "</title><link rel=\"icon\" href=\"/icon.svg\" type=\"image/svg+xml\"><link rel=\"stylesheet\" href=\"/page.css\">"
        + "<script type=\"module\" src=\"/page.js\"></script>"
        + "</head><body><a class=\"skip\" href=\"#main\">To the page</a><main id=\"main\">"
        + body
        + "</main></body></html>";
  }

  /// Sections as sentences in which every value is a control.
  static String form(String of, List<Section> sections) {
    StringBuilder html = new StringBuilder();
    for (Section section : sections) {
      html.append("<div class=\"said\"><h3>").append(escaped(section.heading())).append("</h3><p>");
      for (Sentence sentence : section.sentences()) {
        html.append("<span class=\"sentence\">");
        sentence.pieces().forEach(piece -> html.append(piece(of, piece)));
        html.append("</span> ");
      }
      html.append("</p></div>");
    }
    return html.toString();
  }

  private static String piece(String of, Piece piece) {
    return switch (piece) {
      case Piece.Words(String words) -> escaped(words);
      case Piece.Slot slot ->
          "<button type=\"button\" class=\"slot\" data-of=\"%s\" data-slot=\"%s\" data-kind=\"%s\" data-typed=\"%s\" data-choices=\"%s\" aria-label=\"%s: %s. Change\">%s</button>"
              .formatted(
                  of,
                  escaped(slot.slot()),
                  escaped(slot.kind()),
                  escaped(slot.typed()),
                  escaped(String.join("|", slot.choices())),
                  escaped(slot.hint()),
                  escaped(slot.shown()),
                  escaped(slot.shown()));
    };
  }

  /// A list of remarks, or nothing when there are none.
  static String list(String says, List<String> items) {
    if (items.isEmpty()) {
      return "";
    }
    StringBuilder html = new StringBuilder("<p>" + escaped(says) + "</p><ul>");
    items.forEach(item -> html.append("<li>").append(escaped(item)).append("</li>"));
    return html.append("</ul>").toString();
  }

  /// Words as they stand at a beginning; a symbol stays as it is written.
  static String capital(String words) {
    return words.startsWith("pH")
        ? words
        : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
