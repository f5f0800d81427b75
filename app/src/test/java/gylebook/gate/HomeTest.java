package gylebook.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Addresses are those set aside for documentation and private use: RFC 5737, 3849, 1918, 4193.
final class HomeTest {
  private static final Home HOME =
      new Home(
          Set.of("cellar", "cellar.local"),
          List.of(
              new Home.Place(InetAddress.ofLiteral("192.168.7.5"), 24),
              new Home.Place(InetAddress.ofLiteral("203.0.113.70"), 26),
              new Home.Place(InetAddress.ofLiteral("2001:db8:0:7::5"), 64)));

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cellar",
        "Cellar.LOCAL",
        "cellar.local.",
        "192.168.7.5",
        "[2001:db8:0:7::5]",
        "[2001:DB8:0:7:0:0:0:5]"
      })
  void itKnowsItsOwnNames(String host) {
    assertThat(HOME.called(host)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ".",
        "cellar.example",
        "example.cellar",
        "cellar.local.example",
        "192.168.7.6",
        "192.168.7.5.example",
        "3232237317",
        "0xc0a80705",
        "[::1]",
        "[2001:db8:0:7::6]",
        "[cellar]",
        "localhost",
        "127.0.0.1",
        "cellar@example",
        "[::ffff:192.168.7.5"
      })
  void whatAStrangerMayCallItIsNoneOfThem(String host) {
    assertThat(HOME.called(host)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "10.1.2.3, true",
    "172.31.0.1, true",
    "172.32.0.1, false",
    "192.168.200.1, true",
    "169.254.3.4, true",
    "fd12:3456::1, true",
    "fe80::1, true",
    "203.0.113.127, true",
    "203.0.113.128, false",
    "203.0.113.63, false",
    "2001:db8:0:7:ffff::1, true",
    "2001:db8:0:8::1, false",
    "198.51.100.1, false"
  })
  void nearIsWhatIsPrivateOrOfTheSameNet(String address, boolean near) {
    assertThat(HOME.near(InetAddress.ofLiteral(address))).isEqualTo(near);
  }

  @Test
  void theMachinesOwnNetworkHasItsAddressesButNotItsLoopback() {
    NetworkHome network = new NetworkHome(new Ticking().nanos(), Set.of("Brewhouse"));
    Home home = network.get();
    assertThat(home.called("brewhouse")).isTrue();
    assertThat(home.addresses()).noneMatch(place -> place.address().isLoopbackAddress());
    assertThat(home.addresses()).allMatch(place -> home.called(place.host()));
    assertThat(home.called("127.0.0.1")).isFalse();
  }
}
