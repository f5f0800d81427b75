package gylebook.units;

/// What somebody typed, understood or not. The one reader of amounts for page, terminal and files.
///
/// Understood: `1.052`, `1052`, `12.9 P`, `66c`, `151 °F`, `68 degrees C`, `19 L`, `5 gal` (US), `5
/// imp gal`, `5impgal`, `10 lb 4 oz`, `1h30`, `½ tsp`, `1 1/2 lb`, `1-1/2 lb`, `12,9 °P`,
/// `1.5e-10`. A bare number takes the unit that is usual for the reader. What could mean two things
/// is asked back, never guessed.
public sealed interface Typed {
  /// Understood.
  @AnyUnit("the amount says its own unit")
  record Read(Entered entered) implements Typed {}

  /// Not understood: what is wrong, the characters it is about, and what may have been meant.
  record Unclear(String what, String value, String maybe) implements Typed {
    /// Both as sentences for the page and the terminal.
    public String sentence() {
      return maybe.isEmpty() ? what : what + " " + maybe;
    }
  }

  /// Reads an amount; a bare number is in the metric household's unit.
  static Typed parse(String text, Quantity expected) {
    return parse(text, ReadingUnits.METRIC.unit(expected));
  }

  /// Reads an amount; a bare number is in this reader's unit.
  static Typed parse(String text, Quantity expected, ReadingUnits units) {
    return parse(text, units.unit(expected));
  }

  /// Reads an amount of the usual unit's quantity; a bare number is in that unit.
  static Typed parse(String text, Unit usual) {
    return new TypedText(text, usual).read();
  }
}
