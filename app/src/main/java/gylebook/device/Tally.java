package gylebook.device;

import gylebook.device.Gauge.Counts;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Counts what one instrument says.
final class Tally {
  private static final int RECENT_MOST = 30;

  private final Deque<Heard> recent = new ArrayDeque<>();
  private final Map<Oddity, Long> odd = new EnumMap<>(Oddity.class);
  private Optional<Heard> lastValue = Optional.empty();
  private long heardCount;
  private long garbledCount;
  private long leftOutCount;

  synchronized void hear(Heard heard) {
    heardCount++;
    leftOutCount += heard.leftOutCount();
    heard.oddities().forEach(one -> odd.merge(one, 1L, Long::sum));
    if (heard.decoded() instanceof Decoded.Value) {
      lastValue = Optional.of(heard);
    } else {
      garbledCount++;
    }
    recent.addFirst(heard);
    if (recent.size() > RECENT_MOST) {
      recent.removeLast();
    }
  }

  synchronized Gauge gauge(Tie tie, Line line) {
    Counts counts =
        new Counts(
            heardCount,
            garbledCount,
            count(Oddity.REPEATED),
            count(Oddity.POWER_ON_VALUE),
            count(Oddity.CLOCK_WENT_BACK),
            count(Oddity.CLAIMED_AHEAD) + count(Oddity.CLAIMED_OLD),
            leftOutCount);
    Optional<Heard> last = Optional.ofNullable(recent.peekFirst());
    return new Gauge(tie, line, last, lastValue, counts, gap(), List.copyOf(recent));
  }

  private long count(Oddity oddity) {
    return odd.getOrDefault(oddity, 0L);
  }

  private Optional<Duration> gap() {
    List<Instant> arrivals = recent.stream().map(Heard::received).toList();
    List<Duration> gaps = new ArrayList<>();
    for (int i = 1; i < arrivals.size(); i++) {
      gaps.add(Duration.between(arrivals.get(i), arrivals.get(i - 1)));
    }
    gaps.sort(null);
    return gaps.isEmpty() ? Optional.empty() : Optional.of(gaps.get(gaps.size() / 2));
  }
}
