package gylebook.app;

import java.io.PrintWriter;

/// Opens the book and serves the page until the program is ended.
final class Serve {
  private Serve() {}

  /// Runs until ended.
  ///
  /// @return the exit code
  static int run(Settings settings, PrintWriter out) {
    out.println("There is no page in this build yet; the book would be " + settings.book() + ".");
    return 1;
  }
}
