package gylebook.reckon;

import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import gylebook.units.Unit;
import gylebook.units.UnitName;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// A number of the science room by its name in the code: what it is called, read and written.
@AnyUnit("reads and writes numbers of every unit")
record Named(String javaName, Optional<UnitName> unitName) {
  /// Typed amounts never carry more digits than this; rounding takes off what converting left.
  private static final MathContext DIGITS = new MathContext(12);

  // Cells are spoken of so; nobody reads an exponent off a packet.
  private static final double MANY_COUNT = 1e9;
  private static final double MOST_COUNT = 1e15;

  /// How a rate is read out.
  private static final Map<String, String> PER =
      Map.of(
          "1/s", "per second",
          "1/min", "per minute",
          "1/h", "per hour",
          "1/d", "per day",
          "1/K", "per kelvin",
          "1/mL", "per mL",
          "1/g", "per g");

  private static final double SHARE_LEAST = 1e-5;
  private static final double THOUSANDS = 1e4;
  private static final double APART_LEAST_K = 5e-4;
  private static final Set<String> DIFFERENCES =
      Set.of("doubt", "drop", "difference", "correction", "gap");

  static Named of(String javaName) {
    return new Named(javaName, UnitName.of(javaName));
  }

  /// The stem with hyphens, `wort-max`; the whole name where the unit is all there is.
  String stem() {
    return unitName
        .filter(name -> !name.stem().isEmpty())
        .map(name -> String.join("-", name.stem()))
        .orElse(whole());
  }

