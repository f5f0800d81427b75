package gylebook.app;

import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import gylebook.web.Gyle;
import gylebook.web.PageServer;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.CountDownLatch;

/// Serves the page until the program is ended.
///
/// This build has no book on disk yet: it shows the invented gyles and keeps nothing.
final class Serve {
  private Serve() {}

  /// Runs until ended.
  ///
  /// @return the exit code
  static int run(Settings settings, PrintWriter out) {
    PageServer server = PageServer.start(settings.port(), demo());
    out.println("Gylebook is at " + server.address());
    out.println("This build shows invented gyles and keeps nothing yet. End it with Ctrl-C.");
    out.flush();
    CountDownLatch ended = new CountDownLatch(1);
    Runtime.getRuntime().addShutdownHook(new Thread(ended::countDown, "ended"));
    try {
      ended.await();
    } catch (InterruptedException _) {
      Thread.currentThread().interrupt();
    }
    server.stop();
    return 0;
  }

  /// The invented gyles of an empty book.
  static List<Gyle> demo() {
    return List.of(
        new Gyle("bitter", Demo.copperBitter(), DemoRigs.household()),
        new Gyle("wheat", Demo.wheatBeer(), DemoRigs.smallFlat()));
  }
}
