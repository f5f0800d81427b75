package gylebook.interchange;

import gylebook.recipe.Hop;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.ValueDeserializer;

/// How hops are wrapped, in a file. Older files do not say: their packets count as sealed.
final class WrapText extends ValueDeserializer<Hop.Wrap> {
  @Override
  public Hop.Wrap deserialize(JsonParser from, DeserializationContext context) {
    String name = from.getValueAsString("");
    for (Hop.Wrap wrap : Hop.Wrap.values()) {
      if (wrap.name().equals(name)) {
        return wrap;
      }
    }
    throw new IllegalArgumentException("hops are not wrapped '" + name + "'");
  }

  @Override
  public Object getAbsentValue(DeserializationContext context) {
    return Hop.Wrap.SEALED;
  }
}
