package gylebook.testing;

import java.nio.file.Files;
import java.nio.file.Path;

/// Where the checked-out project lies, whichever module a test is started from.
public final class Checkout {
  private Checkout() {}

  /// The folder that holds `core` and `app`.
  public static Path root() {
    Path here = Path.of("").toAbsolutePath();
    for (Path folder = here; folder != null; folder = folder.getParent()) {
      if (Files.isDirectory(folder.resolve("core")) && Files.isDirectory(folder.resolve("app"))) {
        return folder;
      }
    }
    throw new AssertionError("no folder with core and app above " + here);
  }
}
