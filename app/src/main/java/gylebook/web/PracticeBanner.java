package gylebook.web;

import gylebook.brewday.Gyle;
import java.util.List;

/// What the page at the kettle says on a day for practice, before anything else.
final class PracticeBanner {
  private PracticeBanner() {}

  /// Nothing on a real day.
  ///
  /// @param byEye the instruments that somebody has to read
  static String html(Gyle gyle, Practice practice, List<String> byEye) {
    if (gyle.practice().isEmpty()) {
      return "";
    }
    boolean played = practice.notedOn().filter(gyle.gyleId()::equals).isPresent();
    StringBuilder html =
        new StringBuilder("<section class=\"plate practice\" aria-label=\"Rehearsal\"><p>")
            .append("<b>REHEARSAL.</b> Nothing is heated; this is no record of a beer. ");
    if (played) {
      html.append("A hidden rig sends what is read here, ").append(pace(gyle.pace()));
      html.append(
              " What is noted is done to it: Done, switches, ways that are taken; at the moment")
          .append(" it is noted, and striking a note undoes nothing in the kettle.</p>");
      html.append("<p>Read by eye, then note what it showed: ");
      for (String name : byEye) {
        html.append(
            "<button type=\"button\" data-line=\"read %s\">%s</button> "
                .formatted(Html.escaped(name), Html.escaped(name)));
      }
      html.append("</p>");
    } else {
      html.append("It is played no more: no instrument sends. What was hidden stands in its notes")
          .append(" if it was played to its end.</p>");
    }
    return html.append("<p><a href=\"/rehearsal\">The rehearsal</a></p></section>").toString();
  }

  private static String pace(int times) {
    return times == 1 ? "as fast as in life." : times + " times faster than life.";
  }
}
