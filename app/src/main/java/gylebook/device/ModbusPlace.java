package gylebook.device;

import java.time.Duration;

/// Where a controller is, and how long it may take to answer.
public sealed interface ModbusPlace {
  /// How long an answer may take.
  Duration patience();

  /// In words.
  String words();

  /// On the network; the port is 502 unless somebody chose otherwise.
  record Tcp(String host, int port, Duration patience) implements ModbusPlace {
    @Override
    public String words() {
      return host + ":" + port;
    }
  }

  /// On a serial line: `/dev/ttyUSB0`, 9600 baud, no parity, one stop bit.
  record Serial(String device, int baud, Parity parity, int stopBits, Duration patience)
      implements ModbusPlace {
    @Override
    public String words() {
      return device;
    }
  }

  /// The check bit of each byte on a serial line.
  enum Parity {
    NONE,
    ODD,
    EVEN
  }
}
