package gylebook.app;

import gylebook.interchange.OwnFiles;
import gylebook.interchange.ReadRecipe;
import gylebook.interchange.Reading;
import gylebook.interchange.RecipeReader;
import gylebook.interchange.Remark;
import gylebook.plan.Demo;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.terminal.PlanSources;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/// Recipes and rigs by name: the demos, else a file.
final class Shelf implements PlanSources {
  private static final long MOST_BYTES = 8_000_000;

  @Override
  public Found recipe(String name) throws Unreadable {
    return switch (name) {
      case "demo" -> new Found(Demo.copperBitter(), List.of());
      case "demo-wheat" -> new Found(Demo.wheatBeer(), List.of());
      default -> understood(name, RecipeReader.read(bytes(name, "recipe"), name));
    };
  }

  private static Found understood(String name, ReadRecipe read) throws Unreadable {
    return switch (read) {
      case ReadRecipe.Understood(Recipe recipe, List<Remark> remarks) ->
          new Found(recipe, remarks.stream().map(r -> r.path() + ": " + r.says()).toList());
      case ReadRecipe.NotUnderstood no -> throw new Unreadable("'" + name + "': " + no.sentence());
    };
  }

  @Override
  public Rig rig(String name) throws Unreadable {
    return switch (name) {
      case "household" -> DemoRigs.household();
      case "flat" -> DemoRigs.smallFlat();
      default -> understood(name, OwnFiles.readRigFile(bytes(name, "rig")));
    };
  }

  private static <T> T understood(String name, Reading<T> reading) throws Unreadable {
    return switch (reading) {
      case Reading.Understood<T>(T thing) -> thing;
      case Reading.NotUnderstood<T>(String sentence) ->
          throw new Unreadable("'" + name + "': " + sentence);
    };
  }

  private static byte[] bytes(String name, String what) throws Unreadable {
    try {
      Path file = Path.of(name);
      if (!Files.isRegularFile(file)) {
        throw new Unreadable(
            "There is no "
                + what
                + " file '"
                + name
                + "'. Maybe look at its folder; the demos are"
                + " demo, demo-wheat, household and flat.");
      }
      if (Files.size(file) > MOST_BYTES) {
        throw new Unreadable(
            "'"
                + name
                + "' has "
                + Files.size(file)
                + " bytes; a "
                + what
                + " file has at most "
                + MOST_BYTES
                + ". Maybe it is another file.");
      }
      return Files.readAllBytes(file);
    } catch (InvalidPathException | IOException failure) {
      throw new Unreadable(
          "'"
              + name
              + "' cannot be read: "
              + failure.getMessage()
              + ". Maybe it is another kind of file.");
    }
  }
}
