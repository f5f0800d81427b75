package gylebook.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Random;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;

final class SleepyTest {
  @Test
  void waitsForNoReason() throws InterruptedException {
    Thread.sleep(100); // FAULT test
    assertThat(Instant.now()).isNotNull(); // FAULT test
    assertThat(new Random().nextInt()).isNotNull(); // FAULT test
  }

  @Disabled // FAULT test
  @Test
  void isSwitchedOffInSilence() {
    assertThat(1).isEqualTo(1);
  }

  @Disabled("does not work") // FAULT test
  @Test
  void isSwitchedOffWithoutADate() {
    assertThat(1).isEqualTo(1);
  }

  @Test // FAULT test
  void assertsNothing() {
    int a = 1;
  }

  @Test // FAULT test
  void testOne() {
    assertThat(1).isEqualTo(1);
  }
}
