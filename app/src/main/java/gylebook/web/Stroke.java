package gylebook.web;

/// The path of a line through many points, told with as few of them as the eye needs.
///
/// A rest is level for an hour and a heat-up is nearly straight, so most points of a grid say
/// nothing: one is left out where the straight line past it comes as near as [#NEAR_PX] to it.
final class Stroke {
  /// A line is drawn 1 to 3 px wide; nobody sees a tenth of that.
  static final double NEAR_PX = 0.15;

  private static final int TENTHS = 10;

  private final StringBuilder path = new StringBuilder();
  private boolean down;
  private double fromXPx;
  private double fromYPx;
  private double lastXPx;
  private double lastYPx;
  private boolean waiting;
  private double steepestRatio;
  private double flattestRatio;

  /// Goes on to a point, or begins there.
  void to(double xPx, double yPx) {
    if (!down) {
      begin(xPx, yPx);
      return;
    }
    if (waiting && !passes(xPx, yPx)) {
      keep();
    }
    narrow(xPx, yPx);
    lastXPx = xPx;
    lastYPx = yPx;
    waiting = true;
  }

  private void begin(double xPx, double yPx) {
    down = true;
    fromXPx = xPx;
    fromYPx = yPx;
    point('M', xPx, yPx);
    open();
  }

  /// The last point stands, and what follows is seen from it.
  private void keep() {
    point('L', lastXPx, lastYPx);
    fromXPx = lastXPx;
    fromYPx = lastYPx;
    open();
  }

  private void open() {
    waiting = false;
    flattestRatio = Double.NEGATIVE_INFINITY;
    steepestRatio = Double.POSITIVE_INFINITY;
  }

  /// Whether the straight line to here comes near every point that is left out; only looked at in
  /// the direction of going, so a line that turns back or goes straight up keeps its corner.
  private boolean passes(double xPx, double yPx) {
    double acrossPx = xPx - fromXPx;
    boolean onward = acrossPx != 0 && (xPx - lastXPx) * (lastXPx - fromXPx) > 0;
    double ratio = (yPx - fromYPx) / acrossPx;
    return onward && ratio >= flattestRatio && ratio <= steepestRatio;
  }

  private void narrow(double xPx, double yPx) {
    double acrossPx = xPx - fromXPx;
    double oneRatio = (yPx - NEAR_PX - fromYPx) / acrossPx;
    double otherRatio = (yPx + NEAR_PX - fromYPx) / acrossPx;
    flattestRatio = Math.max(flattestRatio, Math.min(oneRatio, otherRatio));
    steepestRatio = Math.min(steepestRatio, Math.max(oneRatio, otherRatio));
  }

  /// Ends the line; the next point begins another.
  void lift() {
    if (waiting) {
      keep();
    }
    down = false;
  }

  /// Ends the line where it began.
  void close() {
    lift();
    path.append('Z');
  }

  /// A box with level sides.
  void box(double leftPx, double topPx, double rightPx, double footPx) {
    lift();
    point('M', leftPx, topPx);
    point('L', rightPx, topPx);
    point('L', rightPx, footPx);
    point('L', leftPx, footPx);
    path.append('Z');
  }

  String drawn() {
    lift();
    return path.toString();
  }

  private void point(char move, double xPx, double yPx) {
    path.append(move);
    tenths(xPx);
    path.append(' ');
    tenths(yPx);
  }

  private void tenths(double px) {
    long tenths = Math.round(px * TENTHS);
    if (tenths < 0) {
      path.append('-');
      tenths = -tenths;
    }
    path.append(tenths / TENTHS);
    if (tenths % TENTHS != 0) {
      path.append('.').append(tenths % TENTHS);
    }
  }
}
