package gylebook.gate;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InterfaceAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/// Looks at the machine's own network; again when some seconds have passed, because a router may
/// hand out another address.
public final class NetworkHome implements Supplier<Home> {
  private static final long FRESH_NANOS = Duration.ofSeconds(10).toNanos();

  /// Bridges and tunnels lead to no tablet; they come last.
  private static final Pattern INWARD =
      Pattern.compile("(docker|br-|veth|virbr|vmnet|vboxnet|tun|tap|wg).*");

  private final LongSupplier nanos;
  private final Set<String> knownAs;
  private Home home;
  private long lookedNanos;

  private record Found(String port, Home.Place place) {}

  /// @param nanos time that only ever goes on
  /// @param knownAs further names that the brewer gave it
  public NetworkHome(LongSupplier nanos, Set<String> knownAs) {
    this.nanos = nanos;
    this.knownAs = Set.copyOf(knownAs);
    this.lookedNanos = nanos.getAsLong();
    this.home = look();
  }

  @Override
  public synchronized Home get() {
    long now = nanos.getAsLong();
    if (now - lookedNanos > FRESH_NANOS) {
      lookedNanos = now;
      home = look();
    }
    return home;
  }

  private Home look() {
    Set<String> names = new HashSet<>();
    knownAs.forEach(name -> names.add(name.toLowerCase(Locale.ROOT)));
    try {
      String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
      if (name.matches("[a-z0-9][a-z0-9.-]*[a-z][a-z0-9-]*") && !name.equals("localhost")) {
        names.add(name);
        String alone = name.replaceFirst("\\..*$", "");
        names.add(alone);
        names.add(alone + ".local");
      }
    } catch (UnknownHostException _) {
      // Without a name it is reached by its addresses.
    }
    return new Home(names, addresses());
  }

  private static List<Home.Place> addresses() {
    List<Found> found = new ArrayList<>();
    try {
      for (NetworkInterface port : NetworkInterface.networkInterfaces().toList()) {
        for (InterfaceAddress one : port.getInterfaceAddresses()) {
          InetAddress address = one.getAddress();
          // A link-local address of IPv6 needs a zone, and no browser takes one.
          boolean linkLocalSix = address.isLinkLocalAddress() && !isFour(address);
          if (!address.isLoopbackAddress() && !linkLocalSix) {
            found.add(
                new Found(port.getName(), new Home.Place(address, one.getNetworkPrefixLength())));
          }
        }
      }
    } catch (SocketException _) {
      // What could not be seen is not served by its address.
    }
    return found.stream()
        .sorted(
            Comparator.comparing((Found one) -> INWARD.matcher(one.port()).matches())
                .thenComparing(one -> !isFour(one.place().address()))
                .thenComparing(one -> !one.place().address().isSiteLocalAddress()))
        .map(Found::place)
        .toList();
  }

  private static boolean isFour(InetAddress address) {
    return address instanceof Inet4Address;
  }
}
