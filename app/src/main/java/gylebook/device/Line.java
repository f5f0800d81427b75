package gylebook.device;

import java.time.Instant;

/// Whether a driver has its instruments on the line.
public sealed interface Line {
  /// Since when it is so.
  Instant since();

  /// Connected. Silence on a line that is up is the instruments' own.
  record Up(Instant since) implements Line {}

  /// Not connected, and why; the driver goes on trying.
  record Down(Instant since, String why) implements Line {}
}
