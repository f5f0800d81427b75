package gylebook.brewday;

import gylebook.estimate.Instrument;
import gylebook.estimate.Reading;
import gylebook.journal.Event;
import gylebook.rig.Probe;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import gylebook.units.Unit;
import java.util.Arrays;
import java.util.Optional;

/// What an instrument showed, as it was typed, and as a figure.
@AnyUnit("an instrument shows whatever it measures")
public final class AsRead {
  private AsRead() {}

  /// What an instrument shows is an amount of this.
  public static Quantity quantity(Instrument instrument) {
    return switch (instrument.measures()) {
      case TEMPERATURE -> Quantity.TEMPERATURE;
      case HOT_VOLUME -> Quantity.VOLUME;
      case STRENGTH -> Quantity.GRAVITY;
    };
  }

  /// Reads what was typed; a bare number is in the unit that the brewer reads in.
  public static Typed typed(Instrument instrument, String typed, ReadingUnits units) {
    return Typed.parse(typed, units.unit(quantity(instrument)));
  }

  /// The reading with its unit written out, so that nobody has to know what it was read in.
  public static String whole(Entered entered) {
    String typed = entered.asTyped().strip();
    boolean bare = typed.chars().noneMatch(Character::isLetter) && !typed.matches(".*[\u00b0%].*");
    return bare ? typed + " " + entered.unit().symbol() : typed;
  }

  static Optional<Reading> reading(Instrument instrument, Event.ReadingTaken taken, double atSec) {
    Unit inside = quantity(instrument).inside();
    if (!(Typed.parse(taken.asRead(), inside) instanceof Typed.Read(Entered read))) {
      return Optional.empty();
    }
    double sampleC =
        Typed.parse(taken.sampleAsRead(), Quantity.TEMPERATURE.inside())
                instanceof Typed.Read(Entered sample)
            ? sample.inside()
            : Double.NaN;
    return Arrays.stream(Probe.Place.values())
        .filter(place -> place.name().equals(taken.place()))
        .findFirst()
        .map(
            place ->
                new Reading(
                    instrument.name(), place, taken.mixed(), sampleC, read.inside(), atSec));
  }
}
