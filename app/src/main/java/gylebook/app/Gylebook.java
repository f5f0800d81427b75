package gylebook.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Set;

/// The program: with no word it opens the book and serves the page, with a word it does one thing.
///
/// The everyday start has no words to understand. This class knows nothing of the reader of the
/// command line, whose classes are too old for the launcher's cache: whoever names them here has
/// every archive of the class path opened to find them.
public final class Gylebook {
  static {
    // Named, the provider of logs is not looked for in every archive of the class path.
    System.setProperty("slf4j.provider", "org.slf4j.jul.JULServiceProvider");
    System.setProperty("slf4j.internal.verbosity", "WARN");
  }

  private Gylebook() {}

  /// Starts the program.
  public static void main(String[] words) {
    Surroundings here = Surroundings.ofThisProcess();
    int code =
        switch (words.length == 0 ? "" : words[0]) {
          case "" -> begin(here);
          case "warm-up" -> WarmUp.run(words);
          default -> Terminal.run(here, words);
        };
    // A server that runs on gives no code back before it is ended.
    System.exit(code);
  }

  private static int begin(Surroundings here) {
    PrintWriter out = new PrintWriter(System.out, true, System.out.charset());
    PrintWriter err = new PrintWriter(System.err, true, System.err.charset());
    Settings.Opening closed = new Settings.Opening(false, false, Set.of());
    Path book = Settings.usualBook(here);
    return Serve.run(new Settings(book, Settings.USUAL_PORT, false, closed), out, err);
  }
}
