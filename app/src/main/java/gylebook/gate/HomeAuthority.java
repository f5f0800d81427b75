package gylebook.gate;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/// The home's own certificate authority: it vouches for this machine and for nothing else.
///
/// Its certificate is put on each tablet once and is good for 2 years. It may only vouch for names
/// and addresses that exist at home, so that whoever steals its key cannot pass for a bank. The
/// certificate of the server is renewed by itself: before its end, and when the machine is called
/// otherwise.
public final class HomeAuthority {
  /// How long the authority is good for.
  static final Duration AUTHORITY_LASTS = Duration.ofDays(730);

  /// How long a certificate of the server is good for; browsers take somewhat more than a year.
  static final Duration SERVER_LASTS = Duration.ofDays(397);

  /// A certificate is renewed so long before its end.
  static final Duration AHEAD = Duration.ofDays(30);

  private static final String ALIAS = "gylebook";

  /// The rights of the file protect the key; a password in the program would protect nothing.
  private static final char[] PASSWORD = "gylebook".toCharArray();

  private final Path folder;
  private final Supplier<Home> home;
  private final InstantSource clock;
  private final SecureRandom chance;
  private Kept authority;
  private Kept server;

  /// A key with its certificate.
  private record Kept(PrivateKey key, X509Certificate certificate) {
    Instant ends() {
      return certificate.getNotAfter().toInstant();
    }
  }

  private HomeAuthority(
      Path folder,
      Supplier<Home> home,
      InstantSource clock,
      SecureRandom chance,
      Kept authority,
      Kept server) {
    this.folder = folder;
    this.home = home;
    this.clock = clock;
    this.chance = chance;
    this.authority = authority;
    this.server = server;
  }

  /// Opens the one that lies in a folder, or makes one.
  ///
  /// @param home what the machine is called, now
  public static HomeAuthority open(Path folder, Supplier<Home> home, InstantSource clock)
      throws IOException {
    SecureRandom chance = new SecureRandom();
    try {
      Optional<Kept> known = read(folder.resolve("authority.p12"));
      Kept authority =
          known.isPresent() && clock.instant().isBefore(known.get().ends())
              ? known.get()
              : founded(folder, home.get(), clock.instant(), chance);
      Optional<Kept> before = read(folder.resolve("server.p12"));
      Kept server =
          before.isPresent() && isOf(before.get(), authority)
              ? before.get()
              : issued(folder, authority, home.get(), clock.instant(), chance);
      HomeAuthority opened = new HomeAuthority(folder, home, clock, chance, authority, server);
      opened.renew();
      return opened;
    } catch (GeneralSecurityException failure) {
      throw new IOException("the home certificate: " + failure.getMessage(), failure);
    }
  }

  /// Renews what is near its end or does not name the machine as it is called now.
  ///
  /// @return whether there is something new
  public synchronized boolean renew() throws IOException {
    Instant now = clock.instant();
    try {
      boolean over = !now.isBefore(authority.ends());
      if (over) {
        authority = founded(folder, home.get(), now, chance);
      }
      // Nothing can outlast the authority, so its end is no reason.
      boolean near =
          now.plus(AHEAD).isAfter(server.ends()) && server.ends().isBefore(authority.ends());
      Set<String> names = Certificates.names(home.get(), authority.certificate());
      boolean renamed = !Certificates.names(server.certificate()).equals(names);
      if (over || near || renamed) {
        server = issued(folder, authority, home.get(), now, chance);
      }
      return over || near || renamed;
    } catch (GeneralSecurityException failure) {
      throw new IOException("the home certificate: " + failure.getMessage(), failure);
    }
  }

  /// What is put on a tablet.
  public synchronized X509Certificate certificate() {
    return authority.certificate();
  }

  /// The SHA-256 of it in pairs, for eyes to compare.
  public synchronized String fingerprint() {
    try {
      byte[] sha =
          MessageDigest.getInstance("SHA-256").digest(authority.certificate().getEncoded());
      return HexFormat.ofDelimiter(" ").formatHex(sha).toUpperCase(Locale.ROOT);
    } catch (GeneralSecurityException failure) {
      throw new IllegalStateException("every Java has SHA-256 and X.509", failure);
    }
  }

  /// The key and the certificates that the server shows.
  public synchronized KeyStore shown() {
    try {
      return store(server.key(), server.certificate(), authority.certificate());
    } catch (GeneralSecurityException | IOException failure) {
      throw new IllegalStateException("every Java has PKCS #12", failure);
    }
  }

  /// The word that opens [#shown].
  public String word() {
    return new String(PASSWORD);
  }

  private static boolean isOf(Kept server, Kept authority) {
    try {
      server.certificate().verify(authority.certificate().getPublicKey());
      return true;
    } catch (GeneralSecurityException _) {
      return false;
    }
  }

  private static Kept founded(Path folder, Home home, Instant now, SecureRandom chance)
      throws GeneralSecurityException, IOException {
    KeyPair pair = pair(chance);
    X509Certificate certificate =
        Certificates.authority(pair, home, now, now.plus(AUTHORITY_LASTS), chance);
    return written(folder.resolve("authority.p12"), new Kept(pair.getPrivate(), certificate));
  }

  private static Kept issued(
      Path folder, Kept authority, Home home, Instant now, SecureRandom chance)
      throws GeneralSecurityException, IOException {
    KeyPair pair = pair(chance);
    Instant ends = now.plus(SERVER_LASTS);
    Certificates.Signer signer =
        new Certificates.Signer(authority.key(), authority.certificate(), chance);
    X509Certificate certificate =
        signer.server(
            pair.getPublic(),
            Certificates.names(home, authority.certificate()),
            now,
            ends.isBefore(authority.ends()) ? ends : authority.ends());
    return written(folder.resolve("server.p12"), new Kept(pair.getPrivate(), certificate));
  }

  private static KeyPair pair(SecureRandom chance) throws GeneralSecurityException {
    KeyPairGenerator maker = KeyPairGenerator.getInstance("EC");
    maker.initialize(new ECGenParameterSpec("secp256r1"), chance);
    return maker.generateKeyPair();
  }

  private static Kept written(Path file, Kept kept) throws GeneralSecurityException, IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    store(kept.key(), kept.certificate()).store(bytes, PASSWORD);
    OwnFile.write(file, bytes.toByteArray());
    return kept;
  }

  private static KeyStore store(PrivateKey key, X509Certificate... chain)
      throws GeneralSecurityException, IOException {
    KeyStore store = KeyStore.getInstance("PKCS12");
    store.load(null, PASSWORD);
    store.setKeyEntry(ALIAS, key, PASSWORD, chain);
    return store;
  }

  /// What a file holds; a file that cannot be understood counts as none and is written anew.
  private static Optional<Kept> read(Path file) {
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      KeyStore store = KeyStore.getInstance("PKCS12");
      store.load(in, PASSWORD);
      return store.getKey(ALIAS, PASSWORD) instanceof PrivateKey key
              && store.getCertificate(ALIAS) instanceof X509Certificate certificate
          ? Optional.of(new Kept(key, certificate))
          : Optional.empty();
    } catch (IOException | GeneralSecurityException _) {
      return Optional.empty();
    }
  }
}
