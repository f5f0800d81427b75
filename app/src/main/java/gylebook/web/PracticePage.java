package gylebook.web;

import gylebook.brewday.Book;
import gylebook.brewday.Gyle;
import java.util.List;

/// The page of a rehearsal: what it says, and what somebody can do in it.
final class PracticePage {
  /// What is typed, and how the button is called.
  private static final List<List<String>> ACTS =
      List.of(
          List.of("", "Done: the next thing"),
          List.of("heat auto", "Heat as planned"),
          List.of("heat 0", "Heat off"),
          List.of("heat 100", "Full heat"),
          List.of("pump plan", "Pump as planned"),
          List.of("pump on", "Pump on"),
          List.of("pump off", "Pump off"),
          List.of("lid on", "Lid on"),
          List.of("lid off", "Lid off"),
          List.of("read dial", "Read the dial"),
          List.of("read hand-held", "Read the hand-held thermometer"),
          List.of("read dip-stick", "Dip"),
          List.of("read hydrometer", "Take a gravity"),
          List.of("end", "End it and tell what was hidden"));

  private static final int LINES_MOST = 200;

  private PracticePage() {}

  /// Where its day is.
  static String kettle(String gyleId) {
    return "/gyles/" + gyleId + "/kettle";
  }

  static String html(Practice practice, Book book) {
    StringBuilder html =
        new StringBuilder("<p class=\"back\"><a href=\"/instruments\">Instruments</a></p>");
    html.append(
            "<h1>Rehearsal</h1><p>A brew day on a rig that is not quite yours, with instruments")
        .append(
            " that send as real ones do, and something that may go wrong. Nothing is heated: it")
        .append(" is a simulation. Its instruments are tied for as long as it lasts; anybody who")
        .append(" looks at this page plays the same day.</p>")
        .append("<p id=\"state\" role=\"status\"></p>")
        .append("<div id=\"live\" data-live=\"/api/rehearsal\">")
        .append(said(practice))
        .append("</div><section class=\"acts\"><h2>Act</h2><div class=\"thumb\">");
    for (List<String> act : ACTS) {
      html.append(
          "<button type=\"button\" class=\"act%s\" data-line=\"%s\">%s</button> "
              .formatted(
                  act.getFirst().equals("end") ? "" : " deed",
                  Html.escaped(act.getFirst()),
                  Html.escaped(act.getLast())));
    }
    html.append("</div></section><section class=\"begins\"><h2>Begin</h2>")
        .append("<p>Choose the plan of a day, and what the instruments send is noted on a page of")
        .append(
            " its own, for practice: at its kettle you do what you would do on the day, and the")
        .append(" hidden rig does it. It is never taken for a real day.</p>")
        .append("<form id=\"rehearse-form\" class=\"asked\">")
        .append(days(book))
        .append("<label>How fast <select name=\"pace\"><option value=\"1\">as in life</option>")
        .append("<option value=\"5\">5 times</option><option value=\"20\">20 times</option>")
        .append("<option value=\"60\">60 times (not noted)</option></select></label>")
        .append("<label>Who acts <select name=\"acts\"><option value=\"me\">whoever presses the")
        .append(" buttons</option><option value=\"itself\">it follows the plan</option></select>")
        .append(
            "</label><label>Wires of the instruments <select name=\"wires\"><option value=\"\">")
        .append("as wires are</option><option value=\"sound\">sound</option></select></label>")
        .append("<label>Number of a rehearsal to play again <input name=\"seed\"")
        .append(" inputmode=\"numeric\" autocomplete=\"off\"></label>")
        .append("<p><button type=\"submit\">Begin</button></p></form></section>");
    return InstrumentPage.page("Rehearsal", html.toString());
  }

  /// The days that can be played.
  private static String days(Book book) {
    StringBuilder html = new StringBuilder("<label>Which day <select name=\"gyle\">");
    html.append("<option value=\"\">an invented bitter, noted nowhere</option>");
    List<Gyle> planned =
        book.gyles().stream()
            .filter(gyle -> gyle.plan().isPresent() && gyle.practice().isEmpty())
            .toList();
    for (Gyle gyle : planned) {
      html.append(
          "<option value=\"%s\" selected>the plan of %s, noted for practice</option>"
              .formatted(Html.escaped(gyle.gyleId()), Html.escaped(gyle.name())));
    }
    html.append("</select></label>");
    if (planned.isEmpty()) {
      html.append(
              "<p>No gyle has a plan of its day yet. To practise one of your own, go to its page")
          .append(" and make its forecast the plan of the day.</p>");
    }
    return html.toString();
  }

  /// What it has said, newest first.
  static String said(Practice practice) {
    List<String> said = practice.said();
    if (said.isEmpty()) {
      return "<p>None is under way.</p>";
    }
    StringBuilder html =
        new StringBuilder(
            practice.underWay() ? "<p class=\"under-way\">Under way.</p>" : "<p>It is over.</p>");
    practice
        .notedOn()
        .ifPresent(
            id ->
                html.append(
                    "<p class=\"noted\">It is noted: read and do what is to be done <a href=\"%s\">at its kettle</a>.</p>"
                        .formatted(Html.escaped(kettle(id)))));
    html.append("<ol class=\"said-so-far\" reversed>");
    said.reversed().stream()
        .limit(LINES_MOST)
        .forEach(line -> html.append("<li>" + Html.escaped(line) + "</li>"));
    return html.append("</ol>").toString();
  }
}
