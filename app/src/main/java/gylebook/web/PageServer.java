package gylebook.web;

import gylebook.gate.Gate;
import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;

/// Serves the page: on this machine alone, or on the home network too where the gate is open.
///
/// Every request passes the [Door], which asks the gate and takes a change only from the page
/// itself.
public final class PageServer {
  private static final String LOOPBACK = "127.0.0.1";
  private static final long MOST_BYTES = 8_000_000;

  /// Connections at a time. A browser opens six to one place, so this is forty screens with a few
  /// dozen boards: our judgement.
  public static final int MOST_LINES = 300;

  /// What the server says of itself is nothing a brewer asked for; held, or it would be forgotten.
  private static final List<Logger> QUIET =
      List.of(Logger.getLogger("io.javalin"), Logger.getLogger("org.eclipse.jetty"));

  static {
    // A measure of its queues that the server else asks of the machine's management beans, a fifth
    // of a second of every start; the value is what it finds on the usual 64-bit machine.
    System.setProperty("org.eclipse.jetty.util.referencesPerCacheLine", "16");
  }

  private final Javalin javalin;
  private final Streams streams;
  private final Optional<EncryptedLine> encrypted;
  private final ForecastKeeper keeper;

  private PageServer(int port, Desk desk, Papers papers, Instruments instruments, Gate gate) {
    this.encrypted = gate.authority().map(EncryptedLine::new);
    this.streams =
        new Streams(id -> gate.screens().filter(screens -> screens.isIn(id)).isPresent());
    gate.screens().ifPresent(screens -> screens.onOut(streams::end));
    Door door = new Door(gate);
    GyleRoutes gyles = new GyleRoutes(desk, papers);
    Followers followers = new Followers(papers);
    this.keeper = new ForecastKeeper(desk, papers, followers);
    KettleRoutes kettle =
        new KettleRoutes(desk, followers, keeper, streams, instruments.practice());
    FileRoutes files = new FileRoutes(desk, papers);
    InstrumentRoutes wired = new InstrumentRoutes(desk, instruments);
    NewcomerRoutes newcomers = new NewcomerRoutes(desk, papers);
    this.javalin =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.http.maxRequestSize = MOST_BYTES;
              encrypted.ifPresent(line -> line.lay(config.jetty, port));
              config.jetty.modifyServer(PageServer::limit);
              config.routes.before(door::guard);
              gyles.register(config.routes);
              kettle.register(config.routes);
              files.register(config.routes);
              newcomers.register(config.routes);
              wired.register(config.routes);
              new LiquorRoutes(desk, papers).register(config.routes);
              new LearntRoutes(desk, papers, followers).register(config.routes);
              new ReckonRoutes(desk).register(config.routes);
              new RecordRoutes(desk, papers).register(config.routes);
              new PracticeRoutes(desk, instruments.practice(), this::address)
                  .register(config.routes);
              new ScreenRoutes(gate, this::port, this::outsidePort).register(config.routes);
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
              config.routes.get(
                  "/learnt.js", context -> resource(context, "learnt.js", "text/javascript"));
              config.routes.get("/offline.js", PageServer::offline);
              config.routes.get(
                  "/screens.js", context -> resource(context, "screens.js", "text/javascript"));
            });
  }

  /// Lets nobody open lines without end; who comes too late waits until one is closed.
  private static void limit(Server server) {
    server.addBean(new NetworkConnectionLimit(MOST_LINES, server));
  }

  /// Has the classes of the server ready while somebody else opens the book.
  public static void loadAhead() {
    Javalin.create();
    new Server();
  }

  /// Starts on the loopback.
  ///
  /// @param port where; 0 takes any free port
  /// @throws PortTaken when something else listens there
  public static PageServer start(int port, Desk desk, Papers papers, Instruments instruments) {
    return start(port, desk, papers, instruments, Gate.closed());
  }

  /// Starts on the loopback, and on the home network too where the gate is open.
  ///
  /// @param port where; 0 takes any free port. Encrypted lines have the next port
  /// @throws PortTaken when something else listens there
  public static PageServer start(
      int port, Desk desk, Papers papers, Instruments instruments, Gate gate) {
    // A start that fails is told by whoever asked for it, in words.
    QUIET.forEach(logger -> logger.setLevel(Level.OFF));
    PageServer server = new PageServer(port, desk, papers, instruments, gate);
    try {
      if (gate.isOpen()) {
        server.javalin.start(port);
      } else {
        server.javalin.start(LOOPBACK, port);
      }
      QUIET.forEach(logger -> logger.setLevel(Level.WARNING));
    } catch (JavalinBindException taken) {
      throw server.encrypted.isPresent() && EncryptedLine.free(port)
          ? PortTaken.encrypted(port, taken)
          : new PortTaken(port, taken);
    }
    return server;
  }

  /// Keeps what is forecast from now on, until the server ends.
  public void keepForecasts() {
    keeper.begin();
  }

  /// Where it is for this machine.
  public String address() {
    return "http://" + LOOPBACK + ":" + javalin.port() + "/";
  }

  /// The port that others reach the page at: that of the encrypted lines where there are such.
  public int outsidePort() {
    return encrypted.map(EncryptedLine::port).orElseGet(this::port);
  }

  /// Looks whether the certificate is to be renewed, and shows the new one from then on.
  public void renew() throws IOException {
    if (encrypted.isPresent()) {
      encrypted.get().renew();
    }
  }

  /// At which port.
  public int port() {
    return javalin.port();
  }

  /// Ends it.
  public void stop() {
    keeper.end();
    streams.end();
    javalin.stop();
  }

  /// The worker that holds pages bears the revision, so that a browser sees when it is another.
  private static void offline(Context context) {
    resource(context, "offline.js", "text/javascript");
    context.result(
        Optional.ofNullable(context.result()).orElse("").replace("{{revision}}", revision()));
  }

  /// Which build this is.
  private static String revision() {
    Properties edition = new Properties();
    try (InputStream file = PageServer.class.getResourceAsStream("/gylebook/edition.properties")) {
      edition.load(file);
    } catch (IOException failure) {
      throw new UncheckedIOException("cannot read which build this is", failure);
    }
    String words = edition.getProperty("number", "") + "-" + edition.getProperty("built", "");
    return words.replaceAll("[^A-Za-z0-9.-]", "");
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
