package gylebook.tidy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// The rooms of the house, as one ladder: a room uses only rooms that stand earlier.
final class Rooms {
  static final List<String> CORE =
      List.of(
          "units",
          "science",
          "rig",
          "recipe",
          "journal",
          "simulate",
          "plan",
          "reckon",
          "estimate",
          "brewday",
          "telling");
  static final List<String> APP =
      List.of("gate", "interchange", "store", "device", "terminal", "web", "app");
  static final List<String> LADDER =
      List.of(
          "units",
          "science",
          "rig",
          "recipe",
          "journal",
          "simulate",
          "plan",
          "reckon",
          "estimate",
          "brewday",
          "telling",
          "gate",
          "interchange",
          "store",
          "device",
          "terminal",
          "web",
          "app");

  /// Rooms that touch the world each in one way and therefore do not know each other.
  private static final Set<String> FACES =
      Set.of("interchange", "store", "device", "terminal", "web");

  private static final Map<String, Set<String>> CLOSED =
      Map.of("journal", Set.of("rig", "recipe"), "recipe", Set.of("rig"));

  private static final Pattern ROOM = Pattern.compile("^gylebook\\.([a-z]+)(?![A-Za-z0-9])");

  private Rooms() {}

  /// The room a qualified name lives in.
  static Optional<String> of(String qualified) {
    Matcher found = ROOM.matcher(qualified);
    return found.find() ? Optional.of(found.group(1)) : Optional.empty();
  }

  /// Why one room may not use another; empty when it may.
  static Optional<String> objection(String user, String used) {
    if (user.equals(used)) {
      return Optional.empty();
    }
    if (!LADDER.contains(used)) {
      return Optional.of("there is no room " + used);
    }
    if (LADDER.indexOf(used) > LADDER.indexOf(user)) {
      return Optional.of("looks up the ladder: " + user + " may not use " + used);
    }
    if (user.equals("science") && !used.equals("units")) {
      return Optional.of("science sees only units");
    }
    if (FACES.contains(user) && FACES.contains(used)) {
      return Optional.of(user + " and " + used + " do not see each other; move it further left");
    }
    if (CLOSED.getOrDefault(user, Set.of()).contains(used)) {
      return Optional.of(user + " does not see " + used + "; pass ids and plain numbers");
    }
    return Optional.empty();
  }
}
