package gylebook.device;

import java.time.Duration;

/// How long a driver waits before it tries a broken line again: at first, and at most.
public record Patience(Duration first, Duration most) {
  /// One second, growing to half a minute. Assumed, not measured.
  public static final Patience USUAL = new Patience(Duration.ofSeconds(1), Duration.ofSeconds(30));

  /// Refuses waits that are none.
  public Patience {
    if (first.isNegative() || first.isZero() || most.compareTo(first) < 0) {
      throw new IllegalArgumentException(
          "first is " + first + " and most " + most + "; they must be above 0 and in order.");
    }
  }
}
