package gylebook.units;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/// Which unit of the table a spelled symbol is.
final class NamedUnits {
  /// Where a symbol belongs to several quantities, the one the code means by it.
  private static final Map<String, Quantity> MEANT =
      Map.of(
          "kg", Quantity.MASS,
          "lb", Quantity.MASS,
          "g", Quantity.SMALL_MASS,
          "mg", Quantity.SMALL_MASS,
          "oz", Quantity.SMALL_MASS,
          "°C", Quantity.TEMPERATURE,
          "°F", Quantity.TEMPERATURE,
          "g/L", Quantity.CONCENTRATION);

  private NamedUnits() {}

  static Optional<Unit> of(String symbol, @Nullable UnitWord last) {
    if (symbol.isEmpty()) {
      return last == null
          ? Optional.empty()
          : Optional.of((last == UnitWord.FRAC ? Quantity.SHARE : Quantity.NUMBER).inside());
    }
    if (symbol.equals("K")) {
      Quantity quantity =
          last == UnitWord.KELVIN ? Quantity.TEMPERATURE : Quantity.TEMPERATURE_DIFFERENCE;
      return Unit.of(quantity, symbol);
    }
    Quantity meant = MEANT.get(symbol);
    if (meant != null) {
      return Unit.of(meant, symbol);
    }
    return Unit.all().stream().filter(unit -> unit.symbol().equals(symbol)).findFirst();
  }
}
