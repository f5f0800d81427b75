package gylebook.app;

import gylebook.gate.Codes;
import gylebook.gate.Gate;
import gylebook.gate.HomeAuthority;
import gylebook.gate.NetworkHome;
import gylebook.gate.ScreenFile;
import gylebook.gate.Screens;
import gylebook.web.PageServer;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Optional;

/// Opens the gate to the home network with the real clock, chance and network. A class of its own,
/// so that nothing of it is loaded where the gate stays closed.
final class HomeGate {
  /// A router may give the machine another address at any time.
  private static final Duration RENEWED = Duration.ofMinutes(1);

  private HomeGate() {}

  static Gate open(Settings settings) throws IOException {
    SecureRandom chance = new SecureRandom();
    InstantSource clock = InstantSource.system();
    Path folder = settings.besideBook();
    NetworkHome home = new NetworkHome(System::nanoTime, settings.opening().knownAs());
    Screens screens = new Screens(new ScreenFile(folder.resolve("screens.json")), clock, chance);
    Optional<HomeAuthority> authority =
        settings.opening().encrypted()
            ? Optional.of(HomeAuthority.open(folder, home, clock))
            : Optional.empty();
    Codes codes = new Codes(System::nanoTime, chance);
    return Gate.open(home, codes, screens, System::nanoTime, authority);
  }

  /// Keeps the certificate new for as long as the program runs.
  static void renewing(PageServer server, PrintWriter out) {
    Thread.ofVirtual()
        .name("certificate")
        .start(
            () -> {
              try {
                while (true) {
                  Thread.sleep(RENEWED);
                  renew(server, out);
                }
              } catch (InterruptedException _) {
                Thread.currentThread().interrupt();
              }
            });
  }

  private static void renew(PageServer server, PrintWriter out) {
    try {
      server.renew();
    } catch (IOException failure) {
      out.println("The certificate could not be renewed: " + failure.getMessage());
      out.flush();
    }
  }
}
