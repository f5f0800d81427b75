package gylebook.interchange;

import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/// One object of a foreign JSON file: what is asked for is used up, the rest can be kept.
@AnyUnit("amounts of a file carry their unit")
final class JsonThing {
  private static final int DIGITS_MOST = 20;

  private final JsonNode node;
  private final String path;
  private final Ledger ledger;
  private final Set<String> used = new LinkedHashSet<>();
  private final Map<String, JsonThing> inner = new LinkedHashMap<>();

  JsonThing(JsonNode node, String path, Ledger ledger) {
    if (!node.isObject()) {
      throw new Refusal(
          "'" + path + "' has to be an object in braces, and is not.",
          node.toString(),
          "Maybe the file is of another standard.");
    }
    this.node = node;
    this.path = path;
    this.ledger = ledger;
  }

  JsonNode node() {
    return node;
  }

  /// Keeps a key that says nothing about the beer, without a word.
  void noted(String key) {
    whole(key).ifPresent(text -> ledger.note(Ledger.path(path, key), text));
  }

  /// Says that somebody else reads all of this, or these keys.
  void usedUp(String... keys) {
    used.addAll(keys.length == 0 ? node.propertyNames() : List.of(keys));
  }

  String path() {
    return path;
  }

  Ledger ledger() {
    return ledger;
  }

  boolean has(String key) {
    JsonNode found = node.get(key);
    return found != null && !found.isNull();
  }

  void says(String key, String sentence) {
    ledger.says(key.isEmpty() ? path : Ledger.path(path, key), sentence);
  }

  /// The text of a whole key as JSON, used up.
  Optional<String> whole(String key) {
    return take(key).map(JsonNode::toString);
  }

  Optional<JsonNode> take(String key) {
    used.add(key);
    return has(key) ? Optional.ofNullable(node.get(key)) : Optional.empty();
  }

  Optional<JsonThing> thing(String key) {
    return take(key).map(found -> within(found, key));
  }

  private JsonThing within(JsonNode found, String key) {
    return inner.computeIfAbsent(
        key, name -> new JsonThing(found, Ledger.path(path, name), ledger));
  }

  /// The objects of a list, numbered from 1 in their paths.
  List<JsonThing> things(String key) {
    Optional<JsonNode> list = take(key);
    if (list.isEmpty()) {
      return List.of();
    }
    if (!list.get().isArray()) {
      throw new Refusal(
          "'" + Ledger.path(path, key) + "' has to be a list in brackets, and is not.",
          list.get().toString(),
          "Maybe the file was changed by hand.");
    }
    List<JsonThing> things = new ArrayList<>();
    for (JsonNode item : list.get()) {
      things.add(within(item, key + " " + (things.size() + 1)));
    }
    return things;
  }

  /// A text; empty when absent.
  String words(String key) {
    Optional<JsonNode> found = take(key);
    if (found.isEmpty()) {
      return "";
    }
    if (!found.get().isString()) {
      says(key, "Should be words; taken as they stand.");
    }
    return found.get().isString() ? found.get().asString() : found.get().toString();
  }

  OptionalDouble number(String key) {
    Optional<JsonNode> found = take(key);
    return found.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(key, found.get()));
  }

  OptionalInt count(String key) {
    OptionalDouble number = number(key);
    if (number.isEmpty()) {
      return OptionalInt.empty();
    }
    if (number.getAsDouble() != Math.rint(number.getAsDouble())) {
      says(key, "Should be a whole number; rounded.");
    }
    return OptionalInt.of((int) Math.rint(number.getAsDouble()));
  }

  boolean flag(String key) {
    Optional<JsonNode> found = take(key);
    if (found.isPresent() && !found.get().isBoolean()) {
      says(key, "Should be true or false; taken as false.");
    }
    return found.isPresent() && found.get().isBoolean() && found.get().asBoolean();
  }

  private double number(String key, JsonNode found) {
    double value = Double.NaN;
    if (found.isNumber()) {
      // a number beyond the range of a double becomes infinite here, and is refused below
      value = found.decimalValue().doubleValue();
    } else if (found.isString()) {
      value = XmlThing.number(found.asString()).orElse(Double.NaN);
      says(key, "Should be a number, and is written as words; read as a number.");
    }
    if (!Double.isFinite(value)) {
      throw new Refusal(
          "'" + Ledger.path(path, key) + "' has to be a number.",
          found.toString(),
          "Maybe correct it in the program that wrote the file.");
    }
    return value;
  }

  /// An amount in one of these quantities; which one, its unit says.
  Optional<Entered> amount(String key, Quantity... quantities) {
    Optional<JsonThing> found = thing(key);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    JsonThing amount = found.get();
    String word = amount.words("unit");
    for (Quantity quantity : quantities) {
      Optional<Unit> unit = ForeignUnits.unit(quantity, word);
      if (unit.isPresent()) {
        return Optional.of(amount.entered(unit.get()));
      }
    }
    List<String> known = new ArrayList<>();
    for (Quantity quantity : quantities) {
      known.add(ForeignUnits.known(quantity));
    }
    throw new Refusal(
        "'" + amount.path + "' has the unit '" + word + "', which is none of the standard's.",
        word,
        "Known here: " + String.join(", ", known) + ".");
  }

  private Entered entered(Unit unit) {
    Optional<JsonNode> found = take("value");
    double value = found.isEmpty() ? Double.NaN : number("value", found.get());
    String digits = found.map(this::digits).orElse("");
    Quantity quantity = unit.quantity();
    double inside = sane(unit, value, digits);
    if (!(inside >= quantity.least() && inside <= quantity.most())) {
      throw new Refusal(
          "'" + path + "' is no " + quantity.words() + " that a brewery knows.",
          digits + " " + unit.symbol(),
          "It has to lie between "
              + quantity.least()
              + " and "
              + quantity.most()
              + " "
              + quantity.inside().symbol()
              + ".");
    }
    return ForeignUnits.entered(value, digits, unit);
  }

  private double sane(Unit unit, double value, String digits) {
    try {
      return unit.toInside(value);
    } catch (IllegalArgumentException outside) {
      throw new Refusal(
          "'" + path + "' is no " + unit.quantity().words() + " that a brewery knows.",
          digits,
          "Maybe its unit is another one.");
    }
  }

  private String digits(JsonNode found) {
    if (!found.isNumber()) {
      return Refusal.shortened(found.isString() ? found.asString().strip() : found.toString());
    }
    BigDecimal value = found.decimalValue();
    boolean readable = Math.abs(value.scale()) < DIGITS_MOST && value.precision() < DIGITS_MOST;
    return readable ? value.toPlainString() : String.valueOf(value.doubleValue());
  }

  /// Keeps what nobody asked for, here and in what was opened below.
  void keepRest() {
    inner.values().forEach(JsonThing::keepRest);
    for (String key : node.propertyNames()) {
      if (!used.contains(key)) {
        ledger.keep(Ledger.path(path, key), String.valueOf(node.get(key)));
      }
    }
  }

  /// Keeps the whole of this object, whatever was asked for.
  void keepWhole() {
    inner.clear();
    used.addAll(node.propertyNames());
    ledger.keep(path, node.toString());
  }
}
