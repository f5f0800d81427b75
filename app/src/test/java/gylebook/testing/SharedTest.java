package gylebook.testing;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.opentest4j.TestAbortedException;

final class SharedTest {
  @Test
  void whatIsNotBesideTheCheckoutIsANamedSkip() {
    assertThatThrownBy(() -> Shared.file("no/such/schema.json"))
        .isInstanceOf(TestAbortedException.class)
        .hasMessageContaining("../shared/no/such/schema.json");
  }
}
