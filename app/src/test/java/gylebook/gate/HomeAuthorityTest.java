package gylebook.gate;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.Peer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The home's certificates, judged by another program than the one that makes them: OpenSSL.
final class HomeAuthorityTest {
  private static final Home HOME =
      new Home(
          Set.of("cellar", "cellar.local"),
          List.of(
              new Home.Place(InetAddress.ofLiteral("192.168.7.5"), 24),
              new Home.Place(InetAddress.ofLiteral("fd12:3456::5"), 64),
              new Home.Place(InetAddress.ofLiteral("203.0.113.70"), 26)));

  @TempDir private Path folder;

  private final Ticking clock = new Ticking();
  private Home home = HOME;

  private HomeAuthority opened() throws IOException {
    return HomeAuthority.open(folder.resolve("others"), () -> home, clock);
  }

  private static X509Certificate server(HomeAuthority authority) throws GeneralSecurityException {
    return chain(authority).getFirst();
  }

  private static List<X509Certificate> chain(HomeAuthority authority)
      throws GeneralSecurityException {
    List<X509Certificate> chain = new ArrayList<>();
    for (Certificate one : authority.shown().getCertificateChain("gylebook")) {
      chain.add((X509Certificate) one);
    }
    return chain;
  }

  private Path written(String name, X509Certificate certificate)
      throws IOException, GeneralSecurityException {
    String body =
        Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(certificate.getEncoded());
    return Files.writeString(
        folder.resolve(name),
        "-----BEGIN CERTIFICATE-----\n" + body + "\n-----END CERTIFICATE-----\n");
  }

