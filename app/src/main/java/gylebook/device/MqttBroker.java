package gylebook.device;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/// The user's own broker: where it is and how it is spoken to.
public record MqttBroker(String host, int port, Version version, Optional<Login> login) {
  /// The two versions of the protocol in use.
  public enum Version {
    V3_1_1,
    V5
  }

  /// Name and password; they travel in the clear, as everything does on this port.
  public record Login(String user, String password) {
    byte[] passwordBytes() {
      return password.getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public String toString() {
      return "Login[" + user + "]";
    }
  }

  /// Refuses a port that is none.
  public MqttBroker {
    if (host.isBlank()) {
      throw new IllegalArgumentException("host is blank; a broker needs an address.");
    }
    if (port < 1 || port > 65_535) {
      throw new IllegalArgumentException("port is " + port + "; it must lie in 1 to 65535.");
    }
  }

  /// Where it is, in words.
  String place() {
    return host + ":" + port;
  }
}
