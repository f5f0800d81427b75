package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import gylebook.gate.Codes;
import gylebook.gate.Gate;
import gylebook.gate.Home;
import gylebook.gate.HomeAuthority;
import gylebook.gate.NetworkHome;
import gylebook.gate.ScreenFile;
import gylebook.gate.Screens;
import gylebook.gate.Ticking;
import gylebook.journal.MemoryJournal;
import gylebook.testing.Peer;
import gylebook.web.PageServer;
import gylebook.web.PortTaken;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.BindException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Stream;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/// The program on the home network over the wire. 127.0.0.2 stands for an address there: only the
/// names of the loopback are this machine itself.
class HomeNetworkTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final Home HOME =
      new Home(
          Set.of("brewhouse.test"),
          List.of(new Home.Place(InetAddress.ofLiteral("127.0.0.2"), 32)));

  @TempDir private Path folder;

  private final Ticking clock = new Ticking();
  private final HttpClient plain = HttpClient.newHttpClient();
  private final Clerk clerk = new Clerk(new MemoryJournal(), InstantSource.system());
  private final Wiring wiring = new Wiring(clerk, InstantSource.system(), Path.of("/none"));
  private Optional<PageServer> running = Optional.empty();
  private Optional<Screens> screens = Optional.empty();

  @AfterEach
  void stop() {
    running.ifPresent(PageServer::stop);
    wiring.close();
    plain.close();
  }

  private PageServer started(Supplier<Home> home, Optional<HomeAuthority> authority) {
    return started(0, home, authority);
  }

  private PageServer started(int port, Supplier<Home> home, Optional<HomeAuthority> authority) {
    Wallet wallet = new Wallet();
    Serve.invent(clerk, wallet);
    var chance = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
    Screens roll = new Screens(new ScreenFile(folder.resolve("screens.json")), clock, chance);
    screens = Optional.of(roll);
    Codes codes = new Codes(clock.nanos(), chance);
    PageServer server =
        PageServer.start(
            port, clerk, wallet, wiring, Gate.open(home, codes, roll, clock.nanos(), authority));
    running = Optional.of(server);
    return server;
  }

  private static HttpResponse<String> ask(HttpClient client, HttpRequest.Builder request) {
    try {
      return client.send(request.build(), BodyHandlers.ofString());
    } catch (IOException | InterruptedException failure) {
      throw new AssertionError(failure);
    }
  }

  private static HttpRequest.Builder at(String address) {
    return HttpRequest.newBuilder(URI.create(address)).timeout(Duration.ofSeconds(60));
  }

  private String invited(PageServer server) {
    HttpResponse<String> answer =
        ask(
            plain,
            at(server.address() + "api/screens/invite")
                .header("Origin", server.address().replaceFirst("/$", ""))
                .POST(BodyPublishers.ofString("{}")));
    assertThat(answer.statusCode()).isEqualTo(200);
    String html = JSON.readTree(answer.body()).get("html").asString();
    return html.replaceFirst("(?s).*class=\"code\">([0-9 ]+)<.*", "$1");
  }

  private static HttpResponse<String> cameIn(HttpClient client, String address, String code) {
    return ask(
        client,
        at(address + "/api/come-in")
            .header("Origin", address)
            .POST(BodyPublishers.ofString("{\"code\":\"" + code + "\",\"name\":\"tablet\"}")));
  }

  private static String cookie(HttpResponse<String> answer) {
    return answer.headers().firstValue("Set-Cookie").orElse("");
  }

  @Test
  void aStreamThatIsOpenEndsWhenItsScreenIsTurnedOut() throws Exception {
    PageServer server = started(() -> HOME, Optional.empty());
    String address = "http://127.0.0.2:" + server.port();
    HttpResponse<String> in = cameIn(plain, address, invited(server));
    assertThat(in.statusCode()).isEqualTo(200);
    assertThat(cookie(in))
        .contains("HttpOnly", "SameSite=Strict", "Path=/")
        .doesNotContain("Secure");
    String token = cookie(in).replaceFirst(";.*", "");

    HttpRequest live =
        at(address + "/api/gyles/bitter/live")
            .header("Cookie", token)
            .header("Accept", "text/event-stream")
            .build();
    HttpResponse<Stream<String>> stream = plain.send(live, BodyHandlers.ofLines());
    assertThat(stream.statusCode()).isEqualTo(200);
    List<String> heard = new CopyOnWriteArrayList<>();
    Thread listener = Thread.ofVirtual().start(() -> stream.body().forEach(heard::add));

    await().atMost(Duration.ofSeconds(30)).until(() -> heard.contains("event: there"));

    String screenId = screens.orElseThrow().all().getFirst().screenId();
    screens.orElseThrow().out(screenId);
    listener.join(Duration.ofSeconds(30));
    assertThat(listener.isAlive()).as("the stream goes on").isFalse();
    HttpResponse<String> again = ask(plain, at(address + "/").header("Cookie", token));
    assertThat(again.statusCode()).isEqualTo(401);
  }

  @Test
  void aBoardPostsWithItsOwnTokenFromTheHomeNetworkAndNothingElseOpensToIt() {
    PageServer server = started(() -> HOME, Optional.empty());
    String address = "http://127.0.0.2:" + server.port();
    for (String token : List.of("Bearer " + "0".repeat(32), "")) {
      HttpRequest.Builder post =
          at(address + "/api/readings").POST(BodyPublishers.ofString("12.5"));
      HttpResponse<String> answer =
          ask(plain, token.isEmpty() ? post : post.header("Authorization", token));
      assertThat(answer.statusCode()).isEqualTo(401);
      assertThat(answer.body()).contains("Bearer");
    }
    HttpRequest.Builder page = at(address + "/").header("Authorization", "Bearer 0");
    assertThat(ask(plain, page).statusCode()).isEqualTo(401);
  }

  @Test
  void tooManyCodesAreAnsweredCalmlyAndTheMachineItselfGoesOn() {
    PageServer server = started(() -> HOME, Optional.empty());
    String address = "http://127.0.0.2:" + server.port();
    for (int i = 0; i < 10; i++) {
      assertThat(cameIn(plain, address, "1").statusCode()).isEqualTo(422);
    }
    HttpResponse<String> late = cameIn(plain, address, "1");
    assertThat(late.statusCode()).isEqualTo(429);
    assertThat(late.headers().firstValue("Retry-After")).hasValue("30");
    assertThat(late.body()).contains("Wait half a minute");
    assertThat(invited(server)).matches("[0-9]{4} [0-9]{4}");
    clock.pass(Duration.ofSeconds(30));
    assertThat(cameIn(plain, address, invited(server)).statusCode()).isEqualTo(200);
  }

  @Test
  void onARealAddressOfThisMachineNobodyIsLetInUnasked() {
    NetworkHome network = new NetworkHome(clock.nanos(), Set.of());
    Assumptions.assumeFalse(
        network.get().addresses().isEmpty(), "skipped: this machine is on no network");
    PageServer server = started(network, Optional.empty());
    String address = "http://" + network.get().addresses().getFirst().host() + ":" + server.port();
    assertThat(ask(plain, at(address + "/")).statusCode()).isEqualTo(401);
    HttpResponse<String> in = cameIn(plain, address, invited(server));
    String token = cookie(in).replaceFirst(";.*", "");
    assertThat(ask(plain, at(address + "/").header("Cookie", token)).body())
        .contains("October bitter");
  }

  @Test
  void aClosedProgramDoesNotEvenListenThere() {
    Wallet wallet = new Wallet();
    PageServer server = PageServer.start(0, clerk, wallet, wiring);
    running = Optional.of(server);
    HttpRequest request = at("http://127.0.0.2:" + server.port() + "/").build();
    assertThatThrownBy(() -> plain.send(request, BodyHandlers.ofString()))
        .isInstanceOf(ConnectException.class);
  }

  /// A client that trusts what a tablet would trust after it was given this certificate.
  private static HttpClient trusting(X509Certificate certificate)
      throws GeneralSecurityException, IOException {
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, null);
    trusted.setCertificateEntry("home", certificate);
    TrustManagerFactory trust =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, trust.getTrustManagers(), null);
    return HttpClient.newBuilder().sslContext(context).build();
  }

  private HomeAuthority authority() throws IOException {
    // The clients go by the real time, so the certificates are made for it.
    return HomeAuthority.open(folder.resolve("others"), () -> HOME, InstantSource.system());
  }

  @Test
  void encryptedLinesHoldForAClientThatTrustsTheHomeCertificateAlone() throws Exception {
    PageServer server = started(() -> HOME, Optional.of(authority()));
    String open = "http://127.0.0.2:" + server.port();
    String address = "https://127.0.0.2:" + server.outsidePort();

    HttpResponse<String> page = ask(plain, at(open + "/home-certificate"));
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body()).contains(address + "/come-in").contains("fingerprint");
    byte[] file =
        plain.send(at(open + "/home-certificate.crt").build(), BodyHandlers.ofByteArray()).body();
    X509Certificate certificate =
        (X509Certificate)
            CertificateFactory.getInstance("X.509")
                .generateCertificate(new ByteArrayInputStream(file));

    try (HttpClient tablet = trusting(certificate)) {
      assertThat(ask(tablet, at(address + "/")).statusCode()).isEqualTo(401);
      HttpResponse<String> in = cameIn(tablet, address, invited(server));
      assertThat(in.statusCode()).as(in.body()).isEqualTo(200);
      assertThat(cookie(in))
          .startsWith("__Host-")
          .contains("Secure", "HttpOnly", "SameSite=Strict");
      String token = cookie(in).replaceFirst(";.*", "");
      assertThat(ask(tablet, at(address + "/").header("Cookie", token)).body())
          .contains("October bitter");

      assertThat(ask(plain, at(open + "/").header("Cookie", token)).statusCode())
          .as("the same token on an open line")
          .isEqualTo(403);
      HttpRequest wrong = at("https://127.0.0.3:" + server.outsidePort() + "/").build();
      assertThatThrownBy(() -> tablet.send(wrong, BodyHandlers.ofString()))
          .as("an address that the certificate does not name")
          .isInstanceOf(SSLException.class);
    }
    HttpRequest untrusting = at(address + "/").build();
    assertThatThrownBy(() -> plain.send(untrusting, BodyHandlers.ofString()))
        .as("a client that was not given the certificate")
        .isInstanceOf(SSLException.class);
    assertThat(ask(plain, at(server.address())).statusCode())
        .as("the machine itself needs nothing of it")
        .isEqualTo(200);
  }

  @Test
  void onAnOpenLineThereIsTheCertificateAndNothingElse() throws Exception {
    PageServer server = started(() -> HOME, Optional.of(authority()));
    String open = "http://127.0.0.2:" + server.port();
    for (String path :
        List.of("/", "/come-in", "/gyles/bitter", "/api/gyles/bitter/kettle", "/kettle.js")) {
      HttpResponse<String> answer = ask(plain, at(open + path));
      assertThat(answer.statusCode()).as(path).isEqualTo(403);
      assertThat(answer.body()).as(path).contains("https only").doesNotContain("bitter");
    }
    assertThat(cameIn(plain, open, invited(server)).statusCode()).isEqualTo(403);
    assertThat(ask(plain, at(open + "/page.css")).statusCode()).isEqualTo(200);
  }

  @Test
  void anotherClientAgreesByName() throws Exception {
    Path curl = Peer.program("curl", "curl");
    HomeAuthority authority = authority();
    PageServer server = started(() -> HOME, Optional.of(authority));
    Path pem = folder.resolve("home.pem");
    Files.writeString(
        pem,
        "-----BEGIN CERTIFICATE-----\n"
            + Base64.getMimeEncoder().encodeToString(authority.certificate().getEncoded())
            + "\n-----END CERTIFICATE-----\n");
    assertThat(curled(curl, server, pem, "brewhouse.test"))
        .isEqualTo("0 401 This screen is not let in yet.");
    assertThat(curled(curl, server, pem, "other.test"))
        .as("curl: 60 is a peer whose certificate does not hold")
        .startsWith("60 ");
  }

  private static String curled(Path curl, PageServer server, Path pem, String name)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                curl.toString(),
                "--silent",
                "--noproxy",
                "*",
                "--cacert",
                pem.toString(),
                "--resolve",
                name + ":" + server.outsidePort() + ":127.0.0.1",
                "--write-out",
                "\n%{http_code}",
                "https://" + name + ":" + server.outsidePort() + "/")
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int split = out.lastIndexOf('\n');
    return process.waitFor() + " " + out.substring(split + 1) + " " + out.substring(0, split);
  }

  @Test
  void aRenewedCertificateIsShownWithoutANewStart() throws Exception {
    AtomicReference<Home> home = new AtomicReference<>(HOME);
    HomeAuthority authority =
        HomeAuthority.open(folder.resolve("others"), home::get, InstantSource.system());
    PageServer server = started(home::get, Optional.of(authority));
    HttpRequest other = at("https://127.0.0.3:" + server.outsidePort() + "/").build();
    try (HttpClient tablet = trusting(authority.certificate())) {
      assertThatThrownBy(() -> tablet.send(other, BodyHandlers.ofString()))
          .isInstanceOf(SSLException.class);
      // The router hands out another address.
      home.set(new Home(Set.of(), List.of(new Home.Place(InetAddress.ofLiteral("127.0.0.3"), 32))));
      server.renew();
      assertThat(tablet.send(other, BodyHandlers.ofString()).statusCode()).isEqualTo(401);
    }
  }

  @Test
  void whoComesWhenTheHouseIsFullWaitsUntilSomebodyGoes() throws IOException {
    PageServer server = started(() -> HOME, Optional.empty());
    byte[] ask =
        "GET /page.css HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"
            .getBytes(StandardCharsets.US_ASCII);
    List<Socket> idle = new ArrayList<>();
    try (Socket late = new Socket()) {
      for (int i = 0; i < PageServer.MOST_LINES; i++) {
        idle.add(new Socket(InetAddress.getLoopbackAddress(), server.port()));
      }
      late.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), server.port()));
      late.getOutputStream().write(ask);
      late.setSoTimeout(500);
      assertThatThrownBy(() -> late.getInputStream().read())
          .isInstanceOf(SocketTimeoutException.class);
      idle.removeFirst().close();
      late.setSoTimeout(60_000);
      assertThat(new String(late.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
          .startsWith("HTTP/1.1 200");
    } finally {
      for (Socket socket : idle) {
        socket.close();
      }
    }
  }

  /// Below the ports that systems deal out by themselves, so that no other test is given the one
  /// before meanwhile.
  private static ServerSocket withAFreePortBefore() throws IOException {
    for (int port = 20_001; port < 32_000; port += 2) {
      try (ServerSocket before = new ServerSocket(port - 1)) {
        assertThat(before.isBound()).isTrue();
        return new ServerSocket(port);
      } catch (BindException _) {
        // Somebody has one of the two: the next pair.
      }
    }
    throw new AssertionError("no two free ports");
  }

  @Test
  void thePortAfterTheOneThatWasAskedForIsNamedWhenItIsTheOneThatIsTaken() throws IOException {
    HomeAuthority authority = authority();
    try (ServerSocket taken = withAFreePortBefore()) {
      int port = taken.getLocalPort() - 1;
      assertThatThrownBy(() -> started(port, () -> HOME, Optional.of(authority)))
          .isInstanceOf(PortTaken.class)
          .hasMessageStartingWith("Port " + (port + 1) + " cannot be used")
          .hasMessageContainingAll("--tls", "here " + port, "--port " + (port + 2));
      assertThatThrownBy(() -> started(port + 1, () -> HOME, Optional.of(authority)))
          .isInstanceOf(PortTaken.class)
          .hasMessageStartingWith("Port " + (port + 1) + " cannot be used")
          .hasMessageContaining("already runs");
    }
  }
}
