package gylebook.interchange;

import gylebook.recipe.Recipe;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// Reads a recipe file: the open JSON standard, the open XML standard version 1, or our own form.
/// Which of them, the file itself says.
public final class RecipeReader {
  /// Said of a first rest's time to heat up, whatever kind of file it stands in.
  static final String STRUCK = "The first rest is struck; how long it heats up is kept, not used.";

  private static final int MOST_BYTES = 4_000_000;

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(BrokenJson.MOST_DEPTH)
                          .build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .build();

  private RecipeReader() {}

  /// The first recipe in a file, or why there is none.
  ///
  /// @param file its bytes, as they came
  /// @param name of the file; a recipe without a name is called so
  public static ReadRecipe read(byte[] file, String name) {
    try {
      Ledger ledger = new Ledger();
      Recipe recipe = recipe(file, name, ledger);
      Sense.recipe(recipe, ledger);
      return new ReadRecipe.Understood(recipe, ledger.remarks());
    } catch (Refusal refusal) {
      return refusal.told();
    } catch (IllegalArgumentException refused) {
      // the rooms to the left refuse what cannot be, in a sentence of their own
      return new Refusal(String.valueOf(refused.getMessage()), name, "").told();
    }
  }

  private static Recipe recipe(byte[] file, String name, Ledger ledger) {
    if (file.length > MOST_BYTES) {
      throw new Refusal(
          "The file has " + file.length + " bytes; a recipe file has at most " + MOST_BYTES + ".",
          name,
          "Maybe it is another file, or a whole collection; export one recipe.");
    }
    String text = FileText.of(file, ledger).strip();
    if (text.startsWith("<")) {
      return XmlRecipe.read(XmlTag.read(text), name, ledger);
    }
    if (text.startsWith("{")) {
      return json(text, name, ledger);
    }
    throw new Refusal(
        text.isEmpty() ? "The file is empty." : kind(text),
        Refusal.shortened(text.lines().findFirst().orElse("")),
        "Maybe choose the recipe file again.");
  }

  private static String kind(String text) {
    return text.startsWith("[")
        ? "The file begins a JSON list; a recipe file begins with a brace."
        : "The file is neither JSON nor XML.";
  }

  private static Recipe json(String text, String name, Ledger ledger) {
    JsonNode root = tree(text);
    JsonNode standard = root.get("beerjson");
    if (standard != null) {
      root.propertyNames().stream()
          .filter(key -> !key.equals("beerjson"))
          .forEach(key -> ledger.keep("file > " + key, String.valueOf(root.get(key))));
      return JsonRecipe.read(standard, name, ledger);
    }
    if (root.get("kettle") != null && root.get("aim") == null) {
      throw new Refusal(
          "The file holds a rig and no recipe.", name, "Maybe name it as the rig: --rig.");
    }
    if (root.get("aim") == null) {
      throw new Refusal(
          "The file is JSON, but neither of the open standard nor of ours: it has no 'beerjson'.",
          Refusal.shortened(text.lines().findFirst().orElse("")),
          "Maybe it is another kind of file.");
    }
    return switch (OwnFiles.readRecipe(text)) {
      case Reading.Understood<Recipe>(Recipe recipe) -> {
        if (!recipe.rests().isEmpty() && recipe.rests().getFirst().rampSec().isPresent()) {
          ledger.says("rests 1 > rampSec", STRUCK);
        }
        yield recipe;
      }
      case Reading.NotUnderstood<Recipe>(String sentence) -> throw new Refusal(sentence, name, "");
    };
  }

  private static JsonNode tree(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JacksonException broken) {
      String said = String.valueOf(broken.getOriginalMessage());
      String at =
          broken.getLocation() == null ? "" : " at line " + broken.getLocation().getLineNr();
      throw new Refusal(
          "The file is not whole JSON" + at + ": " + BrokenJson.plain(said) + ".",
          at.strip(),
          "It is not mended in silence; maybe export it again.");
    }
  }
}
