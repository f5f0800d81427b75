package gylebook.device;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/// Where lines come from.
public interface LinePlace {
  /// In words.
  String words();

  /// Whether one who opens it may come in the middle of a line.
  boolean midway();

  /// Whether an end of the bytes is only a pause: the next writer comes to the same place. Closing
  /// it meanwhile would lose what that one has written already.
  default boolean pauses() {
    return false;
  }

  /// Opens it for reading.
  InputStream open() throws IOException;

  /// A serial port, 8 bits, no parity, one stop bit. Some boards start anew when it is opened.
  record Serial(String device, int baud) implements LinePlace {
    private static final int READ_MS = 500;

    @Override
    public String words() {
      return device;
    }

    @Override
    public boolean midway() {
      return true;
    }

    @Override
    public InputStream open() throws IOException {
      try {
        SerialPort port = SerialPort.getCommPort(device);
        port.setComPortParameters(baud, 8, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
        port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, READ_MS, 0);
        if (!port.openPort()) {
          throw new IOException(
              device
                  + ": cannot be opened; perhaps another program reads it, or this user may not");
        }
        return new Bytes(port);
      } catch (SerialPortInvalidPortException none) {
        throw new IOException(device + ": no such port", none);
      }
    }
  }

  /// A file or named pipe that somebody writes lines to.
  record Pipe(Path path) implements LinePlace {
    @Override
    public String words() {
      return path.toString();
    }

    @Override
    public boolean midway() {
      return false;
    }

    @Override
    public boolean pauses() {
      return Files.exists(path);
    }

    @Override
    public InputStream open() throws IOException {
      return Files.newInputStream(path);
    }
  }

  /// The bytes of a serial port; closing them closes the port.
  final class Bytes extends FilterInputStream {
    private final SerialPort port;

    Bytes(SerialPort port) {
      super(port.getInputStreamWithSuppressedTimeoutExceptions());
      this.port = port;
    }

    @Override
    public void close() throws IOException {
      super.close();
      if (!port.closePort()) {
        throw new IOException(port.getSystemPortPath() + ": does not close");
      }
    }
  }
}
