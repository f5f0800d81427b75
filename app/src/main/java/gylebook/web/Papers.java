package gylebook.web;

import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import java.util.List;

/// Recipes and rigs as papers and back, and the files of others.
public interface Papers {
  /// The recipe a paper of the book holds.
  Recipe recipe(String document);

  /// The rig a paper of the book holds.
  Rig rig(String document);

  /// A recipe as a paper; also the file of it.
  String document(Recipe recipe);

  /// A rig as a paper; also the file of it.
  String document(Rig rig);

  /// Reads a recipe file: our own, or one of the open standards.
  Brought<Recipe> recipeFile(byte[] file, String name);

  /// Reads a rig file.
  Brought<Rig> rigFile(byte[] file, String name);

  /// The recipe as the open JSON standard has it.
  Carried standard(Recipe recipe);

  /// A file that was brought in.
  ///
  /// @param <T> recipe or rig
  sealed interface Brought<T> {
    /// It was understood.
    ///
    /// @param remarks what was guessed, lost or kept aside, in words
    record Understood<T>(T thing, List<String> remarks) implements Brought<T> {
      /// Copies the list.
      public Understood {
        remarks = List.copyOf(remarks);
      }
    }

    /// It was not; nothing of it is taken.
    record NotUnderstood<T>(String sentence) implements Brought<T> {}
  }

  /// A file to carry away.
  ///
  /// @param lost what that form of file has no place for, in words
  record Carried(String text, List<String> lost) {
    /// Copies the list.
    public Carried {
      lost = List.copyOf(lost);
    }
  }
}
