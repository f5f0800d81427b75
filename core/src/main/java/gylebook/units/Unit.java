package gylebook.units;

import java.util.List;
import java.util.Optional;

/// One unit of one quantity: how it is written, how it is said, how it turns into the inside unit.
///
/// A gram of malt and a gram of hops are two units here: the first turns into kilograms, the second
/// stays in grams.
@AnyUnit("a unit converts numbers that carry it")
public record Unit(Quantity quantity, String symbol, String spoken, Scale scale, int decimals) {
  /// The unit of a quantity that is written so.
  public static Optional<Unit> of(Quantity quantity, String symbol) {
    return quantity.units().stream().filter(unit -> unit.symbol().equals(symbol)).findFirst();
  }

  /// The unit of a quantity that is written so, for those who know that it exists.
  public static Unit known(Quantity quantity, String symbol) {
    return of(quantity, symbol)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "symbol is '" + symbol + "'; no " + quantity.words() + " has that unit."));
  }

  /// Every unit there is.
  public static List<Unit> all() {
    return UnitTable.all();
  }

  /// A number of this unit in the inside unit.
  public double toInside(double value) {
    return scale.inside(value);
  }

  /// A number of the inside unit in this unit.
  public double fromInside(double inside) {
    return scale.outside(inside);
  }

  /// Whether this is the one unit used inside.
  public boolean isInside() {
    return equals(quantity.inside());
  }

  /// Number and symbol: `66.2 °C`, `1.052` (a specific gravity needs no symbol), `75 %`.
  public String shown(double inside) {
    return withSymbol(Figures.shown(this, fromInside(inside)));
  }

  /// The number alone, with the digits that make sense for reading.
  public String shownNumber(double inside) {
    return Figures.shown(this, fromInside(inside));
  }

  String withSymbol(String number) {
    return symbol.isEmpty() || symbol.equals("SG") ? number : number + " " + symbol;
  }

  /// Whether two amounts in units of this kind may be joined: `10 lb 4 oz`.
  boolean joins() {
    return scale instanceof Scale.Straight straight && straight.zero() == 0;
  }
}
