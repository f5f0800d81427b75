package gylebook.recipe;

import gylebook.units.Entered;

/// How the beer is put up.
///
/// @param kind keg, bottle, cask
/// @param carbonationRatio volumes of CO2 wanted
public record Pack(Kind kind, Entered carbonationRatio) {

  /// What the beer goes into.
  public enum Kind {
    KEG("keg"),
    BOTTLE("bottles"),
    CASK("cask");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }
  }
}
