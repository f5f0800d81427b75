package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

final class WatchTest {
  private static final Unit CELSIUS = Unit.known(Quantity.TEMPERATURE, "°C");
  private static final Instrument PROBE = new Instrument("probe", "suction", CELSIUS);

  private Instant now = Instant.parse("2026-10-25T00:30:00Z");
  private final Ear ear = new Ear();
  private final Watch watch = new Watch(() -> now, ear);

  private Set<Oddity> hear(double readC) {
    return hear(PROBE.value(readC, CELSIUS, "" + readC, Optional.empty()));
  }

  private Set<Oddity> hear(Decoded decoded) {
    watch.hear(PROBE, decoded);
    return ear.heard.getLast().oddities();
  }

  private Set<Oddity> hearAt(Instant claimed) {
    return hear(PROBE.value(66, CELSIUS, "66", Optional.of(claimed)));
  }

  @Test
  void eightyFiveOutOfNowhereIsAPowerOnValueAndEightyFiveOnTheWayUpIsNone() {
    assertThat(hear(85)).containsExactly(Oddity.POWER_ON_VALUE);
    assertThat(hear(20.1)).isEmpty();
    assertThat(hear(85)).containsExactly(Oddity.POWER_ON_VALUE);
    assertThat(hear(85)).containsExactly(Oddity.POWER_ON_VALUE);
    assertThat(hear(84.9)).isEmpty();
    assertThat(hear(85)).isEmpty();
    assertThat(hear(85)).isEmpty();
  }

  @Test
  void theSameValueWithTheSameTimeIsARepeatAndTheSameValueAloneIsNone() {
    assertThat(hear(66)).isEmpty();
    assertThat(hear(66)).isEmpty();
    assertThat(hearAt(now)).isEmpty();
    assertThat(hearAt(now)).containsExactly(Oddity.REPEATED);
    assertThat(hearAt(now.plusSeconds(1))).isEmpty();
  }

  @Test
  void aTimeAheadIsNotUsedAndAnOldOneIs() {
    assertThat(hearAt(now.plus(Duration.ofHours(2)))).containsExactly(Oddity.CLAIMED_AHEAD);
    assertThat(ear.heard.getLast().at()).isEqualTo(now);
    Instant before = now.minus(Duration.ofMinutes(5));
    assertThat(hearAt(before)).containsExactly(Oddity.CLAIMED_OLD);
    assertThat(ear.heard.getLast().at()).isEqualTo(before);
    assertThat(hearAt(Instant.EPOCH)).containsExactly(Oddity.CLAIMED_OLD);
  }

  @Test
  void aClockThatIsSetBackIsSaidAndTheReadingIsHandedOn() {
    hear(66);
    now = now.minus(Duration.ofHours(1));
    assertThat(hear(66.1)).containsExactly(Oddity.CLOCK_WENT_BACK);
    now = now.plusSeconds(1);
    assertThat(hear(66.2)).isEmpty();
    assertThat(ear.heard).hasSize(3);
  }

  @Test
  void ageIsForTheReaderToAskAndNeverBelowZero() {
    hear(66);
    Heard heard = ear.heard.getFirst();
    assertThat(heard.age(now.plusSeconds(90))).isEqualTo(Duration.ofSeconds(90));
    assertThat(heard.age(now.minusSeconds(90))).isZero();
  }

  @Test
  void aFloodIsThinnedToFiveASecondAndWhatWasLeftOutIsCounted() {
    for (int i = 0; i < 10_000; i++) {
      watch.hear(PROBE, PROBE.value(20 + i * 1e-3, CELSIUS, "" + i, Optional.empty()));
      now = now.plusMillis(1);
    }
    // Ten seconds: twenty at once and five a second after that.
    assertThat(ear.heard).hasSizeBetween(65, 72);
    long told = ear.heard.stream().mapToLong(one -> 1 + one.leftOutCount()).sum();
    assertThat(told).isBetween(9_700L, 10_000L);
    assertThat(ear.heard.stream().map(Heard::received)).isSorted();
  }

  @Test
  void aListenerThatFailsStopsNothing() {
    Watch fragile =
        new Watch(
            () -> now,
            one -> {
              ear.accept(one);
              throw new IllegalStateException("the page is gone");
            });
    fragile.hear(PROBE, Decoded.garbled("?", "is no number"));
    fragile.hear(PROBE, PROBE.value(66, CELSIUS, "66", Optional.empty()));
    Predicate<Heard> value = one -> one.decoded() instanceof Decoded.Value;
    assertThat(ear.heard).hasSize(2).last().matches(value);
  }
}
