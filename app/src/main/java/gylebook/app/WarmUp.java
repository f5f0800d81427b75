package gylebook.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Set;
import org.sqlite.util.LibraryLoaderUtil;

/// Does what a start does, on a book that is thrown away, so that the launcher can keep a cache of
/// what was loaded and compiled for it.
///
/// No word of the terminal: the reader of the command line must not get into the cache, see
/// [Gylebook].
final class WarmUp {
  private static final int TIMES = 3;

  private WarmUp() {}

  /// Starts twice, reads the first pages and ends.
  ///
  /// @param words the launcher's word and the folder in which the database's own library is laid
  ///   down, if it is to be
  /// @return the exit code
  static int run(String... words) {
    try {
      if (words.length > 1) {
        layDown(Path.of(words[1]));
      }
      startTwice();
      return 0;
    } catch (IOException failure) {
      throw new UncheckedIOException("cannot warm up", failure);
    }
  }

  private static void startTwice() throws IOException {
    Path folder = Files.createTempDirectory("gylebook-warm-up");
    try {
      PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
      Settings.Opening closed = new Settings.Opening(false, false, Set.of());
      Settings settings = new Settings(folder.resolve("book.sqlite"), 0, false, closed);
      // First with a book that is not there yet, then with one that is.
      Serve.run(settings, nowhere, nowhere, server -> look(server.address()));
      Serve.run(settings, nowhere, nowhere, server -> look(server.address()));
    } finally {
      emptied(folder);
    }
  }

  /// The driver else unpacks its library anew at every start, a tenth of a second.
  private static void layDown(Path folder) throws IOException {
    String name = LibraryLoaderUtil.getNativeLibName();
    String packed = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
    try (InputStream library = WarmUp.class.getResourceAsStream(packed)) {
      if (library == null) {
        return;
      }
      Files.createDirectories(folder);
      Files.copy(library, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
    }
    System.setProperty("org.sqlite.lib.path", folder.toString());
  }

  private static void look(String address) {
    try {
      lookAround(address);
    } catch (IOException failure) {
      throw new UncheckedIOException("cannot warm up", failure);
    }
  }

  private static void lookAround(String address) throws IOException {
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
