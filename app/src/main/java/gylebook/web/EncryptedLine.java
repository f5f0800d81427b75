package gylebook.web;

import gylebook.gate.HomeAuthority;
import io.javalin.config.JettyConfig;
import java.io.IOException;
import java.net.ServerSocket;
import java.util.Optional;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/// The encrypted line beside the plain one. Made only where somebody asked for it.
final class EncryptedLine {
  private final HomeAuthority authority;
  private final SslContextFactory.Server keys = new SslContextFactory.Server();
  private Optional<ServerConnector> connector = Optional.empty();

  EncryptedLine(HomeAuthority authority) {
    this.authority = authority;
    show(keys);
  }

  private void show(SslContextFactory factory) {
    factory.setKeyStore(authority.shown());
    factory.setKeyStorePassword(authority.word());
    factory.setKeyManagerPassword(authority.word());
  }

  /// Lays the plain line at a port and the encrypted one at the next.
  ///
  /// @param port 0 takes any free ports
  void lay(JettyConfig jetty, int port) {
    jetty.addConnector(
        (server, configuration) -> {
          ServerConnector plain =
              new ServerConnector(server, new HttpConnectionFactory(configuration));
          plain.setPort(port);
          return plain;
        });
    jetty.addConnector(
        (server, configuration) -> {
          ServerConnector encrypted = encrypted(server, configuration);
          encrypted.setPort(port == 0 ? 0 : port + 1);
          connector = Optional.of(encrypted);
          return encrypted;
        });
  }

  private ServerConnector encrypted(Server server, HttpConfiguration plain) {
    HttpConfiguration configuration = new HttpConfiguration(plain);
    // Who is called how is the gate's business, which looks at every request.
    configuration.addCustomizer(new SecureRequestCustomizer(false));
    HttpConnectionFactory http = new HttpConnectionFactory(configuration);
    SslConnectionFactory tls = new SslConnectionFactory(keys, http.getProtocol());
    return new ServerConnector(server, tls, http);
  }

  /// Whether a port can be listened at.
  static boolean free(int port) {
    try (ServerSocket _ = new ServerSocket(port)) {
      return true;
    } catch (IOException _) {
      return false;
    }
  }

  int port() {
    return connector.map(ServerConnector::getLocalPort).orElse(0);
  }

  /// Shows a new certificate from now on, if there is one; connections that stand are not cut.
  void renew() throws IOException {
    if (authority.renew()) {
      try {
        keys.reload(this::show);
      } catch (Exception failure) {
        throw new IOException("the new certificate cannot be shown", failure);
      }
    }
  }
}
