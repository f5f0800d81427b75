package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// Beliefs, gates and what gyles teach, worked with pencil and paper from the definitions; the two
/// distributions where they have closed forms.
class FiltersByHandTest {
  /// K = 4/5: four fifths of the way from 66 to 65; P' = 0.2 x 4; off by one in a doubt of root 5.
  @Test
  void aBeliefOfTwoKelvinMeetsAReadingOfOne() {
    ScalarKalman.Updated after = ScalarKalman.updated(66, 2, 65, 1);
    assertThat(after.meanC()).isCloseTo(65.2, within(1e-12));
    assertThat(after.doubtK()).isCloseTo(Math.sqrt(0.8), within(1e-12));
    assertThat(after.gainFrac()).isCloseTo(0.8, within(1e-12));
    assertThat(after.surpriseRatio()).isCloseTo(-1 / Math.sqrt(5), within(1e-12));
  }

  /// q = 0.01, R = 0.25: P = (0.01 + root(0.0001 + 0.01))/2 = 0.0552494, its root 0.235052; a step
  /// of the filter leads from it to itself: 0.0552494 x 0.25/0.3052494 + 0.01.
  @Test
  void whatWandersIsKnownSoWellAndNoBetter() {
    double doubtK = ScalarKalman.steadyDoubtK(0.1, 0.5);
    assertThat(doubtK).isCloseTo(0.235052, within(1e-6));
    double p = doubtK * doubtK;
    assertThat(p * 0.25 / (p + 0.25) + 0.01).isCloseTo(p, within(1e-12));
  }

  /// Chi-square of two numbers is an exponential of mean 2: the gate is -2 ln(1 - share).
  @Test
  void twoNumbersPassAnExponentialGate() {
    double gate = -2 * Math.log(0.05);
    assertThat(ChiSquareGate.gateNumber(0.95, 2)).isCloseTo(gate, within(1e-7));
    assertThat(ChiSquareGate.meanLimitNumber(0.95, 1, 2)).isCloseTo(gate, within(1e-7));
    assertThat(ChiSquareGate.meanLimitNumber(0.95, 2, 1)).isCloseTo(gate / 2, within(1e-7));
    assertThatIllegalArgumentException().isThrownBy(() -> ChiSquareGate.gateNumber(0, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> ChiSquareGate.gateNumber(1, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ChiSquareGate.meanLimitNumber(0.95, 2000, 1000))
        .withMessageContaining("all numbers");
  }

  @Test
  void farSurprisesCountByTheKneeOverTheirSize() {
    assertThat(ChiSquareGate.huberFrac(4, 2)).isEqualTo(0.5);
    assertThat(ChiSquareGate.huberFrac(-5, 2)).isEqualTo(0.4);
    assertThat(ChiSquareGate.huberFrac(1, 2)).isEqualTo(1);
  }

  /// Four boil-offs of mean 4.65 and squares 0.13 about it, on a middle of 5 worth two: m = (10 +
  /// 18.6)/6, a = 3 + 2, b = 0.5 + 0.065 + 2 x 4 x 0.35^2/12 = 0.6466667.
  @Test
  void fourGylesMoveABeliefThatIsWorthTwo() {
    RateLearning.Learnt before = new RateLearning.Learnt(5, 2, 3, 0.5);
    RateLearning.Learnt after = before.after(4.6, 4.9, 4.4, 4.7);
    assertThat(after.meanNumber()).isCloseTo(28.6 / 6, within(1e-12));
    assertThat(after.worthCount()).isEqualTo(6);
    assertThat(after.shapeNumber()).isEqualTo(5);
    assertThat(after.scatterNumber()).isCloseTo(0.565 + 0.98 / 12, within(1e-12));
    assertThat(before.after()).isEqualTo(before);
  }

  /// Student's t of two degrees of freedom has the quantile (2p - 1)/root(2p(1 - p)): 2.919986 at
  /// 0.95; scale root(0.5 x 3/2). One gyle of 4.7 more on 5 worth two leads to 14.7/3.
  @Test
  void theNextGyleLiesWithinStudentsRange() {
    double quantile = 0.9 / Math.sqrt(2 * 0.95 * 0.05);
    assertThat(new RateLearning.Learnt(5, 2, 1, 0.5).halfWidthNumber(0.9))
        .isCloseTo(Math.sqrt(0.75) * quantile, within(1e-6));
    // Of four degrees of freedom tables have 2.1318; scale root(0.5 x 3/(2 x 2)).
    assertThat(new RateLearning.Learnt(5, 2, 2, 0.5).halfWidthNumber(0.9))
        .isCloseTo(Math.sqrt(0.375) * 2.1318, within(1e-4));
    RateLearning.Expected next = RateLearning.next(5, 2, 0.5, 0.5, 4.7);
    assertThat(next.meanNumber()).isCloseTo(4.9, within(1e-12));
    // a' = 1, k' = 3, b' = 0.5 + 2 x 0.3^2/6 = 0.53: scale root(0.53 x 4/3).
    assertThat(next.halfWidthNumber()).isCloseTo(Math.sqrt(0.53 * 4 / 3) * quantile, within(1e-6));
  }
}
