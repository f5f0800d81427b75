package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.Peer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/// A real broker on loopback, started by the test.
public final class Mosquitto implements AutoCloseable {
  private final Path folder;
  private final int port;
  private final boolean locked;
  private Process process;

  /// Starts one; a locked one asks for the name `brewer` and the password `copper`.
  public static Mosquitto start(Path folder, boolean locked) throws IOException {
    return new Mosquitto(folder, freePort(), locked);
  }

  private Mosquitto(Path folder, int port, boolean locked) throws IOException {
    this.folder = folder;
    this.port = port;
    this.locked = locked;
    this.process = run();
  }

  public static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private Process run() throws IOException {
    Path passwords = folder.resolve("passwords");
    String access = locked ? "allow_anonymous false\npassword_file " + passwords : "";
    if (locked) {
      Path tool = Peer.program("mosquitto_passwd", "mosquitto");
      finish(tool.toString(), "-b", "-c", passwords.toString(), "brewer", "copper");
      Files.setPosixFilePermissions(
          passwords, java.nio.file.attribute.PosixFilePermissions.fromString("rw-r--r--"));
    }
    Path settings =
        Files.writeString(
            folder.resolve("broker.conf"),
            """
            listener %d 127.0.0.1
            persistence false
            log_dest stderr
            log_type all
            allow_anonymous true
            max_queued_messages 100000
            user root
            %s
            """
                .formatted(port, access)
                .replace(locked ? "allow_anonymous true\n" : "\u0000", ""));
    Process started =
        new ProcessBuilder(
                Peer.program("mosquitto", "mosquitto").toString(), "-c", settings.toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.appendTo(log().toFile()))
            .start();
    Ear.soon()
        .until(
            () -> {
              assertThat(started.isAlive()).as("broker, see " + log()).isTrue();
              try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
                return socket.isConnected();
              } catch (IOException _) {
                return false;
              }
            });
    return started;
  }

  private Path log() {
    return folder.resolve("broker.log");
  }

  public int port() {
    return port;
  }

  /// What the broker says it received and sent.
  List<String> protocol() throws IOException {
    return Files.readAllLines(log());
  }

  /// Publishes by a client that is not ours.
  public void publish(String topic, String payload, String... more) throws IOException {
    Path tool = Peer.program("mosquitto_pub", "mosquitto-clients");
    List<String> command =
        new ArrayList<>(
            List.of(
                tool.toString(), "-h", "127.0.0.1", "-p", "" + port, "-t", topic, "-m", payload));
    command.addAll(Arrays.asList(more));
    finish(command.toArray(String[]::new));
  }

  /// Publishes each line of a text as a message of its own.
  void publishLines(String topic, Path lines) throws IOException {
    Path tool = Peer.program("mosquitto_pub", "mosquitto-clients");
    finish(
        new ProcessBuilder(
                tool.toString(), "-h", "127.0.0.1", "-p", "" + port, "-t", topic, "-l", "-q", "1")
            .redirectInput(lines.toFile()));
  }

  private static void finish(String... command) throws IOException {
    finish(new ProcessBuilder(command));
  }

  private static void finish(ProcessBuilder command) throws IOException {
    Process process = command.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    } catch (InterruptedException stopped) {
      throw new AssertionError(stopped);
    }
    assertThat(process.exitValue()).as(command.command() + ": " + said).isZero();
  }

  /// Pulls the plug.
  void kill() {
    process.destroyForcibly().onExit().join();
  }

  /// Starts it again on the same port.
  void again() throws IOException {
    process = run();
  }

  @Override
  public void close() {
    kill();
  }
}
