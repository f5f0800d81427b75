package gylebook.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import gylebook.plan.Demo;
import gylebook.recipe.Recipe;
import gylebook.testing.Shared;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// Held against the schemas and sample files of the standards, which lie beside the checkout.
class StandardFilesTest {
  private static final String SCHEMAS = "standards/beerjson-pre3.0-20260821-draft2020-12";
  private static final String ROOT =
      "https://raw.githubusercontent.com/beerjson/beerjson/main/json/";
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  /// The schema of version 3: the last one before it, which differs in the versions it accepts.
  private static Schema schema() {
    Path folder = Shared.file(SCHEMAS);
    SchemaRegistry registry =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12,
            builder -> builder.schemas(address -> adapted(folder, address)));
    return registry.getSchema(SchemaLocation.of(ROOT + "beer.json"));
  }

  /// Only files of the folder are given out: nothing is fetched from anywhere.
  private static String adapted(Path folder, String address) {
    String text = text(folder.resolve(address.replace(ROOT, "")));
    if (!address.endsWith("measureable_units.json")) {
      return text;
    }
    ObjectNode units = (ObjectNode) MAPPER.readTree(text);
    ObjectNode version = (ObjectNode) units.get("$defs").get("VersionType");
    version.removeAll();
    version.putArray("enum").add(2.01).add(2.06).add(3);
    return units.toString();
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static List<String> faults(Schema schema, String json) {
    return schema.validate(MAPPER.readTree(json)).stream().map(String::valueOf).toList();
  }

  private static List<Path> files(String folder) {
    try (Stream<Path> walk = Files.walk(Shared.file("standards/" + folder))) {
      return walk.filter(file -> file.toString().matches(".*\\.(json|xml)")).sorted().toList();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  @Test
  void theSchemaRefusesWhatTheStandardRefuses() {
    Schema schema = schema();
    String plain = Foreign.file("plain.json");
    assertThat(faults(schema, plain)).isEmpty();
    assertThat(faults(schema, plain.replace("\"version\": 3", "\"version\": 9.9"))).isNotEmpty();
    assertThat(faults(schema, plain.replace("\"unit\": \"kg\"", "\"unit\": \"st\""))).isNotEmpty();
    assertThat(faults(schema, plain.replace("\"type\": \"ale\"", "\"kind\": 1"))).isNotEmpty();
  }

  @Test
  void whatIsWrittenIsValid() {
    Schema schema = schema();
    for (Recipe recipe : List.of(Demo.copperBitter(), Demo.wheatBeer())) {
      assertThat(faults(schema, RecipeWriter.json(recipe).json())).isEmpty();
    }
    for (String file : new String[] {"plain.json", "plain.xml"}) {
      Recipe recipe = Foreign.recipe(Foreign.file(file));
      assertThat(faults(schema, RecipeWriter.json(recipe).json())).isEmpty();
    }
  }

  @Test
  void whatIsWrittenOfAnyRecipeIsValid() {
    Schema schema = schema();
    InventedRecipes.each(
        150,
        recipe -> {
          String json = RecipeWriter.json(recipe).json();
          assertThat(faults(schema, json)).as(json).isEmpty();
        });
  }

  @Test
  void everySampleWithARecipeIsReadAndEveryOtherIsToldWhatItHolds() {
    int recipes = 0;
    for (String folder : List.of("beerjson-1.0.2-examples", "beerjson-pre3.0-examples")) {
      for (Path file : files(folder)) {
        String text = text(file);
        JsonNode held = MAPPER.readTree(text).get("beerjson").get("recipes");
        if (held != null && !held.isEmpty()) {
          recipes++;
          assertThat(Foreign.recipe(text)).as(file.toString()).isNotNull();
        } else {
          assertThat(Foreign.refused(text)).as(file.toString()).contains("holds no recipe");
        }
      }
    }
    assertThat(recipes).isGreaterThan(0);
  }

  @Test
  void theRecordsOfTheSamplesAreReadAsPartsOfARecipe() {
    int read = 0;
    for (String folder : List.of("beerjson-1.0.2-examples", "beerjson-pre3.0-examples")) {
      for (Path file : files(folder)) {
        ObjectNode document = (ObjectNode) MAPPER.readTree(Foreign.file("plain.json"));
        if (embedded(MAPPER.readTree(text(file)).get("beerjson"), document)) {
          read++;
          Recipe recipe = Foreign.recipe(document.toString());
          Recipe again = Foreign.recipe(RecipeWriter.json(recipe).json());
          Written written = RecipeWriter.json(recipe);
          RoundTripTest.same(recipe, again, written);
        }
      }
    }
    assertThat(read).isGreaterThanOrEqualTo(20);
  }

  /// Puts the records of a sample where a recipe has them; false when it holds none that fit.
  private static boolean embedded(JsonNode sample, ObjectNode document) {
    ObjectNode recipe = (ObjectNode) document.get("beerjson").get("recipes").get(0);
    ObjectNode ingredients = (ObjectNode) recipe.get("ingredients");
    boolean any = procedure(sample, "mashes", recipe, "mash");
    any |= procedure(sample, "boil", recipe, "boil");
    any |= procedure(sample, "fermentations", recipe, "fermentation");
    any |= procedure(sample, "packaging", recipe, "packaging");
    any |= added(sample, "fermentables", ingredients, "fermentable_additions", "kg");
    any |= added(sample, "hop_varieties", ingredients, "hop_additions", "g");
    any |= added(sample, "miscellaneous_ingredients", ingredients, "miscellaneous_additions", "g");
    any |= added(sample, "cultures", ingredients, "culture_additions", "pkg");
    any |= added(sample, "profiles", ingredients, "water_additions", "l");
    return any;
  }

  private static boolean procedure(JsonNode sample, String from, ObjectNode recipe, String to) {
    JsonNode found = sample.get(from);
    if (found == null || found.isEmpty()) {
      return false;
    }
    recipe.set(to, found.get(0));
    return true;
  }

  private static boolean added(
      JsonNode sample, String from, ObjectNode ingredients, String to, String unit) {
    JsonNode found = sample.get(from);
    if (found == null || found.isEmpty()) {
      return false;
    }
    ArrayNode list = ingredients.putArray(to);
    for (JsonNode record : found) {
      ObjectNode addition = ((ObjectNode) record).deepCopy();
      addition.putObject("amount").put("value", 2).put("unit", unit);
      list.add(addition);
    }
    return true;
  }

  @Test
  void theXmlSamplesAreRead() {
    List<Path> files = files("own-samples");
    assertThat(files).isNotEmpty();
    for (Path file : files) {
      Recipe recipe = Foreign.recipe(text(file));
      assertThat(recipe.aim().lengthL().inside()).isEqualTo(19);
      assertThat(recipe.elsewhere().preBoilL().orElseThrow()).isEqualTo(25);
      assertThat(recipe.elsewhere().brewhouseFrac().orElseThrow()).isEqualTo(0.72);
      assertThat(recipe.hops().getFirst().massG().inside()).isEqualTo(50);
      assertThat(recipe.rests().getFirst().targetC().inside()).isEqualTo(66);
    }
  }
}
