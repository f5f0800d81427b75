package gylebook.telling;

import java.util.regex.Pattern;

/// Names come from files of others; what is a command to a terminal must not reach one.
public final class Letters {
  /// Control characters, and the marks that turn the direction of what follows.
  private static final Pattern COMMANDS =
      Pattern.compile("[\\p{Cc}\\u2028\\u2029\\u202A-\\u202E\\u2066-\\u2069]");

  private Letters() {}

  /// One line of text, each command in it a blank.
  public static String plain(String line) {
    return COMMANDS.matcher(line).replaceAll(" ");
  }
}
