package gylebook.app;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/// What the operating system tells the program when it starts.
record Surroundings(Map<String, String> variables, Path home) {
  /// Those of this process.
  static Surroundings ofThisProcess() {
    return new Surroundings(System.getenv(), Path.of(System.getProperty("user.home")));
  }

  /// A variable that is set and not blank.
  Optional<String> value(String name) {
    return Optional.ofNullable(variables.get(name)).filter(value -> !value.isBlank());
  }
}
