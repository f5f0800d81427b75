package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import gylebook.brewday.Command;
import gylebook.journal.MemoryJournal;
import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import gylebook.testing.Browser;
import gylebook.testing.InBrowser;
import gylebook.web.Desk;
import gylebook.web.PageServer;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/// A book in memory, served to a browser, whose clock stands still.
abstract class Served extends InBrowser {
  final Wallet wallet = new Wallet();
  Clerk clerk;
  PageServer server;
  private Wiring wiring;

  /// When it is.
  abstract Instant now();

  @BeforeEach
  void serve() {
    InstantSource clock = InstantSource.fixed(now());
    clerk = new Clerk(new MemoryJournal(), clock);
    wiring = new Wiring(clerk, clock, Path.of("/none"));
    server = PageServer.start(0, clerk, wallet, wiring);
  }

  @AfterEach
  void stop() {
    server.stop();
    wiring.close();
  }

  void write(String gyleId, Command command) {
    assertThat(clerk.write(gyleId, clerk.book().seen(gyleId), command, ""))
        .isInstanceOf(Desk.Answer.Written.class);
  }

  void note(String gyleId, Instant at, Command command) {
    assertThat(clerk.note(gyleId, command, "", Optional.of(at)))
        .isInstanceOf(Desk.Answer.Written.class);
  }

  /// Opens a page of the household's own.
  void own(String gyleId) {
    write(
        gyleId,
        new Command.OpenGyle(
            gyleId,
            false,
            wallet.document(Demo.copperBitter()),
            wallet.document(DemoRigs.household())));
  }

  Page opened(BrowserContext context, String path) {
    Page page = context.newPage();
    page.navigate(server.address() + path);
    return page;
  }

  static void sound(Page page) {
    assertThat(Browser.beyond(page)).isZero();
    assertThat(Browser.faults(page)).isEmpty();
  }
}
