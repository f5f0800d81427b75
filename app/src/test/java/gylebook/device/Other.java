package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.Peer;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/// A program of others at work beside the test, with what it says on a file.
public final class Other implements AutoCloseable {
  private static Optional<Path> controller = Optional.empty();

  private final Process process;
  private final Path said;

  private Other(Process process, Path said) {
    this.process = process;
    this.said = said;
  }

  public static Other start(Path folder, String... command) throws IOException {
    Path said = Files.createTempFile(folder, "said", ".txt");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    return new Other(process, said);
  }

  /// Two pseudo-terminals joined by socat: what goes into one comes out of the other.
  public static Other cable(Path folder, Path one, Path two) throws IOException {
    Other socat =
        start(
            folder,
            Peer.program("socat", "socat").toString(),
            "pty,raw,echo=0,link=" + one,
            "pty,raw,echo=0,link=" + two);
    Ear.soon().until(() -> Files.exists(one) && Files.exists(two));
    return socat;
  }

  /// The controller made of libmodbus, compiled and started; `how` is `tcp` or `rtu`.
  public static Other controller(Path folder, String how, String where) throws IOException {
    Path gcc = Peer.program("gcc", "gcc libc6-dev");
    Peer.file("/usr/include/modbus/modbus.h", "libmodbus-dev");
    Other begun = start(folder, made(gcc).toString(), how, where);
    Ear.soon().until(() -> begun.said().contains("ready"));
    return begun;
  }

  /// Compiles it, once for all tests that run together.
  private static synchronized Path made(Path gcc) throws IOException {
    if (controller.isEmpty()) {
      Path folder = Files.createTempDirectory("controller");
      Path source = folder.resolve("controller.c");
      Path made = folder.resolve("controller");
      URL resource = Objects.requireNonNull(Other.class.getResource("/peers/controller.c"));
      try (InputStream in = resource.openStream()) {
        Files.write(source, in.readAllBytes());
      }
      run(folder, gcc.toString(), "-o", made.toString(), source.toString(), "-lmodbus");
      try (Stream<Path> files = Files.list(folder)) {
        files.forEach(file -> file.toFile().deleteOnExit());
      }
      controller = Optional.of(made);
    }
    return controller.get();
  }

  /// Runs a program to its end and gives what it said.
  public static String run(Path folder, String... command) throws IOException {
    try (Other other = start(folder, command)) {
      assertThat(other.process.waitFor(60, TimeUnit.SECONDS)).isTrue();
      String said = String.join("\n", other.said());
      assertThat(other.process.exitValue()).as(List.of(command) + ": " + said).isZero();
      return said;
    } catch (InterruptedException stopped) {
      throw new AssertionError(stopped);
    }
  }

  List<String> said() throws IOException {
    return Files.readAllLines(said);
  }

  @Override
  public void close() {
    process.destroyForcibly().onExit().join();
  }
}
