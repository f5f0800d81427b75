package gylebook.interchange;

import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/// An amount as the open JSON standard writes it: a value and one of its units.
@AnyUnit("amounts of any unit")
final class JsonAmount {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final MathContext DIGITS = new MathContext(12);
  private static final List<String> SPANS = List.of("wk", "d", "h", "min");
  private static final double WHOLE = 1e-9;

  private JsonAmount() {}

  /// In the unit it was typed in, where the standard has it.
  static ObjectNode of(Entered amount, Ledger lost, String path) {
    Quantity quantity = amount.unit().quantity();
    if (quantity == Quantity.TIME) {
      return time(amount.inside(), lost, path);
    }
    Optional<String> word = ForeignUnits.word(amount.unit());
    Unit unit = word.isPresent() ? amount.unit() : ForeignUnits.usual(quantity);
    if (word.isEmpty()) {
      lost.says(
          path,
          "The standard does not know '"
              + amount.unit().symbol()
              + "'; written in "
              + unit.symbol()
              + ".");
    }
    return node(unit.fromInside(amount.inside()), ForeignUnits.word(unit).orElseThrow());
  }

  static ObjectNode percent(double shareFrac) {
    return node(shareFrac * 100, "%");
  }

  static ObjectNode node(double value, String unit) {
    ObjectNode node = MAPPER.createObjectNode();
    node.put("value", rounded(value));
    node.put("unit", unit);
    return node;
  }

  /// A time span as a whole number in the largest unit that keeps it whole.
  static ObjectNode time(double sec, Ledger lost, String path) {
    double whole = Math.rint(sec);
    if (Math.abs(whole - sec) > WHOLE * Math.max(1, sec)) {
      lost.says(path, "Time is written in whole seconds; " + rounded(sec) + " s are rounded.");
    }
    ObjectNode node = MAPPER.createObjectNode();
    for (String symbol : SPANS) {
      Unit unit = Unit.known(Quantity.TIME, symbol);
      double value = unit.fromInside(whole);
      boolean fits = whole == 0 ? symbol.equals("min") : value == Math.rint(value);
      if (fits) {
        node.put("value", (long) value);
        node.put("unit", ForeignUnits.word(unit).orElseThrow());
        return node;
      }
    }
    node.put("value", (long) whole);
    node.put("unit", "sec");
    return node;
  }

  /// A number without the dust of its arithmetic.
  static BigDecimal rounded(double value) {
    BigDecimal rounded = new BigDecimal(value).round(DIGITS);
    BigDecimal bare = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    // 20, not 2E+1: a person may read the file
    return bare.scale() < 0 ? bare.setScale(0) : bare;
  }
}
