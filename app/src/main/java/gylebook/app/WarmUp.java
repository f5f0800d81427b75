package gylebook.app;

import gylebook.store.DiskJournal;
import gylebook.web.Desk;
import gylebook.web.PageServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import picocli.CommandLine.Command;

/// Does once what a start does, on a book that is thrown away, so that the launcher can keep a
/// cache of what was loaded and compiled for it.
@Command(
    name = "warm-up",
    hidden = true,
    description = "Starts, reads the first pages and ends; the launcher's cache is made of it.")
final class WarmUp implements Runnable {
  private static final int TIMES = 3;

  @Override
  public void run() {
    try {
      Path folder = Files.createTempDirectory("gylebook-warm-up");
      Path book = folder.resolve("book.sqlite");
      try (DiskJournal journal = DiskJournal.open(book)) {
        Desk clerk = new Clerk(journal, InstantSource.system());
        Serve.invent(clerk, new Wallet());
        // No instrument is tied to a book that is thrown away.
        try (Wiring wiring = new Wiring(clerk, InstantSource.system(), folder)) {
          PageServer server = PageServer.start(0, clerk, new Wallet(), wiring);
          look(server.address());
          server.stop();
        }
      } finally {
        emptied(folder);
      }
    } catch (IOException failure) {
      throw new UncheckedIOException("cannot warm up", failure);
    }
  }

  private static void look(String address) throws IOException {
    for (int i = 0; i < TIMES; i++) {
      for (String gyle : new String[] {"bitter", "wheat"}) {
        for (String path : new String[] {"", "gyles/" + gyle, "api/gyles/" + gyle + "/forecast"}) {
          try (var page = URI.create(address + path).toURL().openStream()) {
            page.readAllBytes();
          }
        }
      }
    }
  }

  private static void emptied(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.deleteIfExists(file);
      }
    }
    Files.deleteIfExists(folder);
  }
}
