package gylebook.interchange;

/// What came of reading a file.
///
/// @param <T> what the file holds
public sealed interface Reading<T> {

  /// It was understood, whole.
  ///
  /// @param thing what it holds
  record Understood<T>(T thing) implements Reading<T> {}

  /// It was not, and nothing was taken from it.
  ///
  /// @param sentence what, where, and what to try
  record NotUnderstood<T>(String sentence) implements Reading<T> {}
}
