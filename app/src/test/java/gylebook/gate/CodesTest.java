package gylebook.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

final class CodesTest {
  private final Ticking clock = new Ticking();
  private final RandomGenerator chance = RandomGeneratorFactory.of("L64X128MixRandom").create(4);
  private final Codes codes = new Codes(clock.nanos(), chance);

  private static String wrong(String code) {
    return (code.charAt(0) == '1' ? "2" : "1") + code.substring(1);
  }

  @Test
  void aCodeIsGoodOnceHoweverItIsSpaced() {
    String code = codes.fresh();
    assertThat(code).matches("[0-9]{8}");
    assertThat(codes.take(" " + code.substring(0, 4) + " - " + code.substring(4) + "\n")).isTrue();
    assertThat(codes.take(code)).as("a second time").isFalse();
    assertThat(codes.left()).isEmpty();
  }

  @Test
  void itEndsAfterFiveMinutesWhateverTheClockOnTheWallSays() {
    String code = codes.fresh();
    clock.pass(Codes.LASTS.minusMillis(1));
    assertThat(codes.left()).hasValue(Duration.ofMillis(1));
    clock.setBy(Duration.ofHours(-3));
    clock.pass(Duration.ofMillis(1));
    assertThat(codes.take(code)).isFalse();
  }

  @Test
  void itEndsWhenItIsGuessedAtTooOften() {
    String code = codes.fresh();
    for (int i = 0; i < Codes.TRIES - 1; i++) {
      assertThat(codes.take(wrong(code))).isFalse();
    }
    assertThat(codes.left()).as("one try is left").isPresent();
    assertThat(codes.take(wrong(code))).isFalse();
    assertThat(codes.take(code)).as("the right one, too late").isFalse();
  }

  @Test
  void aTypingErrorIsForgiven() {
    String code = codes.fresh();
    assertThat(codes.take(wrong(code))).isFalse();
    assertThat(codes.take(code)).isTrue();
  }

  @Test
  void aNewCodeEndsTheOneBeforeAndNoCodeIsGoodWhenNoneWasAskedFor() {
    assertThat(codes.take("")).isFalse();
    assertThat(codes.take("00000000")).isFalse();
    String first = codes.fresh();
    String second = codes.fresh();
    assertThat(second).isNotEqualTo(first);
    assertThat(codes.take(first)).isFalse();
    codes.end();
    assertThat(codes.take(second)).isFalse();
  }

  @Test
  void codesDoNotRepeatThemselves() {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < 1_000; i++) {
      seen.add(codes.fresh());
    }
    // By chance a pair among 1000 of 100 million comes once in 200 runs; the seed is fixed.
    assertThat(seen).hasSize(1_000);
  }
}
