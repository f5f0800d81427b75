package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.Checkout;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

final class GylebookTest {
  private static final Path HOME = Path.of("/home/brewer");

  @Test
  void itSaysWhichEditionItIs() {
    StringWriter out = new StringWriter();
    CommandLine line = Terminal.commandLine(new Surroundings(Map.of(), HOME));
    line.setOut(new PrintWriter(out, true));

    assertThat(line.execute("--version")).isZero();
    assertThat(out.toString().strip()).matches("Gylebook \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?");
  }

  @Test
  void aPortThatCannotBeIsRefusedWithItsLimits() {
    StringWriter err = new StringWriter();
    CommandLine line = Terminal.commandLine(new Surroundings(Map.of(), HOME));
    line.setErr(new PrintWriter(err, true));

    assertThat(line.execute("--port", "70000")).isEqualTo(CommandLine.ExitCode.USAGE);
    assertThat(err.toString()).contains("70000", "65535");
  }

  @Test
  void aPortThatIsTakenIsSaidInASentenceThatNamesTheWayOut(@TempDir Path folder)
      throws IOException {
    StringWriter err = new StringWriter();
    try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      Path book = folder.resolve("book.sqlite");
      int code =
          Serve.run(
              new Settings(
                  book, other.getLocalPort(), false, new Settings.Opening(false, false, Set.of())),
              new PrintWriter(new StringWriter()),
              new PrintWriter(err, true));

      assertThat(code).isEqualTo(1);
      assertThat(err.toString())
          .contains("Port " + other.getLocalPort(), "already runs", "--port ")
          .doesNotContain("Exception");
    }
  }

  @Test
  void whatCannotBeOpenedIsRefusedBeforeAnythingIs() {
    for (List<String> words :
        List.of(
            List.of("--open-to", "everybody"),
            List.of("--tls"),
            List.of("--open-to", "home", "--known-as", "a b"))) {
      StringWriter err = new StringWriter();
      CommandLine line = Terminal.commandLine(new Surroundings(Map.of(), HOME));
      line.setErr(new PrintWriter(err, true));

      assertThat(line.execute(words.toArray(String[]::new))).isEqualTo(CommandLine.ExitCode.USAGE);
      assertThat(err.toString()).contains(words.getLast());
    }
  }

  @Test
  void eachSystemHasItsOwnWordToOpenAnAddress() {
    String address = "http://127.0.0.1:8484/";
    assertThat(OnScreen.words("Linux", address)).containsExactly("xdg-open", address);
    assertThat(OnScreen.words("Mac OS X", address)).containsExactly("open", address);
    assertThat(OnScreen.words("Windows 11", address)).endsWith(address).hasSize(3);
    assertThat(OnScreen.run(List.of("no-such-program-anywhere", address))).isFalse();
  }

  @Test
  void theCalculationOfTheReadmeGivesAnAnswer() throws IOException {
    Matcher example =
        Pattern.compile("(?m)^\\./gylebook (calc \\S+ [^#\\n]+?) +#")
            .matcher(Files.readString(Checkout.root().resolve("README.md")));
    assertThat(example.find()).as("an example with inputs").isTrue();
    StringWriter out = new StringWriter();
    CommandLine line = Terminal.commandLine(new Surroundings(Map.of(), HOME));
    line.setOut(new PrintWriter(out, true));

    assertThat(line.execute(example.group(1).split(" ", -1))).isZero();
    assertThat(out.toString()).contains("°C");
  }

  @Test
  void theBookLiesWhereTheBrewerSaysElseInTheDataFolder() {
    assertThat(Settings.usualBook(new Surroundings(Map.of("GYLEBOOK_BOOK", "/b/my.book"), HOME)))
        .isEqualTo(Path.of("/b/my.book"));
    assertThat(Settings.usualBook(new Surroundings(Map.of("XDG_DATA_HOME", "/data"), HOME)))
        .isEqualTo(Path.of("/data/gylebook/book.sqlite"));
    assertThat(Settings.usualBook(new Surroundings(Map.of("XDG_DATA_HOME", "not/absolute"), HOME)))
        .as("the directory specification asks for an absolute path and else for the default")
        .isEqualTo(HOME.resolve(".local/share/gylebook/book.sqlite"));
  }
}
