package gylebook.device;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/// A controller on a serial line whose first answer has a broken check sum and is followed, a
/// moment later, by a whole frame that says 99.9; every further answer is 66.3.
///
/// The check sums are those of the serial line standard (CRC-16 with the polynomial 0xA001, low
/// byte first), worked out outside this project.
final class GarbledPeer implements AutoCloseable {
  private static final int REQUEST_BYTES = 8;
  private static final byte[] BROKEN = HexFormat.of().parseHex("01030203e7ffff");
  private static final byte[] HOT = HexFormat.of().parseHex("01030203e7f8fe");
  private static final byte[] WARM = HexFormat.of().parseHex("0103020297f88a");

  private static final int PAUSE_MS = 100;

  private final CountDownLatch closed = new CountDownLatch(1);
  private final RandomAccessFile line;

  GarbledPeer(Path device) throws IOException {
    line = new RandomAccessFile(device.toFile(), "rw");
    Thread.ofPlatform().daemon().name("garbled-peer").start(this::serve);
  }

  private void serve() {
    byte[] request = new byte[REQUEST_BYTES];
    try {
      line.readFully(request);
      line.write(BROKEN);
      // The time a slow controller takes; nobody waits for this to happen.
      if (!closed.await(PAUSE_MS, TimeUnit.MILLISECONDS)) {
        line.write(HOT);
      }
      while (true) {
        line.readFully(request);
        line.write(WARM);
      }
    } catch (IOException | InterruptedException _) {
      // Closed: the test is over.
    }
  }

  @Override
  public void close() throws IOException {
    closed.countDown();
    line.close();
  }
}
