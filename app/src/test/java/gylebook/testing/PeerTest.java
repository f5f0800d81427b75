package gylebook.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.opentest4j.TestAbortedException;

final class PeerTest {
  @Test
  void aMissingPeerFailsUnderCi() {
    assertThatThrownBy(() -> Peer.orSkip("broker", Optional.empty(), "broker-package", true))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("no broker;")
        .hasMessageContaining("broker-package");
  }

  @Test
  void aMissingPeerIsANamedSkipElsewhere() {
    assertThatThrownBy(() -> Peer.orSkip("broker", Optional.empty(), "broker-package", false))
        .isInstanceOf(TestAbortedException.class)
        .hasMessageContaining("no broker;");
  }

  @Test
  void aPeerThatIsThereIsUsed() {
    Path sh = Path.of("/bin/sh");
    assertThat(Peer.orSkip("sh", Optional.of(sh), "dash", true)).isEqualTo(sh);
  }
}
