package gylebook.app;

import gylebook.brewday.Book;
import gylebook.brewday.Command;
import gylebook.brewday.Gyle;
import gylebook.device.OneWireInstruments;
import gylebook.gate.Gate;
import gylebook.journal.JournalUnavailable;
import gylebook.plan.Demo;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.store.DiskJournal;
import gylebook.web.Desk;
import gylebook.web.PageServer;
import gylebook.web.Papers;
import gylebook.web.PortTaken;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import java.util.function.Function;

/// Opens the book and serves the page until the program is ended.
final class Serve {
  private static final String FIRST = "bitter";

  private Serve() {}

  /// Runs until ended.
  ///
  /// @return the exit code
  static int run(Settings settings, PrintWriter out, PrintWriter err) {
    return run(settings, out, err, _ -> untilEnded());
  }

  /// Serves for as long as something else takes.
  ///
  /// @param meanwhile what is done while the page is served
  /// @return the exit code
  static int run(
      Settings settings, PrintWriter out, PrintWriter err, Consumer<PageServer> meanwhile) {
    return run(
        settings,
        DiskJournal::open,
        out,
        err,
        server -> {
          server.keepForecasts();
          meanwhile.accept(server);
        });
  }

  /// Serves from a book that is opened in another way, as tests do it. Nothing is written that was
  /// not asked for, so that writes can be counted.
  ///
  /// @return the exit code
  static int run(
      Settings settings,
      Function<Path, DiskJournal> opening,
      PrintWriter out,
      PrintWriter err,
      Consumer<PageServer> meanwhile) {
    ahead("server", PageServer::loadAhead);
    try (DiskJournal journal = opening.apply(settings.book())) {
      InstantSource clock = SteadyClock.ofThisMachine(journal.newest());
      Desk clerk = new Clerk(journal, clock);
      Papers wallet = new Wallet();
      if (begun(clerk.book())) {
        invent(clerk, wallet);
      }
      ahead("papers", () -> readAhead(clerk.book(), wallet));
      Path oneWireRoot = OneWireInstruments.USUAL_ROOT;
      try (Wiring wiring = new Wiring(clerk, clock, oneWireRoot)) {
        wiring.listen(new NoteTaker(clerk, wallet));
        wiring.begin();
        Gate gate = settings.opening().home() ? HomeGate.open(settings) : Gate.closed();
        PageServer server = PageServer.start(settings.port(), clerk, wallet, wiring, gate);
        try {
          told(server, settings, gate, out);
          meanwhile.accept(server);
        } finally {
          server.stop();
        }
      }
      return 0;
    } catch (PortTaken taken) {
      err.println(taken.getMessage());
      err.flush();
      return 1;
    } catch (IOException failure) {
      err.println("The program cannot be opened to the home network: " + failure.getMessage());
      err.flush();
      return 1;
    } catch (JournalUnavailable failure) {
      err.println(failure.getMessage());
      err.flush();
      return 1;
    }
  }

  /// Does on another processor what the first page would else wait for.
  private static void ahead(String name, Runnable work) {
    Thread.ofPlatform().daemon().name(name).start(work);
  }

  /// Reads the papers of the first page; the wallet remembers them.
  private static void readAhead(Book book, Papers papers) {
    try {
      for (Gyle gyle : book.gyles()) {
        papers.recipe(gyle.recipe().document());
        papers.rig(gyle.rig().document());
      }
    } catch (IllegalStateException _) {
      // Whoever asks for that gyle is told.
      return;
    }
  }

  private static void told(PageServer server, Settings settings, Gate gate, PrintWriter out) {
    out.println("Gylebook is at " + server.address());
    if (gate.isOpen()) {
      out.println(
          "It is open to your home network; let screens in at " + server.address() + "screens");
    }
    out.println("The book is " + settings.book() + ". End it with Ctrl-C.");
    out.flush();
    if (settings.open() && !OnScreen.show(server.address())) {
      out.println("No browser could be opened from here; open that address in one.");
      out.flush();
    }
    if (gate.authority().isPresent()) {
      HomeGate.renewing(server, out);
    }
  }

  private static void untilEnded() {
    CountDownLatch ended = new CountDownLatch(1);
    Runtime.getRuntime().addShutdownHook(new Thread(ended::countDown, "ended"));
    try {
      ended.await();
    } catch (InterruptedException _) {
      Thread.currentThread().interrupt();
    }
  }

  /// Whether the book is new, or was left by a program that ended before both gyles stood in it.
  private static boolean begun(Book book) {
    return book.gyles().stream().allMatch(gyle -> gyle.gyleId().equals(FIRST));
  }

  /// Writes the invented gyles into a book nobody has written in.
  static void invent(Desk desk, Papers papers) {
    open(desk, papers, FIRST, Demo.copperBitter(), DemoRigs.household());
    open(desk, papers, "wheat", Demo.wheatBeer(), DemoRigs.smallFlat());
  }

  private static void open(Desk desk, Papers papers, String gyleId, Recipe recipe, Rig rig) {
    Command command =
        new Command.OpenGyle(
            recipe.name(), recipe.invented(), papers.document(recipe), papers.document(rig));
    desk.write(gyleId, 0, command, "invented-" + gyleId);
  }
}
