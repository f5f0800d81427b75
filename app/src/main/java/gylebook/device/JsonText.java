package gylebook.device;

import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonPointer;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// A number somewhere in JSON. Pure.
final class JsonText {
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private JsonText() {}

  /// The tree, or empty when the text is no JSON.
  static Optional<JsonNode> tree(String text) {
    try {
      JsonNode tree = JSON.readTree(text);
      return tree.isMissingNode() ? Optional.empty() : Optional.of(tree);
    } catch (JacksonException _) {
      return Optional.empty();
    }
  }

  static Decoded decode(Instrument instrument, String pointer, String text) {
    Optional<JsonNode> tree = tree(text);
    if (tree.isEmpty()) {
      return Decoded.garbled(text, "is no JSON");
    }
    JsonNode at = tree.get().at(JsonPointer.compile(pointer));
    if (at.isNumber()) {
      return instrument.value(at.doubleValue(), instrument.unit(), at.toString(), Optional.empty());
    }
    if (at.isString()) {
      return PlainText.decode(instrument, at.stringValue());
    }
    return Decoded.garbled(text, "has no number at " + pointer);
  }
}
