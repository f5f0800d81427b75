package gylebook.gate;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.TimeMeter;
import java.net.InetAddress;
import java.time.Duration;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/// How often one address may ask. The figures are assumptions: far above what a household does by
/// hand, far below what hurts.
final class Pace {
  private static final int ADDRESSES_MOST = 2_000;

  /// What is counted apart.
  enum Kind {
    /// Whatever is asked for: many pages at once, then 20 a second.
    ANYTHING(600, 20),
    /// Changes and notes: a tablet that was away brings a day's notes, then 4 a second.
    CHANGE(400, 4),
    /// Readings of boards: then 100 a second.
    READING(1_000, 100),
    /// Tries of a code: 10, then one in half a minute.
    CODE(10, 1.0 / 30);

    private final long atOnce;
    private final Duration each;

    Kind(long atOnce, double perSec) {
      this.atOnce = atOnce;
      this.each = Duration.ofNanos(Math.round(1e9 / perSec));
    }
  }

  private final LongSupplier nanos;
  private final Map<InetAddress, Map<Kind, Bucket>> buckets =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<InetAddress, Map<Kind, Bucket>> eldest) {
          return size() > ADDRESSES_MOST;
        }
      };

  /// @param nanos time that only ever goes on
  Pace(LongSupplier nanos) {
    this.nanos = nanos;
  }

  /// Whether this address may once more; counts it if so.
  synchronized boolean allows(InetAddress address, Kind kind) {
    return buckets
        .computeIfAbsent(address, _ -> new EnumMap<>(Kind.class))
        .computeIfAbsent(kind, this::bucket)
        .tryConsume(1);
  }

  private Bucket bucket(Kind kind) {
    return Bucket.builder()
        .addLimit(limit -> limit.capacity(kind.atOnce).refillGreedy(1, kind.each))
        .withCustomTimePrecision(
            new TimeMeter() {
              @Override
              public long currentTimeNanos() {
                return nanos.getAsLong();
              }

              @Override
              public boolean isWallClockBased() {
                return false;
              }
            })
        .build();
  }
}
