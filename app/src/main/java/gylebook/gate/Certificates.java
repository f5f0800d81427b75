package gylebook.gate;

import java.io.IOException;
import java.math.BigInteger;
import java.net.InetAddress;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.CertificateEncodingException;
import java.security.cert.CertificateParsingException;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/// Makes certificates by RFC 5280.
final class Certificates {
  /// Names that are never given out on the net: RFC 6762, 8375, 6761, and what routers use.
  private static final List<String> HOMELY =
      List.of("local", "home.arpa", "internal", "lan", "test", "localhost");

  /// Addresses for private use: RFC 1918, 3927, 1122, 4193, and the loopback of IPv6.
  private static final List<String> PRIVATE =
      List.of(
          "10.0.0.0/8",
          "172.16.0.0/12",
          "192.168.0.0/16",
          "169.254.0.0/16",
          "127.0.0.0/8",
          "fc00::/7",
          "::1/128");

  private static final Duration CLOCKS_APART = Duration.ofDays(1);
  private static final int SERIAL_BITS = 127;
  private static final int DNS = GeneralName.dNSName;
  private static final int IP = GeneralName.iPAddress;

  private Certificates() {}

  /// A net as a name constraint has it: an address and its mask.
  private static final class Net {
    private final byte[] address;
    private final byte[] mask;

    private Net(byte[] address, byte[] mask) {
      this.address = address;
      this.mask = mask;
    }

    static Net of(String text) {
      String[] parts = text.split("/", 2);
      return of(InetAddress.ofLiteral(parts[0]), Integer.parseInt(parts[1]));
    }

    static Net of(InetAddress address, int bits) {
      byte[] mask = new byte[address.getAddress().length];
      for (int bit = 0; bit < bits; bit++) {
        mask[bit / Byte.SIZE] |= (byte) (0x80 >> (bit % Byte.SIZE));
      }
      return new Net(address.getAddress(), mask);
    }

    GeneralSubtree subtree() {
      byte[] both = Arrays.copyOf(address, 2 * address.length);
      System.arraycopy(mask, 0, both, address.length, mask.length);
      return new GeneralSubtree(new GeneralName(IP, new DEROctetString(both)));
    }

    boolean holds(byte[] other) {
      boolean holds = other.length == address.length;
      for (int i = 0; holds && i < address.length; i++) {
        holds = (other[i] & mask[i]) == address[i];
      }
      return holds;
    }
  }

