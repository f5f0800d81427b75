package gylebook.testing;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/// Files of open standards that lie beside the checkout and are not part of it.
public final class Shared {
  private Shared() {}

  /// A file or folder below `shared`, which lies beside the checkout; absent, a named skip.
  public static Path file(String path) {
    Path root = Checkout.root();
    Path place = root.resolveSibling("shared").resolve(path);
    Assumptions.assumeTrue(
        Files.exists(place), () -> "skipped: no ../shared/" + path + " beside the checkout");
    return place;
  }
}
