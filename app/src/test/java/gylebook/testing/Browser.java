package gylebook.testing;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;

/// The browser the page is tested in: missing it is a failure under CI and a named skip elsewhere.
public final class Browser {
  static final Path HEADLESS = Path.of("/usr/bin/chromium-headless-shell");
  static final Path WHOLE = Path.of("/usr/bin/chromium");

  private static final double PATIENCE_MS = 20_000;

  private static @Nullable Browser one;

  private final com.microsoft.playwright.Browser program;

  private Browser(com.microsoft.playwright.Browser program) {
    this.program = program;
  }

  /// The one of this run, which ends with it; a missing one is told first.
  static synchronized Browser started() {
    Path chromium = chromium();
    Browser there = one == null ? start(chromium) : one;
    one = there;
    return there;
  }

  /// Another one, which trusts this public key whatever it does not know of who vouches for it.
  public static Browser trusting(PublicKey key) {
    byte[] digest;
    try {
      digest = MessageDigest.getInstance("SHA-256").digest(key.getEncoded());
    } catch (NoSuchAlgorithmException none) {
      throw new AssertionError(none);
    }
    String pin = Base64.getEncoder().encodeToString(digest);
    return start(chromium(), "--ignore-certificate-errors-spki-list=" + pin);
  }

  /// Ends this one; the one that tests share is left to the end of the run.
  public void close() {
    program.close();
  }

  /// Starts it, without asking anything of the network.
  private static Browser start(Path chromium, String... more) {
    // A page may be slow on a machine that does other things as well; it is not wrong for that.
    PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
    Playwright control =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    List<String> arguments = new ArrayList<>(List.of(more));
    arguments.addAll(
        List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            // Names for tests (RFC 6761) lead to this machine.
            "--host-resolver-rules=MAP *.test 127.0.0.1",
            "--disable-sync"));
    LaunchOptions options = new LaunchOptions().setExecutablePath(chromium).setArgs(arguments);
    Runtime.getRuntime().addShutdownHook(new Thread(control::close, "browser"));
    return new Browser(control.chromium().launch(options));
  }

  /// The program, at `GYLEBOOK_CHROMIUM` or its usual places.
  private static Path chromium() {
    Path place = place(System.getenv("GYLEBOOK_CHROMIUM"), Files::isExecutable);
    return orSkip(place, Files.isExecutable(place), System.getenv("CI") != null);
  }

  /// Where it is: where it is named; else the one without windows, which does half the work for the
  /// same pages, or the whole one.
  static Path place(@Nullable String named, Predicate<Path> executable) {
    if (named != null && !named.isBlank()) {
      return Path.of(named);
    }
    return executable.test(HEADLESS) ? HEADLESS : WHOLE;
  }

  /// A reader with a screen of this size.
  public BrowserContext sized(int width, int height, ColorScheme look) {
    return with(new NewContextOptions().setViewportSize(width, height).setColorScheme(look));
  }

  /// A reader of another kind.
  public BrowserContext with(NewContextOptions options) {
    return program.newContext(options);
  }

  /// A page on which whatever the browser complains of is noted.
  public static Page opened(BrowserContext context, String address, List<String> complaints) {
    Page page = context.newPage();
    page.onConsoleMessage(
        message -> {
          // An answer that says no is part of the stories; the browser notes each as an error.
          if (message.type().equals("error") && !message.text().contains("status of 422")) {
            complaints.add(message.text());
          }
        });
    page.onPageError(complaints::add);
    page.navigate(address);
    return page;
  }

  /// How many pixels a page is wider than the screen.
  public static int beyond(Page page) {
    return (Integer)
        page.evaluate(
            "document.documentElement.scrollWidth - document.documentElement.clientWidth");
  }

  /// What axe finds wrong with a page. Of what is right it need not tell: on a long page that takes
  /// most of the time.
  public static List<String> faults(Page page) {
    AxeRunOptions faultsAlone = new AxeRunOptions();
    faultsAlone.setResultTypes(List.of("violations"));
    return new AxeBuilder(page)
        .options(faultsAlone).setLegacyMode(true).analyze().getViolations().stream()
            .map(rule -> rule.getId() + ": " + rule.getNodes())
            .toList();
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
