package gylebook.device;

import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;

/// Sensor Measurement Lists in JSON (RFC 8428), resolved as its section 4.6 says: base name before
/// the name, base time and base value added, base unit where a record names none. Pure.
///
/// A time below 2^28 s counts from now (section 4.5.3). Units are those of the SenML registry
/// (section 12.1; `kW`, `l/min` and the like from RFC 8798); degrees Fahrenheit are none of them.
final class SenMlPack {
  private static final double RELATIVE_BELOW_SEC = 1L << 28;

  /// The year 2200 or so: later is a broken clock, and would not fit an instant for long.
  private static final double LATEST_SEC = 7.3e9;

  private static final int VERSION_MOST = 10;
  private static final int RECORDS_MOST = 1000;
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][-A-Za-z0-9:./_]*");
  private static final Set<String> VALUES = Set.of("v", "vs", "vb", "vd", "s");

  /// How the registry writes a unit, and how we do.
  private static final Map<String, String> SYMBOLS =
      Map.ofEntries(
          Map.entry("Cel", "°C"),
          Map.entry("l", "L"),
          Map.entry("ml", "mL"),
          Map.entry("m3", "m³"),
          Map.entry("l/s", "L/s"),
          Map.entry("l/min", "L/min"),
          Map.entry("m3/s", "m³/s"),
          Map.entry("m3/h", "m³/h"),
          Map.entry("Ohm", "Ω"),
          Map.entry("/", ""),
          Map.entry("kg/m3", "kg/m³"));

  private static final Set<String> SAME =
      Set.of(
          "K", "W", "kW", "%", "V", "mV", "A", "mA", "Pa", "hPa", "kPa", "kg", "g", "s", "min", "h",
          "m", "mm", "cm", "J", "Wh", "kWh", "pH", "kg/s", "mg/l");

  private SenMlPack() {}

  /// What a record inherits from the records before it.
  private static final class Inherited {
    private String name = "";
    private double timeSec;
    private Optional<String> unit = Optional.empty();
    private double number;

    void take(JsonNode item) {
      name = item.has("bn") ? item.get("bn").asString("") : name;
      timeSec = item.has("bt") ? item.get("bt").asDouble(Double.NaN) : timeSec;
      unit = item.has("bu") ? Optional.of(item.get("bu").asString("")) : unit;
      number = item.has("bv") ? item.get("bv").asDouble(Double.NaN) : number;
    }
  }

  static List<Decoded> decode(Instrument instrument, String name, String text, Instant now) {
    Optional<JsonNode> tree = JsonText.tree(text).filter(JsonNode::isArray);
    if (tree.isEmpty()) {
      return List.of(Decoded.garbled(text, "is no SenML: not a JSON array"));
    }
    if (tree.get().size() > RECORDS_MOST) {
      return List.of(Decoded.garbled(text, "has more than " + RECORDS_MOST + " records"));
    }
    List<Decoded> heard = new ArrayList<>();
    Inherited base = new Inherited();
    for (JsonNode item : tree.get()) {
      Optional<String> fault = fault(item);
      if (fault.isPresent()) {
        return List.of(Decoded.garbled(text, "is no SenML: " + fault.get()));
      }
      base.take(item);
      String full = base.name + item.path("n").asString("");
      if (!NAME.matcher(full).matches()) {
        return List.of(Decoded.garbled(text, "is no SenML: '" + full + "' is no name"));
      }
      if (full.equals(name) && VALUES.stream().anyMatch(item::has)) {
        heard.add(record(instrument, base, item, now));
      }
    }
    return heard;
  }

  /// Why a record makes the whole pack unreadable.
  private static Optional<String> fault(JsonNode item) {
    if (!item.isObject()) {
      return Optional.of("a record is no object");
    }
    if (item.has("bver") && item.get("bver").asInt(Integer.MAX_VALUE) > VERSION_MOST) {
      return Optional.of("it is of a later version than " + VERSION_MOST);
    }
    for (String field : List.of("bt", "bv", "t", "v")) {
      if (item.has(field) && !item.get(field).isNumber()) {
        return Optional.of("'" + field + "' is no number");
      }
    }
    for (String field : List.of("bn", "bu", "n", "u")) {
      if (item.has(field) && !item.get(field).isString()) {
        return Optional.of("'" + field + "' is no text");
      }
    }
    // Section 4.4: who does not know a field that ends so must not read the pack.
    return item.propertyNames().stream()
        .filter(field -> field.endsWith("_"))
        .findFirst()
        .map(field -> "it asks to be understood with '" + field + "'");
  }

  private static Decoded record(Instrument instrument, Inherited base, JsonNode item, Instant now) {
    String sent = item.toString();
    if (!item.has("v")) {
      return Decoded.garbled(sent, "has no number");
    }
    double number = base.number + item.get("v").doubleValue();
    String written = item.has("u") ? item.get("u").stringValue() : base.unit.orElse("");
    Optional<Unit> unit =
        written.isEmpty() ? Optional.of(instrument.unit()) : unit(instrument, written);
    if (unit.isEmpty()) {
      return Decoded.garbled(
          sent,
          "has '"
              + written
              + "', which is no SenML unit of "
              + instrument.unit().quantity().words());
    }
    double timeSec = base.timeSec + item.path("t").doubleValue(0);
    if (!(Math.abs(timeSec) < LATEST_SEC)) {
      return Decoded.garbled(sent, "has a time that is none");
    }
    boolean timed = base.timeSec != 0 || item.has("t");
    Optional<Instant> claimed = timed ? Optional.of(moment(timeSec, now)) : Optional.empty();
    String value =
        base.number == 0 ? item.get("v").toString() : item.get("v") + " (base " + base.number + ")";
    return instrument.value(number, unit.get(), (value + " " + written).strip(), claimed);
  }

  private static Optional<Unit> unit(Instrument instrument, String written) {
    String symbol = SYMBOLS.getOrDefault(written, SAME.contains(written) ? written : "?");
    Quantity quantity = instrument.unit().quantity();
    return Unit.of(quantity, symbol.equals("mg/l") ? "mg/L" : symbol);
  }

  private static Instant moment(double timeSec, Instant now) {
    long millis = Math.round(timeSec * 1000);
    return timeSec < RELATIVE_BELOW_SEC ? now.plusMillis(millis) : Instant.ofEpochMilli(millis);
  }
}
