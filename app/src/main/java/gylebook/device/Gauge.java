package gylebook.device;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// How an instrument stands: the last it said, how often it was odd, and whether its line is up.
///
/// @param line whether its driver has it on the line
/// @param last the last thing it said, sound or not
/// @param lastValue the last that could be read
/// @param counts how often what happened
/// @param usualGap the middle gap between its last arrivals, once there are some
/// @param recent the last things it said, newest first
public record Gauge(
    Tie tie,
    Line line,
    Optional<Heard> last,
    Optional<Heard> lastValue,
    Counts counts,
    Optional<Duration> usualGap,
    List<Heard> recent) {
  /// Shorter than this is no silence, whatever the usual gap. An assumption of ours.
  private static final Duration SILENCE_LEAST = Duration.ofSeconds(15);

  private static final int SILENCE_GAPS = 5;

  /// How often what happened since the program began to listen.
  ///
  /// @param heard everything handed on, garbled or not
  /// @param leftOut what came faster than anyone can use
  public record Counts(
      long heard,
      long garbled,
      long repeated,
      long powerOn,
      long clockBack,
      long claimedOff,
      long leftOut) {}

  /// Keeps its own copy.
  public Gauge {
    recent = List.copyOf(recent);
  }

  /// Whether it has been silent for five of its usual gaps, and for a quarter of a minute. One that
  /// has never been heard is not silent yet; its line says why.
  public boolean silent(Instant now) {
    return last.isPresent() && last.get().age(now).compareTo(patience()) > 0;
  }

  private Duration patience() {
    Duration gaps = usualGap.map(gap -> gap.multipliedBy(SILENCE_GAPS)).orElse(SILENCE_LEAST);
    return gaps.compareTo(SILENCE_LEAST) > 0 ? gaps : SILENCE_LEAST;
  }
}
