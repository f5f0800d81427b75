package gylebook.app;

import gylebook.gate.Codes;
import gylebook.gate.Gate;
import gylebook.gate.NetworkHome;
import gylebook.gate.ScreenFile;
import gylebook.gate.Screens;
import java.security.SecureRandom;
import java.time.InstantSource;

/// Opens the gate to the home network with the real clock, chance and network. A class of its own,
/// so that nothing of it is loaded where the gate stays closed.
final class HomeGate {
  private HomeGate() {}

  static Gate open(Settings settings) {
    SecureRandom chance = new SecureRandom();
    Screens screens =
        new Screens(
            new ScreenFile(settings.besideBook().resolve("screens.json")),
            InstantSource.system(),
            chance);
    NetworkHome home = new NetworkHome(System::nanoTime, settings.opening().knownAs());
    return Gate.open(home, new Codes(System::nanoTime, chance), screens, System::nanoTime, false);
  }
}
