package gylebook.app;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/// Brings the page up in the browser of whoever started the program.
final class OnScreen {
  private OnScreen() {}

  /// Asks the system to show an address; where it cannot, the printed address has to do.
  ///
  /// @return whether the system took the order
  static boolean show(String address) {
    return run(words(System.getProperty("os.name", ""), address));
  }

  /// The system's own word for "open this".
  static List<String> words(String system, String address) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("mac")) {
      return List.of("open", address);
    }
    return name.startsWith("windows")
        ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
        : List.of("xdg-open", address);
  }

  /// Runs a word of the system and does not wait for its end.
  static boolean run(List<String> words) {
    try {
      new ProcessBuilder(words)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException _) {
      return false;
    }
  }
}
