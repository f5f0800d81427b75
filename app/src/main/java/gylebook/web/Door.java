package gylebook.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import java.util.Set;

/// Who may come in: only this machine, by its own names, and for a change only the page itself.
final class Door {
  private static final Set<String> NAMES = Set.of("127.0.0.1", "localhost", "[::1]");
  private static final Set<String> HARMLESS = Set.of("GET", "HEAD");
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self';"
          + " base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

  /// For the wall sheet, whose style stands in the page itself.
  static final String SHEET =
      "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; frame-ancestors 'none'";

  private Door() {}

  static void guard(Context context) {
    context.header("Content-Security-Policy", POLICY);
    context.header("X-Content-Type-Options", "nosniff");
    context.header("Referrer-Policy", "no-referrer");
    context.header("Cross-Origin-Resource-Policy", "same-origin");
    context.header("Cache-Control", "no-store");
    String host = Optional.ofNullable(context.header("Host")).orElse("");
    if (!NAMES.contains(host.replaceFirst(":[0-9]+$", ""))) {
      refuse(context, "This page answers only on its own machine.");
    } else if (context.path().equals(InstrumentRoutes.READINGS)) {
      // A board has no Origin; its own token is asked for behind this door, and opens nothing else.
      context.header("Cache-Control", "no-store");
    } else if (!HARMLESS.contains(context.method().name()) && !fromThisPage(context, host)) {
      refuse(context, "A change must come from this page itself.");
    }
  }

  /// A foreign page in the same browser can send, but it cannot send our Origin.
  private static boolean fromThisPage(Context context, String host) {
    return ("http://" + host).equals(context.header("Origin"));
  }

  private static void refuse(Context context, String says) {
    context.status(HttpStatus.FORBIDDEN);
    context.result(says);
    context.skipRemainingHandlers();
  }
}
