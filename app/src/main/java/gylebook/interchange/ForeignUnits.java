package gylebook.interchange;

import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/// How the open JSON standard writes units, and which of ours each is.
///
/// The first of each quantity is the one that is written when ours has no word there. Brix is taken
/// as Plato and ppm as mg/L; both keep their label.
@AnyUnit("knows words for every unit")
final class ForeignUnits {
  private static final Map<Quantity, Map<String, Unit>> WORDS = new EnumMap<>(Quantity.class);

  static {
    put(Quantity.VOLUME, "l", "L", "ml", "mL", "gal", "US gal", "qt", "US qt", "pt", "US pt");
    put(Quantity.VOLUME, "cup", "US cup", "floz", "US fl oz", "tbsp", "US tbsp");
    put(Quantity.VOLUME, "tsp", "US tsp", "bbl", "US bbl", "igal", "imp gal", "iqt", "imp qt");
    put(Quantity.VOLUME, "ipt", "imp pt", "ifloz", "imp fl oz", "ibbl", "imp bbl");
    put(Quantity.MASS, "kg", "kg", "g", "g", "mg", "mg", "lb", "lb", "oz", "oz");
    put(Quantity.SMALL_MASS, "g", "g", "kg", "kg", "mg", "mg", "lb", "lb", "oz", "oz");
    put(Quantity.TEMPERATURE, "C", "°C", "F", "°F");
    put(Quantity.TIME, "sec", "s", "min", "min", "hr", "h", "day", "d", "week", "wk");
    put(Quantity.GRAVITY, "plato", "°P", "sg", "SG", "brix", "°Bx");
    put(Quantity.COLOUR, "EBC", "EBC", "SRM", "SRM", "Lovi", "°L");
    put(Quantity.BITTERNESS, "IBUs", "IBU");
    put(Quantity.CONCENTRATION, "mg/l", "mg/L", "ppm", "ppm", "ppb", "ppb");
    put(Quantity.SHARE, "%", "%");
    put(Quantity.CARBONATION, "vols", "vol", "g/l", "g/L");
    put(Quantity.NUMBER, "each", "", "1", "", "unit", "", "dimensionless", "", "pkg", "");
  }

  private ForeignUnits() {}

  private static void put(Quantity quantity, String... pairs) {
    Map<String, Unit> words = WORDS.computeIfAbsent(quantity, _ -> new LinkedHashMap<>());
    for (int i = 0; i < pairs.length; i += 2) {
      words.put(pairs[i], Unit.known(quantity, pairs[i + 1]));
    }
  }

  private static Map<String, Unit> words(Quantity quantity) {
    return WORDS.getOrDefault(quantity, Map.of());
  }

  static Optional<Unit> unit(Quantity quantity, String word) {
    Unit exact = words(quantity).get(word);
    return exact != null
        ? Optional.of(exact)
        : words(quantity).entrySet().stream()
            .filter(entry -> entry.getKey().equalsIgnoreCase(word))
            .map(Map.Entry::getValue)
            .findFirst();
  }

  /// Every word the standard has for units of a quantity.
  static String known(Quantity quantity) {
    return String.join(", ", words(quantity).keySet());
  }

  /// The word for a unit; empty when the standard has none.
  static Optional<String> word(Unit unit) {
    return words(unit.quantity()).entrySet().stream()
        .filter(entry -> entry.getValue().equals(unit))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /// The unit that is written when an amount's own has no word.
  static Unit usual(Quantity quantity) {
    return words(quantity).values().iterator().next();
  }

  /// An amount of a file as a person would have typed it.
  static Entered entered(double value, String digits, Unit unit) {
    boolean bare = unit.symbol().isEmpty() || unit.symbol().equals("SG");
    return new Entered(unit.toInside(value), unit, bare ? digits : digits + " " + unit.symbol());
  }
}
