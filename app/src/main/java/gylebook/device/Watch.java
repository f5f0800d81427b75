package gylebook.device;

import gylebook.units.Quantity;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/// Stands between a driver and whoever listens: stamps each reading, says what is odd about it, and
/// thins a flood. One instrument's readings are handed on in the order they came.
///
/// The limits are assumptions of ours: nobody uses more than five readings a second of a kettle,
/// and no kettle changes by 5 K between two of them.
final class Watch {
  private static final System.Logger LOG = System.getLogger(Watch.class.getName());
  private static final int BURST_COUNT = 20;
  private static final Duration REFILL = Duration.ofMillis(200);
  private static final Duration CLAIM_SLACK = Duration.ofMinutes(1);
  private static final double POWER_ON_C = 85;
  private static final double SAME_C = 1e-6;
  private static final double NEAR_K = 5;

  private final InstantSource clock;
  private final Consumer<Heard> ear;
  private final Map<String, Past> pasts = new ConcurrentHashMap<>();

  Watch(InstantSource clock, Consumer<Heard> ear) {
    this.clock = clock;
    this.ear = ear;
  }

  /// What is remembered of one instrument.
  private static final class Past {
    private Optional<Instant> received = Optional.empty();
    private Optional<Decoded.Value> value = Optional.empty();

    /// The last temperature that was not a power-on value.
    private OptionalDouble soundC = OptionalDouble.empty();

    private Instant refilled = Instant.MIN;
    private int left = BURST_COUNT;
    private long leftOutCount;
  }

  Instant now() {
    return clock.instant();
  }

  /// Hands on what an instrument said just now.
  void hear(Instrument instrument, Decoded decoded) {
    hear(instrument, decoded, Set.of());
  }

  /// Hands on what an instrument said just now, with what the transport found odd.
  void hear(Instrument instrument, Decoded decoded, Set<Oddity> known) {
    Past past = pasts.computeIfAbsent(instrument.id(), _ -> new Past());
    synchronized (past) {
      Instant now = now();
      Set<Oddity> oddities = EnumSet.noneOf(Oddity.class);
      oddities.addAll(known);
      if (past.received.isPresent() && now.isBefore(past.received.get())) {
        oddities.add(Oddity.CLOCK_WENT_BACK);
      }
      past.received = Optional.of(now);
      if (decoded instanceof Decoded.Value value) {
        oddities.addAll(odd(value, past, now));
        past.value = Optional.of(value);
      }
      if (spent(past, now)) {
        past.leftOutCount++;
        return;
      }
      Heard heard = new Heard(instrument.id(), now, decoded, oddities, past.leftOutCount);
      past.leftOutCount = 0;
      tell(heard);
    }
  }

  private static Set<Oddity> odd(Decoded.Value value, Past past, Instant now) {
    Set<Oddity> oddities = EnumSet.noneOf(Oddity.class);
    if (value.claimed().isPresent()) {
      Instant claimed = value.claimed().get();
      if (past.value.filter(value::equals).isPresent()) {
        oddities.add(Oddity.REPEATED);
      }
      if (claimed.isAfter(now.plus(CLAIM_SLACK))) {
        oddities.add(Oddity.CLAIMED_AHEAD);
      } else if (claimed.isBefore(now.minus(CLAIM_SLACK))) {
        oddities.add(Oddity.CLAIMED_OLD);
      }
    }
    if (value.amount().unit().quantity() == Quantity.TEMPERATURE) {
      double readC = value.amount().inside();
      boolean near =
          past.soundC.isPresent() && Math.abs(past.soundC.getAsDouble() - readC) <= NEAR_K;
      if (Math.abs(readC - POWER_ON_C) < SAME_C && !near) {
        oddities.add(Oddity.POWER_ON_VALUE);
      } else {
        past.soundC = OptionalDouble.of(readC);
      }
    }
    return oddities;
  }

  /// Whether this instrument has used up its readings: 20 at once, then five a second.
  private static boolean spent(Past past, Instant now) {
    if (past.refilled.equals(Instant.MIN) || now.isBefore(past.refilled)) {
      past.refilled = now;
    }
    long drops = Math.min(BURST_COUNT, Duration.between(past.refilled, now).dividedBy(REFILL));
    if (drops > 0) {
      past.left = (int) Math.min(BURST_COUNT, past.left + drops);
      past.refilled = now;
    }
    if (past.left == 0) {
      return true;
    }
    past.left--;
    return false;
  }

  private void tell(Heard heard) {
    try {
      ear.accept(heard);
    } catch (RuntimeException broken) {
      LOG.log(Level.WARNING, "A reading of " + heard.instrumentId() + " was not taken", broken);
    }
  }
}
