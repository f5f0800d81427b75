package gylebook.testing;

import org.junit.jupiter.api.BeforeAll;

/// Tests that look at pages in a browser; they share the one of this run.
public abstract class InBrowser {
  /// The browser, from the first test on.
  protected static Browser browser;

  /// Starts it unless it runs; missing, it is told first.
  @BeforeAll
  protected static void launch() {
    browser = Browser.started();
  }
}
