package gylebook.testing;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/// Programs of others that a test talks to: a missing one fails under CI and is a named skip
/// elsewhere.
public final class Peer {
  private static final String BESIDE = File.pathSeparator + "/usr/sbin" + File.pathSeparator;

  private Peer() {}

  /// The program of this name, on the path or beside it.
  public static Path program(String name, String debianPackage) {
    return orSkip(name, find(name), debianPackage, System.getenv("CI") != null);
  }

  /// A file a package brings, such as a header.
  public static Path file(String place, String debianPackage) {
    Path file = Path.of(place);
    Optional<Path> found = Files.exists(file) ? Optional.of(file) : Optional.empty();
    return orSkip(place, found, debianPackage, System.getenv("CI") != null);
  }

  static Path orSkip(String name, Optional<Path> found, String debianPackage, boolean underCi) {
    String missing =
        "no " + name + "; ./gylebook check installs it, or install the package " + debianPackage;
    if (found.isEmpty() && underCi) {
      throw new AssertionError(missing);
    }
    Assumptions.assumeTrue(found.isPresent(), () -> "skipped: " + missing);
    return found.orElseThrow();
  }

  private static Optional<Path> find(String name) {
    String folders = Optional.ofNullable(System.getenv("PATH")).orElse("") + BESIDE;
    return Stream.of(folders.split(File.pathSeparator))
        .filter(folder -> !folder.isBlank())
        .map(folder -> Path.of(folder, name))
        .filter(Files::isExecutable)
        .findFirst();
  }
}
