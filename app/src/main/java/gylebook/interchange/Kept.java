package gylebook.interchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// What of a foreign recipe has no place here but can be written again: it stands beside the
/// ingredients, so changing them does not make it wrong.
final class Kept {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final List<String> WORDS = List.of("author", "coauthor");
  private static final List<String> STYLE = List.of("name", "category", "style_guide", "type");

  private Kept() {}

  /// Keeps the recipe's own words, and says so when a date is none.
  static void own(JsonThing recipe) {
    for (String key : WORDS) {
      recipe.whole(key).ifPresent(text -> recipe.ledger().note(key, text));
    }
    String created = recipe.words("created");
    if (!created.isEmpty()) {
      recipe.ledger().note("created", quoted(created));
      if (!isDate(created)) {
        recipe.says("created", "'" + Refusal.shortened(created) + "' is no date; kept as words.");
      }
    }
  }

  static String quoted(String text) {
    return MAPPER.writeValueAsString(text);
  }

  /// A day, or a day with its time; nothing before or behind it.
  static boolean isDate(String text) {
    try {
      if (text.length() == 10) {
        LocalDate.parse(text);
        return true;
      }
      return text.length() == 19 && LocalDateTime.parse(text).getYear() > 0;
    } catch (DateTimeException none) {
      return false;
    }
  }

  /// Whether what is kept under this key can be written again.
  static boolean written(String key, Map<String, String> kept) {
    return node(key, kept).isPresent();
  }

  /// What is kept under a key, if it still fits the standard.
  static Optional<JsonNode> node(String key, Map<String, String> kept) {
    String text = kept.get(key);
    if (text == null) {
      return Optional.empty();
    }
    try {
      JsonNode node = MAPPER.readTree(text);
      boolean fits =
          switch (key) {
            case "author", "coauthor", "culture type" -> node.isString();
            case "created" -> node.isString() && isDate(node.asString());
            case "style" -> STYLE.stream().allMatch(word -> isWords(node, word));
            default -> false;
          };
      return fits ? Optional.of(node) : Optional.empty();
    } catch (JacksonException none) {
      return Optional.empty();
    }
  }

  private static boolean isWords(JsonNode node, String key) {
    JsonNode found = node.get(key);
    return found != null && found.isString();
  }
}
