package gylebook.gate;

/// What the gate says to a caller.
public sealed interface Let {
  /// It is this machine itself.
  record Own() implements Let {}

  /// A screen that was let in.
  record In(Screen screen) implements Let {}

  /// It may do what it came for, and nothing else: stand on the doorstep, post a reading.
  record Doorstep() implements Let {}

  /// It was not let in, or is no more.
  record Stranger(String says) implements Let {}

  /// It must come by the encrypted way.
  record Unencrypted(String says) implements Let {}

  /// It asks too often.
  record Pause(String says, long sec) implements Let {}

  /// Nothing for it here, whatever it shows.
  record Refused(String says) implements Let {}
}
