package gylebook.web;

import io.nayuki.qrcodegen.QrCode;

/// A QR code (ISO/IEC 18004) as a drawing in the page: black on white in every look, because
/// cameras need it so.
final class QrDrawing {
  /// The standard wants four modules of white all round.
  private static final int QUIET = 4;

  private QrDrawing() {}

  static String svg(String text) {
    QrCode code = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
    int side = code.size + 2 * QUIET;
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < code.size; y++) {
      for (int x = 0; x < code.size; x++) {
        if (code.getModule(x, y)) {
          path.append('M').append(x + QUIET).append(' ').append(y + QUIET).append("h1v1h-1z");
        }
      }
    }
    return ("<svg class=\"qr\" viewBox=\"0 0 %d %d\" role=\"img\" shape-rendering=\"crispEdges\""
            + " aria-label=\"The same address and code for a camera\"><rect width=\"%d\""
            + " height=\"%d\" fill=\"#fff\"/><path fill=\"#000\" d=\"%s\"/></svg>")
        .formatted(side, side, side, side, path);
  }
}
