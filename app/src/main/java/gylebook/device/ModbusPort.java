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

    private final boolean sound;

    /// @param sound whether the answer came whole, so that the line is fit for the next request
    Unusable(String why, boolean sound, Throwable cause) {
      super(why, cause);
      this.sound = sound;
    }

    boolean sound() {
      return sound;
    }
  }

  /// The bytes of the registers an instrument stands in.
  byte[] read(ModbusRegister register) throws IOException;

  @Override
  void close();
}
