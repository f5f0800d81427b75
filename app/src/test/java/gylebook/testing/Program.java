package gylebook.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// The whole program in a process of its own, to be killed.
public record Program(Process process, String address) {
  private static final String SAYS = "Gylebook is at ";

  /// Starts it on a book, on any free port, and waits until it says where it is.
  public static Program on(Path book) throws IOException {
    Program program =
        started(List.of("gylebook.app.Gylebook", "--port", "0", "--book", book.toString()));
    assertThat(program.address()).as("the address it says").isNotEmpty();
    return program;
  }

  /// Starts a class with its words, and waits until it says where it is; empty when it ended
  /// before.
  public static Program started(List<String> words) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                // It does not live long enough for the better compiler.
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path")));
    command.addAll(words);
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    var out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    Optional<String> line = Optional.ofNullable(out.readLine());
    line.ifPresent(said -> assertThat(said).as("first line of the program").startsWith(SAYS));
    return new Program(process, line.map(said -> said.substring(SAYS.length())).orElse(""));
  }

  /// Ends it as a power cut would.
  public void kill() throws InterruptedException {
    process.destroyForcibly().waitFor();
  }
}
