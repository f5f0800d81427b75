package gylebook.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LuckTest {
  @Test
  void drawsAreStandardNormal() {
    int count = 20_000;
    double sum = 0;
    double squares = 0;
    for (int member = 0; member < count; member++) {
      double z = Luck.z(20, "kettle.deadL", member);
      sum += z;
      squares += z * z;
    }
    // Four standard errors of a mean and of a variance of 20,000 normal draws.
    assertThat(sum / count).isCloseTo(0, within(0.029));
    assertThat(squares / count).isCloseTo(1, within(0.041));
  }

  @Test
  void namesAndMembersAndSeedsHaveLuckOfTheirOwn() {
    int count = 5_000;
    double names = 0;
    double neighbours = 0;
    double seeds = 0;
    for (int member = 0; member < count; member++) {
      double z = Luck.z(20, "a", member);
      names += z * Luck.z(20, "b", member);
      neighbours += z * Luck.z(20, "a", member + 1);
      seeds += z * Luck.z(21, "a", member);
    }
    assertThat(names / count).isCloseTo(0, within(0.057));
    assertThat(neighbours / count).isCloseTo(0, within(0.057));
    assertThat(seeds / count).isCloseTo(0, within(0.057));
  }

  @Test
  void theDayWithoutLuckStandsAtTheMiddle() {
    assertThat(Luck.z(20, "a", -1)).isZero();
  }
}
