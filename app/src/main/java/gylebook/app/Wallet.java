package gylebook.app;

import gylebook.interchange.OwnFiles;
import gylebook.interchange.ReadRecipe;
import gylebook.interchange.Reading;
import gylebook.interchange.RecipeReader;
import gylebook.interchange.RecipeWriter;
import gylebook.interchange.Remark;
import gylebook.interchange.Written;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.web.Papers;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/// Papers of the book read into recipes and rigs, and the files of others.
///
/// A paper never changes, so what was read once is remembered.
final class Wallet implements Papers {
  private static final int MOST = 200;

  private final Map<String, Recipe> recipes = remembering();
  private final Map<String, Rig> rigs = remembering();

  private static <T> Map<String, T> remembering() {
    return new LinkedHashMap<>(16, 0.75f, true) {
      private static final long serialVersionUID = 1L;

      @Override
      protected boolean removeEldestEntry(Map.Entry<String, T> eldest) {
        return size() > MOST;
      }
    };
  }

  @Override
  public Recipe recipe(String document) {
    return read(recipes, document, OwnFiles::readRecipe);
  }

  @Override
  public Rig rig(String document) {
    return read(rigs, document, OwnFiles::readRig);
  }

  private static <T> T read(
      Map<String, T> remembered, String document, Function<String, Reading<T>> reader) {
    synchronized (remembered) {
      return remembered.computeIfAbsent(document, text -> understood(reader.apply(text)));
    }
  }

  private static <T> T understood(Reading<T> reading) {
    return switch (reading) {
      case Reading.Understood<T>(T thing) -> thing;
      case Reading.NotUnderstood<T>(String sentence) ->
          throw new IllegalStateException("a paper of the book cannot be read: " + sentence);
    };
  }

  @Override
  public String document(Recipe recipe) {
    return remembered(recipes, OwnFiles.recipe(recipe), recipe);
  }

  @Override
  public String document(Rig rig) {
    return remembered(rigs, OwnFiles.rig(rig), rig);
  }

  /// What was just written need not be read to be known.
  private static <T> String remembered(Map<String, T> remembered, String document, T thing) {
    synchronized (remembered) {
      remembered.putIfAbsent(document, thing);
    }
    return document;
  }

  @Override
  public Brought<Recipe> recipeFile(byte[] file, String name) {
    return switch (RecipeReader.read(file, name)) {
      case ReadRecipe.Understood(Recipe recipe, List<Remark> remarks) ->
          new Brought.Understood<>(recipe, words(remarks));
      case ReadRecipe.NotUnderstood no -> new Brought.NotUnderstood<>(no.sentence());
    };
  }

  @Override
  public Brought<Rig> rigFile(byte[] file, String name) {
    return switch (OwnFiles.readRigFile(file)) {
      case Reading.Understood<Rig>(Rig rig) -> new Brought.Understood<>(rig, List.of());
      case Reading.NotUnderstood<Rig>(String sentence) ->
          new Brought.NotUnderstood<>("'" + name + "': " + sentence);
    };
  }

  @Override
  public Carried standard(Recipe recipe) {
    Written written = RecipeWriter.json(recipe);
    return new Carried(written.json(), words(written.lost()));
  }

  private static List<String> words(List<Remark> remarks) {
    return remarks.stream().map(remark -> remark.path() + ": " + remark.says()).toList();
  }
}
