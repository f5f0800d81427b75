package gylebook.device;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.awaitility.Awaitility;
import org.awaitility.core.ConditionFactory;

/// Remembers what was heard, and waits for it.
final class Ear implements Consumer<Heard> {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  final List<Heard> heard = new CopyOnWriteArrayList<>();

  @Override
  public void accept(Heard one) {
    heard.add(one);
  }

  /// Waits until something of this kind has been heard, and gives the first of it.
  Heard first(Predicate<Heard> wanted) {
    soon().until(() -> has(wanted));
    return heard.stream().filter(wanted).findFirst().orElseThrow();
  }

  /// Waits for a value, given in the inside unit.
  Heard value(String instrument, double inside) {
    return first(
        one -> one.instrumentId().equals(instrument) && Math.abs(inside(one) - inside) < 1e-4);
  }

  /// Waits until an instrument has sent something garbled.
  Decoded.Garbled garbled(String instrument) {
    return (Decoded.Garbled)
        first(
                one ->
                    one.instrumentId().equals(instrument)
                        && one.decoded() instanceof Decoded.Garbled)
            .decoded();
  }

  /// Waits for something that has to come, however slow the machine.
  static ConditionFactory soon() {
    return Awaitility.await()
        .atMost(PATIENCE)
        .pollDelay(Duration.ZERO)
        .pollInterval(Duration.ofMillis(10));
  }

  boolean has(Predicate<Heard> wanted) {
    return heard.stream().anyMatch(wanted);
  }

  static double inside(Heard one) {
    return one.decoded() instanceof Decoded.Value value ? value.amount().inside() : Double.NaN;
  }
}
