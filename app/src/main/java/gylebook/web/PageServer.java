package gylebook.web;

import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.units.ReadingUnits;
import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// Serves the page on this machine alone.
///
/// It answers only to the names of the loopback, so that a foreign page cannot reach it by a name
/// that it points here, and it changes nothing: every request is a reading.
public final class PageServer {
  private static final String LOOPBACK = "127.0.0.1";
  private static final Set<String> NAMES = Set.of("127.0.0.1", "localhost", "[::1]");
  private static final String POLICY =
      "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'self';"
          + " frame-ancestors 'none'";

  private final List<Gyle> gyles;
  private final Javalin javalin;

  private PageServer(List<Gyle> gyles) {
    this.gyles = List.copyOf(gyles);
    this.javalin =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.routes.before(this::guard);
              config.routes.get("/", this::list);
              config.routes.get("/gyles/{gyleId}", this::gyle);
              config.routes.get("/page.css", PageServer::style);
            });
  }

  /// Starts on the loopback.
  ///
  /// @param port where; 0 takes any free port
  public static PageServer start(int port, List<Gyle> gyles) {
    PageServer server = new PageServer(gyles);
    server.javalin.start(LOOPBACK, port);
    return server;
  }

  /// Where it is.
  public String address() {
    return "http://" + LOOPBACK + ":" + javalin.port() + "/";
  }

  /// Ends it.
  public void stop() {
    javalin.stop();
  }

  private void guard(Context context) {
    context.header("Content-Security-Policy", POLICY);
    context.header("X-Content-Type-Options", "nosniff");
    context.header("Referrer-Policy", "no-referrer");
    context.header("Cache-Control", "no-store");
    String host = Optional.ofNullable(context.header("Host")).orElse("");
    String name = host.replaceFirst(":[0-9]+$", "");
    if (!NAMES.contains(name)) {
      context.status(HttpStatus.FORBIDDEN);
      context.result("This page answers only on its own machine.");
      context.skipRemainingHandlers();
    }
  }

  private void list(Context context) {
    context.html(Pages.list(gyles));
  }

  private void gyle(Context context) {
    String gyleId = context.pathParam("gyleId");
    Optional<Gyle> found = gyles.stream().filter(g -> g.gyleId().equals(gyleId)).findFirst();
    if (found.isEmpty()) {
      context.status(HttpStatus.NOT_FOUND);
      context.result("There is no gyle of that name.");
      return;
    }
    ReadingUnits units =
        switch (Optional.ofNullable(context.queryParam("units")).orElse("metric")) {
          case "us" -> ReadingUnits.US;
          case "imperial" -> ReadingUnits.IMPERIAL;
          default -> ReadingUnits.METRIC;
        };
    Gyle gyle = found.get();
    Planned planned =
        Planner.plan(
            gyle.recipe(),
            gyle.rig(),
            Planner.USUAL_DAYS,
            Planner.USUAL_SEED,
            () -> false,
            _ -> {});
    context.html(Pages.gyle(gyle, planned, units));
  }

  private static void style(Context context) {
    try (InputStream stream = PageServer.class.getResourceAsStream("/page/page.css")) {
      if (stream == null) {
        context.status(HttpStatus.NOT_FOUND);
        return;
      }
      context.contentType("text/css");
      context.result(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException failure) {
      throw new UncheckedIOException("cannot read the style sheet", failure);
    }
  }
}
