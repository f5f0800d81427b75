package gylebook.testing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;

/// The browser the page is tested in: missing it is a failure under CI and a named skip elsewhere.
public final class Browser {
  private Browser() {}

  /// The program, at `GYLEBOOK_CHROMIUM` or its usual place.
  public static Path chromium() {
    String named = System.getenv("GYLEBOOK_CHROMIUM");
    Path place = Path.of(named == null || named.isBlank() ? "/usr/bin/chromium" : named);
    return orSkip(place, Files.isExecutable(place), System.getenv("CI") != null);
  }

  /// The place if it is there; else fails under CI and skips the test by name elsewhere.
  static Path orSkip(Path place, boolean there, boolean underCi) {
    Optional<String> missing =
        there
            ? Optional.empty()
            : Optional.of(
                "no browser at "
                    + place
                    + "; ./gylebook check installs one, or set GYLEBOOK_CHROMIUM");
    if (missing.isPresent() && underCi) {
      throw new AssertionError(missing.get());
    }
    Assumptions.assumeTrue(there, () -> "skipped: " + missing.orElse(""));
    return place;
  }
}
