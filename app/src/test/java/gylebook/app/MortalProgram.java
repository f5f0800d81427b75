package gylebook.app;

import gylebook.store.DyingDisk;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;

/// The whole program as it is started every day, but for a book that ends it at one of its writes.
final class MortalProgram {
  private MortalProgram() {}

  /// Starts it on any free port.
  ///
  /// @param words the book, the number of the last write, its moment
  public static void main(String[] words) {
    Path book = Path.of(words[0]);
    int lastWrite = Integer.parseInt(words[1]);
    DyingDisk.Moment moment = DyingDisk.Moment.valueOf(words[2]);
    Settings.Opening closed = new Settings.Opening(false, false, Set.of());
    System.exit(
        Serve.run(
            new Settings(book, 0, false, closed),
            file -> DyingDisk.open(file, lastWrite, moment),
            new PrintWriter(System.out, true, System.out.charset()),
            new PrintWriter(System.err, true, System.err.charset()),
            _ -> untilKilled()));
  }

  private static void untilKilled() {
    while (true) {
      LockSupport.park();
    }
  }
}
