package gylebook.device;

import java.io.IOException;

/// The transport: asks a controller for registers. There is no way through here to write one.
interface ModbusPort extends AutoCloseable {
  /// Opens the line to a controller.
  interface Opener {
    ModbusPort open() throws IOException;
  }

  /// The controller answered, and the answer is no reading.
  final class Unusable extends IOException {
    private static final long serialVersionUID = 1;

    Unusable(String why, Throwable cause) {
      super(why, cause);
    }
  }

  /// The bytes of the registers an instrument stands in.
  byte[] read(ModbusRegister register) throws IOException;

  @Override
  void close();
}
