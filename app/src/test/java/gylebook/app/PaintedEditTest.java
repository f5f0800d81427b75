package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import gylebook.journal.MemoryJournal;
import gylebook.testing.Browser;
import gylebook.testing.InBrowser;
import gylebook.web.PageServer;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/// How long a changed value takes from the key that takes it to the glass, measured and printed:
/// nothing is asserted on time. 40 edits under `-Plong`, else two.
///
/// `-Dpaint.at=http://127.0.0.1:8484/gyles/bitter` measures a program that is running, as the
/// launcher starts it, on a book that may be written in; else one is started here.
class PaintedEditTest extends InBrowser {
  private static final List<String> VALUES = List.of("21 L", "23 L", "20 L", "22 L", "19.5 L");
  private static final int WARM = 8;

  /// Notes when Enter is pressed in a field, and when the first and the whole forecast after it are
  /// painted: a message that was posted in a frame comes when the frame is done.
  private static final String STOPWATCH =
      """
      () => {
        const place = document.getElementById("forecast");
        const painted = (done) => requestAnimationFrame(() => {
          const after = new MessageChannel();
          after.port1.onmessage = done;
          after.port2.postMessage("");
        });
        const when = (holds, done) => {
          const seen = new MutationObserver(() => {
            if (!holds()) return;
            seen.disconnect();
            painted(done);
          });
          seen.observe(place, { childList: true, subtree: true, attributes: true });
        };
        document.addEventListener("keydown", (event) => {
          if (event.key !== "Enter" || !event.target.matches(".editing input")) return;
          const pressedMs = event.timeStamp;
          window.firstMs = window.wholeMs = null;
          when(() => place.dataset.days === "100", () => {
            window.firstMs = performance.now() - pressedMs;
          });
          when(() => place.dataset.days === "1000" && !place.hasAttribute("aria-busy"), () => {
            window.wholeMs = performance.now() - pressedMs;
          });
        }, true);
      }
      """;

  @Test
  void anEditIsPaintedAndTheWholeForecastFollows() {
    String running = System.getProperty("paint.at", "");
    if (!running.isEmpty()) {
      measured(running);
      return;
    }
    Clerk clerk = new Clerk(new MemoryJournal(), InstantSource.system());
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    Wiring wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
    PageServer server = PageServer.start(0, clerk, wallet, wiring);
    try {
      measured(server.address() + "gyles/bitter");
    } finally {
      server.stop();
      wiring.close();
    }
  }

  private static void measured(String address) {
    boolean whole = Boolean.getBoolean("long") || !System.getProperty("paint.at", "").isEmpty();
    int edits = whole ? 40 : 2;
    List<String> complaints = new ArrayList<>();
    double[] firstMs = new double[edits];
    double[] wholeMs = new double[edits];
    try (BrowserContext context = browser.sized(1024, 768, ColorScheme.LIGHT)) {
      Page page = Browser.opened(context, address, complaints);
      page.waitForFunction("() => document.querySelector('#forecast[data-days=\"1000\"]')");
      page.evaluate(STOPWATCH);
      for (int i = -(whole ? WARM : 0); i < edits; i++) {
        double[] took = edited(page, VALUES.get(Math.floorMod(i, VALUES.size())));
        if (i >= 0) {
          firstMs[i] = took[0];
          wholeMs[i] = took[1];
        }
      }
    }
    assertThat(complaints).isEmpty();
    assertThat(firstMs).doesNotContain(0.0);
    say("from the key to the first look on the glass", firstMs);
    say("from then to the whole forecast", later(firstMs, wholeMs));
  }

  /// Types as people do, a key in a tenth of a second.
  private static double[] edited(Page page, String value) {
    Locator slot = page.locator(".slot[data-slot='aim.lengthL']");
    slot.click();
    Locator field = page.locator(".editing input");
    field.fill("");
    field.pressSequentially(value, new Locator.PressSequentiallyOptions().setDelay(100));
    page.waitForTimeout(100);
    field.press("Enter");
    page.waitForFunction("() => window.firstMs && window.wholeMs");
    double firstMs = ((Number) page.evaluate("() => window.firstMs")).doubleValue();
    double wholeMs = ((Number) page.evaluate("() => window.wholeMs")).doubleValue();
    page.waitForTimeout(150);
    return new double[] {firstMs, wholeMs};
  }

  private static double[] later(double[] firstMs, double[] wholeMs) {
    double[] laterMs = new double[firstMs.length];
    Arrays.setAll(laterMs, i -> wholeMs[i] - firstMs[i]);
    return laterMs;
  }

  private static void say(String what, double[] ms) {
    double[] sorted = ms.clone();
    Arrays.sort(sorted);
    System.out.printf(
        Locale.ROOT,
        "%s: median %.0f ms, p95 %.0f, %.0f to %.0f, of %d edits%n",
        what,
        sorted[sorted.length / 2],
        sorted[(int) Math.ceil(0.95 * sorted.length) - 1],
        sorted[0],
        sorted[sorted.length - 1],
        sorted.length);
  }
}
