package gylebook.testing;

import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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

  /// Its remote control; asks for the program first, so that a missing one is told.
  public static Playwright control() {
    var _ = chromium();
    return Playwright.create(
        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
  }

  /// Starts it, without asking anything of the network.
  public static com.microsoft.playwright.Browser launched(Playwright control) {
    return control
        .chromium()
        .launch(
            new LaunchOptions()
                .setExecutablePath(chromium())
                .setArgs(
                    List.of(
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-quic",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync")));
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
