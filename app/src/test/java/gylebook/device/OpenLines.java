package gylebook.device;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.atomic.AtomicInteger;

/// Listens on the network, answers nothing, and counts the lines that are open.
final class OpenLines implements AutoCloseable {
  private final ServerSocket door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
  private final AtomicInteger begun = new AtomicInteger();
  private final AtomicInteger open = new AtomicInteger();
  private final AtomicInteger asked = new AtomicInteger();

  OpenLines() throws IOException {
    Thread.ofVirtual().start(this::receive);
  }

  int port() {
    return door.getLocalPort();
  }

  int begun() {
    return begun.get();
  }

  int open() {
    return open.get();
  }

  /// Whether something was asked since this was last called.
  boolean asked() {
    return asked.getAndSet(0) > 0;
  }

  private void receive() {
    try {
      while (true) {
        Socket line = door.accept();
        open.incrementAndGet();
        begun.incrementAndGet();
        Thread.ofVirtual().start(() -> hold(line));
      }
    } catch (IOException _) {
      // Closed: the test is over.
    }
  }

  private void hold(Socket line) {
    byte[] thrownAway = new byte[64];
    try (line) {
      while (line.getInputStream().read(thrownAway) >= 0) {
        asked.incrementAndGet();
      }
    } catch (IOException _) {
      // Hung up without a farewell; it is gone all the same.
    } finally {
      open.decrementAndGet();
    }
  }

  @Override
  public void close() throws IOException {
    door.close();
  }
}
