package gylebook.web;

import gylebook.brewday.Gyle;
import java.util.List;

/// What the page at the kettle says beside the rest on a day for practice.
final class PracticeBanner {
  private PracticeBanner() {}

  /// One line above everything; nothing on a real day.
  static String html(Gyle gyle, Practice practice) {
    if (gyle.practice().isEmpty()) {
      return "";
    }
    return "<p class=\"plate practice\"><b>REHEARSAL.</b> Nothing is heated; this is no record of a beer. "
        + (played(gyle, practice)
            ? ""
            : "It is played no more: no instrument sends. What was hidden stands in its notes if it"
                + " was played to its end. ")
        + "<a href=\"/rehearsal\">The rehearsal</a></p>";
  }

  private static boolean played(Gyle gyle, Practice practice) {
    return practice.notedOn().filter(gyle.gyleId()::equals).isPresent();
  }

  /// What is looked at by eye while it is played, and how it goes.
  ///
  /// @param byEye the instruments that somebody has to read
  static String byEye(Gyle gyle, Practice practice, List<String> byEye) {
    if (!played(gyle, practice)) {
      return "";
    }
    StringBuilder html = new StringBuilder("<section class=\"eye\"><p>Read by eye: ");
    for (String name : byEye) {
      html.append(
          "<button type=\"button\" data-line=\"read %s\">%s</button> "
              .formatted(Html.escaped(name), Html.escaped(name)));
    }
    return html.append("</p><details><summary>How it is played</summary>")
        .append("<p>A hidden rig sends what is read here, ")
        .append(pace(gyle.pace()))
        .append(" What you read by eye you note yourself. What is noted is done to it: Done,")
        .append(" switches, ways that are taken; at the moment it is noted, and striking a note")
        .append(" undoes nothing in the kettle.</p></details></section>")
        .toString();
  }

  private static String pace(int times) {
    return times == 1 ? "as fast as in life." : times + " times faster than life.";
  }
}