  /// The whole name with hyphens, for where two stems are alike: `known-day`.
  String whole() {
    return javaName.replaceAll("(?<!^)(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }

  String symbol() {
    return unitName.map(UnitName::symbol).orElse("");
  }

  Optional<Unit> unit() {
    return unitName.flatMap(UnitName::unit);
  }

  /// A typed amount, read in this unit.
  Typed read(String typed) {
    return Typed.parse(
        unit().isPresent() ? typed : withoutSymbol(typed), unit().orElse(Quantity.NUMBER.inside()));
  }

  /// The number of an amount that was read, in this unit.
  double number(Typed.Read read) {
    double inside = read.entered().inside();
    return new BigDecimal(unit().map(unit -> unit.fromInside(inside)).orElse(inside))
        .round(DIGITS)
        .doubleValue();
  }

  /// A value as a person would type it for this input, in the reader's unit where that is plain.
  String typed(double value, ReadingUnits units) {
    Optional<Unit> own = unit().filter(known -> known.quantity() != Quantity.NUMBER);
    if (own.isEmpty()) {
      return symbol().isEmpty() ? digits(value) : digits(value) + " " + symbol();
    }
    Unit read =
        switch (own.get().quantity()) {
          case TEMPERATURE, PRESSURE, SHARE -> units.unit(own.get().quantity());
          case GRAVITY -> isDifference() ? own.get() : units.unit(Quantity.GRAVITY);
          default -> own.get();
        };
    double there = read.fromInside(own.get().toInside(value));
    boolean bare = read.symbol().isEmpty() || read.symbol().equals("SG");
    return bare ? digits(there) : digits(there) + " " + read.symbol();
  }

  /// A value beside its limits, in the reader's unit and with no more digits than tell it from
  /// them.
  String told(double value, ReadingUnits units, int digits) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
    Optional<Unit> own = unit().filter(known -> known.quantity() == Quantity.TEMPERATURE);
    if (own.isPresent()) {
      Unit read = units.unit(Quantity.TEMPERATURE);
      double there = read.fromInside(own.get().toInside(value));
      BigDecimal shown = new BigDecimal(there).round(new MathContext(digits));
      return shown.stripTrailingZeros().toPlainString() + " " + read.symbol();
    }
    return typed(rounded.doubleValue(), units);
  }

  private static String digits(double value) {
    BigDecimal nine = new BigDecimal(value).round(new MathContext(9)).stripTrailingZeros();
    double size = Math.abs(value);
    boolean plain = value == 0 || (size >= 1e-4 && size < 1e9);
    return plain ? nine.toPlainString() : nine.toString().replace("E", "e").replace("e+", "e");
  }

  Amount amount(String name, double value, ReadingUnits units) {
    return new Amount(name, value, symbol(), shown(value, units));
  }

  /// A result, read on its own scale first where the reader's is another one: `11.9 °P (1.048)`.
  Amount result(String name, double value, ReadingUnits units) {
    String read = shown(value, units);
    Optional<Unit> scale =
        unit()
            .filter(own -> own.quantity() == Quantity.GRAVITY || own.quantity() == Quantity.COLOUR)
            .filter(own -> !own.equals(units.unit(own.quantity())) && !isDifference())
            .filter(own -> !offTheScale(own, value));
    String both = scale.map(own -> own.shown(own.toInside(value)) + " (" + read + ")").orElse(read);
    return new Amount(name, value, symbol(), both);
  }

  private String shown(double value, ReadingUnits units) {
    Optional<Unit> unit =
        unit()
            .filter(known -> known.quantity() != Quantity.NUMBER)
            .filter(known -> !offTheScale(known, value));
    Optional<Quantity> quantity = unit.map(Unit::quantity);
    if (quantity.equals(Optional.of(Quantity.SHARE)) && value > 0 && value < SHARE_LEAST) {
      return "less than 0.001 %";
    }
    boolean apart = quantity.equals(Optional.of(Quantity.TEMPERATURE_DIFFERENCE));
    if (apart && Math.abs(value) < APART_LEAST_K && value != 0) {
      return "less than 0.0005 K";
    }
    if (unit.isPresent() && keepsItsUnit(unit.get())) {
      return unit.get().shown(unit.get().toInside(threeOfMany(unit.get(), value)));
    }
    if (unit.isPresent()) {
      return units.shown(unit.get().quantity(), unit.get().toInside(value));
    }
    boolean crowd = javaName.endsWith("Count") && value >= MANY_COUNT && value < MOST_COUNT;
    String figure = crowd ? figure(value / MANY_COUNT) + " thousand million" : figure(value);
    String each = PER.getOrDefault(symbol(), symbol());
    return each.isEmpty() ? figure : figure + " " + each;
  }

  /// Nobody knows a concentration of thousands to the last digit.
  private static double threeOfMany(Unit unit, double value) {
    boolean many = unit.quantity() == Quantity.CONCENTRATION && value >= THOUSANDS;
    return many ? new BigDecimal(value).round(new MathContext(3)).doubleValue() : value;
  }

  /// A concentration in air is no concentration in beer, a millivolt reads badly in volts, and a
  /// difference of strength is no gravity: these are read as they are reckoned.
  private boolean keepsItsUnit(Unit unit) {
    return switch (unit.quantity()) {
      case CONCENTRATION, VOLTAGE, CURRENT -> true;
      case VOLUME -> unit.symbol().equals("m³");
      case ENERGY -> unit.symbol().equals("kJ") || unit.symbol().equals("kcal");
      case GRAVITY -> isDifference();
      default -> false;
    };
  }

  /// Strengths that no scale of gravities knows can only be written as they are.
  private static boolean offTheScale(Unit unit, double value) {
    boolean plato = unit.symbol().equals("°P");
    return unit.quantity() == Quantity.GRAVITY
        && (plato ? !(value > -100 && value < 500) : !(value > 0.7 && value < 2));
  }

  /// Whether it is how far apart two of its kind lie; then 1.014 is none of it.
  boolean isDifference() {
    return unitName
        .filter(name -> !name.stem().isEmpty() && DIFFERENCES.contains(name.stem().getLast()))
        .isPresent();
  }

  /// Four digits: nobody reads more of a number whose unit has no habits of its own.
  private static String figure(double value) {
    BigDecimal four = new BigDecimal(value).round(new MathContext(4));
    double size = Math.abs(value);
    boolean plain = value == 0 || (size >= 1e-4 && size < 1e7);
    return plain
        ? four.stripTrailingZeros().toPlainString()
        : String.format(Locale.ROOT, "%.3e", value);
  }

  private String withoutSymbol(String typed) {
    String text = typed.strip();
    for (String symbol : new String[] {symbol(), plain(symbol())}) {
      if (!symbol.isEmpty() && text.length() > symbol.length()) {
        int at = text.length() - symbol.length();
        if (text.substring(at).equalsIgnoreCase(symbol)) {
          return text.substring(0, at);
        }
      }
    }
    return text;
  }

  private static String plain(String symbol) {
    return symbol.replace("²", "2").replace("³", "3").replace("⁴", "4");
  }
}
