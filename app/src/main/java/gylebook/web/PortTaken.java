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
}
