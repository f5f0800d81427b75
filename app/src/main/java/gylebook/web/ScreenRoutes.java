package gylebook.web;

import gylebook.gate.Codes;
import gylebook.gate.Gate;
import gylebook.gate.Home;
import gylebook.gate.HomeAuthority;
import gylebook.gate.Screens;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.security.cert.CertificateEncodingException;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntSupplier;

/// Letting other screens in, seeing which are, and turning them out.
final class ScreenRoutes {
  /// Where a screen asks to be let in.
  static final String COME_IN = "/come-in";

  /// Where it tries its code.
  static final String CODE = "/api/come-in";

  /// How the home's own certificate is put on a tablet, and that certificate.
  static final String CERTIFICATE = "/home-certificate";

  static final String CERTIFICATE_FILE = "/home-certificate.crt";

  private static final int BODY_MOST = 2_000;

  /// As long as browsers keep a cookie at most.
  private static final Duration KEPT = Duration.ofDays(400);

  private final Gate gate;
  private final IntSupplier plainPort;
  private final IntSupplier outsidePort;

  /// @param plainPort where lines are not encrypted
  /// @param outsidePort where others reach the page
  ScreenRoutes(Gate gate, IntSupplier plainPort, IntSupplier outsidePort) {
    this.gate = gate;
    this.plainPort = plainPort;
    this.outsidePort = outsidePort;
  }

  void register(RoutesConfig routes) {
    routes.get("/screens", Door.ownOnly(context -> context.html(page())));
    routes.get(
        "/api/screens", Door.ownOnly(context -> Said.json(context, HttpStatus.OK, standing())));
    routes.post("/api/screens/invite", Door.ownOnly(this::invite));
    routes.post("/api/screens/uninvite", Door.ownOnly(this::uninvite));
    routes.post("/api/screens/out", Door.ownOnly(this::out));
    routes.get(COME_IN, context -> context.html(ScreenPage.comeIn()));
    routes.post(CODE, this::comeIn);
    gate.authority()
        .ifPresent(
            authority -> {
              routes.get(
                  CERTIFICATE,
                  context ->
                      context.html(
                          CertificatePage.html(authority, host(context), outsidePort.getAsInt())));
              routes.get(CERTIFICATE_FILE, context -> certificate(context, authority));
            });
  }

  private String page() {
    Optional<Screens> screens = gate.screens();
    if (screens.isEmpty()) {
      return ScreenPage.closed();
    }
    String first =
        gate.authority()
            .map(
                authority ->
                    CertificatePage.first(
                        authority,
                        addresses("http", plainPort).stream()
                            .map(address -> address + CERTIFICATE)
                            .findFirst()))
            .orElse(ScreenPage.READABLE);
    return ScreenPage.open(first, ScreenPage.list(screens.get().all()), addresses().isEmpty());
  }

  /// As the caller calls this machine; the door has looked at it.
  private static String host(Context context) {
    return Optional.ofNullable(context.header("Host")).orElse("").replaceFirst(":[0-9]+$", "");
  }

  private static void certificate(Context context, HomeAuthority authority) {
    try {
      context.contentType("application/x-x509-ca-cert");
      context.header("Content-Disposition", "attachment; filename=\"gylebook-home.crt\"");
      context.result(authority.certificate().getEncoded());
    } catch (CertificateEncodingException failure) {
      throw new IllegalStateException("the home certificate", failure);
    }
  }

  private Map<String, Object> standing() {
    Map<String, Object> said = new HashMap<>();
    said.put("html", gate.screens().map(all -> ScreenPage.list(all.all())).orElse(""));
    said.put("code", gate.codes().flatMap(Codes::left).isPresent());
    return said;
  }

  /// The addresses others reach the page by, the likeliest first.
  private List<String> addresses() {
    return addresses(gate.authority().isPresent() ? "https" : "http", outsidePort);
  }

  private List<String> addresses(String how, IntSupplier port) {
    return gate.home().stream()
        .flatMap(home -> home.addresses().stream())
        .map(Home.Place::host)
        .distinct()
        .map(host -> how + "://" + host + ":" + port.getAsInt())
        .toList();
  }

  private void invite(Context context) {
    List<String> addresses = addresses();
    if (gate.codes().isEmpty() || addresses.isEmpty()) {
      Said.json(
          context,
          HttpStatus.UNPROCESSABLE_CONTENT,
          Map.of(
              "what",
              "This machine is on no home network now.",
              "value",
              "",
              "maybe",
              "Look at its cable or Wi-Fi, then try again."));
      return;
    }
    String digits = gate.codes().get().fresh();
    Said.json(context, HttpStatus.OK, Map.of("html", ScreenPage.invitation(addresses, digits)));
  }

  private void uninvite(Context context) {
    gate.codes().ifPresent(Codes::end);
    Said.json(context, HttpStatus.OK, standing());
  }

  private void out(Context context) {
    String screenId = Said.words(context).getOrDefault("screenId", "");
    Optional<String> refusal = gate.screens().flatMap(screens -> screens.out(screenId));
    Map<String, Object> said = standing();
    said.put(
        "remark",
        refusal.map(why -> "Out until the program is started again: " + why + ".").orElse(""));
    Said.json(context, HttpStatus.OK, said);
  }

  private void comeIn(Context context) {
    if (context.contentLength() > BODY_MOST) {
      context.status(HttpStatus.CONTENT_TOO_LARGE);
      context.result("That is too long for a code.");
      return;
    }
    Map<String, String> said = Said.words(context);
    boolean right =
        gate.codes().filter(codes -> codes.take(said.getOrDefault("code", ""))).isPresent();
    if (!right) {
      refused(
          context,
          HttpStatus.UNPROCESSABLE_CONTENT,
          "This code is not, or no longer, good for coming in.",
          "Each works once and for five minutes. Ask for a new one on the program's machine.");
      return;
    }
    switch (gate.screens().orElseThrow().letIn(said.getOrDefault("name", ""))) {
      case Screens.LetIn.Done(var screen, String token) -> {
        Door.give(context, token, (int) KEPT.toSeconds());
        Said.json(context, HttpStatus.OK, Map.of("name", screen.name()));
      }
      case Screens.LetIn.NotKept(String because) ->
          refused(
              context,
              HttpStatus.SERVICE_UNAVAILABLE,
              "Not let in: " + because + ".",
              "Mend that, then ask for a new code.");
    }
  }

  private static void refused(Context context, HttpStatus status, String what, String maybe) {
    Said.json(context, status, Map.of("what", what, "value", "", "maybe", maybe));
  }
}
