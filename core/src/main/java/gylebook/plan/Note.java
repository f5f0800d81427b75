package gylebook.plan;

import gylebook.units.AnyUnit;

/// A piece of a sentence: words, and at most one figure that the edge shows in the brewer's unit.
///
/// @param words before the figure
/// @param key the figure's name, ending in its unit; empty when there is none
/// @param band the figure; all three alike when there is no doubt in it
@AnyUnit("a note shows any quantity; its key names the unit")
public record Note(String words, String key, Band band) {

  /// Words alone.
  public static Note words(String words) {
    return new Note(words, "", new Band(Double.NaN, Double.NaN, Double.NaN));
  }

  /// Words and a figure without doubt.
  public static Note of(String words, String key, double value) {
    return new Note(words, key, new Band(value, value, value));
  }

  /// Whether there is a figure.
  public boolean hasFigure() {
    return !key.isEmpty();
  }
}
