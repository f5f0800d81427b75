package gylebook.gate;

import java.net.InetAddress;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/// What this machine is called on the home network, and who is near it.
///
/// A page of a stranger can make its own name lead here (DNS rebinding), but it cannot make this
/// machine be called so.
///
/// @param names names without port, lower case
/// @param addresses its own addresses, the likeliest first
public record Home(Set<String> names, List<Place> addresses) {
  /// One address of this machine and the net it stands in.
  public record Place(InetAddress address, int prefixBits) {
    /// As it stands in an address line.
    public String host() {
      return hostOf(address);
    }

    private boolean near(InetAddress other) {
      byte[] mine = address.getAddress();
      byte[] its = other.getAddress();
      if (mine.length != its.length || prefixBits <= 0) {
        return false;
      }
      for (int bit = 0; bit < Math.min(prefixBits, Byte.SIZE * mine.length); bit++) {
        int mask = 0x80 >> (bit % Byte.SIZE);
        if (((mine[bit / Byte.SIZE] ^ its[bit / Byte.SIZE]) & mask) != 0) {
          return false;
        }
      }
      return true;
    }
  }

  /// Keeps its own copies.
  public Home {
    names = Set.copyOf(names);
    addresses = List.copyOf(addresses);
  }

  /// Whether this machine is called so.
  ///
  /// @param host a name or an address, an IPv6 address in brackets
  public boolean called(String host) {
    Optional<InetAddress> literal = literal(host);
    if (literal.isPresent()) {
      return addresses.stream().anyMatch(place -> place.address().equals(literal.get()));
    }
    String name = host.toLowerCase(Locale.ROOT);
    return names.contains(name.endsWith(".") ? name.substring(0, name.length() - 1) : name);
  }

  /// Whether somebody is on the home network: an address for private use, or one of the same net.
  public boolean near(InetAddress other) {
    return other.isLoopbackAddress()
        || other.isSiteLocalAddress()
        || other.isLinkLocalAddress()
        || isUniqueLocal(other)
        || addresses.stream().anyMatch(place -> place.near(other));
  }

  /// fc00::/7 of RFC 4193, which Java does not count as site-local.
  static boolean isUniqueLocal(InetAddress address) {
    byte[] bytes = address.getAddress();
    return bytes.length == 16 && (bytes[0] & 0xfe) == 0xfc;
  }

  /// An address as it stands in an address line; a zone is of no use to anybody else.
  static String hostOf(InetAddress address) {
    String text = address.getHostAddress().replaceFirst("%.*$", "");
    return text.contains(":") ? "[" + text + "]" : text;
  }

  private static Optional<InetAddress> literal(String host) {
    boolean six = host.startsWith("[") && host.endsWith("]");
    if (!six && !host.matches("[0-9]{1,3}(\\.[0-9]{1,3}){3}")) {
      return Optional.empty();
    }
    try {
      return Optional.of(InetAddress.ofLiteral(six ? host.substring(1, host.length() - 1) : host));
    } catch (IllegalArgumentException _) {
      return Optional.empty();
    }
  }
}
