package gylebook.device;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;

/// One thing an instrument said, and when it arrived.
///
/// Whether it is stale is for the reader to decide: [#age] needs the reader's own now.
///
/// @param instrumentId which instrument
/// @param received when it arrived, by the clock the driver was given
/// @param decoded what it said
/// @param oddities what is odd about it
/// @param leftOutCount readings of this instrument left out just before it, because they came
///   faster than anyone can use
public record Heard(
    String instrumentId,
    Instant received,
    Decoded decoded,
    Set<Oddity> oddities,
    long leftOutCount) {

  /// Keeps its own copy of the oddities.
  public Heard {
    oddities = Set.copyOf(oddities);
  }

  /// When it was measured: what the instrument says, unless it does not say or its clock is ahead.
  public Instant at() {
    Optional<Instant> claimed =
        decoded instanceof Decoded.Value value ? value.claimed() : Optional.empty();
    return oddities.contains(Oddity.CLAIMED_AHEAD) ? received : claimed.orElse(received);
  }

  /// How long ago it arrived, for a reader whose clock shows this; never below zero.
  public Duration age(Instant now) {
    Duration age = Duration.between(received, now);
    return age.isNegative() ? Duration.ZERO : age;
  }
}
