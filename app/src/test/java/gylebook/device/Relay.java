package gylebook.device;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/// A port that fails at the n-th read: passes everything on to a real peer, and once, when the peer
/// has answered for the n-th time, swallows the answer and hangs up. Keeps what went to the peer.
final class Relay implements AutoCloseable {
  private final ServerSocket door;
  private final int peerPort;
  private final int failAt;
  private final AtomicInteger answers = new AtomicInteger();
  private final AtomicBoolean failed = new AtomicBoolean();
  private final ByteArrayOutputStream asked = new ByteArrayOutputStream();

  Relay(int peerPort, int failAt) throws IOException {
    this.peerPort = peerPort;
    this.failAt = failAt;
    this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    Thread.ofVirtual().start(this::receive);
  }

  int port() {
    return door.getLocalPort();
  }

  boolean failed() {
    return failed.get();
  }

  /// Everything the driver has sent.
  byte[] asked() {
    synchronized (asked) {
      return asked.toByteArray();
    }
  }

  private void receive() {
    try {
      while (true) {
        Socket driver = door.accept();
        Thread.ofVirtual().start(() -> join(driver));
      }
    } catch (IOException _) {
      // Closed: the test is over.
    }
  }

  private void join(Socket driver) {
    try (driver;
        Socket peer = new Socket(InetAddress.getLoopbackAddress(), peerPort)) {
      Thread up = Thread.ofVirtual().start(() -> pump(driver, peer, false));
      pump(peer, driver, true);
      up.interrupt();
    } catch (IOException _) {
      // The peer is not there; the driver finds its line closed.
    }
  }

  private void pump(Socket from, Socket to, boolean answering) {
    byte[] buffer = new byte[4096];
    try (from;
        to) {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      int count = in.read(buffer);
      while (count >= 0) {
        if (answering && answers.getAndIncrement() == failAt) {
          failed.set(true);
          return;
        }
        if (!answering) {
          synchronized (asked) {
            asked.write(buffer, 0, count);
          }
        }
        out.write(buffer, 0, count);
        count = in.read(buffer);
      }
    } catch (IOException _) {
      // Either side hung up; both are closed now.
    }
  }

  @Override
  public void close() throws IOException {
    door.close();
  }
}
