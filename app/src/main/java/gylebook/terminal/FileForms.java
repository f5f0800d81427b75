package gylebook.terminal;

import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import java.util.List;

/// How the terminal turns a rig and a recipe into the text of a file.
public interface FileForms {
  /// A rig in our own form: nothing is lost.
  String rig(Rig rig);

  /// A recipe in our own form: nothing is lost.
  String recipe(Recipe recipe);

  /// A recipe in the open JSON standard, version 3.
  Standard standard(Recipe recipe);

  /// A recipe in the standard's form.
  ///
  /// @param text of the file
  /// @param lost what the standard has no place for, a sentence each
  record Standard(String text, List<String> lost) {
    /// Copies the list.
    public Standard {
      lost = List.copyOf(lost);
    }
  }
}
