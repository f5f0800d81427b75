package gylebook.interchange;

import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.ValueSerializer;

/// An amount in a file: what it measures, its value and unit, and what was typed.
final class EnteredText {
  private EnteredText() {}

  static final class Writer extends ValueSerializer<Entered> {
    @Override
    public void serialize(Entered entered, JsonGenerator to, SerializationContext context) {
      to.writeStartObject();
      to.writeStringProperty(
          "of", entered.unit().quantity().name().toLowerCase(Locale.ROOT).replace('_', ' '));
      to.writeNumberProperty("inside", entered.inside());
      to.writeStringProperty("unit", entered.unit().symbol());
      to.writeStringProperty("typed", entered.asTyped());
      to.writeEndObject();
    }
  }

  static final class Reader extends ValueDeserializer<Entered> {
    @Override
    public Entered deserialize(JsonParser from, DeserializationContext context) {
      JsonNode node = context.readTree(from);
      String of = text(node, "of").toUpperCase(Locale.ROOT).replace(' ', '_');
      String symbol = text(node, "unit");
      JsonNode inside = node.get("inside");
      if (inside == null || !inside.isNumber()) {
        throw new IllegalArgumentException("an amount without a number 'inside'");
      }
      Quantity quantity = quantity(of);
      Optional<Unit> unit = Unit.of(quantity, symbol);
      if (unit.isEmpty()) {
        throw new IllegalArgumentException("'" + symbol + "' is no unit of " + quantity.words());
      }
      double value = inside.asDouble();
      if (!(value >= quantity.least() && value <= quantity.most())) {
        throw new IllegalArgumentException(
            "a "
                + quantity.words()
                + " of "
                + value
                + " lies outside "
                + quantity.least()
                + " to "
                + quantity.most());
      }
      return new Entered(value, unit.get(), text(node, "typed"));
    }

    private static Quantity quantity(String name) {
      for (Quantity quantity : Quantity.values()) {
        if (quantity.name().equals(name)) {
          return quantity;
        }
      }
      throw new IllegalArgumentException("nobody measures '" + name + "'");
    }

    private static String text(JsonNode node, String key) {
      JsonNode found = node.get(key);
      if (found == null || !found.isString()) {
        throw new IllegalArgumentException("an amount without '" + key + "'");
      }
      return found.asString();
    }
  }
}
