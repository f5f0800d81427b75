package gylebook.brewday;

import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import gylebook.units.UnitName;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/// What can be seen on a day beside what is weighed; the guards look at it, and the belief takes
/// the controller's word for its duty.
@AnyUnit("each measures its own quantity")
public enum Sighting {
  FLOW("jug and clock", "through the hose", Quantity.FLOW, "flowLPerSec", 600),
  LEVEL_ROUND_BAG(
      "level round the bag", "above the floor, pump on", Quantity.LENGTH, "levelM", 600),
  CHILLED("wort out of the chiller", "as it runs", Quantity.TEMPERATURE, "chilledC", 300),
  IN_FERMENTER("litres in the fermenter", "by its marks", Quantity.VOLUME, "fermenterL", 86_400),
  DUTY("duty", "as the controller shows it", Quantity.SHARE, "dutyFrac", 180),
  OTHER_LOAD("other load", "on the same circuit", Quantity.CURRENT, "loadA", 86_400);

  private final String says;
  private final String where;
  private final Quantity quantity;
  private final String key;
  private final double goodForSec;

  Sighting(String says, String where, Quantity quantity, String key, double goodForSec) {
    this.says = says;
    this.where = where;
    this.quantity = quantity;
    this.key = key;
    this.goodForSec = goodForSec;
  }

  /// Its name on the page and in the notes.
  public String says() {
    return says;
  }

  /// What exactly is measured.
  public String where() {
    return where;
  }

  /// What it is an amount of.
  public Quantity quantity() {
    return quantity;
  }

  /// The one of this name.
  public static Optional<Sighting> of(String name) {
    return Arrays.stream(values()).filter(one -> one.says.equals(name)).findFirst();
  }

  /// Reads what was typed; a bare number is in the unit that the brewer reads in.
  public Typed typed(String typed, ReadingUnits units) {
    return Typed.parse(typed, units.unit(quantity));
  }

  /// How long it says something after it was measured (our judgement).
  double goodForSec() {
    return goodForSec;
  }

  /// The figure in the unit that the guards reckon in.
  OptionalDouble inside(String asRead) {
    return Typed.parse(asRead, quantity.inside()) instanceof Typed.Read(Entered read)
        ? OptionalDouble.of(fromInside(read.inside()))
        : OptionalDouble.empty();
  }

  private double fromInside(double inside) {
    return UnitName.of(key).flatMap(UnitName::unit).orElseThrow().fromInside(inside);
  }
}
