package gylebook.terminal;

import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import java.util.List;

/// Where the terminal takes recipes and rigs from, by a file's name or a demo's.
public interface PlanSources {
  /// The recipe of that name, with what was guessed or lost in reading it.
  Found recipe(String name) throws Unreadable;

  /// The rig of that name.
  Rig rig(String name) throws Unreadable;

  /// A recipe as it was understood.
  ///
  /// @param recipe what it is
  /// @param remarks what was guessed, clamped or kept aside, a sentence each
  record Found(Recipe recipe, List<String> remarks) {
    /// Copies the remarks.
    public Found {
      remarks = List.copyOf(remarks);
    }
  }

  /// What is named cannot be had.
  final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;

    private final String sentence;

    /// Says what, which and what to try.
    public Unreadable(String sentence) {
      super(sentence);
      this.sentence = sentence;
    }

    /// The same for the brewer.
    public String sentence() {
      return sentence;
    }
  }
}
