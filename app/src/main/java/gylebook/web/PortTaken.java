package gylebook.web;

/// Something else listens where the page was to be served, most often Gylebook itself.
public final class PortTaken extends RuntimeException {
  private static final long serialVersionUID = 1;

  PortTaken(int port, Throwable cause) {
    super(
        "Port "
            + port
            + " cannot be used: another program listens there, perhaps a Gylebook that already"
            + " runs at http://127.0.0.1:"
            + port
            + "/. Open that, or start this one with another port: --port "
            + (port < 65_535 ? port + 1 : port - 1)
            + ".",
        cause);
  }

  private PortTaken(String words, Throwable cause) {
    super(words, cause);
  }

  /// The port after the one that was asked for is taken, where the encrypted lines were to be.
  static PortTaken encrypted(int port, Throwable cause) {
    int next = port + 1;
    int maybe = port < 65_533 ? port + 2 : port - 2;
    return new PortTaken(
        "Port "
            + next
            + " cannot be used: another program listens there. With --tls the encrypted page has the"
            + " port after that of --port, here "
            + port
            + ". Start with another, of which the next is free too: --port "
            + maybe
            + ".",
        cause);
  }
}
