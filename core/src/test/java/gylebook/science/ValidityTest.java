package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ValidityTest {
  private static final Validity RANGE = new Validity("fall in P", 0, 0.258, "bottles burst");

  @Test
  void bothEndsBelongToTheRange() {
    assertThat(RANGE.holds(0)).isTrue();
    assertThat(RANGE.holds(0.258)).isTrue();
    assertThat(RANGE.caution(0.258)).isEmpty();
    assertThat(RANGE.holds(-1e-12)).isFalse();
    assertThat(RANGE.holds(0.2580001)).isFalse();
    assertThat(RANGE.holds(Double.NaN)).isFalse();
  }

  @Test
  void theCautionNamesValueAndEndsInDigitsThatAreRead() {
    assertThat(RANGE.caution(3.57402409977))
        .hasValue("fall in P is 3.57402, outside 0 to 0.258: bottles burst.");
    assertThat(RANGE.caution(-0.0001))
        .hasValue("fall in P is -0.0001, outside 0 to 0.258: bottles burst.");
    assertThat(RANGE.caution(1e-4 - 1)).get().asString().contains("is -0.9999,");
    assertThat(RANGE.caution(-0.00002)).get().asString().contains("is -0.00002,");
    assertThat(RANGE.caution(999_999_000)).get().asString().contains("is 999999000,");
    assertThat(RANGE.caution(1e9)).get().asString().contains("is 1E+9,");
    assertThat(RANGE.caution(Double.POSITIVE_INFINITY)).get().asString().contains("is Infinity,");
  }
}
