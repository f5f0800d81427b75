package gylebook.estimate;

import gylebook.units.AnyUnit;

/// What a reading says of the thing itself, by what was known of the instrument alone: no model of
/// the brew has a part in it, so a forecast may be held against it.
///
/// `value = read - bias - gain (T - 65)`, `doubt^2 = noise^2 + bias doubt^2 + (gain doubt (T -
/// 65))^2`, the last for a thermometer; a strength is brought to the scale's temperature first. The
/// instrument's own error counts in full each time, though two readings share it.
///
/// @param value what was there
/// @param doubt standard deviation of that
@AnyUnit("in the unit of what the instrument shows")
public record FaceValue(double value, double doubt) {

  /// Of one reading.
  public static FaceValue of(Instrument instrument, Reading reading) {
    double read = Belief.atScale(instrument, reading);
    boolean warmth = instrument.measures() == Instrument.Measures.TEMPERATURE;
    double off = warmth ? read - Traits.MIDDLE_C : 0;
    double value = read - instrument.bias().value() - instrument.gainPerK().value() * off;
    double still = Math.hypot(instrument.bias().doubtInUnit(), Traits.noise(instrument, reading));
    return new FaceValue(value, Math.hypot(still, instrument.gainPerK().doubtInUnit() * off));
  }
}
