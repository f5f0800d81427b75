package gylebook.device;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.IOException;
import java.time.Duration;

/// Waits until a serial line is silent before anything is asked on it.
///
/// An answer on a serial line says neither which request nor which register it belongs to. One that
/// comes after we gave up on it would be taken for the next: so all that comes is read and thrown
/// away until nothing has come for as long as an answer may take. A controller that takes more than
/// twice that time still escapes this.
final class SerialSilence {
  /// Somebody else asks on a line that is not silent after this many times the patience.
  private static final int PATIENCES_MOST = 10;

  private SerialSilence() {}

  /// Returns when the line has been silent for the patience; fails when it never is, or is not
  /// there.
  static void await(ModbusPlace.Serial serial) throws IOException {
    SerialPort port = port(serial);
    Duration patience = serial.patience();
    port.setComPortTimeouts(
        SerialPort.TIMEOUT_READ_SEMI_BLOCKING, Math.toIntExact(patience.toMillis()), 0);
    if (!port.openPort()) {
      throw new IOException(
          serial.words()
              + ": cannot be opened; perhaps another program reads it, or this user may not");
    }
    try {
      byte[] thrownAway = new byte[256];
      long startNanos = System.nanoTime();
      int count = port.readBytes(thrownAway, thrownAway.length);
      while (count > 0) {
        if (System.nanoTime() - startNanos > patience.multipliedBy(PATIENCES_MOST).toNanos()) {
          throw new IOException(
              serial.words() + ": is never silent; does somebody else ask on it?");
        }
        count = port.readBytes(thrownAway, thrownAway.length);
      }
      if (count < 0) {
        throw new IOException(serial.words() + ": cannot be read");
      }
    } finally {
      port.closePort();
    }
  }

  private static SerialPort port(ModbusPlace.Serial serial) throws IOException {
    try {
      SerialPort port = SerialPort.getCommPort(serial.device());
      port.setComPortParameters(serial.baud(), 8, stopBits(serial), parity(serial));
      return port;
    } catch (SerialPortInvalidPortException none) {
      throw new IOException(serial.words() + ": no such port", none);
    }
  }

  static int stopBits(ModbusPlace.Serial serial) {
    return serial.stopBits() == 2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT;
  }

  static int parity(ModbusPlace.Serial serial) {
    return switch (serial.parity()) {
      case NONE -> SerialPort.NO_PARITY;
      case ODD -> SerialPort.ODD_PARITY;
      case EVEN -> SerialPort.EVEN_PARITY;
    };
  }
}
