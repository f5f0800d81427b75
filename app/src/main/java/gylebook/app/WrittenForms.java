package gylebook.app;

import gylebook.interchange.OwnFiles;
import gylebook.interchange.RecipeWriter;
import gylebook.interchange.Written;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.terminal.FileForms;

/// The forms of files that the interchange room knows, for the terminal.
final class WrittenForms implements FileForms {
  @Override
  public String rig(Rig rig) {
    return OwnFiles.rig(rig);
  }

  @Override
  public String recipe(Recipe recipe) {
    return OwnFiles.recipe(recipe);
  }

  @Override
  public Standard standard(Recipe recipe) {
    Written written = RecipeWriter.json(recipe);
    return new Standard(
        written.json(), written.lost().stream().map(r -> r.path() + ": " + r.says()).toList());
  }
}
