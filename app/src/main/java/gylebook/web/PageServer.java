package gylebook.web;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/// Serves the page on this machine alone.
///
/// It answers only to the names of the loopback, so that a foreign page cannot reach it by a name
/// that it points here, and it takes a change only from the page itself.
public final class PageServer {
  private static final String LOOPBACK = "127.0.0.1";
  private static final long MOST_BYTES = 8_000_000;

  /// What the server says of itself is nothing a brewer asked for; held, or it would be forgotten.
  private static final List<Logger> QUIET =
      List.of(Logger.getLogger("io.javalin"), Logger.getLogger("org.eclipse.jetty"));

  private final Javalin javalin;

  private PageServer(Desk desk, Papers papers, Instruments instruments) {
    GyleRoutes gyles = new GyleRoutes(desk, papers);
    KettleRoutes kettle = new KettleRoutes(desk, papers);
    FileRoutes files = new FileRoutes(desk, papers);
    InstrumentRoutes wired = new InstrumentRoutes(desk, instruments);
    NewcomerRoutes newcomers = new NewcomerRoutes(desk, papers);
    this.javalin =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.http.maxRequestSize = MOST_BYTES;
              config.routes.before(Door::guard);
              gyles.register(config.routes);
              kettle.register(config.routes);
              files.register(config.routes);
              newcomers.register(config.routes);
              wired.register(config.routes);
              new ReckonRoutes(desk).register(config.routes);
              new PracticeRoutes(instruments.practice()).register(config.routes);
              config.routes.get("/page.css", context -> resource(context, "page.css", "text/css"));
              config.routes.get(
                  "/icon.svg", context -> resource(context, "icon.svg", "image/svg+xml"));
              config.routes.get(
                  "/page.js", context -> resource(context, "page.js", "text/javascript"));
              config.routes.get(
                  "/kettle.js", context -> resource(context, "kettle.js", "text/javascript"));
              config.routes.get(
                  "/instruments.js",
                  context -> resource(context, "instruments.js", "text/javascript"));
            });
  }

  /// Starts on the loopback.
  ///
  /// @param port where; 0 takes any free port
  public static PageServer start(int port, Desk desk, Papers papers, Instruments instruments) {
    QUIET.forEach(logger -> logger.setLevel(Level.WARNING));
    PageServer server = new PageServer(desk, papers, instruments);
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

  private static void resource(Context context, String name, String type) {
    try (InputStream stream = PageServer.class.getResourceAsStream("/page/" + name)) {
      if (stream == null) {
        context.status(HttpStatus.NOT_FOUND);
        return;
      }
      context.contentType(type + "; charset=utf-8");
      context.result(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException failure) {
      throw new UncheckedIOException("cannot read " + name, failure);
    }
  }
}
