package gylebook.device;

import gylebook.device.ModbusForm.Kind;
import gylebook.device.ModbusForm.Order;
import gylebook.device.MqttBroker.Login;
import gylebook.device.MqttBroker.Version;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// A tie as a form of texts: what the set-up page sends, and, as flat JSON, what the book keeps.
///
/// `kind` is one of `broker`, `controller`, `chip`, `line`, `post`, `table`; the fields of each
/// kind are those that its method reads. What is left empty has its usual value.
public final class TieForm {
  private static final JsonMapper JSON = new JsonMapper();

  private TieForm() {}

  /// The document the book keeps of a form. Empty fields are left out.
  public static String document(Map<String, String> form) {
    Map<String, String> sorted = new TreeMap<>(form);
    sorted.values().removeIf(String::isBlank);
    return JSON.writeValueAsString(sorted);
  }

  /// The form of a document.
  public static Map<String, String> form(String document) throws Unfit {
    Map<String, String> form = new TreeMap<>();
    try {
      JsonNode tree = JSON.readTree(document);
      if (!tree.isObject()) {
        throw new Unfit("document", Received.shown(document), "It must be a JSON object.");
      }
      tree.properties().forEach(one -> form.put(one.getKey(), one.getValue().asString("")));
      return form;
    } catch (JacksonException _) {
      throw new Unfit("document", Received.shown(document), "It must be JSON.");
    }
  }

  /// The tie a form describes.
  public static Tie tie(String name, String place, Map<String, String> form) throws Unfit {
    Fields fields = new Fields(form);
    try {
      return new Tie(new Instrument(name, place, unit(fields)), reach(fields));
    } catch (IllegalArgumentException wrong) {
      // Each type guards its own values; the form has no second set of guards.
      throw new Unfit("form", name, String.valueOf(wrong.getMessage()));
    }
  }

  private static Unit unit(Fields fields) throws Unfit {
    Quantity quantity = fields.choice("quantity", Quantity.TEMPERATURE);
    String symbol = fields.text("unit", quantity.inside().symbol());
    return Unit.of(quantity, symbol)
        .orElseThrow(
            () -> new Unfit("unit", symbol, "It must be a unit of " + quantity.words() + "."));
  }

  private static Reach reach(Fields fields) throws Unfit {
    String kind = fields.text("kind");
    return switch (kind) {
      case "broker" -> new Reach.Broker(broker(fields), fields.text("topic"), payload(fields));
      case "controller" -> controller(fields);
      case "chip" -> new Reach.Chip(fields.text("number"), every(fields));
      case "line" -> new Reach.Printed(line(fields), fields.text("pattern", LineSource.WHOLE_LINE));
      case "post" -> new Reach.Post(fields.text("tokenDigest"), payload(fields));
      case "table" ->
          new Reach.Table(
              path(fields, "file"),
              fields.text("time", "time"),
              fields.text("column"),
              fields.number("pace", 1));
      default ->
          throw new Unfit(
              "kind", kind, "It must be one of broker, controller, chip, line, post, table.");
    };
  }

  static MqttBroker broker(Fields fields) throws Unfit {
    Optional<Login> login =
        fields.given("user").map(user -> new Login(user, fields.text("password", "")));
    Version version = fields.text("version", "5").equals("5") ? Version.V5 : Version.V3_1_1;
    return new MqttBroker(
        fields.text("host"), fields.whole("port", 1883, 1, 65_535), version, login);
  }

  private static Payload payload(Fields fields) throws Unfit {
    String form = fields.text("payload", "plain");
    return switch (form) {
      case "plain" -> new Payload.Plain();
      case "senml" -> new Payload.SenMl(fields.text("at"));
      case "json" -> new Payload.JsonAt(fields.text("at"));
      default -> throw new Unfit("payload", form, "It must be plain, senml or json.");
    };
  }

  /// Any register, to look at: `kind` says how many.
  static ModbusRegister register(Fields fields, Kind kind) throws Unfit {
    return controller(fields, ModbusForm.plain(kind))
        .register(new Instrument("looked at", "", Unit.known(Quantity.NUMBER, "")));
  }

  private static Reach controller(Fields fields) throws Unfit {
    ModbusForm form =
        new ModbusForm(fields.choice("numberKind", Kind.INT16), fields.choice("order", Order.ABCD));
    return controller(fields, form);
  }

  private static Reach.Controller controller(Fields fields, ModbusForm form) throws Unfit {
    return new Reach.Controller(
        modbusPlace(fields),
        fields.whole("unitId", 1, 0, 255),
        fields.choice("table", ModbusRegister.Table.HOLDING),
        fields.whole("address", 0, 0, 65_535),
        form,
        fields.number("factor", 1),
        every(fields));
  }

  static ModbusPlace modbusPlace(Fields fields) throws Unfit {
    Duration patience = Duration.ofMillis(fields.whole("answerMs", 1000, 50, 30_000));
    Optional<String> device = fields.given("device");
    return device.isEmpty()
        ? new ModbusPlace.Tcp(fields.text("host"), fields.whole("port", 502, 1, 65_535), patience)
        : new ModbusPlace.Serial(
            device.get(),
            fields.whole("baud", 9600, 300, 4_000_000),
            fields.choice("parity", ModbusPlace.Parity.NONE),
            fields.whole("stopBits", 1, 1, 2),
            patience);
  }

  /// A serial port has a speed; a named pipe has none.
  static LinePlace line(Fields fields) throws Unfit {
    int baud = fields.whole("baud", 0, 0, 4_000_000);
    return baud == 0
        ? new LinePlace.Pipe(path(fields, "device"))
        : new LinePlace.Serial(fields.text("device"), baud);
  }

  private static Path path(Fields fields, String field) throws Unfit {
    try {
      return Path.of(fields.text(field));
    } catch (InvalidPathException wrong) {
      throw new Unfit(field, fields.text(field), "It must be the path of a file.");
    }
  }

  private static Duration every(Fields fields) throws Unfit {
    return Duration.ofSeconds(fields.whole("everySec", 5, 1, 3600));
  }
}
