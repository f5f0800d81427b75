package gylebook.interchange;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.Nulls;
import gylebook.recipe.Aim;
import gylebook.recipe.Boil;
import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.rig.Bounds;
import gylebook.rig.Parameter;
import gylebook.rig.Rig;
import gylebook.telling.OutsideRig;
import gylebook.units.Entered;
import gylebook.units.ReadingUnits;
import java.util.List;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/// Our own readable files of a rig and of a recipe: JSON, amounts as typed, doubts and origins.
public final class OwnFiles {
  private static final int MOST_CHARACTERS = 4_000_000;

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .addMixIn(Hop.When.class, WhenNames.class)
          .addMixIn(Aim.class, AimNames.class)
          .addModule(
              new SimpleModule()
                  .addSerializer(Entered.class, new EnteredText.Writer())
                  .addDeserializer(Entered.class, new EnteredText.Reader())
                  .addDeserializer(Parameter.class, new ParameterText())
                  .addDeserializer(Boil.Lid.class, new ChoiceText<>(Boil.Lid.OFF, "no lid is"))
                  .addDeserializer(
                      Hop.Wrap.class, new ChoiceText<>(Hop.Wrap.SEALED, "hops are not wrapped")))
          .build();

  private OwnFiles() {}

  /// How the moment of an addition is called in the file.
  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "at")
  @JsonSubTypes({
    @JsonSubTypes.Type(value = Hop.When.InMash.class, name = "mash"),
    @JsonSubTypes.Type(value = Hop.When.FirstWort.class, name = "firstWort"),
    @JsonSubTypes.Type(value = Hop.When.InBoil.class, name = "boil"),
    @JsonSubTypes.Type(value = Hop.When.FlameOut.class, name = "flameOut"),
    @JsonSubTypes.Type(value = Hop.When.AtStand.class, name = "stand"),
    @JsonSubTypes.Type(value = Hop.When.Dry.class, name = "dry")
  })
  private interface WhenNames {}

  /// Older files say nothing of the end of the brew day.
  private interface AimNames {
    @JsonSetter(nulls = Nulls.AS_EMPTY)
    String doneBy();
  }

  /// A rig as a file.
  public static String rig(Rig rig) {
    return MAPPER.writeValueAsString(rig) + "\n";
  }

  /// A recipe as a file.
  public static String recipe(Recipe recipe) {
    return MAPPER.writeValueAsString(recipe) + "\n";
  }

  /// The rig in a file of somebody's: what no rig has is refused, and so are letters that are none.
  /// No part of it is guessed, so there is nothing to remark.
  public static Reading<Rig> readRigFile(byte[] file) {
    try {
      return switch (readRig(FileText.json(file, "rig"))) {
        case Reading.Understood<Rig>(Rig rig) -> sound(rig);
        case Reading.NotUnderstood<Rig> no -> no;
      };
    } catch (Refusal refusal) {
      return new Reading.NotUnderstood<>(refusal.told().sentence());
    }
  }

  private static Reading<Rig> sound(Rig rig) {
    return Bounds.fault(rig)
        .<Reading<Rig>>map(
            fault ->
                new Reading.NotUnderstood<>(
                    "The rig file does not fit at '"
                        + fault.path().replace(".", " > ")
                        + "': "
                        + OutsideRig.what(fault, ReadingUnits.METRIC)
                        + ". "
                        + OutsideRig.maybe(fault)))
        .orElseGet(() -> new Reading.Understood<>(rig));
  }

  /// The rig in a text that this program wrote.
  public static Reading<Rig> readRig(String text) {
    return read(text, Rig.class, "rig");
  }

  /// The recipe in a file.
  public static Reading<Recipe> readRecipe(String text) {
    return read(text, Recipe.class, "recipe");
  }

  private static <T> Reading<T> read(String text, Class<T> type, String what) {
    if (text.length() > MOST_CHARACTERS) {
      return new Reading.NotUnderstood<>(
          "The "
              + what
              + " file has "
              + text.length()
              + " characters; we read up to "
              + MOST_CHARACTERS
              + ". Maybe it is another file.");
    }
    if (text.isBlank()) {
      return new Reading.NotUnderstood<>(
          "The file is empty. Maybe choose the " + what + " file again.");
    }
    try {
      T thing = MAPPER.readValue(text, type);
      if (thing == null) {
        return new Reading.NotUnderstood<>(
            "The file is empty. Maybe choose the " + what + " file again.");
      }
      return new Reading.Understood<>(thing);
    } catch (StreamReadException broken) {
      return new Reading.NotUnderstood<>(
          "The "
              + what
              + " file is not whole JSON at line "
              + broken.getLocation().getLineNr()
              + ": "
              + BrokenJson.plain(String.valueOf(broken.getOriginalMessage()))
              + ". It is not mended in silence; maybe it was cut off.");
    } catch (DatabindException wrong) {
      return new Reading.NotUnderstood<>(unfit(text, what, wrong));
    }
  }

  private static String unfit(String text, String what, DatabindException wrong) {
    boolean recipe = text.contains("\"beerjson\"") || text.contains("\"grist\"");
    if (what.equals("rig") && recipe) {
      return "The file holds a recipe and no rig. Maybe name it as the recipe.";
    }
    if (path(wrong).isEmpty()) {
      return "The file is JSON and holds no "
          + what
          + ". Maybe choose the "
          + what
          + " file again.";
    }
    return "The "
        + what
        + " file does not fit at '"
        + path(wrong)
        + "': "
        + BrokenJson.plain(wrong)
        + ". Maybe compare it with a file written by this program.";
  }

  private static String path(DatabindException wrong) {
    List<String> names =
        wrong.getPath().stream()
            .map(
                part ->
                    part.getPropertyName() == null
                        ? String.valueOf(part.getIndex() + 1)
                        : part.getPropertyName())
            .toList();
    return String.join(" > ", names);
  }
}
