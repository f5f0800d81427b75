package gylebook.gate;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.LongSupplier;

/// A clock that goes when the test says so: the time of day, and the time that only goes on.
public final class Ticking implements InstantSource {
  private Instant now = Instant.parse("2026-03-14T09:00:00Z");
  private long nanos = Long.MAX_VALUE - Duration.ofMinutes(1).toNanos();

  @Override
  public synchronized Instant instant() {
    return now;
  }

  /// The time that only goes on; it begins a minute before its numbers turn over, as they may.
  public LongSupplier nanos() {
    return this::nanosNow;
  }

  private synchronized long nanosNow() {
    return nanos;
  }

  /// Time goes by.
  public synchronized void pass(Duration time) {
    now = now.plus(time);
    nanos += time.toNanos();
  }

  /// Somebody sets the clock on the wall; no time goes by.
  public synchronized void setBy(Duration step) {
    now = now.plus(step);
  }
}
