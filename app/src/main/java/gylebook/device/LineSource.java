package gylebook.device;

import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/// An instrument that prints lines: which part of which line is its number.
///
/// @param pattern a regular expression that a line must match as a whole; its group `value` is the
///   number, with or without a unit. `(?<value>.*)` takes the whole line
public record LineSource(Instrument instrument, String pattern) {
  /// The whole line is the number.
  public static final String WHOLE_LINE = "(?<value>.*)";

  /// Refuses a pattern that is none or has no group for the value.
  public LineSource {
    try {
      if (!Pattern.compile(pattern).namedGroups().containsKey("value")) {
        throw new IllegalArgumentException(
            "pattern is '" + pattern + "'; it must have a group (?<value>...).");
      }
    } catch (PatternSyntaxException broken) {
      throw new IllegalArgumentException(
          "pattern is '" + pattern + "': " + broken.getDescription() + ".", broken);
    }
  }
}
