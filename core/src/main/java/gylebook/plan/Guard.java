package gylebook.plan;

import java.util.List;

/// Something that may go wrong, foreseen.
///
/// @param key its name in code and files: `elementBare`
/// @param level how loud
/// @param what what may happen
/// @param doThis what to do about it
/// @param byWhen milestone key before or at which it matters
/// @param chanceFrac share of the simulated days in which it happens
/// @param cause what brings it about
/// @param caution the usual caution, with its official source where there is one; may be empty
public record Guard(
    String key,
    Level level,
    List<Note> what,
    String doThis,
    String byWhen,
    double chanceFrac,
    String cause,
    String caution) {

  /// Copies the sentence.
  public Guard {
    what = List.copyOf(what);
  }

  /// How loud a guard is.
  public enum Level {
    STOP,
    SOON,
    NOTE
  }
}
