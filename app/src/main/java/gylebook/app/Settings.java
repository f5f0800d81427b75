package gylebook.app;

import java.nio.file.Path;
import java.util.Set;

/// What the person who starts the program decides.
///
/// @param book the file that holds the journal
/// @param port where the page is served; 0 takes any free port
/// @param open whether a browser is opened on the page
/// @param opening to whom else the page is served
record Settings(Path book, int port, boolean open, Opening opening) {
  static final int USUAL_PORT = 8484;

  /// To whom else the page is served.
  ///
  /// @param home whether screens of the home network may be let in
  /// @param encrypted whether they come by encrypted lines only
  /// @param knownAs further names of this machine there
  record Opening(boolean home, boolean encrypted, Set<String> knownAs) {
    /// Keeps its own copy.
    Opening {
      knownAs = Set.copyOf(knownAs);
    }
  }

  /// The folder beside the book with what is known of other screens.
  Path besideBook() {
    return book.resolveSibling(book.getFileName() + ".others");
  }

  /// The book when nobody names one: `GYLEBOOK_BOOK`, else the place where programs keep their
  /// files by the XDG base directory specification.
  static Path usualBook(Surroundings env) {
    return env.value("GYLEBOOK_BOOK")
        .map(Path::of)
        .orElseGet(
            () ->
                env.value("XDG_DATA_HOME")
                    .map(Path::of)
                    .filter(Path::isAbsolute)
                    .orElseGet(() -> env.home().resolve(".local").resolve("share"))
                    .resolve("gylebook")
                    .resolve("book.sqlite"));
  }
}
