package gylebook.web;

import gylebook.gate.Screen;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

/// Other screens: how one is let in, which are, and how one is turned out.
final class ScreenPage {
  private static final String BACK = "<p class=\"back\"><a href=\"/gyles\">All gyles</a></p>";

  /// What is to be known where lines are not encrypted.
  static final String READABLE =
      "<p class=\"caution\">What is sent can be read by whoever is on your network. Started with"
          + " <code>--tls</code> as well, the program encrypts it.</p>";

  private ScreenPage() {}

  /// When the program serves this machine alone.
  static String closed() {
    return Html.page(
        "Other screens",
        BACK
            + "<h1>Other screens</h1><p>The program answers this machine alone. To see the day on a"
            + " tablet or a phone of your home network, end the program and start it so:</p>"
            + "<pre>./gylebook --open-to home --tls</pre><p>Without <code>--tls</code> it works too,"
            + " but what is sent can be read by whoever is on your network, and a screen can neither"
            + " be kept awake nor be loaded again while the program is away.</p>");
  }

  /// When it is open to the home network.
  ///
  /// @param first what is to be done or known before
  /// @param isAlone whether the machine is on no network now
  static String open(String first, String list, boolean isAlone) {
    StringBuilder html = new StringBuilder(BACK);
    html.append("<h1>Other screens</h1><p>The program is open to your home network. A screen there")
        .append(" sees nothing before it is let in here, with a code that works once and for five")
        .append(" minutes. It can then do what this one can, except let others in and tie")
        .append(" instruments.</p><p id=\"state\" role=\"status\"></p>")
        .append(first)
        .append("<p><button type=\"button\" id=\"invite\">Let a screen in</button></p>")
        .append("<div id=\"invitation\" aria-live=\"polite\"></div>")
        .append("<section><h2>Screens that are in</h2><div id=\"screens\">")
        .append(list)
        .append("</div></section>");
    if (isAlone) {
      html.append("<p>This machine is on no home network now.</p>");
    }
    return scripted("Other screens", html.toString());
  }

  /// The screens that are in.
  static String list(List<Screen> screens) {
    if (screens.isEmpty()) {
      return "<p>None yet.</p>";
    }
    StringBuilder html = new StringBuilder();
    for (Screen screen : screens) {
      html.append(
          ("<article class=\"dial\"><h3>%s</h3><p>Let in %s, last seen %s.</p>"
                  + "<p><button type=\"button\" data-out=\"%s\" aria-label=\"Turn out %s\">Turn out"
                  + "</button></p></article>")
              .formatted(
                  Html.escaped(screen.name()),
                  time(screen.since()),
                  time(screen.seen()),
                  Html.escaped(screen.screenId()),
                  Html.escaped(screen.name())));
    }
    return html.toString();
  }

  private static String time(Instant at) {
    Instant minute = at.truncatedTo(ChronoUnit.MINUTES);
    return "<time datetime=\"%s\">%s</time>".formatted(minute, minute);
  }

  /// A code, as a picture and to type.
  static String invitation(List<String> addresses, String digits) {
    String likeliest = addresses.getFirst();
    StringBuilder html = new StringBuilder("<div class=\"invitation\">");
    html.append(QrDrawing.svg(likeliest + ScreenRoutes.COME_IN + "#" + digits))
        .append("<div><p>Point the camera of the other screen here, or open there</p><p><b>")
        .append(Html.escaped(likeliest + ScreenRoutes.COME_IN))
        .append("</b></p><p>and type the code</p><p class=\"code\">")
        .append(Html.escaped(digits.substring(0, 4) + " " + digits.substring(4)))
        .append("</p><p><button type=\"button\" id=\"uninvite\">Nobody is to come in</button></p>")
        .append("</div></div>");
    if (addresses.size() > 1) {
      html.append("<p>If that does not answer, this machine is also at ")
          .append(Html.escaped(String.join(", ", addresses.subList(1, addresses.size()))))
          .append(".</p>");
    }
    return html.toString();
  }

  /// Where a screen asks to be let in.
  static String comeIn() {
    return scripted(
        "Come in",
        "<h1>Come in</h1><p>On the machine that Gylebook runs on, open <em>Other screens</em> and"
            + " press <em>Let a screen in</em>. It shows a code.</p>"
            + "<p id=\"state\" role=\"status\"></p><form id=\"come-in\" class=\"asked\">"
            + "<label>Code <input name=\"code\" inputmode=\"numeric\" autocomplete=\"one-time-code\""
            + " maxlength=\"20\" required></label><label>What this screen is to be called"
            + " <input name=\"name\" autocomplete=\"off\" maxlength=\"40\" required></label>"
            + "<p><button type=\"submit\" class=\"main\">Come in</button></p></form>");
  }

  /// For a screen that was not let in, or is no more.
  static String stranger(String says) {
    return Html.page(
            "Not let in",
            "<h1>Not let in</h1><p>%s</p><p><a href=\"%s\">Come in with a code</a></p>"
                .formatted(Html.escaped(says), ScreenRoutes.COME_IN))
        .replace("<script type=\"module\" src=\"/page.js\"></script>", "");
  }

  /// For a screen that came by the open way where lines are encrypted.
  static String unencrypted(String says) {
    return Html.page(
            "By https only",
            "<h1>By https only</h1><p>%s</p><p><a href=\"%s\">How this screen comes to trust it</a></p>"
                .formatted(Html.escaped(says), ScreenRoutes.CERTIFICATE))
        .replace("<script type=\"module\" src=\"/page.js\"></script>", "");
  }

  private static String scripted(String title, String body) {
    return Html.page(title, body).replace("/page.js", "/screens.js");
  }
}
