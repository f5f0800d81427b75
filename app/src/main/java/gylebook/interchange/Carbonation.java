package gylebook.interchange;

import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;

/// Carbonation out of a bare number, which may be volumes or grams per litre.
@AnyUnit("a bare number is what the standard gives")
final class Carbonation {
  private static final Unit VOLUMES = Unit.known(Quantity.CARBONATION, "vol");
  private static final Unit GRAMS = Unit.known(Quantity.CARBONATION, "g/L");

  /// Above this no ordinary beer is carbonated: grams per litre are meant. An assumption of ours.
  private static final double VOLUMES_MOST = 5;

  private static final double USUAL_VOLUMES = 2.4;

  private Carbonation() {}

  static Entered of(OptionalDouble number, BiConsumer<String, String> says) {
    if (number.isEmpty()) {
      says.accept("carbonation", "Is not there; 2.4 volumes are assumed, within some 0.4.");
      return Entered.of(USUAL_VOLUMES, VOLUMES);
    }
    double value = number.getAsDouble();
    if (!(value >= 0 && value <= 20)) {
      throw new Refusal(
          "'carbonation' is " + value + ", which is neither volumes nor grams per litre.",
          String.valueOf(value),
          "It has to lie between 0 and 20.");
    }
    if (value > VOLUMES_MOST) {
      says.accept(
          "carbonation",
          "Is "
              + value
              + " without a unit. Are these grams per litre? Taken as such; volumes would"
              + " be too much for any package.");
    }
    Unit unit = value > VOLUMES_MOST ? GRAMS : VOLUMES;
    return ForeignUnits.entered(value, XmlThing.digits(value), unit);
  }
}
