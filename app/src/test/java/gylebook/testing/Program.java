package gylebook.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/// The whole program in a process of its own, to be killed.
public record Program(Process process, String address) {
  private static final String SAYS = "Gylebook is at ";

  /// Starts it on a book, on any free port, and waits until it says where it is.
  public static Program on(Path book) throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-cp",
                System.getProperty("java.class.path"),
                "gylebook.app.Gylebook",
                "--port",
                "0",
                "--book",
                book.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    var out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    String line = out.readLine();
    assertThat(line).as("first line of the program").startsWith(SAYS);
    return new Program(process, line.substring(SAYS.length()));
  }

  /// Ends it as a power cut would.
  public void kill() throws InterruptedException {
    process.destroyForcibly().waitFor();
  }
}
