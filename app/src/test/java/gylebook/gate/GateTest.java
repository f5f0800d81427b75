package gylebook.gate;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.gate.Caller.Errand;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class GateTest {
  private static final InetAddress LOOPBACK = InetAddress.ofLiteral("127.0.0.1");
  private static final InetAddress TABLET = InetAddress.ofLiteral("192.168.7.20");
  private static final Home HOME =
      new Home(Set.of("cellar"), List.of(new Home.Place(InetAddress.ofLiteral("192.168.7.5"), 24)));

  @TempDir private Path folder;

  private final Ticking clock = new Ticking();
  private final RandomGenerator chance = RandomGeneratorFactory.of("L64X128MixRandom").create(1);
  private Screens screens;
  private Gate open;
  private Gate encrypted;

  @BeforeEach
  void build() throws IOException {
    screens = new Screens(new ScreenFile(folder.resolve("screens.json")), clock, chance);
    Codes codes = new Codes(clock.nanos(), chance);
    open = Gate.open(() -> HOME, codes, screens, clock.nanos(), Optional.empty());
    HomeAuthority authority = HomeAuthority.open(folder, () -> HOME, clock);
    encrypted = Gate.open(() -> HOME, codes, screens, clock.nanos(), Optional.of(authority));
  }

  private String token() {
    assertThat(screens.letIn("tablet")).isInstanceOf(Screens.LetIn.Done.class);
    return ((Screens.LetIn.Done) screens.letIn("tablet")).token();
  }

  private static Caller caller(InetAddress from, String host, Errand errand, String token) {
    return new Caller(from, host, false, false, errand, Optional.of(token));
  }

  private static Caller changes(InetAddress from, Errand errand, String token) {
    return new Caller(from, "cellar", false, true, errand, Optional.of(token));
  }

  @Test
  void theMachineItselfAlwaysMayByTheNamesOfItsLoopback() {
    for (Gate gate : List.of(Gate.closed(), open, encrypted)) {
      for (String host : List.of("localhost", "127.0.0.1", "[::1]")) {
        assertThat(gate.ask(caller(LOOPBACK, host, Errand.BOOK, ""))).isInstanceOf(Let.Own.class);
      }
      assertThat(gate.ask(caller(LOOPBACK, "brewery.example", Errand.BOOK, "")))
          .as("a foreign name that leads here")
          .isInstanceOf(Let.Refused.class);
    }
  }

  @Test
  void aClosedGateKnowsNobodyElse() {
    String token = token();
    for (Errand errand : Errand.values()) {
      assertThat(Gate.closed().ask(caller(TABLET, "cellar", errand, token)))
          .isInstanceOf(Let.Refused.class);
    }
  }

  @Test
  void nobodyElsePassesForTheMachineItself() {
    for (String host : List.of("localhost", "127.0.0.1", "[::1]", "", "brewery.example")) {
      assertThat(open.ask(caller(TABLET, host, Errand.BOOK, token())))
          .as(host)
          .isInstanceOf(Let.Refused.class);
    }
    assertThat(open.ask(caller(LOOPBACK, "cellar", Errand.BOOK, "")))
        .as("the machine by its name on the network is like any other")
        .isInstanceOf(Let.Stranger.class);
  }

  @Test
  void onTheHomeNetworkATokenIsAskedFor() {
    String token = token();
    assertThat(open.ask(caller(TABLET, "cellar", Errand.BOOK, token))).isInstanceOf(Let.In.class);
    assertThat(open.ask(caller(TABLET, "192.168.7.5", Errand.BOOK, token)))
        .isInstanceOf(Let.In.class);
    assertThat(open.ask(caller(TABLET, "cellar", Errand.BOOK, "x")))
        .isInstanceOf(Let.Stranger.class);
    InetAddress far = InetAddress.ofLiteral("198.51.100.9");
    assertThat(open.ask(caller(far, "cellar", Errand.BOOK, token)))
        .as("from beyond the home network, whatever it shows")
        .isInstanceOf(Let.Refused.class);
  }

  @Test
  void withoutATokenThereIsTheDoorstepOnly() {
    for (Errand errand : Errand.values()) {
      assertThat(open.ask(caller(TABLET, "cellar", errand, "")))
          .as(errand.name())
          .isInstanceOf(errand == Errand.BOOK ? Let.Stranger.class : Let.Doorstep.class);
    }
  }

  @Test
  void whereLinesAreEncryptedAnOpenLineGetsTheCertificateAndBoardsPostOnly() {
    String token = token();
    for (Errand errand : Errand.values()) {
      boolean plain = errand == Errand.OPEN || errand == Errand.READING;
      assertThat(encrypted.ask(caller(TABLET, "cellar", errand, token)))
          .as(errand.name())
          .isInstanceOf(plain ? Let.Doorstep.class : Let.Unencrypted.class);
    }
    Caller secure = new Caller(TABLET, "cellar", true, false, Errand.BOOK, Optional.of(token));
    assertThat(encrypted.ask(secure)).isInstanceOf(Let.In.class);
  }

  @Test
  void codesAreTriedTenTimesAndThenSlowly() {
    for (int i = 0; i < 10; i++) {
      assertThat(open.ask(changes(TABLET, Errand.CODE, ""))).isInstanceOf(Let.Doorstep.class);
    }
    assertThat(open.ask(changes(TABLET, Errand.CODE, ""))).isInstanceOf(Let.Pause.class);
    InetAddress other = InetAddress.ofLiteral("192.168.7.21");
    assertThat(open.ask(changes(other, Errand.CODE, "")))
        .as("another address has its own count")
        .isInstanceOf(Let.Doorstep.class);
    clock.setBy(Duration.ofHours(-5));
    clock.pass(Duration.ofSeconds(30));
    assertThat(open.ask(changes(TABLET, Errand.CODE, ""))).isInstanceOf(Let.Doorstep.class);
    assertThat(open.ask(changes(TABLET, Errand.CODE, ""))).isInstanceOf(Let.Pause.class);
  }

  @Test
  void aDaysNotesComeThroughAndAFloodWaits() {
    String token = token();
    for (int i = 0; i < 400; i++) {
      assertThat(open.ask(changes(TABLET, Errand.BOOK, token))).isInstanceOf(Let.In.class);
    }
    assertThat(open.ask(changes(TABLET, Errand.BOOK, token)))
        .isEqualTo(
            new Let.Pause("Many changes at once. Nothing is lost; it goes on in a moment.", 2));
    assertThat(open.ask(caller(TABLET, "cellar", Errand.BOOK, token)))
        .as("looking goes on")
        .isInstanceOf(Let.In.class);
    clock.pass(Duration.ofSeconds(1));
    for (int i = 0; i < 4; i++) {
      assertThat(open.ask(changes(TABLET, Errand.BOOK, token))).isInstanceOf(Let.In.class);
    }
    assertThat(open.ask(changes(TABLET, Errand.BOOK, token))).isInstanceOf(Let.Pause.class);
  }

  @Test
  void aFloodOfAnythingWaitsAndReadingsAreCountedApart() {
    int asked = 0;
    while (open.ask(caller(TABLET, "cellar", Errand.BOOK, "")) instanceof Let.Stranger) {
      asked++;
    }
    assertThat(asked).isEqualTo(600);
    for (int i = 0; i < 1_000; i++) {
      assertThat(open.ask(changes(TABLET, Errand.READING, ""))).isInstanceOf(Let.Doorstep.class);
    }
    assertThat(open.ask(changes(TABLET, Errand.READING, ""))).isInstanceOf(Let.Pause.class);
  }

  @Test
  void theMachineItselfIsNeverToldToWait() {
    Caller note = new Caller(LOOPBACK, "localhost", false, true, Errand.BOOK, Optional.empty());
    for (int i = 0; i < 5_000; i++) {
      assertThat(open.ask(note)).isInstanceOf(Let.Own.class);
    }
  }

  @Test
  void manyAddressesDoNotFillTheMemoryOrStopTheOthers() {
    for (int i = 0; i < 100_000; i++) {
      byte[] bytes = {10, (byte) (i >> 16), (byte) (i >> 8), (byte) i};
      Caller one = caller(address(bytes), "cellar", Errand.OPEN, "");
      assertThat(open.ask(one)).isInstanceOf(Let.Doorstep.class);
    }
    assertThat(open.ask(caller(TABLET, "cellar", Errand.OPEN, "")))
        .isInstanceOf(Let.Doorstep.class);
  }

  private static InetAddress address(byte[] bytes) {
    try {
      return InetAddress.getByAddress(bytes);
    } catch (java.net.UnknownHostException impossible) {
      throw new AssertionError(impossible);
    }
  }
}
