package gylebook.web;

import gylebook.gate.Caller;
import gylebook.gate.Caller.Errand;
import gylebook.gate.Gate;
import gylebook.gate.Let;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.net.InetAddress;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Asks the gate about every request, and takes a change only from the page itself.
final class Door {
  /// Where the id of the screen that asks is kept during a request.
  static final String SCREEN = "screen";

  private static final String OWN = "own";

  private static final Set<String> HARMLESS = Set.of("GET", "HEAD");
  private static final Pattern PORT = Pattern.compile("(?<host>.*?)(:(?<port>[0-9]+))?");
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self';"
          + " worker-src 'self';"
          + " base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

  /// For the wall sheet, whose style stands in the page itself.
  static final String SHEET =
      "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; frame-ancestors 'none'";

  /// What everybody on the home network may see, and where else one need not be let in.
  private static final Map<String, Errand> OUTSIDE =
      Map.of(
          "/page.css",
          Errand.OPEN,
          "/icon.svg",
          Errand.OPEN,
          ScreenRoutes.CERTIFICATE,
          Errand.OPEN,
          ScreenRoutes.CERTIFICATE_FILE,
          Errand.OPEN,
          "/screens.js",
          Errand.DOORSTEP,
          "/page.js",
          Errand.DOORSTEP,
          ScreenRoutes.COME_IN,
          Errand.DOORSTEP,
          ScreenRoutes.CODE,
          Errand.CODE,
          InstrumentRoutes.READINGS,
          Errand.READING);

  private final Gate gate;

  Door(Gate gate) {
    this.gate = gate;
  }

  void guard(Context context) {
    context.header("Content-Security-Policy", POLICY);
    context.header("X-Content-Type-Options", "nosniff");
    context.header("Referrer-Policy", "no-referrer");
    context.header("Cross-Origin-Resource-Policy", "same-origin");
    context.header("Cache-Control", "no-store");
    Errand errand = OUTSIDE.getOrDefault(context.path(), Errand.BOOK);
    switch (gate.ask(caller(context, errand))) {
      case Let.Own _ -> {
        context.attribute(OWN, true);
        fromThisPageOnly(context, errand);
      }
      case Let.In(var screen) -> {
        context.attribute(SCREEN, screen.screenId());
        fromThisPageOnly(context, errand);
      }
      case Let.Doorstep _ -> fromThisPageOnly(context, errand);
      case Let.Stranger(String says) ->
          outside(context, HttpStatus.UNAUTHORIZED, says, ScreenPage.stranger(says));
      case Let.Unencrypted(String says) ->
          outside(context, HttpStatus.FORBIDDEN, says, ScreenPage.unencrypted(says));
      case Let.Pause(String says, long sec) -> {
        context.header("Retry-After", Long.toString(sec));
        refuse(context, HttpStatus.TOO_MANY_REQUESTS, says);
      }
      case Let.Refused(String says) -> refuse(context, HttpStatus.FORBIDDEN, says);
    }
  }

  /// The name of the cookie that holds a screen's token. Cookies know no ports, so it has the port:
  /// another program of this machine, or another book, is not to overwrite it.
  static String cookie(Context context) {
    String port = Integer.toString(context.req().getLocalPort());
    return (context.req().isSecure() ? "__Host-" : "") + "gyle-screen-" + port;
  }

  /// Gives a screen its token to keep.
  static void give(Context context, String token, int maxAgeSec) {
    io.javalin.http.Cookie cookie = new io.javalin.http.Cookie(cookie(context), token);
    cookie.setPath("/");
    cookie.setHttpOnly(true);
    cookie.setSecure(context.req().isSecure());
    cookie.setSameSite(SameSite.STRICT);
    cookie.setMaxAge(maxAgeSec);
    context.cookie(cookie);
  }

  /// What reaches into the machine itself, such as a path or letting others in, is done there only.
  static Handler ownOnly(Handler handler) {
    return context -> {
      if (Boolean.TRUE.equals(context.attribute(OWN))) {
        handler.handle(context);
      } else {
        refuse(context, HttpStatus.FORBIDDEN, "This is done on the program's own machine only.");
      }
    };
  }

  private Caller caller(Context context, Errand errand) {
    return new Caller(
        InetAddress.ofLiteral(context.req().getRemoteAddr()),
        host(context),
        context.req().isSecure(),
        !HARMLESS.contains(context.method().name()),
        errand,
        gate.isOpen() ? Optional.ofNullable(context.cookie(cookie(context))) : Optional.empty());
  }

  private static String host(Context context) {
    Matcher parts = PORT.matcher(Optional.ofNullable(context.header("Host")).orElse(""));
    return parts.matches() ? parts.group("host").toLowerCase(Locale.ROOT) : "";
  }

  /// A foreign page in the same browser can send, but it cannot send our Origin; and a browser that
  /// tells where a request comes from is believed when it says from elsewhere.
  private static void fromThisPageOnly(Context context, Errand errand) {
    if (errand == Errand.READING) {
      // A board has no Origin; its own token is asked for behind this door, and opens nothing else.
      return;
    }
    String origin =
        (context.req().isSecure() ? "https://" : "http://")
            + Optional.ofNullable(context.header("Host")).orElse("");
    boolean harmless = HARMLESS.contains(context.method().name());
    if (!harmless && !origin.equals(context.header("Origin"))) {
      refuse(context, HttpStatus.FORBIDDEN, "A change must come from this page itself.");
    } else if (!fromHere(context)) {
      refuse(context, HttpStatus.FORBIDDEN, "This is not for other pages.");
    }
  }

  /// A person may follow a link from anywhere to here; a page elsewhere may fetch nothing.
  private static boolean fromHere(Context context) {
    String site = Optional.ofNullable(context.header("Sec-Fetch-Site")).orElse("none");
    boolean link =
        "navigate".equals(context.header("Sec-Fetch-Mode"))
            && "document".equals(context.header("Sec-Fetch-Dest"));
    return site.equals("same-origin") || site.equals("none") || link;
  }

  /// A person gets a page that leads on, a program a sentence.
  private static void outside(Context context, HttpStatus status, String says, String page) {
    refuse(context, status, says);
    if (Optional.ofNullable(context.header("Accept")).orElse("").contains("text/html")) {
      context.html(page);
    }
  }

  private static void refuse(Context context, HttpStatus status, String says) {
    context.status(status);
    context.result(says);
    context.skipRemainingHandlers();
  }
}
