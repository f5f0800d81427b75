package gylebook.terminal;

import gylebook.recipe.Recipe;
import gylebook.rig.Rig;

/// Where the terminal takes recipes and rigs from, by a file's name or a demo's.
public interface PlanSources {
  /// The recipe of that name.
  Recipe recipe(String name) throws Unreadable;

  /// The rig of that name.
  Rig rig(String name) throws Unreadable;

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
