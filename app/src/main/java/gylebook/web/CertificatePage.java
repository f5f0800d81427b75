package gylebook.web;

import gylebook.gate.HomeAuthority;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/// How a tablet comes to trust this program: the home's own certificate is put on it once.
final class CertificatePage {
  private static final List<List<String>> WAYS =
      List.of(
          List.of(
              "iPad, iPhone",
              "Get the file and allow the profile. In Settings install the profile that was"
                  + " downloaded; then under General, About, Certificate Trust Settings switch it on."
                  + " Without the second step it counts for nothing."),
          List.of(
              "Android",
              "Get the file. In Settings, under security, look for installing a certificate from"
                  + " storage, choose CA certificate, say yes to the warning, and pick the file."),
          List.of(
              "Windows",
              "Open the file, install the certificate for yourself, and put it into the trusted root"
                  + " certification authorities."),
          List.of(
              "Mac",
              "Open the file, add it to the keychain, open it there, and under Trust set it to always"
                  + " trust."),
          List.of(
              "Linux, and Firefox anywhere",
              "In the browser's settings look for certificates, and import the file among the"
                  + " authorities, for websites."));

  private CertificatePage() {}

  /// The page on the tablet.
  ///
  /// @param host as the tablet calls this machine
  static String html(HomeAuthority authority, String host, int encryptedPort) {
    String on = "https://%s:%d%s".formatted(host, encryptedPort, ScreenRoutes.COME_IN);
    StringBuilder html = new StringBuilder("<h1>The home certificate</h1>");
    html.append(
            "<p>Your program made it for itself. A screen that has it knows your program by it,")
        .append(" and what goes between them cannot be read by others. It can vouch for names and")
        .append(" addresses at home only, not for a bank or a shop.</p><ol><li><p>")
        .append(
            "<a href=\"%s\">Get the certificate</a></p></li>"
                .formatted(ScreenRoutes.CERTIFICATE_FILE))
        .append("<li><p>Compare its SHA-256 fingerprint with the one that <em>Other screens</em>")
        .append(
            " shows on the program's own machine. If they differ, stop: somebody is between.</p>")
        .append(fingerprint(authority))
        .append(
            "</li><li><p>Put it on this screen. Menus differ from one edition to the next.</p>");
    for (List<String> way : WAYS) {
      html.append(
          "<details><summary>%s</summary><p>%s</p></details>"
              .formatted(Html.escaped(way.getFirst()), Html.escaped(way.getLast())));
    }
    html.append(
            "</li><li><p>Then <a href=\"%s\">come in</a>.</p></li></ol>"
                .formatted(Html.escaped(on)))
        .append(
            "<p>It is good until %s; then the program makes a new one, and this is done again."
                .formatted(ends(authority)))
        .append(" To be rid of it, remove it where you put it.</p>");
    return Html.page("The home certificate", html.toString())
        .replace("<script type=\"module\" src=\"/page.js\"></script>", "");
  }

  /// What is to be done first, on the page of the program's own machine.
  ///
  /// @param where the address of the page for tablets
  static String first(HomeAuthority authority, Optional<String> where) {
    StringBuilder html = new StringBuilder("<details><summary>First, once for each screen: ");
    html.append("the home certificate</summary>");
    where.ifPresent(
        address ->
            html.append("<div class=\"invitation\">")
                .append(QrDrawing.svg(address))
                .append(
                    "<div><p>Point the camera of the other screen here, or open there</p><p><b>")
                .append(Html.escaped(address))
                .append("</b></p></div></div>"));
    return html.append("<p>Its SHA-256 fingerprint, to compare:</p>")
        .append(fingerprint(authority))
        .append(
            "<p>Good until %s. The key lies beside the book, readable by you alone; whoever has"
                .formatted(ends(authority)))
        .append(" it can pass for this program at home, but for nobody else.</p></details>")
        .toString();
  }

  private static String fingerprint(HomeAuthority authority) {
    return "<p><code class=\"fingerprint\">%s</code></p>"
        .formatted(Html.escaped(authority.fingerprint()));
  }

  private static LocalDate ends(HomeAuthority authority) {
    return LocalDate.ofInstant(authority.certificate().getNotAfter().toInstant(), ZoneOffset.UTC);
  }
}
