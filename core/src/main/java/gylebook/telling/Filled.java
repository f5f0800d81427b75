package gylebook.telling;

import java.util.function.Function;

/// What came of filling a slot.
///
/// @param <T> recipe or rig
public sealed interface Filled<T> {
  /// The same about something made of the thing.
  default <R> Filled<R> map(Function<? super T, ? extends R> made) {
    return switch (this) {
      case Done<T>(T thing) -> new Done<>(made.apply(thing));
      case Unclear<T>(String what, String value, String maybe) -> new Unclear<>(what, value, maybe);
    };
  }

  /// The thing with the value in it.
  ///
  /// @param thing changed, or the same when the value was there before
  record Done<T>(T thing) implements Filled<T> {}

  /// The value was not understood or cannot stand there; nothing was changed.
  ///
  /// @param what is wrong, in one sentence
  /// @param value as typed
  /// @param maybe what to try
  record Unclear<T>(String what, String value, String maybe) implements Filled<T> {}
}
