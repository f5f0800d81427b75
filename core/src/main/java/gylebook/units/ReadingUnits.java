package gylebook.units;

import java.util.EnumMap;
import java.util.Map;

/// The unit somebody likes to read each quantity in: one of three sets, each quantity switchable.
@AnyUnit("writes amounts of every quantity")
public record ReadingUnits(Map<Quantity, Unit> chosen) {
  /// Kilograms, litres, Celsius, specific gravity, EBC.
  public static final ReadingUnits METRIC = new ReadingUnits(ReadingSets.metric());

  /// Pounds, US gallons, Fahrenheit, specific gravity, SRM.
  public static final ReadingUnits US = new ReadingUnits(ReadingSets.us());

  /// Pounds, imperial gallons, Celsius, specific gravity, EBC.
  public static final ReadingUnits IMPERIAL = new ReadingUnits(ReadingSets.imperial());

  private static final double SEC_PER_MIN = 60;
  private static final double SEC_PER_HR = 3600;
  private static final double SEC_PER_DAY = 86_400;

  /// From this many metres on a length is read in metres or feet.
  private static final double LONG = 5;

  /// Checks that every quantity has a unit of its own kind.
  public ReadingUnits {
    for (Quantity quantity : Quantity.values()) {
      Unit unit = chosen.get(quantity);
      if (unit == null || unit.quantity() != quantity) {
        throw new IllegalArgumentException(
            "chosen has " + unit + " for " + quantity + "; it must be a unit of that quantity.");
      }
    }
    chosen = Map.copyOf(new EnumMap<>(chosen));
  }

  /// The same with one quantity read in another unit.
  public ReadingUnits with(Unit unit) {
    Map<Quantity, Unit> changed = new EnumMap<>(chosen);
    changed.put(unit.quantity(), unit);
    return new ReadingUnits(changed);
  }

  /// The unit a quantity is read in; also what a bare number means when somebody types one.
  public Unit unit(Quantity quantity) {
    Unit unit = chosen.get(quantity);
    if (unit == null) {
      throw new IllegalStateException("no unit for " + quantity);
    }
    return unit;
  }

  /// An amount as this reader likes it: `66.2 °C`, `19.0 L`, `1.052`.
  ///
  /// Time spans and lengths change their unit with their size: 90 s, 75 min, 5.5 h, 12 d; 35 cm,
  /// 1200 m.
  public String shown(Quantity quantity, double inside) {
    Unit unit = unit(quantity);
    String symbol = fitting(unit, Math.abs(inside));
    return (symbol.equals(unit.symbol()) ? unit : Unit.known(quantity, symbol)).shown(inside);
  }

  /// An entered amount as this reader likes it, whatever it was typed in.
  public String shown(Entered entered) {
    return shown(entered.unit().quantity(), entered.inside());
  }

  /// The symbol that suits an amount of this size, where the reader's own is the middle one.
  private static String fitting(Unit unit, double size) {
    return switch (unit.quantity() + " " + unit.symbol()) {
      case "TIME min" -> timeSymbol(size);
      case "LENGTH cm" -> size >= LONG ? "m" : unit.symbol();
      case "LENGTH in" -> size >= LONG ? "ft" : unit.symbol();
      default -> unit.symbol();
    };
  }

  private static String timeSymbol(double sec) {
    if (sec == 0) {
      return "min";
    }
    if (sec < 2 * SEC_PER_MIN) {
      return "s";
    }
    if (sec < 3 * SEC_PER_HR) {
      return "min";
    }
    return sec < 3 * SEC_PER_DAY ? "h" : "d";
  }
}
