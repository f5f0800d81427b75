package gylebook.units;

import java.util.EnumMap;
import java.util.Map;

/// The three household sets of reading units.
final class ReadingSets {
  private ReadingSets() {}

  static Map<Quantity, Unit> metric() {
    Map<Quantity, Unit> set = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      set.put(quantity, quantity.inside());
    }
    put(set, Quantity.TIME, "min");
    put(set, Quantity.GRAVITY, "SG");
    put(set, Quantity.ENERGY, "kWh");
    put(set, Quantity.LENGTH, "cm");
    put(set, Quantity.AREA, "cm²");
    put(set, Quantity.FLOW, "L/min");
    put(set, Quantity.MASS_FLOW, "kg/h");
    put(set, Quantity.SHARE, "%");
    put(set, Quantity.VISCOSITY, "mPa s");
    return set;
  }

  static Map<Quantity, Unit> us() {
    Map<Quantity, Unit> set = pounds();
    put(set, Quantity.TEMPERATURE, "°F");
    put(set, Quantity.TEMPERATURE_DIFFERENCE, "°F");
    put(set, Quantity.VOLUME, "US gal");
    put(set, Quantity.FLOW, "US gal/min");
    put(set, Quantity.SPECIFIC_VOLUME, "US qt/lb");
    put(set, Quantity.COLOUR, "SRM");
    put(set, Quantity.DIASTATIC_POWER, "°Lintner");
    return set;
  }

  static Map<Quantity, Unit> imperial() {
    Map<Quantity, Unit> set = pounds();
    put(set, Quantity.VOLUME, "imp gal");
    put(set, Quantity.FLOW, "imp gal/min");
    return set;
  }

  private static Map<Quantity, Unit> pounds() {
    Map<Quantity, Unit> set = metric();
    put(set, Quantity.MASS, "lb");
    put(set, Quantity.SMALL_MASS, "oz");
    put(set, Quantity.PRESSURE, "psi");
    put(set, Quantity.LENGTH, "in");
    put(set, Quantity.AREA, "in²");
    put(set, Quantity.MASS_FLOW, "lb/h");
    return set;
  }

  private static void put(Map<Quantity, Unit> set, Quantity quantity, String symbol) {
    set.put(quantity, Unit.known(quantity, symbol));
  }
}
