package gylebook.app;

import java.nio.file.Path;

/// What the person who starts the program decides.
///
/// @param book the file that holds the journal
/// @param port where the page is served; 0 takes any free port
/// @param open whether a browser is opened on the page
record Settings(Path book, int port, boolean open) {
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