  /// The certificate of an authority that may vouch for home names and addresses only.
  static X509Certificate authority(
      KeyPair pair, Home home, Instant now, Instant ends, SecureRandom chance)
      throws GeneralSecurityException, IOException {
    X500Name name = authorityName(now);
    X509v3CertificateBuilder builder =
        new JcaX509v3CertificateBuilder(
            name, serial(chance), begins(now), Date.from(ends), name, pair.getPublic());
    JcaX509ExtensionUtils keys = new JcaX509ExtensionUtils();
    builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
    builder.addExtension(
        Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
    builder.addExtension(
        Extension.subjectKeyIdentifier, false, keys.createSubjectKeyIdentifier(pair.getPublic()));
    builder.addExtension(Extension.nameConstraints, true, constraints(home));
    return signed(builder, pair.getPrivate());
  }

  private static X500Name authorityName(Instant now) {
    return new X500NameBuilder()
        .addRDN(BCStyle.CN, "Gylebook at home, made " + LocalDate.ofInstant(now, ZoneOffset.UTC))
        .build();
  }

  private static NameConstraints constraints(Home home) {
    List<GeneralSubtree> permitted = new ArrayList<>();
    Set<String> names = new TreeSet<>(HOMELY);
    names.addAll(home.names());
    names.forEach(name -> permitted.add(new GeneralSubtree(new GeneralName(DNS, name))));
    PRIVATE.forEach(net -> permitted.add(Net.of(net).subtree()));
    for (Home.Place place : home.addresses()) {
      byte[] address = place.address().getAddress();
      if (PRIVATE.stream().noneMatch(net -> Net.of(net).holds(address))) {
        permitted.add(Net.of(place.address(), Byte.SIZE * address.length).subtree());
      }
    }
    return new NameConstraints(permitted.toArray(new GeneralSubtree[0]), null);
  }

  /// What a machine is called, as far as an authority may vouch for it.
  static Set<String> names(Home home, X509Certificate authority)
      throws CertificateEncodingException {
    NameConstraints constraints =
        NameConstraints.getInstance(
            new JcaX509CertificateHolder(authority)
                .getExtension(Extension.nameConstraints)
                .getParsedValue());
    Set<String> names = new TreeSet<>();
    for (String name : home.names()) {
      if (allows(constraints, name, Optional.empty())) {
        names.add(name);
      }
    }
    for (Home.Place place : home.addresses()) {
      if (allows(constraints, "", Optional.of(place.address().getAddress()))) {
        names.add(place.host().replaceAll("[\\[\\]]", ""));
      }
    }
    return names;
  }

  private static boolean allows(NameConstraints by, String name, Optional<byte[]> address) {
    for (GeneralSubtree subtree : by.getPermittedSubtrees()) {
      GeneralName base = subtree.getBase();
      if (base.getTagNo() == DNS && address.isEmpty()) {
        String of = base.getName().toString();
        if (name.equals(of) || name.endsWith("." + of)) {
          return true;
        }
      } else if (base.getTagNo() == IP && address.isPresent()) {
        byte[] both = DEROctetString.getInstance(base.getName()).getOctets();
        int half = both.length / 2;
        Net net = new Net(Arrays.copyOf(both, half), Arrays.copyOfRange(both, half, both.length));
        if (net.holds(address.get())) {
          return true;
        }
      }
    }
    return false;
  }

  /// What a certificate of a server names.
  static Set<String> names(X509Certificate server) throws CertificateParsingException {
    Set<String> names = new TreeSet<>();
    Collection<List<?>> all = server.getSubjectAlternativeNames();
    if (all != null) {
      all.forEach(one -> names.add(String.valueOf(one.get(1))));
    }
    return names;
  }

  /// Signs certificates of servers.
  record Signer(PrivateKey key, X509Certificate authority, SecureRandom chance) {
    X509Certificate server(PublicKey of, Set<String> names, Instant now, Instant ends)
        throws GeneralSecurityException, IOException {
      X509v3CertificateBuilder builder =
          new JcaX509v3CertificateBuilder(
              authority,
              serial(chance),
              begins(now),
              Date.from(ends),
              new X500NameBuilder().addRDN(BCStyle.CN, "Gylebook").build(),
              of);
      JcaX509ExtensionUtils keys = new JcaX509ExtensionUtils();
      builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
      builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
      builder.addExtension(
          Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
      builder.addExtension(
          Extension.authorityKeyIdentifier, false, keys.createAuthorityKeyIdentifier(authority));
      builder.addExtension(Extension.subjectAlternativeName, false, alternatives(names));
      return signed(builder, key);
    }

    private static GeneralNames alternatives(Set<String> names) {
      return new GeneralNames(
          names.stream()
              .map(
                  name -> {
                    boolean number = name.contains(":") || name.matches("[0-9.]+");
                    return number
                        ? new GeneralName(
                            IP, new DEROctetString(InetAddress.ofLiteral(name).getAddress()))
                        : new GeneralName(DNS, name);
                  })
              .toArray(GeneralName[]::new));
    }
  }

  private static BigInteger serial(SecureRandom chance) {
    return new BigInteger(SERIAL_BITS, chance).setBit(SERIAL_BITS - 1);
  }

  private static Date begins(Instant now) {
    return Date.from(now.minus(CLOCKS_APART));
  }

  private static X509Certificate signed(X509v3CertificateBuilder builder, PrivateKey key)
      throws GeneralSecurityException {
    try {
      return new JcaX509CertificateConverter()
          .getCertificate(builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(key)));
    } catch (OperatorCreationException failure) {
      throw new GeneralSecurityException(failure);
    }
  }
}
