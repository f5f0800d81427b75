package gylebook.terminal;

import gylebook.units.AnyUnit;
import java.io.IOException;
import java.time.Instant;

/// A wire on which the invented instruments of a rehearsal send.
interface Outlet extends AutoCloseable {
  /// What an instrument sends once.
  ///
  /// @param text as it would print it
  /// @param number the same as a number; NaN where it is garbage
  /// @param claimed when its own clock says it measured
  @AnyUnit("instruments of a rehearsal measure temperatures and shares")
  record Sent(String instrument, String text, double number, Instant claimed) {}

  /// Sends it, or says why it cannot.
  void send(Sent sent) throws IOException;

  /// An instrument says nothing now, where being asked is part of the wire.
  void silent(String instrument);

  /// In words, for whoever sets it up.
  String words();

  @Override
  void close();

  /// The name of an instrument as a part of an address.
  static String slug(String instrument) {
    return instrument.replace(' ', '-');
  }
}
