package gylebook.interchange;

import gylebook.recipe.Boil;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.ValueDeserializer;

/// Where the lid is in the boil, in a file. Older files do not say: theirs boil open.
final class LidText extends ValueDeserializer<Boil.Lid> {
  @Override
  public Boil.Lid deserialize(JsonParser from, DeserializationContext context) {
    String name = from.getValueAsString("");
    for (Boil.Lid lid : Boil.Lid.values()) {
      if (lid.name().equals(name)) {
        return lid;
      }
    }
    throw new IllegalArgumentException("no lid is '" + name + "'");
  }

  @Override
  public Object getAbsentValue(DeserializationContext context) {
    return Boil.Lid.OFF;
  }
}
