package gylebook.interchange;

import gylebook.rig.Origin;
import gylebook.rig.Parameter;
import gylebook.rig.Spread;
import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.Typed;
import gylebook.units.Unit;
import gylebook.units.UnitName;
import java.util.Optional;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamContext;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.node.ObjectNode;

/// A number of a rig in its file. Who writes the file by hand may put an amount with its unit in
/// the place of the value: `"heightM": {"value": "14 in", ...}`; it is kept as typed.
final class ParameterText extends ValueDeserializer<Parameter> {

  @AnyUnit("the field that holds it names the unit")
  private record Plain(
      double value, double doubt, Spread spread, Origin origin, String basis, String asTyped) {}

  @Override
  public Parameter deserialize(JsonParser from, DeserializationContext context) {
    if (from.currentToken() != JsonToken.START_OBJECT) {
      throw new IllegalArgumentException("value, doubt and origin are expected here, in braces");
    }
    TokenStreamContext outer = from.streamReadContext().getParent();
    String name = outer == null ? "" : String.valueOf(outer.currentName());
    JsonNode node = context.readTree(from);
    if (node instanceof ObjectNode object && object.path("value").isString()) {
      String typed = object.path("value").asString();
      object.put("value", value(name, typed));
      if (object.path("asTyped").asString("").isEmpty()) {
        object.put("asTyped", typed.strip());
      }
    }
    Plain read = context.readTreeAsValue(node, Plain.class);
    return new Parameter(
        read.value(), read.doubt(), read.spread(), read.origin(), read.basis(), read.asTyped());
  }

  private static double value(String name, String typed) {
    Optional<Unit> inside = UnitName.of(name).flatMap(UnitName::unit);
    Unit unit = inside.orElse(Quantity.NUMBER.inside());
    return switch (Typed.parse(typed, unit)) {
      case Typed.Read read -> unit.fromInside(read.entered().inside());
      case Typed.Unclear unclear ->
          throw new IllegalArgumentException(
              (unclear.what() + " " + unclear.maybe()).strip().replaceAll("\\.$", ""));
    };
  }
}
