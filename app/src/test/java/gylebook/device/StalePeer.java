package gylebook.device;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.ByteBuffer;

/// A controller on the network that answers each request twice: first 99.9 under the transaction
/// number of a request before, then 66.3 under the right one. The form of both is that of the
/// Modbus messaging guide: transaction, protocol 0, length, unit, function, byte count, register.
final class StalePeer implements AutoCloseable {
  private static final int REQUEST_BYTES = 12;

  private final ServerSocket door = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());

  StalePeer() throws IOException {
    Thread.ofVirtual().start(this::serve);
  }

  int port() {
    return door.getLocalPort();
  }

  private void serve() {
    try {
      while (true) {
        try (Socket client = door.accept()) {
          answer(client);
        } catch (java.io.EOFException _) {
          // It hung up; the next one may come.
        }
      }
    } catch (IOException _) {
      // Closed: the test is over.
    }
  }

  private static void answer(Socket client) throws IOException {
    DataInputStream in = new DataInputStream(client.getInputStream());
    OutputStream out = client.getOutputStream();
    byte[] request = new byte[REQUEST_BYTES];
    while (true) {
      in.readFully(request);
      short transaction = ByteBuffer.wrap(request).getShort();
      out.write(reply((short) (transaction - 1), request[6], (short) 999));
      out.write(reply(transaction, request[6], (short) 663));
    }
  }

  private static byte[] reply(short transaction, byte unitId, short value) {
    return ByteBuffer.allocate(11)
        .putShort(transaction)
        .putShort((short) 0)
        .putShort((short) 5)
        .put(unitId)
        .put((byte) 3)
        .put((byte) 2)
        .putShort(value)
        .array();
  }

  @Override
  public void close() throws IOException {
    door.close();
  }
}
