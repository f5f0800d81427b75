package gylebook.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.opentest4j.TestAbortedException;

final class BrowserTest {
  private static final Path NOWHERE = Path.of("/nowhere/chromium");

  @Test
  void aMissingBrowserFailsUnderCi() {
    assertThatThrownBy(() -> Browser.orSkip(NOWHERE, false, true))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("/nowhere/chromium");
  }

  @Test
  void aMissingBrowserIsANamedSkipElsewhere() {
    assertThatThrownBy(() -> Browser.orSkip(NOWHERE, false, false))
        .isInstanceOf(TestAbortedException.class)
        .hasMessageContaining("no browser at /nowhere/chromium");
  }

  @Test
  void theNamedBrowserComesFirstThenTheOneWithoutWindowsThenTheWholeOne() {
    assertThat(Browser.place("/some/where", _ -> true)).isEqualTo(Path.of("/some/where"));
    assertThat(Browser.place(null, _ -> true)).isEqualTo(Browser.HEADLESS);
    assertThat(Browser.place(" ", Browser.WHOLE::equals)).isEqualTo(Browser.WHOLE);
  }

  @Test
  void aBrowserThatIsThereIsUsed() {
    assertThat(Browser.orSkip(NOWHERE, true, true)).isEqualTo(NOWHERE);
  }
}
