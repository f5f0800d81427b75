package gylebook.terminal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/// A file that a command writes: one that is there stays, unless it may be replaced, and then it is
/// either the old one or the whole new one.
record NewFile(Path path, boolean overwrite) {

  /// Why it may not be written, before anything is done.
  Optional<String> refusal() {
    return !overwrite && Files.exists(path)
        ? Optional.of(
            "There is already a file '"
                + path
                + "', and it stays. Maybe take another name, or add --overwrite.")
        : Optional.empty();
  }

  /// Writes it; what is given back is why it could not be written.
  Optional<String> write(String text) {
    Optional<String> refusal = refusal();
    if (refusal.isPresent()) {
      return refusal;
    }
    Path folder = path.toAbsolutePath().getParent();
    try {
      Path whole = Files.createTempFile(folder, "gylebook", ".part");
      try {
        Files.writeString(whole, text);
        if (overwrite) {
          Files.move(whole, path, StandardCopyOption.REPLACE_EXISTING);
        } else {
          Files.move(whole, path);
        }
      } finally {
        Files.deleteIfExists(whole);
      }
      return Optional.empty();
    } catch (IOException failure) {
      return Optional.of("'" + path + "' cannot be written: " + why(failure));
    }
  }

  private static String why(IOException failure) {
    return switch (failure) {
      case NoSuchFileException _ -> "there is no such folder. Maybe make it first.";
      case AccessDeniedException _ -> "the folder is closed to you. Maybe take another one.";
      case FileAlreadyExistsException _ -> "meanwhile there is such a file. Maybe try again.";
      default -> failure.getMessage() + ". Maybe take another folder.";
    };
  }
}
