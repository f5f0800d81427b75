package gylebook.reckon;

import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import java.util.OptionalDouble;

/// What a calculation asks for.
///
/// @param key the word to type before the `=`: `wort`
/// @param javaName the name in the code, which works as well: `wortC`
/// @param unit the unit a bare number has; empty for plain numbers and for text
/// @param usual the value taken when nothing is typed, in that unit
/// @param text whether it takes words instead of a number
@AnyUnit("the usual value of any input, in the unit that stands beside it")
public record Input(String key, String javaName, String unit, OptionalDouble usual, boolean text) {
  /// Its name in words, unit left out: `ice reading`.
  public String words() {
    return Named.of(javaName).stem().replace('-', ' ');
  }

  /// The usual value as somebody would type it, to the last digit; empty when there is none.
  public String usualTyped(ReadingUnits units) {
    return usual.isPresent() ? Named.of(javaName).typed(usual.getAsDouble(), units) : "";
  }
}