  private static String openssl(String... words) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Peer.program("openssl", "openssl").toString());
    command.addAll(List.of(words));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return said;
  }

  /// What OpenSSL says of a server's certificate on the day the clock shows.
  private String verified(HomeAuthority authority, X509Certificate server, String... asked)
      throws Exception {
    String authorityFile = written("authority.pem", authority.certificate()).toString();
    String serverFile = written("server.pem", server).toString();
    List<String> words = new ArrayList<>(List.of("verify", "-x509_strict"));
    words.addAll(List.of("-purpose", "sslserver"));
    words.addAll(List.of("-attime", Long.toString(clock.instant().getEpochSecond())));
    words.addAll(List.of("-CAfile", authorityFile));
    words.addAll(List.of(asked));
    words.add(serverFile);
    return openssl(words.toArray(String[]::new));
  }

  @ParameterizedTest
  @CsvSource({
    "-verify_hostname, cellar, true",
    "-verify_hostname, cellar.local, true",
    "-verify_ip, 192.168.7.5, true",
    "-verify_ip, fd12:3456::5, true",
    "-verify_ip, 203.0.113.70, true",
    "-verify_ip, 192.168.7.6, false",
    "-verify_hostname, other.local, false",
    "-verify_hostname, example.org, false"
  })
  void theServersCertificateHoldsForTheMachinesNamesOnly(String how, String name, boolean holds)
      throws Exception {
    HomeAuthority authority = opened();
    String said = verified(authority, server(authority), how, name);
    assertThat(said.contains(": OK")).as(said).isEqualTo(holds);
  }

  @ParameterizedTest
  @CsvSource({
    "example.org, false",
    "8.8.8.8, false",
    "2001:db8::1, false",
    "kitchen.local, true",
    "10.9.8.7, true"
  })
  void theAuthorityCannotVouchForNamesThatAreNotAtHome(String name, boolean holds)
      throws Exception {
    HomeAuthority authority = opened();
    // Whoever steals the key signs what he likes; who checks it does not believe him.
    PrivateKey stolen = key(folder.resolve("others").resolve("authority.p12"));
    X509Certificate forged =
        new Certificates.Signer(stolen, authority.certificate(), new SecureRandom(new byte[] {1}))
            .server(
                server(authority).getPublicKey(),
                Set.of(name),
                clock.instant(),
                clock.instant().plus(Duration.ofDays(9)));
    String said = verified(authority, forged);
    assertThat(said.contains(": OK")).as(said).isEqualTo(holds);
    if (!holds) {
      assertThat(said).contains("permitted subtree violation");
    }
  }

  private static PrivateKey key(Path file) throws Exception {
    KeyStore store = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(file)) {
      store.load(in, "gylebook".toCharArray());
    }
    return (PrivateKey) store.getKey("gylebook", "gylebook".toCharArray());
  }

  @Test
  void theFingerprintIsTheOneThatOthersCompute() throws Exception {
    HomeAuthority authority = opened();
    Path file = written("authority.pem", authority.certificate());
    String said = openssl("x509", "-in", file.toString(), "-noout", "-fingerprint", "-sha256");
    assertThat(said.strip().toUpperCase(Locale.ROOT))
        .endsWith("=" + authority.fingerprint().replace(' ', ':'));
  }

  @Test
  void theAuthorityIsOneForTwoYearsWithConstraintsNobodyMayPassOver() throws Exception {
    X509Certificate certificate = opened().certificate();
    assertThat(certificate.getBasicConstraints()).as("no authority below it").isZero();
    assertThat(certificate.getCriticalExtensionOIDs())
        .as("RFC 5280: basic constraints, key usage, name constraints")
        .containsExactlyInAnyOrder("2.5.29.19", "2.5.29.15", "2.5.29.30");
    assertThat(certificate.getNotAfter().toInstant())
        .isEqualTo(clock.instant().plus(Duration.ofDays(730)));
  }

  @Test
  void theKeysAreTheirOwnersAloneAndStayTheSameAfterARestart() throws Exception {
    String before = opened().fingerprint();
    for (String name : List.of("authority.p12", "server.p12")) {
      Path file = folder.resolve("others").resolve(name);
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
          .isEqualTo("rw-------");
    }
    assertThat(opened().fingerprint()).isEqualTo(before);
    assertThat(server(opened())).isEqualTo(server(opened()));
  }

  @Test
  void theServersCertificateIsRenewedBeforeItsEndWithoutANewAuthority() throws Exception {
    HomeAuthority authority = opened();
    X509Certificate first = server(authority);
    clock.pass(HomeAuthority.SERVER_LASTS.minus(HomeAuthority.AHEAD));
    assertThat(authority.renew()).isFalse();
    clock.pass(Duration.ofSeconds(1));
    assertThat(authority.renew()).isTrue();
    assertThat(server(authority)).isNotEqualTo(first);
    assertThat(verified(authority, server(authority))).contains(": OK");
    assertThat(server(authority).getNotAfter())
        .as("nothing outlasts the authority")
        .isEqualTo(authority.certificate().getNotAfter());
    assertThat(authority.renew()).as("once").isFalse();
  }

  @Test
  void aMachineThatIsCalledOtherwiseGetsANewCertificateAtOnce() throws Exception {
    HomeAuthority authority = opened();
    String before = authority.fingerprint();
    home =
        new Home(
            Set.of("cellar", "brewery.example"),
            List.of(
                new Home.Place(InetAddress.ofLiteral("192.168.9.77"), 24),
                new Home.Place(InetAddress.ofLiteral("198.51.100.7"), 24)));
    assertThat(authority.renew()).isTrue();
    assertThat(authority.fingerprint()).isEqualTo(before);
    assertThat(Certificates.names(server(authority)))
        .as("the new names, as far as the authority may vouch for them")
        .containsExactlyInAnyOrder("cellar", "192.168.9.77");
    assertThat(verified(authority, server(authority), "-verify_ip", "192.168.9.77"))
        .contains(": OK");
  }

  @Test
  void anAuthorityThatIsOverIsMadeAnew() throws Exception {
    HomeAuthority authority = opened();
    String before = authority.fingerprint();
    clock.pass(HomeAuthority.AUTHORITY_LASTS.minusSeconds(1));
    authority.renew();
    assertThat(authority.fingerprint()).isEqualTo(before);
    clock.pass(Duration.ofSeconds(1));
    assertThat(authority.renew()).isTrue();
    assertThat(authority.fingerprint()).isNotEqualTo(before);
    assertThat(verified(authority, server(authority))).contains(": OK");
  }

  @Test
  void aFileThatCannotBeReadIsMadeAnew() throws Exception {
    opened();
    Files.writeString(folder.resolve("others").resolve("server.p12"), "no key");
    HomeAuthority authority = opened();
    assertThat(verified(authority, server(authority))).contains(": OK");
    Files.writeString(folder.resolve("others").resolve("authority.p12"), "no key");
    HomeAuthority another = opened();
    assertThat(verified(another, server(another))).contains(": OK");
  }
}
