package gylebook.device;

import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.time.Instant;
import java.util.Optional;

/// One thing that measures: what the brewer calls it, where it sits, and the unit of the bare
/// numbers it sends.
///
/// @param id the name under which its readings are kept
/// @param place where it sits, in the brewer's words
/// @param unit unit of a number that comes without one; says the quantity too
@AnyUnit("measures whatever quantity its unit belongs to")
public record Instrument(String id, String place, Unit unit) {
  /// What a thermometer in a brewery can see, in °C. An assumption of ours, wide on purpose: wider
  /// values are how chips and controllers say that nothing is connected.
  private static final double LEAST_C = -20;

  private static final double MOST_C = 150;

  /// Refuses an instrument without a name.
  public Instrument {
    if (id.isBlank()) {
      throw new IllegalArgumentException("id is blank; an instrument needs a name.");
    }
  }

  /// A number the instrument sent, as a value, or as garbled when it cannot be one.
  Decoded value(double sent, Unit sentIn, String asReceived, Optional<Instant> claimed) {
    double inside = sentIn.toInside(sent);
    Quantity quantity = unit.quantity();
    boolean warm = quantity == Quantity.TEMPERATURE;
    double least = warm ? LEAST_C : quantity.least();
    double most = warm ? MOST_C : quantity.most();
    if (!(inside >= least && inside <= most)) {
      return Decoded.garbled(
          asReceived,
          "is outside what this instrument can see ("
              + quantity.inside().shown(least)
              + " to "
              + quantity.inside().shown(most)
              + ")");
    }
    return new Decoded.Value(new Entered(inside, sentIn, asReceived), claimed);
  }
}
