package gylebook.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;

final class QuietTest {
  @Test
  void asksAnotherMethodToAssert() {
    looksRight(new Random(7).nextInt());
  }

  @Disabled("waits for the rig's second probe, 2026-02-01")
  @Test
  void isSwitchedOffWithReasonAndDate() {
    assertThat(1).isEqualTo(1);
  }

  private void looksRight(int drawn) {
    assertThat(drawn).isNotZero();
  }
}
