package gylebook.interchange;

import gylebook.recipe.Recipe;
import java.util.List;

/// What came of reading a recipe file of an open standard, or one of ours.
public sealed interface ReadRecipe {

  /// It was understood, with remarks on what had to be guessed and what has no place here.
  ///
  /// @param recipe the first recipe of the file
  /// @param remarks in the order of the file
  record Understood(Recipe recipe, List<Remark> remarks) implements ReadRecipe {
    /// Copies the remarks.
    public Understood {
      remarks = List.copyOf(remarks);
    }
  }

  /// It was not, and nothing was taken from it.
  ///
  /// @param what what is wrong, and where
  /// @param value the characters it is about; may be empty
  /// @param maybe what to try
  record NotUnderstood(String what, String value, String maybe) implements ReadRecipe {
    /// All of it as one text for the page and the terminal.
    public String sentence() {
      return maybe.isEmpty() ? what : what + " " + maybe;
    }
  }
}
